#include "raster/tiff_directories.h"

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <set>

namespace benchleaf {
namespace {

constexpr std::size_t kMostDirectories = 65'536;
constexpr std::uint64_t kXResolution = 282;  // TIFF 6.0, section 3

// Where the parts of a directory lie: TIFF 6.0, section 2, and the BigTIFF proposal, which widens its numbers.
struct Shape {
  std::size_t first_link;   // of the file's header
  std::size_t link_bytes;   // of an offset
  std::size_t count_bytes;  // of the number of fields that begins a directory
  std::size_t field_bytes;
};

constexpr Shape kClassic = {4, 4, 2, 12};
constexpr Shape kBig = {8, 8, 8, 20};

class Reader {
 public:
  Reader(std::string_view bytes, bool low_byte_first) : bytes_(bytes), low_byte_first_(low_byte_first) {}

  // Nothing when the number does not lie within the file.
  std::optional<std::uint64_t> Number(std::uint64_t at, std::size_t size) const {
    if (at > bytes_.size() || size > bytes_.size() - at) {
      return std::nullopt;
    }
    std::uint64_t value = 0;
    for (std::size_t i = 0; i < size; ++i) {
      const std::size_t place = static_cast<std::size_t>(at) + (low_byte_first_ ? size - 1 - i : i);
      value = value << 8U | static_cast<unsigned char>(bytes_[place]);
    }
    return value;
  }

  // The number of a directory's fields; nothing when they go beyond the file.
  std::optional<std::uint64_t> Fields(std::uint64_t directory, const Shape& shape) const {
    const auto fields = Number(directory, shape.count_bytes);
    const std::uint64_t room = bytes_.size() - std::min<std::uint64_t>(directory + shape.count_bytes, bytes_.size());
    return fields && *fields <= room / shape.field_bytes ? fields : std::nullopt;
  }

 private:
  std::string_view bytes_;
  bool low_byte_first_;
};

}  // namespace

std::vector<TiffDirectory> ReadTiffDirectories(std::string_view bytes) {
  const bool low_byte_first = bytes.starts_with("II");
  if (!low_byte_first && !bytes.starts_with("MM")) {
    return {};
  }
  const Reader reader(bytes, low_byte_first);
  constexpr std::uint64_t kClassicVersion = 42;
  constexpr std::uint64_t kBigVersion = 43;
  const auto version = reader.Number(2, 2);
  if (version != kClassicVersion && version != kBigVersion) {
    return {};
  }
  const Shape& shape = version == kClassicVersion ? kClassic : kBig;
  std::vector<TiffDirectory> directories;
  std::set<std::uint64_t> seen;
  auto link = reader.Number(shape.first_link, shape.link_bytes);
  while (link && *link != 0 && directories.size() < kMostDirectories && seen.insert(*link).second) {
    TiffDirectory& directory = directories.emplace_back();
    const auto fields = reader.Fields(*link, shape);
    if (!fields) {
      break;
    }
    std::uint64_t field = *link + shape.count_bytes;
    for (std::uint64_t i = 0; i < *fields; ++i, field += shape.field_bytes) {
      directory.states_resolution = directory.states_resolution || reader.Number(field, 2) == kXResolution;
    }
    link = reader.Number(field, shape.link_bytes);
  }
  return directories;
}

}  // namespace benchleaf

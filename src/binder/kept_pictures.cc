#include "binder/kept_pictures.h"

#include "benchleaf/core/fnv.h"

#include <algorithm>
#include <charconv>
#include <fstream>
#include <sstream>
#include <system_error>
#include <vector>

namespace benchleaf::binder {
namespace {

namespace fs = std::filesystem;

constexpr std::string_view kHeading = "scan and settings\twidth\theight\tpage\tthumb\tdigest";
constexpr std::size_t kColumns = 6;

std::vector<std::string> Fields(const std::string& line) {
  std::vector<std::string> fields;
  std::istringstream stream(line);
  for (std::string field; std::getline(stream, field, '\t');) fields.push_back(field);
  return fields;
}

// A number of pixels; 0 for what is none.
int Pixels(std::string_view text) {
  int value = 0;
  const auto [end, failed] = std::from_chars(text.data(), text.data() + text.size(), value);
  return failed == std::errc() && end == text.data() + text.size() && value > 0 ? value : 0;
}

// Whether it is a name as the binder gives them: a list from elsewhere may not name files outside.
bool IsWithinBinder(std::string_view name) {
  const auto is_ours = [](char c) {
    return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '-' || c == '/' || c == '.';
  };
  return name.starts_with("sets/") && name.find("..") == std::string_view::npos &&
         std::all_of(name.begin(), name.end(), is_ours);
}

std::string Content(const fs::path& file) {
  std::error_code failed;
  if (!fs::is_regular_file(fs::symlink_status(file, failed))) return {};
  std::ostringstream content;
  content << std::ifstream(file, std::ios::binary).rdbuf();
  return content.str();
}

std::string DigestOf(const std::string& page, const std::string& thumb) {
  Fnv digest;
  digest.AddWhole(page);
  digest.AddWhole(thumb);
  return digest.Hex();
}

}  // namespace

KeptPictures KeptPictures::Of(const fs::path& binder) {
  KeptPictures kept;
  kept.binder_ = binder;
  std::ifstream stream(binder / kFile);
  std::string line;
  if (!std::getline(stream, line) || line != kHeading) return kept;
  while (std::getline(stream, line)) {
    const std::vector<std::string> fields = Fields(line);
    if (fields.size() != kColumns || !IsWithinBinder(fields[3]) || !IsWithinBinder(fields[4])) continue;
    Kept& picture = kept.pictures_[fields[0]];
    picture = {{Pixels(fields[1]), Pixels(fields[2]), std::nullopt}, fields[3], fields[4], fields[5]};
  }
  return kept;
}

void KeptPictures::Add(const std::string& key, const std::string& page_file, const std::string& thumb_file,
                       const PageFiles& files) {
  if (!key.empty()) pictures_[key] = {files.size, page_file, thumb_file, DigestOf(files.page, files.thumb)};
}

std::optional<PageFiles> KeptPictures::Find(const std::string& key) const {
  const auto kept = pictures_.find(key);
  if (kept == pictures_.end() || !kept->second.size.is_there()) return std::nullopt;
  PageFiles files{kept->second.size, Content(binder_ / kept->second.page_file),
                  Content(binder_ / kept->second.thumb_file)};
  if (DigestOf(files.page, files.thumb) != kept->second.digest) return std::nullopt;
  return files;
}

std::string KeptPictures::ToText() const {
  std::string text(kHeading);
  text += '\n';
  for (const auto& [key, picture] : pictures_) {
    text += key;
    for (const std::string& field : {std::to_string(picture.size.width), std::to_string(picture.size.height),
                                     picture.page_file, picture.thumb_file, picture.digest}) {
      text += '\t' + field;
    }
    text += '\n';
  }
  return text;
}

}  // namespace benchleaf::binder

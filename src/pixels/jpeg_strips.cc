#include "pixels/jpeg_strips.h"

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <string_view>

namespace benchleaf {
namespace {

// Markers: ITU-T T.81, table B.1. Each stands behind a byte FF.
constexpr std::uint8_t kBaseline = 0xC0;
constexpr std::uint8_t kExtended = 0xC1;
constexpr std::uint8_t kProgressive = 0xC2;
constexpr std::uint8_t kHuffman = 0xC4;
constexpr std::uint8_t kRestart0 = 0xD0;
constexpr std::uint8_t kStart = 0xD8;
constexpr std::uint8_t kEnd = 0xD9;
constexpr std::uint8_t kScan = 0xDA;
constexpr std::uint8_t kQuantization = 0xDB;
constexpr std::uint8_t kRestartInterval = 0xDD;
constexpr std::uint8_t kApp0 = 0xE0;
constexpr std::uint8_t kComment = 0xFE;
constexpr std::size_t kBlock = 8;  // px
constexpr std::size_t kMostWord = 0xFFFF;

std::uint8_t Byte(std::string_view bytes, std::size_t at) { return static_cast<std::uint8_t>(bytes[at]); }

std::size_t Word(std::string_view bytes, std::size_t at) {
  return static_cast<std::size_t>(Byte(bytes, at)) << 8U | Byte(bytes, at + 1);
}

void PutMarker(std::string& out, std::uint8_t marker) {
  out += '\xFF';
  out += static_cast<char>(marker);
}

void PutWord(std::string& out, std::size_t value) {
  out += static_cast<char>(value >> 8U & 0xFFU);
  out += static_cast<char>(value & 0xFFU);
}

// A stream cut into its parts.
struct Parts {
  std::string head;           // its tables and the frame's header, in which the height is 0
  std::size_t height_at = 0;  // where in `head` it stands
  std::string scan;           // the scan's header, whole
  std::string_view data;      // what follows it
  std::uint8_t frame = 0;     // the marker of the frame's header; 0: there is none
  bool restarts = false;      // it has restart intervals of its own
  std::size_t width = 0;      // px
  std::size_t height = 0;     // px
  std::size_t components = 0;
  std::size_t scanned = 0;           // components of the scan
  std::size_t unit_width = kBlock;   // px that are coded together
  std::size_t unit_height = kBlock;  // px
};

// Takes the frame's header (B.2.2); false for depths other than 8 bits and for what does not fit.
bool TakeFrame(std::string_view body, Parts& parts) {
  constexpr std::size_t kFixed = 6;
  constexpr std::size_t kOfComponent = 3;
  if (parts.frame != 0 || body.size() < kFixed || Byte(body, 0) != 8) return false;
  parts.height = Word(body, 1);
  parts.width = Word(body, 3);
  parts.components = Byte(body, 5);
  if (body.size() != kFixed + kOfComponent * parts.components) return false;
  if (parts.components == 1) return true;  // its blocks are coded one by one (A.2.2)
  for (std::size_t i = 0; i < parts.components; ++i) {
    const std::uint8_t sampling = Byte(body, kFixed + kOfComponent * i + 1);
    parts.unit_width = std::max(parts.unit_width, kBlock * (sampling >> 4U));
    parts.unit_height = std::max(parts.unit_height, kBlock * (sampling & 15U));
  }
  return true;
}

// Nothing for a stream that holds more than tables, one frame of a usual kind, and scans.
std::optional<Parts> Parse(std::string_view stream) {
  Parts parts;
  if (stream.size() < 2 || Byte(stream, 0) != 0xFF || Byte(stream, 1) != kStart) return std::nullopt;
  std::size_t at = 2;
  while (at + 2 <= stream.size()) {
    if (Byte(stream, at) != 0xFF) return std::nullopt;
    const std::uint8_t marker = Byte(stream, at + 1);
    if (marker == 0xFF) {  // fill bytes
      ++at;
      continue;
    }
    if (marker == kEnd) return parts;  // tables only
    if (at + 4 > stream.size()) return std::nullopt;
    const std::size_t length = Word(stream, at + 2);
    if (length < 2 || length > stream.size() - at - 2) return std::nullopt;
    const std::string_view body = stream.substr(at + 4, length - 2);
    std::string segment(stream.substr(at, 2 + length));
    at += 2 + length;
    switch (marker) {
      case kScan:
        if (parts.frame == 0 || body.empty()) return std::nullopt;
        parts.scan = segment;
        parts.scanned = Byte(body, 0);
        parts.data = stream.substr(at);
        return parts;
      case kBaseline:
      case kExtended:
      case kProgressive: {
        if (!TakeFrame(body, parts)) return std::nullopt;
        parts.frame = marker;
        constexpr std::size_t kHeightAt = 5;  // behind marker, length and depth
        segment.replace(kHeightAt, 2, 2, '\0');
        parts.height_at = parts.head.size() + kHeightAt;
        parts.head += segment;
        break;
      }
      case kRestartInterval:
        parts.restarts = true;
        parts.head += segment;
        break;
      case kHuffman:
      case kQuantization:
        parts.head += segment;
        break;
      case kApp0:  // tells of a file of its own
      case kComment:
        break;
      default:
        return std::nullopt;
    }
  }
  return std::nullopt;
}

// The data of a single scan up to the end of the image; nothing where anything else comes before that.
std::optional<std::string_view> OneScan(std::string_view data) {
  for (std::size_t at = 0; at + 1 < data.size(); ++at) {
    if (Byte(data, at) != 0xFF || Byte(data, at + 1) == 0) continue;
    if (Byte(data, at + 1) != kEnd) return std::nullopt;
    return data.substr(0, at);
  }
  return std::nullopt;
}

// Adobe's marker, by which readers know whether three components are RGB or YCbCr (ITU-T T.872, 6.5.3).
void PutColors(std::string& out, bool luma_and_chroma) {
  constexpr std::uint8_t kApp14 = 0xEE;
  PutMarker(out, kApp14);
  PutWord(out, 14);
  out += std::string("Adobe\0\x64\0\0\0\0", 11);
  out += static_cast<char>(luma_and_chroma ? 1 : 0);
}

// The coded data of all strips, each a restart interval; nothing where they cannot be that.
std::optional<std::string> JoinedData(const TiffStrips& page, const Parts& first) {
  const auto rows = static_cast<std::size_t>(page.rows);
  const auto height = static_cast<std::size_t>(page.height);
  std::string joined;
  for (std::size_t i = 0; i < page.strips.size(); ++i) {
    const auto strip = Parse(page.strips[i]);
    if (!strip || strip->head != first.head || strip->scan != first.scan ||
        strip->height != std::min(rows, height - i * rows)) {
      return std::nullopt;
    }
    const auto data = OneScan(strip->data);
    if (!data) return std::nullopt;
    if (i > 0) PutMarker(joined, static_cast<std::uint8_t>(kRestart0 + (i - 1) % 8));
    joined += *data;
  }
  PutMarker(joined, kEnd);
  return joined;
}

// The units of coding in a restart interval of a strip's size; 0 where a strip cannot be one.
std::size_t UnitsOfStrip(const TiffStrips& page, const Parts& first) {
  const auto rows = static_cast<std::size_t>(page.rows);
  const auto height = static_cast<std::size_t>(page.height);
  if (rows == 0 || rows % first.unit_height != 0 || page.strips.size() != (height + rows - 1) / rows ||
      first.restarts || first.frame == kProgressive || first.scanned != first.components) {
    return 0;
  }
  const std::size_t units = (first.width + first.unit_width - 1) / first.unit_width * (rows / first.unit_height);
  return units > kMostWord ? 0 : units;
}

}  // namespace

std::optional<std::string> JoinedJpeg(const TiffStrips& page) {
  const auto first = Parse(page.strips.front());
  const auto tables = page.tables.empty() ? std::optional(Parts()) : Parse(page.tables);
  if (!first || !tables || first->scan.empty() || tables->frame != 0 || tables->restarts) return std::nullopt;
  const auto height = static_cast<std::size_t>(page.height);
  if (first->width != static_cast<std::size_t>(page.width) || height > kMostWord ||
      first->components != static_cast<std::size_t>(page.samples)) {
    return std::nullopt;
  }
  std::string file;
  PutMarker(file, kStart);
  if (first->components == 3) PutColors(file, page.luma_and_chroma);
  file += tables->head;
  std::string height_word;
  PutWord(height_word, height);
  std::string head = first->head;
  file += head.replace(first->height_at, 2, height_word);
  if (page.strips.size() == 1) {
    if (first->height != height) return std::nullopt;
    file += first->scan;
    return file.append(first->data);
  }
  const std::size_t units = UnitsOfStrip(page, *first);
  const auto data = units == 0 ? std::nullopt : JoinedData(page, *first);
  if (!data) return std::nullopt;
  PutMarker(file, kRestartInterval);
  PutWord(file, 4);
  PutWord(file, units);
  return file + first->scan + *data;
}

}  // namespace benchleaf

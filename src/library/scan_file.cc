#include "library/scan_file.h"

#include "library/content_hash.h"
#include "library/natural_order.h"
#include "library/regular_file.h"

#include <algorithm>
#include <array>
#include <cstddef>
#include <vector>

namespace benchleaf {
namespace {

struct Signature {
  std::string_view bytes;
  ScanFormat format;
};

constexpr std::array kSignatures = {
    Signature{std::string_view("II*\0", 4), ScanFormat::kTiff},  // TIFF, low byte first
    Signature{std::string_view("MM\0*", 4), ScanFormat::kTiff},  // TIFF, high byte first
    Signature{std::string_view("II+\0", 4), ScanFormat::kTiff},  // BigTIFF, low byte first
    Signature{std::string_view("MM\0+", 4), ScanFormat::kTiff},  // BigTIFF, high byte first
    Signature{"\x89PNG\r\n\x1A\n", ScanFormat::kPng},           Signature{"\xFF\xD8\xFF", ScanFormat::kJpeg},
};

constexpr std::string_view kPdfHeader = "%PDF-";

}  // namespace

bool HasScanName(std::string_view file_name) {
  constexpr std::array<std::string_view, 6> kExtensions = {".pdf", ".tif", ".tiff", ".png", ".jpg", ".jpeg"};
  const std::string lower = LowerAscii(file_name);
  return std::any_of(kExtensions.begin(), kExtensions.end(), [&](std::string_view extension) {
    return lower.size() > extension.size() && lower.ends_with(extension);
  });
}

std::optional<ScanFormat> FormatOfContent(std::span<const std::uint8_t> first_bytes) {
  const auto begins_with = [&](std::string_view signature) {
    return first_bytes.size() >= signature.size() &&
           std::equal(signature.begin(), signature.end(), first_bytes.begin(),
                      [](char a, std::uint8_t b) { return static_cast<std::uint8_t>(a) == b; });
  };
  for (const Signature& signature : kSignatures) {
    if (begins_with(signature.bytes)) {
      return signature.format;
    }
  }
  const auto head = first_bytes.first(std::min(first_bytes.size(), kFormatBytes));
  const bool is_pdf = std::search(head.begin(), head.end(), kPdfHeader.begin(), kPdfHeader.end()) != head.end();
  return is_pdf ? std::optional(ScanFormat::kPdf) : std::nullopt;
}

Result<ScanFile> InspectScan(const std::filesystem::path& root, const std::string& relative) {
  auto file = RegularFile::Open(root / relative, relative);
  if (!file) {
    return tl::unexpected(file.error());
  }
  ScanFile scan;
  scan.path = relative;
  ContentHash hash;
  std::vector<std::uint8_t> buffer(std::size_t{1} << 18U);
  for (;;) {
    const Result<std::size_t> got = file->Read(buffer);
    if (!got) {
      return tl::unexpected(got.error());
    }
    const std::span<const std::uint8_t> bytes(buffer.data(), *got);
    if (scan.size_bytes == 0) {
      if (bytes.empty()) {
        return Fail(ErrorCode::kEmpty, "holds no bytes; copy or scan it again", relative);
      }
      const auto format = FormatOfContent(bytes);
      if (!format) {
        return Fail(ErrorCode::kDamaged, "is no PDF, TIFF, PNG or JPEG, whatever its name says", relative);
      }
      scan.format = *format;
    }
    hash.Add(bytes);
    scan.size_bytes += bytes.size();
    if (bytes.size() < buffer.size()) {
      break;
    }
  }
  scan.hash = hash.Take();
  return scan;
}

}  // namespace benchleaf

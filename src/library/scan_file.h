// One file of the library: what its content is.

#ifndef BENCHLEAF_LIBRARY_SCAN_FILE_H_
#define BENCHLEAF_LIBRARY_SCAN_FILE_H_

#include "benchleaf/core/result.h"
#include "benchleaf/library/library.h"

#include <cstdint>
#include <filesystem>
#include <optional>
#include <span>
#include <string>
#include <string_view>

namespace benchleaf {

// Whether the name ends in .pdf, .tif, .tiff, .png, .jpg or .jpeg, in any case.
bool HasScanName(std::string_view file_name);

// The extensions of HasScanName, for messages.
inline constexpr std::string_view kScanNames = ".pdf, .tif, .tiff, .png, .jpg, .jpeg";

// How many bytes from its beginning tell a file's format: a PDF's header may stand behind up to 1 KB of other bytes
// (ISO 32000-1, annex H, note 13, tells that readers accept this).
inline constexpr std::size_t kFormatBytes = 1024 + 5;

// The format that the first bytes of a file announce: "%PDF-", the TIFF 6.0 header (BigTIFF's too), the PNG signature
// (ISO/IEC 15948), a JPEG's start-of-image marker (ITU-T T.81). Nothing when it is none of these.
std::optional<ScanFormat> FormatOfContent(std::span<const std::uint8_t> first_bytes);

// Reads the whole file at `root`/`relative` to tell its format and hash; `volume` is left at 1. Errors name
// `relative`. Fails with kEmpty (zero bytes), kDamaged (no scan, whatever its name says), kUnsupported (a pipe,
// socket or device), kMissing or kIo.
Result<ScanFile> InspectScan(const std::filesystem::path& root, const std::string& relative);

}  // namespace benchleaf

#endif  // BENCHLEAF_LIBRARY_SCAN_FILE_H_

#include "cli/picture_files.h"

#include <system_error>

namespace benchleaf {

namespace fs = std::filesystem;

namespace {

std::string SafeStem(const std::string& subject) {
  std::string stem;
  for (const char c : subject) {
    const bool keeps =
        (c >= '0' && c <= '9') || (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z') || c == '.' || c == '_';
    const char safe = keeps ? c : '-';
    // Neither a hidden file nor what looks like an option.
    if (stem.empty() && (safe == '.' || safe == '-')) continue;
    stem += safe;
  }
  return stem.empty() ? "picture" : stem;
}

}  // namespace

Result<std::vector<PictureFiles>> NamePictures(const std::string& out, const std::string& subject, std::size_t count) {
  fs::path stem = SafeStem(subject);
  if (!out.empty()) {
    const fs::path given = out;
    if (given.extension() != ".png" || given.stem().empty()) {
      return Fail(ErrorCode::kUsage, "pictures are written as PNG: give a name that ends in .png", out);
    }
    stem = given.parent_path() / given.stem();
  }
  std::vector<PictureFiles> files;
  for (std::size_t i = 1; i <= count; ++i) {
    std::string numbered = stem.string();
    if (count > 1) numbered += '-' + std::to_string(i);
    files.push_back({numbered + ".png", numbered + "-page.png"});
  }
  return files;
}

Result<void> CheckNoneExists(const std::vector<fs::path>& files) {
  for (const fs::path& file : files) {
    std::error_code ignored;
    if (fs::exists(fs::symlink_status(file, ignored))) {
      return Fail(ErrorCode::kIo, "is there already; --force writes over it, -o gives another name", file.string());
    }
  }
  return {};
}

}  // namespace benchleaf

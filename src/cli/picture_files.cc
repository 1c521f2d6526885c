#include "cli/picture_files.h"

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

Result<std::vector<fs::path>> NameFiles(const std::string& out, const std::string& subject, std::size_t count,
                                        const std::string& ending) {
  fs::path stem = SafeStem(subject);
  if (!out.empty()) {
    const fs::path given = out;
    if (given.extension() != ending || given.stem().empty()) {
      return Fail(ErrorCode::kUsage, "give a name that ends in " + ending + ": no other form is written", out);
    }
    stem = given.parent_path() / given.stem();
  }
  std::vector<fs::path> files;
  for (std::size_t i = 1; i <= count; ++i) {
    std::string numbered = stem.string();
    if (count > 1) numbered += '-' + std::to_string(i);
    files.emplace_back(numbered + ending);
  }
  return files;
}

Result<std::vector<PictureFiles>> NamePictures(const std::string& out, const std::string& subject, std::size_t count) {
  const auto spots = NameFiles(out, subject, count, ".png");
  if (!spots) return tl::unexpected(spots.error());
  std::vector<PictureFiles> files;
  for (const fs::path& spot : *spots) {
    fs::path page = spot;
    page.replace_filename(spot.stem().string() + "-page.png");
    files.push_back({spot, page});
  }
  return files;
}

}  // namespace benchleaf

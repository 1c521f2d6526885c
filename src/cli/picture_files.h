// The files that pictures and copies go to.

#ifndef BENCHLEAF_SRC_CLI_PICTURE_FILES_H_
#define BENCHLEAF_SRC_CLI_PICTURE_FILES_H_

#include "benchleaf/core/result.h"

#include <filesystem>
#include <string>
#include <vector>

namespace benchleaf {

struct PictureFiles {
  std::filesystem::path spot;  // STEM.png
  std::filesystem::path page;  // STEM-page.png
};

// Files for `count` pictures: named as `out` says (which must end in .png), else after `subject` in the current
// folder, numbered when there are several. Characters of the subject that a file's name had better not hold become
// hyphens. Fails with kUsage.
Result<std::vector<PictureFiles>> NamePictures(const std::string& out, const std::string& subject, std::size_t count);

// Files for `count` results of that ending (".pdf"), named and numbered in the same way.
Result<std::vector<std::filesystem::path>> NameFiles(const std::string& out, const std::string& subject,
                                                     std::size_t count, const std::string& ending);

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_CLI_PICTURE_FILES_H_

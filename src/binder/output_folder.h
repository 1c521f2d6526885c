// A folder that is written beside its place and takes it only when it is whole.

#ifndef BENCHLEAF_SRC_BINDER_OUTPUT_FOLDER_H_
#define BENCHLEAF_SRC_BINDER_OUTPUT_FOLDER_H_

#include "raster/descriptor.h"

#include "benchleaf/core/result.h"

#include <filesystem>
#include <memory>
#include <set>
#include <string>
#include <string_view>

namespace benchleaf::binder {

// What was written goes away with the object, unless it took its place.
class OutputFolder {
 public:
  // `out` may be missing, empty, or a binder of ours in which nothing else lies. Fails with kForeign for anything else
  // and with kIo when no folder can be made beside it. What runs that were killed left beside it is removed.
  static Result<std::unique_ptr<OutputFolder>> Begin(const std::filesystem::path& out);
  ~OutputFolder();
  OutputFolder(const OutputFolder&) = delete;
  OutputFolder& operator=(const OutputFolder&) = delete;

  // `name` is relative, of '/' between names of ours; folders are made as needed. Fails with kIo.
  Result<void> Write(const std::string& name, std::string_view bytes);

  // Where it will be; what is there now stands until TakePlace.
  const std::filesystem::path& place() const { return out_; }

  // Puts all on the disk, then the folder in its place, in one step where the system can. Fails with kIo; then what was
  // there before stands as it was.
  Result<void> TakePlace();

 private:
  OutputFolder(std::filesystem::path out, std::filesystem::path part, Descriptor mark);

  std::filesystem::path out_;
  std::filesystem::path part_;
  Descriptor mark_;                // tells other runs that this one lives
  std::set<std::string> folders_;  // that were made
};

}  // namespace benchleaf::binder

#endif  // BENCHLEAF_SRC_BINDER_OUTPUT_FOLDER_H_

// What a run on one shard does besides: which sets it takes, and under which name it writes.

#ifndef BENCHLEAF_SRC_WORK_SHARD_RUN_H_
#define BENCHLEAF_SRC_WORK_SHARD_RUN_H_

#include "benchleaf/core/result.h"
#include "benchleaf/library/library.h"
#include "benchleaf/library/shard.h"
#include "benchleaf/store/index_writer.h"

#include <filesystem>
#include <memory>
#include <set>
#include <string>
#include <utility>

namespace benchleaf {

class ShardRun {
 public:
  ShardRun(const ShardPlace& place, const std::filesystem::path& database) : place_(place), database_(database) {}

  // Leaves the shard's sets in the library, and keeps in mind what the others hold.
  void TakeSets(ScannedLibrary& library);
  // Whether the manual is another shard's.
  bool IsElsewhere(const std::string& set, const std::string& manual) const;

  // Gives a shard that was whole its unfinished name, to be brought up to date, and gives that name. Fails with
  // kForeign when the folder holds anything but this shard, or both are there.
  Result<std::filesystem::path> Begin() const;
  // Takes the manifest out: until Finish, the index is no whole shard.
  static Result<void> Open(IndexWriter& writer) { return writer.SetManifest(std::nullopt); }
  // Writes the manifest, lets go of the writer, and gives the shard its name.
  Result<void> Finish(std::unique_ptr<IndexWriter> writer, const std::string& reading, const std::string& rules) const;

 private:
  ShardPlace place_;
  std::filesystem::path database_;
  std::string library_;                                      // digest
  std::set<std::pair<std::string, std::string>> elsewhere_;  // set and manual
};

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_WORK_SHARD_RUN_H_

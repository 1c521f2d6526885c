// The mark by which a folder that is being written is known, and by which one is found that nobody writes any more.

#ifndef BENCHLEAF_SRC_BINDER_UNFINISHED_FOLDER_H_
#define BENCHLEAF_SRC_BINDER_UNFINISHED_FOLDER_H_

#include "raster/descriptor.h"

#include "benchleaf/core/result.h"

#include <filesystem>

namespace benchleaf::binder {

// The file in the folder that is the mark.
inline constexpr const char* kUnfinished = "benchleaf-unfinished.txt";

// Makes the folder, with the mark in it, which is locked as long as the descriptor is open: a writer that ends, however
// it ends, loses its lock. The folder has its name only once that is so. Fails with kIo.
Result<Descriptor> MakeUnfinished(const std::filesystem::path& folder);

// Puts the mark into a folder, so that it counts as left behind. Does nothing where that cannot be.
void MarkUnfinished(const std::filesystem::path& folder);

// Removes the folder, the mark last, so that what is left of it is still known.
void RemoveUnfinished(const std::filesystem::path& folder);

// Removes the folders beside `out` that writers of it left behind: those with a name of PartOf and a mark without a
// lock. Where locks cannot be asked for, none.
void RemoveDeadBeside(const std::filesystem::path& out);

// "OUT.123.part", beside `out`, for the process of that number.
std::filesystem::path PartOf(const std::filesystem::path& out, long process);

}  // namespace benchleaf::binder

#endif  // BENCHLEAF_SRC_BINDER_UNFINISHED_FOLDER_H_

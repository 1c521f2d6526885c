#include "store/xapian_errors.h"

#include "store/writer_note.h"

#include <cerrno>
#include <cstring>
#include <string>
#include <string_view>

namespace benchleaf::store {

namespace {

// Of an error during a commit Xapian keeps no more than the words, within its own.
bool Tells(const Xapian::Error& error, int reason) {
  const char* const system = error.get_error_string();
  const std::string words = std::strerror(reason);
  return (system != nullptr && words == system) || error.get_msg().find(words) != std::string::npos;
}

}  // namespace

Error FromXapian(const Xapian::Error& error, const std::filesystem::path& folder) {
  const std::string_view type = error.get_type();
  const std::string source = folder.string();
  // The system's words for errno, when Xapian met a system error.
  const char* const system = error.get_error_string();

  // The lock may also fail for want of a descriptor, or of a file system that has locks.
  if (type == "DatabaseLockError" && error.get_msg().find("already locked") != std::string::npos) {
    return {ErrorCode::kBusy, "the index is being written by " + WriterNamed(folder) + "; wait until it is done",
            source, 0};
  }
  if (type == "DatabaseCorruptError") {
    return {ErrorCode::kDamaged, "the index is damaged (" + error.get_msg() + "); delete its folder and index again",
            source, 0};
  }
  if (type == "DatabaseVersionError") {
    return {ErrorCode::kForeign, "the folder holds a database of another version of Xapian; name another folder",
            source, 0};
  }
  if (Tells(error, ENOSPC) || Tells(error, EDQUOT)) {
    return {ErrorCode::kIo, "the disk is full; the index is as it was before", source, 0};
  }
  std::string message = "the index cannot be used: " + error.get_msg();
  if (system != nullptr) message += std::string(" (") + system + ")";
  return {ErrorCode::kIo, message, source, 0};
}

}  // namespace benchleaf::store

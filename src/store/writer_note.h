// A small file in the index's folder that tells who writes it, for the message that others get. The lock itself is
// Xapian's: a note left by a process that was killed does no harm, and the next writer replaces it.

#ifndef BENCHLEAF_STORE_WRITER_NOTE_H_
#define BENCHLEAF_STORE_WRITER_NOTE_H_

#include <filesystem>
#include <string>

namespace benchleaf::store {

inline constexpr const char* kWriterNoteName = "writer";

// Leaves the note while it lives.
// REQUIRES: this process holds the lock, from before the constructor until after the destructor.
class WriterNote {
 public:
  explicit WriterNote(const std::filesystem::path& folder);
  ~WriterNote();
  WriterNote(const WriterNote&) = delete;
  WriterNote& operator=(const WriterNote&) = delete;

 private:
  std::filesystem::path path_;
};

// "process 1234 on bench since 2024-05-01 12:00:00 UTC" as the note in the folder says, or "another process" when there
// is none or it is out of date.
std::string WriterNamed(const std::filesystem::path& folder);

}  // namespace benchleaf::store

#endif  // BENCHLEAF_STORE_WRITER_NOTE_H_

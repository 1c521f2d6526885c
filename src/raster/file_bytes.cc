#include "raster/file_bytes.h"

#include "raster/descriptor.h"

#include <fcntl.h>
#include <sys/mman.h>
#include <sys/stat.h>

#include <cerrno>
#include <utility>

namespace benchleaf {

Result<FileBytes> FileBytes::Map(const std::filesystem::path& path, const std::string& name, std::int64_t max_bytes) {
  std::error_code error;
  const std::filesystem::file_status status = std::filesystem::status(path, error);
  if (status.type() == std::filesystem::file_type::not_found) {
    return Fail(ErrorCode::kMissing, "is not there", name);
  }
  if (error) {
    return Fail(ErrorCode::kIo, "cannot be opened: " + error.message(), name);
  }
  // Asked before opening: opening a pipe would wait for its other end.
  if (status.type() != std::filesystem::file_type::regular) {
    return Fail(ErrorCode::kUnsupported, "is no regular file", name);
  }
  const Descriptor file(open(path.c_str(), O_RDONLY | O_NONBLOCK | O_NOCTTY | O_CLOEXEC));
  struct stat facts {};
  if (!file || fstat(file.get(), &facts) != 0) {
    return Fail(ErrorCode::kIo, "cannot be opened: " + SystemReason(errno), name);
  }
  if (facts.st_size == 0) {
    return Fail(ErrorCode::kEmpty, "holds no bytes; copy or scan it again", name);
  }
  if (facts.st_size > max_bytes) {
    return Fail(ErrorCode::kTooLarge,
                "has " + std::to_string(facts.st_size) + " bytes, over the limit of " + std::to_string(max_bytes),
                name);
  }
  const auto size = static_cast<std::size_t>(facts.st_size);
  void* const start = mmap(nullptr, size, PROT_READ, MAP_PRIVATE, file.get(), 0);
  if (start == MAP_FAILED) {
    return Fail(ErrorCode::kIo, "cannot be read: " + SystemReason(errno), name);
  }
  return FileBytes(start, size);
}

FileBytes::~FileBytes() {
  if (start_ != nullptr) {
    munmap(start_, size_);
  }
}

FileBytes::FileBytes(FileBytes&& other) noexcept
    : start_(std::exchange(other.start_, nullptr)), size_(std::exchange(other.size_, 0)) {}

FileBytes& FileBytes::operator=(FileBytes&& other) noexcept {
  std::swap(start_, other.start_);
  std::swap(size_, other.size_);
  return *this;
}

void FileBytes::Release() const {
  if (start_ != nullptr) {
    madvise(start_, size_, MADV_DONTNEED);
  }
}

}  // namespace benchleaf

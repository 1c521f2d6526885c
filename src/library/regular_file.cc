#include "library/regular_file.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <system_error>
#include <utility>

namespace benchleaf {

std::string SystemReason(int error_number) { return std::error_code(error_number, std::generic_category()).message(); }

Result<RegularFile> RegularFile::Open(const std::filesystem::path& path, std::string name) {
  struct stat status {};
  if (stat(path.c_str(), &status) != 0) {
    const int error = errno;
    return Fail(error == ENOENT ? ErrorCode::kMissing : ErrorCode::kIo, "cannot be opened: " + SystemReason(error),
                std::move(name));
  }
  // Opening a pipe can block, opening a device can act on it: both are ruled out before, and once more after opening
  // in case the name was given to something else in between.
  if (!S_ISREG(status.st_mode)) {
    return Fail(ErrorCode::kUnsupported, "is no regular file", std::move(name));
  }
  const int descriptor = open(path.c_str(), O_RDONLY | O_NONBLOCK | O_NOCTTY | O_CLOEXEC);
  if (descriptor < 0) {
    return Fail(ErrorCode::kIo, "cannot be opened: " + SystemReason(errno), std::move(name));
  }
  RegularFile file(descriptor, std::move(name));
  if (fstat(descriptor, &status) != 0 || !S_ISREG(status.st_mode)) {
    return Fail(ErrorCode::kUnsupported, "is no regular file", file.name());
  }
  return file;
}

RegularFile::RegularFile(int descriptor, std::string name) : descriptor_(descriptor), name_(std::move(name)) {}

RegularFile::~RegularFile() {
  if (descriptor_ >= 0) {
    close(descriptor_);
  }
}

RegularFile::RegularFile(RegularFile&& other) noexcept
    : descriptor_(std::exchange(other.descriptor_, -1)), name_(std::move(other.name_)) {}

RegularFile& RegularFile::operator=(RegularFile&& other) noexcept {
  std::swap(descriptor_, other.descriptor_);
  std::swap(name_, other.name_);
  return *this;
}

Result<std::size_t> RegularFile::Read(std::span<std::uint8_t> buffer) {
  std::size_t filled = 0;
  while (filled < buffer.size()) {
    const ssize_t got = read(descriptor_, buffer.data() + filled, buffer.size() - filled);
    if (got == 0) {
      break;
    }
    if (got > 0) {
      filled += static_cast<std::size_t>(got);
    } else if (errno != EINTR) {
      return Fail(ErrorCode::kIo, "cannot be read: " + SystemReason(errno), name_);
    }
  }
  return filled;
}

}  // namespace benchleaf

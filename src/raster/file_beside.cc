#include "benchleaf/raster/file_beside.h"

#include "raster/descriptor.h"

#include <fcntl.h>
#include <unistd.h>

#include <cerrno>
#include <string>

namespace benchleaf {

namespace fs = std::filesystem;

namespace {

tl::unexpected<Error> Failed(const char* what, int error_number, const fs::path& path) {
  const bool full = error_number == ENOSPC || error_number == EDQUOT;
  return Fail(ErrorCode::kIo,
              std::string(what) + ": " +
                  (full ? "the disk is full; make room or choose another place" : SystemReason(error_number)),
              path.string());
}

}  // namespace

FileBeside::~FileBeside() {
  if (file_ < 0) {
    return;
  }
  close(file_);
  if (!in_place_) {
    unlink(part_.c_str());
  }
}

Result<void> FileBeside::Open() {
  // A name of this process; one that an earlier process of that number left behind is passed over.
  constexpr int kMostTries = 100;
  for (int i = 0; i < kMostTries && file_ < 0; ++i) {
    part_ = target_;
    part_ += '.' + std::to_string(getpid()) + '-' + std::to_string(i) + ".part";
    file_ = open(part_.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, 0666);
    if (file_ < 0 && errno != EEXIST) {
      break;
    }
  }
  if (file_ < 0) {
    return Failed("cannot be written", errno, target_);
  }
  return {};
}

Result<void> FileBeside::Write(std::string_view bytes) {
  if (file_ < 0) {
    if (Result<void> opened = Open(); !opened) {
      return opened;
    }
  }
  while (!bytes.empty()) {
    const ssize_t written = write(file_, bytes.data(), bytes.size());
    if (written >= 0) {
      bytes.remove_prefix(static_cast<std::size_t>(written));
    } else if (errno != EINTR) {
      return Failed("cannot be written", errno, target_);
    }
  }
  return {};
}

Result<void> FileBeside::TakeTargetsPlace() {
  if (fsync(file_) != 0) {
    return Failed("cannot be written", errno, target_);
  }
  if (rename(part_.c_str(), target_.c_str()) != 0) {
    return Failed("cannot be put in its place", errno, target_);
  }
  in_place_ = true;
  // The new name lasts only once its folder is on disk; some file systems cannot do that, and the file stands anyway.
  const fs::path folder = target_.has_parent_path() ? target_.parent_path() : fs::path(".");
  const Descriptor directory(open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC));
  if (directory) {
    static_cast<void>(fsync(directory.get()));
  }
  return {};
}

}  // namespace benchleaf

#include "raster/descriptor.h"

#include "benchleaf/pixels/image_file.h"
#include "benchleaf/raster/page_source.h"

#include <fcntl.h>
#include <unistd.h>

#include <cerrno>
#include <string>
#include <string_view>

namespace benchleaf {
namespace {

namespace fs = std::filesystem;

// A file beside the target that goes away unless it takes the target's place.
class FileBeside {
 public:
  explicit FileBeside(const fs::path& target) : target_(target) {
    // A name of this process; one that an earlier process of that number left behind is passed over.
    constexpr int kMostTries = 100;
    for (int i = 0; i < kMostTries && !file_; ++i) {
      part_ = target;
      part_ += '.' + std::to_string(getpid()) + '-' + std::to_string(i) + ".part";
      file_ = Descriptor(open(part_.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, 0666));
      if (!file_ && errno != EEXIST) {
        break;
      }
    }
  }
  ~FileBeside() {
    if (file_ && !in_place_) {
      unlink(part_.c_str());
    }
  }
  FileBeside(const FileBeside&) = delete;
  FileBeside& operator=(const FileBeside&) = delete;

  explicit operator bool() const { return static_cast<bool>(file_); }

  // Gives false, with errno set, when not all bytes reach the disk.
  bool Write(std::string_view bytes) {
    while (!bytes.empty()) {
      const ssize_t written = write(file_.get(), bytes.data(), bytes.size());
      if (written >= 0) {
        bytes.remove_prefix(static_cast<std::size_t>(written));
      } else if (errno != EINTR) {
        return false;
      }
    }
    return fsync(file_.get()) == 0;
  }

  bool TakeTargetsPlace() {
    in_place_ = rename(part_.c_str(), target_.c_str()) == 0;
    return in_place_;
  }

 private:
  const fs::path& target_;
  fs::path part_;
  Descriptor file_{-1};
  bool in_place_ = false;
};

tl::unexpected<Error> Failed(const char* what, int error_number, const fs::path& path) {
  const bool full = error_number == ENOSPC || error_number == EDQUOT;
  return Fail(ErrorCode::kIo,
              std::string(what) + ": " +
                  (full ? "the disk is full; make room or choose another place" : SystemReason(error_number)),
              path.string());
}

}  // namespace

Result<void> WritePng(const fs::path& path, const ColorImage& image) {
  const std::string bytes = EncodePng(image);
  if (bytes.empty()) {
    return Fail(ErrorCode::kUnsupported, "a picture without pixels cannot be written", path.string());
  }
  FileBeside file(path);
  if (!file) {
    return Failed("the picture cannot be written", errno, path);
  }
  if (!file.Write(bytes)) {
    return Failed("the picture cannot be written", errno, path);
  }
  if (!file.TakeTargetsPlace()) {
    return Failed("the picture cannot be put in its place", errno, path);
  }
  // The new name lasts only once its folder is on disk; some file systems cannot do that, and the file stands anyway.
  const fs::path folder = path.has_parent_path() ? path.parent_path() : fs::path(".");
  const Descriptor directory(open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC));
  if (directory) {
    static_cast<void>(fsync(directory.get()));
  }
  return {};
}

}  // namespace benchleaf

#include "binder/output_folder.h"

#include "binder/addresses.h"
#include "binder/unfinished_folder.h"

#include <fcntl.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <cerrno>
#include <cstdio>
#include <fstream>
#include <system_error>
#include <utility>
#include <vector>

namespace benchleaf::binder {
namespace {

namespace fs = std::filesystem;

constexpr const char* kMarker = "benchleaf-binder.txt";
constexpr const char* kMarkerFirstLine = "A binder written by benchleaf.";

bool IsOfABinder(const std::string& name) {
  const std::array<std::string_view, 9> names = {"index.html", "tubes.html", "help.html",  kMarker,    kLookFolder,
                                                 kDataFolder,  kSetsFolder,  kTubesFolder, kUnfinished};
  return std::find(names.begin(), names.end(), name) != names.end();
}

tl::unexpected<Error> Failed(const char* what, int error_number, const fs::path& path) {
  const bool full = error_number == ENOSPC || error_number == EDQUOT || error_number == EFBIG;
  return Fail(ErrorCode::kIo,
              std::string(what) + ": " +
                  (full ? "the disk is full; make room or choose another place" : SystemReason(error_number)),
              path.string());
}

bool HasMarker(const fs::path& folder) {
  std::error_code ignored;
  const fs::path marker = folder / kMarker;
  if (!fs::is_regular_file(fs::symlink_status(marker, ignored))) return false;
  std::ifstream stream(marker);
  std::string line;
  return std::getline(stream, line) && line == kMarkerFirstLine;
}

// Whether the folder may be replaced.
Result<void> CheckReplaceable(const fs::path& out) {
  std::error_code failed;
  const fs::file_status status = fs::symlink_status(out, failed);
  if (!fs::exists(status)) return {};
  if (!fs::is_directory(status)) {
    return Fail(ErrorCode::kForeign, "is there already and is no folder; name another place for the binder",
                out.string());
  }
  std::vector<std::string> names;
  for (const fs::directory_entry& entry : fs::directory_iterator(out, failed)) {
    names.push_back(entry.path().filename().string());
  }
  if (failed) return Failed("the folder cannot be looked into", failed.value(), out);
  if (names.empty()) return {};
  if (!HasMarker(out)) {
    return Fail(ErrorCode::kForeign, "holds something else and is left alone; name a new folder for the binder",
                out.string());
  }
  const auto foreign =
      std::find_if(names.begin(), names.end(), [](const std::string& name) { return !IsOfABinder(name); });
  if (foreign != names.end()) {
    return Fail(ErrorCode::kForeign,
                "is a binder, but holds '" + *foreign + "' besides; move that away, since a binder is replaced whole",
                out.string());
  }
  return {};
}

// Swaps the two folders' names, in one step where the system can.
bool Exchange(const fs::path& a, const fs::path& b) {
  if (renameat2(AT_FDCWD, a.c_str(), AT_FDCWD, b.c_str(), RENAME_EXCHANGE) == 0) return true;
  if (errno != EINVAL && errno != ENOSYS) return false;
  fs::path aside = b;
  aside += ".old";
  if (std::rename(b.c_str(), aside.c_str()) != 0) return false;
  if (std::rename(a.c_str(), b.c_str()) != 0) {
    const int reason = errno;
    static_cast<void>(std::rename(aside.c_str(), b.c_str()));
    errno = reason;
    return false;
  }
  return std::rename(aside.c_str(), a.c_str()) == 0;
}

}  // namespace

OutputFolder::OutputFolder(fs::path out, fs::path part, Descriptor mark)
    : out_(std::move(out)), part_(std::move(part)), mark_(std::move(mark)) {}

OutputFolder::~OutputFolder() {
  // After the exchange it is the old binder that lies here.
  RemoveUnfinished(part_);
}

Result<std::unique_ptr<OutputFolder>> OutputFolder::Begin(const fs::path& out) {
  std::error_code failed;
  fs::path place = fs::weakly_canonical(fs::absolute(out), failed);
  if (failed) return Failed("the place for the binder cannot be found", failed.value(), out);
  // "binder/" is the folder "binder".
  if (!place.has_filename()) place = place.parent_path();
  if (auto replaceable = CheckReplaceable(place); !replaceable) return tl::unexpected(replaceable.error());
  RemoveDeadBeside(place);
  fs::path part = PartOf(place, getpid());
  auto mark = MakeUnfinished(part);
  if (!mark) return tl::unexpected(mark.error());
  std::unique_ptr<OutputFolder> folder(new OutputFolder(std::move(place), std::move(part), std::move(*mark)));
  const auto marked =
      folder->Write(kMarker, std::string(kMarkerFirstLine) +
                                 "\nOpen index.html. benchleaf replaces this folder whole when it writes "
                                 "the binder again: keep notes elsewhere.\n");
  if (!marked) return tl::unexpected(marked.error());
  return folder;
}

Result<void> OutputFolder::Write(const std::string& name, std::string_view bytes) {
  const fs::path path = part_ / name;
  std::error_code failed;
  if (folders_.insert(path.parent_path().string()).second && !fs::create_directories(path.parent_path(), failed) &&
      failed) {
    return Failed("the binder cannot be written", failed.value(), out_);
  }
  const Descriptor file(open(path.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC | O_NOFOLLOW, 0666));
  if (!file) return Failed("the binder cannot be written", errno, out_);
  while (!bytes.empty()) {
    const ssize_t written = write(file.get(), bytes.data(), bytes.size());
    if (written >= 0) {
      bytes.remove_prefix(static_cast<std::size_t>(written));
    } else if (errno != EINTR) {
      return Failed("the binder cannot be written", errno, out_);
    }
  }
  return {};
}

Result<void> OutputFolder::TakePlace() {
  const Descriptor folder(open(part_.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC));
  if (!folder || syncfs(folder.get()) != 0) return Failed("the binder cannot be put on the disk", errno, out_);
  // Once more: something may have been put there meanwhile.
  if (auto replaceable = CheckReplaceable(out_); !replaceable) return replaceable;
  std::error_code ignored;
  // The old one will be what is left behind, should this run be killed before it is removed.
  if (HasMarker(out_)) MarkUnfinished(out_);
  const bool done = fs::exists(fs::symlink_status(out_, ignored)) ? Exchange(part_, out_)
                                                                  : std::rename(part_.c_str(), out_.c_str()) == 0;
  const int reason = errno;
  fs::remove(out_ / kUnfinished, ignored);
  if (!done) return Failed("the binder cannot be put in its place", reason, out_);
  return {};
}

}  // namespace benchleaf::binder

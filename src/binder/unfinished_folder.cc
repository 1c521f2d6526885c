#include "binder/unfinished_folder.h"

#include <fcntl.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <cstdio>
#include <fstream>
#include <string>
#include <string_view>
#include <system_error>
#include <vector>

namespace benchleaf::binder {
namespace {

namespace fs = std::filesystem;

constexpr std::string_view kText = "benchleaf was writing a binder here. Its next run removes this folder.\n";
constexpr std::string_view kEnding = ".part";

// A lock of the open file, not of the process (fcntl(2), F_OFD_SETLK). False where another has it, or locks are not
// to be had.
bool Lock(const Descriptor& file) {
  struct flock lock {};
  lock.l_type = F_WRLCK;
  lock.l_whence = SEEK_SET;
  return fcntl(file.get(), F_OFD_SETLK, &lock) == 0;
}

bool IsPartOf(const std::string& name, const std::string& out) {
  if (!name.starts_with(out + '.') || !name.ends_with(kEnding) || name.size() <= out.size() + 1 + kEnding.size()) {
    return false;
  }
  const std::string_view number(name.data() + out.size() + 1, name.size() - out.size() - 1 - kEnding.size());
  return std::all_of(number.begin(), number.end(), [](char c) { return c >= '0' && c <= '9'; });
}

void RemoveIfDead(const fs::path& folder) {
  const Descriptor mark(open((folder / kUnfinished).c_str(), O_RDWR | O_CLOEXEC | O_NOFOLLOW));
  if (mark && Lock(mark)) RemoveUnfinished(folder);
}

}  // namespace

fs::path PartOf(const fs::path& out, long process) {
  fs::path part = out;
  part += '.' + std::to_string(process) + std::string(kEnding);
  return part;
}

void MarkUnfinished(const fs::path& folder) { std::ofstream(folder / kUnfinished) << kText; }

Result<Descriptor> MakeUnfinished(const fs::path& folder) {
  const auto failed = [&](int reason) {
    return Fail(ErrorCode::kIo, "no folder can be made beside the binder's place: " + SystemReason(reason),
                folder.string());
  };
  // Under another name at first: a folder of this kind without a lock is one left behind.
  fs::path fresh = folder;
  fresh += ".new";
  std::error_code error;
  if (!fs::create_directory(fresh, error) && error) return failed(error.value());
  MarkUnfinished(fresh);
  Descriptor mark(open((fresh / kUnfinished).c_str(), O_RDWR | O_CLOEXEC | O_NOFOLLOW));
  if (!mark) return failed(errno);
  static_cast<void>(Lock(mark));  // without locks nothing is ever taken for left behind
  if (renameat2(AT_FDCWD, fresh.c_str(), AT_FDCWD, folder.c_str(), RENAME_NOREPLACE) == 0) return mark;
  const bool cannot = errno == EINVAL || errno == ENOSYS;
  if (cannot && !fs::exists(folder) && std::rename(fresh.c_str(), folder.c_str()) == 0) return mark;
  const int reason = cannot ? EEXIST : errno;
  RemoveUnfinished(fresh);
  return failed(reason);
}

void RemoveUnfinished(const fs::path& folder) {
  std::error_code ignored;
  for (const fs::directory_entry& entry : fs::directory_iterator(folder, ignored)) {
    if (entry.path().filename() != kUnfinished) fs::remove_all(entry.path(), ignored);
  }
  fs::remove_all(folder, ignored);
}

void RemoveDeadBeside(const fs::path& out) {
  std::error_code ignored;
  std::vector<fs::path> parts;
  for (const fs::directory_entry& entry : fs::directory_iterator(out.parent_path(), ignored)) {
    const bool is_folder = fs::is_directory(fs::symlink_status(entry.path(), ignored));
    if (is_folder && IsPartOf(entry.path().filename().string(), out.filename().string())) parts.push_back(entry.path());
  }
  for (const fs::path& part : parts) RemoveIfDead(part);
}

}  // namespace benchleaf::binder

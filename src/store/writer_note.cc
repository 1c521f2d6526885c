#include "store/writer_note.h"

#include <signal.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <ctime>
#include <fstream>
#include <system_error>

namespace benchleaf::store {

namespace {

std::string HostName() {
  std::array<char, 256> name{};
  if (gethostname(name.data(), name.size() - 1) != 0) return "this host";
  return name.data();
}

std::string TimeNow() {
  const std::time_t now = std::time(nullptr);
  std::tm parts{};
  gmtime_r(&now, &parts);
  std::array<char, 32> text{};
  const std::size_t size = std::strftime(text.data(), text.size(), "%Y-%m-%d %H:%M:%S UTC", &parts);
  return {text.data(), size};
}

bool IsRunning(pid_t process) { return kill(process, 0) == 0 || errno == EPERM; }

}  // namespace

WriterNote::WriterNote(const std::filesystem::path& folder) : path_(folder / kWriterNoteName) {
  // A note that cannot be written costs others a detail of a message, nothing more.
  std::ofstream(path_) << getpid() << '\n' << HostName() << '\n' << TimeNow() << '\n';
}

WriterNote::~WriterNote() {
  std::error_code ignored;
  std::filesystem::remove(path_, ignored);
}

std::string WriterNamed(const std::filesystem::path& folder) {
  std::ifstream note(folder / kWriterNoteName);
  pid_t process = 0;
  std::string host;
  std::string since;
  if (!(note >> process >> std::ws) || !std::getline(note, host) || !std::getline(note, since) || process <= 0) {
    return "another process";
  }
  if (host == HostName() && !IsRunning(process)) return "another process";
  return "process " + std::to_string(process) + " on " + host + " since " + since;
}

}  // namespace benchleaf::store

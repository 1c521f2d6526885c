#include "work/job_server.h"

#include <unistd.h>

#include <array>
#include <cerrno>
#include <string>
#include <string_view>

namespace benchleaf {
namespace {

bool WriteAll(int fd, std::string_view bytes) {
  while (!bytes.empty()) {
    const ssize_t written = ::write(fd, bytes.data(), bytes.size());
    if (written < 0 && errno != EINTR) {
      return false;
    }
    bytes.remove_prefix(written < 0 ? 0 : static_cast<std::size_t>(written));
  }
  return true;
}

// The next job; nothing at the end of the input. Fails when the input is no job.
Result<std::optional<Job>> NextJob(int in, MessageReader& messages) {
  std::array<char, 4096> chunk{};
  while (true) {
    Result<std::optional<std::string>> body = messages.Next();
    if (!body) {
      return tl::unexpected(std::move(body.error()));
    }
    if (*body) {
      return DecodeJob(**body).map([](Job job) { return std::optional<Job>(std::move(job)); });
    }
    const ssize_t got = ::read(in, chunk.data(), chunk.size());
    if (got == 0) {
      return std::nullopt;
    }
    if (got < 0 && errno != EINTR) {
      return Fail(ErrorCode::kIo, "jobs cannot be read");
    }
    messages.Add({chunk.data(), got < 0 ? 0 : static_cast<std::size_t>(got)});
  }
}

}  // namespace

int ServeJobs(int in, int out, const std::function<Answer(const Job&)>& answer) {
  if (!WriteAll(out, Framed(EncodeGreeting()))) {
    return 1;
  }
  MessageReader messages(kMaxJobBytes);
  while (true) {
    const Result<std::optional<Job>> job = NextJob(in, messages);
    if (!job) {
      return 1;
    }
    if (!*job) {
      return 0;
    }
    if (!WriteAll(out, Framed(EncodeAnswer(answer(**job))))) {
      return 1;
    }
  }
}

}  // namespace benchleaf

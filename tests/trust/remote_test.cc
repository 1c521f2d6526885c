// An index that another host serves answers as the same index on the disk does.

#include "places/places.h"
#include "trust/scripted_library.h"

#include <arpa/inet.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <netinet/in.h>
#include <sys/socket.h>
#include <sys/wait.h>
#include <unistd.h>

#include <chrono>
#include <csignal>
#include <cstdint>
#include <string>
#include <thread>
#include <utility>
#include <vector>

namespace benchleaf {
namespace {

namespace fs = std::filesystem;

class Socket {
 public:
  Socket() : descriptor_(socket(AF_INET, SOCK_STREAM | SOCK_CLOEXEC, 0)) {}
  ~Socket() { close(descriptor_); }
  Socket(const Socket&) = delete;
  Socket& operator=(const Socket&) = delete;
  int get() const { return descriptor_; }

 private:
  int descriptor_;
};

sockaddr_in AddressOf(std::uint16_t port) {
  sockaddr_in address{};
  address.sin_family = AF_INET;
  address.sin_port = htons(port);
  address.sin_addr.s_addr = htonl(INADDR_LOOPBACK);
  return address;
}

// A port that nobody listens at now.
std::uint16_t FreePort() {
  const Socket any;
  sockaddr_in address = AddressOf(0);
  socklen_t size = sizeof address;
  EXPECT_EQ(bind(any.get(), reinterpret_cast<sockaddr*>(&address), size), 0);
  EXPECT_EQ(getsockname(any.get(), reinterpret_cast<sockaddr*>(&address), &size), 0);
  return ntohs(address.sin_port);
}

// Xapian's server of one index, on this machine only.
class Server {
 public:
  explicit Server(const fs::path& database) : port_(FreePort()) {
    const std::string port = std::to_string(port_);
    child_ = fork();
    if (child_ == 0) {
      execlp("xapian-tcpsrv", "xapian-tcpsrv", "--quiet", "--interface", "127.0.0.1", "--port", port.c_str(),
             database.c_str(), nullptr);
      _exit(127);
    }
  }
  ~Server() {
    if (child_ > 0) {
      kill(child_, SIGKILL);
      waitpid(child_, nullptr, 0);
    }
  }
  Server(const Server&) = delete;
  Server& operator=(const Server&) = delete;

  std::string name() const { return "remote:127.0.0.1:" + std::to_string(port_); }

  // False when it does not within half a minute.
  bool Listens() const {
    const sockaddr_in address = AddressOf(port_);
    for (int i = 0; i < 600; ++i) {
      const Socket caller;
      if (connect(caller.get(), reinterpret_cast<const sockaddr*>(&address), sizeof address) == 0) {
        return true;
      }
      std::this_thread::sleep_for(std::chrono::milliseconds(50));
    }
    return false;
  }

 private:
  std::uint16_t port_ = 0;
  pid_t child_ = -1;
};

ProcessEnd Ask(const std::vector<std::string>& question, const ScriptedLibrary& library, const std::string& database) {
  std::vector<std::string> arguments = {BENCHLEAF_SCRIPTED};
  for (const std::string& word : question) arguments.push_back(word);
  const std::string config = (SourceFolder() / "config").string();
  for (const std::string& word : {std::string("--library"), library.library().string(), std::string("--db"), database,
                                  std::string("--config"), config}) {
    arguments.push_back(word);
  }
  return RunProcess({.arguments = std::move(arguments)});
}

TEST(Remote, IndexAnswersAsTheSameOnTheDisk) {
  ScriptedLibrary library;
  library.MakeBefore();
  const fs::path database = library.folder() / "index";
  ASSERT_EQ(library.Index(database).code, 0);
  const Server server(database);
  ASSERT_TRUE(server.Listens());
  const std::vector<std::vector<std::string>> questions = {
      {"sets", "--json"},
      {"find", "C1", "--json"},
      {"find", "R300"},
      {"find", "c*", "--json"},
      {"find", "nowhere9"},
      {"parts", "alder", "--json"},
      {"tube", "12AX7", "--json"},
      {"lineup", "alder", "--json"},
      {"gaps", "alder", "--json"},
      {"export"},
  };
  for (const std::vector<std::string>& question : questions) {
    SCOPED_TRACE(testing::PrintToString(question));
    const ProcessEnd here = Ask(question, library, database.string());
    const ProcessEnd there = Ask(question, library, server.name());
    EXPECT_EQ(there.out, here.out);
    EXPECT_EQ(there.code, here.code);
  }
}

TEST(Remote, IndexThatNobodyServesIsToldOf) {
  ScriptedLibrary library;
  const std::string name = "remote:127.0.0.1:" + std::to_string(FreePort());
  const ProcessEnd end = Ask({"sets"}, library, name);
  EXPECT_NE(end.code, 0);
  EXPECT_THAT(end.err, testing::HasSubstr(name));
}

}  // namespace
}  // namespace benchleaf

#include "work/scripted_pages.h"

#include "work/protocol.h"

#include <unistd.h>

#include <chrono>
#include <csignal>
#include <cstdlib>
#include <fstream>
#include <iostream>
#include <sstream>
#include <string>
#include <string_view>
#include <thread>
#include <vector>

namespace benchleaf {
namespace {

struct Script {
  int pages = 1;
  PageReading reading;
  std::string act;
  int number = 0;
};

PageReading ReadingOf(std::istream& words) {
  PageReading reading;
  reading.frame = {1000, 1000, 100, 0, 1, 0, 1000, 1000};
  reading.measures.cap_height_px = 20;
  std::string word;
  for (int y = 100; words >> word; y += 40) {
    reading.words.push_back({word, {100, y, 20 * static_cast<int>(word.size()), 20}, 0, 0.9, WordOrigin::kString, {}});
  }
  return reading;
}

Script ScriptFor(const Job& job) {
  Script script;
  std::ifstream file(job.path);
  std::string line;
  std::getline(file, line);
  while (std::getline(file, line)) {
    std::istringstream fields(line);
    std::string verb;
    int page = 0;
    fields >> verb >> page;
    if (verb == "pages") {
      script.pages = page;
    } else if (verb == "words" && page == job.page) {
      script.reading = ReadingOf(fields);
    } else if (verb == "on" && page == job.page) {
      std::string mode;
      std::string act;
      int number = 0;
      fields >> mode >> act >> number;
      if (mode == "any" || (mode == "plain") == (job.mode == ReadingMode::kPlain)) {
        script.act = act;
        script.number = number;
      }
    }
  }
  return script;
}

Answer Honest(const Job& job, const Script& script) {
  if (job.operation == Operation::kCountPages) {
    return {job.number, PageCount{script.pages}};
  }
  return {job.number, script.reading};
}

void Write(std::string_view bytes) {
  while (!bytes.empty()) {
    const ssize_t written = ::write(STDOUT_FILENO, bytes.data(), bytes.size());
    if (written <= 0) {
      std::_Exit(9);
    }
    bytes.remove_prefix(static_cast<std::size_t>(written));
  }
}

// Ends, or never returns on its own.
void Fall(const Script& script) {
  if (script.act == "crash") {
    // Sanitizers catch the signal and end with an exit code of theirs.
    ::signal(SIGSEGV, SIG_DFL);
    ::raise(SIGSEGV);
  } else if (script.act == "abort") {
    std::cerr << "chatter\nthe reason\n";
    std::abort();
  } else if (script.act == "exit") {
    std::cerr << "no more\n";
    std::_Exit(script.number);
  } else if (script.act == "hang") {
    std::this_thread::sleep_for(std::chrono::hours(1));
  } else if (script.act == "spin") {
    while (std::chrono::steady_clock::now().time_since_epoch().count() != 0) {
    }
  } else if (script.act == "memory") {
    std::vector<std::vector<char>> taken;
    for (int i = 0; i < 64; ++i) {
      taken.emplace_back(std::size_t{1} << 26U, 'x');
    }
  }
}

void BreakProtocol(const Job& job, const Script& script) {
  const std::string message = Framed(EncodeAnswer(Honest(job, script)));
  if (script.act == "garbage") {
    Write(Framed("these are no fields"));
  } else if (script.act == "long") {
    Write(std::string(4, '\xff'));
  } else if (script.act == "half") {
    Write(std::string_view(message).substr(0, message.size() / 2));
    std::_Exit(0);
  } else if (script.act == "twice") {
    Write(message);
  }
}

}  // namespace

Answer ScriptedAnswer(const Job& job) {
  const Script script = ScriptFor(job);
  Fall(script);
  BreakProtocol(job, script);
  Answer answer = Honest(job, script);
  if (script.act == "slow") {
    std::this_thread::sleep_for(std::chrono::milliseconds(script.number));
  } else if (script.act == "chatter") {
    std::cerr << std::string(1 << 20, 'c') << '\n';
  } else if (script.act == "damaged") {
    answer.outcome = Error{ErrorCode::kDamaged, "is torn", "elsewhere", 99};
  } else if (script.act == "missing") {
    answer.outcome = Error{ErrorCode::kMissing, "is not there", "elsewhere", 99};
  } else if (script.act == "unfit") {
    answer.outcome = Unfit{{ErrorCode::kMissing, "no language data", "", 0}};
  } else if (script.act == "other-number") {
    ++answer.number;
  } else if (script.act == "wrong-kind") {
    answer.outcome =
        job.operation == Operation::kCountPages ? Answer{0, PageReading{}}.outcome : Answer{0, PageCount{1}}.outcome;
  }
  return answer;
}

}  // namespace benchleaf

#include "work/protocol.h"

#include <gtest/gtest.h>

#include <random>
#include <string>
#include <vector>

namespace benchleaf {
namespace {

using std::string_literals::operator""s;

Job ReadJob() { return {7, Operation::kReadPage, ReadingMode::kPlain, 3, 0, 0, "/lib/a b.pdf", "a b.pdf"}; }

PageReading SmallReading() {
  PageReading reading;
  reading.frame = {1000, 800, 100, 90, 3, 0.5, 3000, 2400};
  reading.words.push_back({"C112", {10, 20, 80, 30}, 90, 0.75, WordOrigin::kString, {{"C1I2", 0.25}}});
  return reading;
}

PageView SmallView() {
  PageView view;
  view.page_width = 1000;
  view.page_height = 800;
  view.image.width = 2;
  view.image.height = 1;
  view.image.pixels = {1, 2, 3, 4, 5, 6};
  return view;
}

TEST(Protocol, JobsComeThroughWhole) {
  const std::vector<Job> jobs = {
      ReadJob(),
      {0, Operation::kCountPages, ReadingMode::kFull, 0, 0, 0, "x", ""},
      {7, Operation::kViewPage, ReadingMode::kFull, 2, 0, 0, "x", "", {{10, 20, 30, 40}, kMaxViewSide}},
      {8, Operation::kViewPage, ReadingMode::kFull, 2, 0, 0, "x", "", {{}, 1}},
      {0xffffffff, Operation::kReadPage, ReadingMode::kFull, kMaxPagesPerFile, 0, 0, "\xff\n\"", "\xff\n\""},
      {3, Operation::kPicturePage, ReadingMode::kFull, 2, 270, 2400, "/lib/a.tif", "a.tif"},
      {4, Operation::kCopyPiece, ReadingMode::kFull, 3, 0, 0, "/out/plan", "copy.pdf"},
      {5, Operation::kCopyPages, ReadingMode::kFull, 3, 0, 0, "/out/plan", "copy.pdf"},
  };
  for (const Job& job : jobs) {
    const Result<Job> decoded = DecodeJob(EncodeJob(job));
    ASSERT_TRUE(decoded) << job.number;
    EXPECT_EQ(*decoded, job);
  }
}

TEST(Protocol, AnswersComeThroughWhole) {
  const std::vector<Answer> answers = {
      {1, PageCount{1}},
      {2, PageCount{kMaxPagesPerFile}},
      {3, SmallReading()},
      {4, PageReading{}},
      {5, Error{ErrorCode::kLocked, "wants a password", "", 0}},
      {6, Unfit{{ErrorCode::kMissing, "no language data", "", 0}}},
      {7, SmallView()},
      {8, binder::PageFiles{{1275, 1650, std::nullopt}, std::string("page\0", 5), "thumb"}},
      {9, CopyPiece{std::string("%PDF\0", 5), 3, "0123", {{ErrorCode::kDamaged, "cannot be copied", "a.png", 2}}}},
      {10, CopyPiece{}},
  };
  for (const Answer& answer : answers) {
    const Result<Answer> decoded = DecodeAnswer(EncodeAnswer(answer));
    ASSERT_TRUE(decoded) << answer.number;
    EXPECT_EQ(*decoded, answer);
  }
}

TEST(Protocol, RefusesBodiesThatDoNotFit) {
  const std::string job = EncodeJob(ReadJob());
  const std::string reading = EncodeAnswer({3, SmallReading()});
  const std::string view = EncodeAnswer({3, SmallView()});
  PageReading crowded = SmallReading();
  crowded.words.resize(kMaxWordsPerPage + 1, crowded.words.front());
  struct Case {
    const char* reason;
    std::string body;
  };
  const std::vector<Case> jobs = {
      {"nothing", ""},
      {"a field too few", job.substr(0, job.size() - 1)},
      {"a byte too many", job + "x"},
      {"no such operation", job.substr(0, 4) + "\x06" + job.substr(5)},
      {"a view of no size", job.substr(0, 4) + "\x02" + job.substr(5)},
      {"a picture of no size", job.substr(0, 4) + "\x03" + job.substr(5)},
      {"a picture turned askew", job.substr(0, 10) + "\x2d" + job.substr(11)},
      {"a view larger than an answer", job.substr(0, job.size() - 4) + "\xff\xff\0\0"s},
      {"no such mode", job.substr(0, 5) + "\x02" + job.substr(6)},
      {"reading page 0", job.substr(0, 6) + "\0\0\0\0"s + job.substr(10)},
      {"counting with a page", job.substr(0, 4) + "\0"s + job.substr(5)},
      {"a page beyond any file", job.substr(0, 6) + "\xff\xff\xff\x7f" + job.substr(10)},
      {"a text longer than the body", job.substr(0, 18) + "\xff\xff\xff\xff" + job.substr(22)},
  };
  for (const Case& c : jobs) {
    EXPECT_FALSE(DecodeJob(c.body)) << c.reason;
  }
  const std::vector<Case> answers = {
      {"nothing", ""},
      {"no outcome", "\x01\0\0\0"s},
      {"no such outcome", "\x01\0\0\0\x09\x01\0\0\0"s},
      {"no pages", "\x01\0\0\0\0\0\0\0\0"s},
      {"pages beyond any file", "\x01\0\0\0\0\xff\xff\xff\xff"s},
      {"a byte too many", EncodeAnswer({1, PageCount{1}}) + "x"},
      {"a reading that breaks off", reading.substr(0, reading.size() - 1)},
      {"a reading that is none", "\x01\0\0\0\x01\x03\0\0\0abc"s},
      {"more words than a page has", EncodeAnswer({3, crowded})},
      {"a view with a pixel too few", view.substr(0, view.size() - 1)},
      {"a view whose size is not that of its pixels", view.substr(0, 13) + "\x03" + view.substr(14)},
      {"a view whose size would overflow", view.substr(0, 13) + "\xff\xff\xff\xff\xff\xff\xff\xff" + view.substr(21)},
      {"an error without a message", "\x01\0\0\0\x02\x01\0\0\0x"s},
  };
  for (const Case& c : answers) {
    EXPECT_FALSE(DecodeAnswer(c.body)) << c.reason;
  }
}

TEST(Protocol, OutlivesAnyBytes) {
  std::mt19937 random(20240501);
  const std::string whole = EncodeAnswer({3, SmallReading()});
  for (int round = 0; round < 20000; ++round) {
    std::string body = whole;
    for (unsigned i = 0; i <= random() % 4; ++i) {
      body[random() % body.size()] = static_cast<char>(random());
    }
    body.resize(random() % (body.size() + 1));
    const Result<Answer> answer = DecodeAnswer(body);  // must not crash; most bodies are refused
    EXPECT_TRUE(answer || answer.error().code == ErrorCode::kDamaged);
  }
}

TEST(Protocol, ErrorsAreCutToABound) {
  const Result<Answer> decoded =
      DecodeAnswer(EncodeAnswer({1, Error{ErrorCode::kIo, std::string(100000, 'x'), "", 0}}));
  ASSERT_TRUE(decoded);
  EXPECT_EQ(std::get<Error>(decoded->outcome).message.size(), 4096U);
}

TEST(Protocol, OnlyTheGreetingOfThisVersionIsOne) {
  EXPECT_TRUE(IsGreeting(EncodeGreeting()));
  std::string next_version = EncodeGreeting();
  next_version[next_version.size() - 4]++;
  for (const std::string& other : {next_version, ""s, "benchleaf worker"s, EncodeGreeting() + "x"}) {
    EXPECT_FALSE(IsGreeting(other));
  }
}

TEST(MessageReader, CutsAStreamWhereverItsPiecesEnd) {
  const std::string stream = Framed("first") + Framed("") + Framed(std::string(300, 'x'));
  for (std::size_t piece : {1U, 2U, 3U, 5U, 7U, 64U, 1000U}) {
    MessageReader reader(300);
    std::vector<std::string> bodies;
    for (std::size_t at = 0; at < stream.size(); at += piece) {
      reader.Add(std::string_view(stream).substr(at, piece));
      while (true) {
        const Result<std::optional<std::string>> body = reader.Next();
        ASSERT_TRUE(body);
        if (!*body) {
          break;
        }
        bodies.push_back(**body);
      }
    }
    EXPECT_EQ(bodies, (std::vector<std::string>{"first", "", std::string(300, 'x')})) << piece;
  }
}

TEST(MessageReader, RefusesALengthOverItsBoundAtOnce) {
  MessageReader reader(300);
  reader.Add("\x2d\x01\0\0"s);  // 301, and none of its bytes yet
  const Result<std::optional<std::string>> body = reader.Next();
  ASSERT_FALSE(body);
  EXPECT_EQ(body.error().code, ErrorCode::kDamaged);
}

}  // namespace
}  // namespace benchleaf

#include "extract/memo.h"

#include <gtest/gtest.h>

#include <string>
#include <thread>
#include <vector>

namespace benchleaf::extract {
namespace {

TEST(Memo, AsksOnceForAKey) {
  const Memo<int> memo;
  int asked = 0;
  const auto make = [&asked] { return ++asked; };
  EXPECT_EQ(memo.Of("C12", make), 1);
  EXPECT_EQ(memo.Of("C12", make), 1);
  EXPECT_EQ(memo.Of("C13", make), 2);
}

TEST(Memo, BeginsEmptyAsACopy) {
  const Memo<int> memo;
  memo.Of("C12", [] { return 1; });
  const Memo<int> copy = memo;  // NOLINT(performance-unnecessary-copy-initialization)
  EXPECT_EQ(copy.Of("C12", [] { return 2; }), 2);
}

TEST(Memo, KeepsNoMoreThanItMay) {
  constexpr int kMany = 300000;
  const Memo<int> memo;
  int asked = 0;
  for (int round = 0; round < 2; ++round) {
    for (int i = 0; i < kMany; ++i) {
      EXPECT_EQ(memo.Of(std::to_string(i), [&] { return ++asked, i; }), i);
    }
  }
  EXPECT_GT(asked, kMany) << "what was asked long ago is forgotten";
}

TEST(Memo, ServesThreadsAtTheSameTime) {
  constexpr int kRounds = 20000;
  const Memo<std::string> memo;
  std::vector<std::thread> threads;
  for (int t = 0; t < 4; ++t) {
    threads.emplace_back([&memo] {
      for (int i = 0; i < kRounds; ++i) {
        const std::string key = std::to_string(i % 997);
        EXPECT_EQ(memo.Of(key, [&key] { return key + "!"; }), key + "!");
      }
    });
  }
  for (std::thread& thread : threads) thread.join();
}

}  // namespace
}  // namespace benchleaf::extract

#include "cli/interrupt.h"

#include <gtest/gtest.h>

namespace benchleaf {
namespace {

TEST(Interrupt, TheFirstSignalSetsTheFlagOnly) {
  for (const int signal : {SIGINT, SIGTERM}) {
    const Interrupt interrupt;
    EXPECT_FALSE(interrupt.flag());
    std::raise(signal);
    EXPECT_TRUE(interrupt.flag());
  }
}

TEST(InterruptDeathTest, TheSecondSignalEndsTheProgram) {
  EXPECT_EXIT(
      {
        const Interrupt interrupt;
        std::raise(SIGINT);
        std::raise(SIGINT);
      },
      testing::KilledBySignal(SIGINT), "");
}

TEST(Interrupt, LeavesSignalsAsTheyWere) {
  struct sigaction before {};
  struct sigaction after {};
  sigaction(SIGINT, nullptr, &before);
  { const Interrupt interrupt; }
  sigaction(SIGINT, nullptr, &after);
  EXPECT_EQ(before.sa_handler, after.sa_handler);
}

}  // namespace
}  // namespace benchleaf

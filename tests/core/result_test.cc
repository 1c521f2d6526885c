#include "benchleaf/core/result.h"

#include <gmock/gmock.h>

namespace benchleaf {
namespace {

TEST(Result, ErrorsNameFileAndPageAsFarAsKnown) {
  EXPECT_EQ((Error{ErrorCode::kDamaged, "cut short", "a.pdf", 3}.ToString()), "a.pdf, page 3: cut short");
  EXPECT_EQ((Error{ErrorCode::kDamaged, "cut short", "a.pdf", 0}.ToString()), "a.pdf: cut short");
  EXPECT_EQ((Error{ErrorCode::kDamaged, "cut short", "", 3}.ToString()), "page 3: cut short");
  EXPECT_EQ((Error{ErrorCode::kDamaged, "cut short", "", 0}.ToString()), "cut short");
}

TEST(Result, EveryCodeHasANameThatFindsItAgain) {
  for (int i = 0; i <= static_cast<int>(ErrorCode::kCancelled); ++i) {
    const auto code = static_cast<ErrorCode>(i);
    EXPECT_EQ(ErrorCodeNamed(Name(code)), code) << Name(code);
  }
  EXPECT_EQ(ErrorCodeNamed("no such name"), ErrorCode::kDamaged);
}

}  // namespace
}  // namespace benchleaf

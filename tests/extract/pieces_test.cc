#include "extract/pieces.h"

#include <gtest/gtest.h>

#include <string>
#include <vector>

namespace benchleaf::extract {
namespace {

Piece At(const std::string& text, Box box) {
  Piece piece;
  piece.text = text;
  piece.box = box;
  return piece;
}

std::vector<std::string> TextsOf(const std::vector<Line>& lines) {
  std::vector<std::string> texts;
  for (const Line& line : lines) {
    texts.emplace_back();
    for (const Piece& piece : line.pieces) {
      texts.back() += (texts.back().empty() ? "" : " ") + piece.text;
    }
  }
  return texts;
}

TEST(JoinLines, GathersFromLeftToRightAndFromTopToBottom) {
  const auto lines = JoinLines(
      {At("d", {90, 52, 20, 20}), At("b", {90, 12, 20, 20}), At("c", {10, 50, 20, 20}), At("a", {10, 10, 20, 20})});
  EXPECT_EQ(TextsOf(lines), (std::vector<std::string>{"a b", "c d"}));
  EXPECT_EQ(lines[0].box, (Box{10, 10, 100, 22}));
}

TEST(JoinLines, FollowsALineThatSlopes) {
  constexpr int kPieces = 10;
  std::vector<Piece> sloping;
  sloping.reserve(kPieces);
  for (int i = 0; i < kPieces; ++i) {
    sloping.push_back(At(std::string(1, static_cast<char>('a' + i)), {40 * i, 10 + 6 * i, 20, 20}));
  }
  EXPECT_EQ(TextsOf(JoinLines(sloping)), (std::vector<std::string>{"a b c d e f g h i j"}));
}

TEST(JoinLines, GoesBeyondALowDash) {
  EXPECT_EQ(TextsOf(JoinLines({At("a", {10, 10, 20, 20}), At("-", {40, 26, 10, 4}), At("b", {60, 10, 20, 20})})),
            (std::vector<std::string>{"a - b"}));
}

TEST(JoinLines, KeepsTheOrderOfPiecesAtOneEdge) {
  EXPECT_EQ(TextsOf(JoinLines({At("low", {10, 60, 20, 20}), At("high", {10, 10, 20, 20})})),
            (std::vector<std::string>{"high", "low"}));
  EXPECT_TRUE(JoinLines({}).empty());
}

}  // namespace
}  // namespace benchleaf::extract

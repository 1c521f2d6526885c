#include "outside/s_expression.h"

#include <gtest/gtest.h>

#include <stdexcept>

namespace benchleaf::outside {
namespace {

TEST(SExpressionTest, ReadsWordsQuotedTextAndLists) {
  const Node tree = ParseSExpression("(sheet (at 1.5 -20) (name \"two words\")\n  (name b) hide)\n");
  EXPECT_EQ(tree.name(), "sheet");
  ASSERT_NE(tree.Find("at"), nullptr);
  EXPECT_EQ(tree.Find("at")->Number(1), 1.5);
  EXPECT_EQ(tree.Find("at")->Number(2), -20);
  EXPECT_EQ(tree.Find("name")->Text(1), "two words");
  EXPECT_EQ(tree.All("name").size(), 2U);
  EXPECT_TRUE(tree.Has("hide"));
  EXPECT_FALSE(tree.Has("at")) << "a list is no word";
}

TEST(SExpressionTest, UndoesEscapesAndKeepsBracketsInQuotes) {
  EXPECT_EQ(ParseSExpression(R"((t "a\"b\\c\nd ) ("))").Text(1), "a\"b\\c\nd ) (");
}

TEST(SExpressionTest, GivesNothingForWhatIsMissing) {
  const Node tree = ParseSExpression("(a b)");
  EXPECT_EQ(tree.Find("c"), nullptr);
  EXPECT_EQ(tree.Text(7), "");
  EXPECT_EQ(tree.Number(1), 0) << "a word that is no number";
}

TEST(SExpressionTest, RefusesWhatIsNotOneTree) {
  for (const char* text : {"", "(a", "a)", "(a) (b)", "(a \"b)", "(a))"}) {
    EXPECT_THROW(ParseSExpression(text), std::runtime_error) << text;
  }
}

}  // namespace
}  // namespace benchleaf::outside

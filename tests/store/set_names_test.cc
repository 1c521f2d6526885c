#include "store/test_index.h"

#include <gmock/gmock.h>

namespace benchleaf {
namespace {

using SetNamesTest = IndexTest;
using testing::ElementsAre;
using testing::IsEmpty;

TEST_F(SetNamesTest, ListsSetsWithTheirManuals) {
  ManualRecord second = MakeManual("A", "alignment");
  second.pages.clear();
  second.links.clear();
  Store(MakeManual("B"), MakeManual("A"), second);
  const auto sets = Reader()->Sets().value();
  ASSERT_EQ(sets.size(), 2U);
  EXPECT_EQ(sets[0].set, "A");
  EXPECT_EQ(sets[0].maker, "MEADOWLARK");
  EXPECT_EQ(sets[0].model, "5R1");
  ASSERT_EQ(sets[0].manuals.size(), 2U);
  EXPECT_EQ(sets[0].manuals[0].manual, "alignment");
  EXPECT_EQ(sets[0].manuals[1].manual, "service");
  EXPECT_EQ(sets[0].manuals[1].pages, 3);
  EXPECT_EQ(sets[0].manuals[1].failed, 1);
  EXPECT_EQ(sets[1].set, "B");
}

TEST_F(SetNamesTest, AnEmptyIndexHasNoSets) {
  Writer();
  EXPECT_THAT(Reader()->Sets().value(), IsEmpty());
  EXPECT_THAT(Reader()->MatchSets("A").value().names, IsEmpty());
}

TEST_F(SetNamesTest, FindsTheSetThatIsMeant) {
  // Invented makers and models.
  Store(MakeManual("MEADOWLARK 5R1"), MakeManual("MEADOWLARK 5R10"), MakeManual("Quillfeather TV-1420"),
        MakeManual("QUILLFEATHER tv-1420"), MakeManual("Caf\xC3\x89 9"), MakeManual("\xFF"));
  struct Case {
    const char* text;
    std::vector<std::string> names;
    bool near;
    const char* reason;
  };
  const Case cases[] = {
      {"MEADOWLARK 5R1", {"MEADOWLARK 5R1"}, false, "the exact name, though another holds it"},
      {"meadowlark  5r1", {"MEADOWLARK 5R1"}, false, "case and spaces do not matter"},
      {"quillfeather TV-1420", {"QUILLFEATHER tv-1420", "Quillfeather TV-1420"}, false, "two that differ in case"},
      {"Quillfeather TV-1420", {"Quillfeather TV-1420"}, false, "the exact one of the two"},
      {"5r1", {"MEADOWLARK 5R1", "MEADOWLARK 5R10"}, false, "every name that holds the word"},
      {"1420 quill", {"QUILLFEATHER tv-1420", "Quillfeather TV-1420"}, false, "words in any order"},
      {"caf\xC3\xA9", {"Caf\xC3\x89 9"}, false, "letters beyond ASCII"},
      {"\xFF", {"\xFF"}, false, "bytes that are not UTF-8"},
      {"meadowlork 5r1", {"MEADOWLARK 5R1", "MEADOWLARK 5R10"}, true, "a slip: the nearest first"},
      {"medowlark", {"MEADOWLARK 5R1", "MEADOWLARK 5R10"}, true, "a slip in a part of the name"},
      {"nothing like it", {}, true, "nothing near"},
      {"", {}, false, "nothing asked"},
      {"  ", {}, false, "nothing asked"},
  };
  const auto reader = Reader();
  for (const Case& c : cases) {
    const auto names = reader->MatchSets(c.text).value();
    EXPECT_EQ(names.names, c.names) << c.reason;
    EXPECT_EQ(names.near, c.near) << c.reason;
  }
}

TEST_F(SetNamesTest, ASetGoesWithItsLastManual) {
  Store(MakeManual("A"));
  ASSERT_TRUE(Writer()->RemoveManual("A", "service"));
  EXPECT_THAT(Reader()->Sets().value(), IsEmpty());
  EXPECT_THAT(Reader()->MatchSets("A").value().names, IsEmpty());
}

}  // namespace
}  // namespace benchleaf

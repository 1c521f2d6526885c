#include "store/test_index.h"

#include <gmock/gmock.h>

namespace benchleaf {
namespace {

using SuggestTest = IndexTest;
using testing::Contains;
using testing::Each;
using testing::ElementsAre;
using testing::IsEmpty;
using testing::Not;

ManualRecord WithTerms(const std::vector<std::string>& tubes, const std::vector<std::string>& words) {
  ManualRecord manual = MakeManual();
  for (const std::string& tube : tubes) manual.pages[0].sightings.push_back(MakeSighting(TermKind::kTube, tube));
  for (const std::string& word : words) manual.pages[0].reading.words.push_back(MakeWord(word));
  return manual;
}

TEST_F(SuggestTest, NearestTermsComeFirst) {
  Store(WithTerms({"6CB6", "6CF6", "6SN7", "12AX7"}, {}));
  // C112 and 6CB6A are in the index too.
  EXPECT_THAT(Reader()->Suggest("6CB8").value(), ElementsAre("6CB6"));
  EXPECT_THAT(Reader()->Suggest("6 cb6b").value(), ElementsAre("6CB6", "6CB6A", "6CF6"));
  EXPECT_THAT(Reader()->Suggest("6CB6B", 1).value(), ElementsAre("6CB6"));
  EXPECT_THAT(Reader()->Suggest("6CB6B", 0).value(), IsEmpty());
}

TEST_F(SuggestTest, LookAlikesAreNearest) {
  // S and 5 look alike, F and C do not (common practice, no source).
  Store(WithTerms({"6SN7", "6FN7"}, {}));
  EXPECT_THAT(Reader()->Suggest("65N7", 1).value(), ElementsAre("6SN7"));
  EXPECT_THAT(Reader()->Suggest("GSN7", 1).value(), ElementsAre("6SN7")) << "also in the first character";
}

TEST_F(SuggestTest, WordsOfTextComeAfterTerms) {
  Store(WithTerms({}, {"capacitor", "Capacity", "resistor"}));
  EXPECT_THAT(Reader()->Suggest("capasitor").value(), ElementsAre("capacitor"));
  EXPECT_THAT(Reader()->Suggest("CAPACITER").value(), ElementsAre("capacitor", "capacity"));
}

TEST_F(SuggestTest, PrefixesOfTheIndexAreNoWords) {
  Store(WithTerms({}, {"schematic"}));
  for (const char* term : {"Dmanuel", "Kschematik", "dmanual", "schematix"}) {
    EXPECT_THAT(Reader()->Suggest(term).value(), Each("schematic")) << term;
  }
}

TEST_F(SuggestTest, TermsOfRemovedManualsAreForgotten) {
  Store(WithTerms({"6CB6"}, {}));
  ASSERT_TRUE(Writer()->RemoveManual("MEADOWLARK 5R1", "service"));
  EXPECT_THAT(Reader()->Suggest("6CB8").value(), IsEmpty());
}

TEST_F(SuggestTest, TakesAnyText) {
  Store(WithTerms({"6CB6"}, {"\xCE\xA9meter"}));
  for (const char* term : {"", " ", "\xFF", "\xCE", "\xCE\xA9meten", "*", "'"}) {
    EXPECT_THAT(Reader()->Suggest(term).value(), Not(Contains("6CB6"))) << term;
  }
  EXPECT_THAT(Reader()->Suggest("\xCE\xA9metre").value(), ElementsAre("\xCF\x89meter"));
}

}  // namespace
}  // namespace benchleaf

#include "benchleaf/orders/order.h"

#include "places/places.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <string>
#include <vector>

namespace benchleaf {
namespace {

using ::testing::AllOf;
using ::testing::Contains;
using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using ::testing::Not;

const std::filesystem::path kShipped = SourceFolder() / "config" / "replace-words.tsv";

const PartWords& ShippedWords() {
  static const PartWords words = *PartWords::Load({kShipped});
  return words;
}

FoundEntry Row(const std::string& designator, const std::string& description, const std::string& part_number = "",
               double confidence = 0.9) {
  FoundEntry found;
  found.place = {"QUILLHAVEN 12", "m", "m.pdf", 7, PageKind::kPartsList, ""};
  found.entry.designator = designator;
  found.entry.description = description;
  found.entry.part_number = part_number;
  found.entry.confidence = confidence;
  return found;
}

Order OrderFor(const std::vector<FoundEntry>& rows, const std::vector<PartKind>& kinds = AgeingKinds()) {
  return MakeOrder(rows, kinds, ShippedWords());
}

// "2 film capacitor 0.047 uF 630 V: C1 C2; ..."
std::string Text(const Order& order) {
  std::string text;
  for (const OrderItem& item : order.items) {
    text += (text.empty() ? "" : "; ") + std::to_string(item.count) + " " + item.part.what;
    for (const std::string& word : {item.part.value, item.part.rating}) text += word.empty() ? "" : " " + word;
    text += ":";
    for (const OldPart& part : item.replaces) {
      text += " " + part.designator + (part.section > 0 ? "/" + std::to_string(part.section) : "");
    }
  }
  return text;
}

TEST(MakeOrder, TurnsOldValuesIntoThoseOfToday) {
  const struct {
    const char* description;
    const char* order;
  } kCases[] = {
      {"PAPER, .05 MFD 600 V", "1 film capacitor 0.047 uF 630 V: C1"},
      {"PAPER, .005 MFD 400 V", "1 film capacitor 0.0047 uF 400 V: C1"},
      {"PAPER, .25 MFD 200 V", "1 film capacitor 0.27 uF 250 V: C1"},
      {"PAPER, .02 MFD 200 V", "1 film capacitor 0.022 uF 250 V: C1"},
      {"PAPER, .006 MFD 1600 V", "1 film capacitor 0.0056 uF 1600 V: C1"},
      {"PAPER, .1 MFD", "1 film capacitor 0.1 uF: C1"},
      {"ELECTROLYTIC, 40 MFD 450 V", "1 electrolytic capacitor 47 uF 450 V: C1"},
      {"ELECTROLYTIC, 8 MFD 475 V", "1 electrolytic capacitor 10 uF 500 V: C1"},
      {"ELECTROLYTIC, 50 MFD 150 V", "1 electrolytic capacitor 47 uF 160 V: C1"},
      {"ELECTROLYTIC, 25 MFD 25 V", "1 electrolytic capacitor 33 uF 25 V: C1"},
      {"ELECTROLYTIC, 100 MFD 50 V", "1 electrolytic capacitor 100 uF 50 V: C1"},
      {"ELECTROLYTIC, 16 MFD 600 V", "1 electrolytic capacitor 15 uF: C1"},
      {"ELECTRULYTIC, 20 MFD 450 V", "1 electrolytic capacitor 22 uF 450 V: C1"},
      {"ELECT. 40-20 MFD 450 V",
       "1 electrolytic capacitor 22 uF 450 V: C1/2; 1 electrolytic capacitor 47 uF 450 V: C1/1"},
      {"20-20/450", "2 electrolytic capacitor 22 uF 450 V: C1/1 C1/2"},
      {".01 MFD 400 V", "1 film capacitor 0.01 uF 400 V: C1"},
      {"MICA, 250 MMF 500 V", ""},
      {"250 MMF", ""},
      {"CERAMIC, .01 MFD", ""},
      {"VARIABLE, 365 MMF", ""},
  };
  for (const auto& c : kCases) EXPECT_EQ(Text(OrderFor({Row("C1", c.description)})), c.order) << c.description;
}

TEST(MakeOrder, GroupsByWhatIsOrdered) {
  const Order order = OrderFor({Row("C1", "PAPER .05 MFD 600 V"), Row("C2", "PAPER .047 MFD 600 V"),
                                Row("C3", "PAPER .05 MFD 200 V"), Row("C4", "ELECTROLYTIC 20 MFD 450 V")});
  EXPECT_EQ(Text(order),
            "1 electrolytic capacitor 22 uF 450 V: C4; 1 film capacitor 0.047 uF 250 V: C3; 2 film capacitor 0.047 uF "
            "630 V: C1 C2");
  EXPECT_EQ(order.items.back().part.code, "47n");
}

TEST(MakeOrder, TakesTheKindsThatAreAskedFor) {
  const std::vector<FoundEntry> rows = {Row("R1", "RESISTOR 470K 1/2 W"),  Row("R2", "RESISTOR, 15K 10 W"),
                                        Row("R3", "CONTROL, 500K VOLUME"), Row("R4", "WIREWOUND 250 OHM 2 W"),
                                        Row("C1", "MICA 250 MMF 500 V"),   Row("C2", "PAPER .05 MFD 600 V")};
  EXPECT_EQ(Text(OrderFor(rows)), "1 film capacitor 0.047 uF 630 V: C2");
  EXPECT_EQ(Text(OrderFor(rows, {PartKind::kCarbon})), "1 film resistor 470 kohm 0.5 W: R1");
  EXPECT_EQ(Text(OrderFor(rows, {PartKind::kWirewound})),
            "1 wirewound resistor 240 ohm 2 W: R4; 1 wirewound resistor 15 kohm 10 W: R2");
  EXPECT_EQ(Text(OrderFor(rows, {PartKind::kMica})), "1 mica capacitor 240 pF 500 V: C1");
  const Order order = OrderFor(rows);
  EXPECT_EQ(order.left.at(PartKind::kMica), 1);
  EXPECT_EQ(order.left.at(PartKind::kCarbon), 1);
  EXPECT_EQ(order.left.at(PartKind::kWirewound), 2);
}

TEST(MakeOrder, PutsSiliconAndAResistorInPlaceOfSelenium) {
  for (const char* designator : {"SR1", "CR1", "X1", ""}) {
    const Order order = OrderFor({Row(designator, "RECTIFIER, SELENIUM 75 MA")});
    ASSERT_EQ(order.items.size(), 2U) << designator;
    EXPECT_EQ(order.items[0].part.what, "silicon diode");
    EXPECT_EQ(order.items[1].part.value, "68 ohm") << "5 V at 75 mA";
    EXPECT_THAT(order.items[1].part.note, HasSubstr("raises B+"));
    EXPECT_THAT(order.cautions, Contains(HasSubstr("poisonous fumes")));
  }
  EXPECT_EQ(Text(OrderFor({Row("SR1", "RECTIFIER")})),
            "1 silicon diode 1 A 1000 V: SR1; 1 series resistor, wirewound: SR1")
      << "by its class letters; no current to reckon from";
  EXPECT_EQ(Text(OrderFor({Row("V5", "TUBE, 5Y3GT RECTIFIER"), Row("CR2", "DIODE, 1N34A")})), "");
}

// IEC 60384-14: capacitors for connection to the supply mains, class X across it, class Y to what can be touched.
TEST(MakeOrder, FlagsPlacesAtTheLine) {
  const struct {
    const char* description;
    const char* what;
  } kCases[] = {
      {".1 MFD 400 V PAPER, ACROSS LINE", "class X capacitor"},
      {".01 MFD 600 V PAPER, LINE TO CHASSIS", "class Y capacitor"},
      {".05 MFD 600 V PAPER, LINE BYPASS", "class X or Y capacitor"},
      {".05 MFD 600 V PAPER, A.C. LINE", "class X or Y capacitor"},
      {"CERAMIC .0047 MFD LINE FILTER", "class X or Y capacitor"},
      {".05 MFD 600 V PAPER, DELAY LINE", "film capacitor"},
  };
  for (const auto& c : kCases) {
    const Order order = OrderFor({Row("C1", c.description)});
    ASSERT_EQ(order.items.size(), 1U) << c.description;
    EXPECT_EQ(order.items[0].part.what, c.what) << c.description;
    if (order.items[0].replaces[0].line) {
      EXPECT_THAT(order.items[0].part.note, HasSubstr("IEC 60384-14"));
      EXPECT_EQ(order.items[0].part.rating, "") << "the old rating is of direct current";
    }
  }
}

TEST(MakeOrder, LosesNothing) {
  const Order order = OrderFor({Row("C1", "CAPACITOR, PAPER"), Row("C2", "CAP."), Row("C3", "MICA")});
  ASSERT_EQ(order.unread.size(), 2U) << "a mica capacitor was not asked for";
  EXPECT_EQ(order.unread[0].part.designator, "C1");
  EXPECT_EQ(order.unread[1].part.designator, "C2");
}

TEST(MakeOrder, DoubtsWhatDisagrees) {
  const Order order =
      OrderFor({Row("C1", "PAPER .1 MFD 200 V", "20-1122-3"), Row("C2", "PAPER 1 MFD 200 V", "20-1122-3"),
                Row("C3", "PAPER .02 MFD 200 V"), Row("C3", "PAPER .2 MFD 200 V")});
  std::vector<std::string> doubts;
  for (const OrderItem& item : order.items) {
    for (const OldPart& part : item.replaces) {
      for (const std::string& doubt : part.doubts) doubts.push_back(part.designator + ": " + doubt);
    }
  }
  EXPECT_THAT(doubts, testing::UnorderedElementsAre("C1: part number 20-1122-3 is also listed as 1 uF 200 V",
                                                    "C2: may be .1 MFD whose dot was lost",
                                                    "C2: part number 20-1122-3 is also listed as 0.1 uF 200 V",
                                                    "C3: listed twice, with different values",
                                                    "C3: listed twice, with different values"));
}

TEST(MakeOrder, DoubtsValuesThatWereNeverMade) {
  const Order order = OrderFor({Row("C1", "PAPER, .65 MFD 600 V"), Row("C2", "PAPER, .05 MFD 600 V")});
  EXPECT_EQ(Text(order), "1 film capacitor 0.047 uF 630 V: C2; 1 film capacitor 0.68 uF 630 V: C1");
  EXPECT_THAT(order.items[0].replaces[0].doubts, IsEmpty());
  EXPECT_THAT(order.items[1].replaces[0].doubts, ElementsAre(HasSubstr("0.65 uF was never a usual value")));
}

TEST(MakeOrder, PassesOnWhatTheDrawingSays) {
  const Order order = MakeOrder({Row("C1", "PAPER, .5 MFD 600 V")}, AgeingKinds(), ShippedWords(),
                                {{"C1", {".5MFD in the list, .05MFD beside the symbol"}}, {"C2", {"another's"}}});
  EXPECT_THAT(order.items.at(0).replaces.at(0).doubts, ElementsAre(".5MFD in the list, .05MFD beside the symbol"));
}

TEST(MakeOrder, OrdersAPartOnceThatTwoListsName) {
  FoundEntry again = Row("C1", "PAPER .05 MFD 600 V");
  again.place.page = 9;
  EXPECT_EQ(Text(OrderFor({Row("C1", "PAPER .05 MFD 600 V"), again})), "1 film capacitor 0.047 uF 630 V: C1");
  FoundEntry other = Row("C1", "PAPER .05 MFD 600 V");
  other.entry.assembly = "A4";
  EXPECT_EQ(Text(OrderFor({Row("C1", "PAPER .05 MFD 600 V"), other})), "2 film capacitor 0.047 uF 630 V: C1 A4C1");
}

TEST(MakeOrder, CautionsFitWhatIsOrdered) {
  EXPECT_THAT(OrderFor({Row("C1", "PAPER .05 MFD 600 V")}).cautions,
              AllOf(Contains(HasSubstr("PCBs")), Contains(HasSubstr("class Y from line to chassis")),
                    Contains(HasSubstr("chassis may be live")), Contains(HasSubstr("local codes")),
                    Not(Contains(HasSubstr("Selenium")))));
  EXPECT_THAT(OrderFor({Row("C1", "ELECTROLYTIC 20 MFD 450 V")}).cautions, Contains(HasSubstr("polarity")));
}

TEST(PartWords, TakeARestorersOwnRows) {
  const std::filesystem::path own = std::filesystem::path(::testing::TempDir()) / "own-replace-words.tsv";
  std::ofstream(own) << "role\twords\tsource\npaper\tBLACK STRIPED\tmine\nnone\tTUBULAR\tmine\n";
  const auto words = PartWords::Load({kShipped, own});
  ASSERT_TRUE(words) << words.error().ToString();
  EXPECT_EQ(words->KindIn("black striped, .1"), PartKind::kPaper);
  EXPECT_EQ(words->KindIn("tubular"), std::nullopt);
  std::filesystem::remove(own);
}

TEST(PartWords, NameThePlaceOfAWrongRow) {
  const std::filesystem::path own = std::filesystem::path(::testing::TempDir()) / "wrong-replace-words.tsv";
  for (const char* row : {"odd\tPAPER\tmine", "paper\tpaper\tmine", "paper\t\tmine"}) {
    std::ofstream(own) << "role\twords\tsource\n" << row << "\n";
    const auto words = PartWords::Load({own});
    ASSERT_FALSE(words) << row;
    EXPECT_THAT(words.error().ToString(), AllOf(HasSubstr("wrong-replace-words.tsv"), HasSubstr("line 2, column '")));
  }
  std::filesystem::remove(own);
}

TEST(PartWords, KnowAKindWithALetterMisread) {
  EXPECT_EQ(ShippedWords().KindIn("Capacitor, electrulytic"), PartKind::kElectrolytic);
  EXPECT_EQ(ShippedWords().KindIn("RECTIFIER, SELENIUN"), PartKind::kSelenium);
  EXPECT_EQ(ShippedWords().KindIn("Capacitor"), std::nullopt);
}

}  // namespace
}  // namespace benchleaf

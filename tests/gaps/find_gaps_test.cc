#include "benchleaf/gaps/find_gaps.h"

#include "places/places.h"
#include "record/printed_page.h"

#include <gtest/gtest.h>

#include <filesystem>
#include <string>
#include <utility>
#include <vector>

namespace benchleaf {
namespace {

const Rules& ShippedRules() {
  static const auto rules = Rules::Load(SourceFolder() / "config").value();
  return *rules;
}

struct Part {
  std::string designator;
  std::string value;
  std::string description = "Part";
  std::string assembly = {};
};

PageRecord List(const std::vector<Part>& parts, int number = 7, double confidence = 0.9) {
  PageRecord page = PrintedPage(PageKind::kPartsList, number);
  for (const Part& part : parts) {
    Entry entry;
    entry.designator = part.designator;
    entry.value = part.value;
    entry.description = part.description;
    entry.assembly = part.assembly;
    entry.box = {0.1, 0.02 * static_cast<double>(page.entries.size()), 0.8, 0.02};
    entry.confidence = confidence;
    page.entries.push_back(entry);
  }
  return page;
}

// Designators in rows of the page, each with its value below it.
PageRecord Drawing(const std::vector<Part>& parts, int number = 3) {
  PageRecord page = PrintedPage(PageKind::kSchematic, number);
  int x = 20;
  int y = 20;
  for (const Part& part : parts) {
    if (!part.designator.empty()) Print(page, part.designator, x, y, TermKind::kDesignator, part.assembly);
    if (!part.value.empty()) Print(page, part.value, x, y + 24, TermKind::kValue);
    x += 120;
    if (x > 880) {
      x = 20;
      y += 90;
    }
  }
  return page;
}

// Words enough to judge a page by, none of them surely read.
PageRecord BadPage(PageKind kind, int number) {
  PageRecord page = PrintedPage(kind, number);
  PrintLine(page, "GRZLPF WXQTTB KJHGFD MNBVCX", 50, 50, 0.1);
  return page;
}

ManualRecord Manual(std::vector<PageRecord> pages) {
  ManualRecord manual;
  manual.set = "QUILLHAVEN 12";
  manual.manual = "m";
  manual.pages = std::move(pages);
  std::vector<LinkPage> linked;
  for (const PageRecord& page : manual.pages) linked.push_back({page.facts.kind, page.sightings, page.entries});
  manual.links = LinkManual(linked);
  return manual;
}

// "missing C3; not seen R4 (m.pdf 5)" for the findings of one kind.
std::string Found(const ManualRecord& manual, GapKind kind) {
  std::string text;
  for (const Gap& gap : FindGaps(manual, ShippedRules()).gaps) {
    if (gap.kind != kind) continue;
    text += (text.empty() ? "" : "; ") + std::string(Name(gap.grade)) + " " + gap.what;
    for (const PagePlace& page : gap.badly_read) text += " (" + std::to_string(page.page) + ")";
    EXPECT_FALSE(gap.reason.empty());
    EXPECT_TRUE(!gap.places.empty() || kind == GapKind::kVolume) << gap.what << " names no page";
  }
  return text;
}

TEST(FindGaps, ComparesValuesInTheListWithThoseBesideTheSymbol) {
  const struct {
    const char* designator;
    const char* listed;
    const char* drawn;
    const char* found;
    const char* why;
  } kCases[] = {
      {"R1", "470K", "390K", "differs R1", "two values"},
      {"C1", ".05MFD", "50000PF", "", "one value in two units"},
      {"C1", ".05MFD", ".05", "", "the unit left out"},
      {"C1", ".05MFD", ".047MFD", "note C1", "IEC 60063: the preferred value of .05"},
      {"R1", "4.7K", "47K", "may differ R1", "a dot may be lost"},
      {"R1", "47K7", "47K", "may differ R1", "a comma read as 7"},
      {"C1", ".65MFD", ".05MFD", "may differ C1", "a nought read as 6"},
      {"R1", "15K", "18K", "may differ R1", "a 5 may be an 8"},
      {"R1", "27K", "22K", "differs R1", "no scan makes a 2 of a 7"},
      {"C1", "80-40MFD", "40MFD", "", "one section of it"},
      {"C1", ".05MFD", "600V", "", "a rating is no value"},
      {"V1", "", "470K", "", "nothing to compare"},
  };
  for (const auto& one : kCases) {
    const ManualRecord manual = Manual({Drawing({{one.designator, one.drawn}}), List({{one.designator, one.listed}})});
    EXPECT_EQ(Found(manual, GapKind::kValue), one.found) << one.why;
  }
  EXPECT_EQ(Found(Manual({Drawing({{"R1", "390K"}}), List({{"R1", "470K"}}, 7, 0.3)}), GapKind::kValue),
            "may differ R1")
      << "a row that was badly read";
  EXPECT_EQ(
      Found(Manual({Drawing({{"R1", "390K"}}), List({{"R1", "470K", "Part", "A1"}, {"R1", "390K", "Part", "A2"}})}),
            GapKind::kValue),
      "")
      << "nobody knows which assembly's R1 is drawn";
}

// Sixty resistors that are listed and drawn, and what else is named: so much is found that what lacks is missing.
std::vector<Part> AndMany(std::vector<Part> parts, const std::string& assembly = "") {
  for (int number = 101; number <= 160; ++number) parts.push_back({"R" + std::to_string(number), "", "Part", assembly});
  return parts;
}

TEST(FindGaps, NamesWhatIsListedAndNotDrawn) {
  const PageRecord list = List(AndMany({{"R1", ""}, {"R2", ""}, {"H1", ""}}));
  const PageRecord drawing = Drawing(AndMany({{"R1", ""}}));
  EXPECT_EQ(Found(Manual({drawing, list}), GapKind::kNotDrawn), "missing R2; note H")
      << "hardware is on no schematic: one note for all of it";
  EXPECT_EQ(Found(Manual({Drawing(AndMany({{"R1", ""}, {"R2A", ""}})), list}), GapKind::kNotDrawn), "note H")
      << "a section of it";
  EXPECT_EQ(Found(Manual({drawing, BadPage(PageKind::kSchematic, 4), list}), GapKind::kNotDrawn),
            "not seen R2 (4); note H (4)");
  EXPECT_EQ(Found(Manual({drawing, BadPage(PageKind::kOther, 4), list}), GapKind::kNotDrawn),
            "not seen R2 (4); note H (4)")
      << "nobody knows what that page shows";
  EXPECT_EQ(Found(Manual({drawing, BadPage(PageKind::kText, 4), list}), GapKind::kNotDrawn), "missing R2; note H")
      << "a page of text would not hold it";
  EXPECT_EQ(Found(Manual({Drawing({{"R1", ""}}), List({{"R1", ""}, {"R2", ""}})}), GapKind::kNotDrawn),
            "not seen R2 (3)")
      << "half of the parts were found: more likely unread than missing";
  PageRecord nameless = drawing;
  Print(nameless, "47K", 900, 970, TermKind::kValue);
  EXPECT_EQ(Found(Manual({nameless, List(AndMany({{"R1", ""}, {"R2", "47K"}}))}), GapKind::kNotDrawn),
            "not seen R2 (3)")
      << "a value of its size stands there without a designator";
}

TEST(FindGaps, NamesWhatIsDrawnAndNotListed) {
  const PageRecord drawing = Drawing(AndMany({{"R1", ""}, {"R2", ""}, {"J1", ""}}));
  const PageRecord list = List(AndMany({{"R1", ""}}));
  EXPECT_EQ(Found(Manual({drawing, list}), GapKind::kNotListed), "missing R2; note J");
  EXPECT_EQ(Found(Manual({drawing, list, BadPage(PageKind::kPartsList, 8)}), GapKind::kNotListed),
            "not seen R2 (8); note J (8)");
  EXPECT_EQ(Found(Manual({Drawing({{"R1", ""}, {"R2", ""}}), List({{"R1", ""}})}), GapKind::kNotListed),
            "not seen R2 (7)")
      << "half of the parts were found: more likely unread than missing";
  EXPECT_EQ(Found(Manual({drawing, List(AndMany({{"R1", "", "Resistor, 47K"}, {"", "", "~ Resistor, 10K"}}))}),
                  GapKind::kNotListed),
            "not seen R2 (7); note J")
      << "a row of resistors has no readable designator";
  EXPECT_EQ(Found(Manual({Drawing(AndMany({{"R2", "", "Part", "A1"}}, "A1")),
                          List(AndMany({{"R2", "", "Part", "A2"}}, "A1"))}),
                  GapKind::kNotListed),
            "missing A1R2")
      << "R2 of another assembly is another part (ASME Y14.44)";
}

TEST(FindGaps, TakesNoDrawingForAList) {
  PageRecord list = List({{"R1", ""}});
  list.entries[0].part_number = "23-117";
  const PageRecord drawing = List({{"R9", "47K", "C1 R4 22K"}}, 4);
  EXPECT_EQ(FindGaps(Manual({list, drawing}), ShippedRules()).entries, 1U) << "no part number where others have one";
  list.entries[0].part_number.clear();
  EXPECT_EQ(FindGaps(Manual({list, drawing}), ShippedRules()).entries, 2U) << "a list without part numbers";
}

TEST(FindGaps, OfAManualWithoutListOrSchematicSaysSoAndComparesNothing) {
  const ManualGaps no_list = FindGaps(Manual({Drawing({{"R1", ""}})}), ShippedRules());
  EXPECT_FALSE(no_list.HasList());
  EXPECT_TRUE(no_list.HasSchematic());
  EXPECT_TRUE(no_list.gaps.empty());
  const ManualGaps no_schematic = FindGaps(Manual({List({{"R1", ""}, {"R2", ""}})}), ShippedRules());
  EXPECT_TRUE(no_schematic.HasList());
  EXPECT_FALSE(no_schematic.HasSchematic());
  EXPECT_TRUE(no_schematic.gaps.empty());
}

std::vector<Part> Resistors(const std::vector<int>& numbers) {
  std::vector<Part> parts;
  parts.reserve(numbers.size());
  for (const int number : numbers) parts.push_back({"R" + std::to_string(number), ""});
  return parts;
}

TEST(FindGaps, NamesHolesInTheNumbering) {
  const auto holes = [](const std::vector<int>& listed, std::vector<PageRecord> more = {}) {
    more.push_back(List(Resistors(listed)));
    return Found(Manual(std::move(more)), GapKind::kNumbering);
  };
  EXPECT_EQ(holes({101, 102, 104, 105, 106, 107}), "missing R103");
  EXPECT_EQ(holes({101, 102, 103, 104, 107, 108, 109}), "missing R105 to R106");
  EXPECT_EQ(holes({1, 2, 3, 4, 5, 101, 102, 103, 104, 105}), "") << "two series";
  EXPECT_EQ(holes({1, 9}), "") << "too few to be a series";
  EXPECT_EQ(holes({1, 4, 7, 10, 13, 16}), "") << "numbers that are left out on purpose";
  EXPECT_EQ(holes({101, 102, 104, 105, 106, 107}, {Drawing(Resistors({103}))}), "") << "drawn";
  EXPECT_EQ(holes({101, 102, 104, 105, 106, 107}, {BadPage(PageKind::kSchematic, 4)}), "not seen R103 (4)");
}

TEST(FindGaps, HonoursNotesOfNumbersThatAreNotUsed) {
  const auto holes = [](const std::string& note) {
    PageRecord page = PrintedPage(PageKind::kText, 2);
    PrintLine(page, note, 50, 500);
    return Found(Manual({page, List(Resistors({101, 102, 105, 106, 107, 108, 109}))}), GapKind::kNumbering);
  };
  EXPECT_EQ(holes("R103 NOT USED"), "missing R104");
  EXPECT_EQ(holes("R103, R104 NOT USED"), "");
  EXPECT_EQ(holes("R103 THRU R104 OMITTED"), "");
  EXPECT_EQ(holes("R103 AND R104 ARE RESISTORS"), "missing R103 to R104");
  EXPECT_EQ(Found(Manual({List({{"R1", ""}, {"R2", ""}, {"R3", "", "NOT USED"}, {"R4", ""}, {"R5", ""}, {"R6", ""}})}),
                  GapKind::kNumbering),
            "")
      << "a row that says so";
}

std::string PageHoles(const std::vector<std::string>& printed) {
  std::vector<PageRecord> pages;
  pages.reserve(printed.size());
  for (const std::string& number : printed) {
    pages.push_back(PrintedPage(PageKind::kText, static_cast<int>(pages.size()) + 1, number));
  }
  return Found(Manual(std::move(pages)), GapKind::kPage);
}

TEST(FindGaps, NamesPrintedPagesThatAreNotThere) {
  EXPECT_EQ(PageHoles({"8-15", "8-16", "8-18"}), "note pages 8-1 to 8-14; missing page 8-17");
  EXPECT_EQ(PageHoles({"1", "2", "5", "6"}), "missing pages 3 to 4");
  EXPECT_EQ(PageHoles({"", "2", "3"}), "") << "the cover is page 1";
  EXPECT_EQ(PageHoles({"3", "4", "5"}), "missing pages 1 to 2");
  EXPECT_EQ(PageHoles({"1", "2", "", "4"}), "") << "a page whose number was not read";
  EXPECT_EQ(PageHoles({"1", "2", "", "6"}), "not seen pages 3 to 5 (3)") << "one page for three numbers";
  EXPECT_EQ(PageHoles({"1-1", "2-1", "2-2"}), "");
  EXPECT_EQ(PageHoles({"57", "58", "59"}), "note pages 1 to 56") << "these scans are likely a part of a manual";
  EXPECT_EQ(PageHoles({"", "", "7"}), "") << "a number alone proves nothing";
  EXPECT_EQ(PageHoles({}), "");
}

TEST(FindGaps, NamesSectionsThatAreSkipped) {
  std::vector<PageRecord> pages = {PrintedPage(PageKind::kText, 1, "1-1"), PrintedPage(PageKind::kText, 2, "2-1"),
                                   PrintedPage(PageKind::kText, 3, "4-1")};
  EXPECT_EQ(Found(Manual(pages), GapKind::kSection), "missing section 3");
  pages.push_back(BadPage(PageKind::kOther, 4));
  EXPECT_EQ(Found(Manual(pages), GapKind::kSection), "not seen section 3 (4)");
}

TEST(FindGaps, NamesFiguresSectionsPagesAndVolumesThatAreOnlySpokenOf) {
  PageRecord text = PrintedPage(PageKind::kText, 1, "1");
  PrintLine(text, "SEE FIG. 2 AND FIG. 3 AND SECTION 4 ON PAGE 9", 20, 500);
  PrintLine(text, "THE DIAGRAMS ARE IN VOLUME 2", 20, 600);
  PageRecord drawing = PrintedPage(PageKind::kSchematic, 2, "2");
  PrintLine(drawing, "FIG. 2 SCHEMATIC DIAGRAM", 50, 900);
  const std::vector<PageRecord> pages = {text, drawing, PrintedPage(PageKind::kText, 3, "3")};
  EXPECT_EQ(Found(Manual(pages), GapKind::kFigure), "missing Fig. 3");
  EXPECT_EQ(Found(Manual(pages), GapKind::kSection), "missing section 4");
  EXPECT_EQ(Found(Manual(pages), GapKind::kPage), "missing page 9");
  EXPECT_EQ(Found(Manual(pages), GapKind::kVolume), "missing volume 2");
}

TEST(FindGaps, NamesAVolumeThatIsSkipped) {
  PageRecord first = PrintedPage(PageKind::kText, 1);
  PageRecord third = PrintedPage(PageKind::kText, 2);
  third.volume = 3;
  EXPECT_EQ(Found(Manual({first, third}), GapKind::kVolume), "missing volume 2");
}

TEST(FindGaps, NamesPagesThatCouldNotBeReadOrOnlyBadly) {
  PageRecord failed = PrintedPage(PageKind::kOther, 2);
  failed.failure = Error{ErrorCode::kTimeout, "the page took too long", "m.pdf", 2};
  PageRecord good = PrintedPage(PageKind::kText, 3);
  PrintLine(good, "THE FILTER CAPACITORS HOLD A CHARGE", 50, 50);
  const ManualRecord manual = Manual({BadPage(PageKind::kText, 1), failed, good, PrintedPage(PageKind::kOther, 4)});
  EXPECT_EQ(Found(manual, GapKind::kUnread), "not seen m.pdf p. 1; not seen m.pdf p. 2")
      << "a page without words is no badly read one";
  const ManualGaps gaps = FindGaps(manual, ShippedRules());
  ASSERT_EQ(gaps.pages.size(), 4U) << "all that was searched";
  EXPECT_TRUE(gaps.pages[0].badly_read);
  EXPECT_NEAR(gaps.pages[0].sure_share, 0, 1e-9);
  EXPECT_TRUE(gaps.pages[1].failure);
  EXPECT_FALSE(gaps.pages[2].badly_read);
}

TEST(FindGaps, TakesNothing) { EXPECT_TRUE(FindGaps({}, ShippedRules()).gaps.empty()); }

TEST(GapKind, HasAName) {
  for (int i = 0; i <= static_cast<int>(GapKind::kNumbering); ++i) {
    EXPECT_EQ(GapKindNamed(Name(static_cast<GapKind>(i))), static_cast<GapKind>(i));
  }
  EXPECT_FALSE(GapKindNamed("holes"));
}

PageRecord ItemList(int from, int to, int left_out = 0) {
  PageRecord page = PrintedPage(PageKind::kPartsList, 7);
  for (int item = from; item <= to; ++item) {
    if (item == left_out) continue;
    Entry entry;
    entry.item = std::to_string(item);
    entry.part_number = "74-100" + entry.item;
    entry.box = {0.1, 0.02 * item, 0.8, 0.02};
    entry.confidence = 0.9;
    page.entries.push_back(entry);
  }
  return page;
}

PageRecord ItemDrawing(int to, int left_out) {
  PageRecord page = PrintedPage(PageKind::kPartsLocator, 3);
  for (int item = 1; item <= to; ++item) {
    if (item != left_out) Print(page, std::to_string(item), 80 * item, 100, TermKind::kItem);
  }
  return page;
}

TEST(FindGaps, TellsItemsThatNoDrawingCallsOutAndNumbersThatNoRowBears) {
  const ManualRecord manual = Manual({ItemDrawing(8, 5), ItemList(1, 8)});
  EXPECT_EQ(Found(manual, GapKind::kNotDrawn), "not seen item 5");
  EXPECT_EQ(Found(manual, GapKind::kNumbering), "");
  EXPECT_TRUE(FindGaps(manual, ShippedRules()).HasList());
  EXPECT_EQ(Found(Manual({ItemList(1, 8, 5)}), GapKind::kNumbering), "missing item 5");
  EXPECT_EQ(Found(Manual({ItemList(1, 8, 5)}), GapKind::kNotDrawn), "") << "nothing calls out an item";
}

}  // namespace
}  // namespace benchleaf

#include "benchleaf/report/table.h"

#include <gtest/gtest.h>

#include <string>
#include <vector>

namespace benchleaf {
namespace {

using Align = Column::Align;
using Fit = Column::Fit;

TEST(Table, SetsFieldsUnderTheirTitles) {
  Table table({{"#", Align::kRight}, {"file"}, {"sure", Align::kRight}});
  table.Add({"1", "a.pdf", "97 %"});
  table.Add({"12", "long-name.pdf", "8 %"});
  EXPECT_EQ(table.Render({}),
            " #  file           sure\n"
            "--  -------------  ----\n"
            " 1  a.pdf          97 %\n"
            "12  long-name.pdf   8 %\n");
}

TEST(Table, LeavesNoSpacesAtTheEndOfALine) {
  Table table({{"part"}, {"description"}});
  table.Add({"C1", ""});
  table.Add({"C2", "paper"});
  EXPECT_EQ(table.Render({}),
            "part  description\n"
            "----  -----------\n"
            "C1\n"
            "C2    paper\n");
}

TEST(Table, LeavesOutColumnsWithoutAnyText) {
  Table table({{"part"}, {"reads"}, {"page"}});
  table.Add({"C1", "", "3"});
  EXPECT_EQ(table.Render({}), "part  page\n----  ----\nC1    3\n");
}

TEST(Table, WithoutRowsGivesNothing) {
  const Table table({{"part"}});
  EXPECT_TRUE(table.empty());
  EXPECT_EQ(table.Render({}), "");
}

TEST(Table, MeasuresWideCharactersAsTwoColumns) {
  Table table({{"set"}, {"page"}});
  table.Add({"\u771F\u7A7A", "1"});
  table.Add({"ab", "2"});
  EXPECT_EQ(table.Render({}),
            "set   page\n"
            "----  ----\n"
            "\u771F\u7A7A  1\n"
            "ab    2\n");
}

TEST(Table, CleansForeignText) {
  Table table({{"file"}});
  table.Add({"a\x1b[2Jb\nc"});
  EXPECT_EQ(table.Render({}), "file\n--------\na\uFFFD[2Jb c\n");
}

TEST(Table, SetsCellsOfSeveralLinesBesideEachOther) {
  Table table({{"part"}, {"drawn on"}, {"sure"}});
  table.Add({"C1", std::vector<std::string>{"p. 3", "p. 4"}, "97 %"});
  EXPECT_EQ(table.Render({}),
            "part  drawn on  sure\n"
            "----  --------  ----\n"
            "C1    p. 3      97 %\n"
            "      p. 4\n");
}

TEST(Table, WrapsInsteadOfCuttingOffOnANarrowTerminal) {
  Table table({{"part"}, {"description", Align::kLeft, Fit::kWrap}});
  table.Add({"C1", "capacitor, paper, 400 volts"});
  EXPECT_EQ(table.Render({.columns = 24}),
            "part  description\n"
            "----  ------------------\n"
            "C1    capacitor, paper,\n"
            "      400 volts\n");
}

TEST(Table, KeepsLongTextReadableWhereNoWidthIsSet) {
  Table table({{"description", Align::kLeft, Fit::kWrap}, {"file", Align::kLeft, Fit::kWrap}});
  const std::string file(80, 'x');
  table.Add({"resistor, carbon, one half watt, ten percent, twenty-two hundred ohms", file});
  EXPECT_EQ(table.Render({}),
            "description                                                   file\n"
            "------------------------------------------------------------  " +
                std::string(80, '-') +
                "\n"
                "resistor, carbon, one half watt, ten percent, twenty-two      " +
                file +
                "\n"
                "hundred ohms\n");
}

TEST(Table, TakesFromTheWidestColumnFirst) {
  Table table({{"a", Align::kLeft, Fit::kWrap}, {"b", Align::kLeft, Fit::kWrap}});
  table.Add({"twelve chars", "a field of thirty-two characters"});
  EXPECT_EQ(table.Render({.columns = 30}),
            "a             b\n"
            "------------  ----------------\n"
            "twelve chars  a field of\n"
            "              thirty-two\n"
            "              characters\n");
}

TEST(Table, RunsOverTheEdgeRatherThanLoseText) {
  Table table({{"file"}});
  table.Add({"unbreakable.pdf"});
  EXPECT_EQ(table.Render({.columns = 4}), "file\n---------------\nunbreakable.pdf\n");
}

TEST(Table, PaintsOnlyWhenTheLookHasColor) {
  Table table({{"file"}});
  table.Add({Cell("x", Paint::kWarning)});
  EXPECT_EQ(table.Render({}).find('\x1b'), std::string::npos);
  const std::string painted = table.Render({.color = true});
  EXPECT_NE(painted.find("\x1b[33mx\x1b[0m\n"), std::string::npos);
  EXPECT_NE(painted.find("\x1b[1mfile\x1b[0m\n"), std::string::npos);
}

}  // namespace
}  // namespace benchleaf

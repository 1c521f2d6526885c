#include "library/library_table.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <set>
#include <string>
#include <vector>

namespace benchleaf {
namespace {

using testing::AllOf;
using testing::HasSubstr;

// A library that holds a.pdf, b.pdf, set/c.pdf and a damaged d.pdf.
PathUse Use(const std::string& path) {
  static const std::set<std::string> kScans = {"", "a.pdf", "b.pdf", "set", "set/c.pdf", "x, y.pdf"};
  if (kScans.contains(path)) {
    return PathUse::kScan;
  }
  return path == "d.pdf" ? PathUse::kLeftOut : path == "notes.txt" ? PathUse::kNoScan : PathUse::kMissing;
}

LibraryTable Parse(const std::string& text, std::vector<std::string>& problems) {
  std::vector<Error> errors;
  LibraryTable table = LibraryTable::Parse(text, Use, errors);
  for (const Error& error : errors) {
    EXPECT_EQ(error.source, "library.csv");
    EXPECT_EQ(error.code, ErrorCode::kUsage);
    problems.push_back(error.message);
  }
  return table;
}

TEST(LibraryTableTest, TakesColumnsInAnyOrderAndCase) {
  std::vector<std::string> problems;
  const LibraryTable table =
      Parse("\xEF\xBB\xBFTitle, MODEL ,file,Volume,maker\r\nService,210,a.pdf,2,Fernwell\r\n", problems);
  EXPECT_TRUE(problems.empty());
  EXPECT_EQ(table.For("a.pdf"), (StatedFacts{"Fernwell", "210", "Service", 2}));
  EXPECT_EQ(table.For("b.pdf"), StatedFacts{});
}

TEST(LibraryTableTest, AFoldersRowHoldsForAllInItAndTheLongestPathWins) {
  std::vector<std::string> problems;
  const LibraryTable table = Parse(
      "file,maker,model,title\n"
      ".,Orrin,,\n"
      "./set/,Fernwell,210,\n"
      "set/c.pdf,,,Service\n",
      problems);
  EXPECT_TRUE(problems.empty());
  EXPECT_EQ(table.For("set/c.pdf"), (StatedFacts{"Fernwell", "210", "Service", 0}));
  EXPECT_EQ(table.For("set/sub/e.pdf"), (StatedFacts{"Fernwell", "210", "", 0}));
  EXPECT_EQ(table.For("a.pdf"), (StatedFacts{"Orrin", "", "", 0}));
  EXPECT_EQ(table.For("settings.pdf"), (StatedFacts{"Orrin", "", "", 0}));
}

TEST(LibraryTableTest, ReadsQuotedCells) {
  std::vector<std::string> problems;
  const LibraryTable table = Parse("file,maker\n\"x, y.pdf\",\"Fern \"\"well\"\"\"\n", problems);
  EXPECT_TRUE(problems.empty());
  EXPECT_EQ(table.For("x, y.pdf").maker, "Fern \"well\"");
}

TEST(LibraryTableTest, NamesLineAndColumnOfWhatItCannotUse) {
  const struct {
    const char* text;
    const char* place;
    const char* hint;
    const char* reason;
  } kCases[] = {
      {"file,maker,colour\na.pdf,F,red\n", "line 1, column 3", "not known", "an unknown column"},
      {"file,maker,maker\na.pdf,F,G\n", "line 1, column 3", "twice", "a column twice"},
      {"file,maker\na.pdf,F\nz.pdf,G\n", "line 3, column 1 (file)", "'z.pdf' is not in the library", "no such file"},
      {"file,maker\na.pdf,F\nnotes.txt,G\n", "line 3, column 1 (file)", "no scan", "a file that is no scan"},
      {"file,maker\na.pdf,F\n../a.pdf,G\n", "line 3, column 1 (file)", "from the library's folder", "outside"},
      {"file,maker\na.pdf,F\n/a.pdf,G\n", "line 3, column 1 (file)", "from the library's folder", "not relative"},
      {"file,maker\na.pdf,F\n,G\n", "line 3, column 1 (file)", "empty", "no file"},
      {"file,maker\na.pdf,F\na.pdf,G\n", "line 3, column 1 (file)", "earlier line", "a file twice"},
      {"file,maker,volume\na.pdf,F,one\n", "line 2, column 3 (volume)", "'one' is no volume number", "no number"},
      {"file,maker,volume\na.pdf,F,0\n", "line 2, column 3 (volume)", "write 1 to 999", "volume 0"},
      {"file,maker,volume\na.pdf,F,-1\n", "line 2, column 3 (volume)", "no volume number", "negative"},
      {"file,maker,volume\na.pdf,F,99999999999\n", "line 2, column 3 (volume)", "no volume number", "too large"},
      {"file,maker\na.pdf,F\nb.pdf,G,H\n", "line 3, column 3", "3 columns, the first line 2", "a row too long"},
      {"file,maker,model\na.pdf,F\n", "line 2, column 3 (model)", "2 columns, the first line 3", "a row too short"},
      {"file,maker\na.pdf,F\nb.pdf,\"G\n", "line 3, column 2 (maker)", "never closed", "an open quote"},
      {"file,title,maker\na.pdf,\xE9,F\n", "line 2, column 2 (title)", "UTF-8", "another encoding"},
  };
  for (const auto& c : kCases) {
    SCOPED_TRACE(c.reason);
    std::vector<std::string> problems;
    const LibraryTable table = Parse(c.text, problems);
    EXPECT_THAT(problems, testing::ElementsAre(AllOf(HasSubstr(c.place), HasSubstr(c.hint))));
    EXPECT_EQ(table.For("a.pdf").maker, "F") << "the rest is used";
  }
}

TEST(LibraryTableTest, SaysThatItNeedsAColumnForTheFile) {
  std::vector<std::string> problems;
  const LibraryTable table = Parse("file;maker\na.pdf;F\n", problems);
  EXPECT_THAT(problems, testing::Contains(HasSubstr("no column is named file")));
  EXPECT_EQ(table.For("a.pdf"), StatedFacts{});
}

TEST(LibraryTableTest, IsSilentAboutFilesWithAProblemOfTheirOwn) {
  std::vector<std::string> problems;
  Parse("file,maker\nd.pdf,F\n\n , \n", problems);
  EXPECT_TRUE(problems.empty());
}

TEST(LibraryTableTest, AnEmptyTableSaysNothing) {
  std::vector<std::string> problems;
  EXPECT_EQ(Parse("", problems).For("a.pdf"), StatedFacts{});
  EXPECT_EQ(Parse("file,maker\n", problems).For("a.pdf"), StatedFacts{});
  EXPECT_TRUE(problems.empty());
}

}  // namespace
}  // namespace benchleaf

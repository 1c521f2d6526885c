#include "library/grouping.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <sstream>
#include <string>
#include <vector>

namespace benchleaf {
namespace {

std::vector<ScanFile> Files(const std::string& paths) {
  std::vector<ScanFile> files;
  std::istringstream lines(paths);
  for (std::string path; std::getline(lines, path);) {
    ScanFile file;
    file.path = path;
    file.format = path.ends_with(".png")   ? ScanFormat::kPng
                  : path.ends_with(".jpg") ? ScanFormat::kJpeg
                  : path.ends_with(".tif") ? ScanFormat::kTiff
                                           : ScanFormat::kPdf;
    files.push_back(file);
  }
  return files;
}

LibraryTable Table(const std::string& text) {
  std::vector<Error> problems;
  LibraryTable table = LibraryTable::Parse(
      text, [](const std::string&) { return PathUse::kScan; }, problems);
  EXPECT_TRUE(problems.empty());
  return table;
}

// "set > manual [title]: file (volume)" a line.
std::string Dump(const std::vector<ScannedSet>& sets) {
  std::string text;
  for (const ScannedSet& set : sets) {
    for (const ScannedManual& manual : set.manuals) {
      text += set.name + " > " + manual.name + (manual.title.empty() ? "" : " [" + manual.title + "]") + ":";
      for (const ScanFile& file : manual.files) {
        text += " " + file.path + " (" + std::to_string(file.volume) + ")";
      }
      text += '\n';
    }
  }
  return text;
}

struct GroupingCase {
  const char* reason;
  const char* files;
  const char* table;
  const char* expected;
};

const GroupingCase kCases[] = {
    {"a file in the library is a set, a folder with its subfolders is one",
     "orrin_52.pdf\nfernwell-210/service.pdf\nfernwell-210/more/list.pdf", "",
     "fernwell 210 > list: fernwell-210/more/list.pdf (1)\n"
     "fernwell 210 > service: fernwell-210/service.pdf (1)\n"
     "orrin 52 > orrin 52: orrin_52.pdf (1)\n"},
    {"names that differ only in the volume are one manual", "s/set vol 2.pdf\ns/set vol 1.pdf\ns/other.pdf", "",
     "s > other: s/other.pdf (1)\ns > set: s/set vol 1.pdf (1) s/set vol 2.pdf (2)\n"},
    {"volumes directly in the library are one set", "orrin 52 - 1 of 2.pdf\norrin_52_-_2_of_2.PDF", "",
     "orrin 52 > orrin 52: orrin 52 - 1 of 2.pdf (1) orrin_52_-_2_of_2.PDF (2)\n"},
    {"files that are called by their volume only belong to the set", "s/Vol I.pdf\ns/Vol II.pdf", "",
     "s > s: s/Vol I.pdf (1) s/Vol II.pdf (2)\n"},
    {"a folder a volume", "s/vol 1/manual.pdf\ns/vol 2/manual.pdf", "",
     "s > manual: s/vol 1/manual.pdf (1) s/vol 2/manual.pdf (2)\n"},
    {"folders that differ only in the volume are one set", "orrin 52 vol 1/p1.png\norrin 52 vol 2/p1.png", "",
     "orrin 52 > orrin 52: orrin 52 vol 1/p1.png (1) orrin 52 vol 2/p1.png (2)\n"},
    {"a file without a volume's number is another manual", "s/set.pdf\ns/set vol 2.pdf", "",
     "s > s set vol 2: s/set vol 2.pdf (2)\ns > set: s/set.pdf (1)\n"},
    {"two formats of one name are two manuals", "s/set.pdf\ns/set.tif", "",
     "s > s set: s/set.tif (1)\ns > set: s/set.pdf (1)\n"},
    {"volumes of one manual may come in two formats", "s/set vol 1.tif\ns/set vol 2.pdf", "",
     "s > set: s/set vol 1.tif (1) s/set vol 2.pdf (2)\n"},
    {"a model's number before the volume counts no pages", "s/orrin 84 vol 1.tif\ns/orrin 84 vol 2.pdf", "",
     "s > orrin 84: s/orrin 84 vol 1.tif (1) s/orrin 84 vol 2.pdf (2)\n"},
    {"the same volumes in two formats are two copies",
     "s/set vol 1.tif\ns/set vol 2.tif\ns/set vol 1.pdf\ns/set vol 2.pdf", "",
     "s > s set vol 1: s/set vol 1.tif (1) s/set vol 2.tif (2)\ns > set: s/set vol 1.pdf (1) s/set vol 2.pdf (2)\n"},
    {"the pictures of a folder are the pages of one manual, whatever their format",
     "s/page-10.png\ns/page-2.png\ns/page-1.jpg\ns/list.pdf", "",
     "s > list: s/list.pdf (1)\ns > s: s/page-1.jpg (1) s/page-2.png (1) s/page-10.png (1)\n"},
    {"the pictures of each subfolder are a manual", "s/service/1.png\ns/owner/1.png", "",
     "s > owner: s/owner/1.png (1)\ns > service: s/service/1.png (1)\n"},
    {"TIFF files that count through are pages; others are manuals",
     "s/scan0002.tif\ns/scan0010.tif\ns/chart.tif\ns/page 9.tif", "",
     "s > chart: s/chart.tif (1)\ns > page 9: s/page 9.tif (1)\n"
     "s > scan: s/scan0002.tif (1) s/scan0010.tif (1)\n"},
    {"loose pages of one name are one set, loose files that merely end in a number are not",
     "orrin 52 page 1.png\norrin 52 page 2.png\norrin 7.png\norrin 8.png\nfern p1.tif\nfern p2.tif", "",
     "fern > fern: fern p1.tif (1) fern p2.tif (1)\n"
     "orrin 52 > orrin 52: orrin 52 page 1.png (1) orrin 52 page 2.png (1)\n"
     "orrin 7 > orrin 7: orrin 7.png (1)\norrin 8 > orrin 8: orrin 8.png (1)\n"},
    {"loose pages without any other name are the library's", "page-1.png\npage-2.png", "",
     "The Library > The Library: page-1.png (1) page-2.png (1)\n"},
    {"set names that differ in case only are one; the first file's counts", "Orrin.pdf\norrin/list.pdf", "",
     "orrin > list: orrin/list.pdf (1)\norrin > Orrin: Orrin.pdf (1)\n"},
    {"maker and model of the table name the set, over folder and file", "s/a.pdf\ns/b.pdf\nc.pdf",
     "file,maker,model\ns/a.pdf,Fernwell,210\nc.pdf,Fernwell,210\n",
     "Fernwell 210 > a: s/a.pdf (1)\nFernwell 210 > c: c.pdf (1)\ns > b: s/b.pdf (1)\n"},
    {"a title names the manual and joins files of any names", "x.pdf\ny.pdf",
     "file,maker,model,volume,title\nx.pdf,Orrin,52,2,Service manual\ny.pdf,Orrin,52,1,Service manual\n",
     "Orrin 52 > Service manual [Service manual]: y.pdf (1) x.pdf (2)\n"},
    {"a title of one volume holds for the other", "s/m vol 1.pdf\ns/m vol 2.pdf",
     "file,title\ns/m vol 1.pdf,Service manual\n",
     "s > Service manual [Service manual]: s/m vol 1.pdf (1) s/m vol 2.pdf (2)\n"},
    {"volumes of the table join files without a title", "x.pdf\ny.pdf",
     "file,maker,model,volume\nx.pdf,Orrin,52,2\ny.pdf,Orrin,52,1\n", "Orrin 52 > Orrin 52: y.pdf (1) x.pdf (2)\n"},
    {"but not when a number stands twice", "x.pdf\ny.pdf\nz.pdf",
     "file,maker,model,volume\nx.pdf,Orrin,52,1\ny.pdf,Orrin,52,1\nz.pdf,Orrin,52,2\n",
     "Orrin 52 > x: x.pdf (1)\nOrrin 52 > y: y.pdf (1)\nOrrin 52 > z: z.pdf (2)\n"},
    {"folders of pictures as volumes of the table", "one/1.png\none/2.png\ntwo/1.png",
     "file,maker,model,volume\none,Orrin,52,1\ntwo,Orrin,52,2\n",
     "Orrin 52 > Orrin 52: one/1.png (1) one/2.png (1) two/1.png (2)\n"},
    {"names that clash become longer, then counted", "s/a/m.pdf\ns/b/m.pdf\ns/b-m.pdf\ns/b_m.tif", "",
     "s > b m: s/b-m.pdf (1)\ns > m: s/a/m.pdf (1)\ns > s b m: s/b/m.pdf (1)\ns > s b m 2: s/b_m.tif (1)\n"},
    {"bytes that are no text are kept", "\xFF_1.pdf", "", "\xFF 1 > \xFF 1: \xFF_1.pdf (1)\n"},
};

TEST(GroupingTest, PutsFilesTogether) {
  for (const GroupingCase& c : kCases) {
    SCOPED_TRACE(c.reason);
    EXPECT_EQ(Dump(GroupIntoSets(Files(c.files), Table(c.table), "The Library")), c.expected);
  }
}

TEST(GroupingTest, DoesNotDependOnTheFilesOrder) {
  for (const GroupingCase& c : kCases) {
    SCOPED_TRACE(c.reason);
    std::vector<ScanFile> files = Files(c.files);
    std::reverse(files.begin(), files.end());
    EXPECT_EQ(Dump(GroupIntoSets(files, Table(c.table), "The Library")), c.expected);
  }
}

}  // namespace
}  // namespace benchleaf

// Writes lines for a reader to learn from, or to be judged by: FOLDER/PART.tif, a page a line, and FOLDER/PART.box with
// the lines' texts, as `tesseract PART.tif PART --psm 13 lstm.train` wants them, for PART 0 and up.

#include "reader-training/line_crops.h"
#include "reader-training/practice_list.h"
#include "reader-training/practice_sheet.h"
#include "scan-maker/scan_files.h"
#include "scan-maker/seeded_random.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cstdint>
#include <cstdio>
#include <exception>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <stdexcept>
#include <string>
#include <utility>
#include <vector>

namespace benchleaf::training {
namespace {

using scanmaker::Grade;
using scanmaker::Lettering;
using scanmaker::SeededRandom;

constexpr const char* kUsage =
    "make-lines FOLDER SEED SHEETS seen|unseen|lists\n"
    "Draws SHEETS sheets from SEED on. `unseen` draws them in the lettering that is kept from the training; `lists` "
    "draws\n"
    "pages of lists, of which whole phrases are taken.\n";

constexpr std::array<Lettering, 13> kSeenLetterings = {
    Lettering::kSimplex, Lettering::kHand, Lettering::kDrafting, Lettering::kSimplex, Lettering::kHand,
    Lettering::kSans,    Lettering::kHand, Lettering::kDrafting, Lettering::kNarrow,  Lettering::kTypewriter,
    Lettering::kBook,    Lettering::kHand, Lettering::kBold};
constexpr Lettering kUnseenLettering = Lettering::kDuplex;
constexpr std::array<Grade, 6> kGrades = {Grade::kMild,   Grade::kVaried, Grade::kMedium,
                                          Grade::kVaried, Grade::kSevere, Grade::kVaried};

// The box round what is dark: the recognizer, too, takes a line as high as its ink.
Box InkOf(const GreyImage& image) {
  constexpr int kDark = 150;
  Box ink;
  for (int y = 0; y < image.height; ++y) {
    const std::uint8_t* row = image.row(y);
    const std::uint8_t* first = std::find_if(row, row + image.width, [](int level) { return level < kDark; });
    if (first == row + image.width) {
      continue;
    }
    const std::uint8_t* last = row + image.width - 1;
    while (*last >= kDark) --last;
    ink = Union(ink, {static_cast<int>(first - row), y, static_cast<int>(last - first) + 1, 1});
  }
  return ink.empty() ? Box{0, 0, image.width, image.height} : ink;
}

void WritePart(const std::filesystem::path& folder, int part, const std::vector<LineCrop>& crops) {
  std::vector<scanmaker::FilePage> pages;
  std::ofstream boxes(folder / (std::to_string(part) + ".box"));
  for (std::size_t i = 0; i < crops.size(); ++i) {
    const Box ink = InkOf(crops[i].image);
    const int bottom = crops[i].image.height - ink.bottom();
    const int top = crops[i].image.height - ink.y;
    boxes << "WordStr " << ink.x << ' ' << bottom << ' ' << ink.right() << ' ' << top << ' ' << i << " #"
          << crops[i].text.value() << "\n\t " << ink.right() << ' ' << bottom << ' ' << ink.right() + 1 << ' ' << top
          << ' ' << i << '\n';
    scanmaker::FilePage page;
    page.image = crops[i].image;
    page.jpeg_quality = 95;
    pages.push_back(std::move(page));
  }
  scanmaker::WriteTiffFile(folder / (std::to_string(part) + ".tif"), pages);
  if (!boxes) {
    throw std::runtime_error(folder.string() + " cannot be written");
  }
}

int Number(const std::string& text) {
  int number = 0;
  const auto end = std::from_chars(text.data(), text.data() + text.size(), number);
  if (end.ptr != text.data() + text.size() || number < 0) {
    throw std::invalid_argument(text + " is no number");
  }
  return number;
}

// What the lines are cut from.
enum class Kind { kSeen, kUnseen, kLists };

// The lines of one sheet or page; `waiting` holds crops that wait for others to stand beside.
std::vector<LineCrop> LinesOf(Kind kind, int number, std::vector<LineCrop>& waiting) {
  constexpr double kScrapsKept = 0.25;  // else scraps would outnumber texts
  constexpr double kAlone = 0.15;       // of the crops: as the program gives them to its readers
  constexpr int kFewest = 4;            // crops side by side
  constexpr int kMost = 8;
  const auto seed = static_cast<std::uint64_t>(number);
  const auto pick = static_cast<std::size_t>(number);
  const Lettering lettering =
      kind == Kind::kUnseen ? kUnseenLettering : kSeenLetterings.at(pick % kSeenLetterings.size());
  const Grade grade = kGrades.at(pick / kSeenLetterings.size() % kGrades.size());
  if (kind == Kind::kLists) {
    return PhraseCropsOf(scanmaker::DegradeMade(MakePracticeList(lettering, seed), grade, seed));
  }
  SeededRandom random(seed);
  std::vector<LineCrop> lines;
  for (LineCrop& crop : CropsOf(scanmaker::DegradeMade(MakePracticeSheet(lettering, seed), grade, seed))) {
    if (crop.text && (crop.text != kNoText || random.Unit() < kScrapsKept)) {
      (kind == Kind::kUnseen || random.Unit() < kAlone ? lines : waiting).push_back(std::move(crop));
    }
    if (!waiting.empty() && static_cast<int>(waiting.size()) >= random.Whole(kFewest, kMost)) {
      lines.push_back(Joined(waiting));
      waiting.clear();
    }
  }
  return lines;
}

Kind KindOf(const std::string& name) {
  if (name == "seen") {
    return Kind::kSeen;
  }
  if (name == "unseen") {
    return Kind::kUnseen;
  }
  if (name != "lists") {
    throw std::invalid_argument(name + " is no kind of lines");
  }
  return Kind::kLists;
}

void Run(const std::vector<std::string>& arguments) {
  if (arguments.size() != 4) {
    throw std::invalid_argument("four arguments are wanted");
  }
  const std::filesystem::path folder = arguments[0];
  std::filesystem::create_directories(folder);
  const int seed = Number(arguments[1]);
  const int sheets = Number(arguments[2]);
  const Kind kind = KindOf(arguments[3]);
  constexpr int kSheetsInPart = 3;  // tesseract reads the whole box file again for every line
  std::vector<LineCrop> lines;
  std::vector<LineCrop> waiting;
  for (int i = 0; i < sheets; ++i) {
    std::vector<LineCrop> more = LinesOf(kind, seed + i, waiting);
    lines.insert(lines.end(), std::make_move_iterator(more.begin()), std::make_move_iterator(more.end()));
    if ((i + 1) % kSheetsInPart == 0 || i + 1 == sheets) {
      WritePart(folder, i / kSheetsInPart, lines);
      std::fprintf(stderr, "make-lines: %d of %d sheets, %zu lines in part %d\n", i + 1, sheets, lines.size(),
                   i / kSheetsInPart);
      lines.clear();
    }
  }
}

}  // namespace
}  // namespace benchleaf::training

int main(int argc, char** argv) {
  try {
    benchleaf::training::Run({argv + 1, argv + argc});
  } catch (const std::invalid_argument& problem) {
    std::fprintf(stderr, "make-lines: %s\n%s", problem.what(), benchleaf::training::kUsage);
    return 2;
  } catch (const std::exception& problem) {
    std::fprintf(stderr, "make-lines: %s\n", problem.what());
    return 1;
  }
  return 0;
}

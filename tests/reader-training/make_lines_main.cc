// Writes lines for a reader to learn from, or to be judged by: FOLDER/PART.tif, a page a line, and FOLDER/PART.box with
// the lines' texts, as `tesseract PART.tif PART --psm 13 lstm.train` wants them, for PART 0 and up.

#include "reader-training/line_crops.h"
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
#include <stdexcept>
#include <string>
#include <vector>

namespace benchleaf::training {
namespace {

using scanmaker::Grade;
using scanmaker::Lettering;

constexpr const char* kUsage =
    "make-lines FOLDER SEED SHEETS seen|unseen\n"
    "Draws SHEETS sheets from SEED on. `unseen` draws them in the lettering that is kept from the training.\n";

constexpr std::array<Lettering, 9> kSeen = {Lettering::kSimplex,  Lettering::kHand,       Lettering::kHand,
                                            Lettering::kDrafting, Lettering::kTypewriter, Lettering::kSimplex,
                                            Lettering::kHand,     Lettering::kDrafting,   Lettering::kBook};
constexpr Lettering kUnseen = Lettering::kDuplex;
constexpr std::array<Grade, 6> kGrades = {Grade::kMild,   Grade::kMedium, Grade::kMedium,
                                          Grade::kMedium, Grade::kSevere, Grade::kSevere};

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
          << crops[i].text << "\n\t " << ink.right() << ' ' << bottom << ' ' << ink.right() + 1 << ' ' << top << ' '
          << i << '\n';
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

void Run(const std::vector<std::string>& arguments) {
  if (arguments.size() != 4 || (arguments[3] != "seen" && arguments[3] != "unseen")) {
    throw std::invalid_argument("four arguments are wanted");
  }
  const std::filesystem::path folder = arguments[0];
  std::filesystem::create_directories(folder);
  const int seed = Number(arguments[1]);
  const int sheets = Number(arguments[2]);
  constexpr double kScrapsKept = 0.25;  // else scraps would outnumber texts
  constexpr int kSheetsInPart = 3;      // tesseract reads the whole box file again for every line
  constexpr double kAlone = 0.15;       // of the crops: as the program gives them to its readers
  std::vector<LineCrop> crops;
  std::vector<LineCrop> waiting;
  for (int i = 0; i < sheets; ++i) {
    const auto sheet_seed = static_cast<std::uint64_t>(seed + i);
    scanmaker::SeededRandom random(sheet_seed);
    const auto pick = static_cast<std::size_t>(seed + i);
    const Lettering lettering = arguments[3] == "seen" ? kSeen.at(pick % kSeen.size()) : kUnseen;
    const Grade grade = kGrades.at(pick / kSeen.size() % kGrades.size());
    const scanmaker::MadePage made = MakePracticeSheet(lettering, sheet_seed);
    for (LineCrop& crop : CropsOf(scanmaker::DegradeMade(made, grade, sheet_seed))) {
      if (crop.text != kNoText || random.Unit() < kScrapsKept) {
        (random.Unit() < kAlone || arguments[3] == "unseen" ? crops : waiting).push_back(std::move(crop));
      }
      constexpr int kFewest = 4;
      constexpr int kMost = 8;
      if (!waiting.empty() && static_cast<int>(waiting.size()) >= random.Whole(kFewest, kMost)) {
        crops.push_back(Joined(waiting));
        waiting.clear();
      }
    }
    if ((i + 1) % kSheetsInPart == 0 || i + 1 == sheets) {
      WritePart(folder, i / kSheetsInPart, crops);
      std::fprintf(stderr, "make-lines: %d of %d sheets, %zu lines in part %d\n", i + 1, sheets, crops.size(),
                   i / kSheetsInPart);
      crops.clear();
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

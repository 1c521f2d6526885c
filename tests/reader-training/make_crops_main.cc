// Writes crops for the lettering net to learn from, or to be judged by, as the program itself cuts them.

#include "reader-training/line_crops.h"
#include "reader-training/practice_list.h"
#include "reader-training/practice_sheet.h"
#include "reader-training/run_tool.h"
#include "scan-maker/seeded_random.h"

#include "benchleaf/clean/clean_page.h"
#include "benchleaf/lettering/line_strip.h"

#include <array>
#include <charconv>
#include <cstdint>
#include <cstdio>
#include <fstream>
#include <span>
#include <stdexcept>
#include <string>
#include <vector>

namespace benchleaf::training {
namespace {

using scanmaker::Grade;
using scanmaker::Lettering;
using scanmaker::SeededRandom;

constexpr const char* kUsage =
    "make-crops FILE SEED SHEETS sheets|coarse|lists|coarse-lists usual|all|unmet\n"
    "Draws SHEETS sheets from SEED on, spoils them, and writes the strings that the program cuts from them: for each\n"
    "its width in px (two bytes, the lower one first), the length of its text in bytes (one byte), the text, and its\n"
    "strip's pixels, row by row. `lists` draws pages of lists, of which whole phrases are taken; what is coarse is\n"
    "scanned at 75 to 130 dpi, lists from 100 on. Letterings: those of all made pages, with those besides that only\n"
    "training knows, or those that are kept from it.\n";

using enum scanmaker::Lettering;

// Those of drawings stand several times.
constexpr std::array<Lettering, 13> kUsual = {kSimplex,  kHand,   kDrafting,   kSimplex, kHand, kSans, kHand,
                                              kDrafting, kNarrow, kTypewriter, kBook,    kHand, kBold};
constexpr std::array<Lettering, 41> kAll = {kSimplex,
                                            kTemplate,
                                            kHand,
                                            kGrotesque,
                                            kDrafting,
                                            kCapitalsByHand,
                                            kTemplateWide,
                                            kBroadPen,
                                            kFineTypewriter,
                                            kSans,
                                            kSimplex,
                                            kRounded,
                                            kMachineRead,
                                            kLooseHand,
                                            kNarrow,
                                            kTypewriter,
                                            kTemplateNarrow,
                                            kSchoolbook,
                                            kHand,
                                            kScreen,
                                            kBook,
                                            kInkedTypewriter,
                                            kGeometric,
                                            kEvenWidth,
                                            kMarkerHand,
                                            kDrafting,
                                            kSlabTypewriter,
                                            kWide,
                                            kPanel,
                                            kTemplate,
                                            kThinTypewriter,
                                            kBold,
                                            kGrotesqueNarrow,
                                            kRoundHand,
                                            kHeavyTypewriter,
                                            kCatalogue,
                                            kQuickHand,
                                            kScreenEvenWidth,
                                            kCircular,
                                            kPlain,
                                            kHand};
constexpr std::array<Grade, 6> kGrades = {Grade::kSevere, Grade::kVaried, Grade::kMedium,
                                          Grade::kVaried, Grade::kSevere, Grade::kMild};

int Number(const std::string& text) {
  int number = 0;
  const auto end = std::from_chars(text.data(), text.data() + text.size(), number);
  if (end.ptr != text.data() + text.size() || number < 0) {
    throw std::invalid_argument(text + " is no number");
  }
  return number;
}

// What the crops are cut from.
enum class Kind { kSheets, kCoarse, kLists, kCoarseLists };

Kind KindOf(const std::string& name) {
  if (name == "sheets") {
    return Kind::kSheets;
  }
  if (name == "coarse") {
    return Kind::kCoarse;
  }
  if (name == "lists") {
    return Kind::kLists;
  }
  if (name != "coarse-lists") {
    throw std::invalid_argument(name + " is no kind of crops");
  }
  return Kind::kCoarseLists;
}

std::span<const Lettering> LetteringsOf(const std::string& name) {
  if (name == "usual") {
    return kUsual;
  }
  if (name == "all") {
    return kAll;
  }
  if (name != "unmet") {
    throw std::invalid_argument(name + " is no set of letterings");
  }
  return scanmaker::kUnmetLetterings;
}

// Letters of six to ten pixels, squared off by JPEG, of which the grades have none.
scanmaker::ScannedPage CoarseScan(const scanmaker::MadePage& page, int least_dpi, std::uint64_t seed) {
  SeededRandom random(seed);
  const double dpi = random.Whole(least_dpi, 130);
  const int quality = random.Whole(30, 70);
  return DegradeMade(page, random.Unit() < 0.5 ? Grade::kMild : Grade::kMedium, seed,
                     {.dpi = dpi, .jpeg_quality = quality});
}

std::vector<LineCrop> CropsOfSheet(Kind kind, std::span<const Lettering> letterings, int number) {
  const auto seed = static_cast<std::uint64_t>(number);
  const auto pick = static_cast<std::size_t>(number);
  const Lettering lettering = letterings[pick % letterings.size()];
  const Grade grade = kGrades.at(pick / letterings.size() % kGrades.size());
  switch (kind) {
    case Kind::kSheets:
      return CropsOf(DegradeMade(MakePracticeSheet(lettering, seed), grade, seed));
    case Kind::kCoarse:
      return CropsOf(CoarseScan(MakePracticeSheet(lettering, seed), 75, seed));
    case Kind::kLists:
      return PhraseCropsOf(DegradeMade(MakePracticeList(lettering, seed), grade, seed));
    case Kind::kCoarseLists:
      return PhraseCropsOf(CoarseScan(MakePracticeList(lettering, seed), 100, seed));
  }
  return {};
}

bool Write(const LineCrop& crop, std::ofstream& file) {
  constexpr int kWidest = 640;
  constexpr std::size_t kLongest = 80;
  const GreyImage strip = StripOf(crop.image, kReaderCapPx);
  if (strip.width > kWidest || crop.text->size() > kLongest) {
    return false;
  }
  file.put(static_cast<char>(strip.width & 0xFF));
  file.put(static_cast<char>(strip.width >> 8));
  file.put(static_cast<char>(crop.text->size()));
  file << *crop.text;
  for (const std::uint8_t pixel : strip.pixels) file.put(static_cast<char>(pixel));
  return true;
}

void Run(const std::vector<std::string>& arguments) {
  constexpr double kScrapsKept = 0.4;  // else scraps would outnumber texts
  if (arguments.size() != 5) {
    throw std::invalid_argument("five arguments are wanted");
  }
  std::ofstream file(arguments[0], std::ios::binary);
  const int seed = Number(arguments[1]);
  const int sheets = Number(arguments[2]);
  const Kind kind = KindOf(arguments[3]);
  const std::span<const Lettering> letterings = LetteringsOf(arguments[4]);
  std::size_t written = 0;
  for (int i = 0; i < sheets; ++i) {
    SeededRandom random(static_cast<std::uint64_t>(seed + i));
    for (const LineCrop& crop : CropsOfSheet(kind, letterings, seed + i)) {
      if (crop.text && (crop.text != kNoText || random.Unit() < kScrapsKept)) {
        written += Write(crop, file) ? 1U : 0U;
      }
    }
    if ((i + 1) % 50 == 0 || i + 1 == sheets) {
      std::fprintf(stderr, "make-crops: %d of %d sheets, %zu crops\n", i + 1, sheets, written);
    }
  }
  if (!file.flush()) {
    throw std::runtime_error(arguments[0] + " cannot be written");
  }
}

}  // namespace
}  // namespace benchleaf::training

int main(int argc, char** argv) {
  using namespace benchleaf::training;
  return RunTool("make-crops", kUsage, argc, argv, Run);
}

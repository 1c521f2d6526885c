// Writes crops for the lettering net to learn from, or to be judged by, as the program itself cuts them.

#include "reader-training/further_fonts.h"
#include "reader-training/line_crops.h"
#include "reader-training/practice_list.h"
#include "reader-training/practice_sheet.h"
#include "reader-training/run_tool.h"
#include "scan-maker/mixed_traits.h"
#include "scan-maker/seeded_random.h"

#include "benchleaf/clean/clean_page.h"
#include "benchleaf/lettering/line_strip.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cstdint>
#include <cstdio>
#include <fstream>
#include <span>
#include <stdexcept>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace benchleaf::training {
namespace {

using scanmaker::Grade;
using scanmaker::Lettering;
using scanmaker::SeededRandom;
using scanmaker::TextStyle;

constexpr const char* kUsage =
    "make-crops FILE SEED SHEETS sheets|coarse|mixed|lists|coarse-lists|mixed-lists usual|all|further|unmet\n"
    "Draws SHEETS sheets from SEED on, spoils them, and writes the strings that the program cuts from them: for each\n"
    "its width in px (two bytes, the lower one first), the length of its text in bytes (one byte), the text, and its\n"
    "strip's pixels, row by row. `lists` draws pages of lists, of which whole phrases are taken; what is coarse is\n"
    "scanned at 75 to 130 dpi, lists from 100 on, what is mixed has several faults of real scans. Letterings: those of "
    "all made pages, with those besides that only\n"
    "training knows, these with many more fonts and with writers whose letters leave their template, or those that "
    "are\n"
    "kept from training.\n";

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
enum class Kind { kSheets, kCoarse, kMixed, kLists, kCoarseLists, kMixedLists };

Kind KindOf(const std::string& name) {
  constexpr std::array<std::pair<std::string_view, Kind>, 6> kNames = {{{"sheets", Kind::kSheets},
                                                                        {"coarse", Kind::kCoarse},
                                                                        {"mixed", Kind::kMixed},
                                                                        {"lists", Kind::kLists},
                                                                        {"coarse-lists", Kind::kCoarseLists},
                                                                        {"mixed-lists", Kind::kMixedLists}}};
  const auto found = std::find_if(kNames.begin(), kNames.end(), [&](const auto& named) { return named.first == name; });
  if (found == kNames.end()) {
    throw std::invalid_argument(name + " is no kind of crops");
  }
  return found->second;
}

std::vector<TextStyle> StylesOf(std::span<const Lettering> letterings) {
  std::vector<TextStyle> styles;
  for (const Lettering lettering : letterings) styles.push_back({.lettering = lettering});
  return styles;
}

std::vector<TextStyle> FurtherStyles() {
  constexpr std::size_t kFontsForEachPen = 4;  // so that pen strokes are not lost among outlines
  std::vector<TextStyle> styles = StylesOf(kAll);
  for (std::size_t i = 0; i < kFurtherFonts.size(); ++i) {
    styles.push_back({.font = &kFurtherFonts.at(i)});
    if (i % kFontsForEachPen == 0) {
      styles.push_back({.lettering = i % (2 * kFontsForEachPen) == 0 ? kSimplex : kBroadPen});
    }
  }
  return styles;
}

// What sheets are lettered in, in turn.
struct Letterings {
  std::vector<TextStyle> styles;
  double loose = 0;  // the share of sheets whose writer's letters leave their template
};

Letterings LetteringsOf(const std::string& name) {
  if (name == "usual") {
    return {StylesOf(kUsual)};
  }
  if (name == "all") {
    return {StylesOf(kAll)};
  }
  if (name == "further") {
    return {FurtherStyles(), 0.5};
  }
  if (name != "unmet") {
    throw std::invalid_argument(name + " is no set of letterings");
  }
  return {StylesOf(scanmaker::kUnmetLetterings)};
}

TextStyle LetteringOfSheet(const Letterings& letterings, int number) {
  constexpr double kLoosest = 0.05;  // at which some letters are hard to tell
  SeededRandom random(scanmaker::SeedOf(static_cast<std::uint64_t>(number), "looseness"));
  TextStyle style = letterings.styles[static_cast<std::size_t>(number) % letterings.styles.size()];
  if (random.Unit() < letterings.loose) {
    style.looseness = random.Between(0.01, kLoosest);
  }
  return style;
}

// Letters of six to ten pixels, squared off by JPEG, of which the grades have none.
scanmaker::ScannedPage CoarseScan(const scanmaker::MadePage& page, int least_dpi, std::uint64_t seed) {
  SeededRandom random(seed);
  const double dpi = random.Whole(least_dpi, 130);
  const int quality = random.Whole(30, 70);
  return DegradeMade(page, random.Unit() < 0.5 ? Grade::kMild : Grade::kMedium, seed,
                     {.dpi = dpi, .jpeg_quality = quality});
}

// Faults that change how letters look or what touches them. The page lies upright: crops are cut before anyone tells
// which way up it is.
scanmaker::ScannedPage MixedScan(const scanmaker::MadePage& page, scanmaker::PageForm form, Grade grade,
                                 std::uint64_t seed) {
  using scanmaker::PageTrait;
  std::vector<PageTrait> traits = scanmaker::MixedTraits(form, seed);
  std::erase_if(traits, [](PageTrait trait) {
    return trait == PageTrait::kLaid90 || trait == PageTrait::kUpsideDown || trait == PageTrait::kLaid270 ||
           trait == PageTrait::kUpended;
  });
  return ScanWithTraits(page, grade, traits, seed);
}

std::vector<LineCrop> CropsOfSheet(Kind kind, const Letterings& letterings, int number) {
  const auto seed = static_cast<std::uint64_t>(number);
  const auto pick = static_cast<std::size_t>(number);
  const TextStyle lettering = LetteringOfSheet(letterings, number);
  const Grade grade = kGrades.at(pick / letterings.styles.size() % kGrades.size());
  switch (kind) {
    case Kind::kSheets:
      return CropsOf(DegradeMade(MakePracticeSheet(lettering, seed), grade, seed));
    case Kind::kCoarse:
      return CropsOf(CoarseScan(MakePracticeSheet(lettering, seed), 75, seed));
    case Kind::kMixed:
      return CropsOf(MixedScan(MakePracticeSheet(lettering, seed), scanmaker::PageForm::kDrawing, grade, seed));
    case Kind::kLists:
      return PhraseCropsOf(DegradeMade(MakePracticeList(lettering, seed), grade, seed));
    case Kind::kCoarseLists:
      return PhraseCropsOf(CoarseScan(MakePracticeList(lettering, seed), 100, seed));
    case Kind::kMixedLists:
      return PhraseCropsOf(MixedScan(MakePracticeList(lettering, seed), scanmaker::PageForm::kList, grade, seed));
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
  const Letterings letterings = LetteringsOf(arguments[4]);
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

// What either reader makes of the program's crops, beside what stands there, as TSV: for judging them, and for telling
// how far to trust them together.

#include "outside/outside_pages.h"
#include "reader-training/line_crops.h"
#include "reader-training/practice_list.h"
#include "reader-training/practice_sheet.h"
#include "reader-training/run_tool.h"
#include "reading/lettering_reader.h"
#include "reading/recognizer.h"
#include "reading/token_partner.h"
#include "scan-maker/degrade.h"
#include "scan-maker/made_page.h"

#include <algorithm>
#include <array>
#include <cstdint>
#include <cstdio>
#include <memory>
#include <set>
#include <sstream>
#include <stdexcept>
#include <string>
#include <utility>
#include <vector>

namespace benchleaf::training {
namespace {

using scanmaker::Grade;
using scanmaker::Lettering;

constexpr const char* kUsage =
    "compare-readers MODEL_FOLDER dev|practice|met|unmet|lists\n"
    "Reads crops of the outside sheets of one half, or of practice sheets in letterings of the training or in some\n"
    "that are kept from it, with the general model and with MODEL_FOLDER/lettering.net. Columns: page, grade,\n"
    "lying or standing, components (0: broken), length and breadth in capital heights, truth (~: no text, ?: part of "
    "a\n"
    "text, or several), then text and confidence of either reader. Of lists, each word of a phrase has a row, which\n"
    "ends in \"part\"; its truth is ? when the phrase does not hold it.\n";

template <class T>
T OrThrow(Result<T> result) {
  if (!result) {
    throw std::runtime_error(result.error().ToString());
  }
  return std::move(*result);
}

template <class Reader>
void PrintReading(Reader& reader, const GreyImage& line) {
  std::string text;
  double confidence = 1;
  for (const Token& token : reader.ReadLine(line)) {
    text += (text.empty() ? "" : " ") + token.text;
    confidence = std::min(confidence, token.confidence);
  }
  std::printf("\t%s\t%.4f", text.c_str(), text.empty() ? 0 : confidence);
}

void PrintToken(const Token* token) {
  std::printf("\t%s\t%.4f", token == nullptr ? "" : token->text.c_str(), token == nullptr ? 0 : token->confidence);
}

// A row for each word that the general reader sees, beside the other's in its place, and for each that only the other
// sees.
void PrintPhrase(const std::string& name, Grade grade, const LineCrop& phrase, const std::vector<Token>& general,
                 const std::vector<Token>& lettering) {
  std::set<std::string> words;
  std::istringstream text(phrase.text.value());
  for (std::string word; text >> word;) words.insert(word);
  const auto print = [&](const Token* one, const Token* other) {
    const bool one_right = one != nullptr && words.count(one->text) != 0;
    const bool other_right = other != nullptr && words.count(other->text) != 0;
    std::printf("%s\t%s\tlying\t%zu\t%.2f\t%.2f\t%s", name.c_str(), std::string(scanmaker::Name(grade)).c_str(),
                phrase.look.letters, phrase.look.length, phrase.look.breadth,
                one_right     ? one->text.c_str()
                : other_right ? other->text.c_str()
                              : "?");
    PrintToken(one);
    PrintToken(other);
    std::printf("\tpart\n");
  };
  for (const Token& token : general) print(&token, Partner(token, lettering));
  for (const Token& token : lettering) {
    if (Partner(token, general) == nullptr) print(nullptr, &token);
  }
}

void CompareLists(Recognizer& general, LetteringReader& lettering) {
  constexpr std::uint64_t kFirstSeed = 980000;  // none of the training's
  // Half of them not met in training, as real pages' are.
  constexpr std::array<Lettering, 8> kLetterings = {
      Lettering::kTypewriter, Lettering::kBookPen,        Lettering::kSans, Lettering::kUnmetSans,
      Lettering::kDrafting,   Lettering::kUnmetEvenWidth, Lettering::kHand, Lettering::kUnmetSans};
  for (std::uint64_t i = 0; i < kLetterings.size(); ++i) {
    for (const Grade grade : {Grade::kMild, Grade::kMedium, Grade::kSevere}) {
      const std::uint64_t seed = kFirstSeed + i;
      for (const LineCrop& phrase : PhraseCropsOf(
               scanmaker::DegradeMade(MakePracticeList({.lettering = kLetterings.at(i)}, seed), grade, seed))) {
        PrintPhrase("list" + std::to_string(i), grade, phrase, general.ReadLine(phrase.image),
                    lettering.ReadLine(phrase.image));
      }
    }
  }
}

struct Sheet {
  std::string name;
  scanmaker::MadePage page;
  std::uint64_t seed;
};

std::vector<Sheet> Sheets(const std::string& which) {
  std::vector<Sheet> sheets;
  for (const outside::OutsidePage& page : outside::OutsidePages()) {
    if ((which == "dev" && page.half == outside::Half::kDevelopment) ||
        (which == "practice" && page.half == outside::Half::kPractice)) {
      sheets.push_back({page.sheet, outside::Draw(page), page.seed});
    }
  }
  constexpr std::uint64_t kFirstSeed = 950000;  // none of the training's
  constexpr std::array<Lettering, 5> kMet = {Lettering::kSimplex, Lettering::kHand, Lettering::kDrafting,
                                             Lettering::kTypewriter, Lettering::kSans};
  for (std::uint64_t i = 0; i < kMet.size() && (which == "met" || which == "unmet"); ++i) {
    const Lettering lettering =
        which == "met" ? kMet.at(i) : scanmaker::kUnmetLetterings.at(i % scanmaker::kUnmetLetterings.size());
    sheets.push_back(
        {which + std::to_string(i), MakePracticeSheet({.lettering = lettering}, kFirstSeed + i), kFirstSeed + i});
  }
  if (sheets.empty()) {
    throw std::invalid_argument(which + " is no set of sheets");
  }
  return sheets;
}

void Run(const std::vector<std::string>& arguments) {
  if (arguments.size() != 2) {
    throw std::invalid_argument("two arguments are wanted");
  }
  const std::unique_ptr<Recognizer> general = OrThrow(Recognizer::Create());
  const std::unique_ptr<LetteringReader> lettering = OrThrow(LetteringReader::Create(arguments[0]));
  if (arguments[1] == "lists") {
    CompareLists(*general, *lettering);
    return;
  }
  for (const Sheet& sheet : Sheets(arguments[1])) {
    for (const Grade grade : {Grade::kMild, Grade::kMedium, Grade::kSevere}) {
      const scanmaker::ScannedPage page = scanmaker::DegradeMade(sheet.page, grade, sheet.seed);
      const std::vector<LineCrop> crops = CropsOf(page);
      for (const LineCrop& crop : crops) {
        std::printf("%s\t%s\t%s\t%zu\t%.2f\t%.2f\t%s", sheet.name.c_str(), std::string(scanmaker::Name(grade)).c_str(),
                    crop.look.standing ? "standing" : "lying", crop.look.broken ? 0 : crop.look.letters,
                    crop.look.length, crop.look.breadth, crop.text.value_or("?").c_str());
        PrintReading(*general, crop.image);
        PrintReading(*lettering, crop.image);
        std::printf("\n");
      }
    }
  }
}

}  // namespace
}  // namespace benchleaf::training

int main(int argc, char** argv) {
  using namespace benchleaf::training;
  return RunTool("compare-readers", kUsage, argc, argv, Run);
}

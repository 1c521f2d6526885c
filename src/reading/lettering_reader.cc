#include "reading/lettering_reader.h"

#include "benchleaf/clean/clean_page.h"
#include "benchleaf/lettering/line_strip.h"
#include "benchleaf/lettering/step_texts.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <cstdint>
#include <utility>

namespace benchleaf {
namespace {

// A word within a text: its characters' places, from and up to.
struct Span {
  std::size_t begin = 0;
  std::size_t end = 0;
};

constexpr int kDark = 150;

// The box round the ink in the columns from `left` up to `right`; empty where there is none.
Box InkBetween(const GreyImage& line, int left, int right) {
  Box ink;
  for (int y = 0; y < line.height; ++y) {
    const std::uint8_t* row = line.row(y);
    const std::uint8_t* first = std::find_if(row + left, row + right, [](int level) { return level < kDark; });
    if (first == row + right) {
      continue;
    }
    const std::uint8_t* last = row + right - 1;
    while (*last >= kDark) --last;
    ink = Union(ink, {static_cast<int>(first - row), y, static_cast<int>(last - first) + 1, 1});
  }
  return ink;
}

bool HasInk(const GreyImage& line, int column) {
  for (int y = 0; y < line.height; ++y) {
    if (line.row(y)[column] < kDark) {
      return true;
    }
  }
  return false;
}

// The middle of the widest gap among the columns from `left` up to `right`, or between these where there is no gap.
int GapBetween(const GreyImage& line, int left, int right) {
  int middle = (left + right) / 2;
  int widest = 0;
  for (int x = left; x < right;) {
    int end = x;
    while (end < right && !HasInk(line, end)) ++end;
    if (end - x > widest) {
      widest = end - x;
      middle = x + widest / 2;
    }
    x = end + 1;
  }
  return middle;
}

std::vector<Span> WordsOf(const StepText& text, const std::vector<std::string>& characters) {
  std::vector<Span> words;
  bool within = false;
  for (std::size_t i = 0; i < text.symbols.size(); ++i) {
    const bool space = characters[text.symbols[i] - 1] == " ";
    if (!space && !within) {
      words.push_back({i, i});
    }
    if (!space) {
      words.back().end = i + 1;
    }
    within = !space;
  }
  return words;
}

std::string TextOf(const StepText& text, const Span& word, const std::vector<std::string>& characters) {
  std::string lettered;
  for (std::size_t i = word.begin; i < word.end; ++i) {
    const std::string& character = characters[text.symbols[i] - 1];
    if (character != kNoText) {  // what is no lettering may touch what is
      lettered += character;
    }
  }
  return lettered.empty() ? kNoText : lettered;
}

// How likely each of the word's characters is where it stands, all together.
double ChanceOf(const StepText& text, const Span& word, const StepChances& chances) {
  double sum = 0;
  for (std::size_t i = word.begin; i < word.end; ++i) sum += chances.at(text.steps[i], text.symbols[i]);
  return std::exp(sum);
}

// What the line may be instead of its likeliest text, where both are one word. Of short words only: what the rest of a
// manual names decides among them, and it names no long ones.
std::vector<Alternative> OtherWords(const std::vector<StepText>& texts, const std::vector<std::string>& characters) {
  constexpr double kLeastChance = 0.03;
  constexpr std::size_t kLongest = 7;  // bytes
  std::vector<Alternative> others;
  for (auto text = texts.begin() + 1; text != texts.end(); ++text) {
    const double chance = std::exp(text->log_chance);
    const std::vector<Span> words = WordsOf(*text, characters);
    if (words.size() != 1 || chance < kLeastChance) {
      continue;
    }
    std::string other = TextOf(*text, words.front(), characters);
    if (other != kNoText && other.size() <= kLongest) {
      others.push_back({std::move(other), chance});
    }
  }
  return others;
}

}  // namespace

LetteringReader::LetteringReader(std::unique_ptr<LetteringNet> net) : net_(std::move(net)) {}

std::filesystem::path LetteringReader::Model(const std::filesystem::path& config) { return config / "lettering.net"; }

Result<std::unique_ptr<LetteringReader>> LetteringReader::Create(const std::filesystem::path& config) {
  Result<std::unique_ptr<LetteringNet>> net = LetteringNet::Load(Model(config));
  if (!net) {
    return tl::unexpected(std::move(net.error()));
  }
  return std::unique_ptr<LetteringReader>(new LetteringReader(std::move(*net)));
}

std::vector<Token> LetteringReader::ReadLine(const GreyImage& line) {
  if (line.empty()) {
    return {};
  }
  const StepChances chances = net_->Run(StripOf(line, kReaderCapPx));
  constexpr std::size_t kMostTexts = 4;
  const std::vector<StepText> texts = LikeliestTexts(chances, kMostTexts);
  const StepText& text = texts.front();
  const std::vector<std::string>& characters = net_->characters();
  const std::vector<Span> words = WordsOf(text, characters);
  if (words.empty()) {
    return {{kNoText, InkBetween(line, 0, line.width), std::exp(text.log_chance)}};
  }
  const auto column = [&](std::size_t step) {  // of the line, in whose middle a step stands
    const double x = (static_cast<double>(step) + 0.5) * kStepPx * kReaderCapPx / kStripCapPx;
    return std::min(static_cast<int>(x), line.width - 1);
  };
  std::vector<Token> tokens;
  int left = 0;
  for (std::size_t i = 0; i < words.size(); ++i) {
    const int right = i + 1 == words.size() ? line.width
                                            : GapBetween(line, column(text.steps[words[i].end - 1]),
                                                         column(text.steps[words[i + 1].begin]));
    const Box box = InkBetween(line, left, std::max(left, right));
    if (!box.empty()) {
      tokens.push_back({TextOf(text, words[i], characters), box,
                        words.size() == 1 ? std::exp(text.log_chance) : ChanceOf(text, words[i], chances)});
    }
    left = std::max(left, right);
  }
  if (tokens.size() == 1) {
    tokens.front().alternatives = OtherWords(texts, characters);
  }
  return tokens;
}

}  // namespace benchleaf

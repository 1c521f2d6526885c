#include "reading/word_choice.h"

#include <algorithm>
#include <cctype>
#include <cstddef>
#include <iterator>
#include <map>
#include <utility>

namespace benchleaf {
namespace {

bool IsAlphanumeric(char c) { return std::isalnum(static_cast<unsigned char>(c)) != 0; }

// Words by coarse cells of the page, so that only neighbours are compared.
class WordGrid {
 public:
  explicit WordGrid(int cell_px) : cell_px_(cell_px) {}

  void Add(const Box& box, std::size_t index) {
    ForCells(box, [&](std::pair<int, int> cell) { cells_[cell].push_back(index); });
  }

  // The indices of boxes in the cells of `box`, some more than once.
  std::vector<std::size_t> Near(const Box& box) const {
    std::vector<std::size_t> near;
    ForCells(box, [&](std::pair<int, int> cell) {
      if (const auto found = cells_.find(cell); found != cells_.end()) {
        near.insert(near.end(), found->second.begin(), found->second.end());
      }
    });
    return near;
  }

 private:
  template <class Each>
  void ForCells(const Box& box, const Each& each) const {
    for (int y = box.y / cell_px_; y <= box.bottom() / cell_px_; ++y) {
      for (int x = box.x / cell_px_; x <= box.right() / cell_px_; ++x) {
        each(std::pair(y, x));
      }
    }
  }

  int cell_px_;
  std::map<std::pair<int, int>, std::vector<std::size_t>> cells_;
};

// "C2,52,85": a designator and more numbers of its class, as parts lists group them.
bool HasListForm(std::string_view text) {
  const std::size_t comma = text.find(',');
  return comma != std::string_view::npos && comma + 1 < text.size() && HasDesignatorForm(text.substr(0, comma)) &&
         text.find_first_not_of("0123456789,-", comma) == std::string_view::npos;
}

double Rank(const Word& word) {
  constexpr double kDesignatorBonus = 0.35;
  constexpr double kListBonus = 0.45;  // over the designator that its beginning is by itself
  constexpr double kStandingHandicap = 0.05;
  const double form = HasDesignatorForm(word.text) ? kDesignatorBonus : HasListForm(word.text) ? kListBonus : 0;
  return word.confidence + form - (word.turn == 0 ? 0 : kStandingHandicap);
}

}  // namespace

bool HasDesignatorForm(std::string_view text) {
  const auto is_upper = [&text](std::size_t i) { return i < text.size() && text[i] >= 'A' && text[i] <= 'Z'; };
  const auto is_digit = [&text](std::size_t i) { return i < text.size() && text[i] >= '0' && text[i] <= '9'; };
  std::size_t i = 0;
  const auto letters_then_digits = [&] {
    const std::size_t start = i;
    while (is_upper(i) && i - start < 3) {
      ++i;
    }
    const std::size_t letters_end = i;
    const bool dashed = start == 0 && letters_end > 0 && i < text.size() && text[i] == '-';
    i += dashed ? 1U : 0U;
    const std::size_t digits = i;
    const std::size_t most = dashed ? 3 : 4;  // numbers of parts may begin so, and are longer
    while (is_digit(i) && i - digits < most) {
      ++i;
    }
    // No class has the letters I and O, which are read for 1 and 0; IC is met on drawings of the 1970s.
    const std::string_view letters = text.substr(start, letters_end - start);
    return letters_end > start && i > digits &&
           (letters == "IC" || letters.find_first_of("IO") == std::string_view::npos);
  };
  if (!letters_then_digits()) {
    return false;
  }
  while (is_upper(i) && is_digit(i + 1)) {
    if (!letters_then_digits()) {
      return false;
    }
  }
  return i == text.size() || (is_upper(i) && i + 1 == text.size());
}

bool HasDesignatorForm(const std::vector<Word>& words) {
  return std::any_of(words.begin(), words.end(), [](const Word& word) { return HasDesignatorForm(word.text); });
}

std::vector<Word> ChooseWords(std::vector<Word> words) {
  std::erase_if(words, [](const Word& word) {
    return word.box.empty() || std::none_of(word.text.begin(), word.text.end(), IsAlphanumeric);
  });
  std::stable_sort(words.begin(), words.end(), [](const Word& a, const Word& b) { return Rank(a) > Rank(b); });
  constexpr int kCellPx = 100;
  constexpr double kSamePlace = 0.4;
  WordGrid grid(kCellPx);
  std::vector<Word> kept;
  for (Word& word : words) {
    const std::vector<std::size_t> near = grid.Near(word.box);
    const auto rival = std::find_if(
        near.begin(), near.end(), [&](std::size_t i) { return OverlapOfSmaller(kept[i].box, word.box) >= kSamePlace; });
    if (rival == near.end()) {
      grid.Add(word.box, kept.size());
      kept.push_back(std::move(word));
    } else if (kept[*rival].text != word.text) {
      std::vector<Alternative>& others = kept[*rival].alternatives;
      others.push_back({std::move(word.text), word.confidence});
      others.insert(others.end(), std::make_move_iterator(word.alternatives.begin()),
                    std::make_move_iterator(word.alternatives.end()));
    }
  }
  return kept;
}

}  // namespace benchleaf

#include "extract/name_candidates.h"

#include "extract/look_alikes.h"
#include "extract/misreading.h"
#include "extract/numbering_steps.h"
#include "extract/part_words.h"
#include "extract/plain_text.h"

#include "benchleaf/core/utf8.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <numeric>
#include <set>
#include <string>
#include <utility>

namespace benchleaf::extract {
namespace {

constexpr std::size_t kMostReadings = 8;
constexpr std::size_t kMostCandidates = 40;
constexpr double kDoubtOfOthers = 0.5;     // of a reading that spells no designator
constexpr double kLeastDoubt = 0.0005;     // of the surest reading
constexpr double kMisread = 0.5;           // of doubtful readings that are misread in a way that costs nothing
constexpr double kUnlikeAll = 0.0005;      // a cell of which nothing was read right
constexpr double kCostOfACharacter = 1.5;  // at most, of a reading that looks like a designator
constexpr double kNothingRead = 0.3;       // an empty cell speaks for no designator and against none
constexpr double kClassOfWords = 1.6;      // natural logarithms, over words that tell no class
constexpr double kOtherClassThanWords = -2;

// The figures that a text spells when every character must be one; empty when it cannot.
std::string AsFigures(const std::vector<std::string_view>& characters, std::size_t from, const Rules::Tables& tables) {
  std::string figures;
  for (std::size_t i = from; i < characters.size(); ++i) {
    const std::string_view character = characters[i];
    const char figure =
        character.size() == 1 && IsDigit(character.front()) ? character.front() : LookAlikeOf(character, tables).digit;
    if (figure == 0) {
      return {};
    }
    figures += figure;
  }
  return figures;
}

class Collector {
 public:
  Collector(const ListRow& row, const Rules::Tables& tables) : row_(row), tables_(tables) {
    readings_ = row.readings;
    if (readings_.empty() && !row.designator_text.empty()) {
      const std::string plain = PlainText(row.designator_text);
      readings_.push_back({plain.substr(0, plain.find_first_of(",-&~/;+=", 1)), row.designator_confidence});
    }
    if (readings_.size() > kMostReadings) {
      readings_.resize(kMostReadings);
    }
    for (const Alternative& reading : readings_) {
      weight_ += kLeastWeight + reading.confidence;
      std::string text = Trimmed(reading.text);
      const double least = ParseDesignator(text, tables_) ? kLeastDoubt : kDoubtOfOthers;
      std::string upper = Upper(text);
      trimmed_.push_back({std::move(text), std::move(upper), std::max(least, 1 - reading.confidence)});
    }
    NoteClasses();
    candidates_.reserve(kMostCandidates);
  }

  void AddReadings(const std::set<std::string>& letters) {
    if (!row_.designators.empty()) {
      Add(row_.designators.front());
    }
    for (const auto& [text, upper, doubt] : trimmed_) {
      if (auto repaired = RepairDesignator(text, tables_, LoneStrokes::kAllowSmall)) {
        Add(*repaired);
      }
      const std::vector<std::string_view> characters = Characters(text);
      for (std::size_t skipped = 0; skipped < std::min<std::size_t>(3, characters.size()); ++skipped) {
        const std::string figures = AsFigures(characters, skipped, tables_);
        for (const std::string& one : letters) {
          AddText(one + figures);
        }
      }
    }
  }

  void AddNumbersNear(const NearName& near, int direction) {
    constexpr int kFarthest = 12;
    if (near.designator == nullptr) {
      return;
    }
    const int reach = std::min(kFarthest, near.rows + 3);
    for (int distance = 1; distance <= reach; ++distance) {
      const int number = NumberOf(*near.designator) + direction * distance;
      if (number > 0) {
        AddText(near.designator->assembly + near.designator->letters + std::to_string(number));
      }
    }
  }

  std::vector<NameCandidate> Take() {
    // Candidates are large: their order is found first.
    std::vector<std::size_t> best(candidates_.size());
    std::iota(best.begin(), best.end(), std::size_t{0});
    std::stable_sort(best.begin(), best.end(),
                     [&](std::size_t a, std::size_t b) { return candidates_[a].fit > candidates_[b].fit; });
    if (best.size() > kMostCandidates) {
      best.resize(kMostCandidates);
    }
    std::vector<NameCandidate> taken;
    taken.reserve(best.size());
    for (const std::size_t one : best) {
      taken.push_back(std::move(candidates_[one]));
    }
    return taken;
  }

  const std::vector<std::string>& classes() const { return classes_; }

 private:
  static constexpr double kLeastWeight = 0.1;

  void NoteClasses() {
    if (!row_.lines.empty()) {
      for (const Piece& piece : row_.lines.front()) {
        classes_ = classes_.empty() ? ClassesOfWord(piece.text, tables_) : classes_;
      }
    }
    classes_ = classes_.empty() ? ClassesOfWord(row_.title, tables_) : classes_;
  }

  void AddText(const std::string& text) {
    if (IsKnown(text)) {
      return;
    }
    if (const auto designator = ParseDesignator(text, tables_); designator && designator->number.front() != '0') {
      Add(*designator);
    }
  }

  void Add(const Designator& designator) {
    const std::string text = designator.Text();
    if (IsKnown(text)) {
      return;
    }
    known_.push_back(text);
    costs_.clear();
    for (const Reading& reading : trimmed_) {
      costs_.push_back(MisreadingCost(reading.text, text, tables_));
    }
    const bool spelled =
        std::any_of(trimmed_.begin(), trimmed_.end(), [&](const Reading& r) { return r.upper == text; });
    candidates_.push_back({designator, Fit(designator, text), spelled && IsTold(designator), IsSeen(designator, text)});
  }

  bool IsKnown(const std::string& text) const { return std::find(known_.begin(), known_.end(), text) != known_.end(); }

  bool IsTold(const Designator& designator) const {
    return std::find(classes_.begin(), classes_.end(), designator.letters) != classes_.end();
  }

  // Y19 for C19: only the letters were misread.
  bool HasItsFigures(const Designator& designator) const {
    const std::string figures = designator.number + designator.suffix;
    return std::any_of(trimmed_.begin(), trimmed_.end(), [&](const Reading& reading) {
      const std::string& text = reading.text;
      return text.size() == designator.letters.size() + figures.size() && text.ends_with(figures) &&
             IsUpper(text.front());
    });
  }

  // REQUIRES: the costs are those of the designator's text.
  bool IsSeen(const Designator& designator, const std::string& text) const {
    if (readings_.empty() || IsTold(designator) || HasItsFigures(designator)) {
      return true;
    }
    for (std::size_t i = 0; i < readings_.size(); ++i) {
      if (costs_[i] <= kCostOfACharacter * static_cast<double>(text.size()) &&
          MayHold(readings_[i].text, text.front(), tables_)) {
        return true;
      }
    }
    return false;
  }

  // A reading is right as often as it says; where it is not, some other text is read for it.
  // REQUIRES: the costs are those of the designator's text.
  double Fit(const Designator& designator, const std::string& text) const {
    double fit = readings_.empty() ? kNothingRead : kUnlikeAll;
    for (std::size_t i = 0; i < readings_.size(); ++i) {
      const double doubt = trimmed_[i].doubt;
      const double right = trimmed_[i].upper == text ? 1 - doubt : 0;
      const double misread = doubt * kMisread * std::exp(-costs_[i]);
      fit += (kLeastWeight + readings_[i].confidence) / weight_ * (right + misread);
    }
    return std::log(fit) + (classes_.empty() ? 0 : IsTold(designator) ? kClassOfWords : kOtherClassThanWords);
  }

  // What is asked of a reading for every candidate.
  struct Reading {
    std::string text;   // trimmed
    std::string upper;  // the same in capitals
    double doubt = 0;   // that it is wrong
  };

  const ListRow& row_;
  const Rules::Tables& tables_;
  std::vector<Alternative> readings_;
  std::vector<Reading> trimmed_;  // by reading
  std::vector<double> costs_;     // by reading: of having misread the candidate in hand as it
  double weight_ = 0;
  std::vector<std::string> classes_;  // that the row's words tell
  std::vector<std::string> known_;    // the candidates' texts: a few dozen
  std::vector<NameCandidate> candidates_;
};

}  // namespace

std::vector<NameCandidate> NameCandidates(const ListRow& row, const NearName& above, const NearName& below,
                                          const Rules::Tables& tables) {
  Collector collector(row, tables);
  std::set<std::string> letters;
  for (const NearName* near : {&above, &below}) {
    if (near->designator != nullptr) {
      letters.insert(near->designator->letters);
    }
  }
  letters.insert(collector.classes().begin(), collector.classes().end());
  collector.AddReadings(letters);
  collector.AddNumbersNear(above, 1);
  collector.AddNumbersNear(below, -1);
  return collector.Take();
}

}  // namespace benchleaf::extract

#include "extract/name_candidates.h"

#include "extract/look_alikes.h"
#include "extract/misreading.h"
#include "extract/numbering_steps.h"
#include "extract/part_words.h"
#include "extract/plain_text.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
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
    }
    NoteClasses();
  }

  void AddReadings(const std::set<std::string>& letters) {
    if (!row_.designators.empty()) {
      Add(row_.designators.front());
    }
    for (const Alternative& reading : readings_) {
      const std::string text = Trimmed(reading.text);
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
    std::stable_sort(candidates_.begin(), candidates_.end(),
                     [](const NameCandidate& a, const NameCandidate& b) { return a.fit > b.fit; });
    if (candidates_.size() > kMostCandidates) {
      candidates_.resize(kMostCandidates);
    }
    return std::move(candidates_);
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
    if (const auto designator = ParseDesignator(text, tables_); designator && designator->number.front() != '0') {
      Add(*designator);
    }
  }

  void Add(const Designator& designator) {
    if (seen_.insert(designator.Text()).second) {
      candidates_.push_back({designator, Fit(designator), IsSeen(designator)});
    }
  }

  bool IsTold(const Designator& designator) const {
    return std::find(classes_.begin(), classes_.end(), designator.letters) != classes_.end();
  }

  // Y19 for C19: only the letters were misread.
  bool HasItsFigures(const Designator& designator) const {
    const std::string figures = designator.number + designator.suffix;
    return std::any_of(readings_.begin(), readings_.end(), [&](const Alternative& reading) {
      const std::string text = Trimmed(reading.text);
      return text.size() == designator.letters.size() + figures.size() && text.ends_with(figures) &&
             IsUpper(text.front());
    });
  }

  bool IsSeen(const Designator& designator) const {
    const std::string text = designator.Text();
    return readings_.empty() || IsTold(designator) || HasItsFigures(designator) ||
           std::any_of(readings_.begin(), readings_.end(), [&](const Alternative& reading) {
             const double cost = MisreadingCost(Trimmed(reading.text), text, tables_);
             return cost <= kCostOfACharacter * static_cast<double>(text.size()) &&
                    MayHold(reading.text, text.front(), tables_);
           });
  }

  // A reading is right as often as it says; where it is not, some other text is read for it.
  double Fit(const Designator& designator) const {
    double fit = readings_.empty() ? kNothingRead : kUnlikeAll;
    for (const Alternative& reading : readings_) {
      const std::string text = Trimmed(reading.text);
      const double least = ParseDesignator(text, tables_) ? kLeastDoubt : kDoubtOfOthers;
      const double doubt = std::max(least, 1 - reading.confidence);
      const double right = Upper(text) == designator.Text() ? 1 - doubt : 0;
      const double misread = doubt * kMisread * std::exp(-MisreadingCost(text, designator.Text(), tables_));
      fit += (kLeastWeight + reading.confidence) / weight_ * (right + misread);
    }
    return std::log(fit) + (classes_.empty() ? 0 : IsTold(designator) ? kClassOfWords : kOtherClassThanWords);
  }

  const ListRow& row_;
  const Rules::Tables& tables_;
  std::vector<Alternative> readings_;
  double weight_ = 0;
  std::vector<std::string> classes_;  // that the row's words tell
  std::set<std::string> seen_;
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

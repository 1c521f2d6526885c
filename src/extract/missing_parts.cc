#include "extract/missing_parts.h"

#include "extract/assembly_prefix.h"
#include "extract/misreading.h"
#include "extract/other_readings.h"
#include "extract/plain_text.h"

#include <algorithm>
#include <cstddef>
#include <iterator>
#include <map>
#include <set>
#include <string>
#include <utility>

namespace benchleaf::extract {
namespace {

// Chosen by bench_links on its development half at 200 dpi, where 21 of the 22 places that are added are right.
constexpr double kMostCost = 1.5;
constexpr double kClearlyBetter = 0.6;    // in cost, than the next listed designator
constexpr double kLeastRead = 0.01;       // readings less sure than this are scraps
constexpr double kLeastReadOfTwo = 0.03;  // of two characters
constexpr double kStroke = 0.7;           // the cost of an outline that was read as a letter in front
constexpr double kTaken = 0.5;            // a term as sure keeps its place
constexpr double kSureWord = 0.9;         // what lies on such a word is a scrap of it
constexpr double kConfidence = 0.75;

std::string Own(const std::string& designator) { return designator.substr(AssemblyLength(designator)); }

// "C1" of C1A; empty for a designator without a section letter.
std::string WholeOf(const std::string& own) {
  const bool section = own.size() > 2 && IsUpper(own.back()) && IsDigit(own[own.size() - 2]);
  return section ? own.substr(0, own.size() - 1) : std::string();
}

std::set<std::string> ListedIn(const std::vector<LexiconPage>& pages) {
  constexpr double kSureEntry = 0.5;
  std::set<std::string> listed;
  for (const LexiconPage& page : pages) {
    for (const Entry& entry : *page.entries) {
      if (entry.designator.size() > 1 && entry.confidence >= kSureEntry) {
        listed.insert(Own(entry.designator));
      }
    }
  }
  return listed;
}

std::set<std::string> SeenIn(const std::vector<Sighting>& sightings) {
  std::set<std::string> seen;
  for (const Sighting& sighting : sightings) {
    if (sighting.kind == TermKind::kDesignator) {
      seen.insert(Own(sighting.text));
      seen.insert(WholeOf(Own(sighting.text)));
    }
  }
  return seen;
}

std::size_t CommonOf(const std::set<std::string>& a, const std::set<std::string>& b) {
  return static_cast<std::size_t>(
      std::count_if(a.begin(), a.end(), [&](const auto& one) { return b.count(one) != 0; }));
}

// Whether the reading has the designator's letters; where there are three characters and more they may be small.
bool HasLetters(const std::string& reading, const std::string& designator) {
  const std::string letters = designator.substr(0, designator.find_first_of("0123456789"));
  return (designator.size() > 2 ? Upper(reading) : reading).find(letters) != std::string::npos;
}

// The length of what an outline beside a label is read as, in front of a letter: I of IV4; 0 when there is none.
std::size_t LeadingStroke(const std::string& plain) {
  const std::size_t letter = plain.find_first_not_of("I1il|");
  return letter != std::string::npos && letter <= 1 && IsLetter(plain[letter]) ? letter : 0;
}

struct Candidate {
  double cost = kMostCost;
  const Word* word = nullptr;
};

class PageSearch {
 public:
  PageSearch(const LexiconPage& page, const std::set<std::string>& listed, const Rules::Tables& tables,
             std::vector<Sighting>& sightings)
      : page_(page), listed_(listed), tables_(tables), sightings_(sightings) {}

  void Add(const std::set<std::string>& missing) {
    std::map<std::string, Candidate> best;
    for (const Word& word : page_.reading->words) {
      if (!IsTaken(word)) {
        Consider(word, missing, best);
      }
    }
    for (const auto& [designator, candidate] : best) {
      Sighting found;
      found.kind = TermKind::kDesignator;
      found.text = designator;
      found.read = candidate.word->text;
      found.box = ToScan(page_.reading->frame, candidate.word->box);
      found.turn = (candidate.word->turn - page_.reading->frame.orientation + 360) % 360;
      found.confidence = kConfidence;
      found.assembly = sightings_.empty() ? std::string() : sightings_.front().assembly;
      sightings_.push_back(std::move(found));
    }
  }

 private:
  bool IsTaken(const Word& word) const {
    const FractionBox box = ToScan(page_.reading->frame, word.box);
    const auto& words = page_.reading->words;
    const bool beside_surer = std::any_of(words.begin(), words.end(), [&](const Word& other) {
      return other.confidence >= kSureWord && word.confidence < kSureWord &&
             OverlapOfSmaller(ToScan(page_.reading->frame, other.box), box) > 0.5;
    });
    return beside_surer || std::any_of(sightings_.begin(), sightings_.end(), [&](const Sighting& sighting) {
             return (sighting.confidence >= kTaken || sighting.kind == TermKind::kDesignator) &&
                    OverlapOfSmaller(sighting.box, box) > 0.5;
           });
  }

  // The cost of the reading that spells the designator best; more than kMostCost when none does.
  double CostOf(const Word& word, const std::string& designator) const {
    double best = 2 * kMostCost;
    const auto consider = [&](const std::string& text, double confidence) {
      const std::string plain = Trimmed(PlainText(text));
      // Two characters are soon spelled by a scrap of the drawing.
      const double least = designator.size() > 2 ? kLeastRead : kLeastReadOfTwo;
      if (confidence < least || !HasLetters(plain, designator)) {
        return;
      }
      best = std::min(best, MisreadingCost(plain, designator, tables_));
      const std::size_t stroke = LeadingStroke(plain);
      if (stroke > 0) {
        best = std::min(best, kStroke + MisreadingCost(plain.substr(stroke), designator, tables_));
      }
    };
    consider(word.text, word.confidence);
    for (const Alternative& alternative : OtherReadings(word)) {
      consider(alternative.text, alternative.confidence);
    }
    return best;
  }

  void Consider(const Word& word, const std::set<std::string>& missing, std::map<std::string, Candidate>& best) const {
    double cost = 2 * kMostCost;
    double next = 2 * kMostCost;
    std::string designator;
    for (const std::string& one : listed_) {
      const double of_one = CostOf(word, one);
      if (of_one < cost) {
        next = cost;
        cost = of_one;
        designator = one;
      } else {
        next = std::min(next, of_one);
      }
    }
    if (cost >= kMostCost || next - cost < kClearlyBetter || missing.count(designator) == 0) {
      return;
    }
    Candidate& candidate = best[designator];
    if (candidate.word == nullptr || cost < candidate.cost ||
        (cost == candidate.cost && word.confidence > candidate.word->confidence)) {
      candidate = {cost, &word};
    }
  }

  const LexiconPage& page_;
  const std::set<std::string>& listed_;
  const Rules::Tables& tables_;
  std::vector<Sighting>& sightings_;
};

}  // namespace

void AddMissingParts(const std::vector<LexiconPage>& pages, const Rules::Tables& tables,
                     std::vector<std::vector<Sighting>>& sightings) {
  const std::set<std::string> listed = ListedIn(pages);
  std::vector<std::set<std::string>> seen(pages.size());
  std::set<std::string> seen_anywhere;
  for (std::size_t i = 0; i < pages.size(); ++i) {
    if (pages[i].part == LexiconPart::kDrawing) {
      seen[i] = SeenIn(sightings[i]);
      seen_anywhere.insert(seen[i].begin(), seen[i].end());
    }
  }
  for (std::size_t i = 0; i < pages.size(); ++i) {
    const std::size_t shown = CommonOf(listed, seen[i]);
    if (pages[i].part != LexiconPart::kDrawing || shown == 0) {
      continue;
    }
    const std::set<std::string>& elsewhere = shown * 2 >= listed.size() ? seen[i] : seen_anywhere;
    std::set<std::string> missing;
    std::set_difference(listed.begin(), listed.end(), elsewhere.begin(), elsewhere.end(),
                        std::inserter(missing, missing.end()));
    PageSearch(pages[i], listed, tables, sightings[i]).Add(missing);
  }
}

}  // namespace benchleaf::extract

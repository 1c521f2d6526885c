#include "extract/missing_parts.h"

#include "extract/assembly_prefix.h"
#include "extract/misreading.h"
#include "extract/other_readings.h"
#include "extract/page_bands.h"
#include "extract/plain_text.h"

#include <algorithm>
#include <cstddef>
#include <iterator>
#include <map>
#include <set>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace benchleaf::extract {
namespace {

// Chosen by bench_links on its development half at 200 dpi, where 21 of the 22 places that are added are right.
constexpr double kMostCost = 1.5;
constexpr double kClearlyBetter = 0.6;  // in cost, than the next listed designator
// A listed designator that costs as much is neither chosen nor in the way of another.
constexpr double kBeyond = 2 * kMostCost;
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

// Listed designators by their letters.
using Listed = std::map<std::string, std::vector<std::string>>;

Listed ByLetters(const std::set<std::string>& designators) {
  Listed listed;
  for (const std::string& designator : designators) {
    listed[designator.substr(0, designator.find_first_of("0123456789"))].push_back(designator);
  }
  return listed;
}

// The length of what an outline beside a label is read as, in front of a letter: I of IV4; 0 when there is none.
std::size_t LeadingStroke(const std::string& plain) {
  const std::size_t letter = plain.find_first_not_of("I1il|");
  return letter != std::string::npos && letter <= 1 && IsLetter(plain[letter]) ? letter : 0;
}

// A text that may stand for a designator.
struct Spelling {
  std::string text;
  std::string capitals;
  double confidence = 0;
};

std::vector<Spelling> SpellingsOf(const Word& word) {
  std::vector<Spelling> spellings;
  const auto add = [&](const std::string& text, double confidence) {
    if (confidence >= kLeastRead) {
      std::string plain = Trimmed(PlainText(text));
      std::string capitals = Upper(plain);
      spellings.push_back({std::move(plain), std::move(capitals), confidence});
    }
  };
  add(word.text, word.confidence);
  for (const Alternative* alternative : OtherReadings(word)) {
    add(alternative->text, alternative->confidence);
  }
  return spellings;
}

struct Candidate {
  double cost = kMostCost;
  const Word* word = nullptr;
};

class PageSearch {
 public:
  PageSearch(const LexiconPage& page, const Listed& listed, const Rules::Tables& tables,
             std::vector<Sighting>& sightings)
      : page_(page),
        listed_(listed),
        tables_(tables),
        sightings_(sightings),
        sure_places_(1, page.reading->words.size()),
        taken_places_(1, sightings.size()) {
    NotePlaces();
  }

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
  // Beside which words and sightings a word may be a scrap or another term.
  void NotePlaces() {
    for (const Word& word : page_.reading->words) {
      if (word.confidence >= kSureWord) {
        sure_words_.push_back(ToScan(page_.reading->frame, word.box));
        sure_places_.Add(sure_words_.size() - 1, sure_words_.back().y,
                         sure_words_.back().y + sure_words_.back().height);
      }
    }
    for (std::size_t i = 0; i < sightings_.size(); ++i) {
      if (sightings_[i].confidence >= kTaken || sightings_[i].kind == TermKind::kDesignator) {
        taken_places_.Add(i, sightings_[i].box.y, sightings_[i].box.y + sightings_[i].box.height);
      }
    }
  }

  bool IsTaken(const Word& word) const {
    const FractionBox box = ToScan(page_.reading->frame, word.box);
    const auto any_on = [&](const PageBands& places, const auto& box_of) {
      const std::vector<std::size_t> beside = places.Beside(box.y, box.y + box.height);
      return std::any_of(beside.begin(), beside.end(),
                         [&](std::size_t i) { return OverlapOfSmaller(box_of(i), box) > 0.5; });
    };
    return (word.confidence < kSureWord && any_on(sure_places_, [&](std::size_t i) { return sure_words_[i]; })) ||
           any_on(taken_places_, [&](std::size_t i) { return sightings_[i].box; });
  }

  // The cost of the spelling that is the designator best; kBeyond or more when none is.
  double CostOf(const std::vector<Spelling>& spellings, const std::string& letters,
                const std::string& designator) const {
    double best = kBeyond;
    for (const Spelling& spelling : spellings) {
      // Two characters are soon spelled by a scrap of the drawing; of three and more the letters may be small.
      const bool two = designator.size() <= 2;
      if ((two && spelling.confidence < kLeastReadOfTwo) ||
          (two ? spelling.text : spelling.capitals).find(letters) == std::string::npos) {
        continue;
      }
      best = std::min(best, MisreadingCost(spelling.text, designator, tables_, best));
      if (const std::size_t stroke = LeadingStroke(spelling.text); stroke > 0) {
        const std::string_view rest = std::string_view(spelling.text).substr(stroke);
        best = std::min(best, kStroke + MisreadingCost(rest, designator, tables_, best));
      }
    }
    return best;
  }

  void Consider(const Word& word, const std::set<std::string>& missing, std::map<std::string, Candidate>& best) const {
    double cost = kBeyond;
    double next = kBeyond;
    std::string designator;
    const std::vector<Spelling> spellings = SpellingsOf(word);
    for (const auto& [letters, designators] : listed_) {
      const auto holds = [&letters = letters](const Spelling& spelling) {
        return spelling.capitals.find(letters) != std::string::npos;
      };
      if (std::none_of(spellings.begin(), spellings.end(), holds)) {
        continue;
      }
      for (const std::string& one : designators) {
        const double of_one = CostOf(spellings, letters, one);
        if (of_one < cost) {
          next = cost;
          cost = of_one;
          designator = one;
        } else {
          next = std::min(next, of_one);
        }
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
  const Listed& listed_;
  const Rules::Tables& tables_;
  std::vector<Sighting>& sightings_;
  std::vector<FractionBox> sure_words_;
  PageBands sure_places_;   // of these
  PageBands taken_places_;  // of sightings that keep their place
};

}  // namespace

void AddMissingParts(const std::vector<LexiconPage>& pages, const Rules::Tables& tables,
                     std::vector<std::vector<Sighting>>& sightings) {
  const std::set<std::string> listed = ListedIn(pages);
  const Listed by_letters = ByLetters(listed);
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
    PageSearch(pages[i], by_letters, tables, sightings[i]).Add(missing);
  }
}

}  // namespace benchleaf::extract

#include "extract/assembly_prefix.h"
#include "extract/lexicon.h"
#include "extract/missing_parts.h"
#include "extract/other_readings.h"
#include "extract/page_bands.h"
#include "extract/page_terms.h"
#include "extract/plain_text.h"

#include "benchleaf/extract/lexicon.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <optional>
#include <set>
#include <utility>

namespace benchleaf {
namespace {

using extract::Lexicon;

constexpr double kSureReading = 0.85;   // a term read as surely is never replaced
constexpr double kEachUnlike = 0.6;     // what one seldom confusion takes from the certainty
constexpr double kClearlyBetter = 1.3;  // than the next term, in certainty

// Certainty after a sign that is seen `ratio` times as often beside what is right as beside what is wrong (Bayes' rule
// in odds).
double After(double certainty, double ratio) {
  constexpr double kMost = 0.99;
  const double before = std::min(certainty, kMost);
  return ratio == 1 ? certainty : before * ratio / (1 - before + before * ratio);
}

std::string LettersOf(const std::string& designator) {
  const std::string own = designator.substr(extract::AssemblyLength(designator));
  return own.substr(0, own.find_first_of("0123456789"));
}

// Ranks the words of one drawing.
class Ranker {
 public:
  Ranker(const LexiconPage& page, std::size_t at, const Lexicon& lexicon)
      : page_(page), at_(at), lexicon_(lexicon), ranked_(*page.sightings), places_(1, ranked_.size()) {
    for (std::size_t i = 0; i < ranked_.size(); ++i) {
      NotePlace(i);
    }
  }

  std::vector<Sighting> Rank() {
    for (Sighting& sighting : ranked_) {
      Weigh(sighting);
    }
    for (const Sighting& sighting : ranked_) {
      if (sighting.confidence >= kSureReading) {
        placed_.insert(sighting.text);
      }
    }
    for (const Word& word : page_.reading->words) {
      RankWord(word);
    }
    ranked_.erase(std::remove_if(ranked_.begin(), ranked_.end(),
                                 [](const Sighting& sighting) {
                                   return sighting.kind == TermKind::kDesignator &&
                                          sighting.confidence < extract::kLeastSureOnDrawings;
                                 }),
                  ranked_.end());
    return std::move(ranked_);
  }

 private:
  // How much oftener a right reading of this term is named by the manual than a wrong one. The figures here and below
  // are measured by bench_manuals on the development manuals.
  double RatioOf(const Sighting& sighting) const {
    constexpr double kNamed = 4;
    constexpr double kShortNamed = 2;  // two characters are soon spelled by a scrap
    constexpr double kChance = 0.5;    // that a wrong number of a class that is named in part is named
    const double named = lexicon_.SureOf(sighting.kind, sighting.text, at_);
    if (named > 0) {
      const bool designator = sighting.kind == TermKind::kDesignator;
      const double chance = designator ? std::max(kChance, lexicon_.Density(LettersOf(sighting.text))) : 1;
      const double ratio = sighting.text.size() > 2 ? kNamed : kShortNamed;
      return 1 + named * (ratio / chance - 1);
    }
    constexpr double kTellsNothing = 0.8;
    constexpr double kLeastRatio = 0.2;  // parts that the list leaves out stay when they are surely read
    const double complete = lexicon_.Completeness();
    return sighting.kind != TermKind::kDesignator || complete < kTellsNothing
               ? 1
               : std::max(kLeastRatio, (1 - complete) / (1 - kTellsNothing));
  }

  void Weigh(Sighting& sighting) const {
    sighting.confidence = After(sighting.confidence, RatioOf(sighting));
    constexpr double kLoneNumber = 0.3;
    constexpr double kPoint = 0.1;
    if (sighting.kind != TermKind::kDesignator || lexicon_.SureOf(sighting.kind, sighting.text, at_) > 0) {
      return;
    }
    if (lexicon_.IsLone(sighting.text)) {
      sighting.confidence = After(sighting.confidence, kLoneNumber);
    }
    if (lexicon_.IsAlignmentPoint(sighting.text)) {
      sighting.confidence = After(sighting.confidence, kPoint);
    }
  }

  void NotePlace(std::size_t sighting) {
    const FractionBox& box = ranked_[sighting].box;
    places_.Add(sighting, box.y, box.y + box.height);
  }

  // The place of the only sighting in the word's place; the number of sightings when there is none or are several.
  std::optional<std::size_t> OnlySightingAt(const FractionBox& box, std::size_t& count) const {
    std::optional<std::size_t> only;
    count = 0;
    for (const std::size_t i : places_.Beside(box.y, box.y + box.height)) {
      if (OverlapOfSmaller(ranked_[i].box, box) > 0.5) {
        only = i;
        ++count;
      }
    }
    return count == 1 ? only : std::nullopt;
  }

  struct Choice {
    Lexicon::Match match;
    double certainty = 0;
  };

  // The terms of the lexicon that the word's readings are or look like, the surest first.
  std::vector<Choice> ChoicesOf(const Word& word) const {
    std::map<std::pair<TermKind, std::string>, Choice> best;
    const auto add = [&](const std::string& text, double confidence) {
      for (const Lexicon::Match& match : lexicon_.Like(extract::Trimmed(extract::PlainText(text)), at_)) {
        double certainty = confidence * std::pow(kEachUnlike, match.unlike) * Familiarity(match);
        constexpr double kPlacedAlready = 0.7;
        certainty *= placed_.count(match.text) != 0 ? kPlacedAlready : 1;
        Choice& choice = best[{match.kind, match.text}];
        if (certainty > choice.certainty) {
          choice = {match, certainty};
        }
      }
    };
    add(word.text, word.confidence);
    for (const Alternative* alternative : extract::OtherReadings(word)) {
      add(alternative->text, alternative->confidence);
    }
    std::vector<Choice> choices;
    choices.reserve(best.size());
    for (auto& [key, choice] : best) {
      choices.push_back(std::move(choice));
    }
    std::stable_sort(choices.begin(), choices.end(),
                     [](const Choice& a, const Choice& b) { return a.certainty > b.certainty; });
    return choices;
  }

  // Two characters of which one is guessed are often a scrap of the drawing; and they are the rather a designator, the
  // more parts of its class there are.
  double Familiarity(const Lexicon::Match& match) const {
    if (match.kind != TermKind::kDesignator || match.text.size() > 2 || match.unlike == 0) {
      return 1;
    }
    constexpr double kUsualClass = 5;
    const auto size = static_cast<double>(lexicon_.ClassSize(LettersOf(match.text)));
    return size / (size + kUsualClass);
  }

  void RankWord(const Word& word) {
    const FractionBox box = ToScan(page_.reading->frame, word.box);
    std::size_t count = 0;
    const auto only = OnlySightingAt(box, count);
    if (count > 1 || (only && !MayGiveWay(ranked_[*only]))) {
      return;
    }
    const std::vector<Choice> choices = ChoicesOf(word);
    if (choices.empty() || (choices.size() > 1 && choices[0].certainty < kClearlyBetter * choices[1].certainty)) {
      return;
    }
    Sighting found;
    found.kind = choices[0].match.kind;
    found.text = choices[0].match.text;
    found.read = word.text;
    found.box = box;
    found.turn = (word.turn - page_.reading->frame.orientation + 360) % 360;
    found.confidence = choices[0].certainty;
    constexpr double kAlike = 2;  // what looks like a term by three characters and more
    const double ratio = choices[0].match.unlike == 0 ? RatioOf(found) : found.text.size() > 2 ? kAlike : 1;
    found.confidence = After(found.confidence, ratio);
    if (only) {
      Sighting& before = ranked_[*only];
      if (found.confidence > before.confidence) {
        found.assembly = before.assembly;
        before = std::move(found);
        NotePlace(*only);
      }
    } else if (found.confidence >= extract::kLeastSureOnDrawings) {
      ranked_.push_back(std::move(found));
    }
  }

  // Whether another term may stand in this one's place.
  bool MayGiveWay(const Sighting& sighting) const {
    return sighting.confidence < kSureReading && sighting.kind != TermKind::kValue &&
           lexicon_.SureOf(sighting.kind, sighting.text, at_) == 0;
  }

  const LexiconPage& page_;
  std::size_t at_;
  const Lexicon& lexicon_;
  std::vector<Sighting> ranked_;
  extract::PageBands places_;  // of the page's own sightings, not of those that are added
  std::set<std::string> placed_;
};

}  // namespace

std::vector<std::vector<Sighting>> RankByLexicon(const std::vector<LexiconPage>& pages, const Rules& rules) {
  const Lexicon lexicon(pages, rules.tables());
  std::vector<std::vector<Sighting>> ranked;
  for (std::size_t i = 0; i < pages.size(); ++i) {
    ranked.push_back(pages[i].part == LexiconPart::kDrawing ? Ranker(pages[i], i, lexicon).Rank()
                                                            : *pages[i].sightings);
  }
  extract::AddMissingParts(pages, rules.tables(), ranked);
  return ranked;
}

}  // namespace benchleaf

#include "extract/lexicon.h"

#include "extract/assembly_prefix.h"
#include "extract/designator.h"
#include "extract/lone_numbers.h"
#include "extract/look_alikes.h"
#include "extract/plain_text.h"

#include "benchleaf/core/utf8.h"

#include <algorithm>
#include <charconv>
#include <optional>

namespace benchleaf::extract {
namespace {

constexpr double kSureOnDrawing = 0.8;  // below this a drawing does not speak for others
constexpr double kLeastSure = 0.3;      // below this a list does not speak
constexpr double kMostUnlike = 2;
constexpr double kSection = 0.6;              // a section letter may as well be a figure: R1B and R18
constexpr std::size_t kFewestForMeasure = 8;  // designators by which completeness is judged

// The designator without the assembly in front.
std::string Own(const std::string& designator) { return designator.substr(AssemblyLength(designator)); }

// C1 for C1A, empty for a text without a section letter. Only parts that have sections are asked for.
std::string Whole(const std::string& own) {
  constexpr std::string_view kInSections = "CKLSTUV";
  const bool section = own.size() > 2 && own.back() >= 'A' && own.back() <= 'D' && IsDigit(own[own.size() - 2]) &&
                       IsDigit(own[1]) && kInSections.find(own.front()) != std::string_view::npos;
  return section ? own.substr(0, own.size() - 1) : std::string();
}

int NumberIn(const std::string& designator) {
  const std::size_t from = designator.find_first_of("0123456789");
  int number = 0;
  if (from != std::string::npos) {
    std::from_chars(designator.data() + from, designator.data() + designator.size(), number);
  }
  return number;
}

std::string LettersOf(const std::string& own) { return own.substr(0, own.find_first_of("0123456789")); }

// Values stand beside many parts and bare numbers anywhere: they are no words to look for.
bool IsLexical(TermKind kind, const std::string& text) {
  return kind != TermKind::kValue && std::any_of(text.begin(), text.end(), IsDigit) &&
         (text.size() >= 4 || std::any_of(text.begin(), text.end(), IsUpper));
}

// The text with look-alikes folded. A small letter is folded as what it is: t is a stroke, T is none.
std::string FoldedAsRead(const std::vector<std::string_view>& characters, const Rules::Tables& tables) {
  std::string folded;
  for (const std::string_view character : characters) {
    const char fold = LookAlikeOf(character, tables).fold;
    folded += fold == 0 ? Folded(character, tables) : std::string(1, fold);
  }
  return folded;
}

// A figure read where the class letter of a designator must stand says less than one read among its figures: 56 is
// seldom S6.
double LettersGuessed(const std::vector<std::string_view>& read, const std::string& term) {
  constexpr double kGuessed = 1;
  for (std::size_t i = 0; i < term.size() && IsUpper(term[i]); ++i) {
    if (Upper(read[i]) != term.substr(i, 1)) {
      return kGuessed;
    }
  }
  return 0;
}

}  // namespace

Lexicon::Lexicon(const std::vector<LexiconPage>& pages, const Rules::Tables& tables)
    : tables_(tables), lone_(LoneNumbers(pages)) {
  for (std::size_t i = 0; i < pages.size(); ++i) {
    AddPage(pages[i], i);
  }
  NotePoints(pages);
  MeasureCompleteness(pages);
  LookAtNumbers(pages.size());
}

void Lexicon::Add(TermKind kind, const std::string& text, std::size_t page, double sure) {
  const std::string term = kind == TermKind::kDesignator ? Own(text) : text;
  if (sure < kLeastSure || !IsLexical(kind, term)) {
    return;
  }
  const auto [place, fresh] = terms_.try_emplace({kind, term});
  if (fresh) {
    folded_[Folded(term, tables_)].push_back({kind, term});
  }
  place->second.push_back({page, sure});
}

void Lexicon::AddPage(const LexiconPage& page, std::size_t at) {
  if (page.part != LexiconPart::kSource && page.part != LexiconPart::kDrawing) {
    return;
  }
  const double least = page.part == LexiconPart::kDrawing ? kSureOnDrawing : kLeastSure;
  for (const Sighting& sighting : *page.sightings) {
    if (sighting.confidence >= least) {
      Add(sighting.kind, sighting.text, at, sighting.confidence);
    }
  }
  for (const Entry& entry : *page.entries) {
    if (!entry.designator.empty()) {
      Add(TermKind::kDesignator, entry.designator, at, entry.confidence);
    }
  }
}

void Lexicon::NotePoints(const std::vector<LexiconPage>& pages) {
  constexpr std::size_t kFewestPoints = 3;
  for (const LexiconPage& page : pages) {
    if (page.part != LexiconPart::kAlignment) {
      continue;
    }
    for (const Word& word : page.reading->words) {
      const std::string text = Trimmed(PlainText(word.text));
      const auto designator = ParseDesignator(text, tables_);
      if (designator && designator->letters == "A" && designator->suffix.empty()) {
        points_.insert(text);
      }
    }
  }
  if (points_.size() < kFewestPoints) {
    points_.clear();
  }
}

void Lexicon::MeasureCompleteness(const std::vector<LexiconPage>& pages) {
  std::set<std::string> listed;
  for (const LexiconPage& page : pages) {
    for (const Entry& entry : *page.entries) {
      if (!entry.designator.empty()) {
        listed.insert(Own(entry.designator));
      }
    }
  }
  std::size_t sure = 0;
  std::size_t sure_and_listed = 0;
  for (const LexiconPage& page : pages) {
    if (page.part != LexiconPart::kDrawing) {
      continue;
    }
    for (const Sighting& sighting : *page.sightings) {
      if (sighting.kind == TermKind::kDesignator && sighting.confidence >= kSureOnDrawing) {
        const std::string own = Own(sighting.text);
        ++sure;
        sure_and_listed += listed.count(own) + listed.count(Whole(own)) > 0 ? 1U : 0U;
      }
    }
  }
  const bool enough = sure >= kFewestForMeasure && listed.size() >= sure / 2;
  completeness_ = enough ? static_cast<double>(sure_and_listed) / static_cast<double>(sure) : 0;
}

void Lexicon::LookAtNumbers(std::size_t page_count) {
  constexpr double kNearlyWhole = 0.6;
  constexpr double kGap = 0.4;  // numbers are left out where a part was dropped from the design
  std::map<std::string, std::set<int>> classes;
  for (const auto& [key, evidence] : terms_) {
    if (key.first == TermKind::kDesignator && lone_.count(key.second) == 0) {
      classes[LettersOf(key.second)].insert(NumberIn(key.second));
    }
  }
  for (const auto& [letters, numbers] : classes) {
    class_sizes_[letters] = numbers.size();
    const int first = *numbers.begin();
    const int last = *numbers.rbegin();
    const double density = static_cast<double>(numbers.size()) / (last - first + 1);
    density_[letters] = density;
    for (int number = first + 1; numbers.size() >= kFewestForMeasure && density >= kNearlyWhole && number < last;
         ++number) {
      if (numbers.count(number) == 0) {
        Add(TermKind::kDesignator, letters + std::to_string(number), page_count, kGap);
      }
    }
  }
}

std::size_t Lexicon::ClassSize(std::string_view letters) const {
  const auto found = class_sizes_.find(letters);
  return found == class_sizes_.end() ? 0 : found->second;
}

double Lexicon::Density(std::string_view letters) const {
  const auto found = density_.find(letters);
  return found == density_.end() ? 0 : found->second;
}

double Lexicon::SureOf(TermKind kind, const std::string& text, std::size_t page) const {
  const std::string term = kind == TermKind::kDesignator ? Own(text) : text;
  double wrong = 1;
  for (const std::string& name : {term, kind == TermKind::kDesignator ? Whole(term) : std::string()}) {
    const auto found = terms_.find({kind, name});
    if (found == terms_.end()) {
      continue;
    }
    for (const Evidence& evidence : found->second) {
      wrong *= evidence.page == page ? 1 : 1 - evidence.sure;
    }
  }
  return 1 - wrong;
}

std::vector<Lexicon::Match> Lexicon::Like(const std::string& reading, std::size_t page) const {
  std::vector<Match> matches;
  const std::vector<std::string_view> characters = Characters(reading);
  const auto add = [&](const std::vector<std::string_view>& stem, const std::string& section) {
    const auto found = folded_.find(FoldedAsRead(stem, tables_));
    if (found == folded_.end()) {
      return;
    }
    for (const auto& [kind, term] : found->second) {
      const auto unlike = Unlikeness(stem, term, tables_);
      const bool fits = section.empty() || (kind == TermKind::kDesignator && !Whole(term + section).empty());
      if (unlike && *unlike <= kMostUnlike && fits && SureOf(kind, term, page) > 0) {
        matches.push_back(
            {kind, term + section, *unlike + (section.empty() ? 0 : kSection) + LettersGuessed(stem, term)});
      }
    }
  };
  add(characters, {});
  if (characters.size() > 2) {
    add({characters.begin(), characters.end() - 1}, std::string(characters.back()));
  }
  std::stable_sort(matches.begin(), matches.end(), [](const Match& a, const Match& b) { return a.unlike < b.unlike; });
  return matches;
}

}  // namespace benchleaf::extract

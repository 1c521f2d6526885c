#include "extract/page_terms.h"
#include "extract/plain_text.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>
#include <map>
#include <set>
#include <string>
#include <string_view>
#include <utility>

namespace benchleaf::extract {
namespace {

constexpr double kLeastSure = 0.3;

// Parts whose sections stand side by side on one sheet. Halves of tubes and gates, decks of switches and contacts of
// relays may each be on a sheet of their own, so a lone B proves nothing there.
bool KeepsSectionsTogether(const std::string& letters) {
  constexpr std::array<std::string_view, 8> kTogether = {"C", "R", "L", "Q", "CR", "D", "F", "VR"};
  return std::find(kTogether.begin(), kTogether.end(), letters) != kTogether.end();
}

// The number as far as the drawing's parts of a class may go that are not read: twice as far as those that are.
int FarthestNumber(const std::vector<PageTerm>& terms, const Designator& apart, const Rules::Tables& tables) {
  int highest = 0;
  for (const PageTerm& term : terms) {
    const auto designator =
        term.term.kind == TermKind::kDesignator ? ParseDesignator(term.term.text, tables) : std::nullopt;
    if (designator && designator->letters == apart.letters && designator->suffix != "B") {
      highest = std::max(highest, NumberOf(*designator));
    }
  }
  constexpr int kAnyway = 20;
  return 2 * highest + kAnyway;
}

// C1B without a C1A beside it is C18, unless no number goes so far: C10B is not C108 among C1 to C16.
void ReadLoneSections(std::vector<PageTerm>& terms, const Rules::Tables& tables) {
  std::set<std::string> first_sections;
  for (const PageTerm& term : terms) {
    if (term.term.kind == TermKind::kDesignator && term.term.text.back() == 'A') {
      first_sections.insert(term.term.text);
    }
  }
  for (PageTerm& term : terms) {
    const auto designator =
        term.term.kind == TermKind::kDesignator ? ParseDesignator(term.term.text, tables) : std::nullopt;
    if (!designator || designator->suffix != "B" || !KeepsSectionsTogether(designator->letters)) {
      continue;
    }
    const std::string stem = term.term.text.substr(0, term.term.text.size() - 1);
    const auto as_number = ParseDesignator(stem + "8", tables);
    if (as_number && first_sections.count(stem + "A") == 0 &&
        NumberOf(*as_number) <= FarthestNumber(terms, *as_number, tables)) {
      constexpr double kRepaired = 0.8;
      term.term.text = as_number->Text();
      term.confidence *= kRepaired;
    }
  }
}

// Classes whose parts nobody draws in close rows, while the pins of a connector bear these letters: A1 to A22.
bool IsPinLetter(const std::string& letters) {
  constexpr std::string_view kPinLetters = "ABEFHJKPWXYZ";
  return letters.size() == 1 && kPinLetters.find(letters) != std::string_view::npos;
}

// Numbers that follow each other at a close and even pace, one below or beside the other, are the pins of a connector.
void DoubtPins(std::vector<PageTerm>& terms, double cap, const Rules::Tables& tables) {
  constexpr std::size_t kFewest = 5;  // pins in a row
  constexpr double kPace = 3.5;       // capital heights from one to the next
  constexpr double kDoubt = 0.3;
  constexpr int kMostPins = 99;  // P101, P102 are connectors, numbered by hundreds
  struct Pin {
    std::size_t term = 0;
    int number = 0;
  };
  std::map<std::string, std::vector<Pin>> by_letter;
  for (std::size_t i = 0; i < terms.size(); ++i) {
    const auto designator =
        terms[i].term.kind == TermKind::kDesignator ? ParseDesignator(terms[i].term.text, tables) : std::nullopt;
    if (designator && designator->assembly.empty() && IsPinLetter(designator->letters) &&
        std::stoi(designator->number) <= kMostPins) {
      by_letter[designator->letters].push_back({i, std::stoi(designator->number)});
    }
  }
  const auto beside = [&](const Pin& a, const Pin& b) {
    const Box& one = terms[a.term].box;
    const Box& two = terms[b.term].box;
    const double dx = std::abs(one.center_x() - two.center_x());
    const double dy = std::abs(one.center_y() - two.center_y());
    return std::abs(a.number - b.number) == 1 && std::min(dx, dy) < cap && std::max(dx, dy) < kPace * cap;
  };
  for (auto& [letter, pins] : by_letter) {
    std::stable_sort(pins.begin(), pins.end(), [](const Pin& a, const Pin& b) { return a.number < b.number; });
    for (std::size_t from = 0; from < pins.size();) {
      std::size_t end = from + 1;
      while (end < pins.size() && beside(pins[end - 1], pins[end])) {
        ++end;
      }
      for (std::size_t i = from; end - from >= kFewest && i < end; ++i) {
        terms[pins[i].term].confidence *= kDoubt;
      }
      from = end;
    }
  }
}

// F1A or T2A beside a fuse is its rating: quick or slow, so many amperes (IEC 60127 marks them so).
void DropFuseRatings(std::vector<PageTerm>& terms, double cap, const Rules::Tables& tables) {
  const auto parsed = [&](const PageTerm& term) {
    return term.term.kind == TermKind::kDesignator ? ParseDesignator(term.term.text, tables) : std::nullopt;
  };
  std::vector<Box> fuses;
  for (const PageTerm& term : terms) {
    const auto fuse = parsed(term);
    if (fuse && fuse->letters == "F" && fuse->suffix.empty()) {
      fuses.push_back(term.box);
    }
  }
  const auto is_rating = [&](const PageTerm& term) {
    const auto designator = parsed(term);
    if (!designator || designator->suffix != "A" || (designator->letters != "F" && designator->letters != "T")) {
      return false;
    }
    return std::any_of(fuses.begin(), fuses.end(), [&](const Box& fuse) { return Near(fuse, term.box, 2 * cap); });
  };
  std::vector<PageTerm> kept;
  for (const PageTerm& term : terms) {
    if (!is_rating(term)) {
      kept.push_back(term);
    }
  }
  terms = std::move(kept);
}

// Each term of a place once, the surest.
std::vector<PageTerm> OncePerPlace(std::vector<PageTerm> terms) {
  std::vector<PageTerm> kept;
  std::map<std::pair<TermKind, std::string>, std::vector<std::size_t>> alike;  // positions in `kept`
  for (PageTerm& term : terms) {
    std::vector<std::size_t>& others = alike[{term.term.kind, term.term.text}];
    const auto same = std::find_if(others.begin(), others.end(), [&](std::size_t other) {
      return OverlapOfSmaller(kept[other].box, term.box) > 0.5;
    });
    if (same == others.end()) {
      others.push_back(kept.size());
      kept.push_back(std::move(term));
    } else if (term.confidence > kept[*same].confidence) {
      kept[*same] = std::move(term);
    }
  }
  return kept;
}

}  // namespace

void SettleTerms(std::vector<PageTerm>& terms, const PageSense& sense, const Rules::Tables& tables) {
  const auto drop = [&](const PageTerm& term) {
    if (term.term.sure < kLeastSure) {
      return true;
    }
    const auto designator =
        term.term.kind == TermKind::kDesignator ? ParseDesignator(term.term.text, tables) : std::nullopt;
    return sense.alignment && !sense.list && designator && designator->letters == "A";
  };
  terms.erase(std::remove_if(terms.begin(), terms.end(), drop), terms.end());
  ReadLoneSections(terms, tables);
  if (!sense.list) {
    DoubtPins(terms, sense.cap, tables);
    DropFuseRatings(terms, sense.cap, tables);
  }
  std::stable_sort(terms.begin(), terms.end(), [](const PageTerm& a, const PageTerm& b) {
    return a.box.y != b.box.y ? a.box.y < b.box.y : a.box.x < b.box.x;
  });
  terms = OncePerPlace(std::move(terms));
}

}  // namespace benchleaf::extract

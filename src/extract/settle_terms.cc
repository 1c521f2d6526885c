#include "extract/page_terms.h"
#include "extract/plain_text.h"

#include <algorithm>
#include <array>
#include <set>
#include <string_view>

namespace benchleaf::extract {
namespace {

constexpr double kLeastSure = 0.3;

// Parts whose sections stand side by side on one sheet. Halves of tubes and gates, decks of switches and contacts of
// relays may each be on a sheet of their own, so a lone B proves nothing there.
bool KeepsSectionsTogether(const std::string& letters) {
  constexpr std::array<std::string_view, 8> kTogether = {"C", "R", "L", "Q", "CR", "D", "F", "VR"};
  return std::find(kTogether.begin(), kTogether.end(), letters) != kTogether.end();
}

// C1B without a C1A beside it is C18.
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
    if (as_number && first_sections.count(stem + "A") == 0) {
      constexpr double kRepaired = 0.8;
      term.term.text = as_number->Text();
      term.confidence *= kRepaired;
    }
  }
}

bool SamePlace(const PageTerm& a, const PageTerm& b) {
  return a.term.kind == b.term.kind && a.term.text == b.term.text && OverlapOfSmaller(a.box, b.box) > 0.5;
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
  std::stable_sort(terms.begin(), terms.end(), [](const PageTerm& a, const PageTerm& b) {
    return a.box.y != b.box.y ? a.box.y < b.box.y : a.box.x < b.box.x;
  });
  std::vector<PageTerm> kept;
  for (PageTerm& term : terms) {
    const auto same =
        std::find_if(kept.begin(), kept.end(), [&](const PageTerm& other) { return SamePlace(other, term); });
    if (same == kept.end()) {
      kept.push_back(std::move(term));
    } else if (term.confidence > same->confidence) {
      *same = std::move(term);
    }
  }
  terms = std::move(kept);
}

}  // namespace benchleaf::extract

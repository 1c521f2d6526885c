#include "store/asked_term.h"

#include "store/schema.h"
#include "store/sighting_names.h"

#include "benchleaf/core/ascii.h"
#include "benchleaf/extract/extract.h"

#include <algorithm>

namespace benchleaf::store {

namespace {

bool Holds(const std::vector<std::string>& texts, std::string_view text) {
  return std::find(texts.begin(), texts.end(), text) != texts.end();
}

bool Holds(const StoredForms& forms, std::string_view text) {
  return forms.Any([text](std::string_view form) { return form == text; });
}

constexpr std::string_view kItemWord = "ITEM";

bool AsksForItem(const std::string& canonical) {
  return canonical.starts_with(kItemWord) && canonical.size() > kItemWord.size() &&
         IsDigit(canonical[kItemWord.size()]);
}

// UTF-8 characters: all bytes but those that go on with one.
std::size_t Characters(std::string_view text) {
  return static_cast<std::size_t>(
      std::count_if(text.begin(), text.end(), [](char c) { return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U; }));
}

}  // namespace

AskedTerm::AskedTerm(std::string_view term, const Rules& rules)
    : rules_(rules),
      item_alone_(AsksForItem(Canonical(term))),
      canonical_(Canonical(term).substr(item_alone_ ? kItemWord.size() : 0)),
      folded_(FoldLookAlikes(canonical_, rules)),
      characters_(Characters(canonical_)),
      designator_forms_(OtherForms(TermKind::kDesignator, canonical_)),
      tube_forms_(OtherForms(TermKind::kTube, canonical_)),
      names_several_tubes_(canonical_.find('/') != std::string::npos) {
  for (const std::string& form : designator_forms_) {
    if (canonical_.ends_with(form)) assembly_ = canonical_.substr(0, canonical_.size() - form.size());
  }
}

Xapian::Query AskedTerm::Pages(Match match) const {
  std::vector<std::string> terms;
  if (item_alone_) {
    if (match == Match::kExact) terms.push_back(ExactTerm(TermKind::kItem, canonical_));
  } else if (match == Match::kExact) {
    for (const TermKind kind : kAllTermKinds) terms.push_back(ExactTerm(kind, canonical_));
  } else if (match == Match::kForm) {
    for (const TermKind kind : {TermKind::kDesignator, TermKind::kTube}) terms.push_back(FormTerm(kind, canonical_));
    for (const std::string& form : designator_forms_) terms.push_back(ExactTerm(TermKind::kDesignator, form));
    AddTubeForms(terms);
  } else {
    terms.push_back(FoldedTerm(folded_));
  }
  // Not the sum: a page is as good as its best sighting.
  return {Xapian::Query::OP_MAX, terms.begin(), terms.end()};
}

Xapian::Query AskedTerm::PagesOfTubes() const {
  if (item_alone_) return {};
  std::vector<std::string> terms = {ExactTerm(TermKind::kTube, canonical_), FormTerm(TermKind::kTube, canonical_)};
  AddTubeForms(terms);
  return {Xapian::Query::OP_OR, terms.begin(), terms.end()};
}

void AskedTerm::AddTubeForms(std::vector<std::string>& terms) const {
  for (const std::string& form : tube_forms_) {
    terms.push_back(ExactTerm(TermKind::kTube, form));
    if (names_several_tubes_) terms.push_back(FormTerm(TermKind::kTube, form));
  }
}

bool AskedTerm::FitsAsDesignatorForm(const StoredSighting& sighting) const {
  if (Holds(sighting.forms, canonical_)) return true;
  if (!Holds(designator_forms_, sighting.text)) return false;
  if (assembly_.empty() || sighting.text.starts_with(assembly_)) return true;
  // A4C12 is asked for and C12 seen: that is another part when its page or heading is of another assembly.
  const std::string seen_assembly = sighting.Decode().assembly;
  return seen_assembly.empty() || seen_assembly == assembly_;
}

// One must be a form of the other: 6CB6A and 6CB6 fit, 6CB6A and 6CB6B do not. A term that names one tube in two ways
// (12AX7A/ECC83) fits whatever has one of its names.
bool AskedTerm::FitsAsForm(const StoredSighting& sighting) const {
  if (sighting.kind == TermKind::kDesignator) return FitsAsDesignatorForm(sighting);
  if (sighting.kind != TermKind::kTube) return false;
  if (Holds(sighting.forms, canonical_) || Holds(tube_forms_, sighting.text)) return true;
  return names_several_tubes_ && sighting.forms.Any([this](std::string_view form) { return Holds(tube_forms_, form); });
}

bool AskedTerm::LooksAlike(std::string_view text) const {
  // Folding exchanges characters one for one, so most texts are out by their length.
  return Characters(text) == characters_ && FoldLookAlikes(std::string(text), rules_) == folded_;
}

bool AskedTerm::Fits(const StoredSighting& sighting, Match match) const {
  if (item_alone_ && sighting.kind != TermKind::kItem) return false;
  const bool exact = sighting.text == canonical_;
  if (match == Match::kExact || exact) return match == Match::kExact && exact;
  if (match == Match::kForm) return FitsAsForm(sighting);
  if (sighting.kind == TermKind::kItem) return false;
  const bool looks_alike =
      LooksAlike(sighting.text) || sighting.forms.Any([this](std::string_view form) { return LooksAlike(form); });
  return looks_alike && !FitsAsForm(sighting);
}

}  // namespace benchleaf::store

#include "store/documents.h"

#include "store/fields.h"
#include "store/page_tubes.h"
#include "store/schema.h"
#include "store/sighting_names.h"
#include "store/stored.h"
#include "store/summary.h"

#include "benchleaf/extract/extract.h"
#include "benchleaf/extract/misread_words.h"
#include "benchleaf/record/codec.h"

#include <algorithm>
#include <map>
#include <string>
#include <string_view>
#include <unordered_map>
#include <unordered_set>
#include <utility>

namespace benchleaf::store {

namespace {

// The other forms of each sighting's text, in the order of the sightings.
using Forms = std::vector<std::vector<std::string>>;

Forms FormsOf(const std::vector<Sighting>& sightings) {
  Forms forms;
  forms.reserve(sightings.size());
  for (const Sighting& sighting : sightings) forms.push_back(OtherForms(sighting.kind, sighting.text));
  return forms;
}

void AddSightingTerms(const PageRecord& page, const Forms& forms, const Rules& rules, Xapian::Document& document) {
  // Each term with the best confidence of it.
  std::map<std::string, Xapian::termcount> frequencies;
  const auto keep_best = [&frequencies](std::string term, Xapian::termcount units) {
    Xapian::termcount& best = frequencies[std::move(term)];
    best = std::max(best, units);
  };
  for (std::size_t i = 0; i < page.sightings.size(); ++i) {
    const Sighting& sighting = page.sightings[i];
    const Xapian::termcount units = ConfidenceUnits(sighting.confidence);
    keep_best(ExactTerm(sighting.kind, sighting.text), units);
    // An item's number is no designator for looking like one: 12 is not L2.
    if (sighting.kind == TermKind::kItem) continue;
    keep_best(FoldedTerm(FoldLookAlikes(sighting.text, rules)), units);
    for (const std::string& form : forms[i]) {
      keep_best(FormTerm(sighting.kind, form), units);
      keep_best(FoldedTerm(FoldLookAlikes(form, rules)), units);
    }
  }
  for (const auto& [term, units] : frequencies) document.add_term(term, units);
}

std::string PageData(const ManualRecord& manual, const PageRecord& page, const Forms& forms) {
  FieldWriter fields;
  fields.Text(manual.set);
  fields.Text(manual.manual);
  fields.Text(EncodePage(page, PageParts::kRecord));
  fields.Number(page.sightings.size());
  for (std::size_t i = 0; i < page.sightings.size(); ++i) {
    const Sighting& sighting = page.sightings[i];
    fields.Number(static_cast<std::uint64_t>(sighting.kind));
    fields.Text(sighting.text);
    fields.Number(forms[i].size());
    for (const std::string& form : forms[i]) fields.Text(form);
    fields.Text(EncodeSighting(sighting));
  }
  return fields.Take();
}

void IndexWords(const PageReading& reading, Xapian::Document& document) {
  Xapian::TermGenerator generator;
  generator.set_document(document);
  // Words stand on a page again and again, and to cut them takes long: each is cut once.
  std::unordered_map<std::string_view, Xapian::termcount> counts;
  for (const Word& word : reading.words) ++counts[word.text];
  for (const auto& [text, count] : counts) {
    generator.index_text_without_positions(Xapian::Utf8Iterator(text.data(), text.size()), count);
  }
}

void IndexOtherReadings(const PageReading& reading, const Rules& rules, Xapian::Document& document) {
  std::unordered_set<std::string> readings;
  for (const Word& word : reading.words) {
    for (std::string& folded : FoldedReadings(word, rules)) readings.insert(std::move(folded));
  }
  for (const std::string& folded : readings) document.add_boolean_term(MisreadTerm(folded));
}

Xapian::Document ReadingDocument(const ManualRecord& manual, const PageRecord& page) {
  Xapian::Document document;
  document.set_data(EncodeReading(page.reading));
  document.add_boolean_term(ManualTerm(manual.set, manual.manual));
  return document;
}

bool NamesTubes(const PageRecord& page) {
  return std::any_of(page.sightings.begin(), page.sightings.end(),
                     [](const Sighting& sighting) { return sighting.kind == TermKind::kTube; });
}

Xapian::Document PageDocument(const ManualRecord& manual, const PageRecord& page, const Rules& rules) {
  const Forms forms = FormsOf(page.sightings);
  const std::string data = PageData(manual, page, forms);
  Xapian::Document document;
  document.set_data(data);
  if (NamesTubes(page)) document.add_value(kTubesSlot, EncodePageTubes(data, page.reading.frame));
  document.add_value(kPlaceSlot, PlaceValue(manual.set, manual.manual, page.file, page.page));
  document.add_boolean_term(ManualTerm(manual.set, manual.manual));
  document.add_boolean_term(SetTerm(manual.set));
  document.add_boolean_term(KindTerm(page.facts.kind));
  document.add_boolean_term(PlaceTerm(page.file, page.page));
  document.add_boolean_term(KeyTerm(page.content_key));
  AddSightingTerms(page, forms, rules, document);
  IndexWords(page.reading, document);
  IndexOtherReadings(page.reading, rules, document);
  return document;
}

Xapian::Document ManualDocument(const ManualRecord& manual) {
  FieldWriter fields;
  fields.Text(EncodeManualHead(manual));
  fields.Text(EncodeLinks(manual.links));
  fields.Text(EncodeSummary(Summarize(manual)));
  fields.Number(manual.pages.size());

  Xapian::Document document;
  document.set_data(fields.Take());
  document.add_value(kSetSlot, manual.set);
  document.add_boolean_term(kManualTerm);
  document.add_boolean_term(HeadTerm(manual.set, manual.manual));
  document.add_boolean_term(SetHeadsTerm(manual.set));
  document.add_boolean_term(ManualTerm(manual.set, manual.manual));
  return document;
}

// The first id of the manual's documents, where they follow each other and are as many as will be written; else 0.
Xapian::docid FirstToReplace(const Xapian::Database& database, const ManualRecord& manual) {
  const std::string term = ManualTerm(manual.set, manual.manual);
  const auto count = static_cast<Xapian::doccount>(2 * manual.pages.size() + 1);
  if (database.get_termfreq(term) != count) return 0;
  auto at = database.postlist_begin(term);
  const Xapian::docid first = *at;
  at.skip_to(first + count - 1);
  // The term may be cut, and then be another manual's, too.
  const bool follow = at != database.postlist_end(term) && *at == first + count - 1;
  if (!follow) return 0;
  const StoredManual stored = ParseManual(database.get_document(*at).get_data(), *at, 1);
  return stored.manual.set == manual.set && stored.manual.manual == manual.manual ? first : 0;
}

bool SameTerms(const Xapian::Database& database, Xapian::docid id, const Xapian::Document& document) {
  auto old_term = database.termlist_begin(id);
  const auto old_end = database.termlist_end(id);
  auto term = document.termlist_begin();
  for (; term != document.termlist_end() && old_term != old_end; ++term, ++old_term) {
    if (*term != *old_term || term.get_wdf() != old_term.get_wdf()) return false;
  }
  return term == document.termlist_end() && old_term == old_end;
}

// Writes what differs. Of the values only that of a page's tubes holds more than names that stand in the data as well:
// designators, which go by the page's measures, too.
void Replace(Xapian::WritableDatabase& database, Xapian::docid id, const Xapian::Document& document) {
  const Xapian::Document old = database.get_document(id);
  const bool same = old.get_data() == document.get_data() &&
                    old.get_value(kTubesSlot) == document.get_value(kTubesSlot) && SameTerms(database, id, document);
  if (!same) database.replace_document(id, document);
}

}  // namespace

std::array<Xapian::Document, 2> PageDocuments(const ManualRecord& manual, const PageRecord& page, const Rules& rules) {
  return {ReadingDocument(manual, page), PageDocument(manual, page, rules)};
}

void PutManual(Xapian::WritableDatabase& database, const ManualRecord& manual, const Rules& rules,
               std::vector<Xapian::Document> of_first_pages) {
  Xapian::docid next = FirstToReplace(database, manual);
  if (next == 0) database.delete_document(ManualTerm(manual.set, manual.manual));
  const auto put = [&](const Xapian::Document& document) {
    if (next == 0) {
      database.add_document(document);
    } else {
      Replace(database, next++, document);
    }
  };
  for (Xapian::Document& made : of_first_pages) {
    put(std::exchange(made, {}));  // which gives its memory back
  }
  for (std::size_t i = of_first_pages.size() / 2; i < manual.pages.size(); ++i) {
    for (const Xapian::Document& document : PageDocuments(manual, manual.pages[i], rules)) put(document);
  }
  put(ManualDocument(manual));
}

}  // namespace benchleaf::store

#include "store/stored.h"

#include "store/fields.h"
#include "store/schema.h"
#include "store/summary.h"

#include "benchleaf/record/codec.h"

#include <algorithm>
#include <cstdint>
#include <tuple>

namespace benchleaf::store {

namespace {

template <class T>
T Sound(Result<T> decoded) {
  if (!decoded) ThrowDamaged();
  return *std::move(decoded);
}

// The manuals whose documents have the term, by set and name.
std::vector<StoredManual> ManualsWith(const Xapian::Database& database, const std::string& term) {
  std::vector<StoredManual> manuals;
  const Xapian::docid stride = Stride(database);
  for (auto at = database.postlist_begin(term); at != database.postlist_end(term); ++at) {
    manuals.push_back(ParseManual(database.get_document(*at).get_data(), *at, stride));
  }
  std::sort(manuals.begin(), manuals.end(), [](const StoredManual& a, const StoredManual& b) {
    return std::tie(a.manual.set, a.manual.manual) < std::tie(b.manual.set, b.manual.manual);
  });
  return manuals;
}

}  // namespace

Sighting StoredSighting::Decode() const { return Sound(DecodeSighting(bytes)); }

PagePlace StoredPage::Place() const {
  return {set, manual, page.file, page.page, page.facts.kind, page.facts.printed_number};
}

StoredSighting ParseSighting(FieldReader& fields) {
  StoredSighting sighting;
  sighting.fields = fields.left();
  sighting.kind = static_cast<TermKind>(fields.Number(static_cast<std::uint64_t>(TermKind::kItem)));
  sighting.text = fields.Text();
  sighting.forms.count = fields.Count();
  sighting.forms.fields = fields.left();
  for (std::uint64_t left = sighting.forms.count; left > 0; --left) fields.Text();
  sighting.forms.fields.remove_suffix(fields.left().size());
  sighting.bytes = fields.Text();
  sighting.fields.remove_suffix(fields.left().size());
  return sighting;
}

StoredPage ParsePage(std::string_view data, WithEntries entries) {
  FieldReader fields(data);
  StoredPage stored;
  stored.set = fields.Text();
  stored.manual = fields.Text();
  const std::string_view record = fields.Text();
  stored.page = Sound(entries == WithEntries::kYes ? DecodePage(record) : DecodePageHead(record));
  stored.sightings.resize(fields.Count());
  for (StoredSighting& sighting : stored.sightings) sighting = ParseSighting(fields);
  return stored;
}

Xapian::docid Stride(const Xapian::Database& database) {
  // Of several databases, Xapian gives all names with colons between them.
  const std::string names = database.get_uuid();
  return static_cast<Xapian::docid>(1 + std::count(names.begin(), names.end(), ':'));
}

StoredManual ParseManual(std::string_view data, Xapian::docid id, Xapian::docid stride) {
  FieldReader fields(data);
  StoredManual stored;
  stored.manual = Sound(DecodeManualHead(fields.Text()));
  stored.links = fields.Text();
  stored.summary = DecodeSummary(fields.Text());
  // Two documents a page stand in front of the manual's own.
  const std::uint64_t pages = fields.Number((id - 1) / stride / 2);
  stored.pages.reserve(pages);
  for (std::uint64_t left = pages; left > 0; --left) {
    stored.pages.push_back(id - stride * (1 + static_cast<Xapian::docid>(2 * (left - 1))));
  }
  return stored;
}

std::vector<Link> LinksOf(const StoredManual& stored) { return Sound(DecodeLinks(stored.links)); }

namespace {

// The data of the reading that stands in front of a page.
std::string ReadingData(const Xapian::Database& database, Xapian::docid page) {
  const Xapian::docid stride = Stride(database);
  if (page <= stride) ThrowDamaged();
  return database.get_document(page - stride).get_data();
}

}  // namespace

PageReading LoadReading(const Xapian::Database& database, Xapian::docid page) {
  return Sound(DecodeReading(ReadingData(database, page)));
}

namespace {

PageRecord LoadPageOfTubes(const Xapian::Database& database, Xapian::docid page) {
  const std::string data = database.get_document(page).get_data();
  StoredPage stored = ParsePage(data, WithEntries::kYes);
  PageRecord record = std::move(stored.page);
  bool names_tubes = false;
  for (const StoredSighting& sighting : stored.sightings) {
    const bool tube = sighting.kind == TermKind::kTube;
    names_tubes = names_tubes || tube;
    if (tube || sighting.kind == TermKind::kDesignator) record.sightings.push_back(sighting.Decode());
  }
  if (names_tubes) {
    record.reading.frame = Sound(DecodeReadingFrame(ReadingData(database, page)));
  } else {
    record.sightings.clear();
  }
  return record;
}

}  // namespace

PageRecord LoadPage(const Xapian::Database& database, Xapian::docid page) {
  const std::string data = database.get_document(page).get_data();
  StoredPage stored = ParsePage(data, WithEntries::kYes);
  PageRecord record = std::move(stored.page);
  record.sightings.reserve(stored.sightings.size());
  for (const StoredSighting& sighting : stored.sightings) record.sightings.push_back(sighting.Decode());
  record.reading = LoadReading(database, page);
  return record;
}

std::optional<ManualRecord> LoadManual(const Xapian::Database& database, const std::string& set,
                                       const std::string& manual, ManualParts parts) {
  for (const StoredManual& stored : ManualsWith(database, HeadTerm(set, manual))) {
    if (stored.manual.set != set || stored.manual.manual != manual) continue;
    ManualRecord record = stored.manual;
    record.pages.reserve(stored.pages.size());
    if (parts == ManualParts::kOutline) {
      for (const Xapian::docid page : stored.pages) {
        const std::string data = database.get_document(page).get_data();
        record.pages.push_back(ParsePage(data).page);
      }
      return record;
    }
    if (parts == ManualParts::kTubes) {
      for (const Xapian::docid page : stored.pages) record.pages.push_back(LoadPageOfTubes(database, page));
      return record;
    }
    record.links = LinksOf(stored);
    for (const Xapian::docid page : stored.pages) record.pages.push_back(LoadPage(database, page));
    if (!LinksFit(record)) ThrowDamaged();
    return record;
  }
  return std::nullopt;
}

std::vector<StoredManual> ManualsOfSet(const Xapian::Database& database, const std::string& set) {
  std::vector<StoredManual> manuals = ManualsWith(database, SetHeadsTerm(set));
  std::erase_if(manuals, [&set](const StoredManual& stored) { return stored.manual.set != set; });
  return manuals;
}

std::vector<StoredManual> AllManuals(const Xapian::Database& database) { return ManualsWith(database, kManualTerm); }

std::vector<std::pair<std::string, std::string>> ManualNames(const Xapian::Database& database) {
  std::vector<std::pair<std::string, std::string>> names;
  for (const StoredManual& stored : AllManuals(database)) {
    names.emplace_back(stored.manual.set, stored.manual.manual);
  }
  return names;
}

}  // namespace benchleaf::store

#include "record/cbor_items.h"
#include "record/cbor_reader.h"
#include "record/reading_items.h"

#include "benchleaf/record/codec.h"

#include <utility>
#include <vector>

namespace benchleaf {

using nlohmann::json;

namespace {

json TextsItem(const std::vector<std::string>& texts) {
  json::array_t items;
  items.reserve(texts.size());
  for (const std::string& text : texts) items.push_back(TextItem(text));
  return items;
}

// A kind stands by its name: it is once a page, and names outlive a new order of the kinds.
json FactsItem(const PageFacts& facts) {
  return json::array({std::string(Name(facts.kind)), ConfidenceItem(facts.kind_confidence),
                      TextItem(facts.printed_number), TextsItem(facts.titles), TextItem(facts.model)});
}

PageFacts ReadFacts(CborReader& reader) {
  reader.Array(5);
  PageFacts facts;
  const std::optional<PageKind> kind = PageKindNamed(reader.Text());
  if (!kind) reader.Refuse();
  facts.kind = kind.value_or(PageKind::kOther);
  facts.kind_confidence = reader.Confidence();
  facts.printed_number = reader.Text();
  const std::size_t titles = reader.Array();
  for (std::size_t i = 0; i < titles && reader.ok(); ++i) facts.titles.push_back(reader.Text());
  facts.model = reader.Text();
  return facts;
}

json SightingItem(const Sighting& sighting) {
  return json::array({static_cast<int>(sighting.kind), TextItem(sighting.text), TextItem(sighting.read),
                      FractionBoxItem(sighting.box), sighting.turn, ConfidenceItem(sighting.confidence),
                      TextItem(sighting.assembly)});
}

Sighting ReadSighting(CborReader& reader) {
  reader.Array(7);
  Sighting sighting;
  sighting.kind = static_cast<TermKind>(reader.Int(0, static_cast<int>(TermKind::kItem)));
  sighting.text = reader.Text();
  sighting.read = reader.Text();
  sighting.box = reader.Box();
  sighting.turn = reader.Int(0, 359);
  sighting.confidence = reader.Confidence();
  sighting.assembly = reader.Text();
  return sighting;
}

json EntryItem(const Entry& entry) {
  return json::array({TextItem(entry.designator), TextItem(entry.assembly), TextItem(entry.description),
                      TextItem(entry.part_number), TextItem(entry.quantity), TextItem(entry.value),
                      FractionBoxItem(entry.box), ConfidenceItem(entry.confidence), TextItem(entry.item)});
}

Entry ReadEntry(CborReader& reader) {
  reader.Array(9);
  Entry entry;
  entry.designator = reader.Text();
  entry.assembly = reader.Text();
  entry.description = reader.Text();
  entry.part_number = reader.Text();
  entry.quantity = reader.Text();
  entry.value = reader.Text();
  entry.box = reader.Box();
  entry.confidence = reader.Confidence();
  entry.item = reader.Text();
  return entry;
}

}  // namespace

std::string EncodePage(const PageRecord& page, WithReadings with_readings) {
  json::array_t sightings;
  sightings.reserve(page.sightings.size());
  for (const Sighting& sighting : page.sightings) sightings.push_back(SightingItem(sighting));
  json::array_t entries;
  entries.reserve(page.entries.size());
  for (const Entry& entry : page.entries) entries.push_back(EntryItem(entry));
  json reading = with_readings == WithReadings::kYes ? ReadingItem(page.reading) : json();
  return CborBytes(json::array({NameItem(page.file), page.page, page.volume, NameItem(page.content_key),
                                FailureItem(page.failure), page.plain_mode, FactsItem(page.facts), std::move(sightings),
                                std::move(entries), std::move(reading)}));
}

namespace {

PageRecord ReadPageHead(CborReader& reader) {
  reader.Array(10);
  PageRecord page;
  page.file = reader.Name();
  page.page = reader.Int(1);
  page.volume = reader.Int(1);
  page.content_key = reader.Name();
  page.failure = reader.Failure();
  page.plain_mode = reader.Bool();
  page.facts = ReadFacts(reader);
  return page;
}

}  // namespace

Result<PageRecord> DecodePageHead(std::string_view bytes) {
  CborReader reader(bytes);
  PageRecord page = ReadPageHead(reader);
  if (!reader.ok()) return Fail(ErrorCode::kDamaged, "the stored page is damaged");
  return page;
}

Result<PageRecord> DecodePage(std::string_view bytes) {
  CborReader reader(bytes);
  PageRecord page = ReadPageHead(reader);
  const std::size_t sightings = reader.Array();
  for (std::size_t i = 0; i < sightings && reader.ok(); ++i) page.sightings.push_back(ReadSighting(reader));
  const std::size_t entries = reader.Array();
  for (std::size_t i = 0; i < entries && reader.ok(); ++i) page.entries.push_back(ReadEntry(reader));
  if (!reader.Null()) page.reading = ReadReading(reader);
  return Decoded(reader, std::move(page), "page");
}

std::string EncodeSighting(const Sighting& sighting) { return CborBytes(SightingItem(sighting)); }

Result<Sighting> DecodeSighting(std::string_view bytes) {
  CborReader reader(bytes);
  Sighting sighting = ReadSighting(reader);
  return Decoded(reader, std::move(sighting), "sighting");
}

}  // namespace benchleaf

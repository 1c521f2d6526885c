#include "record/cbor_reader.h"
#include "record/cbor_writer.h"
#include "record/reading_items.h"

#include "benchleaf/record/codec.h"

#include <span>
#include <utility>
#include <vector>

namespace benchleaf {

namespace {

// A kind stands by its name: it is once a page, and names outlive a new order of the kinds.
void WriteFacts(const PageFacts& facts, CborWriter& writer) {
  writer.Array(5);
  writer.Text(Name(facts.kind));
  writer.Confidence(facts.kind_confidence);
  writer.Text(facts.printed_number);
  writer.Array(facts.titles.size());
  for (const std::string& title : facts.titles) writer.Text(title);
  writer.Text(facts.model);
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

void WriteSighting(const Sighting& sighting, CborWriter& writer) {
  writer.Array(7);
  writer.Integer(static_cast<int>(sighting.kind));
  writer.Text(sighting.text);
  writer.Text(sighting.read);
  writer.Box(sighting.box);
  writer.Integer(sighting.turn);
  writer.Confidence(sighting.confidence);
  writer.Text(sighting.assembly);
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

void WriteEntry(const Entry& entry, CborWriter& writer) {
  writer.Array(9);
  writer.Text(entry.designator);
  writer.Text(entry.assembly);
  writer.Text(entry.description);
  writer.Text(entry.part_number);
  writer.Text(entry.quantity);
  writer.Text(entry.value);
  writer.Box(entry.box);
  writer.Confidence(entry.confidence);
  writer.Text(entry.item);
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

std::string EncodePage(const PageRecord& page, PageParts parts) {
  CborWriter writer;
  writer.Array(10);
  writer.Name(page.file);
  writer.Integer(page.page);
  writer.Integer(page.volume);
  writer.Name(page.content_key);
  writer.Failure(page.failure);
  writer.Bool(page.plain_mode);
  WriteFacts(page.facts, writer);
  const std::span<const Sighting> sightings(page.sightings.data(),
                                            parts == PageParts::kRecord ? 0 : page.sightings.size());
  writer.Array(sightings.size());
  for (const Sighting& sighting : sightings) WriteSighting(sighting, writer);
  writer.Array(page.entries.size());
  for (const Entry& entry : page.entries) WriteEntry(entry, writer);
  if (parts == PageParts::kAll) {
    WriteReading(page.reading, writer);
  } else {
    writer.Null();
  }
  return writer.Take();
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

std::string EncodeSighting(const Sighting& sighting) {
  CborWriter writer;
  WriteSighting(sighting, writer);
  return writer.Take();
}

Result<Sighting> DecodeSighting(std::string_view bytes) {
  CborReader reader(bytes);
  Sighting sighting = ReadSighting(reader);
  return Decoded(reader, std::move(sighting), "sighting");
}

}  // namespace benchleaf

#include "record/cbor_reader.h"
#include "record/cbor_writer.h"

#include "benchleaf/record/codec.h"

#include <limits>
#include <utility>

namespace benchleaf {

namespace {

void WriteFile(const FileRecord& file, CborWriter& writer) {
  writer.Array(6);
  writer.Name(file.path);
  writer.Text(file.hash);
  writer.Integer(static_cast<std::int64_t>(file.size_bytes));
  writer.Integer(file.volume);
  writer.Integer(file.page_count);
  writer.Failure(file.failure);
}

FileRecord ReadFile(CborReader& reader) {
  reader.Array(6);
  FileRecord file;
  file.path = reader.Name();
  file.hash = reader.Text();
  file.size_bytes = static_cast<std::uint64_t>(reader.Integer(0, std::numeric_limits<std::int64_t>::max()));
  file.volume = reader.Int(1);
  file.page_count = reader.Int(0);
  file.failure = reader.Failure();
  return file;
}

void WritePosition(std::size_t position, CborWriter& writer) { writer.Integer(static_cast<std::int64_t>(position)); }

std::size_t ReadPosition(CborReader& reader) { return static_cast<std::size_t>(reader.Int(0)); }

}  // namespace

std::string EncodeManualHead(const ManualRecord& manual) {
  CborWriter writer;
  writer.Array(7);
  for (const std::string* name : {&manual.set, &manual.maker, &manual.model, &manual.manual, &manual.title}) {
    writer.Name(*name);
  }
  writer.Array(manual.files.size());
  for (const FileRecord& file : manual.files) WriteFile(file, writer);
  writer.Text(manual.rules);
  return writer.Take();
}

Result<ManualRecord> DecodeManualHead(std::string_view bytes) {
  CborReader reader(bytes);
  reader.Array(7);
  ManualRecord manual;
  manual.set = reader.Name();
  manual.maker = reader.Name();
  manual.model = reader.Name();
  manual.manual = reader.Name();
  manual.title = reader.Name();
  const std::size_t files = reader.Array();
  for (std::size_t i = 0; i < files && reader.ok(); ++i) manual.files.push_back(ReadFile(reader));
  manual.rules = reader.Text();
  return Decoded(reader, std::move(manual), "manual");
}

std::string EncodeLinks(const std::vector<Link>& links) {
  CborWriter writer;
  writer.Array(links.size());
  for (const Link& link : links) {
    writer.Array(6);
    WritePosition(link.entry_page, writer);
    WritePosition(link.entry, writer);
    WritePosition(link.seen_page, writer);
    WritePosition(link.sighting, writer);
    writer.Confidence(link.confidence);
    writer.Text(link.reason);
  }
  return writer.Take();
}

Result<std::vector<Link>> DecodeLinks(std::string_view bytes) {
  CborReader reader(bytes);
  const std::size_t count = reader.Array();
  std::vector<Link> links;
  for (std::size_t i = 0; i < count && reader.ok(); ++i) {
    reader.Array(6);
    Link link;
    link.entry_page = ReadPosition(reader);
    link.entry = ReadPosition(reader);
    link.seen_page = ReadPosition(reader);
    link.sighting = ReadPosition(reader);
    link.confidence = reader.Confidence();
    link.reason = reader.Text();
    links.push_back(std::move(link));
  }
  return Decoded(reader, std::move(links), "links");
}

}  // namespace benchleaf

#include "record/cbor_items.h"
#include "record/cbor_reader.h"

#include "benchleaf/record/codec.h"

#include <limits>
#include <utility>

namespace benchleaf {

using nlohmann::json;

namespace {

json FileItem(const FileRecord& file) {
  return json::array({NameItem(file.path), TextItem(file.hash), file.size_bytes, file.volume, file.page_count,
                      FailureItem(file.failure)});
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

std::size_t ReadPosition(CborReader& reader) { return static_cast<std::size_t>(reader.Int(0)); }

}  // namespace

std::string EncodeManualHead(const ManualRecord& manual) {
  json::array_t files;
  files.reserve(manual.files.size());
  for (const FileRecord& file : manual.files) files.push_back(FileItem(file));
  return CborBytes(
      json::array({NameItem(manual.set), NameItem(manual.maker), NameItem(manual.model), NameItem(manual.manual),
                   NameItem(manual.title), std::move(files), TextItem(manual.rules)}));
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
  json::array_t items;
  items.reserve(links.size());
  for (const Link& link : links) {
    items.push_back(json::array({link.entry_page, link.entry, link.seen_page, link.sighting,
                                 ConfidenceItem(link.confidence), TextItem(link.reason)}));
  }
  return CborBytes(items);
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

#include "store/summary.h"

#include "store/fields.h"

#include <limits>
#include <map>
#include <set>
#include <utility>

namespace benchleaf::store {

namespace {

constexpr std::uint64_t kMostInt = std::numeric_limits<int>::max();

int ReadInt(FieldReader& fields) { return static_cast<int>(fields.Number(kMostInt)); }

void WriteInt(FieldWriter& fields, int number) { fields.Number(static_cast<std::uint64_t>(number)); }

}  // namespace

SetSummary::ManualSummary Summarize(const ManualRecord& manual) {
  SetSummary::ManualSummary summary;
  summary.manual = manual.manual;
  summary.title = manual.title;
  summary.pages = static_cast<int>(manual.pages.size());

  std::set<int> volumes;
  for (const FileRecord& file : manual.files) {
    volumes.insert(file.volume);
    if (file.failure) summary.failures.push_back(*file.failure);
  }
  std::map<PageKind, int> kinds;
  for (const PageRecord& page : manual.pages) {
    volumes.insert(page.volume);
    summary.entries += static_cast<int>(page.entries.size());
    if (page.failure) {
      ++summary.failed;
      summary.failures.push_back(*page.failure);
    } else {
      ++kinds[page.facts.kind];
    }
  }
  summary.volumes = static_cast<int>(volumes.size());
  summary.kinds.assign(kinds.begin(), kinds.end());

  std::set<std::pair<std::size_t, std::size_t>> linked;
  for (const Link& link : manual.links) linked.emplace(link.entry_page, link.entry);
  summary.linked_entries = static_cast<int>(linked.size());
  return summary;
}

std::string EncodeSummary(const SetSummary::ManualSummary& summary) {
  FieldWriter fields;
  fields.Text(summary.manual);
  fields.Text(summary.title);
  for (const int count : {summary.volumes, summary.pages, summary.failed, summary.entries, summary.linked_entries}) {
    WriteInt(fields, count);
  }
  fields.Number(summary.kinds.size());
  for (const auto& [kind, count] : summary.kinds) {
    fields.Text(Name(kind));
    WriteInt(fields, count);
  }
  fields.Number(summary.failures.size());
  for (const Error& failure : summary.failures) {
    fields.Text(Name(failure.code));
    fields.Text(failure.message);
    fields.Text(failure.source);
    WriteInt(fields, failure.page);
  }
  return fields.Take();
}

SetSummary::ManualSummary DecodeSummary(std::string_view bytes) {
  FieldReader fields(bytes);
  SetSummary::ManualSummary summary;
  summary.manual = fields.Text();
  summary.title = fields.Text();
  for (int* count : {&summary.volumes, &summary.pages, &summary.failed, &summary.entries, &summary.linked_entries}) {
    *count = ReadInt(fields);
  }
  for (std::uint64_t kinds = fields.Count(); kinds > 0; --kinds) {
    const std::optional<PageKind> kind = PageKindNamed(fields.Text());
    if (!kind) ThrowDamaged();
    summary.kinds.emplace_back(*kind, ReadInt(fields));
  }
  for (std::uint64_t failures = fields.Count(); failures > 0; --failures) {
    Error failure;
    failure.code = ErrorCodeNamed(fields.Text());
    failure.message = fields.Text();
    failure.source = fields.Text();
    failure.page = ReadInt(fields);
    summary.failures.push_back(std::move(failure));
  }
  return summary;
}

}  // namespace benchleaf::store

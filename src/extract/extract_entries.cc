#include "extract/list_page.h"
#include "extract/list_words.h"
#include "extract/plain_text.h"

#include "benchleaf/extract/extract.h"

#include <cstddef>
#include <map>
#include <sstream>
#include <string>
#include <utility>

namespace benchleaf {
namespace {

std::vector<std::string> ListWords(const std::string& text) {
  std::vector<std::string> words;
  std::istringstream in(text);
  for (std::string word; in >> word;) {
    words.push_back(extract::ListWord(word));
  }
  return words;
}

// The designator behind SAME AS in a description, or empty.
std::string SameAs(const std::string& description, const Rules::Tables& tables) {
  const auto words = ListWords(description);
  for (std::size_t at = 0; at < words.size(); ++at) {
    const std::size_t length = extract::PhraseAt(words, at, extract::ListRole::kSame, tables);
    if (length != 0 && at + length < words.size()) {
      if (const auto designator =
              extract::RepairDesignator(words[at + length], tables, extract::LoneStrokes::kRefuse)) {
        return designator->Text();
      }
    }
  }
  return {};
}

// Gives rows that are the same as another what that one says.
void FollowSameAs(std::vector<Entry>& entries, const Rules::Tables& tables) {
  std::map<std::pair<std::string, std::string>, const Entry*> first;  // by designator and assembly
  for (const Entry& entry : entries) {
    first.try_emplace({entry.designator, entry.assembly}, &entry);
  }
  for (Entry& entry : entries) {
    const std::string other = SameAs(entry.description, tables);
    if (other.empty() || other == entry.designator) {
      continue;
    }
    const auto found = first.find({other, entry.assembly});
    if (found == first.end()) {
      continue;
    }
    if (entry.part_number.empty()) {
      entry.part_number = found->second->part_number;
    }
    if (entry.value.empty()) {
      entry.value = found->second->value;
    }
  }
}

}  // namespace

std::vector<Entry> ExtractEntries(const PageReading& reading, const Rules& rules, ListState& state) {
  return ExtractEntries(reading, ReadRows(reading, rules), rules, state);
}

std::vector<Entry> ExtractEntries(const PageReading& reading, const PageRows& page_rows, const Rules& rules,
                                  ListState& state) {
  const Rules::Tables& tables = rules.tables();
  // A heading on a page before this one changes what its rows are told by.
  std::vector<extract::ListPageRow> under_heading;
  const std::vector<extract::ListPageRow>* rows = page_rows.rows.get();
  if (state.assembly.empty()) {
    state.assembly = page_rows.assembly;
  } else {
    under_heading = extract::ReadListPage(reading, tables, state.assembly);
    rows = &under_heading;
  }
  std::vector<Entry> entries;
  for (const extract::ListPageRow& row : *rows) {
    Entry entry;
    entry.assembly = row.row.assembly;
    entry.description = row.fields.description;
    entry.part_number = row.fields.part_number;
    entry.quantity = row.fields.quantity;
    entry.value = row.fields.value;
    entry.box = ToScan(reading.frame, row.row.box);
    const double part = entry.part_number.empty() ? 1 : row.fields.part_confidence;
    entry.item = row.row.designators.empty() ? row.row.item : std::string();
    // A line of text beside a list names neither a designator, nor an item, nor a part number.
    if (row.row.designators.empty() && !(entry.part_number.empty() && entry.item.empty())) {
      entry.confidence = entry.item.empty() ? part : row.row.item_confidence * part;
      entries.push_back(entry);
    }
    for (const extract::Designator& designator : row.row.designators) {
      entry.designator = designator.Text();
      entry.confidence = row.row.designator_confidence * designator.sure * part;
      entries.push_back(entry);
    }
  }
  FollowSameAs(entries, tables);
  return entries;
}

}  // namespace benchleaf

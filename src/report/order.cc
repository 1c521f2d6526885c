#include "benchleaf/report/order.h"

#include "report/order_words.h"
#include "report/place.h"

#include "benchleaf/record/json.h"
#include "benchleaf/report/csv.h"
#include "benchleaf/report/text.h"
#include "benchleaf/report/where.h"

#include <algorithm>
#include <cstddef>
#include <vector>

namespace benchleaf {
namespace {

constexpr Column::Align kLeft = Column::Align::kLeft;
constexpr Column::Align kRight = Column::Align::kRight;
constexpr Column::Fit kWrap = Column::Fit::kWrap;
constexpr int kWidest = 100;  // of lines of text where the terminal does not say

std::string Listed(const std::vector<std::string>& texts, const std::string& separator) {
  std::string list;
  for (const std::string& text : texts) list += (list.empty() ? "" : separator) + text;
  return list;
}

std::vector<std::string> Names(const OrderItem& item) {
  std::vector<std::string> names;
  for (const OldPart& part : item.replaces) names.push_back(OldPartWords(part));
  return names;
}

std::size_t ToCheck(const OrderItem& item) {
  return static_cast<std::size_t>(std::count_if(item.replaces.begin(), item.replaces.end(),
                                                [](const OldPart& part) { return !ChecksOf(part).empty(); }));
}

void AddItems(std::string& text, const Order& order, const Look& look) {
  Table table({{"count", kRight},
               {"order"},
               {"value"},
               {"code"},
               {"rating"},
               {"replaces", kLeft, kWrap},
               {"old", kLeft, kWrap},
               {"list page", kLeft, kWrap},
               {"least sure", kRight},
               {"check"}});
  for (const OrderItem& item : order.items) {
    const std::size_t doubtful = ToCheck(item);
    table.Add({std::to_string(item.count), item.part.what, item.part.value, item.part.code, item.part.rating,
               Listed(Names(item), ", "), OldValues(item), ListPages(item), Sureness(LeastConfidence(item)),
               Cell(doubtful == 0 ? std::string() : std::to_string(doubtful) + " of " + std::to_string(item.count),
                    Paint::kWarning)});
  }
  text += table.Render(look);
}

void AddNotes(std::string& text, const Order& order, const Look& look) {
  Table table({{"order"}, {"note", kLeft, kWrap}});
  for (const OrderItem& item : order.items) {
    if (item.part.note.empty()) continue;
    table.Add({item.part.what + (item.part.value.empty() ? "" : " " + item.part.value), item.part.note});
  }
  if (!table.empty()) text += "\n" + table.Render(look);
}

// Parts of one row that are to be looked up for one reason: a row may name many.
struct Check {
  const OldPart* part = nullptr;
  std::vector<std::string> why;
  std::vector<std::string> names;
};

void AddCheck(std::vector<Check>& checks, const OldPart& part, const std::vector<std::string>& why) {
  const auto same = std::find_if(checks.begin(), checks.end(), [&](const Check& check) {
    return check.part->place.file == part.place.file && check.part->place.page == part.place.page &&
           check.part->box == part.box && check.part->row == part.row && check.why == why;
  });
  const std::string name = part.designator.empty() ? OldPartWords(part) : part.designator;
  std::vector<std::string>& names =
      same == checks.end() ? checks.emplace_back(Check{&part, why, {}}).names : same->names;
  // A can gives an item for each section, a rectifier two: one row to look up all the same.
  if (std::find(names.begin(), names.end(), name) == names.end()) names.push_back(name);
}

void AddChecks(std::string& text, const Order& order, const Look& look) {
  std::vector<Check> checks;
  for (const UnreadPart& unread : order.unread) AddCheck(checks, unread.part, {"not understood: " + unread.why});
  for (const OrderItem& item : order.items) {
    for (const OldPart& part : item.replaces) {
      const std::vector<std::string> why = ChecksOf(part);
      if (!why.empty()) AddCheck(checks, part, why);
    }
  }
  Table table({{"part", kLeft, kWrap},
               {"the row reads", kLeft, kWrap},
               {"list page", kLeft, kWrap},
               {"where"},
               {"sure", kRight},
               {"why", kLeft, kWrap}});
  for (const Check& check : checks) {
    table.Add({Listed(check.names, ", "), check.part->row, ShortPlace(check.part->place), RegionOnPage(check.part->box),
               Sureness(check.part->confidence), Listed(check.why, "; ")});
  }
  if (!table.empty()) text += "\nLook these up on the page first:\n" + table.Render(look);
}

void AddCautions(std::string& text, const Order& order, const Look& look) {
  const int width = std::max(20, look.columns > 0 ? look.columns : kWidest);
  text += "\n" + Painted("Before you order and before you open the set", Paint::kStrong, look) + "\n";
  for (const std::string& caution : order.cautions) {
    for (const std::string& line : Wrapped(caution, width)) text += line + "\n";
  }
}

Json Texts(const std::vector<std::string>& texts) {
  Json array = Json::Array();
  for (const std::string& one : texts) array.Add(one);
  return array;
}

std::string LineName(const OldPart& part) {
  if (!part.line) return "";
  switch (*part.line) {
    case LinePlace::kAcross:
      return "across";
    case LinePlace::kToChassis:
      return "to chassis";
    case LinePlace::kUnsaid:
      break;
  }
  return "not said how";
}

Json PartJson(const OldPart& part) {
  Json object = Json::Object();
  SetPlace(object, part.place);
  object.Set("box", ToJson(part.box));
  object.Set("where", WhereOnPage(part.box));
  object.Set("designator", part.designator);
  object.Set("item", part.item);
  object.Set("section", part.section);
  object.Set("sections", part.sections);
  object.Set("was", part.was);
  object.Set("row", part.row);
  object.Set("part_number", part.part_number);
  object.Set("confidence", part.confidence);
  object.Set("line", LineName(part));
  object.Set("check", Texts(ChecksOf(part)));
  return object;
}

}  // namespace

std::string OrderText(const std::string& set, const Order& order, const Look& look) {
  int parts = 0;
  for (const OrderItem& item : order.items) parts += item.count;
  std::string text = CleanText(set) + ": " + Counted(static_cast<std::size_t>(parts), "part") + " to order in " +
                     Counted(order.items.size(), "item") + ", " + Counted(order.unread.size(), "row") +
                     " not understood\n";
  AddItems(text, order, look);
  AddNotes(text, order, look);
  AddChecks(text, order, look);
  if (!order.left.empty()) {
    std::vector<std::string> left;
    for (const auto& [kind, rows] : order.left)
      left.push_back(std::string(Name(kind)) + " (" + std::to_string(rows) + ")");
    text += "\nLeft as they are: " + Listed(left, ", ") + "; `--only KIND` orders them\n";
  }
  AddCautions(text, order, look);
  return text;
}

std::string OrderCsv(const Order& order) {
  std::string csv = CsvRecord(
      {"count", "order", "value", "code", "rating", "replaces", "old", "list_pages", "confidence", "check", "note"});
  for (const OrderItem& item : order.items) {
    std::vector<std::string> checks;
    for (const OldPart& part : item.replaces) {
      const std::vector<std::string> of_part = ChecksOf(part);
      if (!of_part.empty()) checks.push_back(OldPartWords(part) + ": " + Listed(of_part, ", "));
    }
    csv += CsvRecord({std::to_string(item.count), item.part.what, item.part.value, item.part.code, item.part.rating,
                      Listed(Names(item), "; "), Listed(OldValues(item), "; "), Listed(ListPages(item), "; "),
                      Json(LeastConfidence(item)).Dump(), Listed(checks, "; "), item.part.note});
  }
  for (const UnreadPart& unread : order.unread) {
    csv += CsvRecord({"", "not understood", "", "", "", OldPartWords(unread.part), unread.part.row,
                      ShortPlace(unread.part.place), Json(unread.part.confidence).Dump(), unread.why, ""});
  }
  return csv;
}

std::string OrderJson(const std::string& set, const Order& order) {
  std::string lines;
  for (const OrderItem& item : order.items) {
    Json replaces = Json::Array();
    for (const OldPart& part : item.replaces) replaces.Add(PartJson(part));
    lines += Json::Object({{"type", "order-item"},
                           {"set", set},
                           {"kind", std::string(Name(item.part.kind))},
                           {"count", item.count},
                           {"order", item.part.what},
                           {"value", item.part.value},
                           {"code", item.part.code},
                           {"rating", item.part.rating},
                           {"note", item.part.note},
                           {"replaces", std::move(replaces)}})
                 .Dump() +
             "\n";
  }
  for (const UnreadPart& unread : order.unread) {
    lines +=
        Json::Object({{"type", "order-unread"}, {"set", set}, {"why", unread.why}, {"part", PartJson(unread.part)}})
            .Dump() +
        "\n";
  }
  return lines;
}

}  // namespace benchleaf

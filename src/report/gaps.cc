#include "benchleaf/report/gaps.h"

#include "report/place.h"

#include "benchleaf/record/json.h"
#include "benchleaf/report/csv.h"
#include "benchleaf/report/text.h"
#include "benchleaf/report/where.h"

#include <algorithm>
#include <array>
#include <cstddef>
#include <cstdint>

namespace benchleaf {
namespace {

std::string WhereWords(const GapPlace& place) {
  return ShortPlace(place.place) + (place.box ? ", " + RegionOnPage(*place.box) : std::string());
}

std::vector<std::string> Places(const Gap& gap) {
  std::vector<std::string> lines;
  for (const GapPlace& place : gap.places) lines.push_back(WhereWords(place));
  return lines;
}

std::string BadlyRead(const std::vector<PagePlace>& pages) {
  std::string words;
  for (const PagePlace& page : pages) words += (words.empty() ? "" : ", ") + ShortPlace(page);
  return words;
}

Paint PaintOf(GapGrade grade) {
  return grade == GapGrade::kMissing || grade == GapGrade::kDiffers ? Paint::kStrong : Paint::kPlain;
}

// "3 pages of parts lists (1 of them badly read)".
std::string CountedKind(const ManualGaps& gaps, PageKind kind) {
  const auto pages = std::count_if(gaps.pages.begin(), gaps.pages.end(),
                                   [&](const PageQuality& page) { return page.place.kind == kind; });
  const auto bad = std::count_if(gaps.pages.begin(), gaps.pages.end(),
                                 [&](const PageQuality& page) { return page.place.kind == kind && page.badly_read; });
  std::string words = Counted(static_cast<std::size_t>(pages), "page") + " of kind '" + std::string(Name(kind)) + "'";
  return bad > 0 ? words + " (" + std::to_string(bad) + " badly read)" : words;
}

Json PageJson(const PagePlace& place) {
  return Json::Object({{"file", place.file}, {"page", place.page}, {"printed_page", place.printed_number}});
}

std::string BoxWords(const std::optional<FractionBox>& box) {
  if (!box) return {};
  std::string words;
  for (const double side : {box->x, box->y, box->width, box->height}) {
    words += (words.empty() ? "" : ",") + Json(side).Dump();
  }
  return words;
}

}  // namespace

std::string SearchedText(const ManualGaps& gaps) {
  const auto bad = static_cast<std::size_t>(
      std::count_if(gaps.pages.begin(), gaps.pages.end(), [](const PageQuality& page) { return page.badly_read; }));
  std::string text = "searched: " + Counted(gaps.pages.size(), "page") + ", " + std::to_string(bad) +
                     " of them failed or badly read; " + CountedKind(gaps, PageKind::kSchematic) + ", " +
                     CountedKind(gaps, PageKind::kPartsList) + "\n";
  if (!gaps.HasList()) {
    text += "no parts list was found among them: what is drawn cannot be compared with a list\n";
  }
  // Items are called out on locators, too.
  if (!gaps.HasSchematic() && (gaps.entries > 0 || gaps.items == 0)) {
    text += "no schematic was found among them: what is listed cannot be compared with a drawing\n";
  }
  return text;
}

std::string GapsText(const ManualGaps& gaps, const Look& look) {
  std::string text = CleanText(gaps.manual == gaps.set ? gaps.set : gaps.set + ", " + gaps.manual) + ": " +
                     Counted(gaps.gaps.size(), "finding") + "\n" + SearchedText(gaps);
  Table table({{"kind"},
               {"grade"},
               {"what", Column::Align::kLeft, Column::Fit::kWrap},
               {"why", Column::Align::kLeft, Column::Fit::kWrap},
               {"where", Column::Align::kLeft, Column::Fit::kWrap},
               {"not read well, and may hold it", Column::Align::kLeft, Column::Fit::kWrap}});
  for (const Gap& gap : gaps.gaps) {
    table.Add({std::string(Name(gap.kind)), Cell(std::string(Name(gap.grade)), PaintOf(gap.grade)), gap.what,
               gap.reason, Places(gap), Cell(BadlyRead(gap.badly_read), Paint::kFaint)});
  }
  return text + table.Render(look);
}

std::string GapsCsv(const ManualGaps& gaps, bool with_header) {
  std::string csv = with_header ? CsvRecord({"set", "manual", "kind", "grade", "what", "why", "file", "page",
                                             "printed_page", "box", "badly_read"})
                                : std::string();
  for (const Gap& gap : gaps.gaps) {
    const std::vector<std::string> front = {
        gaps.set, gaps.manual, std::string(Name(gap.kind)), std::string(Name(gap.grade)), gap.what, gap.reason};
    const auto add = [&](const std::vector<std::string>& where) {
      std::vector<std::string> fields = front;
      fields.insert(fields.end(), where.begin(), where.end());
      fields.push_back(BadlyRead(gap.badly_read));
      csv += CsvRecord(fields);
    };
    if (gap.places.empty()) add({"", "", "", ""});
    for (const GapPlace& place : gap.places) {
      add({place.place.file, std::to_string(place.place.page), place.place.printed_number, BoxWords(place.box)});
    }
  }
  return csv;
}

std::string GapsJson(const ManualGaps& gaps) {
  Json pages = Json::Array();
  for (const PageQuality& page : gaps.pages) {
    Json object = PageJson(page.place);
    object.Set("page_kind", std::string(Name(page.place.kind)));
    object.Set("status", page.failure ? "failed" : page.badly_read ? "badly read" : "read");
    object.Set("sure_share", page.sure_share);
    pages.Add(std::move(object));
  }
  std::string lines = Json::Object({{"type", "searched"},
                                    {"set", gaps.set},
                                    {"manual", gaps.manual},
                                    {"list_pages", static_cast<std::int64_t>(gaps.list_pages)},
                                    {"entries", static_cast<std::int64_t>(gaps.entries)},
                                    {"items", static_cast<std::int64_t>(gaps.items)},
                                    {"schematic_pages", static_cast<std::int64_t>(gaps.schematic_pages)},
                                    {"pages", std::move(pages)}})
                          .Dump() +
                      "\n";
  for (const Gap& gap : gaps.gaps) {
    Json places = Json::Array();
    for (const GapPlace& place : gap.places) {
      Json object = PageJson(place.place);
      if (place.box) object.Set("box", ToJson(*place.box));
      object.Set("read", place.read);
      places.Add(std::move(object));
    }
    Json badly_read = Json::Array();
    for (const PagePlace& page : gap.badly_read) badly_read.Add(PageJson(page));
    lines += Json::Object({{"type", "gap"},
                           {"set", gaps.set},
                           {"manual", gaps.manual},
                           {"kind", std::string(Name(gap.kind))},
                           {"grade", std::string(Name(gap.grade))},
                           {"what", gap.what},
                           {"why", gap.reason},
                           {"places", std::move(places)},
                           {"badly_read", std::move(badly_read)}})
                 .Dump() +
             "\n";
  }
  return lines;
}

}  // namespace benchleaf

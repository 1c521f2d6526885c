#include "binder/document.h"
#include "binder/set_documents.h"

#include "benchleaf/report/text.h"

#include <algorithm>
#include <array>
#include <utility>

namespace benchleaf::binder {
namespace {

// In the order in which a person at the bench wants them.
constexpr std::array<std::pair<PageKind, const char*>, 13> kSections = {{
    {PageKind::kSchematic, "Schematics"},
    {PageKind::kPartsList, "Parts lists"},
    {PageKind::kPartsLocator, "Parts locators"},
    {PageKind::kTubeLayout, "Tube layouts"},
    {PageKind::kAlignment, "Alignment"},
    {PageKind::kWaveforms, "Waveforms"},
    {PageKind::kTroubleshooting, "Troubleshooting"},
    {PageKind::kBlockDiagram, "Block diagrams"},
    {PageKind::kSpecifications, "Specifications"},
    {PageKind::kText, "Text"},
    {PageKind::kContents, "Contents"},
    {PageKind::kCover, "Covers"},
    {PageKind::kOther, "Of a kind that was not told"},
}};

Markup Leaf(const Book& book, const BookPage& page, const PagePicture& picture) {
  Markup thumb = Tag("span", {{"class", "no-picture"}}, "no picture");
  if (picture.is_there()) {
    thumb = Empty("img", {{"src", ThumbFile(page)},
                          {"alt", ""},
                          {"loading", "lazy"},
                          {"width", std::to_string(picture.width)},
                          {"height", std::to_string(picture.height)}});
  }
  Markup words = Tag("span", {{"class", "leaf-name"}}, PageName(book, page));
  if (!page.facts.titles.empty()) words += Tag("span", {{"class", "leaf-title"}}, page.facts.titles.front());
  if (page.failure) words += Tag("span", {{"class", "warn"}}, "not read: " + page.failure->message);
  return Tag("li", Tag("a", {{"href", SheetFile(page)}, {"class", "leaf"}}, thumb + words));
}

Markup Manuals(const Book& book) {
  Markup list;
  for (const BookManual& manual : book.manuals) {
    Markup words = Tag("strong", manual.title.empty() ? manual.name : manual.title);
    for (const std::string& file : manual.files) words += Tag("span", {{"class", "file"}}, file);
    for (const Error& failure : manual.failures) {
      words += Tag("span", {{"class", "warn"}}, "not read: " + failure.ToString());
    }
    list += Tag("li", words);
  }
  return Tag("ul", {{"class", "manuals"}}, list);
}

std::size_t CountDrawn(const Book& book) {
  return static_cast<std::size_t>(
      std::count_if(book.parts.begin(), book.parts.end(), [](const BookPart& part) { return !part.drawn.empty(); }));
}

std::string Counts(const Book& book) {
  std::size_t tubes = 0;
  for (const ManualLineup& lineup : book.lineups) tubes += lineup.tubes.size();
  return Counted(book.pages.size(), "sheet") + ", " + Counted(book.parts.size(), "part") + " listed, " +
         std::to_string(CountDrawn(book)) + " of them found on a drawing, " + Counted(tubes, "tube");
}

// What a set without a drawing, or without a list, still gives.
Markup WhatIsMissing(const Book& book) {
  const auto has = [&](PageKind kind) {
    return std::any_of(book.pages.begin(), book.pages.end(),
                       [&](const BookPage& page) { return page.place.kind == kind && !page.failure; });
  };
  Markup notes;
  if (!has(PageKind::kSchematic)) {
    notes += Tag("p", {{"class", "note"}},
                 "No page of this set was told to be a schematic, so parts cannot be ringed on one. A schematic may "
                 "lie among the pages whose kind was not told, or in a volume that is not in the library: look through "
                 "the sheets below.");
  }
  if (book.parts.empty()) {
    notes += Tag("p", {{"class", "note"}},
                 "No rows of a parts list were read in this set. Under Parts stand the designators that are drawn.");
  }
  return notes;
}

}  // namespace

std::string PagesHtml(const Book& book, const std::vector<PagePicture>& pictures) {
  Markup sections;
  for (const auto& [kind, title] : kSections) {
    Markup leaves;
    std::size_t count = 0;
    for (std::size_t i = 0; i < book.pages.size(); ++i) {
      if (book.pages[i].place.kind != kind) continue;
      leaves += Leaf(book, book.pages[i], pictures[i]);
      ++count;
    }
    if (count == 0) continue;
    sections += Tag(
        "section", {{"class", "divider"}},
        Tag("h2", std::string(title) + " (" + std::to_string(count) + ")") + Tag("ul", {{"class", "leaves"}}, leaves));
  }
  const Markup main =
      SetHead(book, SetTab::kPages) + Tag("p", {{"class", "counts"}}, Counts(book)) + WhatIsMissing(book) + sections +
      Tag("section", {{"class", "divider"}}, Tag("h2", "From these scans") + Manuals(book)) + Cautions();
  return WholeHtml({book.set + ": pages", "../../", "set", main});
}

}  // namespace benchleaf::binder

#include "binder/find_index.h"

#include "binder/document.h"
#include "binder/markup.h"

#include "benchleaf/extract/extract.h"
#include "benchleaf/linking/designator_beside.h"
#include "benchleaf/report/text.h"

namespace benchleaf::binder {
namespace {

void AddLine(std::string& lines, char kind, const std::string& term, const std::string& words,
             const std::string& address, const std::string& more = {}) {
  if (term.empty()) return;
  lines += kind;
  for (const std::string* field : {&term, &words, &address, &more}) lines += '\t' + CleanText(*field);
  lines += '\n';
}

std::string Lines(const Book& book, const TubeUses& uses, TubeFiles& tubes) {
  std::string lines;
  AddLine(lines, 's', book.set, book.maker + ' ' + book.model, "index.html");
  for (const BookManual& manual : book.manuals) {
    if (manual.title != book.set) AddLine(lines, 'h', manual.title, "manual", "index.html");
  }
  for (const BookPage& page : book.pages) {
    for (const std::string& title : page.facts.titles) {
      AddLine(lines, 'h', title, ShortPageName(page) + ' ' + std::string(Name(page.place.kind)), SheetFile(page));
    }
  }
  for (const BookPart& part : book.parts) {
    const SpotPlace& place = part.drawn.empty() ? part.row : part.drawn.front();
    const bool named = !NameOf(part.entry).empty();
    AddLine(lines, 'p', named ? PartName(part.entry) : part.entry.part_number, PartWords(part.entry),
            SpotAddress(book, place), part.id);
  }
  for (const SpotPlace& place : book.unlisted) {
    const BookPage& page = book.pages[place.page];
    AddLine(lines, 'd', page.spots[place.spot].text, ShortPageName(page) + ' ' + std::string(Name(page.place.kind)),
            SpotAddress(book, place));
  }
  for (const auto& [type, sets] : uses) {
    for (const TubeUse& use : sets) {
      const std::string first = use.places.empty() ? std::string() : use.places.front().address;
      const std::string front = std::string(kSetsFolder) + '/' + book.folder + '/';
      AddLine(lines, 't', type, use.designators + (use.functions.empty() ? "" : ' ' + use.functions),
              first.empty() ? "tubes.html" : first.substr(front.size()), tubes.NameOf(type));
    }
  }
  return lines;
}

}  // namespace

void FindIndex::Add(const Book& book, const TubeUses& uses, TubeFiles& tubes) {
  if (!sets_.empty()) sets_ += ",\n";
  sets_ += '[' + ScriptString(CleanText(book.set)) + ',' + ScriptString(book.folder) + ',' +
           ScriptString(Lines(book, uses, tubes)) + ']';
}

std::string FindIndex::Script(const Rules& rules) const {
  const std::string characters = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ";
  std::string folded;
  for (const char c : characters) {
    const std::string one = FoldLookAlikes(std::string(1, c), rules);
    folded += one.size() == 1 ? one.front() : c;
  }
  return "binderFind({\"fold\":" + ScriptString(folded) + ",\"sets\":[\n" + sets_ + "\n]});\n";
}

}  // namespace benchleaf::binder

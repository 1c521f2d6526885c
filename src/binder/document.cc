#include "binder/document.h"

#include "benchleaf/linking/designator_beside.h"

#include <array>
#include <utility>

namespace benchleaf::binder {
namespace {

// file: is for a binder that is opened from a disk, where some browsers do not count its files as its own.
constexpr const char* kPolicy =
    "default-src 'none'; img-src 'self' file:; script-src 'self' file:; style-src 'self' file:; base-uri 'none'; "
    "form-action 'none'";

Markup Head(const Document& document) {
  return Tag("head", Empty("meta", {{"charset", "utf-8"}}) +
                         Empty("meta", {{"http-equiv", "Content-Security-Policy"}, {"content", kPolicy}}) +
                         Empty("meta", {{"name", "viewport"}, {"content", "width=device-width, initial-scale=1"}}) +
                         Empty("meta", {{"name", "color-scheme"}, {"content", "light dark"}}) +
                         Tag("title", document.title) +
                         Empty("link", {{"rel", "stylesheet"}, {"href", document.root + "look/binder.css"}}) +
                         Tag("script", {{"src", document.root + "look/binder.js"}, {"defer", ""}}, Markup()));
}

// The search and the buttons need the script, which shows them.
Markup Bar(const std::string& root) {
  const Markup search = Tag("div", {{"class", "search"}, {"role", "search"}, {"hidden", ""}},
                            Tag("label", {{"for", "search"}}, "Find in the binder") +
                                Empty("input", {{"id", "search"},
                                                {"type", "search"},
                                                {"autocomplete", "off"},
                                                {"spellcheck", "false"},
                                                {"placeholder", "C12, 6AU6, a part number, a set"},
                                                {"aria-controls", "found"}}) +
                                Tag("div", {{"id", "found"}, {"hidden", ""}}, Markup()));
  return Tag("header", {{"class", "bar"}},
             Tag("a", {{"class", "skip"}, {"href", "#main"}}, "To the page") +
                 Tag("nav", {{"aria-label", "Binder"}},
                     LinkTo(root + "index.html", "Sets") + LinkTo(root + "tubes.html", "Tubes") +
                         LinkTo(root + "help.html", "Help")) +
                 search +
                 Tag("div", {{"class", "switches"}, {"hidden", ""}},
                     Tag("button", {{"type", "button"}, {"id", "lamp"}}, "Dark") +
                         Tag("button", {{"type", "button"}, {"id", "keys"}}, "Keys on")));
}

std::string WithoutSpaces(std::string text) {
  std::erase(text, ' ');
  return text;
}

constexpr const char* kCautionRead =
    "Values and places were read by a machine from bad scans: check them on the page before you act on them.";
constexpr const char* kCautionCodes = "Follow local codes, and leave what they reserve for licensed people to them.";

}  // namespace

std::string WholeHtml(const Document& document) {
  const Markup body = Tag("body", {{"class", document.style}, {"data-root", document.root}},
                          Bar(document.root) + Tag("main", {{"id", "main"}, {"tabindex", "-1"}}, document.main) +
                              Tag("footer", {{"class", "foot"}}, CautionLine()));
  return "<!doctype html>\n" + Tag("html", {{"lang", "en"}}, Head(document) + body).html();
}

Markup SetHead(const Book& book, SetTab open) {
  struct Tab {
    SetTab tab;
    const char* file;
    const char* name;
  };
  constexpr std::array<Tab, 5> kTabs = {{{SetTab::kPages, "index.html", "Pages"},
                                         {SetTab::kParts, "parts.html", "Parts"},
                                         {SetTab::kTubes, "tubes.html", "Tubes"},
                                         {SetTab::kGaps, "gaps.html", "Gaps"},
                                         {SetTab::kPaper, "paper.html", "On paper"}}};
  Markup tabs;
  for (const Tab& tab : kTabs) {
    std::vector<Attribute> attributes = {{"href", tab.file}};
    if (tab.tab == open) attributes.push_back({"aria-current", "page"});
    tabs += Tag("a", attributes, tab.name);
  }
  Markup name = Tag("h1", book.set);
  if (open == SetTab::kSheet) name = Tag("p", {{"class", "set-name"}}, LinkTo("index.html", book.set));
  return Tag("div", {{"class", "set-head"}}, name + Tag("nav", {{"class", "tabs"}, {"aria-label", "This set"}}, tabs));
}

Markup Cautions() {
  Markup list;
  for (const char* caution :
       {"The chassis may be live: use an isolating transformer, and pull the plug before you touch anything.",
        "Capacitors hold a charge after the plug is out: discharge every filter capacitor, and a picture tube's anode.",
        "A picture tube can implode. Rectifiers and regulators of high-voltage supplies can give X-rays.",
        "Old parts can hold asbestos and PCBs: do not open, saw, drill or sand them.", kCautionRead, kCautionCodes}) {
    list += Tag("li", caution);
  }
  return Tag("section", {{"class", "caution"}, {"aria-labelledby", "caution"}},
             Tag("h2", {{"id", "caution"}}, "Before you open a set") + Tag("ul", list));
}

Markup CautionLine() {
  return Tag("p", {{"class", "caution-line"}},
             Tag("strong", "The chassis may be live, and capacitors hold a charge.") + " " + kCautionRead + " " +
                 kCautionCodes);
}

std::string PageName(const Book& book, const BookPage& page) {
  std::string name = "Sheet " + std::to_string(page.number);
  if (!page.place.printed_number.empty()) name += ", printed page " + page.place.printed_number;
  if (book.manuals[page.manual].volumes > 1) name += ", volume " + std::to_string(page.volume);
  if (book.manuals.size() > 1) name += ", " + page.place.manual;
  return name;
}

std::string ShortPageName(const BookPage& page) { return "sheet " + std::to_string(page.number); }

std::string PartWords(const Entry& entry) {
  std::string words = entry.description;
  for (const std::string* more : {&entry.value, &entry.part_number}) {
    if (more->empty() || WithoutSpaces(words).find(WithoutSpaces(*more)) != std::string::npos) continue;
    words += (words.empty() ? "" : ", ") + *more;
  }
  return words;
}

std::string PartName(const Entry& entry) {
  const std::string name = NameOf(entry);
  return name.empty() ? "(none)" : name;
}

Markup DataTable(const std::string& name, const std::string& id, const std::vector<TableColumn>& columns,
                 const Markup& rows) {
  Markup heads;
  for (const TableColumn& column : columns) {
    heads += Tag("th", {{"scope", "col"}, {"class", column.style}}, column.title);
  }
  return Tag("div", {{"class", "frame"}, {"role", "region"}, {"aria-label", name}, {"tabindex", "0"}},
             Tag("table", {{"id", id}, {"class", "data"}},
                 Tag("caption", {{"class", "unseen"}}, name) + Tag("thead", Tag("tr", heads)) + Tag("tbody", rows)));
}

}  // namespace benchleaf::binder

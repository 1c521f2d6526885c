#include "binder/markup.h"

#include "benchleaf/record/json.h"
#include "benchleaf/report/text.h"

#include <algorithm>
#include <array>

namespace benchleaf::binder {
namespace {

// Elements that have no end tag (HTML Living Standard, section 13.1.2, "void elements").
bool IsVoid(std::string_view name) {
  constexpr std::array<std::string_view, 7> kVoid = {"br", "hr", "img", "input", "link", "meta", "col"};
  return std::find(kVoid.begin(), kVoid.end(), name) != kVoid.end();
}

bool StartsBlock(std::string_view name) {
  constexpr std::array<std::string_view, 18> kInline = {"a",    "b",     "span", "em",    "strong", "code",
                                                        "kbd",  "small", "rect", "image", "td",     "th",
                                                        "abbr", "time",  "i",    "label", "img",    "button"};
  return std::find(kInline.begin(), kInline.end(), name) == kInline.end();
}

void Replace(std::string& text, std::string_view from, std::string_view to) {
  for (std::size_t at = text.find(from); at != std::string::npos; at = text.find(from, at + to.size())) {
    text.replace(at, from.size(), to);
  }
}

}  // namespace

std::string Escaped(std::string_view text) {
  std::string escaped;
  for (const char c : CleanText(text)) {
    switch (c) {
      case '&':
        escaped += "&amp;";
        break;
      case '<':
        escaped += "&lt;";
        break;
      case '>':
        escaped += "&gt;";
        break;
      case '"':
        escaped += "&quot;";
        break;
      case '\'':
        escaped += "&#39;";
        break;
      default:
        escaped += c;
    }
  }
  return escaped;
}

std::string ScriptString(std::string_view text) {
  std::string literal = Json(std::string(text)).Dump();
  // "</script>" and "<!--" would end or change a script that stands in a page; the two separators end a line in
  // JavaScript before ECMAScript 2019.
  Replace(literal, "<", "\\u003c");
  Replace(literal, ">", "\\u003e");
  Replace(literal, "\xE2\x80\xA8", "\\u2028");
  Replace(literal, "\xE2\x80\xA9", "\\u2029");
  return literal;
}

std::string Slug(std::string_view text, std::size_t longest, std::string_view otherwise) {
  std::string slug;
  for (const char c : text) {
    const bool capital = c >= 'A' && c <= 'Z';
    const bool keeps = (c >= '0' && c <= '9') || (c >= 'a' && c <= 'z');
    if (capital) {
      slug += static_cast<char>(c - 'A' + 'a');
    } else if (keeps) {
      slug += c;
    } else if (!slug.empty() && slug.back() != '-') {
      slug += '-';
    }
    if (slug.size() == longest) break;
  }
  while (!slug.empty() && slug.back() == '-') slug.pop_back();
  return slug.empty() ? std::string(otherwise) : slug;
}

Markup Tag(std::string_view name, const std::vector<Attribute>& attributes, const Markup& inside) {
  Markup element;
  std::string& html = element.html_;
  html.reserve(inside.html_.size() + 32);
  html += '<';
  html += name;
  for (const Attribute& attribute : attributes) {
    html += ' ' + attribute.name + "=\"" + Escaped(attribute.value) + '"';
  }
  html += '>';
  if (IsVoid(name)) return element;
  html += inside.html_;
  html += "</";
  html += name;
  html += '>';
  // A line a block, so that a person can read the file and a diff of two binders says something.
  if (StartsBlock(name)) html += '\n';
  return element;
}

Markup Tag(std::string_view name, const Markup& inside) { return Tag(name, {}, inside); }

Markup Empty(std::string_view name, const std::vector<Attribute>& attributes) {
  return Tag(name, attributes, Markup());
}

Markup LinkTo(const std::string& to, const Markup& inside) { return Tag("a", {{"href", to}}, inside); }

}  // namespace benchleaf::binder

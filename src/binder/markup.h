// HTML as a value that cannot be written wrongly: foreign text becomes markup only by way of escaping.

#ifndef BENCHLEAF_SRC_BINDER_MARKUP_H_
#define BENCHLEAF_SRC_BINDER_MARKUP_H_

#include <string>
#include <string_view>
#include <vector>

namespace benchleaf::binder {

// The text made harmless (CleanText) and escaped, for between tags and for attributes in double quotes.
std::string Escaped(std::string_view text);

// A JavaScript string literal of the text, in which nothing can end a script, a line or the string. Lines and tabs of
// the text stay, so foreign parts of it are cleaned (CleanText) before they are put together.
std::string ScriptString(std::string_view text);

// A text of ASCII letters, figures and hyphens that a name in an address may be made of; at most `longest`
// characters; `otherwise` when nothing is left.
std::string Slug(std::string_view text, std::size_t longest, std::string_view otherwise);

// Name and value; an attribute whose value is empty is written all the same (`hidden=""`).
struct Attribute {
  std::string name;
  std::string value;
};

// Whole elements and text between them.
class Markup {
 public:
  Markup() = default;
  // Text, escaped.
  Markup(const std::string& text) : html_(Escaped(text)) {}        // NOLINT(google-explicit-constructor)
  Markup(std::string_view text) : html_(Escaped(text)) {}          // NOLINT(google-explicit-constructor)
  Markup(const char* text) : html_(Escaped(std::string(text))) {}  // NOLINT(google-explicit-constructor)

  Markup& operator+=(const Markup& next) {
    html_ += next.html_;
    return *this;
  }
  friend Markup operator+(Markup first, const Markup& second) {
    first += second;
    return first;
  }

  bool empty() const { return html_.empty(); }
  const std::string& html() const { return html_; }

 private:
  friend Markup Tag(std::string_view name, const std::vector<Attribute>& attributes, const Markup& inside);
  std::string html_;
};

// An element. Names of elements and attributes are the program's own.
Markup Tag(std::string_view name, const std::vector<Attribute>& attributes, const Markup& inside);
Markup Tag(std::string_view name, const Markup& inside);

// An element with nothing inside: <img>, <rect></rect>.
Markup Empty(std::string_view name, const std::vector<Attribute>& attributes);

// A link to an address of the binder.
Markup LinkTo(const std::string& to, const Markup& inside);

}  // namespace benchleaf::binder

#endif  // BENCHLEAF_SRC_BINDER_MARKUP_H_

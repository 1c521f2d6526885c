#include "extract/plain_text.h"

#include "benchleaf/core/utf8.h"

#include <algorithm>
#include <array>
#include <utility>

namespace benchleaf::extract {
namespace {

// Sorted by nothing in particular: the list is short.
constexpr std::array<std::pair<std::string_view, std::string_view>, 40> kSpellings = {{
    {"\u2010", "-"},   {"\u2011", "-"},   {"\u2012", "-"},   {"\u2013", "-"},   {"\u2014", "-"},   {"\u2015", "-"},
    {"\u2212", "-"},   {"\u00ad", "-"},   {"\u00b5", "u"},   {"\u03bc", "u"},   {"\u03a9", "OHM"}, {"\u2126", "OHM"},
    {"\u00bd", "1/2"}, {"\u00bc", "1/4"}, {"\u00be", "3/4"}, {"\u2018", "'"},   {"\u2019", "'"},   {"\u201a", ","},
    {"\u2032", "'"},   {"\u00b4", "'"},   {"`", "'"},        {"\u201c", "\""},  {"\u201d", "\""},  {"\u201e", "\""},
    {"\u2033", "\""},  {"\u00ab", "\""},  {"\u00bb", "\""},  {"\u2026", "..."}, {"\u00b7", "."},   {"\u2022", "."},
    {"\u2219", "."},   {"\u223c", "~"},   {"\u02dc", "~"},   {"\u00d7", "x"},   {"\u2044", "/"},   {"\u00a0", ""},
    {"\u2020", "*"},   {"\u2021", "*"},   {" ", ""},         {"\t", ""},
}};

// Whether a byte is a character that stays as it is: nearly all are, and PlainText is asked for every word of a page
// several times.
constexpr bool StaysPlain(char c) { return static_cast<unsigned char>(c) < 0x80 && c != '`' && c != ' ' && c != '\t'; }

// Asked of every word's ends several times over, so a table.
constexpr auto kIsEdge = [] {
  std::array<bool, 256> edges{};
  for (const char c : std::string_view(".,;:()[]{}<>*'\"-_=~+|/\\!^#")) {
    edges[static_cast<unsigned char>(c)] = true;
  }
  return edges;
}();

bool IsEdge(char c) { return kIsEdge[static_cast<unsigned char>(c)]; }

}  // namespace

std::string Upper(std::string_view text) {
  std::string upper(text);
  std::transform(upper.begin(), upper.end(), upper.begin(), ToUpper);
  return upper;
}

std::string PlainText(std::string_view text) {
  const auto* const first = std::find_if_not(text.begin(), text.end(), StaysPlain);
  std::string plain(text.begin(), first);
  for (std::size_t at = plain.size(); at < text.size();) {
    if (StaysPlain(text[at])) {
      plain += text[at++];
      continue;
    }
    const std::string_view character = text.substr(at, CharacterLength(text, at));
    const auto* spelling =
        std::find_if(kSpellings.begin(), kSpellings.end(), [&](const auto& pair) { return pair.first == character; });
    plain += spelling == kSpellings.end() ? character : spelling->second;
    at += character.size();
  }
  return plain;
}

std::string Trimmed(std::string_view plain) { return std::string(TrimmedView(plain)); }

std::string_view TrimmedView(std::string_view plain) {
  while (!plain.empty() && IsEdge(plain.back())) {
    plain.remove_suffix(1);
  }
  while (!plain.empty() && IsEdge(plain.front())) {
    if (plain.front() == '.' && plain.size() > 1 && IsDigit(plain[1])) {
      break;
    }
    plain.remove_prefix(1);
  }
  return plain;
}

}  // namespace benchleaf::extract

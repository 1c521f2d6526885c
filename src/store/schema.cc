#include "store/schema.h"

#include "benchleaf/core/fnv.h"

#include <algorithm>
#include <cmath>

namespace benchleaf::store {

namespace {

constexpr std::size_t kLongestWhole = 220;
constexpr std::size_t kHeadOfLong = 100;

// It guards against names that are alike, not against malice.
std::string Digest(std::string_view text) {
  Fnv fnv;
  fnv.Add(text);
  return fnv.Hex();
}

std::string Term(std::string_view prefix, std::string_view text) {
  std::string term(prefix);
  const auto zeros = static_cast<std::size_t>(std::count(text.begin(), text.end(), '\0'));
  if (text.size() + zeros <= kLongestWhole) return term.append(text);
  return term.append(text.substr(0, kHeadOfLong)).append("...").append(Digest(text));
}

std::string ManualName(const std::string& set, const std::string& manual) {
  return std::to_string(set.size()) + ':' + set + manual;
}

char Letter(TermKind kind) {
  switch (kind) {
    case TermKind::kDesignator:
      return 'D';
    case TermKind::kTube:
      return 'T';
    case TermKind::kPartNumber:
      return 'P';
    case TermKind::kSemiconductor:
      return 'S';
    case TermKind::kItem:
      return 'I';
    case TermKind::kValue:
      break;
  }
  return 'V';
}

}  // namespace

std::string HeadTerm(const std::string& set, const std::string& manual) { return Term("H", ManualName(set, manual)); }
std::string SetHeadsTerm(const std::string& set) { return Term("N", set); }
std::string ManualTerm(const std::string& set, const std::string& manual) { return Term("M", ManualName(set, manual)); }
std::string SetTerm(const std::string& set) { return Term("S", set); }
std::string KindTerm(PageKind kind) { return Term("K", Name(kind)); }
std::string PlaceTerm(const std::string& file, int page) { return Term("P", std::to_string(page) + ':' + file); }
std::string KeyTerm(const std::string& content_key) { return Term("Q", content_key); }
std::string ExactTerm(TermKind kind, std::string_view text) { return Term(std::string{'E', Letter(kind)}, text); }
std::string FormTerm(TermKind kind, std::string_view form) { return Term(std::string{'F', Letter(kind)}, form); }
std::string FoldedTerm(std::string_view folded) { return Term("L", folded); }
std::string MisreadTerm(std::string_view folded) { return Term("W", folded); }

std::string PlaceValue(const std::string& set, const std::string& manual, const std::string& file, int page) {
  std::string value = set + '\0' + manual + '\0' + file + '\0';
  const auto number = static_cast<std::uint32_t>(page);
  for (const unsigned shift : {24U, 16U, 8U, 0U}) value += static_cast<char>(number >> shift & 0xFFU);
  return value;
}

Xapian::termcount ConfidenceUnits(double confidence) {
  constexpr double kUnits = 1e4;
  return static_cast<Xapian::termcount>(std::max(1L, std::lround(std::clamp(confidence, 0.0, 1.0) * kUnits)));
}

}  // namespace benchleaf::store

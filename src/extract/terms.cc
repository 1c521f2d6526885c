#include "extract/terms.h"

#include "extract/plain_text.h"
#include "extract/semiconductor.h"
#include "extract/value.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <optional>

namespace benchleaf::extract {
namespace {

constexpr double kAlternative = 0.85;    // an alternative is less sure than the reader's first choice
constexpr double kRepairedBelow = 0.45;  // terms less sure than this give way to any alternative

double SureOfValue(const Value& value) {
  const char last = value.canonical.back();
  const bool long_unit =
      IsUpper(last) && value.canonical.size() > 1 && IsUpper(value.canonical[value.canonical.size() - 2]);
  if (long_unit || value.rkm) {
    return 0.95;
  }
  constexpr std::string_view kCommon = "KMVW";
  return kCommon.find(last) != std::string_view::npos ? 0.9 : 0.6;
}

// 1.5, 6.8 and the like: IEC 60063, series E24.
bool IsPreferred(double mantissa) {
  constexpr int kSeries[] = {10, 11, 12, 13, 15, 16, 18, 20, 22, 24, 27, 30,
                             33, 36, 39, 43, 47, 51, 56, 62, 68, 75, 82, 91};
  const auto tenths = static_cast<int>(std::lround(mantissa * 10));
  return std::find(std::begin(kSeries), std::end(kSeries), tenths) != std::end(kSeries);
}

// 6K8 is a tube and a value. It is the value where the page writes values so, or the letter is small.
bool IsRkmRatherThanTube(const std::string& text, const Surroundings& around) {
  const std::string upper = Upper(text);
  const auto value = ParseValue(upper);
  if (!value || !value->rkm || upper.size() != 3) {
    return false;
  }
  if (IsLower(text[1])) {
    return true;
  }
  const double mantissa = (upper[0] - '0') + (upper[2] - '0') / 10.0;
  return around.rkm_in_use && around.tubes == TubeContext::kNone && IsPreferred(mantissa);
}

// CV4024: too high a number for the variable capacitors that CV also stands for.
bool IsServiceTube(const std::string& type) { return type.compare(0, 2, "CV") == 0 && type.size() >= 5; }

std::optional<Term> TubeTerm(const std::string& text, const Rules::Tables& tables, const Surroundings& around) {
  const auto tube = ParseTubeType(text, tables, around.tubes);
  return tube ? std::optional(Term{TermKind::kTube, tube->type, tube->sure}) : std::nullopt;
}

// A whole text as one term, without repair first.
std::optional<Term> WholeTerm(const std::string& text, const Rules::Tables& tables, const Surroundings& around) {
  const std::string upper = Upper(text);
  const auto value = ParseValue(text);
  if (value && IsRkmRatherThanTube(text, around)) {
    return Term{TermKind::kValue, value->canonical, SureOfValue(*value)};
  }
  const auto tube = ParseTubeType(upper, tables, around.tubes);
  if (tube && !tube->repaired && tube->sure >= 0.8 && (tube->known || IsServiceTube(tube->type))) {
    return Term{TermKind::kTube, tube->type, tube->sure};
  }
  if (IsSemiconductor(upper)) {
    return Term{TermKind::kSemiconductor, upper, 0.95};
  }
  if (const auto designator = ParseDesignator(text, tables)) {
    return Term{TermKind::kDesignator, designator->Text(), designator->sure};
  }
  if (value) {
    return Term{TermKind::kValue, value->canonical, SureOfValue(*value)};
  }
  if (tube && tube->sure >= 0.55) {
    return Term{TermKind::kTube, tube->type, tube->sure};
  }
  const std::string number = WithNoughts(upper);
  if (const double sure = SureOfPartNumber(number, tables, around.parts); sure > 0) {
    return Term{TermKind::kPartNumber, number, sure};
  }
  if (const auto repaired = SemiconductorLookingLike(text, tables)) {
    return Term{TermKind::kSemiconductor, repaired->type, repaired->sure};
  }
  if (const auto repaired = RepairDesignator(text, tables, around.lone_strokes)) {
    return Term{TermKind::kDesignator, repaired->Text(), repaired->sure};
  }
  return tube ? std::optional(Term{TermKind::kTube, tube->type, tube->sure}) : std::nullopt;
}

// A leading dot and figures: old schematics leave the unit out (.05).
std::optional<Term> DecimalTerm(const std::string& text) {
  if (text.size() < 3 || !IsValueNumber(text) || (text[0] != '.' && text.compare(0, 2, "0.") != 0)) {
    return std::nullopt;
  }
  return Term{TermKind::kValue, text, 0.6};
}

void Append(std::vector<Term>& terms, std::vector<Term> more) {
  for (Term& term : more) {
    terms.push_back(std::move(term));
  }
}

// P/A7 and WR/INT: the names of a pin or wire, of which one half may look like a designator. R1/C5 are two, and R5/47K
// is one with its value.
bool IsSlashedName(const std::string& text, std::size_t sign, const Rules::Tables& tables) {
  if (text[sign] != '/') {
    return false;
  }
  const auto is_word = [&](const std::string& half) {
    return !half.empty() && IsLetter(half.front()) && !RepairDesignator(half, tables, LoneStrokes::kRefuse);
  };
  return is_word(Trimmed(text.substr(0, sign))) || is_word(Trimmed(text.substr(sign + 1)));
}

// The parts on both sides of the signs that stand between terms; nothing for a text that has none.
std::vector<Term> TermsBetweenSigns(const std::string& text, const Rules::Tables& tables, const Surroundings& around) {
  const std::size_t sign = text.find_first_of(":,;=()/+&");
  if (sign == std::string::npos) {
    // V1-6AU6: a designator, a dash, its type.
    const std::size_t dash = text.find('-');
    if (dash == std::string::npos || dash == 0 || dash + 3 >= text.size()) {
      return {};
    }
    const auto designator = RepairDesignator(text.substr(0, dash), tables, LoneStrokes::kRefuse);
    if (!designator) {
      return {};
    }
    Surroundings behind = around;
    behind.tubes = designator->letters == "V" ? TubeContext::kTube : TubeContext::kNone;
    if (const auto tube = TubeTerm(text.substr(dash + 1), tables, behind); tube && tube->sure >= 0.7) {
      return {Term{TermKind::kDesignator, designator->Text(), designator->sure}, *tube};
    }
    return {};
  }
  if (around.ranges == RangeStyle::kDrawing && IsSlashedName(text, sign, tables)) {
    return {};
  }
  std::vector<Term> terms;
  Surroundings rest = around;
  const std::string front = Trimmed(text.substr(0, sign));
  if (!front.empty()) {
    terms = TermsIn(front, tables, around);
    const bool tube_before =
        !terms.empty() && terms.back().kind == TermKind::kDesignator && terms.back().text[0] == 'V';
    rest.tubes = tube_before ? TubeContext::kTube : around.tubes;
  }
  if (text[sign] == '(' && !terms.empty() && terms.back().kind == TermKind::kSemiconductor) {
    return terms;  // the gain group: 2SC458(C)
  }
  if (!terms.empty() && terms.back().kind == TermKind::kTube) {
    rest.tubes = TubeContext::kTube;  // another name of it: 12AX7(7025)
  }
  const std::string behind = Trimmed(text.substr(sign + 1));
  if (!behind.empty()) {
    Append(terms, TermsIn(behind, tables, rest));
  }
  return terms;
}

// A value with its unit that another reading of the piece is, and likelier than the piece's own: the form of a
// designator was preferred while the page was read, and no designator reads as 220K by chance.
std::optional<Term> LikelierValue(const Piece& piece) {
  constexpr std::size_t kShortest = 3;
  for (const Alternative& alternative : piece.alternatives) {
    const std::string text = Trimmed(alternative.text);
    if (alternative.confidence <= piece.confidence || text.size() < kShortest || !IsDigit(text.front()) ||
        !IsLetter(text.back())) {
      continue;
    }
    if (const auto value = ParseValue(text)) {
      return Term{TermKind::kValue, value->canonical, 1};
    }
  }
  return std::nullopt;
}

bool IsDesignatorList(const std::string& text) {
  return text.find_first_of(",-~&/") != std::string::npos || text.find("THRU") != std::string::npos;
}

std::vector<Term> FreshTermsIn(const std::string& text, const Rules::Tables& tables, const Surroundings& around) {
  if (const auto whole = WholeTerm(text, tables, around)) {
    return {*whole};
  }
  if (IsDesignatorList(text)) {
    if (const auto several = ExpandDesignators(text, tables, around.ranges)) {
      std::vector<Term> terms;
      for (const Designator& designator : *several) {
        terms.push_back({TermKind::kDesignator, designator.Text(), designator.sure});
      }
      return terms;
    }
  }
  if (const auto decimal = DecimalTerm(text)) {
    return {*decimal};
  }
  return TermsBetweenSigns(text, tables, around);
}

// The surroundings and the text, for the memo: two bits for each thing that the surroundings say. Short: nearly all
// keys then lie in the string itself.
std::string KeyOf(const Surroundings& around, std::string_view text) {
  unsigned said = around.rkm_in_use ? 1 : 0;
  for (const unsigned one : {static_cast<unsigned>(around.ranges), static_cast<unsigned>(around.parts),
                             static_cast<unsigned>(around.tubes), static_cast<unsigned>(around.lone_strokes)}) {
    said = said << 2U | one;
  }
  std::string key{static_cast<char>(said & 0xFFU), static_cast<char>(said >> 8U)};
  return key.append(text);
}

}  // namespace

std::vector<Term> TermsIn(std::string_view plain, const Rules::Tables& tables, const Surroundings& around) {
  const std::string_view text = TrimmedView(plain);
  // Longer texts are runs of leaders or of several columns; the limit also bounds the recursion through
  // TermsBetweenSigns.
  if (text.size() < 2 || text.size() > 60) {
    return {};
  }
  return tables.terms_known.Of(KeyOf(around, text), [&] { return FreshTermsIn(std::string(text), tables, around); });
}

std::vector<Term> TermsOf(const Piece& piece, const Rules::Tables& tables, const Surroundings& around) {
  std::vector<Term> terms = TermsIn(piece.text, tables, around);
  if (terms.size() == 1 && terms.front().kind == TermKind::kDesignator) {
    if (const auto value = LikelierValue(piece)) {
      return {*value};
    }
  }
  const bool doubtful = terms.empty() || (terms.size() == 1 && terms.front().sure < kRepairedBelow);
  for (const auto& [alternative, confidence] : piece.alternatives) {
    const std::string text = Trimmed(alternative);
    if (text.size() < 2) {
      continue;
    }
    const auto strict = ParseDesignator(text, tables);
    const auto tube = strict ? std::nullopt : ParseTubeType(text, tables, around.tubes);
    const bool sure_tube = tube && tube->known && tube->sure >= 0.95;
    if (!strict && !sure_tube) {
      continue;
    }
    const Term other = strict ? Term{TermKind::kDesignator, strict->Text(), strict->sure}
                              : Term{TermKind::kTube, tube->type, tube->sure};
    if (terms.size() == 1 && terms.front().text == other.text) {
      terms.front().sure = std::max(terms.front().sure, other.sure * kAlternative);  // two readings agree
      return terms;
    }
    if (doubtful) {
      // It is no surer than its own reading, however sure another may be of what is no term.
      const double own = piece.confidence > 0 ? std::min(1.0, confidence / piece.confidence) : 0;
      return {Term{other.kind, other.text, other.sure * own}};
    }
  }
  return terms;
}

}  // namespace benchleaf::extract

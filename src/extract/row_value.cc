#include "extract/row_value.h"

#include "extract/plain_text.h"
#include "extract/spoiled_value.h"
#include "extract/value.h"

#include <cstddef>
#include <optional>

namespace benchleaf::extract {
namespace {

// Without the punctuation round it, but for a dash right before a figure: there the print may have had a dot.
std::string Amount(std::string_view text) {
  const bool dashed = text.size() > 1 && text[0] == '-' && IsDigit(text[1]);
  return (dashed ? "-" : "") + Trimmed(text);
}

std::string_view WithoutDash(std::string_view amount) {
  return amount.substr(!amount.empty() && amount[0] == '-' ? 1 : 0);
}

// The value that a text holds. The dot of ".1 MFD" often blurs into a dash; no capacitance is negative, and a dash in
// front of micromicrofarads or of a voltage is only dirt or a sign.
std::optional<Value> ValueIn(std::string_view text) {
  constexpr double kLeastWithDot = 0.5e-9;  // .0005 MFD
  const std::string_view plain = WithoutDash(text);
  if (auto dotted = plain == text ? std::nullopt : ParseValue("." + std::string(plain));
      dotted && dotted->quantity == Quantity::kCapacitance && dotted->magnitude >= kLeastWithDot) {
    return dotted;
  }
  return ParseValue(plain);
}

// The description cut at commas and brackets that do not belong to a number: "470K,1/2W" gives two texts; so does
// "2.2MEG.1/2W", whose comma lost its tail.
std::vector<std::string> Texts(const std::vector<Piece>& pieces) {
  std::vector<std::string> texts;
  for (const Piece& piece : pieces) {
    std::string text;
    for (std::size_t i = 0; i < piece.text.size(); ++i) {
      const char c = piece.text[i];
      const bool thousands = c == ',' && i > 0 && IsDigit(piece.text[i - 1]) && i + 3 < piece.text.size() &&
                             IsDigit(piece.text[i + 1]) && IsDigit(piece.text[i + 2]) && IsDigit(piece.text[i + 3]);
      const bool lost_tail =
          c == '.' && i > 0 && IsLetter(piece.text[i - 1]) && i + 1 < piece.text.size() && IsDigit(piece.text[i + 1]);
      const bool decimal =
          c == ',' && Trimmed(text).size() == 1 && BeginsWithDecimalComma(std::string_view(piece.text).substr(i - 1));
      if ((c == ',' && !thousands && !decimal) || lost_tail || c == ';' || c == '(' || c == ')' || c == ':') {
        texts.push_back(Amount(text));
        text.clear();
      } else {
        text += c;
      }
    }
    texts.push_back(Amount(text));
  }
  return texts;
}

bool Wanted(const Value& value, std::optional<Quantity> quantity) {
  if (quantity) {
    return value.quantity == *quantity;
  }
  return value.quantity == Quantity::kResistance || value.quantity == Quantity::kCapacitance ||
         value.quantity == Quantity::kInductance || value.quantity == Quantity::kFrequency;
}

// The first value of that quantity of which a letter is spoiled.
std::optional<Value> SpoiledIn(const std::vector<std::string>& texts, Quantity quantity) {
  for (std::size_t i = 0; i < texts.size(); ++i) {
    if (const auto value = ParseSpoiledValue(texts[i], quantity)) {
      return value;
    }
    if (const auto value = i + 1 < texts.size() ? ParseSpoiledValue(texts[i] + texts[i + 1], quantity) : std::nullopt) {
      return value;
    }
  }
  return std::nullopt;
}

}  // namespace

std::string ValueOf(const std::vector<Piece>& description, std::string_view letters) {
  const auto quantity = QuantityOf(letters);
  const std::vector<std::string> texts = Texts(description);
  std::string bare;
  for (std::size_t i = 0; i < texts.size(); ++i) {
    if (const auto value = ValueIn(texts[i]); value && Wanted(*value, quantity)) {
      return value->canonical;
    }
    if (!IsValueNumber(WithoutDash(texts[i]))) {
      continue;
    }
    if (i + 1 < texts.size() && IsValueUnit(texts[i + 1])) {
      // A multiplier may stand apart from its unit: 4.7 K OHMS.
      const std::string unit = texts[i + 1] + (i + 2 < texts.size() && texts[i + 1].size() == 1 ? texts[i + 2] : "");
      for (const std::string& text : {texts[i] + unit, texts[i] + texts[i + 1]}) {
        if (const auto value = ValueIn(text); value && Wanted(*value, quantity)) {
          return value->canonical;
        }
      }
    } else if (bare.empty() && quantity == Quantity::kCapacitance && texts[i].find('.') != std::string::npos) {
      bare = texts[i];
    }
  }
  const auto spoiled = quantity ? SpoiledIn(texts, *quantity) : std::nullopt;
  return spoiled ? spoiled->canonical : bare;
}

}  // namespace benchleaf::extract

#include "scan-maker/list_text.h"

#include <cctype>

namespace benchleaf::scanmaker {
namespace {

// Broadside letterings of drawings and old lists know capitals only.
bool CapitalsOnly(Lettering lettering) { return lettering != Lettering::kTypewriter && lettering != Lettering::kBook; }

}  // namespace

std::vector<Token> Shown(std::vector<Token> row, Lettering lettering) {
  if (CapitalsOnly(lettering)) {
    for (Token& token : row) {
      for (char& c : token.text) {
        c = static_cast<char>(std::toupper(static_cast<unsigned char>(c)));
      }
    }
  }
  return row;
}

std::vector<std::vector<Token>> BrokenDesignators(const std::vector<Token>& pieces, const TextStyle& style,
                                                  double width) {
  std::vector<std::vector<Token>> lines(1);
  double used = 0;
  for (const Token& piece : pieces) {
    const double advance = TextAdvance(piece.text, style);
    if (!lines.back().empty() && used + advance > width) {
      lines.emplace_back();
      used = 0;
    }
    lines.back().push_back(piece);
    used += advance;
  }
  return lines;
}

const std::vector<std::string>& SpecificationLines() {
  static const std::vector<std::string> kLines = {
      "SPECIFICATIONS",
      "Power supply: 105-125 volts, 60 cycles, 55 watts. Tuning range: 540 to 1620 KC.",
      "Intermediate frequency: 455 KC. Power output: 2.5 watts, 10% distortion, at 3.2 ohms.",
      "When ordering parts give the model and serial number and the part number from the list below.",
      "All resistors are 10% and 1/2 watt and all capacitors are in MFD unless marked otherwise.",
  };
  return kLines;
}

}  // namespace benchleaf::scanmaker

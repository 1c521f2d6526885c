// The forms that tube types have by the rules of those who gave them out.

#ifndef BENCHLEAF_SRC_EXTRACT_TUBE_FORM_H_
#define BENCHLEAF_SRC_EXTRACT_TUBE_FORM_H_

#include <optional>
#include <string>
#include <string_view>

namespace benchleaf::extract {

// The parts of a type that begins with its heater voltage or screen size.
struct NumberFirst {
  std::string_view number;
  std::string_view letters;
  std::string_view elements;
  std::string_view suffix;
};

// Nothing when the text does not begin with figures, letters and figures. The parts are views of the text.
std::optional<NumberFirst> SplitNumberFirst(std::string_view text);

// Suffixes of receiving types: bulb and base (G, GT, GT/G, M, X, Y, L), ruggedness (W), revisions (A to F). The empty
// text is one.
bool IsReceivingSuffix(std::string_view suffix);

// RETMA/EIA (RETMA standard ET-109-A, from memory): the figure is the heater voltage in whole volts, the letters I and
// O are left out, the last figure counts the elements that have a base pin.
bool HasReceivingForm(const NumberFirst& parts);

// JEDEC/EIA cathode-ray tubes (JEDEC publication JEP 16, from memory): screen size in inches, one to three letters, P
// and the phosphor.
bool HasScreenForm(const NumberFirst& parts);

// Pro Electron: heater letter, two or three letters for the systems, number; two-letter types are few and are known.
bool HasEuropeanForm(std::string_view text);

// The type without its suffix letters: 6SN7 for 6SN7GTB, 21ZP4 for 21ZP4A, EL3 for EL3N; the text itself otherwise.
std::string TubeBase(std::string_view type);

// How many figures, and how many capitals, the text begins with.
std::size_t FiguresInFront(std::string_view text);
std::size_t CapitalsInFront(std::string_view text);

}  // namespace benchleaf::extract

#endif  // BENCHLEAF_SRC_EXTRACT_TUBE_FORM_H_

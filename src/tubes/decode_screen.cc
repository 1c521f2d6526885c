#include "tubes/decode_systems.h"

#include "benchleaf/core/ascii.h"
#include "benchleaf/tubes/tube_form.h"

#include <algorithm>
#include <array>
#include <string>

namespace benchleaf::tubes {
namespace {

struct Meaning {
  std::string_view text;
  const char* meaning;
};

// JEDEC publication 16 (characteristics of cathode-ray tube phosphors), from memory.
constexpr std::array<Meaning, 16> kPhosphors = {{
    {"1", "green, medium persistence: oscilloscopes"},
    {"2", "blue-green, long persistence: oscilloscopes"},
    {"3", "yellow, medium persistence"},
    {"4", "white: television"},
    {"5", "blue, very short persistence: photographs of traces"},
    {"6", "white, short persistence"},
    {"7", "blue-white, then yellow for long: radar and slow oscilloscopes"},
    {"11", "blue, short persistence: photographs of traces"},
    {"12", "orange, long persistence: radar"},
    {"14", "blue, then orange for long: radar"},
    {"15", "blue-green, very short persistence: flying-spot scanners"},
    {"16", "violet, very short persistence: flying-spot scanners"},
    {"19", "orange, very long persistence: radar"},
    {"22", "red, green and blue: colour television"},
    {"31", "green, bright, medium short persistence: oscilloscopes"},
    {"39", "green, long persistence"},
}};

// Pro Electron, from memory.
constexpr std::array<Meaning, 7> kEuropeanPhosphors = {{
    {"W", "white: television"},
    {"X", "red, green and blue: colour television"},
    {"GH", "green, as P31: oscilloscopes"},
    {"GJ", "green, as P1: oscilloscopes"},
    {"GM", "blue-white, then yellow for long, as P7: radar"},
    {"BE", "blue, as P11: photographs of traces"},
    {"GP", "green, as P2"},
}};

constexpr std::array<Meaning, 4> kEuropeanUses = {{
    {"A", "television picture tube"},
    {"D", "oscilloscope tube with one trace"},
    {"E", "oscilloscope tube with several traces"},
    {"M", "picture tube for professional use"},
}};

// European designation before 1963, from memory.
constexpr std::array<Meaning, 3> kEarlySystems = {{
    {"A", "electrostatic focus, magnetic deflection"},
    {"D", "electrostatic focus and deflection"},
    {"M", "magnetic focus and deflection"},
}};

constexpr std::array<Meaning, 5> kEarlyScreens = {{
    {"W", "white: television"},
    {"B", "blue"},
    {"G", "green"},
    {"P", "blue-white, then yellow for long"},
    {"R", "yellow-green, long persistence"},
}};

template <std::size_t kSize>
const char* MeaningOf(std::string_view text, const std::array<Meaning, kSize>& table) {
  const auto* found = std::find_if(table.begin(), table.end(), [&](const Meaning& one) { return one.text == text; });
  return found == table.end() ? nullptr : found->meaning;
}

// A part with the table's meaning; the type is then not complete when the table has none.
template <std::size_t kSize>
void Add(std::string_view text, const std::array<Meaning, kSize>& table, DecodedType& decoded) {
  const char* meaning = MeaningOf(text, table);
  decoded.complete = decoded.complete && meaning != nullptr;
  decoded.parts.push_back({std::string(text), meaning != nullptr ? meaning : "not known to us"});
}

}  // namespace

std::optional<DecodedType> DecodeCathodeRay(std::string_view type) {
  const auto parts = SplitNumberFirst(type);
  if (!parts || !HasScreenForm(*parts)) return std::nullopt;
  DecodedType decoded;
  decoded.type = type;
  decoded.system = TypeSystem::kCathodeRay;
  decoded.complete = true;
  const std::string number(parts->number);
  const std::string letters(parts->letters.substr(0, parts->letters.size() - 1));
  decoded.parts.push_back(
      {number, "screen of about " + number + " inches: diameter, or diagonal of a rectangular one"});
  decoded.parts.push_back({letters, "order of registration, says nothing of the tube"});
  Add(parts->elements, kPhosphors, decoded);
  decoded.parts.back().text.insert(0, "P");
  decoded.parts.back().meaning.insert(0, "phosphor: ");
  if (!parts->suffix.empty()) decoded.complete = AddSuffix(parts->suffix, decoded.parts) && decoded.complete;
  return decoded;
}

// A59-11W, D13-27GH; before 1963 AW59-90, MW43-64, DG7-32.
std::optional<DecodedType> DecodeEuropeanScreen(std::string_view type) {
  const std::size_t letters = CapitalsInFront(type);
  const std::size_t figures = FiguresInFront(type.substr(letters));
  const std::size_t dash = letters + figures;
  if (letters < 1 || letters > 2 || figures < 1 || figures > 2 || dash >= type.size() || type[dash] != '-') {
    return std::nullopt;
  }
  const std::string_view front = type.substr(0, letters);
  const std::string size(type.substr(letters, figures));
  const std::string_view rest = type.substr(dash + 1);
  const std::string serial(rest.substr(0, FiguresInFront(rest)));
  const std::string_view phosphor = rest.substr(serial.size());
  if (serial.empty() || phosphor.size() > 2 || (letters == 1) == phosphor.empty()) return std::nullopt;
  if (letters == 1 ? MeaningOf(front, kEuropeanUses) == nullptr
                   : MeaningOf(front.substr(0, 1), kEarlySystems) == nullptr) {
    return std::nullopt;
  }
  DecodedType decoded;
  decoded.type = type;
  decoded.system = TypeSystem::kEuropeanScreen;
  decoded.complete = true;
  if (letters == 1) {
    Add(front, kEuropeanUses, decoded);
  } else {
    Add(front.substr(0, 1), kEarlySystems, decoded);
    Add(front.substr(1), kEarlyScreens, decoded);
  }
  decoded.parts.push_back({size, "screen of " + size + " cm: diameter, or diagonal of a rectangular one"});
  decoded.parts.push_back({serial, "order of registration, says nothing of the tube"});
  if (letters == 1) Add(phosphor, kEuropeanPhosphors, decoded);
  return decoded;
}

}  // namespace benchleaf::tubes

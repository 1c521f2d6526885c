// Numbers in which the figures say nothing of the tube.

#include "tubes/decode_systems.h"

#include "benchleaf/core/ascii.h"
#include "benchleaf/tubes/tube_form.h"

#include <array>
#include <string>

namespace benchleaf::tubes {
namespace {

// Four figures were registered from 5501 on; lower ones are makers' own numbers that others took over (from memory).
constexpr int kFirstRegistered = 5501;

}  // namespace

std::optional<DecodedType> DecodeBareNumber(std::string_view type) {
  const std::string number(type.substr(0, FiguresInFront(type)));
  const std::string_view suffix = type.substr(number.size());
  if (number.size() < 2 || number.size() > 4 || !IsReceivingSuffix(suffix)) return std::nullopt;
  DecodedType decoded;
  decoded.type = type;
  const bool registered = number.size() == 4 && std::stoi(number) >= kFirstRegistered;
  decoded.system = registered ? TypeSystem::kIndustrial : TypeSystem::kBareNumber;
  if (registered) {
    decoded.parts.push_back({number, "order of registration of industrial, military and transmitting types"});
  } else if (number.size() == 3 && number[0] == '2') {
    // The maker's figure before a type of the 1920s: 245 is a 45, 201A an 01A. 211 and others are no such types.
    decoded.parts.push_back({"2", "often a maker's mark of the 1920s: then the figures behind it are the type"});
    decoded.parts.push_back({number.substr(1), "order of registration, says nothing of the tube"});
  } else if (number.size() == 2) {
    decoded.parts.push_back({number, "a type from before 1933: says nothing of the tube"});
  } else {
    decoded.parts.push_back({number, "a maker's number, says nothing of the tube"});
  }
  decoded.complete = AddSuffix(suffix, decoded.parts);
  return decoded;
}

std::optional<DecodedType> DecodeService(std::string_view type) {
  struct Front {
    std::string_view text;
    const char* meaning;
  };
  constexpr std::array<Front, 8> kFronts = {{
      {"VT", "vacuum tube number of the United States Army Signal Corps"},
      {"CV", "British common valve number"},
      {"VR", "voltage regulator"},
      {"UX", "base with four pins, made for the push socket"},
      {"UY", "base with five pins"},
      {"UV", "base with four short pins, made for the bayonet socket"},
      {"CX", "base with four pins, made for the push socket"},
      {"M", "British number of special quality"},
  }};
  for (const Front& front : kFronts) {
    if (type.substr(0, front.text.size()) != front.text) continue;
    const std::string_view rest = type.substr(front.text.size());
    const std::string number(rest.substr(0, FiguresInFront(rest)));
    const std::string_view suffix = rest.substr(number.size());
    // UY227 is a 27, but UY85 a European rectifier; M8137 and its like only, as many names begin with the letter.
    const bool european =
        (front.text == "UY" && number.size() < 3) || (front.text == "M" && (number.size() != 4 || number[0] != '8'));
    if (number.size() < 2 || number.size() > 4 || european) continue;
    DecodedType decoded;
    decoded.type = type;
    decoded.system = TypeSystem::kService;
    decoded.parts.push_back({std::string(front.text), front.meaning});
    const bool regulator = front.text == "VR";
    if (regulator) decoded.heater_volts = VoltRange{};
    decoded.parts.push_back(
        {number, regulator ? "holds about " + number + " V; no heater" : "a number, says nothing of the tube"});
    decoded.complete = AddSuffix(suffix, decoded.parts);
    return decoded;
  }
  return std::nullopt;
}

}  // namespace benchleaf::tubes

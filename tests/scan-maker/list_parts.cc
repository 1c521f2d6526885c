#include "scan-maker/list_parts.h"

#include "scan-maker/seeded_random.h"

#include <algorithm>
#include <array>
#include <cstddef>
#include <cstdint>

namespace benchleaf::scanmaker {
namespace {

constexpr std::uint64_t kNumberSeed = 7001;

// '#' becomes a digit, '@' a letter that is no look-alike of a figure, '%' the letter of the part's class.
std::string Filled(const std::string& pattern, const Part& part, std::uint64_t seed) {
  constexpr std::string_view kLetters = "ACEFHKMNPRTUX";
  SeededRandom random(SeedOf(seed, part.part_number + part.description));
  std::string filled;
  for (const char c : pattern) {
    if (c == '#') {
      filled += static_cast<char>('0' + random.Whole(0, 9));
    } else if (c == '@') {
      filled += kLetters[static_cast<std::size_t>(random.Whole(0, static_cast<int>(kLetters.size()) - 1))];
    } else {
      filled += c == '%' ? part.designator.front() : c;
    }
  }
  return filled;
}

bool IsTyped(PartClass part_class) {
  return part_class == PartClass::kTube || part_class == PartClass::kDiode || part_class == PartClass::kTransistor;
}

std::string Stem(const std::string& designator) { return designator.substr(0, designator.find_first_of("0123456789")); }

// C5 with 40-30 MFD as C5A with 40 MFD and C5B with 30 MFD; other parts as they are.
std::vector<Part> Sections(const Part& part) {
  const std::size_t dash = part.value.find('-');
  if (part.part_class != PartClass::kElectrolytic || dash == std::string::npos) {
    return {part};
  }
  const std::string unit = part.value.substr(part.value.rfind(' '));
  std::vector<Part> sections;
  std::string values = part.value.substr(0, part.value.rfind(' ')) + "-";
  while (!values.empty()) {
    Part section = part;
    section.section = static_cast<char>('A' + sections.size());
    section.designator += section.section;
    section.value = values.substr(0, values.find('-')) + unit;
    section.description = "Capacitor, electrolytic, " + section.value + (part.rating.empty() ? "" : ", " + part.rating);
    sections.push_back(section);
    values.erase(0, values.find('-') + 1);
  }
  return sections;
}

Part SocketOf(const Part& tube) {
  Part socket;
  socket.part_class = PartClass::kTube;
  socket.designator = "X" + tube.designator;
  socket.description = "Socket, tube, " + std::string(tube.value.size() % 2 == 0 ? "7 pin" : "9 pin");
  socket.part_number = Filled("15-####-#", socket, kNumberSeed);
  return socket;
}

Part Unused(const Part& last) {
  Part unused;
  unused.part_class = last.part_class;
  const std::string stem = Stem(last.designator);
  unused.designator = stem + std::to_string(std::stoi(last.designator.substr(stem.size())) + 1);
  unused.description = "Not used";
  return unused;
}

}  // namespace

std::vector<Part> PartsAsListed(const std::vector<Part>& given, const ListLayout& layout) {
  std::vector<Part> parts = given;
  if (layout.tubes_first) {
    std::stable_partition(parts.begin(), parts.end(), [](const Part& part) { return IsTyped(part.part_class); });
  }
  std::vector<Part> listed;
  for (std::size_t i = 0; i < parts.size(); ++i) {
    Part part = parts[i];
    if (layout.numbers == NumberForm::kSpaced) {
      part.part_number = Filled("48## ### 2####", part, kNumberSeed);
    } else if (layout.numbers == NumberForm::kLikeDesignators) {
      part.part_number = Filled("%##-####", part, kNumberSeed);
    }
    const std::vector<Part> sections = layout.lettered_sections ? Sections(part) : std::vector<Part>{part};
    listed.insert(listed.end(), sections.begin(), sections.end());
    const bool last = i + 1 == parts.size() || Stem(parts[i + 1].designator) != Stem(part.designator);
    if (layout.unused && last && part.part_class != PartClass::kTube) {
      listed.push_back(Unused(part));
    }
    if (layout.sockets && part.part_class == PartClass::kTube) {
      listed.push_back(SocketOf(part));
    }
  }
  return listed;
}

std::string MakersNumber(const Part& part, int maker) {
  static const std::array<std::string, 6> kForms = {"@@##-###", "%##-##", "#A####", "@@@ ##", "##X####", "@-####"};
  const std::size_t form = static_cast<std::size_t>(maker) % kForms.size();
  SeededRandom random(SeedOf(static_cast<std::uint64_t>(maker), part.part_number));
  constexpr double kMakes = 0.7;
  const bool makes = !part.part_number.empty() && random.Unit() < kMakes;
  return makes ? Filled(kForms[form], part, static_cast<std::uint64_t>(maker)) : std::string();
}

}  // namespace benchleaf::scanmaker

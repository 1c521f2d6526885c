#include "gaps/part_names.h"

#include "extract/designator.h"

#include <charconv>

namespace benchleaf::gaps {

std::optional<PartName> PartNameOf(const std::string& designator, const std::string& assembly, const Rules& rules) {
  const auto parsed = extract::ParseDesignator(designator, rules.tables());
  if (!parsed) return std::nullopt;
  PartName name{parsed->assembly.empty() ? assembly : parsed->assembly, parsed->letters, 0};
  std::from_chars(parsed->number.data(), parsed->number.data() + parsed->number.size(), name.number);
  return name;
}

}  // namespace benchleaf::gaps

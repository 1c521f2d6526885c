// Designators and ranges of them, a line each; a line may go on from the one before.

#include "extract/designator.h"
#include "extract/designator_range.h"
#include "extract/page_text.h"
#include "extract/rule_tables.h"
#include "fuzz/fuzz_input.h"

#include "benchleaf/extract/extract.h"

#include <optional>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  using namespace benchleaf;
  const Rules::Tables& tables = ShippedRules().tables();
  std::optional<extract::Designator> previous;
  for (const std::string& line : Lines(Bytes(data, size))) {
    if (const auto parsed = extract::ParseDesignator(line, tables)) {
      const auto again = extract::ParseDesignator(parsed->Text(), tables);
      Promise(again && again->Text() == parsed->Text());
      DesignatorForms(parsed->Text());
    }
    extract::RepairDesignator(line, tables, extract::LoneStrokes::kAllowSmall);
    for (const auto style : {extract::RangeStyle::kList, extract::RangeStyle::kDrawing}) {
      const auto all = extract::ExpandDesignators(line, tables, style, previous ? &*previous : nullptr);
      Promise(!all || !all->empty());
      if (all) {
        previous = all->back();
      }
    }
    FoldLookAlikes(line, ShippedRules());
  }
  return 0;
}

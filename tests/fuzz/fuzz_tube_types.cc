// Type numbers of tubes, a line each.

#include "extract/page_text.h"
#include "extract/rule_tables.h"
#include "extract/tube_type.h"
#include "fuzz/fuzz_input.h"

#include "benchleaf/extract/extract.h"
#include "benchleaf/tubes/decode.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  using namespace benchleaf;
  const Rules::Tables& tables = ShippedRules().tables();
  for (const std::string& line : Lines(Bytes(data, size))) {
    DecodeTubeType(line);
    for (const auto context : {extract::TubeContext::kNone, extract::TubeContext::kTube}) {
      if (const auto type = extract::ParseTubeType(line, tables, context)) {
        Promise(!type->type.empty() && type->sure >= 0 && type->sure <= 1);
        Promise(!TubeForms(type->type).empty());
      }
    }
  }
  return 0;
}

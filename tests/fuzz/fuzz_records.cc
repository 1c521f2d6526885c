// Stored records; the first byte says of which kind.

#include "fuzz/fuzz_input.h"

#include "benchleaf/record/codec.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  using namespace benchleaf;
  std::string_view bytes = Bytes(data, size);
  if (bytes.empty()) {
    return 0;
  }
  const char kind = bytes.front();
  bytes.remove_prefix(1);
  switch (kind) {
    case 'r':
      if (const auto reading = DecodeReading(bytes)) {
        Promise(DecodeReading(EncodeReading(*reading)).has_value());
      }
      break;
    case 'p':
      if (const auto page = DecodePage(bytes)) {
        Promise(DecodePage(EncodePage(*page, PageParts::kAll)).has_value());
      }
      break;
    case 's':
      if (const auto sighting = DecodeSighting(bytes)) {
        Promise(DecodeSighting(EncodeSighting(*sighting)).has_value());
      }
      break;
    case 'm':
      if (const auto manual = DecodeManualHead(bytes)) {
        Promise(DecodeManualHead(EncodeManualHead(*manual)).has_value());
      }
      break;
    default:
      if (const auto links = DecodeLinks(bytes)) {
        Promise(DecodeLinks(EncodeLinks(*links)).has_value());
      }
  }
  return 0;
}

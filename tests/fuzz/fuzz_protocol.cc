// What parent and worker say to each other; the first byte is how many bytes arrive at once.

#include "fuzz/fuzz_input.h"
#include "work/protocol.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  using namespace benchleaf;
  std::string_view bytes = Bytes(data, size);
  if (bytes.empty()) {
    return 0;
  }
  const std::size_t piece = 1 + static_cast<unsigned char>(bytes.front());
  bytes.remove_prefix(1);
  const auto decode = [](std::string_view body) {
    if (const auto job = DecodeJob(body)) {
      Promise(EncodeJob(*job) == body);
    }
    if (const auto answer = DecodeAnswer(body)) {
      Promise(DecodeAnswer(EncodeAnswer(*answer)).has_value());
    }
  };
  decode(bytes);
  MessageReader reader(kMaxJobBytes);
  for (std::size_t at = 0; at < bytes.size(); at += piece) {
    reader.Add(bytes.substr(at, piece));
    while (true) {
      const auto body = reader.Next();
      if (!body) {
        return 0;
      }
      if (!*body) {
        break;
      }
      decode(**body);
    }
  }
  return 0;
}

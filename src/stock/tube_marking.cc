#include "stock/tube_marking.h"

#include "benchleaf/core/ascii.h"
#include "benchleaf/tubes/decode.h"
#include "benchleaf/tubes/tube_form.h"

#include <algorithm>
#include <cstddef>
#include <optional>
#include <vector>

namespace benchleaf::stock {
namespace {

std::vector<std::string> Words(std::string_view marking) {
  std::vector<std::string> words(1);
  for (const char c : marking) {
    if (IsAlnum(c) || c == '-' || c == '/') {
      words.back() += ToUpper(c);
    } else if (!words.back().empty()) {
      words.emplace_back();
    }
  }
  if (words.back().empty()) words.pop_back();
  return words;
}

std::string Joined(const std::vector<std::string>& words, std::size_t first, std::size_t count) {
  std::string text;
  for (std::size_t i = first; i < first + count; ++i) text += words[i];
  return text;
}

// The names of a type as they are written by those who gave them out: 6SN7GT for 6SN7-GT, 0A2 for OA2.
std::string Canonical(std::string_view type) {
  std::string text;
  for (const std::string& name : TubeNames(type)) text += (text.empty() ? "" : "/") + DecodeTubeType(name).type;
  return text;
}

}  // namespace

bool IsKnownType(std::string_view type, const TubeTable& tubes) {
  const std::vector<std::string> names = TubeNames(type);
  return !names.empty() && std::all_of(names.begin(), names.end(), [&](const std::string& name) {
    const DecodedType decoded = DecodeTubeType(name);
    return tubes.Find(decoded.type) != nullptr || decoded.complete;
  });
}

std::string TypeInMarking(std::string_view marking, const TubeTable& tubes) {
  const std::vector<std::string> words = Words(marking);
  const std::string all = Joined(words, 0, words.size());
  if (IsKnownType(all, tubes)) return Canonical(all);
  // The most words first: 6V6 GT is a 6V6GT. A bare number in a longer text is as well a date or a code, so it counts
  // only where nothing else does and a table has it.
  for (const bool bare_ones : {false, true}) {
    for (std::size_t count = words.size(); count > 0; --count) {
      for (std::size_t first = 0; first + count <= words.size(); ++first) {
        const std::string text = Joined(words, first, count);
        const bool bare = std::all_of(text.begin(), text.end(), IsDigit);
        if (bare != bare_ones) continue;
        if (bare ? tubes.Find(text) != nullptr : IsKnownType(text, tubes)) return Canonical(text);
      }
    }
  }
  return Canonical(all);
}

}  // namespace benchleaf::stock

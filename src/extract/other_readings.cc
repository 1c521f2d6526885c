#include "extract/other_readings.h"

#include "extract/plain_text.h"

#include <algorithm>
#include <string>

namespace benchleaf::extract {

std::vector<const Alternative*> OtherReadings(const Word& word) {
  constexpr double kSure = 0.85;
  std::vector<const Alternative*> others;
  others.reserve(word.alternatives.size());
  for (const Alternative& other : word.alternatives) {
    others.push_back(&other);
  }
  if (others.empty() || word.confidence < kSure) {
    return others;
  }
  const std::string own = Trimmed(PlainText(word.text));
  const bool number = own.size() > 1 && std::all_of(own.begin(), own.end(), IsDigit);
  if (!number) {
    return others;
  }
  std::erase_if(others, [&](const Alternative* other) {
    const std::string text = Trimmed(PlainText(other->text));
    return !text.empty() && IsLetter(text.front()) && text.size() != own.size();
  });
  return others;
}

}  // namespace benchleaf::extract

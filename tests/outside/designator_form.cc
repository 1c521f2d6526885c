#include "outside/designator_form.h"

#include <cstddef>

namespace benchleaf::outside {
namespace {

bool IsCapital(char c) { return c >= 'A' && c <= 'Z'; }
bool IsDigit(char c) { return c >= '0' && c <= '9'; }

}  // namespace

bool HasDesignatorForm(std::string_view text) {
  std::size_t at = 0;
  while (at < text.size() && IsCapital(text[at])) ++at;
  const std::size_t letters = at;
  while (at < text.size() && IsDigit(text[at])) ++at;
  const std::size_t digits = at - letters;
  if (at < text.size() && IsCapital(text[at])) {
    ++at;
  }
  return at == text.size() && letters >= 1 && letters <= 3 && digits >= 1 && digits <= 4;
}

}  // namespace benchleaf::outside

#include "outside/term_forms.h"

#include <algorithm>
#include <regex>
#include <string>

namespace benchleaf::outside {

bool HasTubeForm(std::string_view text) {
  static const std::regex kForm("[0-9]{1,3}[A-Z]{1,2}[0-9][A-Z]{0,3}|[DEGHPU][A-Z]{1,3}[0-9]{2,3}|[56][0-9]{3}");
  return std::regex_match(text.begin(), text.end(), kForm);
}

bool HasPartNumberForm(std::string_view text) {
  static const std::regex kForm("[0-9A-Z]+(-[0-9A-Z]+)+");
  const auto digits = std::count_if(text.begin(), text.end(), [](char c) { return c >= '0' && c <= '9'; });
  return digits >= 4 && std::regex_match(text.begin(), text.end(), kForm);
}

}  // namespace benchleaf::outside

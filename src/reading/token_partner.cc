#include "reading/token_partner.h"

#include <algorithm>

namespace benchleaf {

double CommonWidth(const Box& a, const Box& b) {
  const int common = std::min(a.right(), b.right()) - std::max(a.x, b.x);
  const int narrower = std::min(a.width, b.width);
  return narrower > 0 ? static_cast<double>(std::max(0, common)) / narrower : 0;
}

bool SameWord(std::string_view a, std::string_view b) {
  const auto bare = [](std::string_view text) { return text.substr(0, text.find_last_not_of(".,;:") + 1); };
  return bare(a) == bare(b);
}

const Token* Partner(const Token& token, const std::vector<Token>& others) {
  constexpr double kSamePlace = 0.5;
  const Token* partner = nullptr;
  for (const Token& other : others) {
    if (CommonWidth(token.box, other.box) >= kSamePlace) {
      if (partner != nullptr) {
        return nullptr;
      }
      partner = &other;
    }
  }
  return partner;
}

}  // namespace benchleaf

#include "gaps/page_numbers.h"

#include "benchleaf/core/ascii.h"

#include <algorithm>
#include <charconv>
#include <limits>
#include <map>
#include <utility>

namespace benchleaf::gaps {
namespace {

constexpr std::size_t kMostFigures = 4;

std::optional<int> NumberIn(std::string_view text) {
  int number = 0;
  if (text.empty() || text.size() > kMostFigures || !std::all_of(text.begin(), text.end(), IsDigit)) {
    return std::nullopt;
  }
  std::from_chars(text.data(), text.data() + text.size(), number);
  return number > 0 ? std::optional(number) : std::nullopt;
}

// The best rising chain: one point a number, and half a point where it lies as far from the number before as their
// pages do.
std::vector<NumberedPage> RisingChain(const std::vector<NumberedPage>& numbers) {
  constexpr double kInStep = 0.5;
  constexpr std::size_t kNone = std::numeric_limits<std::size_t>::max();
  std::vector<double> score(numbers.size(), 1);
  std::vector<std::size_t> before(numbers.size(), kNone);
  for (std::size_t i = 0; i < numbers.size(); ++i) {
    for (std::size_t j = 0; j < i; ++j) {
      if (numbers[j].number >= numbers[i].number) continue;
      const auto pages = static_cast<int>(numbers[i].page - numbers[j].page);
      const double with = score[j] + 1 + (numbers[i].number - numbers[j].number == pages ? kInStep : 0);
      if (with > score[i]) {
        score[i] = with;
        before[i] = j;
      }
    }
  }
  std::vector<NumberedPage> chain;
  const auto best = std::max_element(score.begin(), score.end());
  if (best == score.end()) return chain;
  for (auto at = static_cast<std::size_t>(best - score.begin()); at != kNone; at = before[at]) {
    chain.push_back(numbers[at]);
  }
  std::reverse(chain.begin(), chain.end());
  return chain;
}

}  // namespace

int NumberedPage::Section() const {
  return prefix.empty() ? 0 : NumberIn(std::string_view(prefix).substr(0, prefix.size() - 1)).value_or(0);
}

std::optional<NumberedPage> ParsePageNumber(const std::string& printed, std::size_t page) {
  const std::size_t dash = printed.rfind('-');
  const std::size_t from = dash == std::string::npos ? 0 : dash + 1;
  const auto number = NumberIn(std::string_view(printed).substr(from));
  if (!number) return std::nullopt;
  NumberedPage numbered{page, printed.substr(0, from), *number};
  if (!numbered.prefix.empty() && numbered.Section() == 0) return std::nullopt;
  return numbered;
}

std::vector<NumberedPage> NumberedPages(const ManualRecord& manual) {
  std::map<std::pair<int, std::string>, std::vector<NumberedPage>> series;  // by volume and prefix
  for (std::size_t i = 0; i < manual.pages.size(); ++i) {
    const PageRecord& page = manual.pages[i];
    if (const auto number = ParsePageNumber(page.facts.printed_number, i)) {
      series[{page.volume, number->prefix}].push_back(*number);
    }
  }
  std::vector<NumberedPage> numbered;
  for (const auto& [key, numbers] : series) {
    const std::vector<NumberedPage> chain = RisingChain(numbers);
    numbered.insert(numbered.end(), chain.begin(), chain.end());
  }
  std::sort(numbered.begin(), numbered.end(),
            [](const NumberedPage& a, const NumberedPage& b) { return a.page < b.page; });
  return numbered;
}

}  // namespace benchleaf::gaps

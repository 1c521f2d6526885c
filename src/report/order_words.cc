#include "report/order_words.h"

#include "report/place.h"

#include <algorithm>

namespace benchleaf {

std::string OldPartWords(const OldPart& part) {
  std::string name = !part.designator.empty() ? part.designator
                     : part.item.empty()      ? "row without a designator"
                                              : "item " + part.item;
  if (part.section == 0) return name;
  return name + " section " + std::to_string(part.section) + " of " + std::to_string(part.sections);
}

std::vector<std::string> ChecksOf(const OldPart& part) {
  // Rather too much to look up than a wrong part: no source.
  constexpr double kSure = 0.6;
  std::vector<std::string> checks = part.doubts;
  if (part.confidence < kSure) checks.emplace_back("badly read");
  if (part.kind_by_value) checks.emplace_back("the list does not say what kind it is");
  return checks;
}

std::vector<std::string> Distinct(const std::vector<std::string>& texts) {
  std::vector<std::string> distinct;
  for (const std::string& text : texts) {
    if (std::find(distinct.begin(), distinct.end(), text) == distinct.end()) distinct.push_back(text);
  }
  return distinct;
}

std::vector<std::string> OldValues(const OrderItem& item) {
  std::vector<std::string> values;
  for (const OldPart& part : item.replaces) values.push_back(part.was);
  return Distinct(values);
}

std::vector<std::string> ListPages(const OrderItem& item) {
  std::vector<std::string> pages;
  for (const OldPart& part : item.replaces) pages.push_back(ShortPlace(part.place));
  return Distinct(pages);
}

double LeastConfidence(const OrderItem& item) {
  double least = 1;
  for (const OldPart& part : item.replaces) least = std::min(least, part.confidence);
  return least;
}

}  // namespace benchleaf

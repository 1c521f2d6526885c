#include "work/copy_plan.h"

#include "work/message_fields.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <utility>

namespace benchleaf {
namespace {

constexpr double kMillion = 1e6;
constexpr double kHundred = 100;

void PutCoordinate(std::string& out, double value) {
  PutNumber(out, static_cast<std::uint32_t>(std::lround((std::clamp(value, -1.0, 2.0) + 1) * kMillion)));
}

double TakeCoordinate(Fields& fields) { return fields.Number() / kMillion - 1; }

}  // namespace

std::string EncodeCopyPlan(const std::vector<PageToCopy>& pages) {
  std::string plan;
  PutNumber(plan, static_cast<std::uint32_t>(pages.size()));
  for (const PageToCopy& page : pages) {
    PutText(plan, page.path.string());
    PutText(plan, page.name);
    PutNumber(plan, static_cast<std::uint32_t>(page.page));
    PutNumber(plan, static_cast<std::uint32_t>(std::lround(std::clamp(page.dpi, 0.0, 1e6) * kHundred)));
    PutNumber(plan, static_cast<std::uint32_t>(page.words.size()));
    for (const LaidWord& word : page.words) {
      PutText(plan, word.text);
      for (const FractionPoint& point : {word.start, word.end, word.above}) {
        PutCoordinate(plan, point.x);
        PutCoordinate(plan, point.y);
      }
    }
  }
  return plan;
}

Result<std::vector<PageToCopy>> DecodeCopyPlan(std::string_view bytes) {
  Fields fields(bytes);
  std::vector<PageToCopy> pages;
  const std::uint32_t count = fields.Number();
  for (std::uint32_t i = 0; i < count && !fields.failed(); ++i) {
    PageToCopy page;
    page.path = std::string(fields.Text());
    page.name = fields.Text();
    page.page = static_cast<int>(fields.Number());
    page.dpi = fields.Number() / kHundred;
    const std::uint32_t words = fields.Number();
    for (std::uint32_t k = 0; k < words && !fields.failed(); ++k) {
      LaidWord word;
      word.text = fields.Text();
      for (FractionPoint* point : {&word.start, &word.end, &word.above}) {
        point->x = TakeCoordinate(fields);
        point->y = TakeCoordinate(fields);
      }
      page.words.push_back(std::move(word));
    }
    pages.push_back(std::move(page));
  }
  if (!fields.Finished()) return Fail(ErrorCode::kDamaged, "the plan of the copy cannot be understood");
  return pages;
}

}  // namespace benchleaf

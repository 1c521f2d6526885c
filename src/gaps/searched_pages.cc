#include "gaps/searched_pages.h"

#include <algorithm>
#include <utility>

namespace benchleaf::gaps {
namespace {

// Share of surely read letters below which a page counts as badly read. Words of running text are trusted less than
// they deserve, so it is low. Chosen on the sample library: its one severe page has .06, all others .38 and more.
constexpr double kLeastSure = 0.3;
constexpr std::size_t kFewLetters = 20;  // a page of fewer says nothing

PageQuality QualityOf(const ManualRecord& manual, const PageRecord& page) {
  PageQuality quality;
  quality.place = {manual.set, manual.manual, page.file, page.page, page.facts.kind, page.facts.printed_number};
  quality.failure = page.failure;
  std::size_t letters = 0;
  std::size_t sure = 0;
  for (const Word& word : page.reading.words) {
    letters += word.text.size();
    sure += word.confidence >= kSureText ? word.text.size() : 0;
  }
  if (letters >= kFewLetters) quality.sure_share = static_cast<double>(sure) / static_cast<double>(letters);
  quality.badly_read = page.failure.has_value() || page.plain_mode || quality.sure_share < kLeastSure;
  return quality;
}

}  // namespace

SearchedPages::SearchedPages(const ManualRecord& manual) : manual_(manual) {
  for (const PageRecord& page : manual.pages) qualities_.push_back(QualityOf(manual, page));
}

GapPlace SearchedPages::At(std::size_t page, std::optional<FractionBox> box, std::string read) const {
  return {PlaceOf(page), box, std::move(read)};
}

std::vector<PagePlace> SearchedPages::BadPages(std::initializer_list<PageKind> kinds) const {
  std::vector<PagePlace> bad;
  for (const PageQuality& quality : qualities_) {
    const bool may_hold = kinds.size() == 0 || quality.place.kind == PageKind::kOther ||
                          std::find(kinds.begin(), kinds.end(), quality.place.kind) != kinds.end();
    if (quality.badly_read && may_hold) bad.push_back(quality.place);
  }
  return bad;
}

void GradeAbsence(Gap& gap, std::vector<PagePlace> badly_read) {
  gap.grade = badly_read.empty() ? GapGrade::kMissing : GapGrade::kNotSeen;
  gap.badly_read = std::move(badly_read);
}

std::string PageName(const PagePlace& place) {
  return place.printed_number.empty() ? place.file + " p. " + std::to_string(place.page)
                                      : "page " + place.printed_number;
}

}  // namespace benchleaf::gaps

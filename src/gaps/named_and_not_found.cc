#include "gaps/checks.h"
#include "gaps/page_numbers.h"
#include "gaps/references.h"

#include <algorithm>
#include <charconv>
#include <map>
#include <set>
#include <string>
#include <tuple>
#include <utility>

namespace benchleaf::gaps {
namespace {

constexpr std::size_t kFewestNumbers = 3;  // printed page numbers that make page references worth following
constexpr std::size_t kMostPlaces = 5;     // where a finding is named

struct Mentions {
  std::vector<GapPlace> places;
  bool surely = false;  // at least one was read surely
};

using MentionsOf = std::map<std::pair<Named, std::string>, Mentions>;

int IntOf(const std::string& text) {
  int number = 0;
  std::from_chars(text.data(), text.data() + text.size(), number);
  return number;
}

std::string Words(Named named, const std::string& number) {
  switch (named) {
    case Named::kFigure:
      return "Fig. " + number;
    case Named::kSection:
      return "section " + number;
    case Named::kPage:
      return "page " + number;
    case Named::kVolume:
      break;
  }
  return "volume " + number;
}

GapKind KindOf(Named named) {
  switch (named) {
    case Named::kFigure:
      return GapKind::kFigure;
    case Named::kSection:
      return GapKind::kSection;
    case Named::kPage:
      return GapKind::kPage;
    case Named::kVolume:
      break;
  }
  return GapKind::kVolume;
}

std::set<int> VolumesOf(const ManualRecord& manual) {
  std::set<int> volumes;
  for (const FileRecord& file : manual.files) volumes.insert(file.volume);
  for (const PageRecord& page : manual.pages) volumes.insert(page.volume);
  return volumes;
}

// What the manual is known to hold, against what it names.
class Holdings {
 public:
  explicit Holdings(const ManualRecord& manual)
      : numbered_(NumberedPages(manual)), volumes_(VolumesOf(manual)), pages_(manual.pages.size()) {
    for (const NumberedPage& page : numbered_) {
      if (page.Section() > 0) sections_.insert(std::to_string(page.Section()));
    }
  }

  void AddCaption(const Reference& caption) {
    if (caption.named == Named::kFigure) figures_.insert(caption.number);
    if (caption.named == Named::kSection) sections_.insert(caption.number);
  }

  bool Has(Named named, const std::string& number) const {
    switch (named) {
      case Named::kFigure:
        return figures_.contains(number);
      case Named::kSection:
        return sections_.contains(number);
      case Named::kPage:
        return HasPage(number);
      case Named::kVolume:
        return number.find('-') != std::string::npos || volumes_.contains(IntOf(number));
    }
    return true;
  }

 private:
  // A page before the last numbered one is found, or a hole that is told apart; behind it, pages without a number may
  // be the ones that are meant.
  bool HasPage(const std::string& number) const {
    if (numbered_.size() < kFewestNumbers) return true;
    const auto wanted = ParsePageNumber(number, 0);
    if (!wanted) return true;
    const NumberedPage* last = nullptr;
    for (const NumberedPage& page : numbered_) {
      if (page.prefix == wanted->prefix) last = &page;
    }
    if (last == nullptr) return false;
    std::size_t next = pages_;
    for (const NumberedPage& page : numbered_) {
      if (page.page > last->page) next = std::min(next, page.page);
    }
    return wanted->number <= last->number + static_cast<int>(next - last->page - 1);
  }

  std::vector<NumberedPage> numbered_;
  std::set<int> volumes_;
  std::size_t pages_;
  std::set<std::string> figures_;
  std::set<std::string> sections_;
};

void AddSkippedVolumes(const SearchedPages& pages, std::vector<Gap>& gaps) {
  const std::set<int> volumes = VolumesOf(pages.manual());
  if (volumes.empty()) return;
  for (int volume = 1; volume < *volumes.rbegin(); ++volume) {
    if (volumes.contains(volume)) continue;
    Gap gap{GapKind::kVolume,
            GapGrade::kMissing,
            "volume " + std::to_string(volume),
            "no file is this volume, and there is a volume " + std::to_string(*volumes.rbegin()),
            {},
            {}};
    for (std::size_t i = 0; i < pages.manual().pages.size() && gap.places.empty(); ++i) {
      if (pages.manual().pages[i].volume > volume) gap.places.push_back(pages.At(i, std::nullopt, ""));
    }
    gaps.push_back(std::move(gap));
  }
}

}  // namespace

std::vector<Gap> NamedAndNotFound(const SearchedPages& pages) {
  Holdings holdings(pages.manual());
  MentionsOf mentions;
  for (std::size_t i = 0; i < pages.manual().pages.size(); ++i) {
    for (const Reference& reference : ReferencesOn(pages.manual().pages[i])) {
      if (reference.is_caption) {
        holdings.AddCaption(reference);
        continue;
      }
      Mentions& mention = mentions[{reference.named, reference.number}];
      mention.surely = mention.surely || reference.confidence >= kSureText;
      if (mention.places.size() < kMostPlaces) mention.places.push_back(pages.At(i, reference.box, reference.read));
    }
  }
  std::vector<Gap> gaps;
  AddSkippedVolumes(pages, gaps);
  for (auto& [key, mention] : mentions) {
    const auto& [named, number] = key;
    if (holdings.Has(named, number)) continue;
    const std::string what = Words(named, number);
    const bool known = std::any_of(gaps.begin(), gaps.end(), [&](const Gap& gap) { return gap.what == what; });
    if (known) continue;
    Gap gap{KindOf(named), GapGrade::kMissing, what, "named, and not found", std::move(mention.places), {}};
    if (named != Named::kVolume) GradeAbsence(gap, pages.BadPages());
    if (!mention.surely) {
      gap.grade = GapGrade::kNotSeen;
      gap.reason = "named, as far as that can be read, and not found";
    }
    gaps.push_back(std::move(gap));
  }
  return gaps;
}

}  // namespace benchleaf::gaps

#include "lineup/tube_duties.h"

#include "benchleaf/core/ascii.h"
#include "benchleaf/extract/extract.h"
#include "benchleaf/linking/designator_beside.h"

#include <algorithm>
#include <array>
#include <cstddef>
#include <optional>
#include <string_view>
#include <tuple>
#include <utility>

namespace benchleaf::lineup {
namespace {

// A4 of A4V2A is its assembly, V2 the tube's own designator in it, A the section.
struct NameParts {
  std::string whole;    // A4V2
  std::string own;      // V2
  std::string section;  // A; empty for the whole tube
};

NameParts PartsOf(const std::string& printed) {
  NameParts parts;
  const bool section = printed.size() > 2 && IsUpper(printed.back());
  parts.section = section ? printed.substr(printed.size() - 1) : std::string();
  parts.whole = printed.substr(0, printed.size() - parts.section.size());
  const std::vector<std::string> forms = DesignatorForms(parts.whole);
  parts.own = forms.empty() ? std::string() : forms.back();
  return parts;
}

PagePlace PlaceOf(const ManualRecord& manual, const PageRecord& page) {
  return {manual.set, manual.manual, page.file, page.page, page.facts.kind, page.facts.printed_number};
}

// The description without the tube's type and the words in front that say that it is a tube.
std::string WithoutType(const std::string& description, const TubeSocket& socket) {
  constexpr std::array<std::string_view, 4> kNames = {"TUBE", "ELECTRON", "VACUUM", "TYPE"};
  std::string words;
  std::size_t from = 0;
  while (from < description.size()) {
    const std::size_t end = std::min(description.find(' ', from), description.size());
    const std::string word = description.substr(from, end - from);
    from = end + 1;
    const std::vector<std::string> plain = FunctionWords(word);
    const bool says_tube =
        words.empty() && (plain.empty() || std::find(kNames.begin(), kNames.end(), plain.front()) != kNames.end());
    const bool is_type = std::any_of(socket.seen.begin(), socket.seen.end(), [&](const SeenTube& seen) {
      return plain == FunctionWords(seen.sighting.read) || plain == FunctionWords(seen.sighting.text);
    });
    if (!says_tube && !is_type) words += (words.empty() ? "" : " ") + word;
  }
  while (!words.empty() && (words.back() == ',' || words.back() == ';')) words.pop_back();
  return words;
}

bool IsDrawing(PageKind kind) { return kind == PageKind::kSchematic || kind == PageKind::kTubeLayout; }

}  // namespace

TubeDuties::TubeDuties(const ManualRecord& manual, const TubeFunctions& functions,
                       const std::vector<TubeSocket>& sockets)
    : manual_(manual), functions_(functions) {
  for (const TubeSocket& socket : sockets) ++tubes_of_[PartsOf(socket.designator).own];
  for (const PageRecord& page : manual_.pages) titles_.push_back(StageTitlesOf(page, functions_));
}

std::optional<std::string> TubeDuties::SectionOf(const std::string& printed, const TubeSocket& socket) const {
  if (printed.empty() || socket.designator.empty()) return std::nullopt;
  const NameParts parts = PartsOf(printed);
  if (parts.whole == socket.designator) return parts.section;
  const auto tubes = tubes_of_.find(parts.whole);
  const bool only_one = tubes != tubes_of_.end() && tubes->second == 1;
  if (only_one && parts.whole == PartsOf(socket.designator).own) return parts.section;
  return std::nullopt;
}

std::vector<TubeDuty> TubeDuties::Listed(const TubeSocket& socket) const {
  std::vector<TubeDuty> duties;
  for (const PageRecord& page : manual_.pages) {
    for (const Entry& entry : page.entries) {
      const auto section = SectionOf(WithAssembly(entry.assembly, entry.designator), socket);
      if (!section) continue;
      const std::string words = WithoutType(entry.description, socket);
      if (words.empty()) continue;
      TubeDuty duty{*section, {}, words, PlaceOf(manual_, page), entry.box, entry.confidence};
      const std::vector<FunctionFound> found = functions_.Find(FunctionWords(words));
      if (found.empty()) duties.push_back(duty);
      for (const FunctionFound& one : found) {
        duty.function = one.function;
        duties.push_back(duty);
      }
    }
  }
  return duties;
}

std::vector<TubeDuty> TubeDuties::Titled(const TubeSocket& socket, bool on_drawings) const {
  std::vector<TubeDuty> duties;
  for (std::size_t i = 0; i < titles_.size(); ++i) {
    const PageRecord& page = manual_.pages[i];
    if (IsDrawing(page.facts.kind) != on_drawings) continue;
    for (const StageTitle& title : titles_[i]) {
      if (const auto section = SectionOf(title.designator, socket)) {
        duties.push_back({*section, title.function, title.read, PlaceOf(manual_, page), title.box, title.confidence});
      }
    }
  }
  return duties;
}

std::vector<TubeDuty> TubeDuties::Of(const TubeSocket& socket) const {
  const auto knows = [](const TubeDuty& duty) { return !duty.function.empty(); };
  const std::vector<TubeDuty> listed = Listed(socket);
  std::vector<TubeDuty> duties = listed;
  for (const bool on_drawings : {true, false}) {
    if (std::any_of(duties.begin(), duties.end(), knows)) break;
    duties = Titled(socket, on_drawings);
  }
  if (duties.empty()) duties = listed;  // words that fit no row of the table, for a person to read
  std::stable_sort(duties.begin(), duties.end(), [](const TubeDuty& a, const TubeDuty& b) {
    return std::tuple(a.section, -a.confidence) < std::tuple(b.section, -b.confidence);
  });
  std::vector<TubeDuty> once;
  for (TubeDuty& duty : duties) {
    const bool known = std::any_of(once.begin(), once.end(), [&](const TubeDuty& other) {
      return other.section == duty.section && other.function == duty.function;
    });
    if (!known) once.push_back(std::move(duty));
  }
  return once;
}

}  // namespace benchleaf::lineup

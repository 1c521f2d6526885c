#include "benchleaf/linking/link.h"

#include "extract/assembly_prefix.h"
#include "extract/plain_text.h"
#include "extract/value.h"
#include "linking/assembly_shown.h"
#include "linking/item_links.h"
#include "linking/near_values.h"

#include <algorithm>
#include <map>
#include <optional>
#include <set>
#include <tuple>
#include <utility>

namespace benchleaf {
namespace {

// A designator with its assembly, which is printed in front of it or set by the page.
struct Named {
  std::string assembly;
  std::string own;
};

Named NameOf(const std::string& designator, const std::string& assembly) {
  const std::size_t length = extract::AssemblyLength(designator);
  return {length == 0 ? assembly : designator.substr(0, length), designator.substr(length)};
}

std::string Letters(const std::string& own) { return own.substr(0, own.find_first_of("0123456789")); }

// "C1" for C1A, empty for a designator that has no section letter.
std::string WithoutSection(const std::string& own) {
  const bool section = own.size() > 2 && extract::IsUpper(own.back()) && extract::IsDigit(own[own.size() - 2]);
  return section ? own.substr(0, own.size() - 1) : std::string();
}

bool ShowsParts(PageKind kind, const std::string& own) {
  return MayShowParts(kind) || (kind == PageKind::kTubeLayout && Letters(own) == "V");
}

// Where a designator is seen.
struct Seen {
  std::size_t page = 0;
  std::size_t sighting = 0;
  std::string assembly;
  bool section = false;      // the entry names the whole part, the drawing a section of it
  std::size_t agreeing = 0;  // rows that have the value beside the symbol
};

// Ties of rows to places of one designator that are looked at. Real manuals have some hundreds, where each of many
// units has its R1; a page that names one part thousands of times must not take the time of their product.
constexpr std::size_t kMostTies = 65536;

using linking::Agreement;

class Linker {
 public:
  explicit Linker(const std::vector<LinkPage>& pages) : pages_(pages) {
    for (const LinkPage& page : pages_) {
      beside_.push_back(page.kind == PageKind::kSchematic || page.kind == PageKind::kOther
                            ? linking::ValuesBeside(page.sightings)
                            : std::vector<std::vector<std::size_t>>(page.sightings.size()));
      for (const Entry& entry : page.entries) {
        if (!entry.designator.empty()) {
          const Named name = NameOf(entry.designator, entry.assembly);
          listed_in_[name.own].insert(name.assembly);
          rows_[name.own].push_back({name.assembly, &entry});
        }
      }
    }
    NoteSightings();
    for (auto& [own, places] : seen_) {
      LookAtValues(own, places);
    }
    NoteAssembliesShown();
  }

  std::vector<Link> Links() const {
    std::vector<Link> links;
    for (std::size_t page = 0; page < pages_.size(); ++page) {
      for (std::size_t entry = 0; entry < pages_[page].entries.size(); ++entry) {
        AddLinks(page, entry, links);
      }
    }
    return links;
  }

 private:
  void NoteSightings() {
    for (std::size_t page = 0; page < pages_.size(); ++page) {
      const auto& sightings = pages_[page].sightings;
      for (std::size_t i = 0; i < sightings.size(); ++i) {
        if (sightings[i].kind != TermKind::kDesignator) {
          continue;
        }
        const Named name = NameOf(sightings[i].text, sightings[i].assembly);
        if (!ShowsParts(pages_[page].kind, name.own)) {
          continue;
        }
        seen_[name.own].push_back({page, i, name.assembly, false, 0});
        const std::string whole = WithoutSection(name.own);
        if (!whole.empty() && listed_in_.count(name.own) == 0) {
          seen_[whole].push_back({page, i, name.assembly, true, 0});
        }
      }
    }
  }

  // Leaves no more places than may be tied to all rows, the first ones, and counts the rows whose value agrees.
  void LookAtValues(const std::string& own, std::vector<Seen>& places) const {
    const auto rows = rows_.find(own);
    if (rows == rows_.end()) {
      return;
    }
    const std::size_t most = std::max<std::size_t>(1, kMostTies / rows->second.size());
    places.erase(places.begin() + static_cast<std::ptrdiff_t>(std::min(most, places.size())), places.end());
    for (Seen& place : places) {
      place.agreeing =
          static_cast<std::size_t>(std::count_if(rows->second.begin(), rows->second.end(), [&](const Row& row) {
            return ValueAgreement(*row.entry, own, place) == Agreement::kAgrees;
          }));
    }
  }

  // The rows that list a designator, in the order of the list.
  struct Row {
    std::string assembly;
    const Entry* entry = nullptr;
  };

  // Tells of drawings that do not say so themselves which assembly they show, by the parts on them.
  void NoteAssembliesShown() {
    std::vector<linking::DrawnParts> drawn(pages_.size());
    for (const auto& [own, places] : seen_) {
      const auto rows = rows_.find(own);
      for (const Seen& place : places) {
        if (!place.assembly.empty()) {
          drawn[place.page].told = true;
        } else if (rows != rows_.end()) {
          linking::DrawnPart part;
          part.name = own;
          for (const Row& row : rows->second) {
            part.listed.emplace_back(row.assembly, ValueAgreement(*row.entry, own, place));
          }
          drawn[place.page].parts.push_back(std::move(part));
        }
      }
    }
    for (const linking::DrawnParts& of_page : drawn) {
      shown_.push_back(linking::AssemblyShown(of_page));
    }
  }

  void AddLinks(std::size_t page, std::size_t index, std::vector<Link>& links) const {
    const Entry& entry = pages_[page].entries[index];
    const Named name = NameOf(entry.designator, entry.assembly);
    const auto seen = seen_.find(name.own);
    if (entry.designator.empty() || seen == seen_.end()) {
      return;
    }
    for (const Seen& place : seen->second) {
      if (auto link = LinkTo(entry, name, place)) {
        link->entry_page = page;
        link->entry = index;
        links.push_back(std::move(*link));
      }
    }
  }

  std::optional<Link> LinkTo(const Entry& entry, const Named& name, const Seen& place) const {
    const Sighting& sighting = pages_[place.page].sightings[place.sighting];
    const std::set<std::string>& assemblies = listed_in_.at(name.own);
    const std::size_t candidates = assemblies.size();
    const Agreement value = ValueAgreement(entry, name.own, place);
    const std::string& shown = place.assembly.empty() ? shown_[place.page] : place.assembly;
    Link link{0, 0, place.page, place.sighting, 0, {}};
    double believed = 0;
    bool told = true;  // which of several rows is meant
    if (!name.assembly.empty() && name.assembly == place.assembly) {
      believed = 1;
      link.reason = "same assembly";
    } else if (!name.assembly.empty() && !place.assembly.empty()) {
      return std::nullopt;  // R1 of one assembly is not R1 of another
    } else if (candidates == 1) {
      believed = 0.95;
      link.reason = "only candidate";
    } else if (!shown.empty() && assemblies.count(shown) != 0) {
      // Several assemblies list this designator; the drawing is of one of them.
      if (name.assembly != shown) {
        return std::nullopt;
      }
      believed = 0.9;
      link.reason = "the drawing shows the parts of " + shown;
    } else {
      told = false;
      believed = 0.8 / static_cast<double>(candidates);
      link.reason = "one of " + std::to_string(candidates) + " candidates";
    }
    if (value == Agreement::kAgrees) {
      believed = told ? std::max(believed, 0.98) : 0.85;
      link.reason = told ? link.reason + ", value agrees" : "value agrees";
    } else if (value == Agreement::kDiffers) {
      if (!told && place.agreeing > 0) {
        return std::nullopt;
      }
      believed *= told ? 0.85 : 0.4;
      link.reason += ", value differs";
    }
    constexpr double kSection = 0.9;
    link.confidence = sighting.confidence * entry.confidence * believed * (place.section ? kSection : 1);
    return link;
  }

  // Whether a value beside the designator is the one in the list. One that is badly read can agree, not contradict.
  Agreement ValueAgreement(const Entry& entry, const std::string& own, const Seen& place) const {
    constexpr double kSurelyRead = 0.5;
    const std::string letters = Letters(own);
    const auto listed = extract::ParsePartValue(entry.value, letters);
    if (!listed) {
      return Agreement::kUnknown;
    }
    Agreement agreement = Agreement::kUnknown;
    for (const std::size_t i : beside_[place.page][place.sighting]) {
      const Sighting& beside = pages_[place.page].sightings[i];
      const auto drawn = extract::ParsePartValue(beside.text, letters);
      if (!drawn || drawn->quantity != listed->quantity) {
        continue;
      }
      if (extract::SameMagnitude(drawn->magnitude, listed->magnitude)) {
        return Agreement::kAgrees;
      }
      if (beside.confidence >= kSurelyRead) {
        agreement = Agreement::kDiffers;
      }
    }
    return agreement;
  }

  const std::vector<LinkPage>& pages_;
  std::vector<std::vector<std::vector<std::size_t>>> beside_;  // by page and sighting
  std::map<std::string, std::set<std::string>> listed_in_;     // own designator to the assemblies that list it
  std::map<std::string, std::vector<Row>> rows_;               // own designator to its rows
  std::map<std::string, std::vector<Seen>> seen_;              // in the order of pages and sightings
  std::vector<std::string> shown_;                             // by page: the assembly told by its parts, or empty
};

}  // namespace

std::vector<Link> LinkManual(const std::vector<LinkPage>& pages) {
  std::vector<Link> links = Linker(pages).Links();
  const std::vector<Link> of_items = linking::ItemLinks(pages);
  links.insert(links.end(), of_items.begin(), of_items.end());
  std::stable_sort(links.begin(), links.end(), [](const Link& a, const Link& b) {
    return std::tie(a.entry_page, a.entry, a.seen_page, a.sighting) <
           std::tie(b.entry_page, b.entry, b.seen_page, b.sighting);
  });
  return links;
}

}  // namespace benchleaf

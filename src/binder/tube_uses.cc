#include "binder/document.h"
#include "binder/library_documents.h"
#include "report/lineup_words.h"

#include "benchleaf/report/where.h"

#include <algorithm>
#include <set>

namespace benchleaf::binder {
namespace {

void AddOnce(std::string& list, const std::string& word) {
  if (word.empty() || (", " + list + ", ").find(", " + word + ", ") != std::string::npos) return;
  list += (list.empty() ? "" : ", ") + word;
}

// What the tubes of that type do in the set, as its lineups say.
std::string Functions(const Book& book, const std::string& type) {
  std::string words;
  for (const ManualLineup& lineup : book.lineups) {
    for (const LineupTube& tube : lineup.tubes) {
      if (tube.socket.type == type) AddOnce(words, DutyWords(tube));
    }
  }
  return words;
}

}  // namespace

void AddTubeUses(const Book& book, TubeUses& uses) {
  std::map<std::string, TubeUse> of_this_set;
  for (const SeenTube& seen : book.tubes) {
    TubeUse& use = of_this_set[seen.sighting.text];
    AddOnce(use.designators, seen.designator);
    const std::string to = BoxAddress(book, seen.place, seen.sighting.box);
    const auto page = FindPage(book, seen.place);
    if (to.empty() || !page) continue;
    use.places.push_back({std::string(kSetsFolder) + '/' + book.folder + '/' + to,
                          ShortPageName(book.pages[*page]) + " " + std::string(Name(seen.place.kind)) + ", " +
                              RegionOnPage(seen.sighting.box),
                          seen.sighting.confidence});
  }
  for (auto& [type, use] : of_this_set) {
    use.set = book.set;
    use.folder = book.folder;
    use.functions = Functions(book, type);
    std::stable_sort(use.places.begin(), use.places.end(),
                     [](const TubeUse::Place& a, const TubeUse::Place& b) { return a.confidence > b.confidence; });
    uses[type].push_back(std::move(use));
  }
}

}  // namespace benchleaf::binder

#include "benchleaf/lineup/sockets.h"

#include "benchleaf/core/ascii.h"
#include "benchleaf/extract/extract.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <map>
#include <tuple>
#include <utility>

namespace benchleaf {
namespace {

using Seen = std::vector<const SeenTube*>;

// V3 of V3A: the sections of one tube share its designator.
std::string WithoutSection(const std::string& designator) {
  const std::size_t size = designator.size();
  const bool section = size > 2 && IsUpper(designator.back()) && IsDigit(designator[size - 2]);
  return section ? designator.substr(0, size - 1) : designator;
}

// "1/2 12AX7", as read: one half of a dual tube.
bool IsHalf(const SeenTube& tube) {
  const std::string_view read = tube.sighting.read;
  return read.find("1/2") != std::string_view::npos || read.find("\u00bd") != std::string_view::npos;
}

bool ShowsTheSet(PageKind kind) {
  switch (kind) {
    case PageKind::kSchematic:
    case PageKind::kPartsList:
    case PageKind::kPartsLocator:
    case PageKind::kTubeLayout:
      return true;
    default:
      return false;
  }
}

bool SurerFirst(const SeenTube& a, const SeenTube& b) {
  const auto key = [](const SeenTube& seen) {
    return std::tuple(-seen.sighting.confidence, seen.place.manual, seen.place.file, seen.place.page,
                      seen.sighting.box.y, seen.sighting.box.x);
  };
  return key(a) < key(b);
}

std::vector<SeenTube> Sorted(std::vector<SeenTube> seen) {
  std::sort(seen.begin(), seen.end(), SurerFirst);
  return seen;
}

// Readings of which each shares a form with another, as one group a type.
std::vector<Seen> ByType(const Seen& seen) {
  std::vector<Seen> groups;
  for (const SeenTube* one : seen) {
    const auto group = std::find_if(groups.begin(), groups.end(), [&](const Seen& known) {
      return std::any_of(known.begin(), known.end(),
                         [&](const SeenTube* other) { return ShareAForm(one->sighting.text, other->sighting.text); });
    });
    if (group == groups.end()) {
      groups.push_back({one});
    } else {
      group->push_back(one);
    }
  }
  return groups;
}

// How surely at least one of the readings is right, taking them for independent.
double Agreement(const Seen& group) {
  double none = 1;
  for (const SeenTube* seen : group) none *= 1 - seen->sighting.confidence;
  return 1 - none;
}

// The form that the group's readings agree on best.
std::string TypeOf(const Seen& group) {
  std::map<std::string, Seen> forms;
  for (const SeenTube* seen : group) forms[seen->sighting.text].push_back(seen);
  return std::max_element(forms.begin(), forms.end(),
                          [](const auto& a, const auto& b) { return Agreement(a.second) < Agreement(b.second); })
      ->first;
}

TubeSocket SocketFrom(const std::string& designator, const Seen& group) {
  TubeSocket socket;
  socket.designator = designator;
  socket.type = TypeOf(group);
  for (const SeenTube* seen : group) {
    socket.seen.push_back(*seen);
    if (seen->sighting.text == socket.type) {
      socket.confidence = std::max(socket.confidence, seen->sighting.confidence);
    }
  }
  socket.seen = Sorted(std::move(socket.seen));
  return socket;
}

TubeSocket SocketAt(const std::string& designator, const Seen& readings) {
  std::vector<Seen> groups = ByType(readings);
  const auto best = std::max_element(groups.begin(), groups.end(),
                                     [](const Seen& a, const Seen& b) { return Agreement(a) < Agreement(b); });
  TubeSocket socket = SocketFrom(designator, *best);
  groups.erase(best);
  for (const Seen& group : groups) {
    for (const SeenTube* seen : group) socket.otherwise.push_back(*seen);
  }
  socket.otherwise = Sorted(std::move(socket.otherwise));
  return socket;
}

void Merge(TubeSocket& socket, TubeSocket other) {
  socket.confidence = std::max(socket.confidence, other.confidence);
  std::move(other.seen.begin(), other.seen.end(), std::back_inserter(socket.seen));
  std::move(other.otherwise.begin(), other.otherwise.end(), std::back_inserter(socket.otherwise));
  socket.seen = Sorted(std::move(socket.seen));
  socket.otherwise = Sorted(std::move(socket.otherwise));
}

// Whether V3 may be A4V3, whose assembly a drawing leaves out.
bool MayBeTheSame(const std::string& a, const std::string& b) {
  return a == b || (a.size() > b.size() && a.ends_with(b) && DesignatorForms(a).back() == b);
}

// Adds a socket to those known, or what it says to the one that it is.
void Place(std::vector<TubeSocket>& sockets, TubeSocket socket) {
  std::vector<TubeSocket*> same;
  for (TubeSocket& known : sockets) {
    const bool alike =
        MayBeTheSame(known.designator, socket.designator) || MayBeTheSame(socket.designator, known.designator);
    if (alike && ShareAForm(known.type, socket.type)) same.push_back(&known);
  }
  if (same.size() == 1) {
    if (socket.designator.size() > same.front()->designator.size()) same.front()->designator = socket.designator;
    Merge(*same.front(), std::move(socket));
  } else {
    sockets.push_back(std::move(socket));
  }
}

// How many tubes the places are: two halves make one.
std::size_t TubesIn(const Seen& places) {
  const auto halves = static_cast<std::size_t>(
      std::count_if(places.begin(), places.end(), [](const SeenTube* p) { return IsHalf(*p); }));
  return places.size() - halves + (halves + 1) / 2;
}

using PageKey = std::tuple<std::string, std::string, int>;
PageKey PageOf(const SeenTube& seen) { return {seen.place.manual, seen.place.file, seen.place.page}; }

// Sockets for a type that stands beside no designator, by the page that shows the most of it.
void AddWithoutDesignator(SetTubes& tubes, const Seen& places) {
  std::map<PageKey, Seen> pages;
  for (const SeenTube* seen : places) {
    if (ShowsTheSet(seen->place.kind)) pages[PageOf(*seen)].push_back(seen);
  }
  if (pages.empty()) {
    for (const SeenTube* seen : places) tubes.unplaced.push_back(*seen);
    return;
  }
  const Seen most = std::max_element(pages.begin(), pages.end(), [](const auto& a, const auto& b) {
                      return TubesIn(a.second) < TubesIn(b.second);
                    })->second;
  Seen wholes;
  Seen halves;
  for (const SeenTube* seen : most) (IsHalf(*seen) ? halves : wholes).push_back(seen);
  for (const SeenTube* seen : wholes) tubes.sockets.push_back(SocketFrom("", {seen}));
  for (std::size_t i = 0; i < halves.size(); i += 2) {
    tubes.sockets.push_back(
        SocketFrom("", Seen(halves.begin() + static_cast<std::ptrdiff_t>(i),
                            halves.begin() + static_cast<std::ptrdiff_t>(std::min(i + 2, halves.size())))));
  }
}

// Places without a designator on a page that shows more of the type than there are sockets for it.
void AddSurplus(SetTubes& tubes, const Seen& places, const std::vector<SeenTube>& all, std::size_t sockets) {
  std::map<PageKey, Seen> pages;
  for (const SeenTube* seen : places) {
    if (ShowsTheSet(seen->place.kind)) pages[PageOf(*seen)].push_back(seen);
  }
  for (const auto& [page, nameless] : pages) {
    std::vector<std::string> named;
    for (const SeenTube& seen : all) {
      if (PageOf(seen) == page && !seen.designator.empty() &&
          ShareAForm(seen.sighting.text, nameless.front()->sighting.text)) {
        named.push_back(WithoutSection(seen.designator));
      }
    }
    std::sort(named.begin(), named.end());
    named.erase(std::unique(named.begin(), named.end()), named.end());
    if (named.size() + TubesIn(nameless) > sockets) {
      for (const SeenTube* seen : nameless) tubes.unplaced.push_back(*seen);
    }
  }
}

// V2 before V10; those without a designator last.
bool CountedBefore(const TubeSocket& a, const TubeSocket& b) {
  const auto key = [](const TubeSocket& socket) {
    const std::size_t figures = socket.designator.find_last_not_of("0123456789") + 1;
    const std::string number = socket.designator.substr(figures);
    return std::tuple(socket.designator.empty(), socket.designator.substr(0, figures), number.size(), number,
                      socket.type);
  };
  return key(a) < key(b);
}

}  // namespace

bool ShareAForm(const std::string& type, const std::string& other) {
  const std::vector<std::string> forms = TubeForms(type);
  const std::vector<std::string> others = TubeForms(other);
  return std::find_first_of(forms.begin(), forms.end(), others.begin(), others.end()) != forms.end();
}

SetTubes SocketsOf(const std::vector<SeenTube>& seen) {
  SetTubes tubes;
  std::map<std::pair<std::string, std::string>, Seen> named;  // by manual and designator
  Seen nameless;
  for (const SeenTube& one : seen) {
    if (one.designator.empty()) {
      nameless.push_back(&one);
    } else {
      named[{one.place.manual, WithoutSection(one.designator)}].push_back(&one);
    }
  }
  for (const auto& [key, readings] : named) Place(tubes.sockets, SocketAt(key.second, readings));

  for (const Seen& places : ByType(nameless)) {
    const auto sockets = static_cast<std::size_t>(std::count_if(
        tubes.sockets.begin(), tubes.sockets.end(),
        [&](const TubeSocket& socket) { return ShareAForm(socket.type, places.front()->sighting.text); }));
    if (sockets == 0) {
      AddWithoutDesignator(tubes, places);
    } else {
      AddSurplus(tubes, places, seen, sockets);
    }
  }
  std::stable_sort(tubes.sockets.begin(), tubes.sockets.end(), CountedBefore);
  tubes.unplaced = Sorted(std::move(tubes.unplaced));
  return tubes;
}

}  // namespace benchleaf

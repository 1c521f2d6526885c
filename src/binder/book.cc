#include "benchleaf/binder/book.h"

#include "binder/markup.h"
#include "library/natural_order.h"
#include "report/color_image.h"

#include "benchleaf/linking/designator_beside.h"

#include <algorithm>
#include <map>
#include <set>
#include <utility>

namespace benchleaf::binder {
namespace {

// Ids that were not given out before.
class Ids {
 public:
  std::string New(const std::string& front, const std::string& text) {
    constexpr std::size_t kLongest = 40;
    const std::string plain = front + Slug(text, kLongest, "spot");
    int& count = used_[plain];
    std::string id;
    do {
      ++count;
      id = count == 1 ? plain : plain + '-' + std::to_string(count);
    } while (!given_.insert(id).second);
    return id;
  }

 private:
  std::map<std::string, int> used_;
  std::set<std::string> given_;
};

std::string FolderName(int number, const std::string& set) {
  constexpr std::size_t kLongest = 48;
  std::string digits = std::to_string(number);
  digits.insert(0, digits.size() < 4 ? 4 - digits.size() : 0, '0');
  return digits + '-' + Slug(set, kLongest, "set");
}

bool IsDrawing(PageKind kind) { return kind == PageKind::kSchematic || kind == PageKind::kPartsLocator; }

bool IsShown(TermKind kind) {
  return kind == TermKind::kDesignator || kind == TermKind::kTube || kind == TermKind::kSemiconductor ||
         kind == TermKind::kItem;
}

// Puts one manual into the book. Positions of the manual's pages, entries and sightings become those of the book.
class ManualInBook {
 public:
  ManualInBook(Book& book, Ids& part_ids, const ManualRecord& manual)
      : book_(book), part_ids_(part_ids), manual_(manual), first_page_(book.pages.size()) {}

  void Add() {
    AddHead();
    for (const PageRecord& page : manual_.pages) AddPage(page);
    for (std::size_t i = 0; i < manual_.pages.size(); ++i) AddParts(i);
    for (std::size_t i = 0; i < manual_.pages.size(); ++i) AddSightings(i);
    AddLinks();
    NameTheRest();
    AddUnlisted();
  }

 private:
  using Position = std::pair<std::size_t, std::size_t>;  // page of the manual, thing on it

  void AddHead() {
    BookManual head{manual_.manual, manual_.title, 0, {}, {}};
    for (const FileRecord& file : manual_.files) {
      head.files.push_back(file.path);
      head.volumes = std::max(head.volumes, file.volume);
      if (file.failure) head.failures.push_back(*file.failure);
    }
    book_.manuals.push_back(std::move(head));
  }

  void AddPage(const PageRecord& record) {
    BookPage page;
    page.place = {book_.set, manual_.manual, record.file, record.page, record.facts.kind, record.facts.printed_number};
    page.manual = book_.manuals.size() - 1;
    page.number = static_cast<int>(book_.pages.size()) + 1;
    page.volume = record.volume;
    page.failure = record.failure;
    page.facts = record.facts;
    page.frame = record.reading.frame;
    book_.pages.push_back(std::move(page));
  }

  BookPage& PageAt(std::size_t i) { return book_.pages[first_page_ + i]; }

  FractionBox Upright(std::size_t page, const FractionBox& box) { return Turned(box, PageAt(page).frame.orientation); }

  // The rows of a page and their parts. Parts of one row share its spot.
  void AddParts(std::size_t page) {
    const PageRecord& record = manual_.pages[page];
    std::vector<Spot>& spots = PageAt(page).spots;
    for (std::size_t i = 0; i < record.entries.size(); ++i) {
      const Entry& entry = record.entries[i];
      const FractionBox box = Upright(page, entry.box);
      const std::string name = NameOf(entry);
      auto row = std::find_if(spots.begin(), spots.end(), [&](const Spot& spot) { return spot.box == box; });
      if (row == spots.end()) {
        Spot spot;
        spot.id = "row-" + std::to_string(spots.size() + 1);
        spot.row = true;
        spot.box = box;
        spot.confidence = entry.confidence;
        spot.part = book_.parts.size();
        spots.push_back(std::move(spot));
        row = spots.end() - 1;
      }
      if (!name.empty()) row->text += (row->text.empty() ? "" : ", ") + name;
      BookPart part;
      part.id = part_ids_.New("part-", name.empty() ? entry.part_number : name);
      part.entry = entry;
      part.row = {first_page_ + page, static_cast<std::size_t>(row - spots.begin()), entry.confidence};
      part_at_[{page, i}] = book_.parts.size();
      if (!name.empty()) parts_named_[name].push_back(book_.parts.size());
      if (!entry.assembly.empty() && !entry.designator.empty())
        parts_named_[entry.designator].push_back(book_.parts.size());
      book_.parts.push_back(std::move(part));
    }
  }

  // What is listed is shown by its row.
  static bool LiesInARow(const Sighting& sighting, const PageRecord& record) {
    constexpr double kMostOfIt = 0.5;
    return (sighting.kind == TermKind::kDesignator || sighting.kind == TermKind::kItem) &&
           std::any_of(record.entries.begin(), record.entries.end(),
                       [&](const Entry& entry) { return OverlapOfSmaller(entry.box, sighting.box) > kMostOfIt; });
  }

  void AddSightings(std::size_t page) {
    const PageRecord& record = manual_.pages[page];
    Ids ids;
    for (std::size_t i = 0; i < record.sightings.size(); ++i) {
      const Sighting& sighting = record.sightings[i];
      if (!IsShown(sighting.kind) || LiesInARow(sighting, record)) continue;
      spot_at_[{page, i}] = PageAt(page).spots.size();
      const std::string name = sighting.kind == TermKind::kDesignator ? WithAssembly(sighting.assembly, sighting.text)
                               : sighting.kind == TermKind::kItem     ? "item " + sighting.text
                                                                      : sighting.text;
      PageAt(page).spots.push_back({ids.New("at-", name), name, false, sighting.kind, Upright(page, sighting.box),
                                    sighting.confidence, std::nullopt});
    }
  }

  void AddLinks() {
    for (const Link& link : manual_.links) {
      const auto part = part_at_.find({link.entry_page, link.entry});
      const auto spot = spot_at_.find({link.seen_page, link.sighting});
      if (part == part_at_.end() || spot == spot_at_.end()) continue;
      book_.parts[part->second].drawn.push_back({first_page_ + link.seen_page, spot->second, link.confidence});
      PageAt(link.seen_page).spots[spot->second].part = part->second;
    }
    for (BookPart& part : book_.parts) {
      std::stable_sort(part.drawn.begin(), part.drawn.end(), [&](const SpotPlace& a, const SpotPlace& b) {
        const bool a_schematic = book_.pages[a.page].place.kind == PageKind::kSchematic;
        const bool b_schematic = book_.pages[b.page].place.kind == PageKind::kSchematic;
        return a_schematic != b_schematic ? a_schematic : a.confidence > b.confidence;
      });
    }
  }

  // Designators outside drawings (in a text, an alignment table) are no links, but name a part all the same.
  void NameTheRest() {
    for (std::size_t i = first_page_; i < book_.pages.size(); ++i) {
      for (Spot& spot : book_.pages[i].spots) {
        if (spot.row || spot.part || spot.kind != TermKind::kDesignator) continue;
        const auto named = parts_named_.find(spot.text);
        if (named != parts_named_.end() && named->second.size() == 1) spot.part = named->second.front();
      }
    }
  }

  void AddUnlisted() {
    std::map<std::string, SpotPlace> surest;
    for (std::size_t i = first_page_; i < book_.pages.size(); ++i) {
      const BookPage& page = book_.pages[i];
      if (!IsDrawing(page.place.kind)) continue;
      for (std::size_t j = 0; j < page.spots.size(); ++j) {
        const Spot& spot = page.spots[j];
        if (spot.row || spot.kind != TermKind::kDesignator || spot.part || parts_named_.count(spot.text) > 0) continue;
        const auto [at, is_new] = surest.try_emplace(spot.text, SpotPlace{i, j, spot.confidence});
        if (!is_new && spot.confidence > at->second.confidence) at->second = {i, j, spot.confidence};
      }
    }
    std::vector<std::string> names;
    for (const auto& [text, place] : surest) names.push_back(text);
    std::sort(names.begin(), names.end(), NaturalLess);
    for (const std::string& name : names) book_.unlisted.push_back(surest.at(name));
  }

  Book& book_;
  Ids& part_ids_;
  const ManualRecord& manual_;
  std::size_t first_page_;
  std::map<Position, std::size_t> part_at_;
  std::map<Position, std::size_t> spot_at_;
  std::map<std::string, std::vector<std::size_t>> parts_named_;
};

}  // namespace

Book MakeBook(int number, const std::vector<ManualRecord>& manuals, std::vector<ManualLineup> lineups,
              std::vector<ManualGaps> gaps) {
  Book book;
  book.number = number;
  if (!manuals.empty()) {
    book.set = manuals.front().set;
    book.maker = manuals.front().maker;
    book.model = manuals.front().model;
  }
  book.folder = FolderName(number, book.set);
  Ids part_ids;
  for (const ManualRecord& manual : manuals) {
    ManualInBook(book, part_ids, manual).Add();
    std::vector<SeenTube> seen = TubesSeen(manual);
    book.tubes.insert(book.tubes.end(), seen.begin(), seen.end());
  }
  book.lineups = std::move(lineups);
  book.gaps = std::move(gaps);
  return book;
}

std::optional<std::size_t> FindPage(const Book& book, const PagePlace& place) {
  const auto page = std::find_if(book.pages.begin(), book.pages.end(), [&](const BookPage& one) {
    return one.place.file == place.file && one.place.page == place.page;
  });
  if (page == book.pages.end()) return std::nullopt;
  return static_cast<std::size_t>(page - book.pages.begin());
}

std::optional<SpotPlace> FindSpot(const Book& book, const PagePlace& place, const FractionBox& box) {
  const auto page = FindPage(book, place);
  if (!page) return std::nullopt;
  const std::vector<Spot>& spots = book.pages[*page].spots;
  const FractionBox upright = Turned(box, book.pages[*page].frame.orientation);
  const auto spot = std::find_if(spots.begin(), spots.end(), [&](const Spot& one) { return one.box == upright; });
  if (spot == spots.end()) return std::nullopt;
  return SpotPlace{*page, static_cast<std::size_t>(spot - spots.begin()), spot->confidence};
}

}  // namespace benchleaf::binder

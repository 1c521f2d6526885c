#include "benchleaf/report/stock.h"

#include "report/place.h"
#include "report/stock_words.h"

#include "benchleaf/report/text.h"
#include "benchleaf/report/tube_knowledge.h"
#include "benchleaf/report/where.h"

#include <algorithm>
#include <cstddef>
#include <numeric>
#include <vector>

namespace benchleaf {
namespace {

constexpr Column::Align kLeft = Column::Align::kLeft;
constexpr Column::Align kRight = Column::Align::kRight;
constexpr Column::Fit kWrap = Column::Fit::kWrap;

int TubesIn(const StockList& list, bool counting_only) {
  return std::accumulate(list.rows.begin(), list.rows.end(), 0, [&](int sum, const StockRow& row) {
    return sum + (!counting_only || row.counts() ? row.count : 0);
  });
}

std::string SocketName(const TubeSocket& socket) {
  return socket.designator.empty() ? socket.type : socket.designator + " " + socket.type;
}

std::string LeastSure(const SetAnswer& set) {
  double least = 1;
  for (const SocketAnswer& socket : set.sockets) least = std::min(least, socket.socket.confidence);
  return set.sockets.empty() ? "" : Sureness(least);
}

// What the set lacks, with what may serve all the same; and what serves in place of the types that it names.
std::vector<std::string> LackLines(const StockReport& report, const SetAnswer& set) {
  std::vector<std::string> lines;
  for (const SocketAnswer& socket : set.sockets) {
    if (socket.served) continue;
    std::string line = SocketName(socket.socket);
    for (std::size_t i = 0; i < socket.perhaps.size(); ++i) {
      line += (i == 0 ? " (on hand: " : " / ") + OnHandWords(report, socket.perhaps[i], socket.socket.type);
    }
    lines.push_back(line + (socket.perhaps.empty() ? "" : ")"));
  }
  return lines;
}

std::vector<std::string> StandInLines(const StockReport& report, const SetAnswer& set) {
  std::vector<std::string> lines;
  for (const SocketAnswer& socket : set.sockets) {
    if (!socket.served || report.list.rows[socket.served->row].type == socket.socket.type) continue;
    lines.push_back(SocketName(socket.socket) + " by " + OnHandWords(report, *socket.served, socket.socket.type));
  }
  return lines;
}

void AddSets(std::string& text, const StockReport& report, const Look& look) {
  Table table({{"set", kLeft, kWrap},
               {"tubes", kRight},
               {"served", kRight},
               {"answer"},
               {"lacks", kLeft, kWrap},
               {"by another type", kLeft, kWrap},
               {"least sure", kRight}});
  for (const SetAnswer* set : SetsOf(report)) {
    table.Add(
        {set->set, std::to_string(set->sockets.size()), std::to_string(set->served()),
         Cell(std::string(Name(set->verdict)), set->verdict == SetVerdict::kLacks ? Paint::kWarning : Paint::kPlain),
         LackLines(report, *set), StandInLines(report, *set), LeastSure(*set)});
  }
  text += table.Render(look);
}

void AddSockets(std::string& text, const StockReport& report, const SetAnswer& set, const Look& look) {
  text += CleanText(set.set) + ": " + std::string(Name(set.verdict)) + ", " + std::to_string(set.served()) + " of " +
          Counted(set.sockets.size(), "tube") + "\n";
  Table table({{"tube"},
               {"type"},
               {"sure", kRight},
               {"also read as"},
               {"read on", kLeft, kWrap},
               {"served by", kLeft, kWrap},
               {"lies at", kLeft, kWrap}});
  for (const SocketAnswer& socket : set.sockets) {
    const SeenTube& seen = socket.socket.seen.front();
    std::vector<std::string> otherwise;
    for (const SeenTube& other : socket.socket.otherwise) otherwise.push_back(other.sighting.text);
    std::vector<std::string> by;
    if (socket.served) {
      by.push_back(OnHandWords(report, *socket.served, socket.socket.type));
    } else {
      by.emplace_back("lacks");
      for (const OnHand& one : socket.perhaps) by.push_back("on hand: " + OnHandWords(report, one, socket.socket.type));
    }
    table.Add({socket.socket.designator, socket.socket.type, Sureness(socket.socket.confidence), otherwise,
               ShortPlace(seen.place) + ", " + RegionOnPage(seen.sighting.box),
               Cell(by, socket.served ? Paint::kPlain : Paint::kWarning),
               socket.served ? report.list.rows[socket.served->row].place : std::string()});
  }
  text += table.Render(look);
}

void AddUnplaced(std::string& text, const StockReport& report, const Look& look) {
  Table table({{"set", kLeft, kWrap}, {"type"}, {"read on", kLeft, kWrap}, {"kind"}, {"sure", kRight}});
  for (const SetAnswer* set : SetsOf(report)) {
    for (const SeenTube& seen : set->unplaced) {
      table.Add({set->set, seen.sighting.text, ShortPlace(seen.place) + ", " + RegionOnPage(seen.sighting.box),
                 std::string(Name(seen.place.kind)), Sureness(seen.sighting.confidence)});
    }
  }
  if (table.empty()) return;
  text += "\nSeen without a designator; look whether it is a tube of the set:\n" + table.Render(look);
}

void AddContested(std::string& text, const StockReport& report, const Look& look) {
  Table table({{"type"}, {"on hand", kRight}, {"claimed by", kLeft, kWrap}});
  for (const Contested& one : report.answer.contested) {
    std::string sets;
    bool concerned = report.set.empty();
    for (const auto& [set, tubes] : one.claims) {
      sets += (sets.empty() ? "" : ", ") + set + " (" + std::to_string(tubes) + ")";
      concerned = concerned || set == report.set;
    }
    if (concerned) table.Add({one.type, std::to_string(one.on_hand), sets});
  }
  if (table.empty()) return;
  text += "\nClaimed by more sets than there are tubes; each set is answered on its own:\n" + table.Render(look);
}

// Rows of the list under a title, those that `wanted` picks, each with what `words` says of it.
template <class Wanted, class Words>
void AddRows(std::string& text, const StockReport& report, const std::string& title, const Wanted& wanted,
             const Words& words, const Look& look) {
  Table table({{"line", kRight}, {"type"}, {"count", kRight}, {"remark", kLeft, kWrap}, {"lies at", kLeft, kWrap}});
  for (std::size_t i = 0; i < report.list.rows.size(); ++i) {
    const StockRow& row = report.list.rows[i];
    if (wanted(i)) table.Add({std::to_string(row.line), row.type, std::to_string(row.count), words(row), row.place});
  }
  if (!table.empty()) text += "\n" + title + "\n" + table.Render(look);
}

void AddList(std::string& text, const StockReport& report, const Look& look) {
  const auto& rows = report.list.rows;
  AddRows(
      text, report, "Not counted:", [&](std::size_t i) { return !rows[i].counts(); },
      [](const StockRow& row) { return std::vector<std::string>{row.why}; }, look);
  AddRows(
      text, report, "Look at the markings:", [&](std::size_t i) { return !rows[i].remarks.empty(); },
      [](const StockRow& row) { return row.remarks; }, look);
}

void AddTheRest(std::string& text, const StockReport& report, const Look& look) {
  const std::vector<std::size_t> unneeded = RowsThatNoSetNeeds(report);
  AddRows(
      text, report, "No set of the library needs:",
      [&](std::size_t i) { return std::binary_search(unneeded.begin(), unneeded.end(), i); },
      [&](const StockRow& row) {
        const auto known = KnowTube(row.type, report.tubes);
        const TubeEntry* entry = known.empty() ? nullptr : known.front().entry;
        return std::vector<std::string>{entry == nullptr ? "not in the tables of tube types" : entry->tube_class};
      },
      look);
  const std::vector<std::string> unknown = UnknownTypes(report);
  if (unknown.empty()) return;
  text += "\nNot in the tables of tube types; what their numbers say:\n";
  for (const std::string& type : unknown) text += KnowledgeText(KnowTube(type, report.tubes), report.tubes, look);
}

}  // namespace

std::string StockText(const StockReport& report, const Look& look) {
  std::string text = Counted(report.list.rows.size(), "row") + ", " +
                     Counted(static_cast<std::size_t>(TubesIn(report.list, false)), "tube") + ", " +
                     std::to_string(TubesIn(report.list, true)) + " of them counted as good\n";
  if (!report.list.condition_stated) {
    text += "The list has no column of condition or tester's result: every tube is taken for good. Test them first.\n";
  }
  text += "\n";
  if (report.set.empty()) {
    AddSets(text, report, look);
  } else {
    for (const SetAnswer* set : SetsOf(report)) AddSockets(text, report, *set, look);
  }
  AddUnplaced(text, report, look);
  AddContested(text, report, look);
  AddList(text, report, look);
  if (report.set.empty()) AddTheRest(text, report, look);
  return text;
}

}  // namespace benchleaf

#include "report/place.h"
#include "report/stock_words.h"

#include "benchleaf/report/csv.h"
#include "benchleaf/report/stock.h"
#include "benchleaf/report/tube_knowledge.h"
#include "benchleaf/report/where.h"

#include <cstddef>
#include <vector>

namespace benchleaf {
namespace {

Json Texts(const std::vector<std::string>& texts) {
  Json array = Json::Array();
  for (const std::string& text : texts) array.Add(text);
  return array;
}

Json SeenJson(const SeenTube& seen) {
  Json object = Json::Object();
  SetPlace(object, seen.place);
  SetSighting(object, seen.sighting);
  object.Set("designator", seen.designator);
  return object;
}

Json SeenJson(const std::vector<SeenTube>& seen) {
  Json array = Json::Array();
  for (const SeenTube& one : seen) array.Add(SeenJson(one));
  return array;
}

Json OnHandJson(const StockReport& report, const OnHand& on_hand, const std::string& wanted) {
  const StockRow& row = report.list.rows[on_hand.row];
  return Json::Object({{"line", row.line},
                       {"tube", row.type},
                       {"standing", std::string(Name(on_hand.stand_in.standing))},
                       {"by_suffix", on_hand.stand_in.by_suffix},
                       {"heater_differs", on_hand.stand_in.heater_differs},
                       {"state", std::string(Name(row.state))},
                       {"place", row.place},
                       {"words", OnHandWords(report, on_hand, wanted)}});
}

Json SocketJson(const StockReport& report, const SocketAnswer& socket) {
  const std::string& wanted = socket.socket.type;
  Json perhaps = Json::Array();
  for (const OnHand& one : socket.perhaps) perhaps.Add(OnHandJson(report, one, wanted));
  return Json::Object({{"designator", socket.socket.designator},
                       {"tube", wanted},
                       {"confidence", socket.socket.confidence},
                       {"served", socket.served ? OnHandJson(report, *socket.served, wanted) : Json()},
                       {"perhaps", std::move(perhaps)},
                       {"seen", SeenJson(socket.socket.seen)},
                       {"also_read", SeenJson(socket.socket.otherwise)}});
}

Json RowJson(const StockRow& row, const RowAnswer& answer) {
  return Json::Object({{"type", "stock-row"},
                       {"line", row.line},
                       {"tube", row.type},
                       {"count", row.count},
                       {"listed", row.listed},
                       {"glass", row.glass},
                       {"box", row.box},
                       {"condition", row.condition},
                       {"tester", row.tester},
                       {"place", row.place},
                       {"state", std::string(Name(row.state))},
                       {"why", row.why},
                       {"remarks", Texts(row.remarks)},
                       {"wanted_by", Texts(answer.wanted_by)},
                       {"known", answer.known}});
}

}  // namespace

std::string StockCsv(const StockReport& report) {
  std::string csv = CsvRecord({"set", "verdict", "designator", "type", "confidence", "file", "page", "where",
                               "served_by", "standing", "line", "place", "perhaps"});
  for (const SetAnswer* set : SetsOf(report)) {
    for (const SocketAnswer& socket : set->sockets) {
      const SeenTube& seen = socket.socket.seen.front();
      std::vector<std::string> fields = {set->set,
                                         std::string(Name(set->verdict)),
                                         socket.socket.designator,
                                         socket.socket.type,
                                         Json(socket.socket.confidence).Dump(),
                                         seen.place.file,
                                         std::to_string(seen.place.page),
                                         WhereOnPage(seen.sighting.box)};
      if (socket.served) {
        const StockRow& row = report.list.rows[socket.served->row];
        fields.insert(fields.end(), {row.type, std::string(Name(socket.served->stand_in.standing)),
                                     std::to_string(row.line), row.place});
      } else {
        fields.insert(fields.end(), 4, "");
      }
      std::string perhaps;
      for (const OnHand& one : socket.perhaps) {
        perhaps += (perhaps.empty() ? "" : " / ") + OnHandWords(report, one, socket.socket.type);
      }
      fields.push_back(perhaps);
      csv += CsvRecord(fields);
    }
  }
  return csv;
}

std::string StockJson(const StockReport& report) {
  std::string lines;
  for (const SetAnswer* set : SetsOf(report)) {
    Json sockets = Json::Array();
    for (const SocketAnswer& socket : set->sockets) sockets.Add(SocketJson(report, socket));
    lines += Json::Object({{"type", "stock-set"},
                           {"set", set->set},
                           {"verdict", std::string(Name(set->verdict))},
                           {"tubes", static_cast<std::int64_t>(set->sockets.size())},
                           {"served", static_cast<std::int64_t>(set->served())},
                           {"sockets", std::move(sockets)},
                           {"unplaced", SeenJson(set->unplaced)}})
                 .Dump() +
             "\n";
  }
  for (const Contested& one : report.answer.contested) {
    Json claims = Json::Array();
    for (const auto& [set, tubes] : one.claims) claims.Add(Json::Object({{"set", set}, {"tubes", tubes}}));
    lines +=
        Json::Object(
            {{"type", "stock-claims"}, {"tube", one.type}, {"on_hand", one.on_hand}, {"claims", std::move(claims)}})
            .Dump() +
        "\n";
  }
  for (std::size_t i = 0; i < report.list.rows.size(); ++i) {
    lines += RowJson(report.list.rows[i], report.answer.rows[i]).Dump() + "\n";
  }
  for (const std::string& type : UnknownTypes(report)) lines += KnowledgeJson(KnowTube(type, report.tubes));
  return lines;
}

}  // namespace benchleaf

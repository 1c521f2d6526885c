#include "bench/figures.h"

#include <nlohmann/json.hpp>  // for the tests' own files; benchleaf's are written by record/

#include <cstddef>

namespace benchleaf::bench {
namespace {

using nlohmann::ordered_json;

ordered_json FromKind(const KindFigures& figures) {
  const Tally& tally = figures.tally;
  return {{"kind", figures.kind},
          {"stand", tally.on_pages()},
          {"found", tally.found()},
          {"recall", tally.Recall()},
          {"precision", tally.Precision()},
          {"strict_precision", tally.StrictPrecision()},
          {"upright_recall", tally.UprightRecall()},
          {"turned", tally.turned},
          {"turned_recall", tally.TurnedRecall()},
          {"false", tally.false_seen},
          {"net", tally.nets_seen},
          {"pin", tally.pins_seen},
          {"text", tally.other_seen}};
}

ordered_json FromReliability(const Reliability& reliability) {
  ordered_json bins = ordered_json::array();
  for (std::size_t i = 0; i < Reliability::kBins; ++i) {
    const Reliability::Bin& bin = reliability.bins()[i];
    bins.push_back({{"from", static_cast<double>(i) / Reliability::kBins},
                    {"seen", bin.seen},
                    {"right", bin.right},
                    {"mean_stated", bin.Stated()}});
  }
  return {{"bins", bins}, {"expected_calibration_error", reliability.ExpectedCalibrationError()}};
}

ordered_json FromRows(const EntryTally& rows) {
  return {{"listed", rows.listed},
          {"read", rows.read},
          {"recall", rows.Recall()},
          {"precision", rows.Precision()},
          {"designator_recall", rows.DesignatorRecall()}};
}

}  // namespace

std::string ToJson(const std::vector<ReaderFigures>& all) {
  ordered_json list = ordered_json::array();
  for (const ReaderFigures& figures : all) {
    ordered_json one = {{"grade", figures.grade},
                        {"reader", figures.reader},
                        {"pages", figures.pages},
                        {"seconds_per_page", figures.SecondsPerPage()}};
    for (const KindFigures& kind : figures.kinds) one["terms"].push_back(FromKind(kind));
    if (figures.states_confidence) {
      one["reliability"] = FromReliability(figures.reliability);
    }
    if (figures.entries.listed > 0) {
      one["rows"] = FromRows(figures.entries);
    }
    list.push_back(one);
  }
  return list.dump(1) + "\n";
}

}  // namespace benchleaf::bench

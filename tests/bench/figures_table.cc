#include "bench/figures.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <cstdio>

namespace benchleaf::bench {
namespace {

template <class... Values>
std::string Formatted(const char* format, Values... values) {
  char line[256];
  static_cast<void>(std::snprintf(line, sizeof line, format, values...));
  return line;
}

}  // namespace

double ReaderFigures::Recall(const std::string& kind) const {
  const auto found =
      std::find_if(kinds.begin(), kinds.end(), [&](const KindFigures& figures) { return figures.kind == kind; });
  return found == kinds.end() ? 0 : found->tally.Recall();
}

std::string TableHead() {
  return "precision: of what was seen, without text that stands there as something else (net: labels of nets and "
         "rails,\npin: names of pins, text: values, types, words); strict: with that text counted against\n" +
         Formatted("%-8s %-10s %-11s %5s %7s %9s %7s %8s %7s %6s %4s %4s %4s %9s\n", "grade", "reader", "kind", "stand",
                   "recall", "precision", "strict", "upright", "turned", "false", "net", "pin", "text", "sec/page");
}

std::string TableLines(const ReaderFigures& figures) {
  std::string lines;
  for (const KindFigures& one : figures.kinds) {
    const Tally& tally = one.tally;
    if (tally.on_pages() > 0) {
      lines +=
          Formatted("%-8s %-10s %-11s %5d %7.3f %9.3f %7.3f %8.3f %7.3f %6d %4d %4d %4d %9.2f\n", figures.grade.c_str(),
                    figures.reader.c_str(), one.kind.c_str(), tally.on_pages(), tally.Recall(), tally.Precision(),
                    tally.StrictPrecision(), tally.UprightRecall(), tally.TurnedRecall(), tally.false_seen,
                    tally.nets_seen, tally.pins_seen, tally.other_seen, figures.SecondsPerPage());
    }
  }
  const EntryTally& rows = figures.entries;
  if (rows.listed > 0) {
    lines += Formatted(
        "%-8s %-10s rows: %d listed, %d read; designator and part number right %.3f of those listed, %.3f of those "
        "read; designator alone %.3f\n",
        figures.grade.c_str(), figures.reader.c_str(), rows.listed, rows.read, rows.Recall(), rows.Precision(),
        rows.DesignatorRecall());
  }
  return lines;
}

std::string PageLine(const std::string& page, const ReaderFigures& figures) {
  std::string line = Formatted("%-8s %-10s %-24s", figures.grade.c_str(), figures.reader.c_str(), page.c_str());
  for (const KindFigures& one : figures.kinds) {
    line += Formatted("  %s %d %.3f/%.3f", one.kind.c_str(), one.tally.on_pages(), one.tally.Recall(),
                      one.tally.Precision());
  }
  const EntryTally& rows = figures.entries;
  return line + Formatted("  row %d %.3f/%.3f\n", rows.listed, rows.Recall(), rows.Precision());
}

std::string RatioLine(const ReaderFigures& figures, const ReaderFigures& bare) {
  const double found = bare.Recall("designator");
  if (found == 0 || bare.seconds == 0) {
    return {};
  }
  return Formatted("%-8s %s finds %.2f times as many designators as %s, in %.2f times the time\n",
                   figures.grade.c_str(), figures.reader.c_str(), figures.Recall("designator") / found,
                   bare.reader.c_str(), figures.SecondsPerPage() / bare.SecondsPerPage());
}

std::string ReliabilityLines(const Reliability& reliability) {
  constexpr double kBarWidth = 40;
  std::string lines = "stated    seen  right  share   mean  (bar: share right; |: mean stated)\n";
  for (std::size_t i = 0; i < Reliability::kBins; ++i) {
    const Reliability::Bin& bin = reliability.bins()[i];
    if (bin.seen == 0) {
      continue;
    }
    std::string bar(static_cast<std::size_t>(kBarWidth) + 1, ' ');
    std::fill_n(bar.begin(), std::lround(kBarWidth * bin.Right()), '#');
    bar[static_cast<std::size_t>(std::lround(kBarWidth * bin.Stated()))] = '|';
    lines += Formatted("%.1f-%.1f  %6d %6d  %5.3f  %5.3f  %s\n", static_cast<double>(i) / Reliability::kBins,
                       static_cast<double>(i + 1) / Reliability::kBins, bin.seen, bin.right, bin.Right(), bin.Stated(),
                       bar.c_str());
  }
  return lines + Formatted("expected calibration error %.3f\n", reliability.ExpectedCalibrationError());
}

}  // namespace benchleaf::bench

// Measures the links between parts lists and drawings: each row with every place where its part is drawn. Takes
// minutes, so it is no part of the tests.

#include "bench/benchleaf_reader.h"
#include "bench/contest.h"
#include "bench/kept_readings.h"
#include "bench/link_scorer.h"
#include "bench/made_manuals.h"
#include "bench/manual_readings.h"
#include "places/places.h"
#include "work/assemble_manual.h"

#include <atomic>
#include <cstddef>
#include <cstdio>
#include <fstream>
#include <map>
#include <optional>
#include <sstream>
#include <stdexcept>
#include <string>
#include <string_view>
#include <tuple>
#include <utility>
#include <vector>

namespace benchleaf::bench {
namespace {

constexpr const char* kUsage =
    "bench_links [OPTION VALUE]...\n"
    "Recall, precision and F1 of links from rows of parts lists to places on schematics and parts locators, with the\n"
    "list as it is printed (true) and as it is read (read); then, by reason, how many of the links are right.\n"
    "  --half dev|practice|held-out      which manuals; held-out ones are for final figures only (default dev)\n"
    "  --keep DIR                        keep the pages' readings there, and use those that are kept; may be the\n"
    "                                    folder of bench_manuals\n"
    "  --words printed                   do not read: take all words as they were printed, so that only rules can err\n"
    "  --told FILE                       write every link as TSV: missed (with what was read there), right or wrong\n";

struct Options {
  ContestOptions contest;
  ManualHalf half = ManualHalf::kDevelopment;
  std::string keep;
  std::string told;
  bool printed = false;
};

Options Parse(const std::vector<std::string>& arguments) {
  Options options;
  TakeAll(arguments, [&](std::string_view name, const std::string& value) {
    if (name == "--half" && (value == "dev" || value == "practice" || value == "held-out")) {
      options.half = value == "dev"        ? ManualHalf::kDevelopment
                     : value == "practice" ? ManualHalf::kPractice
                                           : ManualHalf::kHeldOut;
    } else if (name == "--keep") {
      options.keep = value;
    } else if (name == "--told") {
      options.told = value;
    } else if (name == "--words" && value == "printed") {
      options.printed = true;
    } else {
      return Take(name, value, options.contest);
    }
    return true;
  });
  return options;
}

struct LinkTally {
  int there = 0;
  int found = 0;
  int told = 0;
  int right = 0;
  double stated = 0;  // sum of the confidences

  double Recall() const { return there == 0 ? 0 : static_cast<double>(found) / there; }
  double Precision() const { return told == 0 ? 0 : static_cast<double>(right) / told; }
  double Stated() const { return told == 0 ? 0 : stated / told; }
  double F1() const {
    const double sum = Recall() + Precision();
    return sum == 0 ? 0 : 2 * Recall() * Precision() / sum;
  }
};

class LinkBench {
 public:
  explicit LinkBench(const Options& options) : readings_(options.keep) {
    if (!options.told.empty()) {
      told_.open(options.told);
      if (!told_) {
        throw std::runtime_error(options.told + " cannot be written");
      }
    }
  }

  // The drawings as `read`; `list` says where the pages of the list come from.
  void Add(const MadeManual& made, const std::string& grade, const std::string& list, const ReadManual& read) {
    const std::atomic<bool> never{false};
    const auto manual = AssembleManual({}, read.pages, *rules_, never);
    std::vector<PageAsItIs> pages;
    for (std::size_t i = 0; i < read.truth.size(); ++i) {
      pages.push_back({read.truth[i], i < made.assemblies.size() ? made.assemblies[i] : std::string()});
    }
    for (std::size_t i = 0; i < pages.size() && told_.is_open(); ++i) {
      told_ << grade << '\t' << list << '\t' << made.name << "\tpage\t\t" << i + 1 << '\t' << pages[i].truth.kind
            << "\ttaken for " << Name(manual->pages[i].facts.kind) << "\t\t" << manual->pages[i].entries.size()
            << " entries of " << pages[i].truth.entries.size() << '\n';
    }
    const JudgedLinks judged = JudgeLinks(pages, *manual);
    for (std::size_t i = 0; i < judged.there.size(); ++i) {
      const TrueLink& link = judged.there[i];
      LinkTally& tally = tallies_[{pages[link.seen_page].truth.kind, list}];
      ++tally.there;
      tally.found += judged.found[i] ? 1 : 0;
      const scanmaker::TruthTerm& term = pages[link.seen_page].truth.terms[link.term];
      if (told_.is_open() && !judged.found[i]) {
        const bool row = HasRow(pages[link.entry_page].truth.entries[link.entry], manual->pages[link.entry_page]);
        told_ << grade << '\t' << list << '\t' << made.name << "\tmissed\t"
              << pages[link.entry_page].truth.entries[link.entry].assembly << '\t' << term.text << '\t'
              << pages[link.seen_page].truth.kind << '\t' << (row ? "place not seen or not linked" : "row not read")
              << "\t\t"
              << (row ? WordsAt(manual->pages[link.seen_page].reading, term.box)
                      : WordsAt(manual->pages[link.entry_page].reading,
                                pages[link.entry_page].truth.entries[link.entry].box))
              << '\n';
      }
    }
    for (std::size_t i = 0; i < manual->links.size(); ++i) {
      const Link& link = manual->links[i];
      for (LinkTally* tally : {&tallies_[{pages[link.seen_page].truth.kind, list}], &reasons_[{list, link.reason}]}) {
        ++tally->told;
        tally->right += judged.right[i] ? 1 : 0;
        tally->stated += link.confidence;
      }
      if (told_.is_open()) {
        const Entry& entry = manual->pages[link.entry_page].entries[link.entry];
        told_ << grade << '\t' << list << '\t' << made.name << '\t' << (judged.right[i] ? "right" : "wrong") << '\t'
              << entry.assembly << '\t' << entry.designator << entry.item << '\t' << pages[link.seen_page].truth.kind
              << '\t' << link.reason << '\t' << link.confidence << '\t'
              << WordsAt(manual->pages[link.seen_page].reading,
                         manual->pages[link.seen_page].sightings[link.sighting].box)
              << '\n';
      }
    }
  }

  void AddRead(const MadeManual& made, scanmaker::Grade grade) {
    if (!reader_) {
      reader_.emplace();
    }
    const std::string name(scanmaker::Name(grade));
    const ReadManual read = ReadPages(made, grade, *reader_, readings_);
    Add(made, name, "read", read);
    ReadManual true_list = read;
    const ReadManual printed = PrintedPages(made);
    for (std::size_t i = 0; i < made.pages.size(); ++i) {
      if (made.pages[i].kind == "parts list") {
        true_list.pages[i] = printed.pages[i];
        true_list.truth[i] = printed.truth[i];
      }
    }
    Add(made, name, "true", true_list);
  }

  void AddPrinted(const MadeManual& made) { Add(made, "printed", "printed", PrintedPages(made)); }

  // Prints the sums and starts new ones.
  void Finish(const char* origin, const std::string& grade) {
    for (const auto& [name, tally] : tallies_) {
      std::printf("%-8s %-10s %-13s %-8s %6d %6d %7.3f %9.3f %6.3f\n", grade.c_str(), origin, name.first.c_str(),
                  name.second.c_str(), tally.there, tally.told, tally.Recall(), tally.Precision(), tally.F1());
    }
    static_cast<void>(std::fflush(stdout));
    tallies_.clear();
  }

  void FinishAll() const {
    std::printf("\n%-8s %-40s %6s %6s %6s\n", "list", "reason", "links", "right", "stated");
    for (const auto& [name, tally] : reasons_) {
      std::printf("%-8s %-40s %6d %6.3f %6.3f\n", name.first.c_str(), name.second.c_str(), tally.told,
                  tally.Precision(), tally.Stated());
    }
  }

 private:
  static bool HasRow(const scanmaker::TruthEntry& row, const PageRecord& page) {
    for (const Entry& entry : page.entries) {
      if (entry.designator == row.designator && entry.assembly == row.assembly && entry.item == row.item) {
        return true;
      }
    }
    return false;
  }

  // What was read at a place: each word with its confidence and its other readings.
  static std::string WordsAt(const PageReading& reading, const FractionBox& box) {
    constexpr double kThere = 0.2;
    std::ostringstream words;
    for (const Word& word : reading.words) {
      if (OverlapOfSmaller(ToScan(reading.frame, word.box), box) < kThere) {
        continue;
      }
      words << (words.tellp() == 0 ? "" : "  ") << word.text << ' ' << word.confidence;
      for (const Alternative& alternative : word.alternatives) {
        words << " / " << alternative.text << ' ' << alternative.confidence;
      }
    }
    return words.str();
  }

  static std::shared_ptr<const Rules> LoadRules() {
    Result<std::shared_ptr<const Rules>> rules = Rules::Load(SourceFolder() / "config");
    if (!rules) {
      throw std::runtime_error(rules.error().ToString());
    }
    return *std::move(rules);
  }

  std::optional<BenchleafReader> reader_;  // made when it is first needed
  KeptReadings readings_;
  std::shared_ptr<const Rules> rules_ = LoadRules();
  std::ofstream told_;
  std::map<std::pair<std::string, std::string>, LinkTally> tallies_;  // by kind of page and list
  std::map<std::pair<std::string, std::string>, LinkTally> reasons_;  // by list and reason
};

void Run(const Options& options) {
  std::printf("%-8s %-10s %-13s %-8s %6s %6s %7s %9s %6s\n", "grade", "manuals", "pages", "list", "there", "told",
              "recall", "precision", "F1");
  LinkBench bench(options);
  for (const auto& [origin, manuals] :
       {std::pair{"invented", InventedManuals(options.half)}, std::pair{"assembled", AssembledManuals(options.half)},
        std::pair{"items", ItemManuals(options.half)}, std::pair{"outside", OutsideManuals(options.half)}}) {
    if (options.printed) {
      for (const MadeManual& manual : manuals) {
        bench.AddPrinted(manual);
      }
      bench.Finish(origin, "printed");
      continue;
    }
    for (const scanmaker::Grade grade : Grades(options.contest)) {
      for (const MadeManual& manual : manuals) {
        bench.AddRead(manual, grade);
      }
      bench.Finish(origin, std::string(scanmaker::Name(grade)));
    }
  }
  bench.FinishAll();
}

}  // namespace
}  // namespace benchleaf::bench

int main(int argc, char** argv) {
  using namespace benchleaf::bench;
  return RunBench(kUsage, argc, argv, [](const auto& arguments) { Run(Parse(arguments)); });
}

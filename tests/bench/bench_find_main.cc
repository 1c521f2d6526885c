// Measures what a search finds of that which stands on badly scanned manuals: by the exact text alone, and by all that
// `find` does. Takes minutes, so it is no part of the tests.

#include "bench/benchleaf_reader.h"
#include "bench/contest.h"
#include "bench/kept_readings.h"
#include "bench/made_manuals.h"
#include "bench/manual_readings.h"
#include "bench/search_scorer.h"
#include "places/places.h"
#include "work/assemble_manual.h"

#include "benchleaf/store/index_reader.h"
#include "benchleaf/store/index_writer.h"

#include <unistd.h>

#include <array>
#include <atomic>
#include <chrono>
#include <cstddef>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <map>
#include <memory>
#include <optional>
#include <set>
#include <stdexcept>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace benchleaf::bench {
namespace {

constexpr const char* kUsage =
    "bench_find [OPTION VALUE]...\n"
    "Every designator, tube and part number of made manuals is looked for in an index of them: how many of its places\n"
    "are among the answers, by exact text and in all ways; how often the first answer is right; and how many answers\n"
    "there are to terms that stand in other manuals only.\n"
    "  --half dev|held-out               which manuals; held-out ones are for final figures only (default dev)\n"
    "  --keep DIR                        keep the pages' readings there, and use those that are kept\n"
    "  --told FILE                       write what is missed and what is answered wrongly as TSV\n";

struct Options {
  ContestOptions contest;
  ManualHalf half = ManualHalf::kDevelopment;
  std::string keep;
  std::string told;
};

Options Parse(const std::vector<std::string>& arguments) {
  Options options;
  TakeAll(arguments, [&](std::string_view name, const std::string& value) {
    if (name == "--half" && (value == "dev" || value == "held-out")) {
      options.half = value == "dev" ? ManualHalf::kDevelopment : ManualHalf::kHeldOut;
    } else if (name == "--keep") {
      options.keep = value;
    } else if (name == "--told") {
      options.told = value;
    } else {
      return Take(name, value, options.contest);
    }
    return true;
  });
  return options;
}

template <class T>
T OrThrow(Result<T> result) {
  if (!result) {
    throw std::runtime_error(result.error().ToString());
  }
  return std::move(*result);
}

// A folder that is gone with the object.
class ScratchFolder {
 public:
  ScratchFolder() {
    std::string name = (std::filesystem::temp_directory_path() / "bench-find-XXXXXX").string();
    if (mkdtemp(name.data()) == nullptr) {
      throw std::runtime_error("no folder can be made in " + std::filesystem::temp_directory_path().string());
    }
    path_ = name;
  }
  ~ScratchFolder() {
    std::error_code ignored;
    std::filesystem::remove_all(path_, ignored);
  }
  ScratchFolder(const ScratchFolder&) = delete;
  ScratchFolder& operator=(const ScratchFolder&) = delete;

  const std::filesystem::path& path() const { return path_; }

 private:
  std::filesystem::path path_;
};

constexpr std::array<const char*, 3> kKinds = {"designator", "tube", "part-number"};

// The pages of one manual as they are, and the distinct terms of each kind on them.
struct Asked {
  std::string set;
  std::vector<scanmaker::PageTruth> truth;
  std::map<std::string, std::set<std::string>> terms;
};

class SearchBench {
 public:
  explicit SearchBench(const Options& options)
      : half_(options.half), rules_(OrThrow(Rules::Load(SourceFolder() / "config"))), readings_(options.keep) {
    if (!options.told.empty()) {
      told_.open(options.told);
      if (!told_) {
        throw std::runtime_error(options.told + " cannot be written");
      }
    }
  }

  void Measure(scanmaker::Grade grade) {
    const ScratchFolder folder;
    std::vector<Asked> all;
    {
      const auto writer = OrThrow(IndexWriter::Open(folder.path() / "index", rules_));
      for (const std::vector<MadeManual>& manuals : {InventedManuals(half_), OutsideManuals(half_)}) {
        for (const MadeManual& made : manuals) {
          all.push_back(Store(made, grade, *writer));
        }
      }
    }
    const auto reader = OrThrow(IndexReader::Open(folder.path() / "index", rules_));
    for (const std::string kind : kKinds) {
      SearchTally tally;
      SearchTally strangers;
      const auto start = std::chrono::steady_clock::now();
      for (std::size_t i = 0; i < all.size(); ++i) {
        for (const std::string& term : all[i].terms[kind]) {
          AskFor(kind, term, all[i], *reader, tally);
        }
        // As many terms of the next manual that this one does not have.
        for (const std::string& term : all[(i + 1) % all.size()].terms[kind]) {
          if (all[i].terms[kind].count(term) == 0) {
            AskFor(kind, term, all[i], *reader, strangers);
          }
        }
      }
      const std::chrono::duration<double, std::milli> took = std::chrono::steady_clock::now() - start;
      const int queries = tally.queries + strangers.queries;
      std::printf("%-7s %-12s %6d %6.3f %6.3f %9.3f %9.3f %7.2f %9.2f %9.2f %7.1f\n",
                  std::string(scanmaker::Name(grade)).c_str(), kind.c_str(), tally.there, tally.ExactRecall(),
                  tally.Recall(), tally.FirstRight(), tally.RightBeforeWrong(), tally.AnswersPerQuery(),
                  strangers.ExactAnswersPerQuery(), strangers.AnswersPerQuery(),
                  queries == 0 ? 0 : took.count() / queries);
      static_cast<void>(std::fflush(stdout));
    }
  }

 private:
  Asked Store(const MadeManual& made, scanmaker::Grade grade, IndexWriter& writer) {
    if (!reader_) {
      reader_.emplace();
    }
    ReadManual read = ReadPages(made, grade, *reader_, readings_);
    ManualRecord head;
    head.set = made.name;
    head.manual = "made";
    for (std::size_t i = 0; i < read.pages.size(); ++i) {
      read.pages[i].file = made.name + ".pdf";
      read.pages[i].page = static_cast<int>(i) + 1;
      read.pages[i].content_key = made.name + ":" + std::to_string(i);
    }
    const std::atomic<bool> never{false};
    const auto manual = AssembleManual(std::move(head), std::move(read.pages), *rules_, never);
    if (const auto stored = writer.ReplaceManual(*manual); !stored) {
      throw std::runtime_error(stored.error().ToString());
    }
    Asked asked;
    asked.set = made.name;
    for (const scanmaker::PageTruth& page : read.truth) {
      for (const scanmaker::TruthTerm& term : page.terms) {
        asked.terms[term.kind].insert(term.text);
      }
    }
    asked.truth = std::move(read.truth);
    return asked;
  }

  void AskFor(const std::string& kind, const std::string& term, const Asked& manual, IndexReader& reader,
              SearchTally& tally) {
    constexpr int kMost = 50;
    FindQuery query;
    query.term = term;
    query.set = manual.set;
    query.limit = kMost;
    const std::vector<FoundSighting> answers = OrThrow(reader.Find(query));
    const JudgedAnswers judged = JudgeAnswers(manual.truth, kind, term, answers);
    tally.Add(judged, answers);
    if (!told_.is_open()) {
      return;
    }
    for (std::size_t i = 0; i < judged.places.size(); ++i) {
      if (!judged.places[i].found) {
        told_ << "missed\t" << kind << '\t' << manual.set << '\t' << judged.places[i].page + 1 << '\t' << term << '\n';
      }
    }
    for (std::size_t i = 0; i < answers.size(); ++i) {
      told_ << (judged.right[i] ? "right\t" : "wrong\t") << kind << '\t' << manual.set << '\t' << answers[i].place.page
            << '\t' << term << '\t' << answers[i].sighting.text << '\t' << Name(answers[i].match) << '\t'
            << answers[i].sighting.confidence << '\n';
    }
  }

  ManualHalf half_;
  std::shared_ptr<const Rules> rules_;
  std::optional<BenchleafReader> reader_;
  KeptReadings readings_;
  std::ofstream told_;
};

void Run(const Options& options) {
  std::printf("%-7s %-12s %6s %6s %6s %9s %9s %7s %9s %9s %7s\n", "grade", "terms", "places", "exact", "all",
              "1st right", "no wrong", "answers", "strangers", "answers", "ms");
  SearchBench bench(options);
  for (const scanmaker::Grade grade : Grades(options.contest)) {
    bench.Measure(grade);
  }
  std::printf(
      "\nexact: share of the places that an answer with the very text, or a form of it, gives; all: that any answer\n"
      "gives. 1st right: share of the questions with a right answer whose first answer is right; no wrong: whose "
      "right\n"
      "answers all stand before the wrong ones. answers: a question. strangers: answers to a term that the set does "
      "not\n"
      "have, by exact text and in all.\n");
}

}  // namespace
}  // namespace benchleaf::bench

int main(int argc, char** argv) {
  using namespace benchleaf::bench;
  return RunBench(kUsage, argc, argv, [](const auto& arguments) { Run(Parse(arguments)); });
}

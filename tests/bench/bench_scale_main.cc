// Measures an index of many pages: how fast one writer fills it, what a page takes on the disk, how long questions take
// with the files in memory and after they were dropped from it, and searching stored pages again by other rules.

#include "bench/made_records.h"
#include "places/places.h"
#include "work/assemble_manual.h"

#include "benchleaf/extract/own_rules.h"
#include "benchleaf/extract/rules.h"
#include "benchleaf/store/index_reader.h"
#include "benchleaf/store/index_writer.h"

#include <fcntl.h>
#include <unistd.h>

#include <algorithm>
#include <atomic>
#include <chrono>
#include <cstdint>
#include <cstdio>
#include <ctime>
#include <exception>
#include <filesystem>
#include <fstream>
#include <functional>
#include <iostream>
#include <memory>
#include <optional>
#include <random>
#include <stdexcept>
#include <string>
#include <utility>
#include <vector>

namespace benchleaf::bench {
namespace {

namespace fs = std::filesystem;

constexpr const char* kUsage =
    "bench_scale FOLDER [PAGES]\n"
    "Fills an index in FOLDER with PAGES pages (default 10000, at most 1000000) of invented manuals of 50 pages, and "
    "tells of\n"
    "it at 1,000 pages and each time it has become ten times as large. 100,000 pages take some ten minutes and 2 GB. "
    "A\n"
    "FOLDER that a run left, also one that was stopped, is gone on with; with fewer PAGES than it holds it is only "
    "told of.\n"
    "Pages a second and warm answers are by processor time, cold ones by the clock.\n";

constexpr int kPagesOfManual = 50;

template <class T>
T OrThrow(Result<T> result) {
  if (!result) {
    throw std::runtime_error(result.error().ToString());
  }
  return std::move(*result);
}

// By the clock.
double Seconds(const std::function<void()>& work) {
  const auto start = std::chrono::steady_clock::now();
  work();
  return std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
}

// Of the processor: other work on the machine does not count, nor does waiting for the disk.
double ProcessorSeconds(const std::function<void()>& work) {
  const std::clock_t start = std::clock();
  work();
  return static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC;
}

std::uintmax_t BytesIn(const fs::path& folder) {
  std::uintmax_t bytes = 0;
  for (const fs::directory_entry& file : fs::directory_iterator(folder)) {
    bytes += file.file_size();
  }
  return bytes;
}

// Asks the system to give up the memory in which it keeps the files.
void DropFromMemory(const fs::path& folder) {
  for (const fs::directory_entry& file : fs::directory_iterator(folder)) {
    const int descriptor = ::open(file.path().c_str(), O_RDONLY | O_CLOEXEC);
    if (descriptor >= 0) {
      ::fdatasync(descriptor);
      ::posix_fadvise(descriptor, 0, 0, POSIX_FADV_DONTNEED);
      ::close(descriptor);
    }
  }
}

double Quantile(std::vector<double> values, double share) {
  std::sort(values.begin(), values.end());
  return values[std::min(values.size() - 1, static_cast<std::size_t>(share * static_cast<double>(values.size())))];
}

struct Question {
  const char* name;
  std::function<std::size_t(IndexReader&, const MadeTerms&, std::uint64_t)> ask;  // gives the number of answers
};

std::size_t Find(IndexReader& reader, const std::string& term, const std::string& set, int limit) {
  FindQuery query;
  query.term = term;
  query.set = set;
  query.limit = limit;
  return OrThrow(reader.Find(query)).size();
}

std::vector<Question> Questions() {
  constexpr int kScreen = 20;
  const auto any = [](const std::vector<std::string>& terms, std::uint64_t dice) { return terms[dice % terms.size()]; };
  return {
      {"find C12 --in SET", [=](auto& r, auto& m, auto d) { return Find(r, any(m.designators, d), m.set, 200); }},
      {"find C12 --limit 20", [=](auto& r, auto& m, auto d) { return Find(r, any(m.designators, d), "", kScreen); }},
      {"find 22-7546-4", [=](auto& r, auto& m, auto d) { return Find(r, any(m.part_numbers, d), "", 200); }},
      {"find signal voltage", [=](auto& r, auto&, auto) { return Find(r, "signal voltage", "", kScreen); }},
      {"parts SET", [=](auto& r, auto& m, auto) { return OrThrow(r.Parts(m.set)).size(); }},
      {"tube TYPE", [=](auto& r, auto& m, auto d) { return OrThrow(r.Tube(any(m.tubes, d))).size(); }},
      {"a set by part of its name",
       [=](auto& r, auto& m, auto) { return OrThrow(r.MatchSets(m.set.substr(m.set.find(' ') + 1))).names.size(); }},
  };
}

// The rules with a row more, as a restorer adds one: numbers of three groups are surer, so that every list changes.
Result<std::shared_ptr<const Rules>> OtherRules(const fs::path& config) {
  const fs::path own = fs::temp_directory_path() / ("benchleaf-other-rules-" + std::to_string(::getpid()));
  fs::create_directory(own);
  std::ofstream(own / "part-numbers.tsv")
      << "name\tpattern\twhere\tsure\texample\tsource\n"
         "three short groups\t[0-9]{2}-[0-9]{4}-[0-9]\tany\t0.97\t22-7546-4\tinvented\n";
  auto rules = LoadRules(config, own);
  fs::remove_all(own);
  return rules;
}

class ScaleBench {
 public:
  ScaleBench(fs::path folder, std::shared_ptr<const Rules> rules, std::shared_ptr<const Rules> other_rules)
      : folder_(std::move(folder)), rules_(std::move(rules)), other_rules_(std::move(other_rules)) {}

  // The pages of an earlier run.
  int TakeUp() {
    // An index that is opened before it has pages leaves those of its first session uncompressed (Xapian 1.4.22).
    if (fs::exists(folder_) && !fs::is_empty(folder_)) {
      manuals_ = static_cast<int>(OrThrow(OrThrow(IndexWriter::Open(folder_, rules_))->Manuals()).size());
      pages_ = manuals_ * kPagesOfManual;
      told_pages_ = pages_;
    }
    return pages_;
  }

  void Fill(int pages) {
    writer_ = OrThrow(IndexWriter::Open(folder_, rules_));
    while (pages_ < pages) {
      MadeRecord made = MakeRecord(static_cast<std::uint64_t>(manuals_), kPagesOfManual);
      std::optional<ManualRecord> manual;
      searching_ += ProcessorSeconds(
          [&] { manual = AssembleManual(std::move(made.head), std::move(made.pages), *rules_, never_); });
      std::optional<PreparedManual> prepared;
      preparing_ += ProcessorSeconds([&] { prepared.emplace(std::move(*manual), *rules_); });
      writing_ += ProcessorSeconds(
          [&] { OrThrowVoid(writer_->ReplaceManual(std::move(*prepared), IndexWriter::Durable::kSoon)); });
      pages_ += kPagesOfManual;
      ++manuals_;
    }
    writing_ += ProcessorSeconds([&] { OrThrowVoid(writer_->Commit()); });
  }

  void Tell() {
    const int pages = pages_ - told_pages_;
    std::printf("\n%d pages, %d manuals\n", pages_, manuals_);
    std::printf("  %.0f bytes a page\n", static_cast<double>(BytesIn(folder_)) / pages_);
    if (pages > 0) {
      std::printf("  searched %.0f pages/s, made ready %.0f pages/s, written %.0f pages/s\n", pages / searching_,
                  pages / preparing_, pages / writing_);
    }
    told_pages_ = pages_;
    searching_ = 0;
    preparing_ = 0;
    writing_ = 0;
    TellSearchingAgain("the same rules", *rules_);
    TellSearchingAgain("other rules", *other_rules_);
    writer_.reset();
    std::printf("  %-26s %9s %9s %9s %9s %9s\n", "ms", "cold p50", "cold p99", "warm p50", "warm p99", "answers");
    for (const Question& question : Questions()) {
      TellTimes(question);
    }
    static_cast<void>(std::fflush(stdout));
  }

 private:
  static void OrThrowVoid(const Result<void>& result) {
    if (!result) {
      throw std::runtime_error(result.error().ToString());
    }
  }

  // As after a change of the rules: manuals are taken out of the index, searched and written again. By the same rules
  // no document changes but that of the manual, which names the rules; by other ones many do.
  void TellSearchingAgain(const char* what, const Rules& rules) {
    constexpr int kManuals = 20;
    double loading = 0;
    double searching = 0;
    double preparing = 0;
    double writing = 0;
    for (int i = 0; i < kManuals; ++i) {
      const ManualRecord head = MakeRecord(static_cast<std::uint64_t>(i), 1).head;
      std::optional<ManualRecord> manual;
      loading += ProcessorSeconds([&] { manual = OrThrow(writer_->StoredManual(head.set, head.manual)); });
      manual->rules = what;
      std::vector<PageRecord> stored = std::move(manual->pages);
      searching +=
          ProcessorSeconds([&] { manual = AssembleManual(std::move(*manual), std::move(stored), rules, never_); });
      std::optional<PreparedManual> prepared;
      preparing += ProcessorSeconds([&] { prepared.emplace(std::move(*manual), *rules_); });
      writing += ProcessorSeconds(
          [&] { OrThrowVoid(writer_->ReplaceManual(std::move(*prepared), IndexWriter::Durable::kSoon)); });
    }
    writing += ProcessorSeconds([&] { OrThrowVoid(writer_->Commit()); });
    const double pages = kManuals * kPagesOfManual;
    std::printf("  again by %s %.0f pages/s: loaded %.0f, searched %.0f, made ready %.0f, written over %.0f\n", what,
                pages / (loading + searching + preparing + writing), pages / loading, pages / searching,
                pages / preparing, pages / writing);
  }

  std::vector<double> Times(const Question& question, int times, bool cold, double& answers) {
    std::unique_ptr<IndexReader> reader = OrThrow(IndexReader::Open(folder_, rules_));
    std::vector<double> milliseconds;
    for (int i = 0; i < times; ++i) {
      const MadeTerms made = MakeTerms(dice_() % static_cast<std::uint64_t>(manuals_), kPagesOfManual);
      if (cold) {
        reader.reset();
        DropFromMemory(folder_);
        reader = OrThrow(IndexReader::Open(folder_, rules_));
      }
      std::size_t count = 0;
      const auto ask = [&] { count = question.ask(*reader, made, dice_()); };
      milliseconds.push_back(1e3 * (cold ? Seconds(ask) : ProcessorSeconds(ask)));
      answers += static_cast<double>(count) / times;
    }
    return milliseconds;
  }

  void TellTimes(const Question& question) {
    constexpr int kCold = 25;
    constexpr int kWarm = 200;
    double answers = 0;
    const std::vector<double> cold = Times(question, kCold, true, answers);
    Times(question, kWarm, false, answers);  // brings the files back
    answers = 0;
    const std::vector<double> warm = Times(question, kWarm, false, answers);
    std::printf("  %-26s %9.1f %9.1f %9.2f %9.2f %9.0f\n", question.name, Quantile(cold, 0.5), Quantile(cold, 0.99),
                Quantile(warm, 0.5), Quantile(warm, 0.99), answers);
  }

  fs::path folder_;
  std::shared_ptr<const Rules> rules_;
  std::shared_ptr<const Rules> other_rules_;
  std::unique_ptr<IndexWriter> writer_;
  const std::atomic<bool> never_{false};
  std::mt19937_64 dice_{1};
  int pages_ = 0;
  int manuals_ = 0;
  int told_pages_ = 0;
  double searching_ = 0;  // seconds since it was last told
  double preparing_ = 0;
  double writing_ = 0;
};

void Run(const std::vector<std::string>& arguments) {
  constexpr int kFirst = 1000;
  constexpr int kMost = 1000000;
  if (arguments.empty() || arguments.size() > 2) {
    throw std::invalid_argument("name a folder");
  }
  const int pages = arguments.size() > 1 ? std::stoi(arguments[1]) : 10 * kFirst;
  if (pages < kPagesOfManual || pages > kMost) {
    throw std::invalid_argument("the number of pages will not do");
  }
  const fs::path config = SourceFolder() / "config";
  ScaleBench bench(arguments[0], OrThrow(Rules::Load(config)), OrThrow(OtherRules(config)));
  const int before = bench.TakeUp();
  for (int next = std::min(pages, kFirst);; next = std::min(pages, next * 10)) {
    if (next >= before || next == pages) {
      bench.Fill(next);
      bench.Tell();
    }
    if (next == pages) {
      return;
    }
  }
}

}  // namespace
}  // namespace benchleaf::bench

int main(int argc, char** argv) {
  try {
    benchleaf::bench::Run({argv + 1, argv + argc});
    return 0;
  } catch (const std::exception& error) {
    std::cerr << error.what() << '\n' << benchleaf::bench::kUsage;
    return 2;
  }
}

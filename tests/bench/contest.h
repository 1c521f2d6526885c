// benchleaf and bare Tesseract side by side on the same pages.

#ifndef BENCHLEAF_TESTS_BENCH_CONTEST_H_
#define BENCHLEAF_TESTS_BENCH_CONTEST_H_

#include "bench/bare_tesseract.h"
#include "bench/benchleaf_reader.h"
#include "bench/figures.h"
#include "bench/kept_readings.h"
#include "bench/page_dump.h"
#include "bench/scorer.h"
#include "bench/verdict_list.h"
#include "scan-maker/degrade.h"
#include "scan-maker/made_page.h"

#include "benchleaf/clean/page_steps.h"

#include <cstddef>
#include <cstdint>
#include <fstream>
#include <functional>
#include <optional>
#include <stdexcept>
#include <string>
#include <string_view>
#include <vector>

namespace benchleaf::bench {

// What every bench can be asked for.
struct ContestOptions {
  std::vector<scanmaker::Grade> grades;
  bool bare = true;
  bool benchleaf = true;
  std::string verdicts;     // file, or empty
  std::string json;         // file, or empty
  std::string dump;         // folder, or empty
  bool page_lines = false;  // print a line for each page, too
  bool printed = false;     // benchleaf reads nothing, but is given the words as they were printed
  std::string readings;     // folder of KeptReadings, or empty
  PageSteps steps;          // that benchleaf does
};

// The grades that were asked for.
std::vector<scanmaker::Grade> Grades(const ContestOptions& options);

// Takes an option and its value into `options`; false when it is none of the above. Throws std::invalid_argument for a
// value that is not understood.
bool Take(std::string_view name, const std::string& value, ContestOptions& options);

// `arguments` in pairs of option and value, each given to `take`; throws std::invalid_argument where it gives false.
template <class TakeOption>
void TakeAll(const std::vector<std::string>& arguments, TakeOption take) {
  for (std::size_t i = 0; i < arguments.size(); i += 2) {
    if (i + 1 == arguments.size() || !take(arguments[i], arguments[i + 1])) {
      throw std::invalid_argument(arguments[i] + " is not understood");
    }
  }
}

// A bench's main: runs `run` with the arguments, in one thread; `--help` prints `usage`, which begins with the bench's
// name, and what every bench can be asked for. Gives the exit code: 0, 1 where something failed, 2 for arguments that
// are not understood.
int RunBench(const std::string& usage, int argc, char** argv,
             const std::function<void(const std::vector<std::string>&)>& run);

// Reads pages with the readers that were asked for, one grade after the other, and prints what they found.
class Contest {
 public:
  // Prints the table's head. Throws std::runtime_error when a reader or file is not to be had.
  explicit Contest(const ContestOptions& options);

  void Add(const scanmaker::MadePage& page, const std::string& name, scanmaker::Grade grade, std::uint64_t seed);
  // The same with a scan that was made otherwise of the page.
  void AddScan(const scanmaker::MadePage& made, scanmaker::ScannedPage scan, const std::string& name,
               scanmaker::Grade grade, std::uint64_t seed);
  // Prints the sums of the grade and starts new ones.
  void FinishGrade();
  // Prints how far benchleaf's confidence can be believed, over all grades, and writes the JSON file.
  void Finish();

 private:
  void Judge(const scanmaker::ScannedPage& page, scanmaker::Grade grade, const PageSeen& seen, ReaderFigures& figures);

  void PrintPage(const scanmaker::ScannedPage& page, scanmaker::Grade grade, const PageSeen& seen,
                 const ReaderFigures& figures) const;
  PageSeen SeenByBenchleaf(const scanmaker::MadePage& made, const scanmaker::ScannedPage& page, const std::string& key);

  VerdictList verdicts_;
  PageDump dump_;
  KeptReadings readings_;
  bool page_lines_ = false;
  bool printed_ = false;
  std::ofstream json_;
  std::optional<BareTesseract> bare_;
  std::optional<BenchleafReader> benchleaf_;
  ReaderFigures bare_figures_;
  ReaderFigures benchleaf_figures_;
  std::vector<ReaderFigures> finished_;
};

}  // namespace benchleaf::bench

#endif  // BENCHLEAF_TESTS_BENCH_CONTEST_H_

// Measures the memory that a worker needs for a fold-out of 12,000 x 9,000 px, in each kind of file. Each page is
// indexed by a process of its own, so that the system tells the most memory that its one worker held.

#include "bench/one_thread.h"
#include "outside/outside_pages.h"
#include "places/places.h"
#include "scan-maker/scan_files.h"

#include "benchleaf/work/index_library.h"

#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <atomic>
#include <chrono>
#include <cstdio>
#include <exception>
#include <filesystem>
#include <iostream>
#include <stdexcept>
#include <string>
#include <vector>

namespace benchleaf::bench {
namespace {

constexpr int kWidth = 12000;
constexpr int kHeight = 9000;
constexpr double kGoalMb = 400;

// Sheets for practice beside and under each other until the fold-out is full, at 300 dpi.
GreyImage FoldOut() {
  constexpr std::uint8_t kPaper = 225;
  GreyImage fold_out(kWidth, kHeight, kPaper);
  int left = 0;
  int top = 0;
  int foot = 0;
  for (const outside::OutsidePage& sheet : outside::OutsidePages()) {
    if (sheet.half != outside::Half::kPractice) {
      continue;
    }
    const GreyImage image = DegradeMade(Draw(sheet), scanmaker::Grade::kMild, sheet.seed).image;
    if (left > 0 && left + image.width / 2 > kWidth) {
      left = 0;
      top = foot;
    }
    if (top >= kHeight) {
      break;
    }
    const int width = std::min(image.width, kWidth - left);
    const int height = std::min(image.height, kHeight - top);
    for (int y = 0; y < height; ++y) {
      std::copy_n(image.row(y), width, fold_out.row(top + y) + left);
    }
    left += width;
    foot = std::max(foot, top + height);
  }
  return fold_out;
}

void Write(const std::filesystem::path& path) {
  scanmaker::FilePage page;
  page.image = FoldOut();
  page.one_bit = path.stem() == "one-bit";
  if (path.extension() == ".jpg") {
    scanmaker::WriteJpegFile(path, page);
  } else if (path.extension() == ".tif") {
    scanmaker::WriteTiffFile(path, {page});
  } else {
    scanmaker::WritePdfFile(path, {page});
  }
}

class Silent : public IndexObserver {
 public:
  void Found(int /*sets*/, int /*manuals*/, int /*pages_to_read*/, int /*pages_known*/) override {}
  void PageDone(const std::string& /*file*/, int /*page*/, bool /*failed*/) override {}
  void ManualStored(const std::string& /*set*/, const std::string& /*manual*/) override {}
  void Problem(const Error& error) override { std::cerr << error.ToString() << '\n'; }
};

// Indexes the folder that holds the page with one worker, which is this program once more, and prints the most memory
// that the worker held.
void Read(const std::filesystem::path& folder) {
  const std::filesystem::path database = folder.string() + ".index";
  std::filesystem::remove_all(database);
  IndexOptions options;
  options.library = folder;
  options.database = database;
  options.config = SourceFolder() / "config";
  options.program = "/proc/self/exe";
  options.workers = 1;
  options.limits.deadline = std::chrono::minutes(20);  // on a busy machine too
  Silent silent;
  const std::atomic<bool> cancel = false;
  const Result<IndexSummary> summary = IndexLibrary(options, silent, cancel);
  std::filesystem::remove_all(database);
  if (!summary || summary->pages_read != 1 || !summary->problems.empty()) {
    throw std::runtime_error(summary ? "the page was not read" : summary.error().ToString());
  }
  rusage usage{};
  getrusage(RUSAGE_CHILDREN, &usage);
  const double peak = static_cast<double>(usage.ru_maxrss) * 1024 / 1e6;
  std::printf("%-12s %4.0f MB%s\n", folder.filename().c_str(), peak, peak < kGoalMb ? "" : ", over the goal");
}

// Runs this program anew with two arguments.
void Anew(const char* task, const std::filesystem::path& path) {
  static_cast<void>(std::fflush(stdout));
  const pid_t child = fork();
  if (child == 0) {
    execl("/proc/self/exe", "bench_memory", task, path.c_str(), nullptr);
    _exit(127);
  }
  int status = 0;
  if (child < 0 || waitpid(child, &status, 0) < 0 || status != 0) {
    throw std::runtime_error(std::string(task) + " " + path.string() + " failed");
  }
}

void Measure(const std::filesystem::path& folder) {
  std::printf("a fold-out of %d x %d px, most memory of the worker that reads it; the goal is under %.0f MB\n", kWidth,
              kHeight, kGoalMb);
  for (const char* name : {"grey.jpg", "one-bit.tif", "grey.tif", "grey.pdf", "one-bit.pdf"}) {
    const std::filesystem::path library = folder / name;
    if (!std::filesystem::exists(library / name)) {
      std::filesystem::create_directories(library);
      Anew("--write", library / name);
    }
    Anew("--read", library);
  }
}

int Run(const std::vector<std::string>& arguments) {
  if (!arguments.empty() && arguments[0] == "worker") {
    return RunWorker(SourceFolder() / "config");
  }
  if (arguments.size() == 2 && arguments[0] == "--write") {
    Write(arguments[1]);
  } else if (arguments.size() == 2 && arguments[0] == "--read") {
    Read(arguments[1]);
  } else if (arguments.size() == 1 && arguments[0].substr(0, 1) != "-") {
    Measure(arguments[0]);
  } else {
    throw std::invalid_argument("usage: bench_memory FOLDER, where pages are kept for the next time");
  }
  return 0;
}

}  // namespace
}  // namespace benchleaf::bench

int main(int argc, char** argv) {
  try {
    benchleaf::bench::KeepToOneThread(argv);
    return benchleaf::bench::Run({argv + 1, argv + argc});
  } catch (const std::exception& problem) {
    std::cerr << problem.what() << '\n';
    return 1;
  }
}

// Measures, without reading anything, for how much of a schematic's lettering there is a candidate to be read, and how
// many candidates a page has. A few seconds a page, and the same on every machine.

#include "bench/coverage.h"
#include "bench/one_thread.h"
#include "outside/outside_pages.h"

#include "benchleaf/raster/page_source.h"

#include <algorithm>
#include <cstdio>
#include <exception>
#include <filesystem>
#include <fstream>
#include <iostream>
#include <map>
#include <stdexcept>
#include <string>
#include <utility>
#include <vector>

namespace benchleaf::bench {
namespace {

using scanmaker::Grade;

constexpr const char* kUsage =
    "bench_coverage [OPTION VALUE]...\n"
    "  --half dev|practice          which sheets (default dev)\n"
    "  --grade mild|medium|severe   may be given several times (default medium and severe)\n"
    "  --dump DIR                   write level pages and their ink without lines as PNG, with texts and candidates\n"
    "                               as TSV\n";

struct Options {
  outside::Half half = outside::Half::kDevelopment;
  std::vector<Grade> grades;
  std::filesystem::path dump;
};

Options Parse(const std::vector<std::string>& arguments) {
  static const std::map<std::string, Grade> kGrades = {
      {"mild", Grade::kMild}, {"medium", Grade::kMedium}, {"severe", Grade::kSevere}};
  Options options;
  for (std::size_t i = 0; i < arguments.size(); i += 2) {
    const std::string& name = arguments[i];
    const std::string value = i + 1 < arguments.size() ? arguments[i + 1] : "";
    if (name == "--half" && (value == "dev" || value == "practice")) {
      options.half = value == "dev" ? outside::Half::kDevelopment : outside::Half::kPractice;
    } else if (name == "--grade" && kGrades.contains(value)) {
      options.grades.push_back(kGrades.at(value));
    } else if (name == "--dump" && !value.empty()) {
      options.dump = value;
    } else {
      throw std::invalid_argument(name + " is not understood");
    }
  }
  if (options.grades.empty()) {
    options.grades = {Grade::kMedium, Grade::kSevere};
  }
  return options;
}

// How the texts of one kind and direction are held.
using Counts = std::array<int, kCoverNames.size()>;

struct Tally {
  std::map<std::pair<std::string, bool>, Counts> counts;  // by kind, and whether standing
  std::size_t lying = 0;
  std::size_t standing = 0;
  std::size_t broken = 0;
  int pages = 0;
  double seconds = 0;
};

// What the reader is given to read.
std::vector<TextString> Candidates(const CleanPage& page) {
  std::vector<TextString> candidates = FindStrings(page, kStringGaps);
  std::erase_if(candidates, [&](const TextString& string) { return !IsReadable(page, string); });
  for (TextString& string : FindBrokenStrings(page)) candidates.push_back(std::move(string));
  return candidates;
}

void Count(const std::vector<TextString>& candidates, Tally& tally) {
  for (const TextString& candidate : candidates) {
    ++(candidate.broken ? tally.broken : candidate.standing ? tally.standing : tally.lying);
  }
}

ColorImage Colored(const GreyImage& grey) {
  ColorImage color;
  color.width = grey.width;
  color.height = grey.height;
  for (const std::uint8_t level : grey.pixels) color.pixels.insert(color.pixels.end(), 3, level);
  return color;
}

GreyImage Painted(const CleanPage& page) {
  GreyImage image(page.grey.width, page.grey.height);
  for (const Run& run : page.components.runs) {
    std::fill(image.row(run.y) + run.begin, image.row(run.y) + run.end, std::uint8_t{0});
  }
  return image;
}

std::string Text(const Box& box) {
  return std::to_string(box.x) + '\t' + std::to_string(box.y) + '\t' + std::to_string(box.width) + '\t' +
         std::to_string(box.height);
}

void Dump(const std::filesystem::path& stem, const CleanPage& page, const std::vector<TextPlace>& places,
          const std::vector<TextString>& candidates) {
  const auto named = [&](const char* ending) { return stem.string() + ending; };
  for (const auto& [ending, image] : {std::pair("-grey.png", page.grey), std::pair("-ink.png", Painted(page))}) {
    if (const Result<void> written = WritePng(named(ending), Colored(image)); !written) {
      throw std::runtime_error(written.error().ToString());
    }
  }
  std::ofstream texts(named("-texts.tsv"));
  texts << "kind\ttext\tstanding\tcover\tx\ty\twidth\theight\n";
  for (const TextPlace& place : places) {
    texts << place.kind << '\t' << place.text << '\t' << place.standing << '\t'
          << kCoverNames.at(static_cast<std::size_t>(CoverOf(place, candidates))) << '\t' << Text(place.box) << '\n';
  }
  std::ofstream found(named("-candidates.tsv"));
  found << "standing\tbroken\tmembers\tx\ty\twidth\theight\n";
  for (const TextString& candidate : candidates) {
    found << candidate.standing << '\t' << candidate.broken << '\t' << candidate.members.size() << '\t'
          << Text(candidate.box) << '\n';
  }
}

void Measure(const outside::OutsidePage& sheet, Grade grade, const std::filesystem::path& dump, Tally& tally) {
  const scanmaker::MadePage made = outside::Draw(sheet);
  const scanmaker::DegradedPage degraded = scanmaker::Degrade(made.image, grade, sheet.seed);
  const Stopwatch watch;
  const CleanPage page = MakeCleanPage(degraded.image, degraded.dpi, 0);
  const std::vector<TextString> candidates = Candidates(page);
  tally.seconds += watch.Seconds();
  ++tally.pages;
  Count(candidates, tally);
  const std::vector<TextPlace> places = PlacesOnLevelPage(made, degraded, page.frame);
  for (const TextPlace& place : places) {
    ++tally.counts[{place.kind, place.standing}].at(static_cast<std::size_t>(CoverOf(place, candidates)));
  }
  if (!dump.empty()) {
    std::filesystem::create_directories(dump);
    const std::string name =
        std::string(scanmaker::Name(grade)) + "-" + std::filesystem::path(sheet.sheet).stem().string();
    Dump(dump / name, page, places, candidates);
  }
}

void Print(Grade grade, const Tally& tally) {
  const std::string name(scanmaker::Name(grade));
  for (const auto& [key, counts] : tally.counts) {
    int all = 0;
    for (const int count : counts) all += count;
    std::printf("%-8s %-14s %-9s %5d", name.c_str(), key.first.c_str(), key.second ? "standing" : "lying", all);
    for (const int count : counts) std::printf(" %5d %.3f", count, 1.0 * count / all);
    std::printf("\n");
  }
  const double pages = tally.pages;
  std::printf("%-8s candidates a page: %.0f lying, %.0f standing, %.0f of fragments; %.2f s to find them\n",
              name.c_str(), static_cast<double>(tally.lying) / pages, static_cast<double>(tally.standing) / pages,
              static_cast<double>(tally.broken) / pages, tally.seconds / pages);
  static_cast<void>(std::fflush(stdout));
}

void Run(const Options& options) {
  std::printf("%-8s %-14s %-9s %5s", "grade", "kind", "direction", "all");
  for (const char* name : kCoverNames) std::printf(" %11s", name);
  std::printf("\n");
  for (const Grade grade : options.grades) {
    Tally tally;
    for (const outside::OutsidePage& sheet : outside::OutsidePages()) {
      if (sheet.half == options.half) {
        Measure(sheet, grade, options.dump, tally);
      }
    }
    Print(grade, tally);
  }
}

}  // namespace
}  // namespace benchleaf::bench

int main(int argc, char** argv) {
  using namespace benchleaf::bench;
  const std::vector<std::string> arguments(argv + 1, argv + argc);
  if (arguments == std::vector<std::string>{"--help"}) {
    std::cout << kUsage;
    return 0;
  }
  try {
    KeepToOneThread(argv);
    Run(Parse(arguments));
  } catch (const std::invalid_argument& problem) {
    std::cerr << "bench_coverage: " << problem.what() << "; --help tells what is\n";
    return 2;
  } catch (const std::exception& problem) {
    std::cerr << "bench_coverage: " << problem.what() << '\n';
    return 1;
  }
  return 0;
}

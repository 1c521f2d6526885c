#include "bench/contest.h"

#include "bench/one_thread.h"
#include "bench/printed_reading.h"

#include <cstdio>
#include <exception>
#include <iostream>
#include <utility>

namespace benchleaf::bench {
namespace {

using scanmaker::Grade;

constexpr const char* kContestUsage =
    "  --grade clean|mild|medium|severe  may be given several times (default mild, medium and severe)\n"
    "  --only bare|benchleaf             one reader only\n"
    "  --without STEP                    benchleaf leaves out a step: surroundings, even-ground, deskew, lines,\n"
    "                                    mending, white, pale, callout-lines, phrases, standing, upended, spaced,\n"
    "                                    broken, own-ink, contrast, lettering-reader, trust\n"
    "  --verdicts FILE                   list every term missed or seen, and what was read there, as TSV\n"
    "  --json FILE                       write all figures as JSON\n"
    "  --dump DIR                        write the degraded pages as PNG, with truth.jsonl\n";

Grade GradeNamed(std::string_view name) {
  for (const Grade grade : {Grade::kClean, Grade::kMild, Grade::kMedium, Grade::kSevere}) {
    if (scanmaker::Name(grade) == name) {
      return grade;
    }
  }
  throw std::invalid_argument("no grade is called " + std::string(name));
}

bool PageSteps::*StepNamed(std::string_view name) {
  constexpr std::pair<std::string_view, bool PageSteps::*> kSteps[] = {
      {"surroundings", &PageSteps::surroundings},
      {"even-ground", &PageSteps::even_ground},
      {"deskew", &PageSteps::deskew},
      {"lines", &PageSteps::lines},
      {"mending", &PageSteps::mending},
      {"white", &PageSteps::white},
      {"pale", &PageSteps::pale},
      {"callout-lines", &PageSteps::callout_lines},
      {"phrases", &PageSteps::phrases},
      {"standing", &PageSteps::standing},
      {"upended", &PageSteps::upended},
      {"spaced", &PageSteps::spaced},
      {"broken", &PageSteps::broken},
      {"own-ink", &PageSteps::own_ink},
      {"contrast", &PageSteps::contrast},
      {"lettering-reader", &PageSteps::lettering_reader},
      {"trust", &PageSteps::trust},
  };
  for (const auto& [step, member] : kSteps) {
    if (step == name) {
      return member;
    }
  }
  throw std::invalid_argument("no step is called " + std::string(name));
}

void Print(const std::string& text) {
  static_cast<void>(std::fputs(text.c_str(), stdout));
  static_cast<void>(std::fflush(stdout));
}

// Sums to start from: the kinds that are judged.
ReaderFigures NewFigures(const char* reader, bool states_confidence) {
  ReaderFigures figures;
  figures.reader = reader;
  figures.states_confidence = states_confidence;
  figures.kinds = {{"designator", {}}, {"tube", {}}, {"part-number", {}}};
  return figures;
}

std::vector<Seen> TermsOf(const PageSeen& seen, const std::string& kind) {
  const auto terms = seen.terms.find(kind);
  return terms == seen.terms.end() ? std::vector<Seen>() : terms->second;
}

}  // namespace

std::vector<Grade> Grades(const ContestOptions& options) {
  return options.grades.empty() ? std::vector<Grade>{Grade::kMild, Grade::kMedium, Grade::kSevere} : options.grades;
}

bool Take(std::string_view name, const std::string& value, ContestOptions& options) {
  if (name == "--grade") {
    options.grades.push_back(GradeNamed(value));
  } else if (name == "--only" && (value == "bare" || value == "benchleaf")) {
    options.bare = value == "bare";
    options.benchleaf = value == "benchleaf";
  } else if (name == "--without") {
    options.steps.*StepNamed(value) = false;
  } else if (name == "--verdicts") {
    options.verdicts = value;
  } else if (name == "--json") {
    options.json = value;
  } else if (name == "--dump") {
    options.dump = value;
  } else {
    return false;
  }
  return true;
}

int RunBench(const std::string& usage, int argc, char** argv,
             const std::function<void(const std::vector<std::string>&)>& run) {
  const std::string name = usage.substr(0, usage.find(' '));
  const std::vector<std::string> arguments(argv + 1, argv + argc);
  if (arguments == std::vector<std::string>{"--help"}) {
    std::printf("%s%s", usage.c_str(), kContestUsage);
    return 0;
  }
  try {
    KeepToOneThread(argv);
    run(arguments);
  } catch (const std::invalid_argument& problem) {
    std::cerr << name << ": " << problem.what() << "; --help tells what is\n";
    return 2;
  } catch (const std::exception& problem) {
    std::cerr << name << ": " << problem.what() << '\n';
    return 1;
  }
  return 0;
}

Contest::Contest(const ContestOptions& options)
    : verdicts_(options.verdicts),
      dump_(options.dump),
      readings_(options.readings),
      page_lines_(options.page_lines),
      printed_(options.printed),
      bare_figures_(NewFigures("bare", false)),
      benchleaf_figures_(NewFigures("benchleaf", true)) {
  if (options.bare) {
    bare_.emplace();
  }
  if (options.benchleaf) {
    benchleaf_.emplace(options.steps);
  }
  if (!options.json.empty()) {
    json_.open(options.json);
    if (!json_) {
      throw std::runtime_error(options.json + " cannot be written");
    }
  }
  Print(TableHead());
}

void Contest::Add(const scanmaker::MadePage& made, const std::string& name, Grade grade, std::uint64_t seed) {
  AddScan(made, scanmaker::DegradeMade(made, grade, seed), name, grade, seed);
}

void Contest::AddScan(const scanmaker::MadePage& made, scanmaker::ScannedPage page, const std::string& name,
                      Grade grade, std::uint64_t seed) {
  page.truth.file = name;
  dump_.Add(std::string(scanmaker::Name(grade)), page);
  if (bare_) {
    Judge(page, grade, bare_->See(page), bare_figures_);
  }
  if (benchleaf_) {
    const std::string key = std::string(scanmaker::Name(grade)) + "-" + name + "-" + std::to_string(seed);
    const PageSeen seen = SeenByBenchleaf(made, page, key);
    Judge(page, grade, seen, benchleaf_figures_);
    benchleaf_figures_.entries.Add(page.truth.entries, seen.entries);
  }
}

PageSeen Contest::SeenByBenchleaf(const scanmaker::MadePage& made, const scanmaker::ScannedPage& page,
                                  const std::string& key) {
  const Stopwatch watch;
  PageSeen seen = benchleaf_->Extract(printed_ ? ReadingAsPrinted(made)
                                               : readings_.Get(key, [&] { return benchleaf_->Read(page); }));
  seen.seconds = watch.Seconds();
  return seen;
}

void Contest::Judge(const scanmaker::ScannedPage& page, Grade grade, const PageSeen& seen, ReaderFigures& figures) {
  figures.grade = scanmaker::Name(grade);
  ++figures.pages;
  figures.seconds += seen.seconds;
  for (KindFigures& one : figures.kinds) {
    const PageVerdict verdict = JudgeTerms(page.truth, one.kind, TermsOf(seen, one.kind));
    one.tally.Add(verdict);
    if (one.kind == "designator") {
      figures.reliability.Add(verdict);
    }
    verdicts_.Add({figures.grade, figures.reader, page.truth.file, one.kind}, verdict, seen.words);
  }
  if (page_lines_) {
    PrintPage(page, grade, seen, figures);
  }
}

void Contest::PrintPage(const scanmaker::ScannedPage& page, Grade grade, const PageSeen& seen,
                        const ReaderFigures& figures) const {
  ReaderFigures one = NewFigures(figures.reader.c_str(), figures.states_confidence);
  one.grade = scanmaker::Name(grade);
  for (KindFigures& kind : one.kinds) {
    kind.tally.Add(JudgeTerms(page.truth, kind.kind, TermsOf(seen, kind.kind)));
  }
  one.entries.Add(page.truth.entries, seen.entries);
  Print(PageLine(page.truth.file, one));
}

void Contest::FinishGrade() {
  if (bare_) {
    Print(TableLines(bare_figures_));
  }
  if (benchleaf_) {
    Print(TableLines(benchleaf_figures_) + RatioLine(benchleaf_figures_, bare_figures_));
  }
  for (ReaderFigures* figures : {&bare_figures_, &benchleaf_figures_}) {
    if (figures->pages > 0) {
      finished_.push_back(*figures);
    }
    *figures = NewFigures(figures->reader.c_str(), figures->states_confidence);
  }
}

void Contest::Finish() {
  if (benchleaf_) {
    Reliability reliability;
    for (const ReaderFigures& figures : finished_) {
      if (figures.states_confidence) {
        reliability.Add(figures.reliability);
      }
    }
    Print("how often a designator of a stated confidence is right, all grades\n" + ReliabilityLines(reliability));
  }
  if (json_.is_open()) {
    json_ << ToJson(finished_) << std::flush;
  }
}

}  // namespace benchleaf::bench

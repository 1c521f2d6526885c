#include "benchleaf/work/index_library.h"

#include "places/places.h"
#include "work/programs.h"

#include "benchleaf/extract/rules.h"
#include "benchleaf/record/codec.h"
#include "benchleaf/store/index_reader.h"
#include "benchleaf/store/index_writer.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <chrono>
#include <functional>
#include <map>
#include <memory>
#include <string>
#include <thread>
#include <utility>
#include <vector>

namespace benchleaf {
namespace {

namespace fs = std::filesystem;
using std::chrono::milliseconds;
using std::chrono::seconds;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::UnorderedElementsAre;

class Watcher : public IndexObserver {
 public:
  void Found(int /*sets*/, int /*manuals*/, int pages_to_read, int pages_known) override {
    to_read = pages_to_read;
    known = pages_known;
  }
  void PageDone(const std::string& file, int page, bool failed) override {
    pages.push_back(file + ":" + std::to_string(page) + (failed ? " failed" : ""));
    if (on_page) {
      on_page();
    }
  }
  void ManualStored(const std::string& set, const std::string& /*manual*/) override { stored.push_back(set); }
  void Problem(const Error& error) override { problems.push_back(error); }

  int to_read = -1;
  int known = -1;
  std::vector<std::string> pages;
  std::vector<std::string> stored;  // by set
  std::vector<Error> problems;
  std::function<void()> on_page;
};

// A library in a folder of its own; each set is a file directly in it, so sets are named after their files.
class IndexLibraryTest : public testing::Test {
 protected:
  IndexLibraryTest() {
    options_.library = folder_.path() / "library";
    options_.database = folder_.path() / "index";
    options_.config = SourceFolder() / "config";
    options_.program = FakeWorker();
    fs::create_directory(options_.library);
  }

  void WriteScan(const std::string& name, const std::string& script) { folder_.WriteScan("library/" + name, script); }
  void Remove(const std::string& name) { fs::remove(options_.library / name); }

  // Runs and expects IndexLibrary not to fail; `watcher_` is that of the last run.
  IndexSummary Index() {
    watcher_ = {};
    const Result<IndexSummary> summary = IndexLibrary(options_, watcher_, cancel_);
    EXPECT_TRUE(summary) << summary.error().ToString();
    return summary.value_or(IndexSummary{});
  }

  std::vector<ManualRecord> Manuals(const fs::path& database) {
    std::vector<ManualRecord> manuals;
    const auto rules = Rules::Load(options_.config).value();
    const auto reader = IndexReader::Open(database, rules).value();
    EXPECT_TRUE(reader->ForEachManual([&](const ManualRecord& manual) {
      manuals.push_back(manual);
      return true;
    }));
    return manuals;
  }
  std::vector<ManualRecord> Manuals() { return Manuals(options_.database); }

  // "FILE:PAGE WORDS" of every page that was read, "FILE:PAGE (reason)" of every other.
  std::vector<std::string> Pages() {
    std::vector<std::string> lines;
    for (const ManualRecord& manual : Manuals()) {
      for (const PageRecord& page : manual.pages) {
        std::string line = page.file + ":" + std::to_string(page.page);
        line += page.failure ? " (" + page.failure->message + ")" : "";
        for (const Word& word : page.reading.words) {
          line += " " + word.text;
        }
        lines.push_back(line);
      }
    }
    return lines;
  }

  std::string Export(const fs::path& database) {
    std::string lines;
    for (const ManualRecord& manual : Manuals(database)) {
      lines += ExportLines(manual);
    }
    return lines;
  }

  TemporaryFolder folder_;
  IndexOptions options_;
  Watcher watcher_;
  std::atomic<bool> cancel_{false};
};

TEST_F(IndexLibraryTest, ReadsAndStoresEveryPage) {
  WriteScan("a.pdf", "pages 2\nwords 1 C112 6CB6\nwords 2 R5");
  WriteScan("b.pdf", "pages 1\nwords 1 V1");
  const IndexSummary summary = Index();
  EXPECT_EQ(summary.sets, 2);
  EXPECT_EQ(summary.manuals, 2);
  EXPECT_EQ(summary.pages, 3);
  EXPECT_EQ(summary.pages_read, 3);
  EXPECT_EQ(summary.pages_known, 0);
  EXPECT_FALSE(summary.cancelled);
  EXPECT_THAT(summary.problems, IsEmpty());
  EXPECT_EQ(watcher_.to_read, 3);
  EXPECT_THAT(watcher_.pages, UnorderedElementsAre("a.pdf:1", "a.pdf:2", "b.pdf:1"));
  EXPECT_THAT(watcher_.stored, UnorderedElementsAre("a", "b"));
  EXPECT_THAT(Pages(), ElementsAre("a.pdf:1 C112 6CB6", "a.pdf:2 R5", "b.pdf:1 V1"));
}

TEST_F(IndexLibraryTest, AnUnchangedLibraryIsNotReadAgain) {
  WriteScan("a.pdf", "pages 2\nwords 1 C112");
  Index();
  const std::string before = Export(options_.database);
  const IndexSummary summary = Index();
  EXPECT_EQ(summary.pages, 2);
  EXPECT_EQ(summary.pages_read, 0);
  EXPECT_EQ(summary.pages_known, 2);
  EXPECT_EQ(watcher_.to_read, 0);
  EXPECT_EQ(watcher_.known, 2);
  EXPECT_THAT(watcher_.stored, IsEmpty());
  EXPECT_EQ(Export(options_.database), before);
}

TEST_F(IndexLibraryTest, OnlyAChangedFileIsReadAgain) {
  WriteScan("a.pdf", "words 1 C1");
  WriteScan("b.pdf", "words 1 C2");
  Index();
  WriteScan("b.pdf", "pages 2\nwords 1 C3");
  const IndexSummary summary = Index();
  EXPECT_EQ(summary.pages, 3);
  EXPECT_EQ(summary.pages_read, 2);
  EXPECT_EQ(summary.pages_known, 1);
  EXPECT_THAT(watcher_.stored, ElementsAre("b"));
  EXPECT_THAT(Pages(), ElementsAre("a.pdf:1 C1", "b.pdf:1 C3", "b.pdf:2"));
}

TEST_F(IndexLibraryTest, ARenamedSetIsStoredAnewWithoutReading) {
  WriteScan("a.pdf", "pages 2\nwords 1 C1");
  Index();
  folder_.Write("library/library.csv", "file,maker,model,title\na.pdf,Norvane,12,Service notes\n");
  const IndexSummary summary = Index();
  EXPECT_EQ(summary.pages, 2);
  EXPECT_EQ(summary.pages_read, 0);
  EXPECT_EQ(summary.pages_known, 2);
  EXPECT_EQ(summary.manuals_removed, 1);
  const auto manuals = Manuals();
  ASSERT_EQ(manuals.size(), 1U);
  EXPECT_EQ(manuals[0].set, "Norvane 12");
  EXPECT_EQ(manuals[0].title, "Service notes");
  EXPECT_THAT(Pages(), ElementsAre("a.pdf:1 C1", "a.pdf:2"));
}

TEST_F(IndexLibraryTest, ChangedRulesSearchAgainWithoutReading) {
  const fs::path config = folder_.path() / "config";
  fs::copy(options_.config, config, fs::copy_options::recursive);
  options_.config = config;
  WriteScan("a.pdf", "words 1 C1");
  Index();
  const std::string rules = Manuals().at(0).rules;
  std::ofstream(config / "tube-types.tsv", std::ios::app) << "";
  Index();
  EXPECT_THAT(watcher_.stored, IsEmpty());
  std::ofstream(config / "zz-further.tsv") << "a table more\n";
  const IndexSummary summary = Index();
  EXPECT_EQ(summary.pages_read, 0);
  EXPECT_EQ(summary.pages_known, 1);
  EXPECT_THAT(watcher_.stored, ElementsAre("a"));
  EXPECT_NE(Manuals().at(0).rules, rules);
}

TEST_F(IndexLibraryTest, ManualsThatAreGoneAreRemoved) {
  WriteScan("a.pdf", "words 1 C1");
  WriteScan("b.pdf", "pages 2");
  Index();
  Remove("b.pdf");
  const IndexSummary summary = Index();
  EXPECT_EQ(summary.manuals_removed, 1);
  EXPECT_EQ(summary.pages, 1);
  EXPECT_THAT(Pages(), ElementsAre("a.pdf:1 C1"));
}

TEST_F(IndexLibraryTest, BadFilesAndPagesAreNamedAndTheRestIsIndexed) {
  WriteScan("a.pdf", "pages 3\nwords 1 C1\nwords 3 C3\non 2 any damaged");
  WriteScan("b.pdf", "on 0 any damaged");
  WriteScan("c.pdf", "pages 2\nwords 2 C2\non 1 any crash");
  WriteScan("d.pdf", "words 1 C4\non 1 full crash");
  WriteScan("e.pdf", "on 0 any crash");
  folder_.Write("library/f.pdf", "");
  folder_.Write("library/g.pdf", "plain text");
  const IndexSummary summary = Index();
  EXPECT_EQ(summary.pages, 6);
  EXPECT_EQ(summary.pages_read, 4);
  EXPECT_THAT(Pages(), ElementsAre("a.pdf:1 C1", "a.pdf:2 (is torn)", "a.pdf:3 C3", "c.pdf:1 (reader died (signal 11))",
                                   "c.pdf:2 C2", "d.pdf:1 C4"));
  std::vector<std::string> problems;
  for (const Error& problem : summary.problems) {
    problems.push_back(problem.ToString());
  }
  EXPECT_THAT(problems, ElementsAre(HasSubstr("f.pdf"), HasSubstr("g.pdf"), "a.pdf, page 2: is torn", "b.pdf: is torn",
                                    "c.pdf, page 1: reader died (signal 11)",
                                    "d.pdf, page 1: read only in the plainer mode: reader died (signal 11)",
                                    "e.pdf: reader died (signal 11)"));
  EXPECT_THAT(watcher_.problems, testing::UnorderedElementsAreArray(summary.problems));
  EXPECT_TRUE(Manuals().at(3).pages.at(0).plain_mode);

  // A second run reads nothing again, and names what is missing again.
  const IndexSummary second = Index();
  EXPECT_EQ(second.pages_read, 0);
  EXPECT_THAT(watcher_.stored, IsEmpty());
  problems.erase(problems.begin() + 5);  // a page that was read in the plainer mode has been read
  std::vector<std::string> again;
  for (const Error& problem : second.problems) {
    again.push_back(problem.ToString());
  }
  EXPECT_EQ(again, problems);
}

TEST_F(IndexLibraryTest, AHangingPageCostsThatPage) {
  WriteScan("a.pdf", "pages 2\nwords 2 C2\non 1 any hang");
  options_.limits.deadline = seconds(2);
  const IndexSummary summary = Index();
  EXPECT_THAT(summary.problems, ElementsAre(Error{ErrorCode::kTimeout, "took longer than 2 s", "a.pdf", 1}));
  EXPECT_THAT(Pages(), ElementsAre("a.pdf:1 (took longer than 2 s)", "a.pdf:2 C2"));
}

TEST_F(IndexLibraryTest, NothingThatIsInTheIndexIsLostToABadFile) {
  WriteScan("a.pdf", "words 1 C1");
  WriteScan("b.pdf", "words 1 C2");
  WriteScan("c.pdf", "words 1 C3");
  Index();
  WriteScan("a.pdf", "on 0 any damaged");  // torn, but still a scan by its first bytes
  folder_.Write("library/b.pdf", "");
  for (int run = 0; run < 2; ++run) {
    const IndexSummary summary = Index();
    EXPECT_EQ(summary.manuals_removed, 0);
    EXPECT_EQ(summary.sets, 3);
    EXPECT_EQ(summary.manuals, 3);
    EXPECT_EQ(summary.pages, 3);
    EXPECT_EQ(summary.pages_read, 0);
    EXPECT_THAT(Pages(), ElementsAre("a.pdf:1 C1", "b.pdf:1 C2", "c.pdf:1 C3"));
    ASSERT_EQ(summary.problems.size(), 2U);
    EXPECT_EQ(summary.problems[0].source, "a.pdf");
    EXPECT_EQ(summary.problems[1].source, "b.pdf");
    EXPECT_EQ(summary.problems[1].code, ErrorCode::kEmpty);
    EXPECT_THAT(summary.problems[1].message, HasSubstr("its pages stay in the index"));
    EXPECT_EQ(watcher_.stored.size(), run == 0 ? 2U : 0U);
  }
  WriteScan("a.pdf", "words 1 C1");
  WriteScan("b.pdf", "words 1 C2b");
  const IndexSummary mended = Index();
  EXPECT_EQ(mended.pages_read, 1);
  EXPECT_THAT(mended.problems, IsEmpty());
  EXPECT_THAT(Pages(), ElementsAre("a.pdf:1 C1", "b.pdf:1 C2b", "c.pdf:1 C3"));
}

TEST_F(IndexLibraryTest, ReadAgainReadsAlsoPagesThatFailed) {
  WriteScan("a.pdf", "pages 2\nwords 1 C1\non 2 any slow 1500\nwords 2 C2");
  options_.limits.deadline = seconds(1);
  Index();
  EXPECT_THAT(Pages(), ElementsAre("a.pdf:1 C1", "a.pdf:2 (took longer than 1 s)"));
  options_.limits.deadline = seconds(60);
  EXPECT_EQ(Index().pages_read, 0);
  options_.read_again = true;
  EXPECT_EQ(Index().pages_read, 2);
  EXPECT_THAT(Pages(), ElementsAre("a.pdf:1 C1", "a.pdf:2 C2"));
}

TEST_F(IndexLibraryTest, APageThatFailsWhenReadAgainKeepsItsReading) {
  WriteScan("a.pdf", "words 1 C1\non 1 any slow 1500");
  Index();
  options_.read_again = true;
  options_.limits.deadline = seconds(1);
  const IndexSummary summary = Index();
  EXPECT_EQ(summary.pages_read, 0);
  EXPECT_THAT(summary.problems,
              ElementsAre(Error{ErrorCode::kTimeout, "took longer than 1 s; its earlier reading stays in the index",
                                "a.pdf", 1}));
  EXPECT_THAT(Pages(), ElementsAre("a.pdf:1 C1"));
}

TEST_F(IndexLibraryTest, WhatIsStoredDoesNotDependOnTheNumberOfWorkers) {
  for (int set = 0; set < 6; ++set) {
    std::string script = "pages 5\non 3 any damaged";
    for (int page = 1; page <= 5; ++page) {
      script += "\nwords " + std::to_string(page) + " C" + std::to_string(10 * set + page) + " 6CB6\non " +
                std::to_string(page) + " any slow " + std::to_string((7 * set + 3 * page) % 5 * 10);
    }
    WriteScan("set" + std::to_string(set) + ".pdf", script + "\non 3 any damaged");
  }
  options_.workers = 1;
  const IndexSummary one = Index();
  const fs::path first = options_.database;
  options_.workers = 5;
  options_.database = folder_.path() / "index5";
  const IndexSummary five = Index();
  EXPECT_EQ(one.problems, five.problems);
  EXPECT_EQ(Export(first), Export(options_.database));
  EXPECT_EQ(Manuals(first), Manuals(options_.database));
}

TEST_F(IndexLibraryTest, ACancelledRunKeepsFinishedManualsAndTheNextGoesOn) {
  WriteScan("a.pdf", "words 1 C1");
  WriteScan("b.pdf", "pages 2\nwords 1 C2\non 2 full hang\nwords 2 C3");
  options_.workers = 1;
  std::thread canceller([&] {
    std::this_thread::sleep_for(seconds(2));
    cancel_ = true;
  });
  const auto start = std::chrono::steady_clock::now();
  const IndexSummary stopped = Index();
  EXPECT_LT(std::chrono::steady_clock::now() - start, seconds(10));
  canceller.join();
  EXPECT_TRUE(stopped.cancelled);
  EXPECT_EQ(stopped.pages, 1);
  EXPECT_THAT(Pages(), ElementsAre("a.pdf:1 C1"));

  cancel_ = false;
  options_.limits.deadline = seconds(2);
  const IndexSummary finished = Index();
  EXPECT_FALSE(finished.cancelled);
  EXPECT_EQ(finished.pages_read, 2);
  EXPECT_THAT(Pages(), ElementsAre("a.pdf:1 C1", "b.pdf:1 C2", "b.pdf:2 C3"));
}

TEST_F(IndexLibraryTest, ACancelThatIsSetAlreadyChangesNothing) {
  WriteScan("a.pdf", "words 1 C1");
  Index();
  Remove("a.pdf");
  WriteScan("b.pdf", "words 1 C2");
  cancel_ = true;
  EXPECT_TRUE(Index().cancelled);
  EXPECT_THAT(Pages(), ElementsAre("a.pdf:1 C1"));
}

TEST_F(IndexLibraryTest, FailsWhereNothingCanBeDone) {
  const auto code = [&] {
    const Result<IndexSummary> summary = IndexLibrary(options_, watcher_, cancel_);
    return summary ? std::string("ok") : std::string(Name(summary.error().code));
  };
  EXPECT_EQ(code(), "empty");
  EXPECT_FALSE(fs::exists(options_.database)) << "no index is made for a library without scans";
  WriteScan("a.pdf", "words 1 C1");
  options_.library = folder_.path() / "none";
  EXPECT_EQ(code(), "missing");
  options_.library = folder_.path() / "library";
  options_.program = folder_.path() / "none";
  EXPECT_EQ(code(), "missing");
  options_.program = FakeWorker();
  options_.config = folder_.path() / "none";
  EXPECT_NE(code(), "ok");
  options_.config = SourceFolder() / "config";
  {
    const auto other = IndexWriter::Open(options_.database, Rules::Load(options_.config).value());
    ASSERT_TRUE(other);
    EXPECT_EQ(code(), "busy");
  }
  EXPECT_EQ(code(), "ok");
}

}  // namespace
}  // namespace benchleaf

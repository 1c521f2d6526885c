#include "work/plan.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <string>
#include <vector>

namespace benchleaf {
namespace {

using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;

const PlanTerms kTerms{"reader-1", "rules-1", false};

ScanFile File(const std::string& path, const std::string& hash, int volume = 1) {
  return {path, ScanFormat::kPdf, 1000, hash, volume};
}

// A library of one set with one manual.
ScannedLibrary Library(std::vector<ScanFile> files) {
  ScannedLibrary library;
  library.root = "/library";
  library.sets = {{"Norvane 12", "Norvane", "12", {{"service", "", std::move(files)}}}};
  return library;
}

PageRecord Page(const std::string& file, const std::string& hash, int page, const PlanTerms& terms = kTerms) {
  PageRecord record;
  record.file = file;
  record.page = page;
  record.content_key = ContentKey(hash, page, terms.reading_fingerprint);
  return record;
}

// The manual as a run over Library({File("a.pdf", "aa"), File("b.pdf", "bb", 2)}) with two pages each stores it.
ManualRecord Stored() {
  ManualRecord manual;
  manual.set = "Norvane 12";
  manual.maker = "Norvane";
  manual.model = "12";
  manual.manual = "service";
  manual.files = {{"a.pdf", "aa", 1000, 1, 2, {}}, {"b.pdf", "bb", 1000, 2, 2, {}}};
  manual.pages = {Page("a.pdf", "aa", 1), Page("a.pdf", "aa", 2), Page("b.pdf", "bb", 1), Page("b.pdf", "bb", 2)};
  manual.pages[2].volume = 2;
  manual.pages[3].volume = 2;
  manual.rules = "rules-1";
  return manual;
}

IndexOutline Index(const std::vector<ManualRecord>& manuals) {
  IndexOutline outline;
  for (const ManualRecord& manual : manuals) {
    outline.Add(manual);
  }
  return outline;
}

// "a.pdf 1 aa" for a page that is known, "a.pdf 1 aa read" for one that is to be read.
std::vector<std::string> Pages(const ManualPlan& plan) {
  std::vector<std::string> pages;
  for (const PlannedPage& page : plan.pages) {
    pages.push_back(page.file + " " + std::to_string(page.page) + " " + page.content_key.substr(0, 2) +
                    (page.known ? "" : " read"));
  }
  return pages;
}

TEST(Plan, ANewManualIsReadWhole) {
  const IndexOutline none;
  const auto library = Library({File("a.pdf", "aa"), File("b.pdf", "bb", 2)});
  const auto plans = PlanManuals(library, none, {{"a.pdf", 2}, {"b.pdf", 1}}, kTerms);
  ASSERT_EQ(plans.size(), 1U);
  EXPECT_EQ(plans[0].work, ManualWork::kAssemble);
  EXPECT_THAT(Pages(plans[0]), ElementsAre("a.pdf 1 aa read", "a.pdf 2 aa read", "b.pdf 1 bb read"));
  EXPECT_EQ(plans[0].pages[2].volume, 2);
  EXPECT_EQ(plans[0].pages[2].content_key, "bb:1:reader-1");
  EXPECT_EQ(plans[0].head.files[0], (FileRecord{"a.pdf", "aa", 1000, 1, 2, {}}));
  EXPECT_EQ(plans[0].head.rules, "rules-1");
}

TEST(Plan, AnUnchangedManualIsLeftAlone) {
  const auto outline = Index({Stored()});
  const auto library = Library({File("a.pdf", "aa"), File("b.pdf", "bb", 2)});
  EXPECT_THAT(FilesToCount(library, outline), IsEmpty());
  const auto plans = PlanManuals(library, outline, {}, kTerms);
  ASSERT_EQ(plans.size(), 1U);
  EXPECT_EQ(plans[0].work, ManualWork::kNothing);
  EXPECT_THAT(plans[0].failures, IsEmpty());
}

TEST(Plan, WhatChangedDecidesWhatIsReadAgain) {
  struct Case {
    const char* reason;
    ScannedLibrary library;
    PlanTerms terms;
    int pages_to_read;
  };
  const auto same = Library({File("a.pdf", "aa"), File("b.pdf", "bb", 2)});
  auto titled = same;
  titled.sets[0].manuals[0].title = "Service notes";
  std::vector<Case> cases = {
      {"title from the table", titled, kTerms, 0},
      {"other rules", same, {"reader-1", "rules-2", false}, 0},
      {"other reader", same, {"reader-2", "rules-1", false}, 4},
      {"asked for", same, {"reader-1", "rules-1", true}, 4},
      {"a file has moved", Library({File("new/a.pdf", "aa"), File("b.pdf", "bb", 2)}), kTerms, 0},
      {"volumes in another order", Library({File("b.pdf", "bb", 1), File("a.pdf", "aa", 2)}), kTerms, 0},
      {"a file has new content", Library({File("a.pdf", "cc"), File("b.pdf", "bb", 2)}), kTerms, 3},
      {"a file is gone", Library({File("a.pdf", "aa")}), kTerms, 0},
  };
  for (const Case& c : cases) {
    SCOPED_TRACE(c.reason);
    const auto plans = PlanManuals(c.library, Index({Stored()}), {{"a.pdf", 3}}, c.terms);
    ASSERT_EQ(plans.size(), 1U);
    EXPECT_EQ(plans[0].work, ManualWork::kAssemble);
    EXPECT_EQ(std::count_if(plans[0].pages.begin(), plans[0].pages.end(), [](const auto& page) { return !page.known; }),
              c.pages_to_read);
  }
}

TEST(Plan, OnlyFilesOfUnknownContentAreCounted) {
  const auto outline = Index({Stored()});
  const auto library = Library({File("moved.pdf", "aa"), File("b.pdf", "new")});
  const auto files = FilesToCount(library, outline);
  ASSERT_EQ(files.size(), 1U);
  EXPECT_EQ(files[0]->path, "b.pdf");
}

TEST(Plan, PagesKnownToBeUnreadableAreNotTriedAgainButToldAgain) {
  ManualRecord stored = Stored();
  stored.pages[1].failure = Error{ErrorCode::kTimeout, "took longer than 120 s", "a.pdf", 2};
  const auto library = Library({File("a.pdf", "aa"), File("b.pdf", "bb", 2)});
  auto plans = PlanManuals(library, Index({stored}), {}, kTerms);
  EXPECT_EQ(plans[0].work, ManualWork::kNothing);
  EXPECT_THAT(plans[0].failures, ElementsAre(Error{ErrorCode::kTimeout, "took longer than 120 s", "a.pdf", 2}));

  plans = PlanManuals(library, Index({stored}), {}, {"reader-1", "rules-1", true});
  EXPECT_FALSE(plans[0].pages[1].known);
  EXPECT_THAT(plans[0].failures, IsEmpty());
}

TEST(Plan, AFailureThatDidNotLieInThePageIsTriedAgain) {
  for (const ErrorCode code : {ErrorCode::kIo, ErrorCode::kMissing}) {
    ManualRecord stored = Stored();
    stored.pages[1].failure = Error{code, "cannot be read", "a.pdf", 2};
    const auto plans = PlanManuals(Library({File("a.pdf", "aa"), File("b.pdf", "bb", 2)}), Index({stored}), {}, kTerms);
    EXPECT_EQ(plans[0].work, ManualWork::kAssemble);
    EXPECT_THAT(Pages(plans[0]), ElementsAre("a.pdf 1 aa", "a.pdf 2 aa read", "b.pdf 1 bb", "b.pdf 2 bb"));
  }
}

TEST(Plan, AFileThatCannotBeOpenedIsRecordedWithItsFailure) {
  const IndexOutline none;
  const auto plans = PlanManuals(Library({File("a.pdf", "aa")}), none,
                                 {{"a.pdf", Fail(ErrorCode::kLocked, "wants a password", "a.pdf")}}, kTerms);
  EXPECT_EQ(plans[0].work, ManualWork::kAssemble);
  EXPECT_THAT(Pages(plans[0]), IsEmpty());
  const Error failure{ErrorCode::kLocked, "wants a password", "a.pdf", 0};
  EXPECT_EQ(plans[0].head.files[0].failure, failure);
  EXPECT_THAT(plans[0].failures, ElementsAre(failure));
}

TEST(Plan, AFileThatCannotBeOpenedAnyMoreKeepsItsPages) {
  const auto library = Library({File("a.pdf", "torn"), File("b.pdf", "bb", 2)});
  const PageCounts counts = {{"a.pdf", Fail(ErrorCode::kDamaged, "is cut off", "a.pdf")}};
  const auto outline = Index({Stored()});
  ASSERT_EQ(FilesToCount(library, outline).size(), 1U);
  const auto plans = PlanManuals(library, outline, counts, {"reader-1", "rules-1", true});
  EXPECT_EQ(plans[0].work, ManualWork::kAssemble);
  EXPECT_THAT(Pages(plans[0]), ElementsAre("a.pdf 1 aa", "a.pdf 2 aa", "b.pdf 1 bb read", "b.pdf 2 bb read"));
  const FileRecord& file = plans[0].head.files[0];
  EXPECT_EQ(file.hash, "torn");
  EXPECT_EQ(file.page_count, 2);
  ASSERT_TRUE(file.failure);
  EXPECT_THAT(file.failure->message, HasSubstr("its pages stay in the index"));
  EXPECT_THAT(plans[0].failures, ElementsAre(*file.failure));

  // Stored so, the next run finds nothing new in it, and a run after the file is mended knows its pages.
  ManualRecord kept = Stored();
  kept.files[0] = file;
  EXPECT_EQ(PlanManuals(library, Index({kept}), counts, kTerms)[0].work, ManualWork::kNothing);
  const auto mended = Library({File("a.pdf", "aa"), File("b.pdf", "bb", 2)});
  const auto again = PlanManuals(mended, Index({kept}), {{"a.pdf", 2}}, kTerms);
  EXPECT_EQ(again[0].work, ManualWork::kAssemble);
  EXPECT_THAT(Pages(again[0]), ElementsAre("a.pdf 1 aa", "a.pdf 2 aa", "b.pdf 1 bb", "b.pdf 2 bb"));
  EXPECT_FALSE(again[0].head.files[0].failure);
}

TEST(Plan, AFileThatTheScanLeftOutKeepsItsPagesAndItsPlace) {
  struct Case {
    const char* reason;
    Error problem;
  };
  const std::vector<Case> cases = {
      {"the file cannot be read", {ErrorCode::kIo, "permission denied", "a.pdf", 0}},
      {"the file is empty now", {ErrorCode::kEmpty, "holds no bytes", "a.pdf", 0}},
      {"the whole library was listed in part", {ErrorCode::kIo, "input/output error", "/library", 0}},
  };
  for (const Case& c : cases) {
    SCOPED_TRACE(c.reason);
    auto library = Library({File("b.pdf", "bb", 2)});
    library.problems = {c.problem};
    const auto plans = PlanManuals(library, Index({Stored()}), {}, kTerms);
    EXPECT_THAT(Pages(plans[0]), ElementsAre("a.pdf 1 aa", "a.pdf 2 aa", "b.pdf 1 bb", "b.pdf 2 bb"));
    ASSERT_EQ(plans[0].head.files.size(), 2U);
    EXPECT_EQ(plans[0].head.files[0].path, "a.pdf");
    EXPECT_EQ(plans[0].head.files[0].failure->source, "a.pdf");
  }
}

TEST(Plan, AManualThatIsGoneIsRemovedUnlessItIsOutOfReach) {
  ManualRecord gone = Stored();
  gone.set = "Norvane 14";
  gone.files = {{"n14/a.pdf", "dd", 1000, 1, 1, {}}};
  gone.pages = {Page("n14/a.pdf", "dd", 1)};
  auto library = Library({File("a.pdf", "aa"), File("b.pdf", "bb", 2)});
  auto plans = PlanManuals(library, Index({Stored(), gone}), {}, kTerms);
  ASSERT_EQ(plans.size(), 2U);
  EXPECT_EQ(plans[1].head.set, "Norvane 14");
  EXPECT_EQ(plans[1].work, ManualWork::kRemove);

  library.problems = {{ErrorCode::kIo, "the folder cannot be listed", "n14", 0}};
  plans = PlanManuals(library, Index({Stored(), gone}), {}, kTerms);
  ASSERT_EQ(plans.size(), 2U);
  EXPECT_EQ(plans[1].work, ManualWork::kAssemble);
  EXPECT_THAT(Pages(plans[1]), ElementsAre("n14/a.pdf 1 dd"));
}

TEST(Plan, ARenamedSetTakesItsPagesFromTheOldOne) {
  ManualRecord old = Stored();
  old.set = "old name";
  const auto plans = PlanManuals(Library({File("a.pdf", "aa"), File("b.pdf", "bb", 2)}), Index({old}), {}, kTerms);
  ASSERT_EQ(plans.size(), 2U);
  EXPECT_EQ(plans[0].work, ManualWork::kAssemble);
  EXPECT_TRUE(plans[0].takes_from_others);
  EXPECT_THAT(Pages(plans[0]), ElementsAre("a.pdf 1 aa", "a.pdf 2 aa", "b.pdf 1 bb", "b.pdf 2 bb"));
  EXPECT_EQ(plans[1].head.set, "old name");
  EXPECT_EQ(plans[1].work, ManualWork::kRemove);
}

TEST(Plan, OfTwoCopiesTheOneThatCouldBeReadCounts) {
  ManualRecord failed = Stored();
  failed.set = "A copy";
  for (PageRecord& page : failed.pages) {
    page.failure = Error{ErrorCode::kCrashed, "reader died (signal 11)", page.file, page.page};
  }
  for (const auto& order : {std::vector<ManualRecord>{Stored(), failed}, {failed, Stored()}}) {
    const auto plans = PlanManuals(Library({File("new.pdf", "aa")}), Index(order), {}, kTerms);
    EXPECT_TRUE(plans[0].pages[0].known);
    EXPECT_THAT(plans[0].failures, IsEmpty());
  }
}

}  // namespace
}  // namespace benchleaf

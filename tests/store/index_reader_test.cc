#include "benchleaf/store/index_reader.h"

#include "store/test_index.h"

#include <gmock/gmock.h>
#include <signal.h>
#include <sys/wait.h>
#include <unistd.h>
#include <xapian.h>

#include <chrono>

namespace benchleaf {
namespace {

using IndexReaderTest = IndexTest;
using testing::ElementsAre;
using testing::HasSubstr;

TEST_F(IndexReaderTest, WithoutAnIndexSaysHowToMakeOne) {
  WriteFile(root() / "scans" / "a.pdf", "%PDF");
  std::filesystem::create_directory(root() / "empty");
  { Xapian::WritableDatabase begun((root() / "begun").string()); }
  for (const char* name : {"missing", "empty", "scans", "scans/a.pdf", "begun"}) {
    const auto reader = IndexReader::Open(root() / name, TestRules());
    ASSERT_FALSE(reader) << name;
    EXPECT_EQ(reader.error().code, ErrorCode::kMissing) << name;
    EXPECT_THAT(reader.error().message, HasSubstr("benchleaf index")) << name;
    EXPECT_EQ(reader.error().source, (root() / name).string());
  }
}

TEST_F(IndexReaderTest, ADamagedIndexIsNamedSo) {
  Store(MakeManual());
  WriteFile(folder() / "iamglass", "no version file");
  const auto reader = IndexReader::Open(folder(), TestRules());
  ASSERT_FALSE(reader);
  EXPECT_EQ(reader.error().code, ErrorCode::kDamaged);
  EXPECT_EQ(reader.error().source, folder().string());
}

TEST_F(IndexReaderTest, ADocumentThatIsNotOursIsDamage) {
  Store(MakeManual());
  {
    Xapian::WritableDatabase database(folder().string());
    for (Xapian::docid id = 1; id <= database.get_lastdocid(); ++id) {
      Xapian::Document document = database.get_document(id);
      document.set_data(
          "\x05"
          "abc");
      database.replace_document(id, document);
    }
  }
  const auto reader = Reader();
  EXPECT_EQ(reader->Find({"C112", "", {}, 10}).error().code, ErrorCode::kDamaged);
  EXPECT_EQ(reader->Parts("MEADOWLARK 5R1").error().code, ErrorCode::kDamaged);
  EXPECT_EQ(reader->Sets().error().code, ErrorCode::kDamaged);
  EXPECT_EQ(reader->Page("MEADOWLARK 5R1/service.pdf", 1).error().code, ErrorCode::kDamaged);
  EXPECT_EQ(reader->ForEachManual([](const ManualRecord&) { return true; }).error().code, ErrorCode::kDamaged);
}

TEST_F(IndexReaderTest, GivesAPageWithEverythingOnIt) {
  const ManualRecord manual = MakeManual();
  Store(manual);
  const auto reader = Reader();
  for (const PageRecord& page : manual.pages) EXPECT_EQ(reader->Page(page.file, page.page).value(), page);
  EXPECT_FALSE(reader->Page(manual.pages[0].file, 4).value());
  EXPECT_FALSE(reader->Page("other.pdf", 1).value());
}

TEST_F(IndexReaderTest, GoesThroughManualsBySetAndNameUntilToldToStop) {
  Store(MakeManual("B"), MakeManual("A", "2"), MakeManual("A", "1"));
  const auto reader = Reader();
  std::vector<ManualRecord> all;
  ASSERT_TRUE(reader->ForEachManual([&](const ManualRecord& manual) {
    all.push_back(manual);
    return true;
  }));
  EXPECT_THAT(all, ElementsAre(MakeManual("A", "1"), MakeManual("A", "2"), MakeManual("B")));
  int count = 0;
  ASSERT_TRUE(reader->ForEachManual([&](const ManualRecord&) { return ++count < 2; }));
  EXPECT_EQ(count, 2);
}

TEST_F(IndexReaderTest, ReadsNoMoreThanTheTubesWhereNoMoreIsWanted) {
  const ManualRecord whole = MakeManual();
  Store(whole);
  std::vector<ManualRecord> all;
  ASSERT_TRUE(Reader()->ForEachManual(
      [&](const ManualRecord& manual) {
        all.push_back(manual);
        return true;
      },
      ManualParts::kTubes));
  ASSERT_EQ(all.size(), 1U);
  ASSERT_EQ(all[0].pages.size(), whole.pages.size());
  EXPECT_TRUE(all[0].links.empty());
  for (std::size_t i = 0; i < whole.pages.size(); ++i) {
    const PageRecord& page = all[0].pages[i];
    std::vector<Sighting> wanted = whole.pages[i].sightings;
    const auto is_tube = [](const Sighting& sighting) { return sighting.kind == TermKind::kTube; };
    const bool names_tubes = std::any_of(wanted.begin(), wanted.end(), is_tube);
    std::erase_if(wanted, [&](const Sighting& sighting) {
      return !names_tubes || (!is_tube(sighting) && sighting.kind != TermKind::kDesignator);
    });
    EXPECT_EQ(page.sightings, wanted) << i;
    EXPECT_EQ(page.entries, whole.pages[i].entries) << i;
    EXPECT_TRUE(page.reading.words.empty()) << i;
    EXPECT_EQ(page.reading.frame, names_tubes ? whole.pages[i].reading.frame : PageFrame{}) << i;
  }
}

TEST_F(IndexReaderTest, SeesWhatIsCommittedAfterItWasOpened) {
  const auto writer = Writer();
  const auto reader = Reader();
  for (int i = 1; i <= 5; ++i) {
    ASSERT_TRUE(writer->ReplaceManual(MakeManual("set " + std::to_string(i))));
    EXPECT_EQ(reader->Find({"C112", "", {}, 100}).value().size(), static_cast<std::size_t>(i));
  }
}

TEST_F(IndexReaderTest, AManualReplacedInTheMiddleOfAWalkIsWhole) {
  Store(MakeManual("A"), MakeManual("B"), MakeManual("C"));
  const auto writer = Writer();
  const auto reader = Reader();
  std::vector<std::string> seen;
  ASSERT_TRUE(reader->ForEachManual([&](const ManualRecord& manual) {
    seen.push_back(manual.set + ' ' + manual.title);
    if (manual.set == "A") {
      ManualRecord changed = MakeManual("B");
      changed.title = "new";
      for (int i = 0; i < 5; ++i) EXPECT_TRUE(writer->ReplaceManual(changed));
      EXPECT_TRUE(writer->RemoveManual("C", "service"));
    }
    return true;
  }));
  EXPECT_THAT(seen, ElementsAre("A Service manual", "B new"));
}

// A writer in another process commits without a pause; every answer must come from one state: all sightings of one
// round, never of two, and never a part of them.
TEST_F(IndexReaderTest, AnswersComeFromOneWholeStateWhileAWriterCommits) {
  const auto round_of = [](int round) {
    ManualRecord manual;
    manual.set = "A";
    manual.manual = "service";
    for (int page = 1; page <= 20; ++page) {
      manual.pages.push_back(MakePage("A.pdf", page, PageKind::kSchematic));
      manual.pages.back().sightings = {MakeSighting(TermKind::kDesignator, "C1")};
      manual.pages.back().sightings[0].read = std::to_string(round);
    }
    return manual;
  };
  Store(round_of(0));
  const pid_t child = fork();
  if (child == 0) {
    const auto writer = Writer();
    for (int round = 1;; ++round) {
      if (!writer->ReplaceManual(round_of(round))) _exit(1);
    }
  }
  const auto reader = Reader();
  std::string first;
  std::string last;
  // On a busy machine the writer may take longer to begin than three hundred questions.
  const auto patience = std::chrono::steady_clock::now() + std::chrono::seconds(20);
  for (int i = 0; i < 300 || (first == last && std::chrono::steady_clock::now() < patience); ++i) {
    const auto found = reader->Find({"C1", "", {}, 100});
    if (!found) {
      EXPECT_EQ(found.error().code, ErrorCode::kBusy) << found.error().ToString();
      continue;
    }
    ASSERT_EQ(found->size(), 20U);
    for (const FoundSighting& one : *found) ASSERT_EQ(one.sighting.read, (*found)[0].sighting.read);
    last = (*found)[0].sighting.read;
    if (i == 0) first = last;
  }
  kill(child, SIGKILL);
  int status = 0;
  ASSERT_EQ(waitpid(child, &status, 0), child);
  EXPECT_TRUE(WIFSIGNALED(status)) << "the writer went on to the end";
  EXPECT_NE(first, last) << "there were several states to see";
}

TEST_F(IndexReaderTest, GivesASetsManualsWhole) {
  Store(MakeManual("A", "z"), MakeManual("A", "b"), MakeManual("AB", "c"));
  const auto manuals = Reader()->Manuals("A").value();
  ASSERT_EQ(manuals.size(), 2U);
  EXPECT_EQ(manuals[0], MakeManual("A", "b"));
  EXPECT_EQ(manuals[1], MakeManual("A", "z"));
  const auto unknown = Reader()->Manuals("a");
  ASSERT_FALSE(unknown);
  EXPECT_EQ(unknown.error().code, ErrorCode::kMissing);
}

}  // namespace
}  // namespace benchleaf

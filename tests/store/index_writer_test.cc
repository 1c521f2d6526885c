#include "benchleaf/store/index_writer.h"

#include "store/schema.h"
#include "store/test_index.h"

#include "benchleaf/record/codec.h"

#include <gmock/gmock.h>
#include <signal.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>
#include <xapian.h>

#include <algorithm>
#include <map>
#include <sstream>

namespace benchleaf {
namespace {

namespace fs = std::filesystem;
using IndexWriterTest = IndexTest;
using testing::HasSubstr;
using testing::IsEmpty;
using Names = std::vector<std::pair<std::string, std::string>>;

// Every file of a folder with its content, to show that it was left alone.
std::map<std::string, std::string> ContentOf(const fs::path& folder) {
  std::map<std::string, std::string> content;
  for (const fs::directory_entry& file : fs::directory_iterator(folder)) {
    std::ostringstream bytes;
    bytes << std::ifstream(file.path()).rdbuf();
    content[file.path().filename()] = bytes.str();
  }
  return content;
}

// A page with `terms` different terms of its own, to make a manual of some size.
ManualRecord BigManual(const std::string& set, int terms) {
  ManualRecord manual;
  manual.set = set;
  manual.manual = "big";
  manual.pages = {MakePage(set + ".pdf", 1, PageKind::kSchematic)};
  for (int i = 0; i < terms; ++i) {
    manual.pages[0].sightings.push_back(MakeSighting(TermKind::kPartNumber, set + '-' + std::to_string(i)));
  }
  return manual;
}

TEST_F(IndexWriterTest, KeepsAManualAsItWas) {
  const ManualRecord manual = MakeManual();
  Store(manual);
  const auto stored = Writer()->StoredManual(manual.set, manual.manual);
  ASSERT_TRUE(stored) << stored.error().ToString();
  ASSERT_TRUE(stored->has_value());
  EXPECT_EQ(**stored, manual);
}

TEST_F(IndexWriterTest, KeepsAManualWithoutPages) {
  ManualRecord manual = MakeManual();
  manual.pages.clear();
  manual.links.clear();
  Store(manual);
  EXPECT_EQ(Writer()->StoredManual(manual.set, manual.manual).value(), manual);
}

TEST_F(IndexWriterTest, KnowsNothingOfOtherManuals) {
  Store(MakeManual());
  const auto writer = Writer();
  EXPECT_FALSE(writer->StoredManual("MEADOWLARK 5R1", "operator").value());
  EXPECT_FALSE(writer->StoredManual("MEADOWLARK 5", "R1service").value());
  EXPECT_FALSE(writer->StoredPage("no such key").value());
}

TEST_F(IndexWriterTest, ListsManualsBySetAndName) {
  Store(MakeManual("B", "2"), MakeManual("B", "1"), MakeManual("A 2", "x"), MakeManual("A", "y"));
  EXPECT_EQ(Writer()->Manuals().value(), (Names{{"A", "y"}, {"A 2", "x"}, {"B", "1"}, {"B", "2"}}));
}

TEST_F(IndexWriterTest, ReplacesAllOfAManual) {
  ManualRecord manual = MakeManual();
  Store(manual);
  const std::string old_key = manual.pages[0].content_key;
  manual.pages.erase(manual.pages.begin());
  manual.links.clear();
  Store(manual);

  const auto writer = Writer();
  EXPECT_EQ(writer->StoredManual(manual.set, manual.manual).value(), manual);
  EXPECT_FALSE(writer->StoredPage(old_key).value());
  EXPECT_THAT(Reader()->Find({"C112", "", {}, 10}).value(), IsEmpty());
  // Nothing of the old state is left behind: a manual, two pages, two readings.
  EXPECT_EQ(Xapian::Database(folder().string()).get_doccount(), 5U);
}

TEST_F(IndexWriterTest, LeavesDocumentsThatDoNotChangeInTheirPlace) {
  Store(MakeManual("A"), MakeManual("B"));
  ManualRecord manual = MakeManual("A");
  manual.rules = "other rules";
  manual.pages[0].sightings[0].confidence = 0.123;
  manual.pages[1].facts.printed_number = "9-99";
  Store(manual);
  EXPECT_EQ(Writer()->StoredManual("A", "service").value(), manual);
  EXPECT_EQ(Writer()->StoredManual("B", "service").value(), MakeManual("B"));
  const Xapian::Database database(folder().string());
  EXPECT_EQ(database.get_lastdocid(), database.get_doccount()) << "no id is given anew";
  EXPECT_EQ(Xapian::Database::check(folder().string(), 0, nullptr), 0U);
}

TEST_F(IndexWriterTest, CommitsTogetherWhatMayWait) {
  Store(MakeManual("A"));
  const auto writer = Writer();
  ASSERT_TRUE(writer->ReplaceManual(MakeManual("B"), IndexWriter::Durable::kSoon));
  EXPECT_EQ(writer->Manuals().value().size(), 2U) << "the writer knows it";
  EXPECT_EQ(Reader()->Sets().value().size(), 1U) << "nobody else does";
  ASSERT_TRUE(writer->Commit());
  EXPECT_EQ(Reader()->Sets().value().size(), 2U);
  ASSERT_TRUE(writer->ReplaceManual(MakeManual("C"), IndexWriter::Durable::kSoon));
  ASSERT_TRUE(writer->RemoveManual("A", "service")) << "a commit takes along what waits";
  EXPECT_EQ(Reader()->Sets().value().size(), 2U);
  ASSERT_TRUE(writer->Commit()) << "nothing to do is no failure";
}

// Documents are made ahead of some pages of a long manual only; others stand after those.
TEST_F(IndexWriterTest, WritesWhatWasMadeReadyAsItWritesTheRecord) {
  ManualRecord manual = MakeManual("A");
  const std::vector<PageRecord> pages = manual.pages;
  while (manual.pages.size() < 250) {
    PageRecord page = pages[manual.pages.size() % pages.size()];
    page.page = static_cast<int>(manual.pages.size()) + 1;
    page.content_key += " " + std::to_string(page.page);
    manual.pages.push_back(std::move(page));
  }
  ASSERT_TRUE(Writer()->ReplaceManual(manual));
  const fs::path other = root() / "other";
  ASSERT_TRUE(IndexWriter::Open(other, TestRules()).value()->ReplaceManual(PreparedManual(manual, *TestRules())));
  const Xapian::Database one(folder().string());
  const Xapian::Database two(other.string());
  ASSERT_EQ(one.get_lastdocid(), two.get_lastdocid());
  for (Xapian::docid id = 1; id <= one.get_lastdocid(); ++id) {
    const Xapian::Document a = one.get_document(id);
    const Xapian::Document b = two.get_document(id);
    EXPECT_EQ(a.get_data(), b.get_data());
    EXPECT_TRUE(std::equal(a.values_begin(), a.values_end(), b.values_begin(), b.values_end()));
    EXPECT_TRUE(std::equal(a.termlist_begin(), a.termlist_end(), b.termlist_begin(), b.termlist_end()));
  }
}

TEST_F(IndexWriterTest, RemovesOneManualOnly) {
  Store(MakeManual("A"), MakeManual("B"));
  const auto writer = Writer();
  ASSERT_TRUE(writer->RemoveManual("A", "service"));
  EXPECT_TRUE(writer->RemoveManual("A", "service")) << "nothing to do is no failure";
  EXPECT_EQ(writer->Manuals().value(), (Names{{"B", "service"}}));
  EXPECT_EQ(writer->StoredManual("B", "service").value(), MakeManual("B"));
}

TEST_F(IndexWriterTest, FindsAReadingByItsContentWhereverItLies) {
  ManualRecord manual = MakeManual("A");
  Store(manual);
  const PageRecord page = manual.pages[0];
  EXPECT_EQ(Writer()->StoredPage(page.content_key).value(), page);

  // The file was renamed and put into another manual; the content is the same.
  ManualRecord moved = MakeManual("B");
  for (PageRecord& other : moved.pages) other.content_key = "moved " + other.content_key;
  moved.pages[0].content_key = page.content_key;
  Store(moved);
  ASSERT_TRUE(Writer()->RemoveManual("A", "service"));
  const auto stored = Writer()->StoredPage(page.content_key).value();
  ASSERT_TRUE(stored);
  EXPECT_EQ(stored->reading, page.reading);
}

TEST_F(IndexWriterTest, FailedPagesAreStoredToo) {
  const ManualRecord manual = MakeManual();
  Store(manual);
  EXPECT_EQ(Writer()->StoredPage(manual.pages[2].content_key).value(), manual.pages[2]);
}

TEST_F(IndexWriterTest, TakesLongNamesAndAnyBytes) {
  const std::string long_name(300, 'n');
  const std::string bytes("\xFF\xFE caf\xE9 \x01", 10);
  for (const std::string& name : {long_name, bytes, std::string(240, '\xE9'), std::string("a\0b", 3)}) {
    ManualRecord manual = MakeManual(name, name + "2");
    manual.pages[0].content_key = std::string(1000, 'k') + name;
    manual.pages[0].sightings[0].text = std::string(400, 'T');
    manual.pages[0].reading.words[0].text = std::string(400, 'w');
    manual.pages[0].reading.words[1].text = std::string(400, '.');
    const auto writer = Writer();
    const auto replaced = writer->ReplaceManual(manual);
    ASSERT_TRUE(replaced) << replaced.error().ToString();
    EXPECT_EQ(writer->StoredManual(manual.set, manual.manual).value(), manual);
    EXPECT_EQ(writer->StoredPage(manual.pages[0].content_key).value(), manual.pages[0]);
    const auto reader = Reader();
    EXPECT_EQ(reader->Page(manual.pages[0].file, 1).value(), manual.pages[0]);
    EXPECT_EQ(reader->Find({manual.pages[0].sightings[0].text, name, {}, 10}).value().size(), 1U);
    EXPECT_EQ(reader->Parts(name).value().size(), 2U);
  }
}

TEST_F(IndexWriterTest, LongNamesThatDifferAtTheirEndsStayApart) {
  const std::string name(300, 'n');
  ManualRecord a = MakeManual(name + 'a');
  ManualRecord b = MakeManual(name + 'b');
  a.manual = b.manual = name;
  Store(a, b);
  ASSERT_TRUE(Writer()->RemoveManual(a.set, a.manual));
  EXPECT_EQ(Writer()->StoredManual(b.set, b.manual).value(), b);
  EXPECT_EQ(Reader()->Find({"C112", b.set, {}, 10}).value().size(), 1U);
  EXPECT_THAT(Reader()->Find({"C112", a.set, {}, 10}).value(), IsEmpty());
}

TEST_F(IndexWriterTest, RefusesLinksThatPointNowhere) {
  Store(MakeManual());
  ManualRecord wrong = MakeManual();
  wrong.links[0].sighting = 99;
  const auto writer = Writer();
  const auto replaced = writer->ReplaceManual(wrong);
  ASSERT_FALSE(replaced);
  EXPECT_EQ(replaced.error().code, ErrorCode::kUsage);
  EXPECT_EQ(writer->StoredManual(wrong.set, wrong.manual).value(), MakeManual());
}

TEST_F(IndexWriterTest, ASecondWriterIsToldWhoWrites) {
  const auto writer = Writer();
  const auto second = IndexWriter::Open(folder(), TestRules());
  ASSERT_FALSE(second);
  EXPECT_EQ(second.error().code, ErrorCode::kBusy);
  EXPECT_THAT(second.error().message, HasSubstr("process " + std::to_string(getpid())));
  EXPECT_EQ(second.error().source, folder().string());
  EXPECT_TRUE(writer->ReplaceManual(MakeManual())) << "the first writer goes on";
}

TEST_F(IndexWriterTest, AWriterInAnotherProcessIsNamed) {
  int ready[2];
  ASSERT_EQ(pipe(ready), 0);
  const pid_t child = fork();
  if (child == 0) {
    const auto writer = Writer();
    const bool told = write(ready[1], "x", 1) == 1;
    pause();
    _exit(told ? 0 : 1);
  }
  char byte = 0;
  ASSERT_EQ(read(ready[0], &byte, 1), 1);
  const auto second = IndexWriter::Open(folder(), TestRules());
  ASSERT_FALSE(second);
  EXPECT_EQ(second.error().code, ErrorCode::kBusy);
  EXPECT_THAT(second.error().message, HasSubstr("process " + std::to_string(child)));

  kill(child, SIGKILL);
  ASSERT_EQ(waitpid(child, nullptr, 0), child);
  close(ready[0]);
  close(ready[1]);
  EXPECT_TRUE(IndexWriter::Open(folder(), TestRules())) << "its lock and its note are no hindrance";
}

TEST_F(IndexWriterTest, LeavesOtherFilesAlone) {
  WriteFile(folder() / "scan.pdf", "%PDF");
  const auto before = ContentOf(folder());
  const auto writer = IndexWriter::Open(folder(), TestRules());
  ASSERT_FALSE(writer);
  EXPECT_EQ(writer.error().code, ErrorCode::kForeign);
  EXPECT_EQ(writer.error().source, folder().string());
  EXPECT_EQ(ContentOf(folder()), before);
}

TEST_F(IndexWriterTest, LeavesAnotherProgramsDatabaseAlone) {
  {
    Xapian::WritableDatabase database(folder().string());
    database.add_document(Xapian::Document());
  }
  const auto before = ContentOf(folder());
  EXPECT_EQ(IndexWriter::Open(folder(), TestRules()).error().code, ErrorCode::kForeign);
  EXPECT_EQ(IndexReader::Open(folder(), TestRules()).error().code, ErrorCode::kForeign);
  EXPECT_EQ(ContentOf(folder()), before);
}

TEST_F(IndexWriterTest, LeavesAnotherSchemaVersionAlone) {
  Store(MakeManual());
  for (const std::string version : {"0", "2"}) {  // 2 was the last before this one
    Xapian::WritableDatabase(folder().string()).set_metadata(store::kSchemaKey, version);
    const auto before = ContentOf(folder());
    const auto writer = IndexWriter::Open(folder(), TestRules());
    ASSERT_FALSE(writer);
    EXPECT_EQ(writer.error().code, ErrorCode::kForeign);
    EXPECT_THAT(writer.error().message, HasSubstr("schema " + version + ","));
    EXPECT_EQ(IndexReader::Open(folder(), TestRules()).error().code, ErrorCode::kForeign);
    EXPECT_EQ(ContentOf(folder()), before);
  }
}

TEST_F(IndexWriterTest, AFileInTheFoldersPlaceIsForeign) {
  WriteFile(folder(), "a file");
  EXPECT_EQ(IndexWriter::Open(folder(), TestRules()).error().code, ErrorCode::kForeign);
}

TEST_F(IndexWriterTest, MakesMissingFoldersAbove) {
  EXPECT_TRUE(IndexWriter::Open(root() / "a" / "b" / "c", TestRules()));
}

TEST_F(IndexWriterTest, AFolderThatCannotBeMadeIsIo) {
  WriteFile(root() / "file", "");
  const auto writer = IndexWriter::Open(root() / "file" / "index", TestRules());
  ASSERT_FALSE(writer);
  EXPECT_EQ(writer.error().code, ErrorCode::kIo);
}

TEST_F(IndexWriterTest, TakesOverWhatAKilledWriterBegan) {
  WriteFile(folder() / "flintlock", "");
  WriteFile(folder() / "postlist.glass", "");
  EXPECT_TRUE(IndexWriter::Open(folder(), TestRules())) << "killed before the version file was there";
  fs::remove_all(folder());
  { Xapian::WritableDatabase database(folder().string()); }
  EXPECT_TRUE(IndexWriter::Open(folder(), TestRules())) << "killed before the schema was written";
}

// A writer that is killed with a transaction under way, as by the power.
TEST_F(IndexWriterTest, AKilledWriterLeavesTheOldState) {
  const ManualRecord manual = MakeManual();
  Store(manual);
  const pid_t child = fork();
  if (child == 0) {
    Xapian::WritableDatabase database(folder().string(), Xapian::DB_OPEN);
    database.begin_transaction(true);
    database.delete_document(store::ManualTerm(manual.set, manual.manual));
    Xapian::Document document;
    document.add_term("EDC999");
    for (int i = 0; i < 20000; ++i) database.add_document(document);  // more than Xapian keeps in memory
    raise(SIGKILL);
  }
  int status = 0;
  ASSERT_EQ(waitpid(child, &status, 0), child);
  ASSERT_TRUE(WIFSIGNALED(status));
  EXPECT_EQ(Reader()->Find({"C112", "", {}, 10}).value().size(), 1U);
  const auto writer = Writer();
  EXPECT_EQ(writer->StoredManual(manual.set, manual.manual).value(), manual);
  EXPECT_TRUE(writer->ReplaceManual(MakeManual("B")));
}

// Writers killed at any moment: whatever was committed is whole.
TEST_F(IndexWriterTest, WhatWasCommittedSurvivesAnyKill) {
  Store(MakeManual("before"));
  for (int round = 0; round < 8; ++round) {
    const pid_t child = fork();
    if (child == 0) {
      const auto writer = Writer();
      for (int i = 0;; ++i) {
        if (!writer->ReplaceManual(BigManual("set" + std::to_string(i % 3), 300 + i))) _exit(1);
      }
    }
    usleep(static_cast<useconds_t>(20000 + 7000 * round));
    kill(child, SIGKILL);
    int status = 0;
    ASSERT_EQ(waitpid(child, &status, 0), child);
    ASSERT_TRUE(WIFSIGNALED(status));

    const auto writer = Writer();
    EXPECT_EQ(writer->StoredManual("before", "service").value(), MakeManual("before"));
    const Names manuals = writer->Manuals().value();
    for (const auto& [set, name] : manuals) {
      EXPECT_TRUE(writer->StoredManual(set, name).value().has_value()) << set;
    }
  }
}

// A limit on file sizes stands in for a full disk: both make a write fail in the middle.
TEST_F(IndexWriterTest, AFailedWriteLeavesTheOldState) {
  const ManualRecord manual = MakeManual();
  Store(manual);
  const pid_t child = fork();
  if (child == 0) {
    const auto writer = Writer();
    signal(SIGXFSZ, SIG_IGN);
    rlimit limit{};
    getrlimit(RLIMIT_FSIZE, &limit);
    limit.rlim_cur = 100'000;
    setrlimit(RLIMIT_FSIZE, &limit);
    const auto failed = writer->ReplaceManual(BigManual("B", 50'000));
    if (failed || failed.error().code != ErrorCode::kIo) _exit(1);
    limit.rlim_cur = limit.rlim_max;
    setrlimit(RLIMIT_FSIZE, &limit);
    if (writer->StoredManual(manual.set, manual.manual).value() != manual) _exit(2);
    // The same writer goes on once there is room again, and writes nothing of what failed.
    if (!writer->ReplaceManual(MakeManual("C"))) _exit(3);
    if (writer->Manuals().value() != Names{{"C", "service"}, {manual.set, manual.manual}}) _exit(4);
    _exit(0);
  }
  int status = 0;
  ASSERT_EQ(waitpid(child, &status, 0), child);
  EXPECT_EQ(WEXITSTATUS(status), 0);
  EXPECT_EQ(Writer()->Manuals().value(), (Names{{"C", "service"}, {manual.set, manual.manual}}));
  EXPECT_EQ(Xapian::Database::check(folder().string()), 0U);
}

TEST_F(IndexWriterTest, ExportIsTheSameAfterClosingAndReplacing) {
  const ManualRecord manual = MakeManual();
  const std::string lines = ExportLines(manual);
  Store(manual);
  const auto exported = [this] {
    std::string all;
    EXPECT_TRUE(Reader()->ForEachManual([&all](const ManualRecord& each) {
      all += ExportLines(each);
      return true;
    }));
    return all;
  };
  EXPECT_EQ(exported(), lines);
  Store(MakeManual("Z"), manual);
  ASSERT_TRUE(Writer()->RemoveManual("Z", "service"));
  EXPECT_EQ(exported(), lines);
}

}  // namespace
}  // namespace benchleaf

// A library indexed shard by shard and merged is the index of one machine, whatever happens to a shard on the way.

#include "places/places.h"
#include "trust/scripted_library.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <xapian.h>

#include <chrono>
#include <csignal>
#include <string>
#include <vector>

namespace benchleaf {
namespace {

namespace fs = std::filesystem;
using testing::HasSubstr;

class Shards : public testing::Test {
 protected:
  static constexpr int kCount = 3;

  void SetUp() override {
    library_.MakeBefore();
    // Of one set, a manual in two volumes and another in one.
    fs::create_directories(library_.library() / "oak");
    library_.WriteScan("oak/oak vol 1.pdf", "pages 1\nwords 1 C1 C2 R3\n");
    library_.WriteScan("oak/oak vol 2.pdf", "pages 1\nwords 1 C1 R3 V4 6AU6\n");
    library_.WriteScan("oak/notes.pdf", "pages 1\nwords 1 C1\n");
  }

  ProcessEnd Run(std::vector<std::string> arguments,
                 std::chrono::milliseconds kill_after = std::chrono::minutes(2)) const {
    arguments.insert(arguments.begin(), BENCHLEAF_SCRIPTED);
    ProcessRun run{.arguments = std::move(arguments)};
    run.kill_after = kill_after;
    return RunProcess(run);
  }

  fs::path Folder(int shard, int count = kCount) const {
    return library_.folder() / "shards" / (std::to_string(shard) + "-of-" + std::to_string(count));
  }

  ProcessEnd IndexShard(int shard, int count = kCount,
                        std::chrono::milliseconds kill_after = std::chrono::minutes(2)) const {
    return Run(
        {"index", library_.library().string(), "--shard", std::to_string(shard) + "/" + std::to_string(count), "--db",
         Folder(shard, count).string(), "--config", (SourceFolder() / "config").string(), "--workers", "1"},
        kill_after);
  }

  ProcessEnd Merge(const std::string& name, const std::vector<fs::path>& shards) const {
    std::vector<std::string> arguments = {"merge", "--db", (library_.folder() / name).string()};
    for (const fs::path& shard : shards) arguments.push_back(shard.string());
    return Run(std::move(arguments));
  }

  std::vector<fs::path> All(int count = kCount) const {
    std::vector<fs::path> folders;
    for (int shard = count; shard > 0; --shard) folders.push_back(Folder(shard, count));
    return folders;
  }

  std::string Export(const fs::path& database) const {
    const ProcessEnd end = library_.Ask(database, "export");
    EXPECT_EQ(end.code, 0) << end.err;
    return end.out;
  }

  std::string Tubes(const fs::path& database) const {
    const ProcessEnd end = Run({"tube", "6AU6", "--json", "--library", library_.library().string(), "--db",
                                database.string(), "--config", (SourceFolder() / "config").string()});
    EXPECT_EQ(end.code, 0) << end.err;
    return end.out;
  }

  // What one machine makes of the library as it is now.
  std::string Single(int code) const {
    const fs::path single = library_.folder() / "single";
    const ProcessEnd end = library_.Index(single);
    EXPECT_EQ(end.code, code) << end.err;
    return Export(single);
  }

  ScriptedLibrary library_;
};

TEST_F(Shards, MergedAreTheIndexOfOneMachine) {
  for (const int count : {1, kCount, 12}) {  // of twelve most are empty
    SCOPED_TRACE(count);
    for (int shard = count; shard > 0; --shard) {
      const ProcessEnd end = IndexShard(shard, count);
      ASSERT_EQ(end.code, 0) << end.err;
    }
    const std::string name = "merged" + std::to_string(count);
    const ProcessEnd end = Merge(name, All(count));
    ASSERT_EQ(end.code, 0) << end.err;
    EXPECT_EQ(Export(library_.folder() / name), Single(0));
    EXPECT_FALSE(fs::exists(library_.folder() / (name + ".unfinished")));
  }
  const fs::path merged = library_.folder() / "merged3";
  const fs::path single = library_.folder() / "single";
  EXPECT_EQ(library_.Ask(merged, "sets").out, library_.Ask(single, "sets").out);
  EXPECT_EQ(Tubes(merged), Tubes(single)) << "compaction keeps what stands beside the pages";
  EXPECT_EQ(Xapian::Database::check(merged.string(), 0, nullptr), 0U);
  const ProcessEnd again = library_.Index(merged);
  EXPECT_THAT(again.err, HasSubstr(" 0 pages read now, ")) << "the merged index goes on as any other";
  library_.WriteScan("elm.pdf", "pages 1\nwords 1 L7\n");
  ASSERT_EQ(library_.Index(merged).code, 0);
  EXPECT_EQ(Export(merged), Single(0));
}

TEST_F(Shards, AskedAsOneAnswerAsTheMergedIndex) {
  for (int shard = 1; shard <= kCount; ++shard) ASSERT_EQ(IndexShard(shard).code, 0);
  ASSERT_EQ(Merge("merged", All()).code, 0);
  const std::vector<std::vector<std::string>> questions = {
      {"sets", "--json"},
      {"find", "C1", "--json"},
      {"find", "C1", "--in", "oak", "--json"},
      {"find", "R30", "--json"},
      {"find", "c*", "--json"},
      {"find", "C", "--json"},
      {"parts", "oak", "--json"},
      {"tube", "6AU6", "--json"},
      {"lineup", "oak", "--json"},
      {"gaps", "oak", "--json"},
      {"export"},
      {"find", "nowhere9"},
      {"parts", "ok", "--json"},
  };
  for (std::vector<std::string> question : questions) {
    SCOPED_TRACE(testing::PrintToString(question));
    std::vector<std::string> of_shards = question;
    question.insert(question.end(), {"--db", (library_.folder() / "merged").string()});
    for (const fs::path& shard : All()) of_shards.insert(of_shards.end(), {"--db", shard.string()});
    for (std::vector<std::string>* one : {&question, &of_shards}) {
      one->insert(one->end(),
                  {"--library", library_.library().string(), "--config", (SourceFolder() / "config").string()});
    }
    const ProcessEnd merged = Run(question);
    const ProcessEnd together = Run(of_shards);
    EXPECT_EQ(together.out, merged.out);
    EXPECT_EQ(together.code, merged.code);
  }
}

TEST_F(Shards, AreBroughtUpToDateWhenTheLibraryChanges) {
  for (int shard = 1; shard <= kCount; ++shard) ASSERT_EQ(IndexShard(shard).code, 0);
  Single(0);
  library_.MakeAfter();
  EXPECT_EQ(IndexShard(1).code | IndexShard(2).code | IndexShard(3).code, 2) << "a page cannot be read";
  const ProcessEnd end = Merge("merged", All());
  ASSERT_EQ(end.code, 0) << end.err;
  EXPECT_EQ(Export(library_.folder() / "merged"), Single(2));
}

TEST_F(Shards, OneThatWasKilledIsRefusedAndGoesOnWhenRunAgain) {
  library_.WriteScan("oak/notes.pdf", "pages 1\nwords 1 C1\non 1 any slow 1200\n");
  int killed = 0;
  for (int shard = 1; shard <= kCount; ++shard) {
    killed = IndexShard(shard, kCount, std::chrono::milliseconds(900)).timed_out ? shard : killed;
  }
  ASSERT_GT(killed, 0);
  const ProcessEnd refused = Merge("merged", All());
  EXPECT_EQ(refused.code, 4);
  EXPECT_THAT(refused.err, HasSubstr(Folder(killed).string() + ": it is not whole"));
  EXPECT_FALSE(fs::exists(library_.folder() / "merged"));
  EXPECT_EQ(Merge("merged", {Folder(killed).string() + ".unfinished"}).code, 4);
  for (int shard = 1; shard <= kCount; ++shard) {  // on a busy machine more than one was killed
    const int code = fs::exists(Folder(shard)) ? 0 : IndexShard(shard).code;
    ASSERT_EQ(code, 0);
  }
  ASSERT_EQ(Merge("merged", All()).code, 0);
  EXPECT_EQ(Export(library_.folder() / "merged"), Single(0));
}

TEST_F(Shards, ThatDoNotBelongTogetherAreRefusedByName) {
  for (int shard = 1; shard <= kCount; ++shard) ASSERT_EQ(IndexShard(shard).code, 0);
  ASSERT_EQ(IndexShard(1, 2).code, 0);
  const fs::path copy = library_.folder() / "copy";
  fs::copy(Folder(2), copy);
  const fs::path old = library_.folder() / "old";
  fs::copy(Folder(3), old);
  Xapian::WritableDatabase(old.string(), Xapian::DB_OPEN).set_metadata("benchleaf-schema", "1");
  const fs::path scans = library_.folder() / "scans";
  fs::create_directories(scans / "of a person");
  Single(0);
  const fs::path single = library_.folder() / "single";

  const auto expect_refused = [&](const std::vector<fs::path>& shards, const std::string& said) {
    const ProcessEnd end = Merge("merged", shards);
    EXPECT_EQ(end.code, 4) << said;
    EXPECT_THAT(end.err, HasSubstr(said));
    EXPECT_FALSE(fs::exists(library_.folder() / "merged"));
  };
  expect_refused({Folder(1), Folder(3)}, "of 3 shards these are not named: 2");
  expect_refused({Folder(1), Folder(2), Folder(3), copy}, copy.string() + ": this is shard 2 once more");
  expect_refused({Folder(1), Folder(2), Folder(1, 2)}, Folder(1, 2).string() + ": is one of 2 shards");
  expect_refused({Folder(1), Folder(2), single}, single.string() + ": this is no shard");
  expect_refused({Folder(1), Folder(2), old}, old.string() + ": the index was made by another version");
  expect_refused({Folder(1), Folder(2), scans}, scans.string() + ": the folder holds no index");
  expect_refused({Folder(1), Folder(2), scans / "none"}, "none: there is no shard here");
  library_.WriteScan("elm.pdf", "pages 1\nwords 1 L7\n");
  ASSERT_EQ(IndexShard(3).code, 0);
  expect_refused(All(), "is of another library, or of another state of it");
  EXPECT_TRUE(fs::exists(scans / "of a person"));

  const ProcessEnd onto = Merge("single", All());
  EXPECT_EQ(onto.code, 4);
  const ProcessEnd shard = Run({"index", library_.library().string(), "--shard", "1/3", "--db", single.string(),
                                "--config", (SourceFolder() / "config").string()});
  EXPECT_EQ(shard.code, 4) << "an index is not made a shard";
  EXPECT_THAT(shard.err, HasSubstr("the folder is not that of shard 1/3"));
  EXPECT_EQ(Run({"index", library_.library().string(), "--shard", "4/3"}).code, 3);
}

}  // namespace
}  // namespace benchleaf

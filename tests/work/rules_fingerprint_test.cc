#include "work/rules_fingerprint.h"

#include "work/programs.h"

#include <gtest/gtest.h>

#include <set>
#include <string>

namespace benchleaf {
namespace {

TEST(RulesFingerprint, ChangesWithEveryTableAndWithTheProgram) {
  const TemporaryFolder folder;
  const auto program = folder.Write("program", "code");
  folder.Write("config/a.tsv", "one\n");
  folder.Write("config/b.tsv", "two\n");
  const auto config = folder.path() / "config";
  const auto own = folder.path() / "library";
  std::filesystem::create_directory(own);
  const auto fingerprint = [&] { return RulesFingerprint(config, own, program).value(); };
  std::set<std::string> seen = {fingerprint()};
  EXPECT_EQ(seen.begin()->size(), 16U);

  folder.Write("config/a.tsv", "one!\n");
  EXPECT_TRUE(seen.insert(fingerprint()).second) << "a table changed";
  folder.Write("config/a.tsv", "one!\ntwo\n");
  folder.Write("config/b.tsv", "");
  EXPECT_TRUE(seen.insert(fingerprint()).second) << "rows moved from one table to the next";
  std::filesystem::remove(config / "b.tsv");
  EXPECT_TRUE(seen.insert(fingerprint()).second) << "an empty table is gone";
  folder.Write("program", "kode");
  EXPECT_TRUE(seen.insert(fingerprint()).second) << "the program changed";
  folder.Write("library/page-kinds.tsv", "mine\n");
  EXPECT_TRUE(seen.insert(fingerprint()).second) << "the restorer's own table came";
  folder.Write("library/tubes.tsv", "no rule of reading\n");
  folder.Write("config/notes.txt", "no table");
  EXPECT_FALSE(seen.insert(fingerprint()).second) << "no rule changed";
}

TEST(RulesFingerprint, TellsWhatCannotBeRead) {
  const TemporaryFolder folder;
  const auto config = folder.path() / "config";
  std::filesystem::create_directory(config);
  EXPECT_EQ(RulesFingerprint(folder.path() / "none", {}, RunningProgram()).error().source,
            (folder.path() / "none").string());
  EXPECT_EQ(RulesFingerprint(config, {}, folder.path() / "none").error().code, ErrorCode::kIo);
  EXPECT_TRUE(RulesFingerprint(config, {}, RunningProgram()));
}

}  // namespace
}  // namespace benchleaf

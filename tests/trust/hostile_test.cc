// The program, as it is installed, on libraries from hell: it ends by itself, names every file that it could not read,
// and indexes the rest.

#include "places/places.h"
#include "trust/hostile_files.h"
#include "trust/run_process.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <stdlib.h>
#include <sys/stat.h>

#include <algorithm>
#include <atomic>
#include <chrono>
#include <filesystem>
#include <fstream>
#include <string>
#include <system_error>
#include <thread>
#include <vector>

namespace benchleaf {
namespace {

namespace fs = std::filesystem;
using testing::AnyOf;
using testing::HasSubstr;
using testing::Not;

class Hostile : public testing::Test {
 protected:
  Hostile() {
    std::string name = (fs::temp_directory_path() / "benchleaf-hostile-XXXXXX").string();
    library_ = ::mkdtemp(name.data());
  }
  ~Hostile() override {
    std::error_code ignored;
    fs::remove_all(library_, ignored);
  }

  void Write(const std::string& name, const std::string& bytes) const {
    std::ofstream(library_ / name, std::ios::binary) << bytes;
  }

  ProcessEnd Run(const std::vector<std::string>& arguments) const {
    ProcessRun run;
    run.arguments = {BENCHLEAF_PROGRAM};
    run.arguments.insert(run.arguments.end(), arguments.begin(), arguments.end());
    run.arguments.insert(run.arguments.end(), {"--config", (SourceFolder() / "config").string()});
    return RunProcess(run);
  }
  ProcessEnd Index() const { return Run({"index", library_.string(), "--workers", "2"}); }
  ProcessEnd Ask(std::vector<std::string> arguments) const {
    arguments.insert(arguments.end(), {"--library", library_.string()});
    return Run(arguments);
  }

  void ExpectOutlived(const std::vector<HostileFile>& files) const {
    for (const HostileFile& file : files) {
      Write(file.name, file.bytes);
    }
    Write("harmless.pdf", HarmlessPdf());
    const ProcessEnd end = Index();
    EXPECT_EQ(end.code, 2) << end.signal << end.err;
    const ProcessEnd exported = Ask({"export"});
    EXPECT_EQ(exported.code, 0) << exported.err;
    EXPECT_THAT(exported.out, HasSubstr("\"file\":\"harmless.pdf\""));
    for (const HostileFile& file : files) {
      if (!file.said.empty()) {
        EXPECT_THAT(end.err, HasSubstr(file.said)) << file.name;
      }
      const bool told =
          end.err.find(file.name + ":") != std::string::npos || end.err.find(file.name + ", page") != std::string::npos;
      const bool held = exported.out.find("\"file\":\"" + file.name + "\"") != std::string::npos;
      EXPECT_TRUE(told || held) << file.name << " is forgotten";
    }
    // What could not be read once is known, and told, at the next run.
    const ProcessEnd again = Index();
    EXPECT_EQ(again.code, 2) << again.err;
    EXPECT_THAT(again.err, HasSubstr("0 pages read now"));
  }

  fs::path library_;
};

TEST_F(Hostile, PicturesAreOutlived) { ExpectOutlived(HostilePictures()); }

TEST_F(Hostile, PdfsAreOutlived) { ExpectOutlived(HostilePdfs()); }

TEST_F(Hostile, LoopsPipesAndDevicesAreLeftAlone) {
  Write("harmless.pdf", HarmlessPdf());
  fs::create_directory(library_ / "folder");
  fs::create_directory_symlink(library_, library_ / "folder" / "up");
  fs::create_directory_symlink("round", library_ / "round");
  fs::create_symlink("itself.pdf", library_ / "itself.pdf");
  fs::create_symlink("/dev/zero", library_ / "zero.pdf");
  fs::create_symlink("/etc/passwd", library_ / "outside.pdf");
  fs::create_symlink("no such file", library_ / "nowhere.pdf");
  ASSERT_EQ(::mkfifo((library_ / "pipe.pdf").c_str(), 0600), 0);
  const ProcessEnd end = Index();
  EXPECT_EQ(end.code, 2) << end.err;
  for (const char* name : {"itself.pdf", "zero.pdf", "outside.pdf", "nowhere.pdf", "pipe.pdf"}) {
    EXPECT_THAT(end.err, HasSubstr(name + std::string(": "))) << name;
  }
  EXPECT_THAT(end.err, HasSubstr("1 page of 1 manual of 1 set"));
}

TEST_F(Hostile, NamesAreMadeHarmless) {
  const std::vector<std::string> names = {"new\nline.pdf",       "bad \xFF\xFE utf.pdf",
                                          "colour \x1B[31m.pdf", "title \x1B]0;owned\x07.pdf",
                                          "=cmd|' '!A1.pdf",     "-rf.pdf"};
  for (const std::string& name : names) {
    Write(name, HarmlessPdf());
  }
  Write("broken \x1B[2J.pdf", "%PDF-1.4\n");
  const ProcessEnd end = Index();
  EXPECT_EQ(end.code, 2) << end.err;
  EXPECT_THAT(end.err, HasSubstr("6 pages of 7 manuals"));
  const std::vector<std::vector<std::string>> questions = {
      {"sets"}, {"sets", "--json"}, {"export"}, {"find", "C1"}, {"gaps", "colour"}, {"gaps", "broken", "--json"}};
  std::vector<ProcessEnd> ends = {end};
  for (const auto& question : questions) {
    ends.push_back(Ask(question));
    EXPECT_EQ(ends.back().signal, 0);
  }
  for (const ProcessEnd& each : ends) {
    for (const std::string* text : {&each.out, &each.err}) {
      const bool harmless = std::none_of(text->begin(), text->end(), [](char c) {
        const auto byte = static_cast<unsigned char>(c);
        return (byte < 0x20 && c != '\n') || byte == 0x7F;
      });
      EXPECT_TRUE(harmless) << *text;
    }
  }
}

TEST_F(Hostile, AFileThatChangesWhileItIsReadCostsNoMoreThanItself) {
  Write("harmless.pdf", HarmlessPdf());
  const std::string large = WhitePng(3000, 3000);
  Write("changing.png", large);
  std::atomic<bool> done{false};
  std::thread changer([&] {
    for (std::size_t i = 0; !done; ++i) {
      // In place: cut to nothing, to a part, and back; a mapped file loses its pages under the reader.
      std::error_code ignored;
      fs::resize_file(library_ / "changing.png", i % 3 == 0 ? 0 : large.size() / (i % 3), ignored);
      std::this_thread::sleep_for(std::chrono::milliseconds(1));
      if (i % 3 == 0) {
        Write("changing.png", large);
      }
    }
  });
  for (int run = 0; run < 3; ++run) {
    const ProcessEnd end = Index();
    EXPECT_EQ(end.signal, 0);
    EXPECT_THAT(end.code, AnyOf(0, 2)) << end.err;
  }
  done = true;
  changer.join();
  Write("changing.png", large);
  const ProcessEnd end = Index();
  EXPECT_THAT(end.code, AnyOf(0, 2)) << end.err;
  const ProcessEnd exported = Ask({"export"});
  EXPECT_THAT(exported.out, HasSubstr("\"file\":\"harmless.pdf\""));
  EXPECT_THAT(exported.out, HasSubstr("\"file\":\"changing.png\""));
}

}  // namespace
}  // namespace benchleaf

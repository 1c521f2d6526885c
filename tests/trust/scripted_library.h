// A library whose scans are scripts (work/scripted_pages.h), before and after a day on which much happened, and the
// program's runs on it.

#ifndef BENCHLEAF_TESTS_TRUST_SCRIPTED_LIBRARY_H_
#define BENCHLEAF_TESTS_TRUST_SCRIPTED_LIBRARY_H_

#include "places/places.h"
#include "trust/run_process.h"

#include <stdlib.h>

#include <filesystem>
#include <fstream>
#include <map>
#include <string>
#include <system_error>
#include <utility>

namespace benchleaf {

class ScriptedLibrary {
 public:
  ScriptedLibrary() {
    std::string name = (std::filesystem::temp_directory_path() / "benchleaf-trust-XXXXXX").string();
    folder_ = ::mkdtemp(name.data());
    std::filesystem::create_directories(library());
  }
  ~ScriptedLibrary() {
    std::error_code ignored;
    std::filesystem::remove_all(folder_, ignored);
  }
  ScriptedLibrary(const ScriptedLibrary&) = delete;
  ScriptedLibrary& operator=(const ScriptedLibrary&) = delete;

  const std::filesystem::path& folder() const { return folder_; }
  std::filesystem::path library() const { return folder_ / "library"; }

  void WriteScan(const std::string& name, const std::string& script) const {
    std::ofstream(library() / name, std::ios::binary) << "%PDF-1.4\n" << script;
  }

  // Four sets.
  void MakeBefore() const {
    WriteScan("alder.pdf", "pages 3\nwords 1 C1 R2 V3 6CB6\nwords 2 C4 R5\nwords 3 " + ManyWords("R") + "\n");
    WriteScan("birch.pdf", "pages 2\nwords 1 C1 12AX7\nwords 2 " + ManyWords("C") + "\n");
    WriteScan("cedar.pdf", "pages 1\nwords 1 L1 L2 T3\n");
    WriteScan("elder.pdf", "pages 2\nwords 1 Q1 Q2\nwords 2 C9\n");
  }

  // One scan changed, one gone, one under a new name, one new with a page that cannot be read.
  void MakeAfter() const {
    WriteScan("alder.pdf", "pages 3\nwords 1 C1 R2 V3 6CB6\nwords 2 C4 R5 R6\nwords 3 " + ManyWords("R") + "\n");
    std::filesystem::remove(library() / "cedar.pdf");
    std::filesystem::rename(library() / "elder.pdf", library() / "maple.pdf");
    WriteScan("hazel.pdf", "pages 3\nwords 1 V1 5U4GB\non 2 any damaged\nwords 3 " + ManyWords("L") + "\n");
  }

  ProcessEnd Index(const std::filesystem::path& database, std::map<std::string, std::string> environment = {}) const {
    return RunProcess({.arguments = {BENCHLEAF_SCRIPTED, "index", library().string(), "--db", database.string(),
                                     "--config", (SourceFolder() / "config").string(), "--workers", "1"},
                       .environment = std::move(environment)});
  }

  ProcessEnd Ask(const std::filesystem::path& database, const std::string& command) const {
    return RunProcess({.arguments = {BENCHLEAF_SCRIPTED, command, "--library", library().string(), "--db",
                                     database.string(), "--config", (SourceFolder() / "config").string()}});
  }

 private:
  // Enough of them that one page takes several blocks of the index.
  static std::string ManyWords(const std::string& letter) {
    std::string words;
    for (int i = 100; i < 400; ++i) {
      words += ' ' + letter + std::to_string(i);
    }
    return words;
  }

  std::filesystem::path folder_;
};

}  // namespace benchleaf

#endif  // BENCHLEAF_TESTS_TRUST_SCRIPTED_LIBRARY_H_

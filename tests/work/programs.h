// The programs that the tests of this folder start, and scripts for the fake one.

#ifndef BENCHLEAF_TESTS_WORK_PROGRAMS_H_
#define BENCHLEAF_TESTS_WORK_PROGRAMS_H_

#include "places/places.h"
#include "work/worker_process.h"

#include <unistd.h>

#include <filesystem>
#include <fstream>
#include <string>
#include <string_view>

namespace benchleaf {

inline std::filesystem::path FakeWorker() { return BuildFolder() / "tests" / "fake_worker"; }
inline std::filesystem::path PageWorker() { return BuildFolder() / "tests" / "page_worker"; }

inline WorkerCommand Command(const std::filesystem::path& program) {
  WorkerCommand command;
  command.program = program;
  command.config = SourceFolder() / "config";
  return command;
}

// A folder of its own, removed at the end.
class TemporaryFolder {
 public:
  TemporaryFolder() {
    std::string name = (std::filesystem::temp_directory_path() / "benchleaf-work-XXXXXX").string();
    path_ = ::mkdtemp(name.data());
  }
  ~TemporaryFolder() {
    std::error_code ignored;
    std::filesystem::remove_all(path_, ignored);
  }
  TemporaryFolder(const TemporaryFolder&) = delete;
  TemporaryFolder& operator=(const TemporaryFolder&) = delete;

  const std::filesystem::path& path() const { return path_; }

  std::filesystem::path Write(const std::string& name, std::string_view content) const {
    const std::filesystem::path path = path_ / name;
    std::filesystem::create_directories(path.parent_path());
    std::ofstream(path, std::ios::binary) << content;
    return path;
  }

  // A file that passes for a PDF, with a script for the fake worker.
  std::filesystem::path WriteScan(const std::string& name, const std::string& script) const {
    return Write(name, "%PDF-1.4\n" + script + "\n");
  }

 private:
  std::filesystem::path path_;
};

}  // namespace benchleaf

#endif  // BENCHLEAF_TESTS_WORK_PROGRAMS_H_

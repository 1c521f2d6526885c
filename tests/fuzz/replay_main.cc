// Feeds files, or all files of folders, to a fuzz target: its corpus, or an input that made it fail.

#include <cstddef>
#include <cstdint>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <string>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size);

namespace {

namespace fs = std::filesystem;

void Replay(const fs::path& file) {
  std::ostringstream stream;
  stream << std::ifstream(file, std::ios::binary).rdbuf();
  const std::string bytes = stream.str();
  std::fprintf(stderr, "%s\n", file.filename().c_str());
  LLVMFuzzerTestOneInput(reinterpret_cast<const std::uint8_t*>(bytes.data()), bytes.size());
}

}  // namespace

int main(int argc, char** argv) {
  int files = 0;
  for (int i = 1; i < argc; ++i) {
    if (!fs::is_directory(argv[i])) {
      Replay(argv[i]);
      ++files;
      continue;
    }
    for (const auto& entry : fs::directory_iterator(argv[i])) {
      Replay(entry.path());
      ++files;
    }
  }
  std::printf("%d inputs\n", files);
  return files > 0 ? 0 : 1;
}

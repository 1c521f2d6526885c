// Who may include what: a third-party library stays in the one folder that wraps it, and no stage knows a later one.

#include "places/places.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <cstddef>
#include <filesystem>
#include <fstream>
#include <string>
#include <string_view>
#include <vector>

namespace benchleaf {
namespace {

namespace fs = std::filesystem;

struct Include {
  fs::path file;       // of the project
  std::string folder;  // that the file stands in: "extract"
  std::string header;  // as written between the brackets or quotes
  bool angled = false;
};

// Every include of the program's own sources.
std::vector<Include> Includes() {
  std::vector<Include> includes;
  for (const char* root : {"src", "include/benchleaf"}) {
    const fs::path top = SourceFolder() / root;
    for (const fs::directory_entry& entry : fs::recursive_directory_iterator(top)) {
      const std::string extension = entry.path().extension();
      if (extension != ".h" && extension != ".cc") {
        continue;
      }
      std::ifstream stream(entry.path());
      for (std::string line; std::getline(stream, line);) {
        constexpr std::string_view kInclude = "#include ";
        if (line.compare(0, kInclude.size(), kInclude) != 0) {
          continue;
        }
        const bool angled = line[kInclude.size()] == '<';
        const std::size_t end = line.find(angled ? '>' : '"', kInclude.size() + 1);
        includes.push_back({entry.path(), entry.path().lexically_relative(top).begin()->string(),
                            line.substr(kInclude.size() + 1, end - kInclude.size() - 1), angled});
      }
    }
  }
  return includes;
}

bool StartsWith(std::string_view text, std::string_view start) { return text.substr(0, start.size()) == start; }

struct Library {
  std::string_view headers;  // how their names begin
  std::string_view folder;   // the only one that includes them
};

constexpr std::array<Library, 16> kLibraries = {{
    {"tl/", "core"},
    {"nettle/", "library"},
    {"leptonica/", "pixels"},
    {"tiffio.h", "pixels"},
    {"pango/", "labels"},
    {"poppler-", "raster"},
    {"qpdf/", "raster"},
    {"blis-serial/", "lettering"},
    {"tesseract/", "reading"},
    {"nlohmann/", "record"},
    {"xapian", "store"},
    {"utf8proc", "report"},
    {"CLI/", "cli"},
    {"seccomp", "work"},
    {"sys/", ""},  // of the system: everywhere
    {"linux/", ""},
}};

// Headers of POSIX and of the C library at the top level. Those of the C++ library have no dot and no slash.
bool IsOfTheSystem(std::string_view header) {
  constexpr std::array<std::string_view, 6> kSystem = {"unistd.h", "fcntl.h",  "poll.h",
                                                       "signal.h", "stdlib.h", "malloc.h"};
  return header.find_first_of("./") == std::string_view::npos ||
         std::find(kSystem.begin(), kSystem.end(), header) != kSystem.end();
}

TEST(Includes, KeepThirdPartyLibrariesInOneFolderEach) {
  for (const Include& include : Includes()) {
    if (!include.angled || IsOfTheSystem(include.header)) {
      continue;
    }
    const auto* library = std::find_if(kLibraries.begin(), kLibraries.end(),
                                       [&](const Library& one) { return StartsWith(include.header, one.headers); });
    ASSERT_NE(library, kLibraries.end()) << include.file << " includes <" << include.header << ">: give it a folder";
    if (!library->folder.empty()) {
      EXPECT_EQ(include.folder, library->folder) << include.file << " includes <" << include.header << ">";
    }
  }
}

// In the order in which a page goes through the house. report and store both come after record and know nothing of
// each other's insides; cli and work tie all together.
constexpr std::array<std::string_view, 21> kOrder = {
    "core",    "tubes",  "library", "pixels", "labels", "raster", "clean", "lettering", "reading", "extract", "paging",
    "linking", "record", "store",   "lineup", "stock",  "orders", "gaps",  "report",    "binder",  "work"};

TEST(Includes, LeadFromNoStageToALaterOne) {
  const auto place = [](std::string_view folder) {
    return std::find(kOrder.begin(), kOrder.end(), folder) - kOrder.begin();
  };
  for (const Include& include : Includes()) {
    std::string_view header = include.header;
    if (include.angled) {
      continue;
    }
    if (StartsWith(header, "benchleaf/")) {
      header.remove_prefix(std::string_view("benchleaf/").size());
    }
    const std::string_view folder = header.substr(0, header.find('/'));
    EXPECT_LE(place(folder), place(include.folder)) << include.file << " includes \"" << include.header << "\"";
  }
}

}  // namespace
}  // namespace benchleaf

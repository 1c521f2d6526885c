// Scans that are made to hurt whoever opens them.

#ifndef BENCHLEAF_TESTS_TRUST_HOSTILE_FILES_H_
#define BENCHLEAF_TESTS_TRUST_HOSTILE_FILES_H_

#include <string>
#include <vector>

namespace benchleaf {

struct HostileFile {
  std::string name;
  std::string bytes;
  // What the run must say about it; empty where it may be read, or fail for any reason.
  std::string said;
};

std::vector<HostileFile> HostilePictures();
std::vector<HostileFile> HostilePdfs();

// A 1-bit white page of that size, as PNG: 1/1000 of its size unpacked.
std::string WhitePng(unsigned width, unsigned height);

// A scan of one empty page.
std::string HarmlessPdf();

}  // namespace benchleaf

#endif  // BENCHLEAF_TESTS_TRUST_HOSTILE_FILES_H_

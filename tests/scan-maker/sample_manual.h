// The manuals of the sample library: invented makers, invented sets.

#ifndef BENCHLEAF_TESTS_SCAN_MAKER_SAMPLE_MANUAL_H_
#define BENCHLEAF_TESTS_SCAN_MAKER_SAMPLE_MANUAL_H_

#include "scan-maker/degrade.h"
#include "scan-maker/made_page.h"

#include <string>
#include <vector>

namespace benchleaf::scanmaker {

struct SamplePage {
  MadePage page;
  Grade grade = Grade::kMild;
  int laid = 0;          // degrees clockwise that it lay on the scanner
  bool one_bit = false;  // scanned as black and white
};

enum class SampleFormat { kPdf, kPdfWithLayer, kTiff, kPng, kJpeg };

// A file of the library. PNG and JPEG files hold one page.
struct SampleFile {
  std::string path;  // relative to the library
  SampleFormat format = SampleFormat::kPdf;
  std::vector<SamplePage> pages;
};

// Larkfield 512, a five-tube table receiver: pictures, a page a file.
std::vector<SampleFile> LarkfieldFiles();
// Osterwick TV-217, a television chassis with a fold-out: one PDF.
std::vector<SampleFile> OsterwickFiles();
// Quillmark 84, an oscilloscope built of assemblies: volume 1 a TIFF, volume 2 a PDF.
std::vector<SampleFile> QuillmarkFiles();
// Dunmarrow A-6, an amplifier: one PDF with a poor text layer, named so that only library.csv tells what it is.
std::vector<SampleFile> DunmarrowFiles();

}  // namespace benchleaf::scanmaker

#endif  // BENCHLEAF_TESTS_SCAN_MAKER_SAMPLE_MANUAL_H_

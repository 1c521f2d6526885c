#include "scan-maker/sample_library.h"

#include "scan-maker/scan_files.h"
#include "scan-maker/seeded_random.h"

#include <fstream>
#include <stdexcept>
#include <string>

namespace benchleaf::scanmaker {
namespace {

// Grey below this is ink where a page of medium grade is kept in black and white: between its paper and its ink.
constexpr int kOneBitThreshold = 140;

void WriteText(const std::filesystem::path& path, const std::string& text) {
  std::ofstream out(path, std::ios::binary);
  out << text;
  out.close();
  if (!out) {
    throw std::runtime_error("cannot write " + path.string());
  }
}

void WriteAs(SampleFormat format, const std::filesystem::path& path, const std::vector<FilePage>& pages) {
  switch (format) {
    case SampleFormat::kPdf:
    case SampleFormat::kPdfWithLayer:
      return WritePdfFile(path, pages);
    case SampleFormat::kTiff:
      return WriteTiffFile(path, pages);
    case SampleFormat::kPng:
      return WritePngFile(path, pages.front());
    case SampleFormat::kJpeg:
      return WriteJpegFile(path, pages.front());
  }
}

}  // namespace

std::vector<PageTruth> WriteSampleFile(const std::filesystem::path& library, const SampleFile& file) {
  std::vector<FilePage> pages;
  std::vector<PageTruth> truths;
  for (const SamplePage& sample : file.pages) {
    const int number = static_cast<int>(pages.size()) + 1;
    const std::uint64_t seed = SeedOf(static_cast<std::uint64_t>(number), file.path);
    ScannedPage scanned = DegradeMade(Laid(sample.page, sample.laid), sample.grade, seed);
    scanned.truth.file = file.path;
    scanned.truth.page = number;
    FilePage page;
    page.dpi = scanned.dpi;
    page.one_bit = sample.one_bit || sample.grade == Grade::kSevere;
    page.threshold = kOneBitThreshold;
    page.image = std::move(scanned.image);
    if (file.format == SampleFormat::kPdfWithLayer) {
      page.layer = PoorLayer(scanned.truth, seed);
    }
    pages.push_back(std::move(page));
    truths.push_back(std::move(scanned.truth));
  }
  const std::filesystem::path path = library / file.path;
  std::filesystem::create_directories(path.parent_path());
  WriteAs(file.format, path, pages);
  return truths;
}

void WriteSampleLibrary(const std::filesystem::path& out) {
  const std::filesystem::path library = out / "library";
  std::filesystem::create_directories(library);
  std::vector<PageTruth> truths;
  // One manual at a time: their pages are large.
  for (auto* make : {LarkfieldFiles, OsterwickFiles, QuillmarkFiles, DunmarrowFiles}) {
    for (const SampleFile& file : make()) {
      const std::vector<PageTruth> more = WriteSampleFile(library, file);
      truths.insert(truths.end(), more.begin(), more.end());
    }
  }
  WriteText(library / "library.csv",
            "file,maker,model,volume,title\n"
            "scan0047.pdf,Dunmarrow,A-6,1,Service notes for the A-6 amplifier (invented sample data)\n");
  WriteText(out / "truth.jsonl", ToJsonLines(truths));
}

}  // namespace benchleaf::scanmaker

// Files that tests of raster/ write by hand, byte by byte, so that what they hold is known.

#ifndef BENCHLEAF_TESTS_RASTER_SAMPLE_FILES_H_
#define BENCHLEAF_TESTS_RASTER_SAMPLE_FILES_H_

#include "benchleaf/core/image.h"

#include <gtest/gtest.h>

#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <string>
#include <string_view>
#include <system_error>
#include <vector>

namespace benchleaf {

// A temporary folder that goes away with its owner.
class SampleFolder {
 public:
  SampleFolder() {
    std::string pattern = (std::filesystem::temp_directory_path() / "benchleaf-raster-XXXXXX").string();
    if (mkdtemp(pattern.data()) == nullptr) {
      ADD_FAILURE() << "no temporary folder can be made";
    }
    path_ = pattern;
  }
  ~SampleFolder() {
    std::error_code error;
    std::filesystem::remove_all(path_, error);
  }
  SampleFolder(const SampleFolder&) = delete;
  SampleFolder& operator=(const SampleFolder&) = delete;

  const std::filesystem::path& path() const { return path_; }

  std::filesystem::path Write(const std::string& name, std::string_view bytes) const {
    std::ofstream(path_ / name, std::ios::binary) << bytes;
    return path_ / name;
  }

 private:
  std::filesystem::path path_;
};

// A picture in which every pixel differs from its neighbours and no two rows or columns are alike.
inline GreyImage NoisePicture(int width, int height) {
  GreyImage image(width, height);
  std::uint32_t state = 12345;
  for (std::uint8_t& pixel : image.pixels) {
    state = state * 1664525U + 1013904223U;  // Numerical Recipes' generator
    pixel = static_cast<std::uint8_t>(state >> 24U);
  }
  return image;
}

inline std::string Bytes(const GreyImage& image) { return {image.pixels.begin(), image.pixels.end()}; }

// A PDF under construction: objects 1 (catalogue) and 2 (pages) are its own.
class SamplePdf {
 public:
  // Adds an object; gives its number.
  int Add(const std::string& body) {
    objects_.push_back(body);
    return static_cast<int>(objects_.size()) + 2;
  }

  int AddStream(const std::string& entries, const std::string& data) {
    return Add("<< " + entries + " /Length " + std::to_string(data.size()) + " >>\nstream\n" + data + "\nendstream");
  }

  // An 8-bit grey picture.
  int AddPicture(const GreyImage& image, const std::string& entries = {}) {
    return AddStream("/Type /XObject /Subtype /Image /ColorSpace /DeviceGray /BitsPerComponent 8 /Width " +
                         std::to_string(image.width) + " /Height " + std::to_string(image.height) + " " + entries,
                     Bytes(image));
  }

  // A 1-bit stencil, painted in the current colour where `black` is 0 in the picture.
  int AddStencil(const GreyImage& image) {
    std::string bits;
    for (int y = 0; y < image.height; ++y) {
      for (int x = 0; x < image.width; x += 8) {
        unsigned byte = 0;
        for (int i = 0; i < 8; ++i) {
          byte = byte << 1U | (x + i < image.width && image.row(y)[x + i] == 0 ? 0U : 1U);
        }
        bits += static_cast<char>(byte);
      }
    }
    return AddStream("/Type /XObject /Subtype /Image /ImageMask true /BitsPerComponent 1 /Width " +
                         std::to_string(image.width) + " /Height " + std::to_string(image.height),
                     bits);
  }

  // A page of that media box ("0 0 612 792"), with what its content draws.
  void AddPage(const std::string& box, const std::string& resources, const std::string& content,
               const std::string& entries = {}) {
    const int stream = AddStream("", content);
    const int page = Add("<< /Type /Page /Parent 2 0 R /MediaBox [" + box + "] /Resources << " + resources +
                         " >> /Contents " + std::to_string(stream) + " 0 R " + entries + " >>");
    pages_.push_back(page);
  }

  std::string Finish() const {
    std::string kids;
    for (const int page : pages_) {
      kids += std::to_string(page) + " 0 R ";
    }
    std::vector<std::string> objects = {
        "<< /Type /Catalog /Pages 2 0 R >>",
        "<< /Type /Pages /Count " + std::to_string(pages_.size()) + " /Kids [" + kids + "] >>"};
    objects.insert(objects.end(), objects_.begin(), objects_.end());
    std::string file = "%PDF-1.5\n";
    std::string table = "xref\n0 " + std::to_string(objects.size() + 1) + "\n0000000000 65535 f \n";
    for (std::size_t i = 0; i < objects.size(); ++i) {
      const std::string offset = std::to_string(file.size());
      table += std::string(10 - offset.size(), '0') + offset + " 00000 n \n";
      file += std::to_string(i + 1) + " 0 obj\n" + objects[i] + "\nendobj\n";
    }
    const std::size_t start = file.size();
    file += table + "trailer\n<< /Root 1 0 R /Size " + std::to_string(objects.size() + 1) + " >>\nstartxref\n" +
            std::to_string(start) + "\n%%EOF\n";
    return file;
  }

 private:
  std::vector<std::string> objects_;
  std::vector<int> pages_;
};

// "/XObject << /NAME 5 0 R >>"
inline std::string DrawnAs(const std::string& name, int object) {
  return "/XObject << /" + name + " " + std::to_string(object) + " 0 R >>";
}

// An uncompressed TIFF 6.0, low byte first, 8-bit grey, one strip a page. A dpi of 0 leaves the resolution out.
inline std::string SampleTiff(const std::vector<GreyImage>& pages, unsigned dpi) {
  std::string file("II*\0\0\0\0\0", 8);
  const auto put = [&file](std::uint32_t value, int bytes) {
    for (int i = 0; i < bytes; ++i) {
      file += static_cast<char>(value >> (8 * i) & 0xFFU);
    }
  };
  const auto put_at = [&file](std::size_t at, std::size_t value) {
    for (std::size_t i = 0; i < 4; ++i) {
      file[at + i] = static_cast<char>(value >> (8 * i) & 0xFFU);
    }
  };
  std::size_t link = 4;
  for (const GreyImage& page : pages) {
    const std::size_t pixels = file.size();
    file += Bytes(page);
    file.resize(file.size() + file.size() % 2);
    const std::size_t resolution = file.size();
    put(dpi, 4);
    put(1, 4);
    put_at(link, file.size());
    struct Field {
      std::uint32_t tag, type, value;
    };
    constexpr std::uint32_t kShort = 3;
    constexpr std::uint32_t kLong = 4;
    constexpr std::uint32_t kRational = 5;
    std::vector<Field> fields = {
        {256, kLong, static_cast<std::uint32_t>(page.width)},          // ImageWidth
        {257, kLong, static_cast<std::uint32_t>(page.height)},         // ImageLength
        {258, kShort, 8},                                              // BitsPerSample
        {259, kShort, 1},                                              // Compression: none
        {262, kShort, 1},                                              // PhotometricInterpretation: 0 is black
        {273, kLong, static_cast<std::uint32_t>(pixels)},              // StripOffsets
        {277, kShort, 1},                                              // SamplesPerPixel
        {278, kLong, static_cast<std::uint32_t>(page.height)},         // RowsPerStrip
        {279, kLong, static_cast<std::uint32_t>(page.pixels.size())},  // StripByteCounts
    };
    if (dpi > 0) {
      fields.push_back({282, kRational, static_cast<std::uint32_t>(resolution)});  // XResolution
      fields.push_back({283, kRational, static_cast<std::uint32_t>(resolution)});  // YResolution
      fields.push_back({296, kShort, 2});                                          // ResolutionUnit: inch
    }
    put(static_cast<std::uint32_t>(fields.size()), 2);
    for (const Field& field : fields) {
      put(field.tag, 2);
      put(field.type, 2);
      put(1, 4);
      put(field.value, 4);
    }
    link = file.size();
    put(0, 4);
  }
  return file;
}

}  // namespace benchleaf

#endif  // BENCHLEAF_TESTS_RASTER_SAMPLE_FILES_H_

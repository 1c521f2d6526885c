// Outline fonts by file, so that a missing font is an error and never another face.

#ifndef BENCHLEAF_TESTS_SCAN_MAKER_OUTLINE_FONT_H_
#define BENCHLEAF_TESTS_SCAN_MAKER_OUTLINE_FONT_H_

#include "scan-maker/cairo_names.h"

#include <string>

namespace benchleaf::scanmaker {

class OutlineFont {
 public:
  // Throws std::runtime_error that names the package when the file is missing.
  OutlineFont(const std::string& path, const std::string& package);
  ~OutlineFont();
  OutlineFont(const OutlineFont&) = delete;
  OutlineFont& operator=(const OutlineFont&) = delete;

  // Makes it the font of `cairo`, at the size at which an H is `cap_height_px` high.
  void Use(cairo_t* cairo, double cap_height_px) const;
  // How far the pen moves over one UTF-8 character, in capital heights.
  double Advance(const std::string& character) const;

 private:
  void* library_ = nullptr;  // FT_Library, which owns the face
  cairo_font_face_t* face_ = nullptr;
  double size_ = 1;  // font size at which a capital is 1 px high
  cairo_t* measuring_ = nullptr;
};

}  // namespace benchleaf::scanmaker

#endif  // BENCHLEAF_TESTS_SCAN_MAKER_OUTLINE_FONT_H_

#include "scan-maker/outline_font.h"

#include <cairo-ft.h>
#include <cairo.h>

#include <stdexcept>

namespace benchleaf::scanmaker {
namespace {

// Large enough that the measures are exact.
constexpr double kMeasuringSize = 1000;

}  // namespace

OutlineFont::OutlineFont(const std::string& path, const std::string& package) {
  FT_Library library = nullptr;
  FT_Face face = nullptr;
  if (FT_Init_FreeType(&library) != 0 || FT_New_Face(library, path.c_str(), 0, &face) != 0) {
    FT_Done_FreeType(library);
    throw std::runtime_error(path + " cannot be read: install " + package);
  }
  library_ = library;
  face_ = cairo_ft_font_face_create_for_ft_face(face, FT_LOAD_NO_HINTING);

  cairo_surface_t* surface = cairo_image_surface_create(CAIRO_FORMAT_A8, 1, 1);
  measuring_ = cairo_create(surface);
  cairo_surface_destroy(surface);
  cairo_set_font_face(measuring_, face_);
  cairo_set_font_size(measuring_, kMeasuringSize);
  cairo_text_extents_t extents;
  cairo_text_extents(measuring_, "H", &extents);
  size_ = kMeasuringSize / extents.height;
}

OutlineFont::~OutlineFont() {
  cairo_destroy(measuring_);
  cairo_font_face_destroy(face_);
  // The library itself is left to the end of the process: Cairo keeps scaled fonts, and with them the face, in a cache.
}

void OutlineFont::Use(cairo_t* cairo, double cap_height_px) const {
  cairo_set_font_face(cairo, face_);
  cairo_set_font_size(cairo, size_ * cap_height_px);
}

double OutlineFont::Advance(const std::string& character) const {
  cairo_text_extents_t extents;
  cairo_text_extents(measuring_, character.c_str(), &extents);
  return extents.x_advance * size_ / kMeasuringSize;
}

}  // namespace benchleaf::scanmaker

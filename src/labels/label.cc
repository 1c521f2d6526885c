#include "benchleaf/labels/label.h"

#include <pango/pangocairo.h>

#include <algorithm>
#include <cassert>
#include <cstddef>
#include <cstdint>
#include <memory>

namespace benchleaf {
namespace {

struct Unref {
  void operator()(PangoLayout* layout) const { g_object_unref(layout); }
  void operator()(PangoFontMap* fonts) const { g_object_unref(fonts); }
  void operator()(PangoContext* context) const { g_object_unref(context); }
  void operator()(PangoFontDescription* font) const { pango_font_description_free(font); }
  void operator()(cairo_surface_t* surface) const { cairo_surface_destroy(surface); }
  void operator()(cairo_t* cairo) const { cairo_destroy(cairo); }
};
template <class T>
using Owned = std::unique_ptr<T, Unref>;

Owned<PangoLayout> LaidOut(const std::string& text, const LabelStyle& style) {
  // Not the library's own map, which it keeps for good: the layout holds this one as long as it lives.
  const Owned<PangoFontMap> fonts(pango_cairo_font_map_new());
  const Owned<PangoContext> context(pango_font_map_create_context(fonts.get()));
  Owned<PangoLayout> layout(pango_layout_new(context.get()));
  const Owned<PangoFontDescription> font(pango_font_description_new());
  pango_font_description_set_family_static(font.get(), "sans-serif");
  pango_font_description_set_absolute_size(font.get(), 1.0 * style.height_px * PANGO_SCALE);
  if (style.weight == LabelWeight::kBold) pango_font_description_set_weight(font.get(), PANGO_WEIGHT_BOLD);
  pango_layout_set_font_description(layout.get(), font.get());
  pango_layout_set_single_paragraph_mode(layout.get(), 1);
  if (style.max_width_px > 0) {
    pango_layout_set_width(layout.get(), style.max_width_px * PANGO_SCALE);
    pango_layout_set_ellipsize(layout.get(), PANGO_ELLIPSIZE_END);
  }
  pango_layout_set_text(layout.get(), text.data(), static_cast<int>(text.size()));
  // A line is higher than its letters' size, by how much is each face's own: the size follows from the line.
  int line = 0;
  pango_layout_get_size(layout.get(), nullptr, &line);
  const double height = 1.0 * style.height_px * PANGO_SCALE;
  pango_font_description_set_absolute_size(font.get(), height * height / std::max(line, 1));
  pango_layout_set_font_description(layout.get(), font.get());
  return layout;
}

}  // namespace

GreyImage Label(const std::string& text, const LabelStyle& style) {
  assert(style.height_px >= 4);
  if (text.empty()) return {};
  const Owned<PangoLayout> layout = LaidOut(text, style);
  PangoRectangle extent{};
  pango_layout_get_pixel_extents(layout.get(), nullptr, &extent);
  int width = std::max(1, extent.width);
  if (style.max_width_px > 0) width = std::min(width, style.max_width_px);
  const Owned<cairo_surface_t> surface(cairo_image_surface_create(CAIRO_FORMAT_A8, width, style.height_px));
  if (cairo_surface_status(surface.get()) != CAIRO_STATUS_SUCCESS) return {};
  const Owned<cairo_t> cairo(cairo_create(surface.get()));
  cairo_move_to(cairo.get(), -extent.x, (style.height_px - extent.height) / 2.0 - extent.y);
  pango_cairo_show_layout(cairo.get(), layout.get());
  cairo_surface_flush(surface.get());

  GreyImage label(width, style.height_px);
  const std::uint8_t* pixels = cairo_image_surface_get_data(surface.get());
  const int stride = cairo_image_surface_get_stride(surface.get());
  for (int y = 0; y < label.height; ++y) {
    const std::uint8_t* from = pixels + static_cast<std::ptrdiff_t>(y) * stride;
    std::transform(from, from + width, label.row(y),
                   [](std::uint8_t cover) { return static_cast<std::uint8_t>(255 - cover); });
  }
  return label;
}

}  // namespace benchleaf

#include "raster/pdf_source.h"

#include "raster/page_layout.h"
#include "raster/pdf_pictures.h"
#include "raster/pixel_fit.h"
#include "raster/text_layer.h"

#include <poppler-document.h>
#include <poppler-image.h>
#include <poppler-page-renderer.h>
#include <poppler-page.h>

#include <algorithm>
#include <cstddef>
#include <exception>
#include <new>
#include <utility>

namespace benchleaf {
namespace {

// Complaints of the renderer in this thread; it has one function for all documents.
thread_local long complaints = 0;

// Keeps the renderer from writing to standard error, and counts instead.
void ListenToRenderer() {
  static const bool listening = [] {
    poppler::set_debug_error_function([](const std::string&, void*) { ++complaints; }, nullptr);
    return true;
  }();
  static_cast<void>(listening);
}

int TurnOf(const poppler::page& page) {
  switch (page.orientation()) {
    case poppler::page::landscape:
      return 90;
    case poppler::page::upside_down:
      return 180;
    case poppler::page::seascape:
      return 270;
    case poppler::page::portrait:
      break;
  }
  return 0;
}

// A page made ready for rendering.
struct OpenPage {
  std::unique_ptr<poppler::page> page;
  double width_pt = 0;  // as shown
  double height_pt = 0;
  RenderResolution native;
  // At which it is rendered, so that the renderer keeps pixel to pixel.
  double x_dpi = 0;
  double y_dpi = 0;
};

// Rows of an image of the renderer, without their padding.
std::vector<std::uint8_t> Rows(const poppler::image& image, std::size_t bytes_per_pixel) {
  const auto width = static_cast<std::size_t>(image.width()) * bytes_per_pixel;
  const auto height = static_cast<std::size_t>(image.height());
  const auto stride = static_cast<std::size_t>(image.bytes_per_row());
  std::vector<std::uint8_t> pixels;
  pixels.reserve(width * height);
  for (std::size_t y = 0; y < height; ++y) {
    const char* const row = image.const_data() + y * stride;
    pixels.insert(pixels.end(), row, row + width);
  }
  return pixels;
}

bool IsUniform(const std::vector<std::uint8_t>& pixels) {
  return std::adjacent_find(pixels.begin(), pixels.end(), std::not_equal_to<>()) == pixels.end();
}

class PdfSource : public PageSource {
 public:
  PdfSource(std::unique_ptr<poppler::document> document, const std::filesystem::path& path, std::string name,
            const RasterLimits& limits)
      : document_(std::move(document)), pictures_(path), name_(std::move(name)), limits_(limits) {}

  int page_count() const override { return document_->pages(); }

  Result<RasterPage> Load(int page) override {
    return Guarded<RasterPage>(page, [&]() -> Result<RasterPage> {
      const long complaints_before = complaints;
      auto open = Open(page);
      if (!open) {
        return tl::unexpected(open.error());
      }
      RasterPage raster;
      {
        const poppler::image image = Render(*open, poppler::image::format_gray8, 1);
        raster.image.width = image.width();
        raster.image.height = image.height();
        raster.image.pixels = Rows(image, 1);
      }
      if (raster.image.empty() || (complaints > complaints_before && IsUniform(raster.image.pixels))) {
        return Fail(ErrorCode::kDamaged, "nothing of the page can be drawn; the file is damaged or cut short");
      }
      raster.dpi = open->native.dpi();
      raster.layer = TextLayer(*open->page, open->width_pt, open->height_pt);
      return raster;
    });
  }

  Result<ColorImage> LoadColor(int page, int max_side_px) override {
    return Guarded<ColorImage>(page, [&]() -> Result<ColorImage> {
      auto open = Open(page);
      if (!open) {
        return tl::unexpected(open.error());
      }
      constexpr double kPointsPerInch = 72;
      const double longer = std::max(open->width_pt * open->x_dpi, open->height_pt * open->y_dpi) / kPointsPerInch;
      const poppler::image image = Render(*open, poppler::image::format_rgb24, std::min(1.0, max_side_px / longer));
      ColorImage color;
      color.width = image.width();
      color.height = image.height();
      color.pixels = Rows(image, 3);
      if (color.pixels.empty()) {
        return Fail(ErrorCode::kDamaged, "the page cannot be drawn");
      }
      return color;
    });
  }

 private:
  // Runs `work`, puts file and page to its error, and turns what the libraries throw into one.
  template <class T, class Work>
  Result<T> Guarded(int page, const Work& work) {
    Error error;
    try {
      Result<T> result = work();
      if (result) {
        return result;
      }
      error = std::move(result.error());
    } catch (const std::bad_alloc&) {
      error = {ErrorCode::kTooLarge, "the page does not fit into memory", {}, 0};
    } catch (const std::exception& failure) {
      error = {ErrorCode::kDamaged, std::string("the page cannot be drawn: ") + failure.what(), {}, 0};
    }
    error.source = name_;
    error.page = page;
    return tl::unexpected(std::move(error));
  }

  Result<OpenPage> Open(int page) {
    if (page < 1 || page > page_count()) {
      return Fail(ErrorCode::kMissing, "there is no such page; the last one is " + std::to_string(page_count()));
    }
    OpenPage open;
    open.page.reset(document_->create_page(page - 1));
    if (!open.page) {
      return Fail(ErrorCode::kDamaged, "the page cannot be found in the file, which is damaged or cut short");
    }
    const poppler::rectf visible = open.page->page_rect(poppler::crop_box);
    PageLayout layout;
    layout.left = visible.left();
    layout.bottom = visible.top();  // the renderer gives the box with its y axis downwards
    layout.width = visible.width();
    layout.height = visible.height();
    layout.turn = TurnOf(*open.page);
    layout.pictures = pictures_.OnPage(page);
    auto resolution = NativeResolution(layout, limits_);
    if (!resolution) {
      return tl::unexpected(resolution.error());
    }
    open.native = *resolution;
    Fit(open, layout, page);
    const bool lies = layout.turn == 90 || layout.turn == 270;
    open.width_pt = lies ? layout.height : layout.width;
    open.height_pt = lies ? layout.width : layout.height;
    return open;
  }

  // Sets the resolution for rendering from the native one.
  void Fit(OpenPage& open, const PageLayout& layout, int page) {
    constexpr double kHairLess = 1 - 1e-5;  // for pictures whose edges lie on pixels' edges exactly, as most do
    open.x_dpi = open.native.x_dpi * kHairLess;
    open.y_dpi = open.native.y_dpi * kHairLess;
    if (!open.native.picture) {
      return;
    }
    const std::vector<PlacedPicture> device = pictures_.OnPage(page, DeviceMatrix(layout, open.x_dpi, open.y_dpi));
    if (*open.native.picture < device.size()) {
      const PixelFit fit = FitToPixels(device[*open.native.picture]);
      open.x_dpi *= fit.x;
      open.y_dpi *= fit.y;
    }
  }

  static poppler::image Render(const OpenPage& open, poppler::image::format_enum format, double scale) {
    poppler::page_renderer renderer;
    renderer.set_image_format(format);
    renderer.set_render_hint(poppler::page_renderer::antialiasing);
    renderer.set_render_hint(poppler::page_renderer::text_antialiasing);
    return renderer.render_page(open.page.get(), open.x_dpi * scale, open.y_dpi * scale);
  }

  std::unique_ptr<poppler::document> document_;
  PdfPictures pictures_;
  std::string name_;
  RasterLimits limits_;
};

}  // namespace

Result<std::unique_ptr<PageSource>> OpenPdf(const std::filesystem::path& path, const std::string& name,
                                            const RasterLimits& limits) {
  ListenToRenderer();
  std::unique_ptr<poppler::document> document(poppler::document::load_from_file(path.string()));
  if (!document) {
    return Fail(ErrorCode::kDamaged, "is no PDF that can be opened; the file is damaged or cut short", name);
  }
  if (document->is_locked()) {
    return Fail(ErrorCode::kLocked, "wants a password; save a copy without one", name);
  }
  if (document->pages() < 1) {
    return Fail(ErrorCode::kDamaged, "holds no page; the file is damaged or cut short", name);
  }
  return std::make_unique<PdfSource>(std::move(document), path, name, limits);
}

}  // namespace benchleaf

// A page as a picture that a browser shows: upright, and no larger than it takes to read it.

#ifndef BENCHLEAF_BINDER_PAGE_PICTURE_H_
#define BENCHLEAF_BINDER_PAGE_PICTURE_H_

#include "benchleaf/core/geometry.h"
#include "benchleaf/core/image.h"
#include "benchleaf/core/result.h"

#include <cstdint>
#include <optional>
#include <string>

namespace benchleaf::binder {

struct PagePicture {
  int width = 0;                 // px, of the upright page; 0 when there is no picture
  int height = 0;                // px
  std::optional<Error> failure;  // why there is none

  bool is_there() const { return width > 0 && height > 0; }
  friend bool operator==(const PagePicture&, const PagePicture&) = default;
};

struct PageFiles {
  PagePicture size;
  std::string page;   // a JPEG file's bytes
  std::string thumb;  // another

  friend bool operator==(const PageFiles&, const PageFiles&) = default;
};

// The longer side, in px, at which a page stays legible: 150 px an inch, so that lettering of 2 mm has 12 px, and no
// less than it takes to give the page's usual lettering 14 px; but never larger than the scan, and at most 7000.
// `frame` is that of the page's reading; of a page that was not read all 0, and then it is 2400.
int LegibleSide(const PageFrame& frame);

// What a page's picture is drawn from. Two with the same key are the same picture.
struct PictureSource {
  std::string scan_hash;             // of the scan's content, as it was indexed
  std::uint64_t scan_bytes = 0;      // and of the file as it lies there now: it may be another since
  std::int64_t scan_changed_ns = 0;  // when, by its clock
  int page = 1;                      // in the scan, counts from 1
  int orientation = 0;               // degrees clockwise that make it upright
  int side = 0;                      // px
};

// Names the source, and the way in which PicturePage draws.
std::string PictureKey(const PictureSource& source);

// Fails with kUnsupported when the picture has no pixels.
Result<PageFiles> PicturePage(const ColorImage& scan, int orientation, int side);

}  // namespace benchleaf::binder

#endif  // BENCHLEAF_BINDER_PAGE_PICTURE_H_

#include "scan-maker/lettering.h"

#include "scan-maker/outline_font.h"
#include "scan-maker/seeded_random.h"
#include "scan-maker/stroke_font.h"
#include "scan-maker/written_shape.h"

#include "benchleaf/core/utf8.h"

#include <cairo.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>
#include <map>
#include <memory>
#include <numbers>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace benchleaf::scanmaker {
namespace {

const StrokeFont& Strokes(Lettering lettering) {
  static const StrokeFont kPlain = StrokeFont::Load("futural");
  static const StrokeFont kSerif = StrokeFont::Load("rowmans");
  static const StrokeFont kBroad = StrokeFont::Load("futuram");
  static const StrokeFont kBook = StrokeFont::Load("timesr");
  switch (lettering) {
    case Lettering::kDuplex:
      return kSerif;
    case Lettering::kBroadPen:
      return kBroad;
    case Lettering::kBookPen:
      return kBook;
    default:
      return kPlain;
  }
}

FontFile FileOf(Lettering lettering) {
  switch (lettering) {
    case Lettering::kSans:
      return {"truetype/liberation/LiberationSans-Regular.ttf", "fonts-liberation"};
    case Lettering::kNarrow:
      return {"truetype/liberation/LiberationSansNarrow-Regular.ttf", "fonts-liberation"};
    case Lettering::kBold:
      return {"truetype/liberation/LiberationSans-Bold.ttf", "fonts-liberation"};
    case Lettering::kDrafting:
      return {"truetype/osifont/osifont.ttf", "fonts-osifont"};
    case Lettering::kTypewriter:
      return {"opentype/courier-prime/Courier Prime.otf", "fonts-courier-prime"};
    case Lettering::kCapitalsByHand:
      return {"truetype/humor-sans/Humor-Sans.ttf", "fonts-humor-sans"};
    case Lettering::kRoundHand:
      return {"opentype/comic-neue/ComicNeue-Regular.otf", "fonts-comic-neue"};
    case Lettering::kInkedTypewriter:
      return {"truetype/gnutypewriter/GNUTypewriter.ttf", "fonts-gnutypewriter"};
    case Lettering::kThinTypewriter:
      return {"opentype/freefont/FreeMono.otf", "fonts-freefont-otf"};
    case Lettering::kEvenWidth:
      return {"truetype/inconsolata/Inconsolata.otf", "fonts-inconsolata"};
    case Lettering::kRounded:
      return {"opentype/dosis/Dosis-Medium.otf", "fonts-dosis"};
    case Lettering::kWide:
      return {"opentype/jura/Jura-Medium.otf", "fonts-jura"};
    case Lettering::kUnmetSans:
      return {"truetype/lato/Lato-Regular.ttf", "fonts-lato"};
    case Lettering::kUnmetEvenWidth:
      return {"truetype/liberation/LiberationMono-Regular.ttf", "fonts-liberation"};
    case Lettering::kTemplate:
      return {"truetype/routed-gothic/routed-gothic.ttf", "fonts-routed-gothic"};
    case Lettering::kTemplateWide:
      return {"truetype/routed-gothic/routed-gothic-wide.ttf", "fonts-routed-gothic"};
    case Lettering::kTemplateNarrow:
      return {"truetype/routed-gothic/routed-gothic-narrow.ttf", "fonts-routed-gothic"};
    case Lettering::kSlabTypewriter:
      return {"opentype/compagnon/Compagnon-Roman.otf", "fonts-compagnon"};
    case Lettering::kHeavyTypewriter:
      return {"opentype/compagnon/Compagnon-Medium.otf", "fonts-compagnon"};
    case Lettering::kFineTypewriter:
      return {"opentype/urw-base35/NimbusMonoPS-Regular.otf", "fonts-urw-base35"};
    case Lettering::kMachineRead:
      return {"opentype/ocr-b/OCRB.otf", "fonts-ocr-b"};
    case Lettering::kGrotesque:
      return {"opentype/urw-base35/NimbusSans-Regular.otf", "fonts-urw-base35"};
    case Lettering::kGrotesqueNarrow:
      return {"opentype/urw-base35/NimbusSansNarrow-Regular.otf", "fonts-urw-base35"};
    case Lettering::kGeometric:
      return {"opentype/urw-base35/URWGothic-Book.otf", "fonts-urw-base35"};
    case Lettering::kPanel:
      return {"opentype/b612/B612-Regular.otf", "fonts-b612"};
    case Lettering::kScreen:
      return {"truetype/dejavu/DejaVuSans.ttf", "fonts-dejavu-core"};
    case Lettering::kScreenEvenWidth:
      return {"truetype/dejavu/DejaVuSansMono.ttf", "fonts-dejavu-core"};
    case Lettering::kCircular:
      return {"truetype/comfortaa/Comfortaa-Regular.ttf", "fonts-comfortaa"};
    case Lettering::kPlain:
      return {"truetype/tuffy/Tuffy.ttf", "fonts-tuffy"};
    case Lettering::kSchoolbook:
      return {"opentype/urw-base35/C059-Roman.otf", "fonts-urw-base35"};
    case Lettering::kCatalogue:
      return {"truetype/fonts-century-catalogue/Century-Catalogue.ttf", "fonts-century-catalogue"};
    case Lettering::kLooseHand:
      return {"truetype/breip/Breip.ttf", "fonts-breip"};
    case Lettering::kMarkerHand:
      return {"opentype/bwht/BecauseWeLearn-Regular.otf", "fonts-bwht"};
    case Lettering::kQuickHand:
      return {"opentype/bwht/BecauseWeOrganize-Regular.otf", "fonts-bwht"};
    default:
      return {"truetype/liberation/LiberationSerif-Regular.ttf", "fonts-liberation"};
  }
}

const OutlineFont& Outlines(const TextStyle& style) {
  static std::map<std::string, OutlineFont> fonts;
  const FontFile file = style.font == nullptr ? FileOf(style.lettering) : *style.font;
  return fonts.try_emplace(file.path, std::string("/usr/share/fonts/") + file.path, file.package).first->second;
}

bool IsStroked(const TextStyle& style) {
  constexpr std::array kStroked = {Lettering::kSimplex, Lettering::kDuplex, Lettering::kHand, Lettering::kBroadPen,
                                   Lettering::kBookPen};
  return style.font == nullptr && std::find(kStroked.begin(), kStroked.end(), style.lettering) != kStroked.end();
}

char32_t CodePoint(std::string_view character) {
  const auto first = static_cast<unsigned char>(character[0]);
  if (character.size() == 1) {
    return first;
  }
  char32_t code = first & (0x7FU >> character.size());
  for (std::size_t i = 1; i < character.size(); ++i) {
    code = (code << 6) | (static_cast<unsigned char>(character[i]) & 0x3FU);
  }
  return code;
}

// In capital heights, with the space after the character.
double Advance(std::string_view character, const TextStyle& style) {
  const double width = IsStroked(style) ? Strokes(style.lettering).Glyph(CodePoint(character)).advance
                                        : Outlines(style).Advance(std::string(character));
  return width * (character == " " ? style.word_space : 1) + style.letter_space;
}

// How one letter written by hand differs from the template. All zero for a machine's letter.
struct HandJitter {
  double slant = 0;
  double turn = 0;  // radians
  double rise = 0;  // capital heights
  double size = 1;
  double wobble = 0;  // of each point, capital heights
};

HandJitter LetterJitter(SeededRandom& random) {
  return {random.Between(0.0, 0.14), random.Between(-0.05, 0.05), random.Between(-0.05, 0.05),
          random.Between(0.9, 1.08), 0.025};
}

void AddStrokes(cairo_t* cairo, const StrokeGlyph& glyph, double left, const TextStyle& style, const HandJitter& jitter,
                const WrittenShape& shape, SeededRandom& random) {
  const double cap = style.cap_height_px;
  const auto place = [&](const StrokePoint& template_point) {
    const StrokePoint point = shape.At(template_point);
    const double x = point.x * jitter.size + jitter.slant * point.y + jitter.wobble * random.Between(-1, 1);
    const double y = point.y * jitter.size + jitter.rise + jitter.wobble * random.Between(-1, 1);
    return StrokePoint{left + cap * (x - jitter.turn * y), -cap * (y + jitter.turn * x)};
  };
  for (const std::vector<StrokePoint>& stroke : glyph.strokes) {
    for (std::size_t i = 0; i < stroke.size(); ++i) {
      const StrokePoint at = place(stroke[i]);
      if (i == 0) {
        cairo_move_to(cairo, at.x, at.y);
        cairo_line_to(cairo, at.x, at.y);  // a lone point is a dot under a round cap
      } else {
        cairo_line_to(cairo, at.x, at.y);
      }
    }
  }
}

void AddStrokedText(cairo_t* cairo, const std::string& text, const TextStyle& style) {
  SeededRandom random(SeedOf(style.seed, text));
  SeededRandom loose = random;
  double left = 0;
  for (const std::string_view character : Characters(text)) {
    const HandJitter jitter = style.lettering == Lettering::kHand ? LetterJitter(random) : HandJitter{};
    const WrittenShape shape(style.looseness, style.seed, character, loose);
    AddStrokes(cairo, Strokes(style.lettering).Glyph(CodePoint(character)), left, style, jitter, shape, random);
    left += Advance(character, style) * style.cap_height_px;
  }
  cairo_set_line_width(cairo, style.stroke_px);
  cairo_set_line_cap(cairo, CAIRO_LINE_CAP_ROUND);
  cairo_set_line_join(cairo, CAIRO_LINE_JOIN_ROUND);
}

// The outlines of the current path, each point after the other.
std::vector<std::vector<StrokePoint>> FlatPath(cairo_t* cairo) {
  const std::unique_ptr<cairo_path_t, decltype(&cairo_path_destroy)> path(cairo_copy_path_flat(cairo),
                                                                          cairo_path_destroy);
  std::vector<std::vector<StrokePoint>> outlines;
  for (int i = 0; i < path->num_data; i += path->data[i].header.length) {
    const cairo_path_data_t* part = path->data + i;
    if (part->header.type == CAIRO_PATH_MOVE_TO) {
      outlines.emplace_back();
    }
    if (part->header.type != CAIRO_PATH_CLOSE_PATH) {
      outlines.back().push_back({part[1].point.x, part[1].point.y});
    }
  }
  return outlines;
}

void AddOutlinedText(cairo_t* cairo, const std::string& text, const TextStyle& style) {
  Outlines(style).Use(cairo, style.cap_height_px);
  double left = 0;
  for (const std::string_view character : Characters(text)) {
    cairo_move_to(cairo, left, 0);
    cairo_text_path(cairo, std::string(character).c_str());
    left += Advance(character, style) * style.cap_height_px;
  }
  cairo_close_path(cairo);
}

// The same with each letter's outline moved to the writer's shape.
void AddWrittenText(cairo_t* cairo, const std::string& text, const TextStyle& style) {
  Outlines(style).Use(cairo, style.cap_height_px);
  SeededRandom random(SeedOf(style.seed, text));
  const double cap = style.cap_height_px;
  std::vector<std::vector<StrokePoint>> outlines;
  double left = 0;
  for (const std::string_view character : Characters(text)) {
    const WrittenShape shape(style.looseness, style.seed, character, random);
    cairo_new_path(cairo);
    cairo_text_path(cairo, std::string(character).c_str());
    for (std::vector<StrokePoint>& outline : FlatPath(cairo)) {
      for (StrokePoint& point : outline) {
        const StrokePoint moved = shape.At({point.x / cap, -point.y / cap});
        point = {left + cap * moved.x, -cap * moved.y};
      }
      outlines.push_back(std::move(outline));
    }
    left += Advance(character, style) * cap;
  }
  cairo_new_path(cairo);
  for (const std::vector<StrokePoint>& outline : outlines) {
    cairo_new_sub_path(cairo);
    for (const StrokePoint& point : outline) cairo_line_to(cairo, point.x, point.y);
    cairo_close_path(cairo);
  }
}

// The pixels that the box touches.
Box Around(double left, double top, double right, double bottom) {
  if (right <= left || bottom <= top) {
    return {};
  }
  const int x = static_cast<int>(std::floor(left));
  const int y = static_cast<int>(std::floor(top));
  return {x, y, static_cast<int>(std::ceil(right)) - x, static_cast<int>(std::ceil(bottom)) - y};
}

}  // namespace

Box DrawText(cairo_t* cairo, double x, double y, const std::string& text, const TextStyle& style, int turn) {
  cairo_save(cairo);
  cairo_new_path(cairo);
  cairo_translate(cairo, x, y);
  cairo_rotate(cairo, turn * std::numbers::pi / 180);
  if (style.stretch != 1 || style.slant != 0) {
    cairo_matrix_t shape;
    cairo_matrix_init(&shape, style.stretch, 0, -style.slant, 1, 0, 0);
    cairo_transform(cairo, &shape);
  }
  cairo_set_source_rgb(cairo, 0, 0, 0);

  double left = 0;
  double top = 0;
  double right = 0;
  double bottom = 0;
  if (IsStroked(style)) {
    AddStrokedText(cairo, text, style);
    cairo_identity_matrix(cairo);  // the path stays where it is; its extents are wanted in px of the page
    cairo_stroke_extents(cairo, &left, &top, &right, &bottom);
    cairo_stroke(cairo);
  } else {
    if (style.looseness > 0) {
      AddWrittenText(cairo, text, style);
    } else {
      AddOutlinedText(cairo, text, style);
    }
    cairo_identity_matrix(cairo);
    cairo_fill_extents(cairo, &left, &top, &right, &bottom);
    cairo_fill(cairo);
  }
  cairo_restore(cairo);
  return Around(left, top, right, bottom);
}

double TextAdvance(const std::string& text, const TextStyle& style) {
  double advance = 0;
  for (const std::string_view character : Characters(text)) advance += Advance(character, style);
  return advance * style.cap_height_px * style.stretch;
}

}  // namespace benchleaf::scanmaker

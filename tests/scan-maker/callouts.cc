#include "scan-maker/callouts.h"

#include "scan-maker/pen_strokes.h"
#include "scan-maker/resampling.h"
#include "scan-maker/seeded_random.h"
#include "scan-maker/smooth_field.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <string>
#include <vector>

namespace benchleaf::scanmaker {
namespace {

constexpr std::uint8_t kInk = 0;
constexpr std::uint8_t kPaper = 255;
constexpr double kPenPx = 1.7;  // half a line's width
constexpr double kLeaderPx = 130;

// The boxes of the designators and items, each once where several stand for one printed text.
std::vector<Box> Places(const MadePage& page) {
  std::vector<Box> places;
  for (const MadeTerm& term : page.terms) {
    if ((term.kind == "designator" || term.kind == "item") &&
        std::find(places.begin(), places.end(), term.box) == places.end()) {
      places.push_back(term.box);
    }
  }
  return places;
}

// Whether what is printed in that box is, as far as the page tells, the whole of one term. The 16 of "C7,8,16" is not
// C16, and R1~4 is four.
bool IsOneTerm(const MadePage& page, const Box& box) {
  const auto is_here = [&](const auto& one) { return one.box == box; };
  const auto term = std::find_if(page.terms.begin(), page.terms.end(), is_here);
  const auto printed = std::find_if(page.printed.begin(), page.printed.end(), is_here);
  return term != page.terms.end() && std::count_if(page.terms.begin(), page.terms.end(), is_here) == 1 &&
         (printed == page.printed.end() || printed->text == term->text);
}

Box Around(const Box& box, int margin, const GreyImage& image) { return Grown(box, margin, image.width, image.height); }

void Fill(GreyImage& image, const Box& box, std::uint8_t level) {
  for (int y = box.y; y < box.bottom(); ++y) {
    std::fill_n(image.row(y) + box.x, box.width, level);
  }
}

// Gives every pixel of the box the level that `change` makes of it.
template <class Change>
void ChangeEach(GreyImage& image, const Box& box, const Change& change) {
  for (int y = box.y; y < box.bottom(); ++y) {
    std::transform(image.row(y) + box.x, image.row(y) + box.right(), image.row(y) + box.x, change);
  }
}

void Paste(const GreyImage& from, int x, int y, GreyImage& to) {
  for (int row = 0; row < from.height; ++row) {
    std::copy_n(from.row(row), from.width, to.row(y + row) + x);
  }
}

void Ring(GreyImage& image, const Box& text, double radius) {
  const Box kept = Around(text, 2, image);
  const auto reach = static_cast<int>(radius + kPenPx + 1);
  const Box disc = Intersection({static_cast<int>(text.center_x()) - reach, static_cast<int>(text.center_y()) - reach,
                                 2 * reach + 1, 2 * reach + 1},
                                {0, 0, image.width, image.height});
  for (int y = disc.y; y < disc.bottom(); ++y) {
    for (int x = disc.x; x < disc.right(); ++x) {
      const double distance = std::hypot(x - text.center_x(), y - text.center_y());
      const bool on_text = x >= kept.x && x < kept.right() && y >= kept.y && y < kept.bottom();
      if (std::abs(distance - radius) <= kPenPx) {
        image.row(y)[x] = kInk;
      } else if (distance < radius && !on_text) {
        image.row(y)[x] = kPaper;
      }
    }
  }
}

Stroke Away(double x, double y, double angle) {
  return {x, y, x + kLeaderPx * std::cos(angle), y + kLeaderPx * std::sin(angle)};
}

// Columns of the box without ink part its letters: their boxes from the left.
std::vector<Box> Letters(const GreyImage& image, const Box& box) {
  std::vector<Box> letters;
  bool open = false;
  for (int x = box.x; x < box.right(); ++x) {
    bool ink = false;
    for (int y = box.y; y < box.bottom(); ++y) ink = ink || image.row(y)[x] < 128;
    if (ink && !open) {
      letters.push_back({x, box.y, 0, box.height});
    }
    if (ink) {
      letters.back().width = x + 1 - letters.back().x;
    }
    open = ink;
  }
  return letters;
}

bool IsBlank(const GreyImage& image, const Box& box) {
  for (int y = box.y; y < box.bottom(); ++y) {
    if (std::any_of(image.row(y) + box.x, image.row(y) + box.right(), [](std::uint8_t level) { return level < 200; })) {
      return false;
    }
  }
  return true;
}

// The letters of a designator with a dash and its figures behind them: wider by `dash` px.
GreyImage Dashed(const GreyImage& designator, int split, int dash) {
  GreyImage dashed(designator.width + dash, designator.height, kPaper);
  Paste(Crop(designator, {0, 0, split, designator.height}), 0, 0, dashed);
  Paste(Crop(designator, {split, 0, designator.width - split, designator.height}), split + dash, 0, dashed);
  const int thick = std::max(2, designator.height / 8);
  Fill(dashed, {split + dash / 4, (designator.height - thick) / 2, dash / 2, thick}, kInk);
  return dashed;
}

// Shapes of 150 px and of 14 px under a screen of 5 px.
void PrintPhotograph(GreyImage& image, const Box& place, SeededRandom& random) {
  const SmoothField shapes(place.width, place.height, 150, random);
  const SmoothField edges(place.width, place.height, 14, random);
  std::vector<float> shape;
  std::vector<float> edge;
  for (int y = 0; y < place.height; ++y) {
    shapes.Row(y, shape);
    edges.Row(y, edge);
    for (int x = 0; x < place.width; ++x) {
      const double screen = std::cos((x + y) * 0.9) * std::cos((x - y) * 0.9);
      const double light =
          shape[static_cast<std::size_t>(x)] + 0.35 * edge[static_cast<std::size_t>(x)] + 0.15 * screen;
      image.row(place.y + y)[place.x + x] = light < 0 ? kInk : kPaper;
    }
  }
}

}  // namespace

MadePage WithRings(const MadePage& page, std::uint64_t seed) {
  SeededRandom random(SeedOf(seed, "rings"));
  MadePage ringed = page;
  const std::vector<Box> places = Places(page);
  for (const Box& box : places) {
    const double radius = std::hypot(box.width, box.height) / 2 + random.Between(0, 14);
    const int side = static_cast<int>(2 * radius);
    const Box disc =
        Around({static_cast<int>(box.center_x() - radius), static_cast<int>(box.center_y() - radius), side, side}, 4,
               page.image);
    const auto alone = [&](const Box& other) { return other == box || Intersection(other, disc).empty(); };
    if (!std::all_of(places.begin(), places.end(), alone)) {
      continue;
    }
    Ring(ringed.image, box, radius);
    const double angle = random.Between(0, 2 * std::numbers::pi);
    DrawDabs(ringed.image,
             Away(box.center_x() + radius * std::cos(angle), box.center_y() + radius * std::sin(angle), angle), 1,
             kPenPx, kInk);
  }
  return ringed;
}

MadePage WithLeaders(const MadePage& page, std::uint64_t seed) {
  SeededRandom random(SeedOf(seed, "leaders"));
  MadePage led = page;
  for (const Box& box : Places(page)) {
    // From the foot or the top of a letter, within 60 degrees of straight down or up.
    const bool down = random.Whole(0, 1) == 0;
    const double angle = (down ? 0.5 : -0.5) * std::numbers::pi + random.Between(-1, 1) * std::numbers::pi / 3;
    const double x = box.x + random.Between(0.1, 0.9) * box.width;
    DrawDabs(led.image, Away(x, down ? box.bottom() - 2 : box.y + 2, angle), 1, kPenPx, kInk);
  }
  return led;
}

MadePage WithUpended(const MadePage& page) {
  MadePage upended = page;
  const std::vector<Box> places = Places(page);
  for (std::size_t i = 0; i < places.size(); i += 2) {
    Paste(Turned(Crop(page.image, places[i]), 180), places[i].x, places[i].y, upended.image);
    for (MadeTerm& term : upended.terms) {
      term.turn = term.box == places[i] ? (term.turn + 180) % 360 : term.turn;
    }
  }
  return upended;
}

MadePage WithWhiteOnBlack(const MadePage& page) {
  constexpr int kHeavierPx = 1;  // on either side of a stroke
  MadePage inverted = page;
  for (const Box& box : Places(page)) {
    Fill(inverted.image, Around(box, box.height / 3 + 2, page.image), kInk);
    for (int y = box.y; y < box.bottom(); ++y) {
      for (int x = box.x; x < box.right(); ++x) {
        const GreyImage near = Crop(page.image, Around({x, y, 1, 1}, kHeavierPx, page.image));
        inverted.image.row(y)[x] =
            static_cast<std::uint8_t>(255 - *std::min_element(near.pixels.begin(), near.pixels.end()));
      }
    }
  }
  return inverted;
}

MadePage WithPale(const MadePage& page) {
  MadePage pale = page;
  for (const Box& box : Places(page)) {
    ChangeEach(pale.image, box, [](std::uint8_t level) { return static_cast<std::uint8_t>(255 - (255 - level) / 3); });
  }
  return pale;
}

MadePage WithSpacedLetters(const MadePage& page) {
  MadePage spaced = page;
  for (const Box& box : Places(page)) {
    if (!IsOneTerm(page, box)) {
      continue;
    }
    const auto step = static_cast<int>(std::lround(0.55 * box.height));
    const std::vector<Box> letters = Letters(page.image, box);
    const int wider = step * (static_cast<int>(letters.size()) - 1);
    const Box room{box.right(), box.y, wider + box.height, box.height};
    if (box.height > box.width || room.right() > page.image.width || !IsBlank(spaced.image, room)) {
      continue;
    }
    Fill(spaced.image, box, kPaper);
    for (std::size_t i = 0; i < letters.size(); ++i) {
      Paste(Crop(page.image, letters[i]), letters[i].x + static_cast<int>(i) * step, box.y, spaced.image);
    }
    for (MadeTerm& term : spaced.terms) {
      term.box.width += term.box == box ? wider : 0;
    }
  }
  return spaced;
}

MadePage WithDashes(const MadePage& page) {
  MadePage dashed = page;
  for (MadeTerm& term : dashed.terms) {
    const Box box = term.box;
    const std::size_t figures = term.text.find_first_of("0123456789");
    if (term.kind != "designator" || !IsOneTerm(page, box) || figures == std::string::npos || figures == 0 ||
        term.text.find_first_not_of("0123456789", figures) != std::string::npos) {
      continue;
    }
    const GreyImage upright = Turned(Crop(page.image, box), (360 - term.turn) % 360);
    const std::vector<Box> letters = Letters(upright, {0, 0, upright.width, upright.height});
    if (letters.size() != term.text.size()) {
      continue;
    }
    const int dash = upright.height;
    const GreyImage wide = Dashed(upright, letters[figures].x, dash);
    const Box room{box.right(), box.y, dash + box.height / 3, box.height};
    if (term.turn == 0 && room.right() <= page.image.width && IsBlank(dashed.image, room)) {
      Paste(wide, box.x, box.y, dashed.image);
      term.box.width += dash;
    } else {
      const AffineMap narrower{.xx = 1.0 * wide.width / upright.width};
      Paste(Turned(Resampled(wide, narrower, upright.width, upright.height), term.turn), box.x, box.y, dashed.image);
    }
  }
  return dashed;
}

MadePage WithPhotographs(const MadePage& page, std::uint64_t seed) {
  constexpr int kPatchPx = 14;
  SeededRandom random(SeedOf(seed, "photographs"));
  MadePage printed = page;
  const auto width = static_cast<int>(0.4 * page.image.width);
  const auto height = static_cast<int>(0.35 * page.image.height);
  for (const double side : {0.08, 0.52}) {
    const Box photograph{static_cast<int>(side * page.image.width),
                         static_cast<int>(random.Between(0.1, 0.5) * page.image.height), width, height};
    PrintPhotograph(printed.image, photograph, random);
    std::erase_if(printed.terms, [&](const MadeTerm& term) {
      return term.kind != "designator" && !Intersection(term.box, photograph).empty();
    });
  }
  const std::vector<Box> places = Places(page);
  for (const Box& box : places) {
    Fill(printed.image, Around(box, kPatchPx, page.image), kPaper);
  }
  for (const Box& box : places) {
    Paste(Crop(page.image, box), box.x, box.y, printed.image);
  }
  return printed;
}

}  // namespace benchleaf::scanmaker

#include "scan-maker/degrade.h"

#include "scan-maker/jpeg_round_trip.h"
#include "scan-maker/resampling.h"
#include "scan-maker/seeded_random.h"
#include "scan-maker/smooth_field.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <numbers>
#include <utility>
#include <vector>

namespace benchleaf::scanmaker {
namespace {

// What each grade does. Grey levels are of 255, places and sizes in px of the scan unless said otherwise.
struct Recipe {
  double dpi;
  double skew_degrees;
  double blur;          // sigma in px of the clean page
  float ink_gain;       // ink spreads where blurred ink counts for more than it is
  float gain_drift;     // how far the gain wanders over the page
  float gain_grain;     // and from one spot of a stroke to the next: breaks and blots
  int grain_cell;       // size of such a spot
  float paper;          // level of the ground
  float paper_drift;    // how far the ground wanders
  float ink;            // level of full ink
  float noise;          // of each pixel, deviation
  double dark_specks;   // a square inch
  double light_specks;  // a square inch: holes in the ink
  double speck_radius;  // largest
  bool fold;
  bool one_bit;
  int jpeg_quality;  // 0: none
};

// Set on the development half of tests/outside so that bare Tesseract finds about three designators in five, two in
// five, and one in thirteen.
constexpr Recipe kMildRecipe{
    .dpi = 300,
    .skew_degrees = 0.5,
    .blur = 1.0,
    .ink_gain = 1.05F,
    .gain_drift = 0.05F,
    .gain_grain = 0.05F,
    .grain_cell = 4,
    .paper = 246,
    .paper_drift = 4,
    .ink = 35,
    .noise = 3,
    .dark_specks = 0.3,
    .light_specks = 0.3,
    .speck_radius = 1.2,
    .fold = false,
    .one_bit = false,
    .jpeg_quality = 0,
};

constexpr Recipe kMediumRecipe{
    .dpi = 200,
    .skew_degrees = 1.0,
    .blur = 1.6,
    .ink_gain = 1.5F,
    .gain_drift = 0.2F,
    .gain_grain = 0.25F,
    .grain_cell = 3,
    .paper = 222,
    .paper_drift = 18,
    .ink = 55,
    .noise = 7,
    .dark_specks = 8,
    .light_specks = 8,
    .speck_radius = 1.6,
    .fold = false,
    .one_bit = false,
    .jpeg_quality = 50,
};

constexpr Recipe kSevereRecipe{
    .dpi = 150,
    .skew_degrees = 1.5,
    .blur = 1.8,
    .ink_gain = 1.45F,
    .gain_drift = 0.25F,
    .gain_grain = 0.5F,
    .grain_cell = 2,
    .paper = 225,
    .paper_drift = 20,
    .ink = 40,
    .noise = 17,
    .dark_specks = 20,
    .light_specks = 20,
    .speck_radius = 1.5,
    .fold = true,
    .one_bit = true,
    .jpeg_quality = 0,
};

Recipe VariedRecipe(std::uint64_t seed) {
  SeededRandom random(SeedOf(seed, "recipe"));
  const auto level = [&random](double low, double high) { return static_cast<float>(random.Between(low, high)); };
  Recipe recipe{};
  // Low resolutions are the hard ones, so they are met more often.
  recipe.dpi = 110 + 190 * random.Unit() * random.Between(0.4, 1);
  recipe.skew_degrees = random.Between(0, 1.5);
  recipe.blur = random.Between(0.7, 2.0);
  recipe.ink_gain = level(0.85, 1.75);
  recipe.gain_drift = level(0, 0.3);
  recipe.gain_grain = level(0, 0.55);
  recipe.grain_cell = random.Whole(2, 4);
  recipe.paper = level(210, 250);
  recipe.paper_drift = level(0, 22);
  recipe.ink = level(25, 90);
  recipe.noise = level(1, 18);
  recipe.dark_specks = random.Between(0, 22);
  recipe.light_specks = random.Between(0, 22);
  recipe.speck_radius = random.Between(0.8, 1.7);
  recipe.one_bit = random.Unit() < 0.45;
  recipe.jpeg_quality = recipe.one_bit || random.Unit() < 0.4 ? 0 : random.Whole(25, 85);
  return recipe;
}

Recipe Changed(Recipe recipe, const ScanChanges& changes) {
  recipe.skew_degrees = changes.skew_degrees.value_or(recipe.skew_degrees);
  recipe.dpi = changes.dpi.value_or(recipe.dpi);
  recipe.jpeg_quality = changes.jpeg_quality.value_or(recipe.jpeg_quality);
  if (changes.thin_print) {
    recipe.ink_gain *= 0.7F;
    recipe.gain_drift += 0.15F;
    recipe.gain_grain += 0.25F;
  }
  return recipe;
}

AffineMap PlaceOnScan(const GreyImage& clean, double scale, double skew_degrees) {
  const double angle = skew_degrees * std::numbers::pi / 180;
  const double c = scale * std::cos(angle);
  const double s = scale * std::sin(angle);
  const double middle_x = clean.width / 2.0;
  const double middle_y = clean.height / 2.0;
  return {c, -s, scale * middle_x - c * middle_x + s * middle_y, s, c, scale * middle_y - s * middle_x - c * middle_y};
}

// Dots of dirt or of lost ink, as many as `per_square_inch` says, of about round shape.
void Sprinkle(GreyImage& image, double per_square_inch, const Recipe& recipe, float level, SeededRandom& random) {
  const double square_inches = image.width / recipe.dpi * (image.height / recipe.dpi);
  const int count = static_cast<int>(std::lround(per_square_inch * square_inches));
  for (int i = 0; i < count; ++i) {
    const int x = random.Whole(0, image.width - 1);
    const int y = random.Whole(0, image.height - 1);
    const double wide = random.Between(0.4, recipe.speck_radius);
    const double high = random.Between(0.4, recipe.speck_radius);
    for (int dy = -2; dy <= 2; ++dy) {
      for (int dx = -2; dx <= 2; ++dx) {
        const bool inside = dx * dx / (wide * wide) + dy * dy / (high * high) <= 1;
        if (inside && x + dx >= 0 && x + dx < image.width && y + dy >= 0 && y + dy < image.height) {
          image.row(y + dy)[x + dx] = static_cast<std::uint8_t>(level);
        }
      }
    }
  }
}

// Where a fold-out was folded, ink has cracked off and dirt has gathered: one line down, one across.
void Fold(GreyImage& image, const Recipe& recipe, SeededRandom& random) {
  const auto stain = [&](int along, int across, bool down) {
    const int x = down ? across : along;
    const int y = down ? along : across;
    if (x >= 0 && x < image.width && y >= 0 && y < image.height) {
      std::uint8_t& pixel = image.row(y)[x];
      const double chance = random.Unit();
      if (chance < 0.35) {
        pixel = static_cast<std::uint8_t>(recipe.ink);
      } else if (chance < 0.8) {
        pixel = static_cast<std::uint8_t>(recipe.paper);
      }
    }
  };
  for (const bool down : {true, false}) {
    const int length = down ? image.height : image.width;
    double across = (down ? image.width : image.height) * random.Between(0.42, 0.58);
    for (int along = 0; along < length; ++along) {
      across += random.Between(-0.3, 0.3);
      for (int side = -1; side <= 1; ++side) stain(along, static_cast<int>(across) + side, down);
    }
  }
}

// From white-ground, black-ink picture to what paper and lamp make of it.
void Print(GreyImage& image, const Recipe& recipe, SeededRandom& random) {
  const int page_cell = static_cast<int>(recipe.dpi * 1.5);
  const SmoothField shade(image.width, image.height, page_cell, random);
  const SmoothField strength(image.width, image.height, page_cell / 2, random);
  const SmoothField grain(image.width, image.height, recipe.grain_cell, random);
  std::vector<float> shades;
  std::vector<float> strengths;
  std::vector<float> grains;
  for (int y = 0; y < image.height; ++y) {
    shade.Row(y, shades);
    strength.Row(y, strengths);
    grain.Row(y, grains);
    std::uint8_t* row = image.row(y);
    for (std::size_t x = 0; x < static_cast<std::size_t>(image.width); ++x) {
      const float gain = recipe.ink_gain * (1 + recipe.gain_drift * strengths[x] + recipe.gain_grain * grains[x]);
      const float ink = std::clamp(gain * static_cast<float>(255 - row[x]) / 255, 0.0F, 1.0F);
      const float ground = recipe.paper + recipe.paper_drift * shades[x];
      // Four bytes of one number, summed, come near enough to a normal distribution (deviation 148).
      const std::uint64_t bits = random.Next();
      const auto sum =
          static_cast<float>((bits & 255U) + (bits >> 8 & 255U) + (bits >> 16 & 255U) + (bits >> 24 & 255U));
      const float level = ground + ink * (recipe.ink - ground) + recipe.noise * (sum - 510) / 148;
      row[x] = static_cast<std::uint8_t>(std::clamp(level, 0.0F, 255.0F));
    }
  }
}

void Threshold(GreyImage& image, const Recipe& recipe) {
  const float limit = (recipe.paper + recipe.ink) / 2;
  for (std::uint8_t& pixel : image.pixels) pixel = static_cast<float>(pixel) < limit ? 0 : 255;
}

DegradedPage Spoil(const GreyImage& clean, const Recipe& recipe, std::uint64_t seed) {
  SeededRandom random(SeedOf(seed, "degrade"));
  const double skew = random.Next() % 2 == 0 ? recipe.skew_degrees : -recipe.skew_degrees;
  const double scale = recipe.dpi / 300;
  const AffineMap map = PlaceOnScan(clean, scale, skew);

  DegradedPage page{{}, recipe.dpi, map.xx, map.xy, map.x0, map.yx, map.yy, map.y0};
  page.image = Resampled(Blurred(clean, recipe.blur), map.Inverse(), static_cast<int>(std::lround(clean.width * scale)),
                         static_cast<int>(std::lround(clean.height * scale)));
  Print(page.image, recipe, random);
  Sprinkle(page.image, recipe.light_specks, recipe, recipe.paper, random);
  Sprinkle(page.image, recipe.dark_specks, recipe, recipe.ink, random);
  if (recipe.fold) {
    Fold(page.image, recipe, random);
  }
  if (recipe.one_bit) {
    Threshold(page.image, recipe);
  }
  if (recipe.jpeg_quality > 0) {
    page.image = JpegRoundTrip(page.image, recipe.jpeg_quality);
  }
  return page;
}

}  // namespace

std::string_view Name(Grade grade) {
  switch (grade) {
    case Grade::kMild:
      return "mild";
    case Grade::kMedium:
      return "medium";
    case Grade::kSevere:
      return "severe";
    case Grade::kVaried:
      return "varied";
    case Grade::kClean:
      break;
  }
  return "clean";
}

FractionBox DegradedPage::Map(const Box& clean_box) const {
  double left = 1e9;
  double top = 1e9;
  double right = -1e9;
  double bottom = -1e9;
  for (const int x : {clean_box.x, clean_box.right()}) {
    for (const int y : {clean_box.y, clean_box.bottom()}) {
      left = std::min(left, xx * x + xy * y + x0);
      right = std::max(right, xx * x + xy * y + x0);
      top = std::min(top, yx * x + yy * y + y0);
      bottom = std::max(bottom, yx * x + yy * y + y0);
    }
  }
  left = std::clamp(left / image.width, 0.0, 1.0);
  right = std::clamp(right / image.width, 0.0, 1.0);
  top = std::clamp(top / image.height, 0.0, 1.0);
  bottom = std::clamp(bottom / image.height, 0.0, 1.0);
  return {left, top, right - left, bottom - top};
}

DegradedPage Degrade(const GreyImage& clean, Grade grade, std::uint64_t seed, const ScanChanges& changes) {
  switch (grade) {
    case Grade::kMild:
      return Spoil(clean, Changed(kMildRecipe, changes), seed);
    case Grade::kMedium:
      return Spoil(clean, Changed(kMediumRecipe, changes), seed);
    case Grade::kSevere:
      return Spoil(clean, Changed(kSevereRecipe, changes), seed);
    case Grade::kVaried:
      return Spoil(clean, Changed(VariedRecipe(seed), changes), seed);
    case Grade::kClean:
      break;
  }
  DegradedPage page;
  page.image = clean;
  return page;
}

}  // namespace benchleaf::scanmaker

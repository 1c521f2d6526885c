#include "reader-training/trainer/spoil.h"

#include "benchleaf/lettering/line_strip.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <numbers>

namespace benchleaf::training {
namespace {

class Dice {
 public:
  explicit Dice(std::mt19937_64& random) : random_(random) {}
  double Between(double low, double high) { return std::uniform_real_distribution<double>(low, high)(random_); }
  bool Chance(double share) { return Between(0, 1) < share; }
  int Whole(int low, int high) { return std::uniform_int_distribution<int>(low, high)(random_); }
  double Normal() { return std::normal_distribution<double>()(random_); }

 private:
  std::mt19937_64& random_;
};

// Of a pixel within the strip.
float& InkOf(Strip& strip, int x, int y) {
  return strip.ink[static_cast<std::size_t>(y) * static_cast<std::size_t>(strip.width) + static_cast<std::size_t>(x)];
}

// Of any pixel: those beyond the strip are light.
float At(const Strip& strip, int x, int y) {
  const bool within = x >= 0 && x < strip.width && y >= 0 && y < kStripRows;
  return within ? strip.ink[static_cast<std::size_t>(y) * static_cast<std::size_t>(strip.width) +
                            static_cast<std::size_t>(x)]
                : 0.0F;
}

// What of the rectangle lies within the strip is given that ink.
void Fill(Strip& strip, int left, int top, int wide, int high, float level) {
  for (int y = top; y < std::min(kStripRows, top + high); ++y) {
    for (int x = left; x < std::min(strip.width, left + wide); ++x) InkOf(strip, x, y) = level;
  }
}

// Linear between the four pixels round the place.
float Between(const Strip& strip, double x, double y) {
  const int left = static_cast<int>(std::floor(x));
  const int top = static_cast<int>(std::floor(y));
  const auto across = static_cast<float>(x - left);
  const auto down = static_cast<float>(y - top);
  return (1 - down) * ((1 - across) * At(strip, left, top) + across * At(strip, left + 1, top)) +
         down * ((1 - across) * At(strip, left, top + 1) + across * At(strip, left + 1, top + 1));
}

// A smooth wave, px: how a hand, a worn type or stretched film shifts strokes against each other.
class Wave {
 public:
  explicit Wave(Dice& dice)
      : amplitude_(dice.Chance(0.5) ? dice.Between(0, 1.2) : 0),
        per_px_(2 * std::numbers::pi / dice.Between(14, 50)),
        phase_(dice.Between(0, 2 * std::numbers::pi)) {}
  double At(double place) const { return amplitude_ * std::sin(per_px_ * place + phase_); }

 private:
  double amplitude_;
  double per_px_;
  double phase_;
};

Strip Bent(const Strip& strip, Dice& dice) {
  const double wide = dice.Between(0.82, 1.22);
  const double high = dice.Between(0.85, 1.15);
  const double slant = dice.Chance(0.5) ? dice.Between(-0.2, 0.2) : 0;
  const double shift = dice.Between(-1.5, 1.5);
  const double middle = (kStripRows - 1) / 2.0;
  const Wave across_along(dice);
  const Wave across_down(dice);
  const Wave down_along(dice);
  Strip bent;
  bent.width = std::max(8, static_cast<int>(std::lround(strip.width * wide)));
  bent.ink.resize(static_cast<std::size_t>(bent.width) * kStripRows);
  for (int y = 0; y < kStripRows; ++y) {
    const double from_y = (y - middle - shift) / high + middle;
    for (int x = 0; x < bent.width; ++x) {
      const double from_x = x / wide + slant * (from_y - middle);
      InkOf(bent, x, y) =
          Between(strip, from_x + across_along.At(from_x) + across_down.At(from_y), from_y + down_along.At(from_x));
    }
  }
  return bent;
}

// The pen made broader, or finer, by part of a pixel: each pixel goes part of the way to its darkest or lightest
// neighbour.
void ChangePen(Strip& strip, Dice& dice) {
  const bool broader = dice.Chance(0.5);
  const auto part = static_cast<float>(dice.Between(0, broader ? 0.6 : 0.5));
  const Strip before = strip;
  for (int y = 0; y < kStripRows; ++y) {
    for (int x = 0; x < strip.width; ++x) {
      float extreme = At(before, x, y);
      for (const auto& [dx, dy] : {std::pair(-1, 0), std::pair(1, 0), std::pair(0, -1), std::pair(0, 1)}) {
        const float other = At(before, x + dx, y + dy);
        extreme = broader ? std::max(extreme, other) : std::min(extreme, other);
      }
      float& ink = InkOf(strip, x, y);
      ink += part * (extreme - ink);
    }
  }
}

void Soften(Strip& strip, Dice& dice) {
  const auto part = static_cast<float>(dice.Between(0, 1));
  const Strip before = strip;
  for (int y = 0; y < kStripRows; ++y) {
    for (int x = 0; x < strip.width; ++x) {
      float sum = 0;
      for (int dy = -1; dy <= 1; ++dy) {
        for (int dx = -1; dx <= 1; ++dx) sum += At(before, x + dx, y + dy);
      }
      float& ink = InkOf(strip, x, y);
      ink += part * (sum / 9 - ink);
    }
  }
}

// Spots of ink, and spots where it is missing.
void Spot(Strip& strip, Dice& dice) {
  const int spots = dice.Whole(1, 2 + strip.width / 20);
  for (int i = 0; i < spots; ++i) {
    const float level = dice.Chance(0.6) ? 0.0F : 1.0F;
    const int left = dice.Whole(0, strip.width - 1);
    const int top = dice.Whole(2, kStripRows - 3);
    const int wide = dice.Whole(1, 3);
    const int high = dice.Whole(1, 3);
    Fill(strip, left, top, wide, high, level);
  }
}

// What is left of a wire or leader beside the text, lying or standing, and seldom through it.
void Wire(Strip& strip, Dice& dice) {
  const int pen = dice.Whole(1, 3);
  const bool lying = dice.Chance(0.6);
  const int length = dice.Whole(6, lying ? std::max(8, strip.width / 2) : 20);
  const int left = dice.Whole(0, std::max(0, strip.width - (lying ? length : pen)));
  const int top = !lying             ? dice.Whole(0, kStripRows - 12)
                  : dice.Chance(0.5) ? dice.Whole(0, 4)
                                     : dice.Whole(kStripRows - 7, kStripRows - 1);
  Fill(strip, left, top, lying ? length : pen, lying ? pen : length, 1);
}

void ChangeLight(Strip& strip, Dice& dice) {
  const double gamma = std::exp(dice.Between(-0.4, 0.4));
  const double gain = dice.Between(0.7, 1.1);
  const double noise = dice.Chance(0.5) ? dice.Between(0, 0.12) : 0;
  for (float& ink : strip.ink) {
    const double changed = gain * std::pow(static_cast<double>(ink), gamma) + (noise > 0 ? noise * dice.Normal() : 0);
    ink = static_cast<float>(std::clamp(changed, 0.0, 1.0));
  }
}

}  // namespace

Strip AsIs(const Crop& crop) {
  Strip strip;
  strip.width = crop.width;
  strip.ink.resize(crop.pixels.size());
  std::transform(crop.pixels.begin(), crop.pixels.end(), strip.ink.begin(),
                 [](std::uint8_t level) { return static_cast<float>(255 - level) / 255; });
  return strip;
}

Strip Spoilt(const Crop& crop, std::mt19937_64& random) {
  Dice dice(random);
  Strip strip = AsIs(crop);
  if (dice.Chance(0.8)) {
    strip = Bent(strip, dice);
  }
  if (dice.Chance(0.5)) {
    ChangePen(strip, dice);
  }
  if (dice.Chance(0.25)) {
    Soften(strip, dice);
  }
  if (dice.Chance(0.25)) {
    Spot(strip, dice);
  }
  if (dice.Chance(0.12)) {
    Wire(strip, dice);
  }
  if (dice.Chance(0.6)) {
    ChangeLight(strip, dice);
  }
  return strip;
}

}  // namespace benchleaf::training

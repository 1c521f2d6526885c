#include "scan-maker/lettering.h"

#include "benchleaf/core/image.h"

#include <cairo.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <string>

namespace benchleaf::scanmaker {
namespace {

constexpr Lettering kAll[] = {Lettering::kSimplex,  Lettering::kDuplex,     Lettering::kHand,
                              Lettering::kDrafting, Lettering::kTypewriter, Lettering::kBook};

struct Drawn {
  Box box;        // as told
  GreyImage ink;  // coverage: 0 none, 255 full
};

Drawn Draw(const std::string& text, const TextStyle& style, int turn) {
  constexpr int kSide = 600;
  cairo_surface_t* surface = cairo_image_surface_create(CAIRO_FORMAT_A8, kSide, kSide);
  cairo_t* cairo = cairo_create(surface);
  Drawn drawn{DrawText(cairo, kSide / 2.0, kSide / 2.0, text, style, turn), GreyImage(kSide, kSide, 0)};
  cairo_destroy(cairo);
  cairo_surface_flush(surface);
  const unsigned char* row = cairo_image_surface_get_data(surface);
  for (int y = 0; y < kSide; ++y, row += cairo_image_surface_get_stride(surface)) {
    std::copy_n(row, kSide, drawn.ink.row(y));
  }
  cairo_surface_destroy(surface);
  return drawn;
}

Box InkBox(const GreyImage& ink) {
  Box box;
  for (int y = 0; y < ink.height; ++y) {
    for (int x = 0; x < ink.width; ++x) {
      if (ink.row(y)[x] != 0) {
        box = Union(box, {x, y, 1, 1});
      }
    }
  }
  return box;
}

TEST(LetteringTest, TellsTheBoxOfItsInkInEveryTurn) {
  for (const Lettering lettering : kAll) {
    for (const int turn : {0, 90, 180, 270}) {
      TextStyle style;
      style.lettering = lettering;
      const Drawn drawn = Draw("Cg7j", style, turn);
      const Box ink = InkBox(drawn.ink);
      const std::string what = std::to_string(static_cast<int>(lettering)) + " turned " + std::to_string(turn);
      // Faint edges may round to no coverage at all.
      EXPECT_EQ(Union(drawn.box, ink), drawn.box) << what;
      EXPECT_LE(drawn.box.width - ink.width, 3) << what;
      EXPECT_LE(drawn.box.height - ink.height, 3) << what;
    }
  }
}

TEST(LetteringTest, RunsInTheDirectionOfItsTurn) {
  TextStyle style;
  const double middle = 300;
  EXPECT_GT(Draw("C112", style, 0).box.center_x(), middle + 20);
  EXPECT_GT(Draw("C112", style, 90).box.center_y(), middle + 20);
  EXPECT_LT(Draw("C112", style, 180).box.center_x(), middle - 20);
  EXPECT_LT(Draw("C112", style, 270).box.center_y(), middle - 20);
}

TEST(LetteringTest, MakesCapitalsAsHighAsAsked) {
  for (const Lettering lettering : kAll) {
    TextStyle style;
    style.lettering = lettering;
    style.cap_height_px = 60;
    style.stroke_px = 1;
    EXPECT_NEAR(Draw("H", style, 0).box.height, 60, lettering == Lettering::kHand ? 9 : 3)
        << static_cast<int>(lettering);
  }
}

TEST(LetteringTest, SpacesLettersAsAsked) {
  for (const Lettering lettering : kAll) {
    TextStyle style;
    style.lettering = lettering;
    const double tight = TextAdvance("R12", style);
    style.letter_space = 0.5;
    EXPECT_NEAR(TextAdvance("R12", style) - tight, 3 * 0.5 * style.cap_height_px, 1e-9);
  }
}

TEST(LetteringTest, WritesByHandAsTheSeedSays) {
  TextStyle style;
  style.lettering = Lettering::kHand;
  const GreyImage first = Draw("R12", style, 0).ink;
  EXPECT_EQ(Draw("R12", style, 0).ink, first);
  style.seed = 2;
  EXPECT_NE(Draw("R12", style, 0).ink, first);
}

// Letters keep their places and stay what they are, in shapes of the writer's own.
TEST(LetteringTest, LoosensLettersAsTheWriterDoes) {
  for (const Lettering lettering : {Lettering::kSimplex, Lettering::kTypewriter}) {
    TextStyle style;
    style.lettering = lettering;
    const Drawn plain = Draw("R12", style, 0);
    style.looseness = 0.04;
    const Drawn loose = Draw("R12", style, 0);
    EXPECT_NE(loose.ink, plain.ink);
    EXPECT_EQ(Draw("R12", style, 0).ink, loose.ink);
    EXPECT_NEAR(loose.box.x, plain.box.x, 5);
    EXPECT_NEAR(loose.box.width, plain.box.width, 0.2 * plain.box.width);
    EXPECT_NEAR(loose.box.height, plain.box.height, 0.2 * plain.box.height);
    style.seed = 2;
    EXPECT_NE(Draw("R12", style, 0).ink, loose.ink);
  }
}

TEST(LetteringTest, DrawsInAFontOfItsOwn) {
  constexpr FontFile kFont = {"truetype/liberation/LiberationSerif-Regular.ttf", "fonts-liberation"};
  TextStyle style;
  style.font = &kFont;
  const GreyImage as_font = Draw("R12", style, 0).ink;
  style.font = nullptr;
  EXPECT_NE(Draw("R12", style, 0).ink, as_font);
  style.lettering = Lettering::kBook;
  EXPECT_EQ(Draw("R12", style, 0).ink, as_font);
}

TEST(LetteringTest, DrawsNothingForBlanksAndKnowsOhmAndMicro) {
  for (const Lettering lettering : {Lettering::kSimplex, Lettering::kDuplex}) {
    TextStyle style;
    style.lettering = lettering;
    EXPECT_TRUE(Draw(" ", style, 0).box.empty());
    EXPECT_FALSE(Draw("\u03A9", style, 0).box.empty());
    EXPECT_FALSE(Draw("\u00B5", style, 0).box.empty());
  }
}

}  // namespace
}  // namespace benchleaf::scanmaker

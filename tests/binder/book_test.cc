#include "binder/sample_book.h"

#include <gtest/gtest.h>

namespace benchleaf::binder {
namespace {

TEST(Book, TiesAPartToItsSpotAndTheSpotToItsPart) {
  const Book book = SampleBook();
  ASSERT_EQ(book.parts.size(), 2U);
  const BookPart& part = book.parts[0];
  EXPECT_EQ(part.id, "part-c112");
  ASSERT_EQ(part.drawn.size(), 1U);
  const Spot& spot = book.pages[part.drawn[0].page].spots[part.drawn[0].spot];
  EXPECT_EQ(spot.id, "at-c112");
  EXPECT_EQ(spot.part, 0U);
  EXPECT_TRUE(book.parts[1].drawn.empty());
}

TEST(Book, SpotsLieOnTheUprightPage) {
  // A quarter turn clockwise takes the scan's upper left corner to the upper right.
  const Spot& spot = SampleBook().pages[0].spots[0];
  EXPECT_DOUBLE_EQ(spot.box.x, 1 - 0.1 - 0.01);
  EXPECT_DOUBLE_EQ(spot.box.y, 0.2);
  EXPECT_DOUBLE_EQ(spot.box.width, 0.01);
}

TEST(Book, WhatStandsInARowIsShownByTheRow) {
  const Book book = SampleBook();
  ASSERT_EQ(book.pages[1].spots.size(), 2U);
  EXPECT_TRUE(book.pages[1].spots[0].row);
  EXPECT_EQ(book.pages[1].spots[0].text, "C112");
}

TEST(Book, NamesWhatIsDrawnAndInNoRow) {
  const Book book = SampleBook();
  ASSERT_EQ(book.unlisted.size(), 2U);
  EXPECT_EQ(book.pages[0].spots[book.unlisted[0].spot].text, "R7");
}

TEST(Book, PartsOfOneNameInTwoManualsStayApart) {
  const Book book = MakeBook(1, {SampleManual(), SampleManual("QUILLHAVEN 12", "other.png")}, {}, {});
  ASSERT_EQ(book.parts.size(), 4U);
  EXPECT_EQ(book.parts[2].id, "part-c112-2");
  EXPECT_EQ(book.pages[2].number, 3);
}

TEST(Book, HostileNamesMakeNoAddress) {
  const Book book = MakeBook(1, {HostileManual()}, {}, {});
  const auto is_plain = [](const std::string& id) {
    return id.find_first_not_of("abcdefghijklmnopqrstuvwxyz0123456789-") == std::string::npos;
  };
  EXPECT_TRUE(is_plain(book.folder)) << book.folder;
  for (const BookPage& page : book.pages) {
    for (const Spot& spot : page.spots) EXPECT_TRUE(is_plain(spot.id)) << spot.id;
  }
  for (const BookPart& part : book.parts) EXPECT_TRUE(is_plain(part.id)) << part.id;
}

}  // namespace
}  // namespace benchleaf::binder

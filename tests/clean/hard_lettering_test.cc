#include "clean/pale_lettering.h"
#include "clean/white_lettering.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cstdint>

namespace benchleaf {
namespace {

constexpr double kCap = 24;
constexpr std::uint8_t kBlack = 30;
constexpr std::uint8_t kPale = 205;
constexpr std::uint8_t kGround = 250;

void Fill(GreyImage& image, const Box& box, std::uint8_t level) {
  for (int y = box.y; y < box.bottom(); ++y) std::fill_n(image.row(y) + box.x, box.width, level);
}

// An L, 14 x 24 px in strokes of 4 px.
void PutLetter(GreyImage& image, int x, int y, std::uint8_t level) {
  Fill(image, {x, y, 4, 24}, level);
  Fill(image, {x, y + 20, 14, 4}, level);
}

InkImage InkOf(const GreyImage& image) {
  InkImage ink(image.width, image.height);
  for (int y = 0; y < image.height; ++y) {
    for (int x = 0; x < image.width; ++x) ink.row(y)[x] = image.row(y)[x] < 128 ? 1 : 0;
  }
  return ink;
}

GreyImage PageWith(int letters, std::uint8_t level) {
  GreyImage page(600, 300, kGround);
  for (int i = 0; i < letters; ++i) PutLetter(page, 50 + 40 * i, 100, level);
  return page;
}

TEST(PaleLettering, LettersThatTheThresholdLeftOutAreAdded) {
  const GreyImage page = PageWith(10, kPale);
  InkImage rest(page.width, page.height);
  AddPaleLetters(page, kCap, rest);
  EXPECT_EQ(CountInk(rest), 10 * (4 * 24 + 10 * 4));
}

TEST(PaleLettering, LettersThatTouchEachOtherAreAdded) {
  GreyImage page = PageWith(10, kPale);
  for (int i = 0; i < 3; ++i) PutLetter(page, 50 + 14 * i, 200, kPale);
  InkImage rest(page.width, page.height);
  AddPaleLetters(page, kCap, rest);
  EXPECT_EQ(CountInk(rest), 13 * (4 * 24 + 10 * 4));
}

TEST(PaleLettering, AFewSpotsAreNoLettering) {
  const GreyImage page = PageWith(4, kPale);
  InkImage rest(page.width, page.height);
  AddPaleLetters(page, kCap, rest);
  EXPECT_EQ(CountInk(rest), 0);
}

TEST(PaleLettering, WhatIsInkAlreadyIsNotAddedAgain) {
  const GreyImage page = PageWith(10, kBlack);
  InkImage rest(page.width, page.height);
  AddPaleLetters(page, kCap, rest);
  EXPECT_EQ(CountInk(rest), 0) << "its lines have been taken out of the rest";
}

TEST(PaleLettering, ALetterThatTouchesADarkWireIsAdded) {
  GreyImage page = PageWith(10, kPale);
  Fill(page, {40, 124, 500, 4}, kBlack);  // under their feet
  InkImage rest(page.width, page.height);
  AddPaleLetters(page, kCap, rest);
  EXPECT_GT(CountInk(rest), 10 * 4 * 18) << "all but what stands too near to the wire";
}

TEST(PaleLettering, APageFullOfRemainsKeepsThemOut) {
  GreyImage page = PageWith(10, kPale);
  for (int i = 0; i < 60; ++i) Fill(page, {20 + 9 * i, 200, 4, 12}, kPale);
  InkImage rest(page.width, page.height);
  AddPaleLetters(page, kCap, rest);
  EXPECT_EQ(CountInk(rest), 0);
}

TEST(WhiteLettering, LettersOnTheirSideAreTurned) {
  GreyImage page(600, 300, kGround);
  Fill(page, {100, 60, 44, 100}, kBlack);
  for (const int y : {70, 110}) {  // an L that lies, in heavy strokes
    Fill(page, {110, y, 24, 7}, kGround);
    Fill(page, {110, y + 7, 7, 9}, kGround);
  }
  InkImage ink = InkOf(page);
  TurnWhiteLettering(kCap, page, ink);
  EXPECT_EQ(CountInk(ink), 2 * (24 * 7 + 7 * 9));
}

TEST(WhiteLettering, ALabelWhoseInsideTheThresholdLeftOutIsTurned) {
  GreyImage page(600, 300, kGround);
  Fill(page, {100, 90, 80, 44}, kBlack);
  PutLetter(page, 115, 100, kGround);
  PutLetter(page, 145, 100, kGround);
  InkImage none(page.width, page.height);
  TurnWhiteLettering(kCap, page, none);
  EXPECT_EQ(CountInk(none), 2 * (4 * 24 + 10 * 4));
}

TEST(WhiteLettering, ALabelIsTurned) {
  GreyImage page(600, 300, kGround);
  Fill(page, {100, 90, 80, 44}, kBlack);
  PutLetter(page, 115, 100, kGround);
  PutLetter(page, 145, 100, kGround);
  InkImage ink = InkOf(page);
  TurnWhiteLettering(kCap, page, ink);
  EXPECT_LT(page.row(110)[117], 40) << "a letter";
  EXPECT_GT(page.row(95)[105], 240) << "the label";
  EXPECT_EQ(CountInk(ink), 2 * (4 * 24 + 10 * 4));
}

TEST(WhiteLettering, APatchWithoutLettersStays) {
  GreyImage page(600, 300, kGround);
  Fill(page, {100, 90, 80, 44}, kBlack);
  const GreyImage before = page;
  InkImage ink = InkOf(page);
  TurnWhiteLettering(kCap, page, ink);
  EXPECT_EQ(page, before);
}

}  // namespace
}  // namespace benchleaf

#include "reader-training/practice_text.h"

#include <array>
#include <cstddef>
#include <string_view>

namespace benchleaf::training {
namespace {

using scanmaker::SeededRandom;

template <std::size_t N>
std::string One(const std::array<std::string_view, N>& of, SeededRandom& random) {
  return std::string(of.at(static_cast<std::size_t>(random.Whole(0, static_cast<int>(N) - 1))));
}

char Letter(SeededRandom& random) { return static_cast<char>('A' + random.Whole(0, 25)); }

// Classes of IEEE 315 and of common practice; those that fill drawings stand several times.
constexpr std::array<std::string_view, 64> kClasses = {
    "R",  "R",  "R",  "R",  "R",  "R",  "R",  "R",  "C",  "C",  "C",  "C",  "C",  "C",  "C",  "C",
    "L",  "L",  "L",  "V",  "V",  "V",  "T",  "T",  "Q",  "Q",  "D",  "D",  "J",  "J",  "P",  "P",
    "S",  "S",  "F",  "M",  "K",  "E",  "A",  "B",  "X",  "Y",  "Z",  "U",  "W",  "G",  "N",  "H",
    "CR", "CR", "TP", "TB", "DS", "LS", "SW", "IC", "VR", "RV", "RT", "BT", "PL", "FB", "AT", "XV"};

std::string Number(SeededRandom& random) {
  const double share = random.Unit();
  const int most = share < 0.25 ? 9 : share < 0.65 ? 99 : share < 0.95 ? 999 : 9999;
  return std::to_string(random.Whole(most > 9 ? (most + 1) / 10 : 1, most));
}

std::string Designator(SeededRandom& random) {
  std::string text;
  if (random.Unit() < 0.05) {
    text = "A" + std::to_string(random.Whole(1, 12));
  }
  text += One(kClasses, random) + Number(random);
  if (random.Unit() < 0.06) {
    text += static_cast<char>('A' + random.Whole(0, 3));
  }
  return text;
}

// RETMA/EIA and Pro Electron designation in form; not all of these were made.
std::string Tube(SeededRandom& random) {
  constexpr std::array<std::string_view, 12> kVolts = {"1", "2", "3", "4", "5", "6", "6", "6", "12", "12", "25", "35"};
  constexpr std::array<std::string_view, 12> kSuffixes = {"", "", "", "", "", "", "A", "B", "G", "GT", "GTA", "WA"};
  constexpr std::array<std::string_view, 8> kEuropean = {"EL", "ECC", "EF", "PCL", "PL", "EZ", "ECH", "UY"};
  if (random.Unit() < 0.2) {
    return One(kEuropean, random) + std::to_string(random.Whole(1, 99) + 10);
  }
  std::string text = One(kVolts, random) + Letter(random);
  if (random.Unit() < 0.75) {
    text += Letter(random);
  }
  return text + std::to_string(random.Whole(1, 9)) + One(kSuffixes, random);
}

std::string Value(SeededRandom& random) {
  constexpr std::array<std::string_view, 24> kFigures = {"1",   "1.2", "1.5", "1.8", "2.2", "2.7", "3.3", "3.9",
                                                         "4.7", "5.6", "6.8", "8.2", "10",  "15",  "22",  "33",
                                                         "47",  "68",  "100", "120", "220", "330", "470", "680"};
  constexpr std::array<std::string_view, 16> kUnits = {"K", "K", "K",  "M",   "MEG", "V",    "W",  "MFD",
                                                       "",  "",  "MF", "MMF", "UF",  "OHMS", "MH", "UH"};
  constexpr std::array<std::string_view, 12> kOthers = {"MFD", "MMF", "OHMS", "OHM", "MEG", "1/2W",
                                                        "10%", "5%",  "600V", "KC",  "MC",  "1W"};
  constexpr std::array<std::string_view, 8> kDecimals = {".01", ".1", ".05", ".02", ".001", ".005", ".047", ".22"};
  const double share = random.Unit();
  if (share < 0.2) {
    return One(kDecimals, random);
  }
  if (share < 0.35) {
    return One(kOthers, random);
  }
  if (share < 0.42) {
    return std::to_string(random.Whole(1, 9)) + (random.Unit() < 0.7 ? "K" : "M") + std::to_string(random.Whole(1, 9));
  }
  return One(kFigures, random) + One(kUnits, random);
}

std::string Word(SeededRandom& random) {
  constexpr std::array<std::string_view, 40> kWords = {
      "GRID",  "PLATE",  "AUDIO", "OUTPUT", "INPUT",  "DET",   "AMP",    "OSC",  "HORIZ", "VERT",
      "SYNC",  "VIDEO",  "GND",   "FIL",    "VOLUME", "TONE",  "RED",    "BLUE", "GREEN", "BLK",
      "TO",    "FROM",   "AND",   "OF",     "B+",     "I.F.",  "A.G.C.", "AVC",  "CRT",   "YOKE",
      "POWER", "SWITCH", "LINE",  "ANT",    "COIL",   "MIXER", "1ST",    "2ND",  "3RD",   "TEST"};
  constexpr std::array<std::string_view, 12> kSmall = {"the", "and", "see", "note",   "part",  "pin",
                                                       "of",  "on",  "red", "ground", "plate", "grid"};
  const double share = random.Unit();
  if (share < 0.7) {
    return One(kWords, random);
  }
  if (share < 0.8) {
    return One(kSmall, random);
  }
  std::string text;
  for (int i = random.Whole(2, 7); i > 0; --i) text += Letter(random);
  return text;
}

}  // namespace

std::string PracticeText(SeededRandom& random) {
  const double share = random.Unit();
  if (share < 0.52) {
    return Designator(random);
  }
  if (share < 0.64) {
    return Tube(random);
  }
  if (share < 0.86) {
    return Value(random);
  }
  return share < 0.96 ? Word(random) : std::to_string(random.Whole(10, 99));
}

}  // namespace benchleaf::training

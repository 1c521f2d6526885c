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
  constexpr std::array<std::string_view, 24> kUnits = {"K",  "K",  "K",  "M",   "MEG", "V",    "W",  "MFD",
                                                       "",   "",   "MF", "MMF", "UF",  "OHMS", "MH", "UH",
                                                       "pF", "uF", "k",  "mA",  "mH",  "pf",   "uf", "ohms"};
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

std::string Figures(int count, SeededRandom& random) {
  std::string text;
  for (int i = 0; i < count; ++i) text += static_cast<char>('0' + random.Whole(0, 9));
  return text;
}

std::string Capitals(int count, SeededRandom& random) {
  std::string text;
  for (int i = 0; i < count; ++i) text += Letter(random);
  return text;
}

// Letters and figures by turns, as makers code what a part is: RC20BF104K.
std::string Coded(SeededRandom& random) {
  std::string text;
  for (int i = random.Whole(2, 4); i > 0; --i) {
    text += Capitals(random.Whole(1, 2), random) + Figures(random.Whole(1, 3), random);
  }
  return random.Unit() < 0.4 ? text + Letter(random) : text;
}

// As lists write several at once: C103,105-108.
std::string Group(SeededRandom& random) {
  constexpr std::array<std::string_view, 6> kJoints = {",", ",", ",", "-", "-", "~"};
  int number = random.Whole(1, random.Unit() < 0.5 ? 30 : 400);
  std::string text = One(kClasses, random) + std::to_string(number);
  for (int i = random.Unit() < 0.5 ? 1 : random.Whole(2, 5); i > 0; --i) {
    number += random.Whole(1, 9);
    text += One(kJoints, random) + std::to_string(number);
  }
  return random.Unit() < 0.15 ? text + ',' : text;
}

// As lists and tube layouts write a tube: half of one, two names, behind its designator, before a note.
std::string TubeInList(SeededRandom& random) {
  const double share = random.Unit();
  if (share < 0.35) {
    return "1/2" + One(std::array<std::string_view, 3>{"", "-", " "}, random) + Tube(random);
  }
  if (share < 0.65) {
    return Tube(random) + '/' + Tube(random);
  }
  return share < 0.85 ? "V" + std::to_string(random.Whole(1, 30)) + ": " + Tube(random) : Tube(random) + '*';
}

std::string Word(SeededRandom& random) {
  constexpr std::array<std::string_view, 40> kWords = {
      "GRID",  "PLATE",  "AUDIO", "OUTPUT", "INPUT",  "DET",   "AMP",    "OSC",  "HORIZ", "VERT",
      "SYNC",  "VIDEO",  "GND",   "FIL",    "VOLUME", "TONE",  "RED",    "BLUE", "GREEN", "BLK",
      "TO",    "FROM",   "AND",   "OF",     "B+",     "I.F.",  "A.G.C.", "AVC",  "CRT",   "YOKE",
      "POWER", "SWITCH", "LINE",  "ANT",    "COIL",   "MIXER", "1ST",    "2ND",  "3RD",   "TEST"};
  constexpr std::array<std::string_view, 24> kSmall = {
      "the",   "and",     "see",      "note", "part",  "pin",  "of",     "on",   "red",    "ground", "plate", "grid",
      "Fixed", "Ceramic", "Resistor", "mica", "Paper", "Coil", "carbon", "film", "Volume", "to",     "Tube",  "meg"};
  const double share = random.Unit();
  if (share < 0.7) {
    return One(kWords, random);
  }
  if (share < 0.8) {
    return One(kSmall, random);
  }
  return Capitals(random.Whole(2, 7), random);
}

}  // namespace

std::string PracticeText(SeededRandom& random) {
  constexpr std::array<std::string_view, 5> kMarks = {"\"", "..", "....", "*", "-"};
  const double share = random.Unit();
  if (share < 0.50) {
    return Designator(random);
  }
  if (share < 0.61) {
    return Tube(random);
  }
  if (share < 0.80) {
    return Value(random);
  }
  if (share < 0.85) {
    return PracticePartNumber(random, false);
  }
  if (share < 0.87) {
    return Group(random);
  }
  if (share < 0.96) {
    return Word(random);
  }
  return share < 0.97 ? One(kMarks, random) : std::to_string(random.Whole(10, 99));
}

std::string PracticePartNumber(SeededRandom& random, bool spaced) {
  constexpr std::array<std::string_view, 9> kJoints = {"-", "-", "-", "-", "-", "-", "/", ".", "-"};
  constexpr std::array<std::string_view, 2> kSpaces = {" ", "-"};
  const double share = random.Unit();
  if (share < 0.15) {
    return Figures(random.Whole(4, 8), random);
  }
  if (share < 0.3) {
    return Coded(random);
  }
  std::string text = random.Unit() < 0.3 ? Capitals(random.Whole(1, 3), random) : "";
  if (!text.empty() && random.Unit() < 0.5) {
    text += spaced ? One(kSpaces, random) : "-";
  }
  text += Figures(random.Whole(1, 4), random);
  for (int i = random.Whole(1, 2); i > 0; --i) {
    text += spaced ? One(kSpaces, random) : One(kJoints, random);
    text += random.Unit() < 0.85 ? Figures(random.Whole(1, 5), random) : Capitals(random.Whole(1, 2), random);
  }
  const double end = random.Unit();
  return end < 0.1 ? text + Letter(random) : end < 0.14 ? text + static_cast<char>('a' + random.Whole(0, 25)) : text;
}

std::string PracticeGroup(SeededRandom& random) { return random.Unit() < 0.6 ? Group(random) : TubeInList(random); }

std::string PracticeWord(SeededRandom& random) {
  constexpr std::array<std::string_view, 72> kWords = {
      "resistor",  "capacitor",   "fixed",    "variable", "composition", "electrolytic", "ceramic",  "paper",
      "mica",      "tubular",     "disc",     "mylar",    "wirewound",   "carbon",       "film",     "coil",
      "choke",     "transformer", "tube",     "socket",   "switch",      "rotary",       "toggle",   "jack",
      "fuse",      "lamp",        "pilot",    "speaker",  "rectifier",   "selenium",     "diode",    "transistor",
      "connector", "cable",       "assembly", "board",    "chassis",     "knob",         "shaft",    "control",
      "volume",    "contrast",    "hold",     "vertical", "horizontal",  "output",       "input",    "oscillator",
      "mixer",     "detector",    "sound",    "video",    "filter",      "bypass",       "coupling", "adjust",
      "the",       "of",          "to",       "and",      "for",         "with",         "not",      "used",
      "same",      "as",          "see",      "note",     "between",     "voltage",      "grid",     "plate"};
  constexpr std::array<std::string_view, 24> kRest = {"\"",  "1/2W", "10%",  "5%",   "+/-10%", "(1/2", "W)",    "No.",
                                                      "QTY", "REF",  "PART", "I.F.", "600VDC", "DO",   "#6-32", "3/4\"",
                                                      "x",   "&",    "A:",   "B;",   "=",      "*",    "SW.",   "P/O"};
  const double share = random.Unit();
  if (share < 0.12) {
    return PracticeText(random);
  }
  if (share < 0.22) {
    return One(kRest, random);
  }
  std::string word = One(kWords, random);
  if (share < 0.34) {  // so that letters are learnt, not words
    for (char& letter : word) letter = static_cast<char>('a' + random.Whole(0, 25));
  }
  const double dressed = random.Unit();
  const auto upper = [](char letter) { return static_cast<char>(letter - 'a' + 'A'); };
  if (dressed < 0.4) {
    for (char& letter : word) letter = upper(letter);
  } else if (dressed < 0.65) {
    word.front() = upper(word.front());
  }
  constexpr std::array<std::string_view, 5> kPoints = {",", ".", ":", ";", ")"};
  return random.Unit() < 0.25 ? word + One(kPoints, random) : word;
}

}  // namespace benchleaf::training

// The paper that every page is drawn on. Whatever is lettered goes through it, so that the truth cannot miss it.

#ifndef BENCHLEAF_TESTS_SCAN_MAKER_SHEET_H_
#define BENCHLEAF_TESTS_SCAN_MAKER_SHEET_H_

#include "scan-maker/lettering.h"
#include "scan-maker/made_page.h"

#include <memory>
#include <set>
#include <string>
#include <vector>

namespace benchleaf::scanmaker {

// A term or word to be lettered. `terms` holds the canonical texts that it stands for: one as a rule, several for a
// printed range ("R1-R4"), which records a term for each at the same place; none leaves no trace in the truth.
struct Token {
  std::string kind;
  std::string text;
  std::vector<std::string> terms;
};

// Upper case, without spaces.
std::string Canonical(const std::string& text);

Token TermToken(const std::string& kind, const std::string& text);

// Which words of running text are terms of this set.
struct TermBook {
  std::set<std::string> designators;
  std::set<std::string> tubes;
  std::set<std::string> semiconductors;

  // The words of `text`, each as a token; punctuation round a word is kept in its text, not in its term.
  std::vector<Token> Tokens(const std::string& text) const;
};

// Not copyable: owns the drawing surface.
class Sheet {
 public:
  Sheet(int width_px, int height_px);
  ~Sheet();
  Sheet(const Sheet&) = delete;
  Sheet& operator=(const Sheet&) = delete;

  cairo_t* cairo() const;
  int width() const { return width_; }
  int height() const { return height_; }

  // Letters the token with the left end of its baseline at (x, y) and records it. Gives the box of its ink.
  Box Put(double x, double y, const Token& token, const TextStyle& style, int turn = 0);
  // The same for a row of words with spaces between; upright.
  Box PutRow(double x, double y, const std::vector<Token>& row, const TextStyle& style);
  // Words that are no terms.
  Box PutWords(double x, double y, const std::string& words, const TextStyle& style);
  // Words that are no terms, centred about x.
  Box PutCentred(double x, double y, const std::string& words, const TextStyle& style);

  // A leader: dots from x `from` as long as they stay short of `to`, `step` px apart. No term.
  void PutDots(double from, double to, double y, double step, const TextStyle& style);

  void Line(double x1, double y1, double x2, double y2, double width_px);
  void Rectangle(double x, double y, double width, double height, double line_px);

  void AddEntry(const MadeEntry& entry) { entries_.push_back(entry); }

  // The finished page; the sheet is empty afterwards.
  MadePage Take(const std::string& kind, const std::string& printed_number);

 private:
  struct Surface;
  int width_;
  int height_;
  std::unique_ptr<Surface> surface_;
  std::vector<MadeTerm> terms_;
  std::vector<MadeEntry> entries_;
  std::vector<PrintedText> printed_;
};

// The width of a row as PutRow letters it, px.
double RowAdvance(const std::vector<Token>& row, const TextStyle& style);

// Breaks a row into lines no wider than `width_px`, at least one token a line.
std::vector<std::vector<Token>> Wrapped(const std::vector<Token>& row, const TextStyle& style, double width_px);

}  // namespace benchleaf::scanmaker

#endif  // BENCHLEAF_TESTS_SCAN_MAKER_SHEET_H_

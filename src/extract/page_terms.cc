#include "extract/page_terms.h"

#include "extract/list_table.h"
#include "extract/list_words.h"
#include "extract/plain_text.h"
#include "extract/semiconductor.h"
#include "extract/value.h"

#include <algorithm>
#include <cstddef>
#include <utility>

namespace benchleaf::extract {
namespace {

constexpr double kLetterSpace = 1.0;  // capital heights between the letters and figures of one designator
constexpr double kUnitSpace = 1.6;    // between a number and its unit
constexpr double kSplitSpace = 0.6;   // between two halves of a type that a reader took apart
constexpr double kNearTube = 2.0;     // between a tube's designator and its type

bool AllDigits(const std::string& text) { return !text.empty() && std::all_of(text.begin(), text.end(), IsDigit); }

Surroundings Around(const Piece& piece, const PageSense& sense) {
  Surroundings around;
  around.ranges = sense.list ? RangeStyle::kList : RangeStyle::kDrawing;
  around.parts = sense.list ? PartPlace::kList : PartPlace::kAnywhere;
  around.rkm_in_use = sense.rkm_in_use;
  around.lone_strokes = piece.origin == WordOrigin::kString && !sense.list ? LoneStrokes::kAllow : LoneStrokes::kRefuse;
  const double reach = kNearTube * sense.cap;
  const auto tube_near = sense.tube_designators.First(
      piece.box, reach, [&](const Box& box) { return box != piece.box && Near(box, piece.box, reach); });
  around.tubes = tube_near ? TubeContext::kTube : TubeContext::kNone;
  return around;
}

void Add(std::vector<PageTerm>& all, const std::vector<Term>& terms, const Piece& piece) {
  for (const Term& term : terms) {
    all.push_back({term, piece.read, piece.box, piece.turn, piece.confidence * term.sure, {}, false});
  }
}

// Walks along one line.
class LineWalk {
 public:
  LineWalk(const Line& line, const PageSense& sense, const Rules::Tables& tables)
      : pieces_(line.pieces), sense_(sense), tables_(tables) {
    roles_.reserve(pieces_.size());
    for (const Piece& piece : pieces_) {
      roles_.push_back(RolesOf(ListWord(piece.text), tables_));
    }
  }

  std::vector<PageTerm> Walk() {
    for (std::size_t at = 0; at < pieces_.size();) {
      std::size_t taken = SpacedDesignator(at);
      taken = taken != 0 ? taken : SpacedValue(at);
      taken = taken != 0 ? taken : SplitTube(at);
      if (taken == 0) {
        Single(at);
        taken = 1;
      }
      at += taken;
    }
    return std::move(terms_);
  }

 private:
  // How many pieces follow on `at` at less than this space, itself included.
  std::size_t Close(std::size_t at, std::size_t most, double space) const {
    std::size_t count = 1;
    while (count < most && at + count < pieces_.size() &&
           Gap(pieces_[at + count - 1], pieces_[at + count]) < space * sense_.cap) {
      ++count;
    }
    return count;
  }

  // "R 1 2" and "C 112".
  std::size_t SpacedDesignator(std::size_t at) {
    const std::string_view letters = TrimmedView(pieces_[at].text);
    const auto known = tables_.designator_classes.find(letters);
    // "A 12" and "I 5" are words of a sentence.
    if (known == tables_.designator_classes.end() || known->second < 0.7) {
      return 0;
    }
    for (std::size_t count = Close(at, 5, kLetterSpace); count > 1; --count) {
      bool figures = true;
      for (std::size_t i = at + 1; i < at + count; ++i) {
        figures =
            figures && (AllDigits(Trimmed(pieces_[i].text)) || (i > at + 1 && Trimmed(pieces_[i].text).size() == 1));
      }
      const Piece joined = Joined(pieces_, at, count);
      const auto designator = figures ? ParseDesignator(Trimmed(joined.text), tables_) : std::nullopt;
      if (designator) {
        Add(terms_, {{TermKind::kDesignator, designator->Text(), designator->sure * 0.9}}, joined);
        return count;
      }
    }
    return 0;
  }

  // ".05 MFD", "4.7 K OHMS".
  std::size_t SpacedValue(std::size_t at) {
    if (!IsValueNumber(TrimmedView(pieces_[at].text))) {
      return 0;
    }
    for (std::size_t count = Close(at, 3, kUnitSpace); count > 1; --count) {
      bool units = true;
      std::string text = Trimmed(pieces_[at].text);
      for (std::size_t i = at + 1; i < at + count; ++i) {
        const std::string unit = Trimmed(pieces_[i].text);
        // A lone letter is more often a word of its own, except for the signs of everyday.
        units = units && IsValueUnit(unit) &&
                (unit.size() > 1 || std::string_view("KMVWH").find(unit) != std::string_view::npos);
        text += unit;
      }
      const auto value = units ? ParseValue(text) : std::nullopt;
      if (value) {
        Add(terms_, {{TermKind::kValue, value->canonical, 0.95}}, Joined(pieces_, at, count));
        return count;
      }
    }
    return 0;
  }

  // "12 AX7", "6AU 6": a known type in pieces.
  std::size_t SplitTube(std::size_t at) {
    const std::string_view text = TrimmedView(pieces_[at].text);
    if (text.empty() || !IsDigit(text.front())) {
      return 0;
    }
    for (std::size_t count = Close(at, 3, kSplitSpace); count > 1; --count) {
      const Piece joined = Joined(pieces_, at, count);
      const auto tube = ParseTubeType(Trimmed(joined.text), tables_, TubeContext::kNone);
      if (tube && tube->known && !tube->repaired && tube->sure >= 0.95) {
        Add(terms_, {{TermKind::kTube, tube->type, tube->sure * 0.9}}, joined);
        return count;
      }
    }
    return 0;
  }

  // The roles of the word there; none beyond the line's end.
  Roles RolesAt(std::size_t at) const { return at < roles_.size() ? roles_[at] : Roles(); }

  // Whether a piece in brackets is the gain group of the type before it: 2SC458 (C).
  bool IsGainGroup(std::size_t at) const {
    constexpr std::size_t kLongest = 4;
    return at > 0 && pieces_[at].text.front() == '(' && pieces_[at].text.size() <= kLongest &&
           IsSemiconductor(Upper(Trimmed(pieces_[at - 1].text)));
  }

  void Single(std::size_t at) {
    if (IsGainGroup(at)) {
      return;
    }
    Surroundings around = Around(pieces_[at], sense_);
    const Roles before = at > 0 ? RolesAt(at - 1) : Roles();
    if (before.Has(ListRole::kTube) || RolesAt(at + 1).Has(ListRole::kTube)) {
      around.tubes = TubeContext::kTube;
    }
    if (before.Has(ListRole::kFigure)) {
      around.lone_strokes = LoneStrokes::kRefuse;  // SECTION VI
    }
    std::vector<Term> terms = TermsOf(pieces_[at], tables_, around);
    if (before.Has(ListRole::kElsewhere) && Gap(pieces_[at - 1], pieces_[at]) < kUnitSpace * sense_.cap) {
      terms.erase(std::remove_if(terms.begin(), terms.end(),
                                 [](const Term& term) { return term.kind == TermKind::kDesignator; }),
                  terms.end());
    }
    Add(terms_, terms, pieces_[at]);
    const bool mentioned = sense_.list && IsMention(pieces_, at, sense_.cap, tables_);
    for (std::size_t i = terms_.size() - terms.size(); i < terms_.size(); ++i) {
      terms_[i].mentioned = mentioned;
    }
  }

  const std::vector<Piece>& pieces_;
  std::vector<Roles> roles_;  // by piece
  const PageSense& sense_;
  const Rules::Tables& tables_;
  std::vector<PageTerm> terms_;
};

}  // namespace

std::vector<PageTerm> TermsOfLines(const std::vector<Line>& lines, const PageSense& sense,
                                   const Rules::Tables& tables) {
  std::vector<PageTerm> all;
  for (const Line& line : lines) {
    for (PageTerm& term : LineWalk(line, sense, tables).Walk()) {
      all.push_back(std::move(term));
    }
  }
  return all;
}

std::vector<PageTerm> TermsOfPiece(const Piece& piece, const PageSense& sense, const Rules::Tables& tables) {
  std::vector<PageTerm> all;
  Add(all, TermsOf(piece, tables, Around(piece, sense)), piece);
  return all;
}

}  // namespace benchleaf::extract

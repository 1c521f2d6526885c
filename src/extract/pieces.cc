#include "extract/pieces.h"

#include "extract/other_readings.h"
#include "extract/page_bands.h"
#include "extract/plain_text.h"

#include <algorithm>
#include <limits>
#include <utility>

namespace benchleaf::extract {
namespace {

// How much two boxes share of the lower one's height: 0 to 1.
double SharedHeight(const Box& a, const Box& b) {
  const int shared = std::min(a.bottom(), b.bottom()) - std::max(a.y, b.y);
  const int lower = std::max(1, std::min(a.height, b.height));
  return shared <= 0 ? 0 : static_cast<double>(shared) / lower;
}

constexpr std::size_t kNone = std::numeric_limits<std::size_t>::max();

// A line and its pieces, by their number on the page.
struct LineInMaking {
  std::size_t first = kNone;
  std::size_t last = kNone;
  std::size_t count = 0;
  Box box;
  Box end;  // see EndOf
};

// What stands beside a piece in its line.
struct Neighbours {
  std::size_t left = kNone;
  std::size_t right = kNone;
};

// Where a line ends, as tall as the tallest of its last few pieces: a dot or dash is low.
Box EndOf(const LineInMaking& line, const std::vector<Piece>& pieces, const std::vector<Neighbours>& neighbours) {
  const std::size_t count = std::min<std::size_t>(line.count, 3);
  std::size_t at = line.last;
  Box end = pieces[at].box;
  for (std::size_t i = 1; i < count; ++i) {
    at = neighbours[at].left;
    const Box& box = pieces[at].box;
    end = box.height > end.height ? box : end;
  }
  return end;
}

// The pieces' numbers, by their left edges; those at one edge in their order.
std::vector<std::size_t> FromLeft(const std::vector<Piece>& pieces) {
  std::vector<std::pair<int, std::size_t>> edges;
  edges.reserve(pieces.size());
  for (std::size_t i = 0; i < pieces.size(); ++i) {
    edges.emplace_back(pieces[i].box.x, i);
  }
  std::sort(edges.begin(), edges.end());
  std::vector<std::size_t> from_left;
  from_left.reserve(edges.size());
  for (const auto& [edge, piece] : edges) {
    from_left.push_back(piece);
  }
  return from_left;
}

}  // namespace

int BottomOf(const std::vector<Piece>& pieces) {
  int bottom = 1;
  for (const Piece& piece : pieces) {
    bottom = std::max(bottom, piece.box.bottom());
  }
  return bottom;
}

std::vector<Piece> PiecesOf(const PageReading& reading) {
  std::vector<Piece> pieces;
  pieces.reserve(reading.words.size());
  for (const Word& word : reading.words) {
    std::string plain = PlainText(word.text);
    if (plain.empty()) {
      continue;
    }
    Piece& piece = pieces.emplace_back();
    piece.text = std::move(plain);
    piece.read = word.text;
    piece.box = word.box;
    piece.turn = word.turn;
    piece.confidence = word.confidence;
    piece.origin = word.origin;
    if (word.alternatives.empty()) {
      continue;
    }
    piece.alternatives.reserve(word.alternatives.size());
    for (const Alternative* alternative : OtherReadings(word)) {
      piece.alternatives.push_back({PlainText(alternative->text), alternative->confidence});
    }
  }
  return pieces;
}

double CapHeight(const PageReading& reading) {
  if (reading.measures.cap_height_px > 0) {
    return reading.measures.cap_height_px;
  }
  std::vector<int> heights;
  for (const Word& word : reading.words) {
    if (word.turn == 0) {
      heights.push_back(word.box.height);
    }
  }
  if (heights.empty()) {
    return 1;
  }
  const auto middle = heights.begin() + static_cast<std::ptrdiff_t>(heights.size() / 2);
  std::nth_element(heights.begin(), middle, heights.end());
  return std::max(1, *middle);
}

std::vector<Line> JoinLines(std::vector<Piece> pieces) {
  // Pieces are large: which of them make each line is found first, and then they are moved once.
  std::vector<LineInMaking> making;
  std::vector<Neighbours> neighbours(pieces.size());
  PageBands ends(BottomOf(pieces), pieces.size());
  std::vector<std::size_t> beside;
  for (const std::size_t next : FromLeft(pieces)) {
    const Box& box = pieces[next].box;
    // The line whose last pieces stand beside this one.
    std::size_t best = making.size();
    double best_share = 0.5;
    ends.Beside(box.y, box.bottom(), beside);
    for (const std::size_t i : beside) {
      const double share = SharedHeight(making[i].end, box);
      if (share <= best_share) {
        continue;
      }
      // Pieces one above the other belong to two lines, however close these are.
      const Box& last = pieces[making[i].last].box;
      const bool stacked = box.center_x() < last.right() && SharedHeight(last, box) < 0.7;
      if (!stacked) {
        best_share = share;
        best = i;
      }
    }
    if (best == making.size()) {
      making.emplace_back();
    }
    LineInMaking& line = making[best];
    line.box = Union(line.box, box);
    neighbours[next].left = line.last;
    (line.count == 0 ? line.first : neighbours[line.last].right) = next;
    line.last = next;
    ++line.count;
    line.end = EndOf(line, pieces, neighbours);
    ends.Add(best, line.end.y, line.end.bottom());
  }
  std::stable_sort(making.begin(), making.end(),
                   [](const LineInMaking& a, const LineInMaking& b) { return a.box.center_y() < b.box.center_y(); });
  std::vector<Line> lines(making.size());
  for (std::size_t i = 0; i < making.size(); ++i) {
    lines[i].box = making[i].box;
    lines[i].pieces.reserve(making[i].count);
    for (std::size_t piece = making[i].first; piece != kNone; piece = neighbours[piece].right) {
      lines[i].pieces.push_back(std::move(pieces[piece]));
    }
  }
  return lines;
}

std::vector<Line> UprightLines(const PageReading& reading) {
  std::vector<Piece> upright;
  for (Piece& piece : PiecesOf(reading)) {
    if (piece.turn == 0) upright.push_back(std::move(piece));
  }
  return JoinLines(std::move(upright));
}

Piece Joined(const std::vector<Piece>& pieces, std::size_t from, std::size_t count) {
  const Piece& first = pieces[from];
  Piece joined{first.text, first.read, first.box, first.turn, first.confidence, first.origin, {}};
  for (std::size_t i = from + 1; i < from + count; ++i) {
    joined.text += pieces[i].text;
    joined.read += " " + pieces[i].read;
    joined.box = Union(joined.box, pieces[i].box);
    joined.confidence = std::min(joined.confidence, pieces[i].confidence);
  }
  return joined;
}

int Gap(const Piece& left, const Piece& right) { return right.box.x - left.box.right(); }

bool Near(const Box& a, const Box& b, double reach) {
  const double dx = std::max({0, a.x - b.right(), b.x - a.right()});
  const double dy = std::max({0, a.y - b.bottom(), b.y - a.bottom()});
  return dx <= reach && dy <= reach;
}

}  // namespace benchleaf::extract

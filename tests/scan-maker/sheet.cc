#include "scan-maker/sheet.h"

#include <cairo.h>

#include <algorithm>
#include <cctype>
#include <cmath>
#include <sstream>
#include <stdexcept>
#include <utility>

namespace benchleaf::scanmaker {

struct Sheet::Surface {
  cairo_surface_t* surface = nullptr;
  cairo_t* cairo = nullptr;

  // Coverage alone: black ink on a sheet without colour takes a byte a pixel.
  Surface(int width, int height) : surface(cairo_image_surface_create(CAIRO_FORMAT_A8, width, height)) {
    if (cairo_surface_status(surface) != CAIRO_STATUS_SUCCESS) {
      cairo_surface_destroy(surface);
      throw std::runtime_error("cannot make a sheet of that size");
    }
    cairo = cairo_create(surface);
    cairo_set_source_rgb(cairo, 0, 0, 0);
    cairo_set_line_cap(cairo, CAIRO_LINE_CAP_ROUND);
    cairo_set_line_join(cairo, CAIRO_LINE_JOIN_ROUND);
  }
  ~Surface() {
    cairo_destroy(cairo);
    cairo_surface_destroy(surface);
  }
  Surface(const Surface&) = delete;
  Surface& operator=(const Surface&) = delete;
};

std::string Canonical(const std::string& text) {
  std::string canonical;
  for (const char c : text) {
    if (c != ' ') {
      canonical += static_cast<char>(std::toupper(static_cast<unsigned char>(c)));
    }
  }
  return canonical;
}

Token TermToken(const std::string& kind, const std::string& text) { return {kind, text, {Canonical(text)}}; }

std::vector<Token> TermBook::Tokens(const std::string& text) const {
  std::vector<Token> tokens;
  std::istringstream words(text);
  std::string word;
  while (words >> word) {
    const std::size_t first = word.find_first_not_of("(\"'");
    const std::size_t last = word.find_last_not_of(".,;:)\"'");
    const bool bare = first == std::string::npos || last == std::string::npos || last < first;
    const std::string core = Canonical(bare ? word : word.substr(first, last - first + 1));
    std::string kind = "text";
    if (designators.count(core) != 0) {
      kind = "designator";
    } else if (tubes.count(core) != 0) {
      kind = "tube";
    } else if (semiconductors.count(core) != 0) {
      kind = "semiconductor";
    }
    tokens.push_back({kind, word, {core}});
  }
  return tokens;
}

Sheet::Sheet(int width_px, int height_px)
    : width_(width_px), height_(height_px), surface_(std::make_unique<Surface>(width_px, height_px)) {}

Sheet::~Sheet() = default;

cairo_t* Sheet::cairo() const { return surface_->cairo; }

Box Sheet::Put(double x, double y, const Token& token, const TextStyle& style, int turn) {
  const Box box = DrawText(cairo(), x, y, token.text, style, turn);
  printed_.push_back({token.text, box, turn});
  for (const std::string& term : token.terms) {
    terms_.push_back({token.kind, term, box, turn});
  }
  return box;
}

Box Sheet::PutRow(double x, double y, const std::vector<Token>& row, const TextStyle& style) {
  Box whole;
  for (const Token& token : row) {
    whole = Union(whole, Put(x, y, token, style));
    x += TextAdvance(token.text + " ", style);
  }
  return whole;
}

Box Sheet::PutWords(double x, double y, const std::string& words, const TextStyle& style) {
  return PutRow(x, y, TermBook{}.Tokens(words), style);
}

Box Sheet::PutCentred(double x, double y, const std::string& words, const TextStyle& style) {
  const std::vector<Token> row = TermBook{}.Tokens(words);
  return PutRow(x - RowAdvance(row, style) / 2, y, row, style);
}

void Sheet::PutDots(double from, double to, double y, double step, const TextStyle& style) {
  const int dots = static_cast<int>(std::ceil((to - from) / step));
  for (int i = 0; i < dots; ++i) {
    Put(from + i * step, y, {"text", ".", {}}, style);
  }
}

void Sheet::Line(double x1, double y1, double x2, double y2, double width_px) {
  cairo_set_line_width(cairo(), width_px);
  cairo_move_to(cairo(), x1, y1);
  cairo_line_to(cairo(), x2, y2);
  cairo_stroke(cairo());
}

void Sheet::Rectangle(double x, double y, double width, double height, double line_px) {
  cairo_set_line_width(cairo(), line_px);
  cairo_rectangle(cairo(), x, y, width, height);
  cairo_stroke(cairo());
}

MadePage Sheet::Take(const std::string& kind, const std::string& printed_number) {
  MadePage page;
  page.kind = kind;
  page.printed_number = printed_number;
  page.terms = std::exchange(terms_, {});
  page.entries = std::exchange(entries_, {});
  page.printed = std::exchange(printed_, {});
  page.image = GreyImage(width_, height_);
  cairo_surface_flush(surface_->surface);
  const unsigned char* ink = cairo_image_surface_get_data(surface_->surface);
  const int stride = cairo_image_surface_get_stride(surface_->surface);
  for (int y = 0; y < height_; ++y, ink += stride) {
    std::uint8_t* row = page.image.row(y);
    for (int x = 0; x < width_; ++x) {
      row[x] = static_cast<std::uint8_t>(255 - ink[x]);
    }
  }
  surface_ = std::make_unique<Surface>(width_, height_);
  return page;
}

double RowAdvance(const std::vector<Token>& row, const TextStyle& style) {
  double advance = 0;
  for (const Token& token : row) {
    advance += TextAdvance(token.text + " ", style);
  }
  return row.empty() ? 0 : advance - TextAdvance(" ", style);
}

std::vector<std::vector<Token>> Wrapped(const std::vector<Token>& row, const TextStyle& style, double width_px) {
  std::vector<std::vector<Token>> lines(1);
  double used = 0;
  for (const Token& token : row) {
    const double advance = TextAdvance(token.text, style);
    if (!lines.back().empty() && used + advance > width_px) {
      lines.emplace_back();
      used = 0;
    }
    lines.back().push_back(token);
    used += advance + TextAdvance(" ", style);
  }
  return lines;
}

}  // namespace benchleaf::scanmaker

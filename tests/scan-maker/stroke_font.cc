#include "scan-maker/stroke_font.h"

#include <cctype>
#include <cstddef>
#include <fstream>
#include <stdexcept>

namespace benchleaf::scanmaker {
namespace {

// Every coordinate is a letter, its distance from 'R'. A capital reaches from 12 above the origin to 9 below it.
constexpr double kBaseline = 9;
constexpr double kCapHeight = 21;

int Coordinate(char letter) { return letter - 'R'; }

// "nnnnnvvvLRxyxyxy...": number, count of pairs, left and right bound, points; the pair " R" lifts the pen. The text
// of a glyph may run over several lines.
StrokeGlyph Parse(const std::string& pairs) {
  StrokeGlyph glyph;
  const double left = Coordinate(pairs[0]);
  glyph.advance = (Coordinate(pairs[1]) - left) / kCapHeight;
  glyph.strokes.emplace_back();
  for (std::size_t i = 2; i + 1 < pairs.size(); i += 2) {
    if (pairs[i] == ' ') {
      glyph.strokes.emplace_back();
    } else {
      glyph.strokes.back().push_back(
          {(Coordinate(pairs[i]) - left) / kCapHeight, (kBaseline - Coordinate(pairs[i + 1])) / kCapHeight});
    }
  }
  std::erase_if(glyph.strokes, [](const auto& stroke) { return stroke.empty(); });
  return glyph;
}

std::map<char32_t, StrokeGlyph> ReadFont(const std::string& name) {
  const std::string path = "/usr/share/hershey-fonts/" + name + ".jhf";
  std::ifstream file(path);
  if (!file) {
    throw std::runtime_error(path + " cannot be read: install hershey-fonts-data");
  }
  std::map<char32_t, StrokeGlyph> glyphs;
  char32_t code = U' ';
  for (std::string line; std::getline(file, line);) {
    if (line.size() < 10) {
      continue;
    }
    const std::size_t length = 2 * std::stoul(line.substr(5, 3));
    std::string pairs = line.substr(8);
    for (std::string more; pairs.size() < length && std::getline(file, more);) pairs += more;
    if (pairs.size() < length || length < 2) {
      throw std::runtime_error(path + " is cut short");
    }
    glyphs[code++] = Parse(pairs.substr(0, length));
  }
  if (glyphs.size() < 95) {
    throw std::runtime_error(path + " does not hold ASCII");
  }
  return glyphs;
}

}  // namespace

StrokeFont StrokeFont::Load(const std::string& name) {
  StrokeFont font;
  font.glyphs_ = ReadFont(name);
  const std::map<char32_t, StrokeGlyph> greek = ReadFont("greeks");
  // greeks.jhf puts the Greek alphabet in its own order on the Latin one: mu is the twelfth letter, omega the last.
  font.glyphs_[U'\u00B5'] = font.glyphs_[U'\u03BC'] = greek.at(U'l');
  font.glyphs_[U'\u2126'] = font.glyphs_[U'\u03A9'] = greek.at(U'X');
  return font;
}

const StrokeGlyph& StrokeFont::Glyph(char32_t code) const {
  const auto found = glyphs_.find(code);
  if (found != glyphs_.end()) {
    return found->second;
  }
  static const StrokeGlyph kNothing{16 / kCapHeight, {}};
  return kNothing;
}

}  // namespace benchleaf::scanmaker

#include "lineup/stage_titles.h"

#include "extract/pieces.h"

#include "benchleaf/linking/designator_beside.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <utility>

namespace benchleaf::lineup {
namespace {

// How far from its tube a stage's title may stand, in capital heights: titles stand in a row over the stages of a
// schematic. Common practice, no source.
constexpr double kReach = 14;
constexpr double kWordGap = 2;    // between the words of a title, in capital heights
constexpr double kLineGap = 1;    // between the lines of a title
constexpr double kRowReach = 60;  // how far behind the type a row of a table of tubes goes on
constexpr std::size_t kShortWord = 3;
constexpr double kSureShortWord = 0.5;

using Pieces = std::vector<extract::Piece>;

// Words side by side and one under another, as a title of two or three lines has them.
std::vector<Pieces> Blocks(const std::vector<extract::Line>& lines, double cap) {
  struct Block {
    Pieces pieces;
    Box last_line;
  };
  std::vector<Block> blocks;
  for (const extract::Line& line : lines) {
    for (std::size_t from = 0; from < line.pieces.size();) {
      std::size_t end = from + 1;
      Box box = line.pieces[from].box;
      while (end < line.pieces.size() && extract::Gap(line.pieces[end - 1], line.pieces[end]) < kWordGap * cap) {
        box = Union(box, line.pieces[end++].box);
      }
      const auto above = std::find_if(blocks.begin(), blocks.end(), [&](const Block& block) {
        return box.y >= block.last_line.center_y() && box.y - block.last_line.bottom() < kLineGap * cap &&
               std::min(box.right(), block.last_line.right()) > std::max(box.x, block.last_line.x);
      });
      Block& block = above == blocks.end() ? blocks.emplace_back() : *above;
      block.pieces.insert(block.pieces.end(), line.pieces.begin() + static_cast<std::ptrdiff_t>(from),
                          line.pieces.begin() + static_cast<std::ptrdiff_t>(end));
      block.last_line = box;
      from = end;
    }
  }
  std::vector<Pieces> result;
  result.reserve(blocks.size());
  for (Block& block : blocks) result.push_back(std::move(block.pieces));
  return result;
}

// The functions that the pieces name, without their tubes.
std::vector<std::pair<StageTitle, Box>> TitlesIn(const Pieces& pieces, const TubeFunctions& functions) {
  std::vector<std::string> words;
  std::vector<std::size_t> piece_of;  // by word
  for (std::size_t i = 0; i < pieces.size(); ++i) {
    for (std::string& word : FunctionWords(pieces[i].text)) {
      words.push_back(std::move(word));
      piece_of.push_back(i);
    }
  }
  std::vector<std::pair<StageTitle, Box>> titles;
  for (const FunctionFound& found : functions.Find(words)) {
    StageTitle title;
    title.function = found.function;
    title.confidence = 1;
    Box box;
    for (std::size_t i = piece_of[found.first]; i <= piece_of[found.first + found.count - 1]; ++i) {
      title.read += (title.read.empty() ? "" : " ") + pieces[i].read;
      title.confidence = std::min(title.confidence, pieces[i].confidence);
      box = Union(box, pieces[i].box);
    }
    // Scraps of a drawing are read as IF and RF too.
    const bool short_word = found.count == 1 && words[found.first].size() <= kShortWord;
    if (!short_word || title.confidence >= kSureShortWord) titles.emplace_back(std::move(title), box);
  }
  return titles;
}

double Distance(const Box& a, const Box& b) {
  const double dx = std::max({0, a.x - b.right(), b.x - a.right()});
  const double dy = std::max({0, a.y - b.bottom(), b.y - a.bottom()});
  return std::hypot(dx, dy);
}

bool IsDrawing(PageKind kind) {
  return kind == PageKind::kSchematic || kind == PageKind::kTubeLayout || kind == PageKind::kPartsLocator ||
         kind == PageKind::kBlockDiagram;
}

void AddTitlesOfDrawing(const PageRecord& page, const TubeFunctions& functions, std::vector<StageTitle>& titles) {
  const double cap = extract::CapHeight(page.reading);
  for (const Pieces& block : Blocks(extract::UprightLines(page.reading), cap)) {
    for (auto& [title, box] : TitlesIn(block, functions)) {
      double nearest = kReach * cap;
      for (const Sighting& sighting : page.sightings) {
        if (sighting.kind != TermKind::kDesignator || !NamesTube(sighting.text)) continue;
        const double distance = Distance(box, ToLevel(page.reading.frame, sighting.box));
        if (distance < nearest) {
          nearest = distance;
          title.designator = WithAssembly(sighting.assembly, sighting.text);
        }
      }
      if (title.designator.empty()) continue;
      title.box = ToScan(page.reading.frame, box);
      titles.push_back(std::move(title));
    }
  }
}

// "V2  6BA6  I.F. amplifier": what stands behind the type, up to the next type of the line.
void AddTitlesOfRows(const PageRecord& page, const TubeFunctions& functions, std::vector<StageTitle>& titles) {
  const double cap = extract::CapHeight(page.reading);
  const std::vector<extract::Line> lines = extract::UprightLines(page.reading);
  const TubeDesignators designators(page.entries, page.sightings, page.reading.frame);
  std::vector<std::pair<Box, std::string>> types;
  for (const Sighting& sighting : page.sightings) {
    if (sighting.kind != TermKind::kTube) continue;
    std::string designator = designators.Beside(sighting);
    types.emplace_back(ToLevel(page.reading.frame, sighting.box),
                       NamesTube(designator) ? std::move(designator) : std::string());
  }
  for (const auto& [type, designator] : types) {
    if (designator.empty()) continue;
    for (const extract::Line& line : lines) {
      Pieces behind;
      for (const extract::Piece& piece : line.pieces) {
        const bool in_row = std::abs(piece.box.center_y() - type.center_y()) < 0.7 * cap;
        const bool is_type = std::any_of(types.begin(), types.end(),
                                         [&](const auto& one) { return OverlapOfSmaller(one.first, piece.box) > 0.5; });
        if (!in_row || piece.box.x < type.right() || piece.box.x > type.right() + kRowReach * cap) continue;
        if (is_type) break;
        behind.push_back(piece);
      }
      for (auto& [title, box] : TitlesIn(behind, functions)) {
        title.designator = designator;
        title.box = ToScan(page.reading.frame, box);
        titles.push_back(std::move(title));
      }
    }
  }
}

}  // namespace

std::vector<StageTitle> StageTitlesOf(const PageRecord& page, const TubeFunctions& functions) {
  std::vector<StageTitle> titles;
  if (IsDrawing(page.facts.kind)) {
    AddTitlesOfDrawing(page, functions, titles);
  } else if (page.facts.kind != PageKind::kPartsList) {
    AddTitlesOfRows(page, functions, titles);
  }
  return titles;
}

}  // namespace benchleaf::lineup

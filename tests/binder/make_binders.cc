// Writes what the browser tests open: OUT/binder, a binder of a plain and a hostile set with drawn pages, and
// OUT/many.js, the search index of 500 sets.

#include "binder/find_index.h"
#include "binder/sample_book.h"

#include "benchleaf/binder/write_binder.h"
#include "benchleaf/gaps/find_gaps.h"
#include "benchleaf/report/picture.h"

#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <string>
#include <utility>
#include <vector>

namespace benchleaf::binder {
namespace {

namespace fs = std::filesystem;

template <class T>
T Need(Result<T> result) {
  if (result) {
    if constexpr (!std::is_void_v<T>) return std::move(*result);
    if constexpr (std::is_void_v<T>) return;
  }
  std::fprintf(stderr, "%s\n", result.error().ToString().c_str());
  std::exit(1);
}

// A white page with a grey bar where each spot is, so that a ring can be told from an empty page.
ColorImage Drawn(const BookPage& page) {
  ColorImage image;
  image.width = 1650;
  image.height = 1275;
  image.pixels.assign(std::size_t{1650} * 1275 * 3, 245);
  for (const Spot& spot : page.spots) {
    const Box box = PixelBox(image.width, image.height, spot.box);
    for (int y = box.y; y < box.bottom(); ++y) {
      for (int x = box.x * 3; x < box.right() * 3; ++x) {
        image.pixels[static_cast<std::size_t>(y) * 1650 * 3 + static_cast<std::size_t>(x)] = 90;
      }
    }
  }
  return image;
}

struct Tables {
  std::shared_ptr<const Rules> rules;
  TubeTable tubes;
  TubeFunctions functions;
};

Book BookOf(int number, const ManualRecord& manual, const Tables& tables) {
  std::vector<ManualLineup> lineups;
  lineups.push_back(LineUp(manual, tables.tubes, tables.functions));
  return MakeBook(number, {manual}, std::move(lineups), {FindGaps(manual, *tables.rules)});
}

void WriteSmall(const fs::path& out, const fs::path& config, const Tables& tables) {
  const auto writer = Need(BinderWriter::Begin(out, config / "binder"));
  int number = 0;
  ManualRecord no_drawing = SampleManual("BRACKENFORD T7", "t7.png");
  no_drawing.pages.erase(no_drawing.pages.begin());
  no_drawing.links.clear();
  for (const ManualRecord& manual : {SampleManual(), HostileManual(), no_drawing, ItemsManual()}) {
    const Book book = BookOf(++number, manual, tables);
    std::vector<PagePicture> pictures;
    for (std::size_t i = 0; i < book.pages.size(); ++i) {
      const PageFiles files = Need(PicturePage(Drawn(book.pages[i]), 0, 1650));
      Need(writer->AddPicture(book, i, "", files));
      pictures.push_back(files.size);
    }
    Need(writer->AddSet(book, pictures));
  }
  Need(writer->Finish(tables.tubes, *tables.rules));
}

// 500 sets of 150 parts each, as many as a television's list has.
void WriteMany(const fs::path& file, const Tables& tables) {
  FindIndex index;
  TubeFiles tubes;
  for (int set = 1; set <= 500; ++set) {
    ManualRecord manual = SampleManual("MAKER " + std::to_string(set % 40) + " MODEL " + std::to_string(set));
    for (int part = 1; part <= 150; ++part) {
      const double y = 0.31 + part * 0.004;
      Entry entry = ListedPart((part % 2 == 0 ? "C" : "R") + std::to_string(part),
                               part % 2 == 0 ? "Capacitor, paper, 400 V" : "Resistor, carbon, 1/2 W, 10%", y);
      entry.part_number = std::to_string(set) + "-" + std::to_string(part * 37);
      manual.pages[1].entries.push_back(entry);
    }
    const Book book = BookOf(set, manual, tables);
    TubeUses uses;
    AddTubeUses(book, uses);
    index.Add(book, uses, tubes);
  }
  std::ofstream(file) << index.Script(*tables.rules);
}

int Make(const fs::path& config, const fs::path& out) {
  auto rules = Need(Rules::Load(config));
  auto functions = Need(TubeFunctions::Load({config / "tube-functions.tsv"}, rules));
  const Tables tables{rules, Need(TubeTable::Load({config / "tubes.tsv"})), std::move(functions)};
  fs::remove_all(out / "binder");
  fs::create_directories(out);
  WriteSmall(out / "binder", config, tables);
  WriteMany(out / "many.js", tables);
  return 0;
}

}  // namespace
}  // namespace benchleaf::binder

int main(int argc, char** argv) {
  if (argc != 3) {
    std::fprintf(stderr, "usage: make_binders CONFIG OUT\n");
    return 1;
  }
  return benchleaf::binder::Make(argv[1], argv[2]);
}

#include "scan-maker/made_page.h"

namespace benchleaf::scanmaker {
namespace {

Box TurnedBox(const Box& box, int degrees, int width, int height) {
  switch (degrees) {
    case 90:
      return {height - box.bottom(), box.x, box.height, box.width};
    case 180:
      return {width - box.right(), height - box.bottom(), box.width, box.height};
    case 270:
      return {box.y, width - box.right(), box.height, box.width};
    default:
      return box;
  }
}

}  // namespace

MadePage Laid(const MadePage& page, int degrees) {
  MadePage laid = page;
  laid.image = Turned(page.image, degrees);
  for (MadeTerm& term : laid.terms) {
    term.box = TurnedBox(term.box, degrees, page.image.width, page.image.height);
    term.turn = (term.turn + degrees) % 360;
  }
  for (PrintedText& text : laid.printed) {
    text.box = TurnedBox(text.box, degrees, page.image.width, page.image.height);
    text.turn = (text.turn + degrees) % 360;
  }
  for (MadeEntry& entry : laid.entries) {
    entry.box = TurnedBox(entry.box, degrees, page.image.width, page.image.height);
  }
  return laid;
}

ScannedPage DegradeMade(const MadePage& page, Grade grade, std::uint64_t seed, const ScanChanges& changes) {
  DegradedPage degraded = Degrade(page.image, grade, seed, changes);
  ScannedPage scanned;
  scanned.truth.kind = page.kind;
  scanned.truth.printed_number = page.printed_number;
  for (const MadeTerm& term : page.terms) {
    scanned.truth.terms.push_back({term.kind, term.text, degraded.Map(term.box), term.turn});
  }
  for (const MadeEntry& entry : page.entries) {
    scanned.truth.entries.push_back({entry.designator, entry.assembly, entry.description, entry.part_number,
                                     entry.value, degraded.Map(entry.box), entry.item});
  }
  scanned.dpi = degraded.dpi;
  scanned.image = std::move(degraded.image);
  return scanned;
}

}  // namespace benchleaf::scanmaker

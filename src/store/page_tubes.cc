#include "store/page_tubes.h"

#include "store/fields.h"

#include "benchleaf/core/utf8.h"
#include "benchleaf/linking/designator_beside.h"

#include <limits>
#include <optional>

namespace benchleaf::store {

namespace {

std::string_view MustBeUtf8(std::string_view text) {
  if (!IsUtf8(text)) ThrowDamaged();
  return text;
}

}  // namespace

std::string EncodePageTubes(std::string_view page_data, const PageFrame& frame) {
  const StoredPage stored = ParsePage(page_data, WithEntries::kYes);
  std::vector<Sighting> designators;
  std::vector<const StoredSighting*> tubes;
  for (const StoredSighting& sighting : stored.sightings) {
    if (sighting.kind == TermKind::kDesignator) designators.push_back(sighting.Decode());
    if (sighting.kind == TermKind::kTube) tubes.push_back(&sighting);
  }
  const TubeDesignators beside(stored.page.entries, designators, frame);

  FieldWriter fields;
  fields.Text(stored.set);
  fields.Text(stored.manual);
  fields.Text(stored.page.file);
  fields.Number(static_cast<std::uint64_t>(stored.page.page));
  fields.Text(Name(stored.page.facts.kind));
  fields.Text(stored.page.facts.printed_number);
  fields.Number(tubes.size());
  for (const StoredSighting* tube : tubes) {
    fields.Text(tube->fields);
    fields.Text(beside.Beside(tube->Decode()));
  }
  return fields.Take();
}

PageTubes ParsePageTubes(std::string_view value) {
  FieldReader fields(value);
  PageTubes page;
  page.place.set = fields.Text();
  page.place.manual = fields.Text();
  page.place.file = fields.Text();
  page.place.page = static_cast<int>(fields.Number(std::numeric_limits<int>::max()));
  const std::optional<PageKind> kind = PageKindNamed(fields.Text());
  if (!kind || page.place.page < 1) ThrowDamaged();
  page.place.kind = *kind;
  page.place.printed_number = MustBeUtf8(fields.Text());
  page.tubes.resize(fields.Count());
  for (PageTube& tube : page.tubes) {
    FieldReader sighting(fields.Text());
    tube.sighting = ParseSighting(sighting);
    if (tube.sighting.kind != TermKind::kTube || !sighting.left().empty()) ThrowDamaged();
    tube.designator = MustBeUtf8(fields.Text());
  }
  return page;
}

}  // namespace benchleaf::store

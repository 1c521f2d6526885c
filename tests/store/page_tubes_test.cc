#include "store/page_tubes.h"

#include "record/damaged_bytes.h"
#include "store/schema.h"
#include "store/test_index.h"

#include "benchleaf/linking/designator_beside.h"

#include <gmock/gmock.h>

#include <array>
#include <map>
#include <random>
#include <tuple>

namespace benchleaf::store {
namespace {

using PageTubesTest = IndexTest;
using testing::UnorderedElementsAreArray;

constexpr std::array<const char*, 5> kTypes = {"6CB6", "6CB6A", "12AX7", "12AX7A/ECC83", "6AU6"};

// Boxes finer than the index keeps them, confidences too, so that a value made from what is not yet stored would
// differ.
PageRecord MadePage(std::mt19937& random, int number) {
  std::uniform_real_distribution<double> share(0, 1);
  PageRecord page = MakePage("made.pdf", number, PageKind::kSchematic);
  page.facts.printed_number = std::to_string(random() % 9);
  for (auto left = random() % 12; left > 0; --left) {
    const bool tube = random() % 2 == 0;
    Sighting& sighting = page.sightings.emplace_back(
        tube ? MakeSighting(TermKind::kTube, kTypes[random() % kTypes.size()], share(random))
             : MakeSighting(TermKind::kDesignator, (random() % 4 == 0 ? "C" : "V") + std::to_string(random() % 20)));
    sighting.box = {0.9 * share(random), 0.9 * share(random), 0.05 * share(random), 0.05 * share(random)};
    if (random() % 3 == 0) sighting.assembly = "A4";
    if (random() % 5 == 0) sighting.read = "6C\xF0 6";  // no UTF-8
  }
  for (auto left = random() % 3; left > 0; --left) {
    Entry& entry = page.entries.emplace_back();
    entry.designator = "V" + std::to_string(20 + random() % 5);
    entry.box = {0.1, 0.9 * share(random), 0.8, 0.1};
  }
  return page;
}

ManualRecord MadeManual(std::mt19937& random, const std::string& set) {
  ManualRecord manual;
  manual.set = set;
  manual.manual = "service";
  for (int i = 1; i <= 8; ++i) {
    manual.pages.push_back(MadePage(random, i));
    manual.pages.back().file = set + "/made.pdf";
  }
  return manual;
}

// All that is told of one tube.
using Told = std::tuple<std::string, std::string, std::string, int, PageKind, std::string, std::string, std::string,
                        std::string, double, double, double, double, int, double, std::string>;

Told Tell(const PagePlace& place, const Sighting& tube, const std::string& designator) {
  return {place.set,       place.manual, place.file,      place.page,   place.kind, place.printed_number,
          designator,      tube.text,    tube.read,       tube.box.x,   tube.box.y, tube.box.width,
          tube.box.height, tube.turn,    tube.confidence, tube.assembly};
}

TEST_F(PageTubesTest, TellWhatThePagesTell) {
  std::mt19937 random(7);  // NOLINT(cert-msc32-c,cert-msc51-cpp): the same every time
  Store(MadeManual(random, "A"), MadeManual(random, "B"), MakeManual());
  const auto reader = Reader();
  std::map<std::string, std::vector<Told>> of_pages;
  ASSERT_TRUE(reader->ForEachManual([&](const ManualRecord& manual) {
    for (const PageRecord& page : manual.pages) {
      const TubeDesignators designators(page.entries, page.sightings, page.reading.frame);
      for (const Sighting& sighting : page.sightings) {
        if (sighting.kind != TermKind::kTube) continue;
        const PagePlace place = {manual.set, manual.manual,   page.file,
                                 page.page,  page.facts.kind, page.facts.printed_number};
        of_pages[sighting.text].push_back(Tell(place, sighting, designators.Beside(sighting)));
      }
    }
    return true;
  }));
  std::size_t with_designator = 0;
  for (const char* type : kTypes) {
    std::vector<Told> told;
    const std::vector<FoundTube> found = reader->Tube(type).value();
    for (const FoundTube& tube : found) {
      if (!tube.designator.empty()) ++with_designator;
      if (tube.found.match == Match::kExact)
        told.push_back(Tell(tube.found.place, tube.found.sighting, tube.designator));
    }
    EXPECT_THAT(told, UnorderedElementsAreArray(of_pages[type])) << type;
  }
  EXPECT_GT(with_designator, 10U) << "pages that show something";
}

TEST_F(PageTubesTest, FollowThePagesMeasuresToo) {
  ManualRecord manual = MakeManual();
  manual.pages[0].sightings = {MakeSighting(TermKind::kTube, "6CB6", 0.9, 0.3),
                               MakeSighting(TermKind::kDesignator, "V3", 0.9, 0.32)};
  manual.links.clear();
  Store(manual);
  EXPECT_EQ(Reader()->Tube("6CB6").value().at(0).designator, "V3");
  manual.pages[0].reading.frame.scan_width = 0;
  manual.pages[0].reading.frame.scan_height = 0;
  Store(manual);
  EXPECT_EQ(Reader()->Tube("6CB6").value().at(0).designator, "") << "the page's own document is the same as before";
}

TEST_F(PageTubesTest, StandBesidePagesThatNameATubeAlone) {
  Store(MakeManual());
  const Xapian::Database database(folder().string());
  EXPECT_EQ(database.get_value_freq(kTubesSlot), 1U);
}

class StoredTubes : public IndexTest {
 protected:
  StoredTubes() { Store(MakeManual()); }

  // The value of the page that names 6CB6A.
  std::string Value() const {
    const Xapian::Database database(folder().string());
    return *database.valuestream_begin(kTubesSlot);
  }

  void Put(const std::string& value) const {
    Xapian::WritableDatabase database(folder().string());
    const Xapian::docid id = database.valuestream_begin(kTubesSlot).get_docid();
    Xapian::Document document = database.get_document(id);
    document.add_value(kTubesSlot, value);
    database.replace_document(id, document);
  }

  static std::string Exchanged(std::string value, const std::string& from, const std::string& to) {
    return value.replace(value.rfind(from), from.size(), to);
  }
};

TEST_F(StoredTubes, ComeBackAsTheyWere) {
  const std::string value = Value();
  const PageTubes page = ParsePageTubes(value);
  EXPECT_EQ(page.place.set, "MEADOWLARK 5R1");
  EXPECT_EQ(page.place.printed_number, "8-17");
  ASSERT_EQ(page.tubes.size(), 1U);
  EXPECT_EQ(page.tubes[0].sighting.text, "6CB6A");
  EXPECT_EQ(page.tubes[0].sighting.Decode(), MakeManual().pages[0].sightings[1]);
  EXPECT_EQ(page.tubes[0].designator, "");
}

TEST_F(StoredTubes, AreRefusedCut) {
  const std::string value = Value();
  for (std::size_t size = 0; size < value.size(); ++size) {
    EXPECT_THROW(ParsePageTubes(std::string_view(value).substr(0, size)), Xapian::DatabaseCorruptError) << size;
  }
}

TEST_F(StoredTubes, MayBeAnyBytes) {
  std::mt19937 random(1);  // NOLINT(cert-msc32-c,cert-msc51-cpp): the same every time
  const std::string value = Value();
  for (int i = 0; i < 20000; ++i) {
    const std::string damaged = Damaged(value, random);
    try {
      for (const PageTube& tube : ParsePageTubes(damaged).tubes) tube.sighting.Decode();
    } catch (const Xapian::DatabaseCorruptError&) {
      // as page_tubes.h says
    }
  }
}

TEST_F(StoredTubes, ThatAreDamagedAreNamedSo) {
  const std::string value = Value();
  EXPECT_EQ(Reader()->Tube("6CB6").value().size(), 1U);
  // Cut, not UTF-8, of no kind, and none at all, the last.
  for (const std::string& damaged : {value.substr(0, value.size() / 2), Exchanged(value, "8-17", "8-1\xF0"),
                                     Exchanged(value, "schematic", "Schematic"), std::string()}) {
    Put(damaged);
    EXPECT_EQ(Reader()->Tube("6CB6").error().code, ErrorCode::kDamaged) << testing::PrintToString(damaged);
  }
}

}  // namespace
}  // namespace benchleaf::store

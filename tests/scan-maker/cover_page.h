// The cover of a manual: names, and a pen drawing of the set.

#ifndef BENCHLEAF_TESTS_SCAN_MAKER_COVER_PAGE_H_
#define BENCHLEAF_TESTS_SCAN_MAKER_COVER_PAGE_H_

#include "scan-maker/made_page.h"
#include "scan-maker/page_furniture.h"

#include <string>

namespace benchleaf::scanmaker {

enum class Cabinet { kTableRadio, kTelevision, kOscilloscope, kAmplifier };

struct Cover {
  std::string maker;   // "LARKFIELD"
  std::string model;   // "MODEL 512"
  std::string title;   // "SERVICE MANUAL"
  std::string volume;  // "VOLUME 1"; empty for none
  std::string line;    // what the set is: "FIVE TUBE AC-DC RECEIVER"
  Cabinet cabinet = Cabinet::kTableRadio;
};

MadePage MakeCoverPage(const Cover& cover, const PageFurniture& furniture);

}  // namespace benchleaf::scanmaker

#endif  // BENCHLEAF_TESTS_SCAN_MAKER_COVER_PAGE_H_

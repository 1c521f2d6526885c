#include "benchleaf/record/manual_record.h"

namespace benchleaf {

std::string ContentKey(const std::string& file_hash, int page, const std::string& fingerprint) {
  return file_hash + ":" + std::to_string(page) + ":" + fingerprint;
}

bool LinksFit(const ManualRecord& manual) {
  for (const Link& link : manual.links) {
    const bool pages_fit = link.entry_page < manual.pages.size() && link.seen_page < manual.pages.size();
    if (!pages_fit || link.entry >= manual.pages[link.entry_page].entries.size() ||
        link.sighting >= manual.pages[link.seen_page].sightings.size()) {
      return false;
    }
  }
  return true;
}

}  // namespace benchleaf

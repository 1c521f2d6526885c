// From the words of a page to the terms on it and the rows of its parts list. Pure: no pictures, no reader.

#ifndef BENCHLEAF_EXTRACT_EXTRACT_H_
#define BENCHLEAF_EXTRACT_EXTRACT_H_

#include "benchleaf/extract/rules.h"
#include "benchleaf/extract/sighting.h"
#include "benchleaf/reading/page_reading.h"

#include <memory>
#include <string>
#include <vector>

namespace benchleaf {

namespace extract {
struct ListPageRow;
}

// A page looked at as a parts list, under no heading of a page before it: what the page's kind, its sightings and its
// entries are all told by. Made once, since it takes longer than all the rest.
struct PageRows {
  std::shared_ptr<const std::vector<extract::ListPageRow>> rows;  // never null; empty for a page that holds no list
  std::string assembly;                                           // the heading that is in force behind them
};
PageRows ReadRows(const PageReading& reading, const Rules& rules);

// Every designator, tube type, part number, semiconductor type and value on the page, in reading order. Repairs only
// look-alikes that cannot be anything else (Ri7 is R17). Sightings inside parts-list rows are given too.
// `rows` are what ReadRows gives of the same page.
std::vector<Sighting> ExtractSightings(const PageReading& reading, const PageRows& rows, const Rules& rules);
std::vector<Sighting> ExtractSightings(const PageReading& reading, const Rules& rules);

// What a parts list carries from page to page: the assembly heading that is still in force.
struct ListState {
  std::string assembly;
};

// The rows of a parts-list page, top to bottom, column after column. `state` comes from the page before and is
// brought up to date for the next one.
std::vector<Entry> ExtractEntries(const PageReading& reading, const PageRows& rows, const Rules& rules,
                                  ListState& state);
std::vector<Entry> ExtractEntries(const PageReading& reading, const Rules& rules, ListState& state);

// The forms under which a designator is looked up: "A4C12" also as "C12"; "C1A" also as "C1".
std::vector<std::string> DesignatorForms(const std::string& canonical);

// The forms under which a tube type is looked up: "6CB6A" also as "6CB6"; "12AX7A/ECC83" also as "12AX7A", "12AX7"
// and "ECC83". The type itself comes first.
std::vector<std::string> TubeForms(const std::string& canonical);

// The text with every character that scans confuse folded to one of its class (O, Q and D to 0; I, L and | to 1; ...),
// upper case, so that texts that look alike compare equal. Classes come from config/look-alikes.tsv.
std::string FoldLookAlikes(const std::string& text, const Rules& rules);

}  // namespace benchleaf

#endif  // BENCHLEAF_EXTRACT_EXTRACT_H_

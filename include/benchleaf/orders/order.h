// Which parts of a set to order anew, in values and ratings that are made today.

#ifndef BENCHLEAF_ORDERS_ORDER_H_
#define BENCHLEAF_ORDERS_ORDER_H_

#include "benchleaf/orders/old_rating.h"
#include "benchleaf/orders/part_kinds.h"
#include "benchleaf/store/index_reader.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace benchleaf {

// A part of a parts list that is to be replaced, or one section of a can.
struct OldPart {
  PagePlace place;         // of the list's row
  FractionBox box;         // of the row, on the page as scanned
  std::string designator;  // with its assembly; empty where the list gives none
  std::string item;        // its number, where the list gives that instead
  int section = 0;         // of its can, counted from 1; 0 for a part of its own
  int sections = 0;        // of the can
  std::string was;         // value and rating as understood: "0.05 uF 600 V"
  std::string row;         // description as read
  std::string part_number;
  double confidence = 0;            // 0 to 1, of the reading of the row
  bool kind_by_value = false;       // of a capacitor whose kind the list does not say
  std::optional<LinePlace> line;    // at the line, where the row says so
  std::vector<std::string> doubts;  // about the reading: look at the page
};

// What to order.
struct NewPart {
  PartKind kind = PartKind::kPaper;  // that is replaced
  std::string what;                  // "electrolytic capacitor", "film capacitor", "silicon diode"
  std::string value;                 // "0.047 uF"; empty for diodes
  std::string code;                  // the same by IEC 60062: "47n"
  std::string rating;                // "630 V", "1 W"; empty where the list gives none to go by
  std::string note;                  // what to think of when ordering it
  double size = 0;                   // farads or ohms, for the order of items

  friend bool operator==(const NewPart&, const NewPart&) = default;
};

struct OrderItem {
  NewPart part;
  int count = 0;
  std::vector<OldPart> replaces;  // in the order of the list
};

// A row whose kind or value is not understood.
struct UnreadPart {
  OldPart part;
  std::string why;
};

struct Order {
  std::vector<OrderItem> items;       // by kind, then value, then rating
  std::vector<UnreadPart> unread;     // nothing is lost: to be looked up on the page
  std::map<PartKind, int> left;       // rows of kinds that were not asked for
  std::vector<std::string> cautions;  // that belong to what is ordered
};

// What else is known against the reading of a part's row, by designator with its assembly: ".65MFD in the list, .05MFD
// beside the symbol".
using KnownDoubts = std::map<std::string, std::vector<std::string>>;

// Kinds that age: electrolytic, paper, selenium.
const std::vector<PartKind>& AgeingKinds();

// The order for the kinds, from a set's parts lists. A part that two lists or pages name alike is ordered once.
//
// Values. Electrolytics: the smallest E6 value that is not more than a tenth below the old one, since their tolerance
// reached far above the mark. Paper and film: the nearest E6 value where it is within a tenth, else the nearest of E12.
// Mica and ceramic, and resistors: the nearest of E24. Series: IEC 60063; the choice among them is common practice, no
// source. Volts and watts: the next standard rating up. A part whose row speaks of the line is ordered in any case, as
// safety-rated (IEC 60384-14). A value that was never usual is ordered with a doubt: it was probably misread.
Order MakeOrder(const std::vector<FoundEntry>& parts, const std::vector<PartKind>& kinds, const PartWords& words,
                const KnownDoubts& known = {});

}  // namespace benchleaf

#endif  // BENCHLEAF_ORDERS_ORDER_H_

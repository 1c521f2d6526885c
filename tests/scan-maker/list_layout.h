// How a parts list is laid out: each member is a trait that lists of 1958 to 1985 have, to be tried by itself.

#ifndef BENCHLEAF_TESTS_SCAN_MAKER_LIST_LAYOUT_H_
#define BENCHLEAF_TESTS_SCAN_MAKER_LIST_LAYOUT_H_

namespace benchleaf::scanmaker {

enum class ListForm {
  kColumns,         // designator, description, part number
  kLeaders,         // the same with dotted leaders between
  kRuled,           // the same in a ruled table
  kDesignatorLast,  // part number, description, designator
  kNumberFirst,     // part number, designator, description
  kNumberSecond,    // designator, part number, description
  kItems,           // item number, part number, description; no designators
};

enum class Grouping {
  kNone,     // a row for each part
  kDashes,   // like parts in one row: R1-R4; C12,14,17
  kThrough,  // R1 thru R4; C12,14,17
  kCommas,   // R1,2,3,4; C12,14,17
  kTildes,   // R1~4; C12,14,17
};

enum class Wording {
  kFull,    // Resistor, 470K, 1/2 W, 10%
  kTerse,   // 470K, 1/2 W, 10%: what the heading says is not said again
  kDittos,  // signs of repetition below a class name and a part number that are those of the row above
  kSameAs,  // "Same as R4", and no part number, where an earlier row has the same part
};

enum class NumberForm {
  kUsual,
  kSpaced,          // 4822 124 20391
  kLikeDesignators  // R12-1034
};

struct ListLayout {
  ListForm form = ListForm::kColumns;
  int abreast = 1;  // tables beside each other on a page, 1 or 2
  Grouping grouping = Grouping::kNone;
  bool quantity = false;         // a column of quantities
  bool class_headings = true;    // "CAPACITORS" over the capacitors
  double description_share = 1;  // of the usual width of descriptions; less makes more continuation lines
  bool boxed = false;            // lines round every cell, in forms other than kRuled too
  bool class_tables = false;     // every class in a ruled table of its own with title and titles of columns
  int makers = 0;                // columns of other makers' numbers behind the part number; some cells stay empty
  Wording wording = Wording::kFull;
  NumberForm numbers = NumberForm::kUsual;
  bool lettered_sections = false;   // C1A, and below it B and C alone
  bool spaced_designators = false;  // R 1 2
  bool sockets = false;             // XV1 below V1
  bool unused = false;              // "Not used" at the end of a class
  bool units = false;               // headings UNIT 1, UNIT 2 instead of ASSEMBLY A1, A2
  bool tubes_first = false;         // before the other classes
  bool text_above = false;          // specifications over the tables
  bool hardware_second = false;     // the second of two tables abreast lists parts without designators

  bool ruled() const { return form == ListForm::kRuled || boxed || class_tables; }
};

}  // namespace benchleaf::scanmaker

#endif  // BENCHLEAF_TESTS_SCAN_MAKER_LIST_LAYOUT_H_

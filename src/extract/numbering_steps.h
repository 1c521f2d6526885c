// How the designators of a parts list follow each other, learned from the list itself.

#ifndef BENCHLEAF_SRC_EXTRACT_NUMBERING_STEPS_H_
#define BENCHLEAF_SRC_EXTRACT_NUMBERING_STEPS_H_

#include "extract/designator.h"

#include <map>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace benchleaf::extract {

// A designator at a row's beginning, and the assembly that is in force there: views of what others keep.
struct RowName {
  std::string_view assembly;
  const Designator& designator;
};

// A name with what is asked of it in every step to or from it.
struct StepEnd {
  RowName name;
  int number = 0;
  // Natural logarithms of how likely it begins the rows of its class behind another class, but for how often the class
  // changes, and those of its assembly.
  double begins_class = 0;
  double begins_assembly = 0;
};

class NumberingSteps {
 public:
  // `pairs` are rows that follow each other and were surely read.
  explicit NumberingSteps(const std::vector<std::pair<RowName, RowName>>& pairs);

  StepEnd EndAt(const RowName& name) const;

  // Natural logarithm of how likely a row with `below` follows on one with `above`.
  double Likeliness(const StepEnd& above, const StepEnd& below) const;

 private:
  double WithinClass(const StepEnd& above, const StepEnd& below) const;
  double ToOtherClass(const StepEnd& above, const StepEnd& below) const;

  double LogOfShare(const std::string& letters) const;

  // Natural logarithms of chances.
  double next_ = 0;                                // that the number is the next one, within a class
  double back_ = 0;                                // that it is a lower one
  double ahead_ = 0;                               // that it is a higher one
  double other_class_ = 0;                         // that the class changes
  double same_class_ = 0;                          // that it does not
  std::map<std::string, double> log_class_share_;  // of the rows that have it
};

}  // namespace benchleaf::extract

#endif  // BENCHLEAF_SRC_EXTRACT_NUMBERING_STEPS_H_

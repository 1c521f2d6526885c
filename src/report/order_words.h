// How answers name parts to replace: the same in every form of the report.

#ifndef BENCHLEAF_SRC_REPORT_ORDER_WORDS_H_
#define BENCHLEAF_SRC_REPORT_ORDER_WORDS_H_

#include "benchleaf/orders/order.h"

#include <string>
#include <vector>

namespace benchleaf {

// "C46", "C46 section 2 of 3", "row without a designator".
std::string OldPartWords(const OldPart& part);

// Why a part is to be looked up on its page; empty when it need not be.
std::vector<std::string> ChecksOf(const OldPart& part);

// Each text once, in their order.
std::vector<std::string> Distinct(const std::vector<std::string>& texts);

// What the parts of an item were, and where their rows stand, each once.
std::vector<std::string> OldValues(const OrderItem& item);
std::vector<std::string> ListPages(const OrderItem& item);

// Of the part that was read least surely.
double LeastConfidence(const OrderItem& item);

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_REPORT_ORDER_WORDS_H_

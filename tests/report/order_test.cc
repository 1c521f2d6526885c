#include "benchleaf/report/order.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace benchleaf {
namespace {

using ::testing::HasSubstr;
using ::testing::Not;

OldPart Part(const std::string& designator, int section, const std::string& was) {
  OldPart part;
  part.place = {"QUILLHAVEN 12", "m", "m.pdf", 7, PageKind::kPartsList, "8-3"};
  part.box = {0.1, 0.1, 0.2, 0.01};
  part.designator = designator;
  part.section = section;
  part.sections = section > 0 ? 2 : 1;
  part.was = was;
  part.row = "ELECT., 40-20 MFD";
  part.confidence = 0.9;
  return part;
}

TEST(OrderText, ShowsARowToLookUpOnce) {
  Order order;
  for (int section = 1; section <= 2; ++section) {
    OrderItem& item = order.items.emplace_back();
    item.part.what = "electrolytic capacitor";
    item.count = 1;
    item.replaces = {Part("C1", section, "40 uF")};
    item.replaces.front().doubts = {"no volts"};
  }
  order.unread = {{Part("C9", 0, ""), "no capacitance is read"}};
  const std::string text = OrderText("QUILLHAVEN 12", order, {});
  EXPECT_THAT(text, HasSubstr("QUILLHAVEN 12: 2 parts to order in 2 items, 1 row not understood\n"));
  EXPECT_THAT(text, HasSubstr("C1 section 1 of 2"));
  EXPECT_THAT(text, HasSubstr("C9    ELECT., 40-20 MFD  m.pdf p. 7 (printed 8-3)  upper left  90 %  not understood: no "
                              "capacitance is read\n"
                              "C1    ELECT., 40-20 MFD  m.pdf p. 7 (printed 8-3)  upper left  90 %  no volts\n"));
  EXPECT_THAT(text, Not(HasSubstr("no volts\nC1")));
}

TEST(OrderCsv, KeepsWhatIsNotUnderstood) {
  Order order;
  order.unread = {{Part("=C9", 0, ""), "no capacitance is read"}};
  EXPECT_THAT(OrderCsv(order), HasSubstr("\r\n,not understood,,,,'=C9,\"ELECT., 40-20 MFD\",m.pdf p. 7 (printed "
                                         "8-3),0.9,no capacitance is read,\r\n"));
}

}  // namespace
}  // namespace benchleaf

#include "orders/cautions.h"

#include <algorithm>

namespace benchleaf::orders {

std::vector<std::string> CautionsFor(const Order& order) {
  const auto orders = [&](PartKind kind) {
    return std::any_of(order.items.begin(), order.items.end(),
                       [&](const OrderItem& item) { return item.part.kind == kind; });
  };
  std::vector<std::string> cautions = {
      "Values were read by a machine from scans: check each on its page and on the part before you order.",
      "The chassis may be live: use an isolating transformer, pull the plug, discharge every filter capacitor and a "
      "picture tube's anode before you touch anything. A picture tube can implode; high-voltage rectifiers and "
      "regulators can give X-rays.",
  };
  if (orders(PartKind::kElectrolytic)) {
    cautions.emplace_back(
        "Electrolytics: mind the polarity, and which section of a can its common lead belongs to. Behind a tube "
        "rectifier do not go above the capacitance that its handbook allows for the first filter capacitor.");
  }
  if (orders(PartKind::kPaper)) {
    cautions.emplace_back(
        "Paper capacitors: lists seldom say which stand across the line or from line to chassis. Follow the line cord "
        "on the schematic: those need safety-rated parts, class X across the line, class Y from line to chassis (IEC "
        "60384-14). Oil-filled and some wax-paper ones can hold PCBs: do not open them, keep them off the skin, and "
        "give them away as your local rules for hazardous waste say.");
  }
  if (orders(PartKind::kSelenium)) {
    cautions.emplace_back(
        "Selenium rectifiers: burnt ones give off poisonous fumes: air the room, do not breathe them. Silicon in their "
        "place raises B+ and the surge at switching on: fit the series resistor, then measure B+ and the heaters.");
  }
  if (orders(PartKind::kCarbon) || orders(PartKind::kWirewound)) {
    cautions.emplace_back(
        "Resistors: order only those that measure out of their tolerance. Some are fusible or flameproof for safety: "
        "keep those so. Old power resistors and the boards beneath them can hold asbestos: do not saw, drill or sand.");
  }
  cautions.emplace_back("Follow local codes, and leave what they reserve for licensed people to them.");
  return cautions;
}

}  // namespace benchleaf::orders

#include "benchleaf/orders/order.h"

#include "orders/cautions.h"
#include "orders/new_part.h"

#include "benchleaf/core/ascii.h"
#include "benchleaf/core/figure.h"
#include "benchleaf/extract/extract.h"
#include "benchleaf/linking/designator_beside.h"
#include "benchleaf/orders/preferred_values.h"

#include <algorithm>
#include <cstddef>
#include <set>
#include <tuple>
#include <utility>

namespace benchleaf {
namespace {

// What is told of a kind by value or wattage where the list says nothing: common practice, no source.
constexpr double kLeastElectrolytic = 2e-6;
constexpr double kLeastPaper = 0.9e-9;
constexpr double kMostCarbonWatts = 2;

// C of A4C12, SR of SR1.
std::string ClassLetters(const std::string& designator) {
  if (designator.empty()) return {};
  const std::vector<std::string> forms = DesignatorForms(designator);
  const std::string& own = forms.size() > 1 && forms[1].size() < designator.size() && IsLetter(forms[1].front()) &&
                                   designator.ends_with(forms[1])
                               ? forms[1]
                               : forms[0];
  std::string letters;
  for (const char c : own) {
    if (!IsUpper(c)) break;
    letters += c;
  }
  return letters;
}

std::string Was(const CapacitorSection& section) {
  return FaradsText(section.farads) + (section.volts ? " " + Figure(*section.volts) + " V" : "");
}

std::string Was(const OldRating& rating) {
  std::string text = rating.ohms ? OhmsText(*rating.ohms) : "";
  const auto add = [&text](const std::string& more) { text += (text.empty() ? "" : " ") + more; };
  if (rating.watts) add(Figure(*rating.watts) + " W");
  if (rating.amps) add(Figure(*rating.amps) + " A");
  if (!rating.ohms && rating.volts) add(Figure(*rating.volts) + " V");
  return text;
}

std::string Unusual(const std::string& value) { return value + " was never a usual value: probably misread"; }

class OrderMaker {
 public:
  OrderMaker(const std::vector<PartKind>& kinds, const PartWords& words, const KnownDoubts& known)
      : kinds_(kinds), words_(words), known_(known) {}

  void Add(const FoundEntry& found) {
    const Entry& entry = found.entry;
    OldPart part;
    part.place = found.place;
    part.box = entry.box;
    part.designator = WithAssembly(entry.assembly, entry.designator);
    part.item = entry.designator.empty() ? entry.item : std::string();
    part.row = entry.description;
    part.part_number = entry.part_number;
    part.confidence = entry.confidence;
    if (const auto known = known_.find(part.designator); known != known_.end()) part.doubts = known->second;
    const std::string letters = ClassLetters(entry.designator);
    part.line =
        WantsCapacitors() && (letters.empty() || letters == "C") ? words_.LineIn(entry.description) : std::nullopt;

    const auto said = words_.KindIn(entry.description);
    if (said == PartKind::kVariable) return;
    if (letters == "C") {
      AddCapacitor(part, said, ReadRating(entry.value, entry.description, "C"));
    } else if (letters == "R") {
      AddResistor(part, said, ReadRating(entry.value, entry.description, "R"));
    } else if (said == PartKind::kSelenium || words_.KindOfClass(letters)) {
      AddRectifier(part, ReadRating("", entry.description, letters));
    } else if (letters.empty() && said) {
      AddNameless(part, *said, entry);
    }
  }

  Order Finish() {
    std::stable_sort(order_.items.begin(), order_.items.end(), [](const OrderItem& a, const OrderItem& b) {
      const auto key = [](const NewPart& part) {
        return std::tuple(part.kind, part.size, part.rating.empty(), part.rating.size(), part.rating);
      };
      return key(a.part) < key(b.part);
    });
    order_.cautions = orders::CautionsFor(order_);
    return std::move(order_);
  }

 private:
  bool Wanted(PartKind kind) const { return std::find(kinds_.begin(), kinds_.end(), kind) != kinds_.end(); }

  bool WantsCapacitors() const {
    return std::any_of(kinds_.begin(), kinds_.end(), [](PartKind kind) {
      return kind != PartKind::kSelenium && kind != PartKind::kCarbon && kind != PartKind::kWirewound;
    });
  }

  void AddCapacitor(OldPart part, std::optional<PartKind> said, const OldRating& rating) {
    part.doubts.insert(part.doubts.end(), rating.doubts.begin(), rating.doubts.end());
    if (rating.sections.empty()) {
      if (said ? Wanted(*said) || part.line : WantsCapacitors()) LeaveUnread(std::move(part), "no capacitance is read");
      return;
    }
    const double farads = rating.sections.front().farads;
    if (!IsUsualValue(farads)) part.doubts.push_back(Unusual(FaradsText(farads)));
    part.kind_by_value = !said;
    const PartKind kind = said                                                         ? *said
                          : farads >= kLeastElectrolytic || rating.sections.size() > 1 ? PartKind::kElectrolytic
                          : farads >= kLeastPaper                                      ? PartKind::kPaper
                                                                                       : PartKind::kMica;
    if (!Wanted(kind) && !part.line) {
      ++order_.left[kind];
      return;
    }
    part.sections = static_cast<int>(rating.sections.size());
    for (std::size_t i = 0; i < rating.sections.size(); ++i) {
      OldPart section = part;
      section.section = part.sections > 1 ? static_cast<int>(i) + 1 : 0;
      section.was = Was(rating.sections[i]);
      Place(orders::NewCapacitor(kind, rating.sections[i], rating.alternating, part.line), std::move(section));
    }
  }

  void AddResistor(OldPart part, std::optional<PartKind> said, const OldRating& rating) {
    part.doubts.insert(part.doubts.end(), rating.doubts.begin(), rating.doubts.end());
    const bool wirewound = said == PartKind::kWirewound || (!said && rating.watts && *rating.watts > kMostCarbonWatts);
    const PartKind kind = wirewound ? PartKind::kWirewound : PartKind::kCarbon;
    if (!Wanted(kind)) {
      ++order_.left[kind];
    } else if (!rating.ohms) {
      LeaveUnread(std::move(part), "no resistance is read");
    } else {
      part.was = Was(rating);
      if (!IsUsualValue(*rating.ohms)) part.doubts.push_back(Unusual(OhmsText(*rating.ohms)));
      Place(orders::NewResistor(kind, rating), std::move(part));
    }
  }

  void AddRectifier(OldPart part, const OldRating& rating) {
    if (!Wanted(PartKind::kSelenium)) {
      ++order_.left[PartKind::kSelenium];
      return;
    }
    part.was = Was(rating);
    for (const NewPart& fresh : orders::NewRectifier(rating)) Place(fresh, part);
  }

  // A row without a designator: its word tells what it is.
  void AddNameless(OldPart part, PartKind kind, const Entry& entry) {
    switch (kind) {
      case PartKind::kCarbon:
      case PartKind::kWirewound:
        return AddResistor(std::move(part), kind, ReadRating(entry.value, entry.description, "R"));
      case PartKind::kSelenium:
        return AddRectifier(std::move(part), ReadRating("", entry.description, ""));
      default:
        return AddCapacitor(std::move(part), kind, ReadRating(entry.value, entry.description, "C"));
    }
  }

  void LeaveUnread(OldPart part, const std::string& why) {
    if (IsNew(part, "")) order_.unread.push_back({std::move(part), why});
  }

  // Whether the designator was not ordered as this before: lists stand in two manuals, and pages are scanned twice.
  bool IsNew(const OldPart& part, const std::string& as) {
    if (part.designator.empty()) return true;
    return seen_.insert({part.designator, part.section, as}).second;
  }

  void Place(const NewPart& fresh, OldPart part) {
    if (!IsNew(part, fresh.what + fresh.value + fresh.rating)) return;
    const auto item = std::find_if(order_.items.begin(), order_.items.end(),
                                   [&](const OrderItem& known) { return known.part == fresh; });
    OrderItem& to = item == order_.items.end() ? order_.items.emplace_back() : *item;
    to.part = fresh;
    ++to.count;
    to.replaces.push_back(std::move(part));
  }

  const std::vector<PartKind>& kinds_;
  const PartWords& words_;
  const KnownDoubts& known_;
  Order order_;
  std::set<std::tuple<std::string, int, std::string>> seen_;
};

// The designators that the lists give two values: one of them is misread, or belongs to another version of the set.
void DoubtTwice(Order& order) {
  std::map<std::pair<std::string, int>, int> times;
  for (const OrderItem& item : order.items) {
    if (item.part.kind == PartKind::kSelenium) continue;  // a diode and a resistor for each
    for (const OldPart& part : item.replaces) ++times[{part.designator, part.section}];
  }
  for (OrderItem& item : order.items) {
    for (OldPart& part : item.replaces) {
      const auto found = times.find({part.designator, part.section});
      if (found == times.end() || found->second < 2 || part.designator.empty()) continue;
      part.doubts.emplace_back("listed twice, with different values");
    }
  }
}

// Rows that name one part number with two values: one of them is misread.
void DoubtPartNumbers(Order& order) {
  using Key = std::pair<std::string, int>;
  std::map<Key, std::set<std::string>> values;  // by part number and section
  for (const OrderItem& item : order.items) {
    for (const OldPart& part : item.replaces) values[Key(part.part_number, part.section)].insert(part.was);
  }
  for (OrderItem& item : order.items) {
    for (OldPart& part : item.replaces) {
      if (part.part_number.empty()) continue;
      for (const std::string& other : values[Key(part.part_number, part.section)]) {
        if (other != part.was) {
          part.doubts.push_back("part number " + part.part_number + " is also listed as " + other);
        }
      }
    }
  }
}

}  // namespace

const std::vector<PartKind>& AgeingKinds() {
  static const std::vector<PartKind> kinds = {PartKind::kElectrolytic, PartKind::kPaper, PartKind::kSelenium};
  return kinds;
}

Order MakeOrder(const std::vector<FoundEntry>& parts, const std::vector<PartKind>& kinds, const PartWords& words,
                const KnownDoubts& known) {
  OrderMaker maker(kinds, words, known);
  for (const FoundEntry& found : parts) maker.Add(found);
  Order order = maker.Finish();
  DoubtTwice(order);
  DoubtPartNumbers(order);
  return order;
}

}  // namespace benchleaf

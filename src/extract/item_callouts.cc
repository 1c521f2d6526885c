#include "benchleaf/extract/item_callouts.h"

#include "extract/item_number.h"
#include "extract/pieces.h"
#include "extract/plain_text.h"

#include <algorithm>
#include <map>
#include <optional>

namespace benchleaf {
namespace {

using extract::ItemNumber;
using extract::Piece;

// Of a drawing that calls out a list's items.
constexpr std::size_t kFewest = 3;
constexpr double kLeastShare = 0.4;  // of the list's items
constexpr double kMostPlaces = 2;    // of an item, in the middle of all
constexpr double kLeastSure = 0.3;
constexpr double kLeastSureOfMissing = 0.1;  // an item that the drawing shows nowhere else

// Its length along the text, and where it stands, as if the text were upright.
Box Uprighted(const Piece& piece) {
  const bool standing = piece.turn == 90 || piece.turn == 270;
  return standing ? Box{piece.box.y, piece.box.x, piece.box.height, piece.box.width} : piece.box;
}

// Whether no other word follows or precedes it in its row.
bool StandsAlone(const Piece& piece, const std::vector<Piece>& pieces, double cap) {
  constexpr double kWordSpace = 1.2;
  const Box own = Uprighted(piece);
  return std::none_of(pieces.begin(), pieces.end(), [&](const Piece& other) {
    if (&other == &piece || other.turn != piece.turn) {
      return false;
    }
    const Box box = Uprighted(other);
    const int overlap = std::min(own.bottom(), box.bottom()) - std::max(own.y, box.y);
    const int gap = std::max(own.x - box.right(), box.x - own.right());
    return overlap * 2 > std::min(own.height, box.height) && gap < kWordSpace * cap;
  });
}

// Whether the piece is the number that the page itself bears, at its head or foot.
bool IsPageNumber(const Piece& piece, const std::string& printed_number, const PageReading& reading) {
  constexpr double kMargin = 0.12;
  const double height = reading.frame.level_height;
  const bool at_margin = piece.box.y < kMargin * height || piece.box.bottom() > (1 - kMargin) * height;
  return at_margin && extract::Trimmed(piece.text) == printed_number;
}

// A number that stands alone.
struct Lone {
  const Piece* piece = nullptr;
  std::string item;
  double confidence = 0;
};

std::vector<Lone> LoneNumbersOn(const std::vector<Piece>& pieces, const std::string& printed_number,
                                const PageReading& reading, double cap) {
  std::vector<Lone> lone;
  for (const Piece& piece : pieces) {
    const auto item = extract::ParseItemNumber(extract::Upper(extract::Trimmed(piece.text)));
    if (item && piece.confidence >= kLeastSure && !IsPageNumber(piece, printed_number, reading) &&
        StandsAlone(piece, pieces, cap)) {
      lone.push_back({&piece, item->Text(), piece.confidence});
    }
  }
  return lone;
}

std::size_t SureDesignators(const std::vector<Sighting>& seen) {
  constexpr double kSure = 0.6;
  std::set<std::string> designators;
  for (const Sighting& sighting : seen) {
    if (sighting.kind == TermKind::kDesignator && sighting.confidence >= kSure) {
      designators.insert(sighting.text);
    }
  }
  return designators.size();
}

// Whether the numbers are those of the list that a drawing calls out.
bool CallsOut(const std::vector<Lone>& lone, const ItemList& list) {
  std::set<std::string> called_out;
  std::size_t places = 0;
  for (const Lone& one : lone) {
    if (list.items.count(one.item) != 0) {
      called_out.insert(one.item);
      ++places;
    }
  }
  const std::size_t others = lone.size() - places;
  return called_out.size() >= kFewest && ShareCalledOut(list, called_out) >= kLeastShare && others * 2 <= places &&
         static_cast<double>(places) <= kMostPlaces * static_cast<double>(called_out.size());
}

// What a word that reads as no number of the lists is called out as, by another reading of it or by what it looks like:
// one item alone, that stands nowhere else on the page.
std::optional<Lone> Misread(const Piece& piece, const std::set<std::string>& missing, const Rules& rules) {
  constexpr double kLookAlike = 0.7;
  std::map<std::string, double> fits;
  const auto consider = [&](const std::string& text, double confidence) {
    const std::string plain = extract::Upper(extract::Trimmed(text));
    auto item = extract::ParseItemNumber(plain);
    const bool as_read = item.has_value();
    if (!item) {
      item = extract::LikeItemNumber(plain, rules.tables());
    }
    if (item && missing.count(item->Text()) != 0) {
      double& best = fits[item->Text()];
      best = std::max(best, confidence * (as_read ? 1 : kLookAlike));
    }
  };
  consider(piece.text, piece.confidence);
  for (const Alternative& alternative : piece.alternatives) {
    consider(alternative.text, alternative.confidence);
  }
  if (fits.size() != 1 || fits.begin()->second < kLeastSureOfMissing) {
    return std::nullopt;
  }
  return Lone{&piece, fits.begin()->first, fits.begin()->second};
}

bool IsTaken(const FractionBox& box, const std::vector<Sighting>& seen) {
  constexpr double kSure = 0.8;
  return std::any_of(seen.begin(), seen.end(), [&](const Sighting& sighting) {
    return sighting.confidence >= kSure && OverlapOfSmaller(sighting.box, box) > 0.5;
  });
}

}  // namespace

std::vector<ItemList> ItemListsOf(const std::vector<const std::vector<Entry>*>& pages) {
  std::vector<ItemList> lists;
  constexpr int kFirstRows = 3;  // of which one at least is read
  std::optional<ItemNumber> last;
  std::string assembly;
  for (std::size_t page = 0; page < pages.size(); ++page) {
    for (std::size_t i = 0; i < pages[page]->size(); ++i) {
      const Entry& entry = (*pages[page])[i];
      const auto item = entry.designator.empty() ? extract::ParseItemNumber(entry.item) : std::nullopt;
      if (!item) {
        continue;
      }
      const bool falls = last && *item <= *last;
      if (!last || (falls && item->number <= kFirstRows) || entry.assembly != assembly) {
        lists.emplace_back();
        last = item;
      } else if (!falls) {
        last = item;  // one that falls otherwise was misread
      }
      assembly = entry.assembly;
      lists.back().rows.push_back({page, i});
      lists.back().items.insert(entry.item);
    }
  }
  return lists;
}

double ShareCalledOut(const ItemList& list, const std::set<std::string>& called_out) {
  const auto common = std::count_if(list.items.begin(), list.items.end(),
                                    [&](const std::string& item) { return called_out.count(item) != 0; });
  return list.items.empty() ? 0 : static_cast<double>(common) / static_cast<double>(list.items.size());
}

std::vector<Sighting> ItemCallouts(const PageReading& reading, const std::string& printed_number,
                                   const std::vector<Sighting>& seen, const std::vector<ItemList>& lists,
                                   const Rules& rules) {
  const std::vector<Piece> pieces = extract::PiecesOf(reading);
  const double cap = extract::CapHeight(reading);
  std::vector<Lone> lone = LoneNumbersOn(pieces, printed_number, reading, cap);
  std::set<std::string> wanted;
  for (const ItemList& list : lists) {
    if (CallsOut(lone, list)) {
      wanted.insert(list.items.begin(), list.items.end());
    }
  }
  if (wanted.empty() || SureDesignators(seen) * 2 > lone.size()) {
    return {};
  }
  std::set<std::string> missing = wanted;
  for (const Lone& one : lone) {
    missing.erase(one.item);
  }
  for (const Piece& piece : pieces) {
    const auto misread = Misread(piece, missing, rules);
    const bool known = std::any_of(lone.begin(), lone.end(),
                                   [&](const Lone& one) { return one.piece == &piece && wanted.count(one.item) != 0; });
    if (misread && !known && !IsPageNumber(piece, printed_number, reading) &&
        !IsTaken(ToScan(reading.frame, piece.box), seen) && StandsAlone(piece, pieces, cap)) {
      lone.push_back(*misread);
    }
  }
  std::vector<Sighting> callouts;
  for (const Lone& one : lone) {
    if (wanted.count(one.item) == 0) {
      continue;
    }
    Sighting callout;
    callout.kind = TermKind::kItem;
    callout.text = one.item;
    callout.read = one.piece->read;
    callout.box = ToScan(reading.frame, one.piece->box);
    callout.turn = (one.piece->turn - reading.frame.orientation + 360) % 360;
    callout.confidence = one.confidence;
    callouts.push_back(std::move(callout));
  }
  return callouts;
}

}  // namespace benchleaf

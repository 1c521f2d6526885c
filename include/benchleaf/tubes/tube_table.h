// What is known of tube types: config/tubes.tsv, and a restorer's own rows.

#ifndef BENCHLEAF_TUBES_TUBE_TABLE_H_
#define BENCHLEAF_TUBES_TUBE_TABLE_H_

#include "benchleaf/core/result.h"

#include <filesystem>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace benchleaf {

// One way to supply a heater or filament.
struct HeaterSupply {
  std::optional<double> volts;  // nothing when not known
  std::optional<double> amps;

  friend bool operator==(const HeaterSupply&, const HeaterSupply&) = default;
};

// A row of the table. What is not known is empty.
struct TubeEntry {
  std::string type;                      // in capitals: 6CB6A, ECC83, 5751
  std::vector<HeaterSupply> heater;      // two for a heater that may be wired two ways; {0, 0} where there is none
  std::string tube_class;                // in words of the trade: sharp-cutoff pentode
  std::string base;                      // one of TubeBases()
  std::string basing;                    // RETMA/EIA code of the pins: 7CM
  std::vector<std::string> equivalents;  // other names of the same tube, either in place of the other
  std::vector<std::string> variants;     // differ in the heater only
  std::vector<std::string> served_by;    // later or better types that may stand in its place
  std::vector<std::string> serves_for;   // types in whose place it may stand: served_by the other way round
  std::vector<std::string> industrial;   // its industrial and military versions
  std::vector<std::string> version_of;   // what it is an industrial version of
  std::vector<std::string> service;      // service numbers: VT231, CV4004
  std::string note;
  std::string source;  // where the row comes from; says "from memory" where so

  bool has_no_heater() const { return !heater.empty() && heater.front().volts == 0.0; }
};

// The bases that rows may name, in words of the trade.
const std::vector<std::string_view>& TubeBases();

// Rows by type. Immutable once read; safe to share.
class TubeTable {
 public:
  // Reads the files in their order; a row of a later one replaces that of the same type before it. What a row says of
  // another type (equivalents, variants, served_by, industrial) is then known from both sides, so that a restorer has
  // to write it only once. Fails with kMissing or kUsage; the message names file, line and column.
  static Result<TubeTable> Load(const std::vector<std::filesystem::path>& files);

  // The row of that type in capitals, else of the type that has that service number (VT231, CV4004); nullptr when
  // there is none. A suffix is a part of the type: the row of 6CB6 does not answer for 6CB6A.
  const TubeEntry* Find(std::string_view type) const;

  // The same, and where there is none the row of the type without its suffix (6CB6 for 6CB6B), or of its form with the
  // shortest one (6SN7GT for 6SN7, as people say and boxes are marked); of a type of several names (12AX7A/ECC83) of
  // the first name that has one. Compare the row's type before trusting it to be the very tube.
  const TubeEntry* FindNearest(std::string_view type) const;

  // In the order of their types.
  const std::map<std::string, TubeEntry, std::less<>>& entries() const { return entries_; }

 private:
  void KnowFromBothSides();
  // The row of the number with the shortest suffix; nullptr when there is none.
  const TubeEntry* FirstForm(std::string_view number) const;

  std::map<std::string, TubeEntry, std::less<>> entries_;
  std::map<std::string, std::string, std::less<>> by_service_;  // service number to type
};

}  // namespace benchleaf

#endif  // BENCHLEAF_TUBES_TUBE_TABLE_H_

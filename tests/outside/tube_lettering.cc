#include "outside/tube_lettering.h"

#include <array>
#include <cstddef>

namespace benchleaf::outside {
namespace {

// Types listed in the tube handbooks of the time; which ones was chosen from memory.
const std::array<std::string, 30> kTypes = {
    "6CB6",  "12AX7A", "6AU6A", "5U4GB", "6SN7GTB", "12AU7", "6BQ7A", "1B3GT", "6V6GT",  "12BY7A",
    "6DQ6B", "6AL5",   "6BK4",  "3A3",   "6CG7",    "6U8A",  "5Y3GT", "6AQ5A", "25L6GT", "17AX4GTB",
    "ECC83", "EL84",   "PCL82", "EF86",  "EZ81",    "PY88",  "5725",  "5751",  "6080",   "0A2",
};

}  // namespace

bool HoldsDevice(std::string_view reference) {
  const std::string_view letters = reference.substr(0, reference.find_first_of("0123456789"));
  return letters == "U" || letters == "IC" || letters == "Q";
}

const std::string& TubeTypeFor(std::string_view reference, std::uint64_t seed) {
  // FNV-1a, for a choice that is the same on every machine.
  std::uint64_t hash = 14695981039346656037U ^ seed;
  for (const char c : reference) hash = (hash ^ static_cast<unsigned char>(c)) * 1099511628211U;
  return kTypes[static_cast<std::size_t>((hash >> 20) % kTypes.size())];
}

}  // namespace benchleaf::outside

// Random numbers that are the same on every machine: the distributions of the standard library are not.

#ifndef BENCHLEAF_TESTS_SCAN_MAKER_SEEDED_RANDOM_H_
#define BENCHLEAF_TESTS_SCAN_MAKER_SEEDED_RANDOM_H_

#include <cstdint>
#include <string_view>

namespace benchleaf::scanmaker {

// SplitMix64's output function (Steele, Lea and Flood, "Fast splittable pseudorandom number generators", OOPSLA 2014).
inline std::uint64_t Scramble(std::uint64_t value) {
  value = (value ^ (value >> 30)) * 0xBF58476D1CE4E5B9U;
  value = (value ^ (value >> 27)) * 0x94D049BB133111EBU;
  return value ^ (value >> 31);
}

// A seed that differs for every text (FNV-1a).
inline std::uint64_t SeedOf(std::uint64_t seed, std::string_view text) {
  std::uint64_t hash = 0xCBF29CE484222325U ^ seed;
  for (const char c : text) {
    hash = (hash ^ static_cast<unsigned char>(c)) * 0x100000001B3U;
  }
  return Scramble(hash);
}

// A stream of random numbers, SplitMix64.
class SeededRandom {
 public:
  explicit SeededRandom(std::uint64_t seed) : state_(seed) {}

  std::uint64_t Next() { return Scramble(state_ += 0x9E3779B97F4A7C15U); }
  // From 0 up to, but not, 1.
  double Unit() { return static_cast<double>(Next() >> 11) * 0x1.0p-53; }
  double Between(double low, double high) { return low + (high - low) * Unit(); }
  // From `low` to `high`, both included.
  int Whole(int low, int high) { return low + static_cast<int>(Next() % static_cast<std::uint64_t>(high - low + 1)); }
  // Close to normal: the sum of twelve, mean 0, deviation 1.
  double Normal() {
    double sum = -6;
    for (int i = 0; i < 12; ++i) sum += Unit();
    return sum;
  }

 private:
  std::uint64_t state_;
};

}  // namespace benchleaf::scanmaker

#endif  // BENCHLEAF_TESTS_SCAN_MAKER_SEEDED_RANDOM_H_

// mutate-scans OUT COUNT SEED FILE...: writes COUNT spoilt copies of the files into the folder OUT, each by itself
// reproducible from SEED. What is done to a copy: bits flipped, runs of bytes overwritten, parts cut out, doubled or
// moved, the end cut off, numbers made huge, parts of another file put in.

#include <algorithm>
#include <array>
#include <cstddef>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <random>
#include <sstream>
#include <string>
#include <string_view>
#include <vector>

namespace {

using Random = std::mt19937;

std::size_t Below(Random& random, std::size_t bound) { return bound == 0 ? 0 : random() % bound; }

// A part of the bytes, short ones more often.
std::pair<std::size_t, std::size_t> Part(Random& random, const std::string& bytes) {
  const std::size_t from = Below(random, bytes.size());
  const std::size_t longest = std::size_t{1} << Below(random, 16);
  return {from, std::min(bytes.size() - from, 1 + Below(random, longest))};
}

void MakeNumbersHuge(Random& random, std::string& bytes) {
  constexpr std::array<std::string_view, 6> kNumbers = {"0", "-1", "65536", "99999999", "2147483648", "1e30"};
  const std::size_t from = Below(random, bytes.size());
  const std::size_t digits = bytes.find_first_of("0123456789", from);
  if (digits == std::string::npos) {
    return;
  }
  const std::size_t end = std::min(bytes.find_first_not_of("0123456789.", digits), bytes.size());
  bytes.replace(digits, end - digits, kNumbers[Below(random, kNumbers.size())]);
}

void Spoil(Random& random, std::string& bytes, const std::string& other) {
  const auto [from, size] = Part(random, bytes);
  switch (Below(random, 9)) {
    case 0:
    case 1:
      bytes[from] = static_cast<char>(static_cast<unsigned char>(bytes[from]) ^ (1U << Below(random, 8)));
      break;
    case 2:
      std::generate_n(bytes.begin() + static_cast<std::ptrdiff_t>(from), size,
                      [&] { return static_cast<char>(random()); });
      break;
    case 3:
      std::fill_n(bytes.begin() + static_cast<std::ptrdiff_t>(from), size, random() % 2 == 0 ? '\0' : '\xff');
      break;
    case 4:
      bytes.erase(from, size);
      break;
    case 5:
      bytes.insert(Below(random, bytes.size()), bytes.substr(from, size));
      break;
    case 6:
      MakeNumbersHuge(random, bytes);
      break;
    case 7: {
      const auto [start, length] = Part(random, other);
      bytes.replace(from, std::min(size, bytes.size() - from), other.substr(start, length));
      break;
    }
    default:
      // A tear is no daily thing: it hides all that lies behind.
      if (random() % 8 == 0) {
        bytes.resize(from);
      }
  }
}

std::string Read(const char* path) {
  std::ostringstream bytes;
  bytes << std::ifstream(path, std::ios::binary).rdbuf();
  return bytes.str();
}

}  // namespace

int main(int argc, char** argv) {
  if (argc < 5) {
    std::fputs("usage: mutate-scans OUT COUNT SEED FILE...\n", stderr);
    return 2;
  }
  const std::filesystem::path out = argv[1];
  const int count = std::atoi(argv[2]);
  const auto seed = static_cast<Random::result_type>(std::atol(argv[3]));
  const std::vector<const char*> files(argv + 4, argv + argc);
  for (int i = 0; i < count; ++i) {
    Random random(seed + static_cast<Random::result_type>(i));
    const std::filesystem::path file = files[Below(random, files.size())];
    std::string bytes = Read(file.c_str());
    const std::string other = Read(files[Below(random, files.size())]);
    for (std::size_t spoils = 1 + Below(random, 6); spoils > 0 && !bytes.empty(); --spoils) {
      Spoil(random, bytes, other);
    }
    const std::string name = "spoilt " + std::to_string(i) + file.extension().string();
    if (!(std::ofstream(out / name, std::ios::binary) << bytes)) {
      std::fprintf(stderr, "mutate-scans: %s cannot be written\n", name.c_str());
      return 1;
    }
  }
  return 0;
}

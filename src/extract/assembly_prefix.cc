#include "extract/assembly_prefix.h"

#include "extract/plain_text.h"

namespace benchleaf::extract {

std::size_t AssemblyLength(std::string_view canonical) {
  std::size_t end = 0;
  while (end < canonical.size() && canonical[end] == 'A') {
    std::size_t at = end + 1;
    while (at < canonical.size() && IsDigit(canonical[at])) {
      ++at;
    }
    const bool more_letters = at > end + 1 && at < canonical.size() && IsUpper(canonical[at]);
    if (!more_letters || canonical.find_first_of("0123456789", at) == std::string_view::npos) {
      break;
    }
    end = at;
  }
  return end;
}

}  // namespace benchleaf::extract

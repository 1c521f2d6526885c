#include "benchleaf/core/figure.h"

#include <locale>
#include <sstream>

namespace benchleaf {

std::string Figure(double value) {
  std::ostringstream text;
  text.imbue(std::locale::classic());
  text << value;
  return text.str();
}

}  // namespace benchleaf

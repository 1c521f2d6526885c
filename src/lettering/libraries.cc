#include "benchleaf/lettering/libraries.h"

#include <cblas.h>

#include <string>

namespace benchleaf {

std::vector<LibraryVersion> LibrariesOfLettering() {
  // "OpenBLAS 0.3.21 NO_LAPACKE DYNAMIC_ARCH ..."
  const std::string told = openblas_get_config();
  const std::size_t name = told.find(' ');
  return {{"openblas", name == std::string::npos ? told : told.substr(name + 1, told.find(' ', name + 1) - name - 1)}};
}

}  // namespace benchleaf

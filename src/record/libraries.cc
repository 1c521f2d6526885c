#include "benchleaf/record/libraries.h"

#include <nlohmann/json.hpp>

namespace benchleaf {
std::vector<LibraryVersion> LibrariesOfRecord() {
  return {{"nlohmann-json", std::to_string(NLOHMANN_JSON_VERSION_MAJOR) + "." +
                                std::to_string(NLOHMANN_JSON_VERSION_MINOR) + "." +
                                std::to_string(NLOHMANN_JSON_VERSION_PATCH)}};
}

}  // namespace benchleaf

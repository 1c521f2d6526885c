#include "benchleaf/pixels/libraries.h"

#include <leptonica/allheaders.h>

#include <memory>

namespace benchleaf {
namespace {

std::string Owned(char* text) {
  const std::unique_ptr<char, void (*)(void*)> owned(text, &lept_free);
  return owned ? std::string(owned.get()) : std::string();
}

// "leptonica-1.82.0" to "1.82.0".
std::string WithoutName(const std::string& version) { return version.substr(version.find('-') + 1); }

}  // namespace

std::vector<LibraryVersion> LibrariesOfPixels() {
  return {{"leptonica", WithoutName(Owned(getLeptonicaVersion()))}, {"pictures by", Owned(getImagelibVersions())}};
}

}  // namespace benchleaf

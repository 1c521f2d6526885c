#include "work/left_out.h"

namespace benchleaf {

LeftOut::LeftOut(const ScannedLibrary& library) : root_(library.root.string()) {
  for (const Error& problem : library.problems) {
    problems_.emplace(problem.source, problem);
  }
}

const Error* LeftOut::Reason(const std::string& path) const {
  std::string place = path;
  while (true) {
    if (const auto found = problems_.find(place); found != problems_.end()) {
      return &found->second;
    }
    const std::size_t slash = place.rfind('/');
    if (slash == std::string::npos) {
      break;
    }
    place.resize(slash);
  }
  const auto whole = problems_.find(root_);
  return whole == problems_.end() ? nullptr : &whole->second;
}

}  // namespace benchleaf

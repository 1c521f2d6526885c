// Which files of the index cannot be looked at now, because the library's scan had to leave them out.

#ifndef BENCHLEAF_SRC_WORK_LEFT_OUT_H_
#define BENCHLEAF_SRC_WORK_LEFT_OUT_H_

#include "benchleaf/core/result.h"
#include "benchleaf/library/library.h"

#include <map>
#include <string>

namespace benchleaf {

class LeftOut {
 public:
  explicit LeftOut(const ScannedLibrary& library);

  // Why the file is out of reach: it was left out itself, or it lies in a folder that could not be listed. Null when
  // the scan would have found it.
  const Error* Reason(const std::string& path) const;

 private:
  std::string root_;                       // as problems of the library's own folder name it
  std::map<std::string, Error> problems_;  // by path
};

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_WORK_LEFT_OUT_H_

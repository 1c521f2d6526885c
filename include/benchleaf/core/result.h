// What a function that can fail returns: the value, or an Error that a person can act on.

#ifndef BENCHLEAF_CORE_RESULT_H_
#define BENCHLEAF_CORE_RESULT_H_

#include <tl/expected.hpp>

#include <string>
#include <string_view>
#include <utility>

namespace benchleaf {

// Why something failed. A page that cannot be read is a result of one of these codes; a bug is an assertion.
enum class ErrorCode {
  kMissing,      // a file, folder, set, page or term that is not there
  kEmpty,        // a file of zero bytes, a folder without scans, a page without a picture
  kDamaged,      // truncated, or not what its name says
  kLocked,       // a PDF that wants a password
  kUnsupported,  // a kind of file or picture that is not read
  kTooLarge,     // a picture or file over the limits
  kBusy,         // the index is being written by another process
  kForeign,      // a folder or database that is not ours, or of another schema version
  kIo,           // reading or writing failed: disk full, permission denied
  kUsage,        // arguments or configuration that cannot be understood
  kTimeout,      // the deadline of a page ran out
  kCrashed,      // a worker process died
  kCancelled,    // stopped by the user
};

// The name of a code as it stands in JSON: "missing", "empty", "damaged", ...
std::string_view Name(ErrorCode code);

// The code of that name; kDamaged for a name that is none.
ErrorCode ErrorCodeNamed(std::string_view name);

struct Error {
  ErrorCode code = ErrorCode::kIo;
  std::string message;  // lower case, no full stop: what failed and what to do
  std::string source;   // the file or folder, empty when there is none
  int page = 0;         // counts from 1; 0 when the whole file is meant

  // "source, page N: message", leaving out what is not known.
  std::string ToString() const;

  friend bool operator==(const Error&, const Error&) = default;
};

template <class T>
using Result = tl::expected<T, Error>;

inline tl::unexpected<Error> Fail(ErrorCode code, std::string message, std::string source = {}, int page = 0) {
  return tl::unexpected<Error>(Error{code, std::move(message), std::move(source), page});
}

}  // namespace benchleaf

#endif  // BENCHLEAF_CORE_RESULT_H_

// An open file of the system, closed with its owner.

#ifndef BENCHLEAF_RASTER_DESCRIPTOR_H_
#define BENCHLEAF_RASTER_DESCRIPTOR_H_

#include <unistd.h>

#include <string>
#include <system_error>
#include <utility>

namespace benchleaf {

class Descriptor {
 public:
  explicit Descriptor(int number) : number_(number) {}
  ~Descriptor() {
    if (number_ >= 0) {
      close(number_);
    }
  }
  Descriptor(Descriptor&& other) noexcept : number_(std::exchange(other.number_, -1)) {}
  Descriptor& operator=(Descriptor&& other) noexcept {
    std::swap(number_, other.number_);
    return *this;
  }
  Descriptor(const Descriptor&) = delete;
  Descriptor& operator=(const Descriptor&) = delete;

  // Whether opening succeeded.
  explicit operator bool() const { return number_ >= 0; }
  int get() const { return number_; }

 private:
  int number_ = -1;
};

// The text of an error number, whatever the locale is set to.
inline std::string SystemReason(int error_number) {
  return std::error_code(error_number, std::generic_category()).message();
}

}  // namespace benchleaf

#endif  // BENCHLEAF_RASTER_DESCRIPTOR_H_

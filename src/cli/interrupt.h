// Ctrl-C as a flag that long work looks at.

#ifndef BENCHLEAF_SRC_CLI_INTERRUPT_H_
#define BENCHLEAF_SRC_CLI_INTERRUPT_H_

#include <atomic>
#include <csignal>

namespace benchleaf {

// While one lives, the first SIGINT or SIGTERM sets the flag instead of ending the program; a second one ends it at
// once. One at a time.
class Interrupt {
 public:
  Interrupt();
  ~Interrupt();
  Interrupt(const Interrupt&) = delete;
  Interrupt& operator=(const Interrupt&) = delete;

  const std::atomic<bool>& flag() const;

 private:
  struct sigaction old_int_ {};
  struct sigaction old_term_ {};
};

}  // namespace benchleaf

#endif  // BENCHLEAF_SRC_CLI_INTERRUPT_H_

#include "cli/interrupt.h"

namespace benchleaf {
namespace {

// A signal handler can reach nothing else.
std::atomic<bool> interrupted{false};
static_assert(std::atomic<bool>::is_always_lock_free, "a signal handler may only touch lock-free atomics");

void SetFlag(int /*signal*/) { interrupted = true; }

}  // namespace

Interrupt::Interrupt() {
  interrupted = false;
  struct sigaction action {};
  action.sa_handler = &SetFlag;
  // No SA_RESTART: a wait for workers must end. SA_RESETHAND: the second signal does what it always does.
  action.sa_flags = static_cast<int>(SA_RESETHAND);
  sigemptyset(&action.sa_mask);
  sigaction(SIGINT, &action, &old_int_);
  sigaction(SIGTERM, &action, &old_term_);
}

Interrupt::~Interrupt() {
  sigaction(SIGINT, &old_int_, nullptr);
  sigaction(SIGTERM, &old_term_, nullptr);
}

const std::atomic<bool>& Interrupt::flag() const { return interrupted; }

}  // namespace benchleaf

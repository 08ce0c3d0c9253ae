#include "cli/interrupt.h"

#include <cassert>

namespace sheerlap {
namespace {

/// The one thing that a signal can be told by.
std::atomic<bool>& noted() {
  static std::atomic<bool> flag = false;
  static_assert(std::atomic<bool>::is_always_lock_free);
  return flag;
}

void note(int /*signal*/) { noted() = true; }

}  // namespace

Interrupt::Interrupt() {
  noted() = false;
  [[maybe_unused]] const int asked = sigaction(SIGINT, nullptr, &before_);
  assert(asked == 0);
  if (before_.sa_handler == SIG_IGN) return;
  struct sigaction first = {};
  first.sa_handler = note;
  first.sa_flags = static_cast<int>(SA_RESETHAND | SA_RESTART);
  sigaction(SIGINT, &first, nullptr);
}

Interrupt::~Interrupt() { sigaction(SIGINT, &before_, nullptr); }

const std::atomic<bool>& Interrupt::came() { return noted(); }

}  // namespace sheerlap

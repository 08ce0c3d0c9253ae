#pragma once

#include <signal.h>

#include <atomic>

namespace sheerlap {

/// While one lives, the first Ctrl-C (SIGINT) is only noted, so that what is done can
/// be told; a second one ends the program as it always does. A program that was started
/// with SIGINT ignored goes on ignoring it.
///
/// No more than one lives at a time.
class Interrupt {
 public:
  Interrupt();
  Interrupt(const Interrupt&) = delete;
  Interrupt& operator=(const Interrupt&) = delete;
  ~Interrupt();

  /// Becomes true with the first Ctrl-C.
  static const std::atomic<bool>& came();

 private:
  struct sigaction before_ = {};
};

}  // namespace sheerlap

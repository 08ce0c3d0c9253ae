#pragma once

#include "geometry/quantity.h"

namespace sheerlap {

/// The three sides a joint can have, and "both" for keep-outs and the like that
/// stand on starboard and port alike.
enum class SideName { Starboard, Port, Transom };
enum class SideChoice { Starboard, Port, Both, Transom };

/// A stretch of a side, by running girth on the drill line or by x.
struct Stretch {
  SideChoice side = SideChoice::Both;
  Length from;
  Length to;
  bool by_x = false;  ///< `from` and `to` are values of x
};

}  // namespace sheerlap

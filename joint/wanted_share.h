#pragma once

namespace sheerlap {

/// How many of 100 boats are wanted to go on.
struct WantedShare {
  double of_100 = 95;
  bool given = false;  ///< by the user; else it is what is commonly wanted
};

}  // namespace sheerlap

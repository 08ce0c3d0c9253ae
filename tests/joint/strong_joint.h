#pragma once

#include "joint/joint.h"

namespace sheerlap {

/// A box of a joint, 4000 x 2000 mm, upright faces 3 mm apart all round, 50 mm deep,
/// trim 2 mm, with the example's strengths and a line load of 4 N/mm along and 0.1 off;
/// drill line 25 mm down, holes of the tables.
Joint strong_joint();

}  // namespace sheerlap

#pragma once

#include <string>

#include "joint/schedule.h"

namespace sheerlap {

/// What side a drilling sheet is of, and that it is no other's: on port's, where its
/// holes differ from starboard's.
///
/// Holes are the same whose girths differ by no more than 0.01 mm and that stand there
/// for the same reason.
std::string hand_words(const Schedule& schedule, SideName side);

}  // namespace sheerlap

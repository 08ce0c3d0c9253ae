#pragma once

#include <string>

#include "joint/documents/number_style.h"
#include "joint/hole_story.h"

namespace sheerlap {

/// What becomes of a hole that is moved, in one sentence: first its spaces, then what
/// it would stand in, its edges, its length and what it uses.
///
/// @param here  the hole where it is
std::string hole_move_words(const HoleMove& move,
                            const HoleAt& here,
                            const NumberStyle& style);

/// "over the 150 mm allowed by the bow zone", "within 40 to 150 mm".
std::string limit_words(const HoleSpace& space, const NumberStyle& style);

}  // namespace sheerlap

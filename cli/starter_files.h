#pragma once

#include <string_view>

namespace sheerlap {

/// A joint file that explains its keys, for the sheer table "sheer.csv"; of an invented
/// boat.
std::string_view starter_joint_text();

/// The sheer table of the same boat.
///
/// @source  derived: half-breadth 1040 sin(t) at x = 3300 (1 - cos(t)), t each 6
///          degrees to 90, then 1040 - 70 ((x - 3300) / 1900)^2 to the transom at 5200;
///          height 980 - 300 s + 150 s^2 with s = x / 5200; mm, to 0.1
std::string_view starter_sheer_text();

}  // namespace sheerlap

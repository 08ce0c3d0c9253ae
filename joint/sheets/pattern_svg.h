#pragma once

#include <string>

#include "joint/sheets/pattern_drawing.h"

namespace sheerlap {

/// The patterns as SVG: its size in mm, one unit a mm, a group for each layer.
/// @source  W3C, Scalable Vector Graphics 1.1
std::string pattern_svg(const PatternDrawing& drawing);

}  // namespace sheerlap

#pragma once

#include <string>

#include "geometry/result.h"
#include "joint/sheets/pattern_drawing.h"

namespace sheerlap {

/// The patterns as a DXF drawing of release 12: millimetres, a layer each for outlines,
/// holes, drill line and text. Letters beyond ASCII are written as \U+XXXX.
///
/// @errors  Unreadable: the system's folder for temporary files takes no file
Result<std::string> pattern_dxf(const PatternDrawing& drawing);

}  // namespace sheerlap

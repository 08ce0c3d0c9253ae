#pragma once

#include "joint/sheets/sheet_style.h"

namespace sheerlap {

/// A sheet of paper, as it is looked at.
struct PageSize {
  double width_mm = 0;
  double height_mm = 0;

  /// The same sheet turned by a quarter.
  PageSize turned() const { return {height_mm, width_mm}; }
};

/// The sheet for reading and writing on, upright: A4 (210 x 297 mm) or Letter
/// (8.5 x 11 in).
/// @source  ISO 216 for A4; ASME Y14.1 size A for Letter: from memory, confirm
PageSize small_page(Paper paper);

/// The sheet for drawings, lying: A3 (420 x 297 mm) or ANSI B (17 x 11 in).
/// @source  ISO 216 for A3; ASME Y14.1 size B: from memory, confirm
PageSize drawing_page(Paper paper);

}  // namespace sheerlap

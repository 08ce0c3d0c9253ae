#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "joint/sheets/sheet_flow.h"

namespace sheerlap {

/// The count that must come out at the end of drilling, with blanks to fill in:
/// "holes drilled = fasteners issued - fasteners left = holes by the schedule".
///
/// @param to_drill  the holes of the schedule that are to be drilled
/// @param barred    those that are not
void draw_hole_count(SheetFlow& flow, std::size_t to_drill, std::size_t barred);

/// A row of fields to sign in, each as wide as the next.
void draw_signatures(SheetFlow& flow, const std::vector<std::string>& names);

}  // namespace sheerlap

#pragma once

#include "joint/reasons/reason.h"
#include "joint/sheets/sheet_flow.h"

namespace sheerlap {

/// The workings of figures, one below the other: the numbers given and where each is
/// from, then line by line the formula in letters, with its numbers, its value, source
/// and validity. A source and validity that stand at the line before are not repeated.
void write_workings(SheetFlow& flow, const Explanations& explanations);

}  // namespace sheerlap

#pragma once

#include "joint/documents/origin_words.h"
#include "joint/reasons/reason.h"
#include "joint/sheets/sheet_flow.h"

namespace sheerlap {

/// The workings of figures, one below the other: the numbers given and where each is
/// from, then line by line the formula in letters, with its numbers, its value, source
/// and validity. A source and validity that stand at the line before are not repeated.
/// @param words_of  where the user's values stand
void write_workings(SheetFlow& flow,
                    const Explanations& explanations,
                    const Joint& joint,
                    const OriginWords& words_of);

}  // namespace sheerlap

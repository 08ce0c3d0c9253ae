#pragma once

#include <string>
#include <vector>

#include "joint/sheets/box.h"
#include "joint/sheets/sheet_flow.h"

namespace sheerlap {

/// A note on a sheet.
struct Note {
  std::string heading;  ///< may be empty
  std::string words;
};

/// Writes notes down columns, the first ones first, as large as goes into them up to
/// `letter_height::text`. What does not go into them at `letter_height::least` goes on
/// sheets of its own, in two columns. A note is never split.
///
/// @param columns  on the flow's sheet; its room is taken up to the lowest words
void write_notes(SheetFlow& flow,
                 std::vector<Box> columns,
                 const std::vector<Note>& notes);

}  // namespace sheerlap

#pragma once

#include <string>
#include <vector>

#include "joint/documents/number_style.h"
#include "joint/sheets/note_columns.h"
#include "joint/sheets/page_table.h"
#include "joint/sheets/strip_content.h"
#include "joint/sheets/strip_tiles.h"

namespace sheerlap {

/// A stretch of a strip with the sheets it goes on.
struct StripSheets {
  StripStretch stretch;
  StripTiles tiles;
};

/// "STARBOARD strip": and what it is not.
std::string strip_hand_words(SideName side);

/// How a strip is checked, joined, laid on and used, and the cautions.
/// @param piece  what a sheet of it is called: "tile" or "page"
std::vector<Note> strip_notes(SideName side,
                              const std::vector<StripSheets>& sheets,
                              const NumberStyle& style,
                              const std::string& piece);

/// What a tape must find along the drill line, stretch by stretch.
PageTable strip_lengths(const std::vector<StripSheets>& sheets,
                        const NumberStyle& style,
                        const std::string& piece);

/// The same in a sentence a stretch.
std::vector<std::string> strip_length_words(const std::vector<StripSheets>& sheets,
                                            const NumberStyle& style);

}  // namespace sheerlap

#pragma once

#include <string>

#include "joint/sheets/strip_drawing.h"

namespace sheerlap {

/// A running girth with its unit: "1235 mm".
std::string girth_words(Length girth, const NumberStyle& style);

/// From one tick of girth to the next: 100 mm or 4 in.
Length tick_step(LengthUnit unit);

/// Ticks of girth, at the drill line and at the edge away from the holes' marks, with
/// their numbers.
void draw_girth_ticks(const StripView& view);

/// The names of the hatched parts, between the drill line and the ticks.
void draw_band_names(const StripView& view);

/// Which hand and which way: beyond the edges, and on the strip itself.
void draw_strip_words(const StripView& view);

}  // namespace sheerlap

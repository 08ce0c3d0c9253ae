#pragma once

#include <optional>
#include <string>
#include <vector>

#include "joint/sheets/label_space.h"

namespace sheerlap {

/// Words over a view, and the point that an upright line leads down to.
struct LedLabel {
  Point2 foot;
  std::string words;
  double half_span_mm = 0;  ///< the foot may be this far to the left or the right
};

/// How led labels are written: level, on one of the lines over the view.
struct LabelLines {
  std::vector<double> baselines_y;  ///< the ones tried first, first
  double words_to_line_mm = 0.7;    ///< from a baseline to the top of its leader
};

/// Writes words over a view with their leaders, so that no words stand on other words
/// or on a leader: the fewest are left out, as far as a search of a fixed length finds.
///
/// @param space   what is taken already; the words and leaders are taken too
/// @param labels  in their order across the sheet
/// @returns  the words left out for want of room
std::vector<std::string> write_led_labels(Page& page,
                                          LabelSpace& space,
                                          const std::vector<LedLabel>& labels,
                                          const LabelLines& lines);

}  // namespace sheerlap

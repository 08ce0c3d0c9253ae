#pragma once

#include <array>
#include <cstddef>
#include <string>
#include <vector>

#include "geometry/points.h"
#include "joint/job.h"
#include "joint/sheets/sheet_style.h"

namespace sheerlap {

/// What the parts of a pattern are for; each has a layer of its own.
enum class PatternLayer { Outline, Holes, DrillLine, Text };
inline constexpr std::array pattern_layers{PatternLayer::Outline, PatternLayer::Holes,
                                           PatternLayer::DrillLine, PatternLayer::Text};

/// "outline", "holes", "drill-line" or "text".
std::string layer_name(PatternLayer layer);

struct PatternLine {
  PatternLayer layer = PatternLayer::Outline;
  std::vector<Point2> points;
  bool closed = false;
};

struct PatternCircle {
  PatternLayer layer = PatternLayer::Holes;
  Point2 centre;
  double radius_mm = 0;
};

/// A line of lettering; `at` is its middle, at the foot of its capitals.
struct PatternText {
  PatternLayer layer = PatternLayer::Text;
  Point2 at;
  double height_mm = 0;  ///< of capitals
  std::string words;     ///< printable
};

/// The flat patterns of all jigs, full size, one below the other; mm, y up. Nothing is
/// left of or below the origin.
struct PatternDrawing {
  std::string title;
  std::vector<PatternLine> lines;
  std::vector<PatternCircle> circles;
  std::vector<PatternText> texts;
  double width_mm = 0;
  double height_mm = 0;
};

/// The patterns of a job's jigs.
///
/// Each hole is as wide as what is to be cut: the bush's outside in a plate, the pilot
/// in a strip of no thickness; its centre is the hole's. An arrow points to the bow, or
/// on the transom to starboard, where the girths start.
///
/// @param job  with its layout and schedule
PatternDrawing pattern_drawing(const Job& job, const SheetStyle& style);

}  // namespace sheerlap

#pragma once

#include <array>
#include <optional>
#include <string>
#include <vector>

#include "geometry/points.h"
#include "joint/documents/number_style.h"
#include "joint/job.h"

namespace sheerlap {

/// The vertical section across the sheer where a bit goes in. Faces are straight in it:
/// each by its distances outboard of the sheer (mm), at depth 0 and at the lap's depth.
struct HoleSection {
  double lap_mm = 0;
  std::array<double, 2> hull_inner{};
  std::array<double, 2> hull{};
  std::array<double, 2> lip{};
  std::array<double, 2> lip_outer{};
  Point2 entry;  ///< of the bit: outboard of the sheer, and down from it (mm)
  Vector2 bit;   ///< its way as seen along the sheer, for each mm along the bit
};

/// A hole with what a page tells of it beyond its line in the schedule.
struct PageHole {
  const DrillStation* station = nullptr;
  const PerimeterSide* side = nullptr;
  Length sheer_girth;    ///< where it stands along the sheer
  std::string near_row;  ///< nearest row of the sheer table, and how far it is along
  std::string run;       ///< the run of equal spaces that ends or lies at it
  std::string keepout;   ///< the nearest keep-out, and how far it is along
  bool bridged = false;  ///< at one end of a space whose limit could not be kept
  std::string note;      ///< what is special about it; may be empty
  HoleSection section;
  /// Gap square to the hull at the top, middle and low edge of the lap.
  std::array<std::optional<Length>, 3> gaps;
};

/// The holes of a job, in the order of its schedule.
/// @param job  with its layout and schedule; referred to, not copied
std::vector<PageHole> page_holes(const Job& job, const NumberStyle& style);

/// A name of a layout that changes with its holes: 16 hexadecimal digits of their
/// marks, places and bits.
/// @source  FNV-1a, 64 bits (Fowler, Noll, Vo: the published offset basis and prime)
std::string layout_fingerprint(const Schedule& schedule);

}  // namespace sheerlap

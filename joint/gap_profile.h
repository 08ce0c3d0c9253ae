#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "geometry/mitre.h"
#include "joint/perimeter.h"

namespace sheerlap {

/// A gap and the depth it is at, mm.
struct GapAtDepth {
  double gap_mm = 0;
  double depth_mm = 0;
};

/// The gap down the whole lap, at one place of the sheer.
struct GapSection {
  Place place;
  double girth_mm = 0;     ///< along the sheer of the side
  std::size_t strand = 0;  ///< sections of one strand have joint between them
  double top_mm = 0;
  double middle_mm = 0;
  double low_mm = 0;
  GapAtDepth least;
  GapAtDepth greatest;
};

/// The gap between hull and lip along one side.
///
/// It is measured from the hull face along its outward normal. At a corner a hull face
/// that the mitre cuts back is measured where it ends.
class GapProfile {
 public:
  /// Both arguments are referred to, not copied.
  GapProfile(const Perimeter& perimeter, const PerimeterSide& side);

  /// Sections along the side's joint, in the side's direction: at every knot on both
  /// sides of it, and between knots no further apart than `step_mm`.
  std::vector<GapSection> sections(double step_mm) const;
  GapSection section(Place place, std::size_t strand) const;
  double gap_mm(Place place, double depth_mm) const;
  /// Where the hull face is measured for a place of the sheer: there, or where a mitre
  /// cuts it back.
  Place hull_place(Place place, double depth_mm) const;
  /// The first place at which no gap could be found, in which case the other results
  /// are of no use.
  std::optional<Place> lost() const { return lost_; }

 private:
  struct Cut {
    std::size_t knot;
    double u_mm;  ///< the furthest it cuts
  };
  void add_cuts(std::size_t knot, const Mitre& met);
  GapAtDepth extreme_between(Place place,
                             double from_mm,
                             double to_mm,
                             bool least) const;

  const Perimeter& perimeter_;
  const PerimeterSide& side_;
  /// By span: the corner after it, and the one before it, whose mitre cuts the hull
  /// face back within it at some depth.
  std::vector<std::optional<Cut>> cut_at_end_, cut_at_start_;
  mutable std::optional<Place> lost_;
};

}  // namespace sheerlap

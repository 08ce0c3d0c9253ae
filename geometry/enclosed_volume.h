#pragma once

#include <vector>

#include "geometry/result.h"
#include "geometry/ruled_face.h"

namespace sheerlap {

/// The depths between which two faces are looked at, at one place (mm).
struct DepthBand {
  double from_mm = 0;
  double to_mm = 0;
};

/// A part of one span, from one parameter to a greater one.
struct SpanPart {
  std::size_t span = 0;
  double from_u = 0;
  double to_u = 0;
};

/// The space between two faces that hang from one curve, where the outer face lies
/// outside the inner one.
///
/// Depth is vertical and offsets are square to the curve in plan, so a slice at one
/// depth has the area of the strip between two offset curves in plan, and the volume
/// is the integral of that over the depth: it goes with the plan length, however much
/// the curve rises and falls.
///
/// @source  derived: a strip between offsets a and b of a curve of plan length ds that
///          turns right by dphi has the area (b - a) ds + (b^2 - a^2)/2 dphi
class EnclosedSpace {
 public:
  /// @param band_from_mm, band_to_mm  the band of depths; `to` is cut to the lap
  EnclosedSpace(const RuledFace& inner, const RuledFace& outer, DepthBand band)
      : inner_(inner), outer_(outer), band_(band) {}

  /// The band at a place.
  DepthBand band(Place place) const;
  /// The volume for each unit of the curve's own arc length (mm2): the joint's section.
  double section_mm2(Place place) const;
  /// Parameters within a part, its ends among them and in order, between which the
  /// band's edges are smooth and open all along or not at all.
  std::vector<double> cuts(const SpanPart& part) const;
  /// The volume over a part of a span (mm3), mitres at its ends left out.
  double volume_mm3(const SpanPart& part) const;
  /// What the mitre at a knuckle adds (mm3); the lap is taken as deep in it as at the
  /// knuckle itself.
  Result<double> mitre_volume_mm3(std::size_t knot) const;

 private:
  double volume_by_u(Place place) const;

  const RuledFace& inner_;
  const RuledFace& outer_;
  DepthBand band_;
};

}  // namespace sheerlap

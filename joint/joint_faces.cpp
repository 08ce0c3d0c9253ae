#include "joint/joint_faces.h"

#include <utility>
#include <vector>

namespace sheerlap {
namespace {

RuledOffsets between(const RuledOffsets& from, const RuledOffsets& to, double share) {
  return {from.top_mm + share * (to.top_mm - from.top_mm),
          from.low_mm + share * (to.low_mm - from.low_mm),
          from.lap_mm + share * (to.lap_mm - from.lap_mm)};
}

/// Fills in the offsets of knots that are no rows, between those of the rows.
void fill_added(const SheerCurve& sheer, std::vector<RuledOffsets>& offsets) {
  const Curve& curve = *sheer.curve;
  for (std::size_t first = 0; first < sheer.knots.size(); ++first) {
    // a row with knots of ours after it; the first knot is always a row
    if (sheer.knots[first].added) continue;
    double run_mm = 0;
    std::vector<double> runs;
    std::size_t knot = first;
    while (knot < curve.spans()) {
      run_mm += curve.girth_mm(knot);
      knot = curve.knot_after(knot);
      if (!sheer.knots[knot].added) break;
      runs.push_back(run_mm);
    }
    for (std::size_t i = 0; i < runs.size(); ++i)
      offsets[first + 1 + i] = between(offsets[first], offsets[knot], runs[i] / run_mm);
  }
}

}  // namespace

JointFaces joint_faces(const Joint& joint, const SheerCurve& sheer) {
  const auto& rows = joint.sheer.rows;
  std::vector<RuledOffsets> none, hull, lip;
  for (const SheerKnot& knot : sheer.knots) {
    const FlangeOffsets& at = rows[knot.row].offsets;
    const double lap = at.lap.in_mm();
    none.push_back({0, 0, lap});
    hull.push_back({at.hull_top.in_mm(), at.hull_low.in_mm(), lap});
    lip.push_back({at.lip_top.in_mm(), at.lip_low.in_mm(), lap});
  }
  for (auto* offsets : {&none, &hull, &lip}) fill_added(sheer, *offsets);
  const auto make = [&](const std::vector<RuledOffsets>& offsets, double thickness) {
    return std::make_shared<const RuledFace>(sheer.curve, offsets, thickness);
  };
  return {make(none, 0), make(hull, 0), make(lip, 0),
          make(lip, joint.lip.thickness.in_mm())};
}

}  // namespace sheerlap

#include "joint/sheets/lap_section.h"

#include <utility>

#include "geometry/ruled_face.h"

namespace sheerlap {
namespace {

SectionEdge edge_of(const RuledFace& face, Place place, double lap_mm) {
  return {face.offset(place, 0).offset, face.offset(place, lap_mm).offset};
}

/// Where a line from a point meets an edge.
Point2 met(const LapSection& section,
           const SectionEdge& edge,
           const Point2& from,
           const Vector2& way) {
  const Point2 top = section.on(edge, 0);
  const Vector2 down = section.on(edge, section.lap_mm) - top;
  const Vector2 across(-down.y(), down.x());
  return from + way * (across.dot(top - from) / across.dot(way));
}

/// A direction in space as it is seen in the section.
Vector2 seen(const PlanFrame& frame, const Vector3& direction) {
  return {frame.outboard.dot(direction.head<2>()), direction.z()};
}

}  // namespace

Point2 LapSection::on(const SectionEdge& edge, double depth_mm) const {
  return {edge.top_mm + (edge.low_mm - edge.top_mm) * depth_mm / lap_mm, -depth_mm};
}

LapSection lap_section(const Job& job, const SectionPlace& where) {
  const Perimeter& perimeter = job.perimeter;
  const Place place = where.side->sheer.place_at(where.sheer_girth);
  const PlanFrame frame = plan_frame(perimeter.hull->curve().at(place));
  LapSection section;
  section.lap_mm = perimeter.hull->lap_mm(place);
  const auto edge = [&](const RuledFace& face) {
    return edge_of(face, place, section.lap_mm);
  };
  section.hull = edge(*perimeter.hull);
  section.hull_inner =
      edge(perimeter.hull->thickened(-job.joint.hull.thickness.in_mm()));
  section.lip = edge(*perimeter.lip);
  section.lip_outer = edge(*perimeter.lip_outer);
  section.bond_from_mm = job.joint.bond.from.value_or(Length()).in_mm();
  section.bond_to_mm = job.joint.bond.to.value_or(Length::mm(section.lap_mm)).in_mm();
  const double line_mm = where.side->drill_line.line().depth_mm();
  section.entry = section.on(section.lip_outer, line_mm);
  section.bit =
      -seen(frame, perimeter.lip_outer->at(place, line_mm).normal).normalized();
  section.at_lip = met(section, section.lip, section.entry, section.bit);
  section.at_hull = met(section, section.hull, section.entry, section.bit);
  section.at_inner = met(section, section.hull_inner, section.entry, section.bit);
  if (where.gap) {
    const double depth = where.gap->depth.in_mm();
    const Point2 start = section.on(section.hull, depth);
    const Vector2 way =
        seen(frame, perimeter.hull->at(place, depth).normal).normalized();
    section.gap = std::pair(start, met(section, section.lip, start, way));
  }
  return section;
}

}  // namespace sheerlap

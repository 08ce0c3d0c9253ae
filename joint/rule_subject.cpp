#include "joint/rule_subject.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <vector>

#include "joint/jigs.h"
#include "joint/side_ends.h"
#include "joint/worded_length.h"

namespace sheerlap {
namespace {

/// Lengths no further apart count as equal: of two worst holes the first is named.
constexpr double rounding_mm = 1e-6;

using Stations = std::vector<const DrillStation*>;

/// A hole on a side's drill line.
struct Hole {
  Length girth;
  std::string mark;
};

/// Keeps the lesser of two lengths.
void keep_least(std::optional<PlacedLength>& least, Length length, std::string where) {
  if (!least || (length - least->length).in_mm() < -rounding_mm)
    least = {length, std::move(where)};
}

void keep_greatest(std::optional<PlacedLength>& most,
                   Length length,
                   const std::string& where) {
  if (!most || (length - most->length).in_mm() > rounding_mm) most = {length, where};
}

Stations stations_on(const Schedule& schedule, SideName side) {
  Stations stations;
  for (const DrillStation& station : schedule.stations)
    if (station.side == side) stations.push_back(&station);
  return stations;
}

/// A corner, an opening's edge or an end of a side, where the laminate is taken to end.
struct LaminateEnd {
  Length girth;       ///< on the drill line
  Length hull_girth;  ///< on the hull face at the same depth
  std::string what;
};

/// Where a corner within a side lies on the hull's line.
Length hull_girth_of_corner(const PerimeterSide& side, Length girth) {
  for (std::size_t k = 0; k <= side.drill_line.path().span_count; ++k)
    if (std::abs((side.drill_line.girth_at_span(k) - girth).in_mm()) < rounding_mm)
      return side.hull_line.girth_at_span(k);
  return girth;
}

std::vector<LaminateEnd> laminate_ends(const PerimeterSide& side) {
  std::vector<LaminateEnd> ends;
  if (side.start != SideEnd::Smooth)
    ends.push_back({Length(), Length(), start_word(side)});
  for (const InnerCorner& corner : side.corners)
    ends.push_back({corner.girth, hull_girth_of_corner(side, corner.girth),
                    "corner within " + side_word(side.name)});
  const auto on_hull = [&](Length girth) {
    return side.hull_line.girth_at(side.drill_line.place_at(girth));
  };
  for (const OpeningSpan& opening : side.openings)
    for (const Length girth : {opening.from, opening.to})
      ends.push_back({girth, on_hull(girth), "opening " + opening.what});
  if (side.end != SideEnd::Smooth)
    ends.push_back({side.drill_line_length, side.hull_line.length(), end_word(side)});
  return ends;
}

void take_ends(RuleSubject& subject,
               const PerimeterSide& side,
               const Stations& stations) {
  for (const LaminateEnd& end : laminate_ends(side))
    for (const DrillStation* station : stations) {
      // signed on the hull: a bit that goes by a corner of the hull has less than none
      const bool after = station->girth >= end.girth;
      const Length on_lip =
          after ? station->girth - end.girth : end.girth - station->girth;
      const Length on_hull = after ? station->hull_girth - end.hull_girth
                                   : end.hull_girth - station->hull_girth;
      keep_least(subject.end, std::min(on_lip, on_hull),
                 fmt::format("at {}, {}", station->mark, end.what));
    }
}

/// The holes of a side, with the one on a centreline that starboard has for port.
std::vector<Hole> holes_on(const Schedule& schedule, const PerimeterSide& side) {
  std::vector<Hole> holes;
  for (const DrillStation* station : stations_on(schedule, side.name))
    holes.push_back({station->girth, station->mark});
  const Stations starboard = stations_on(schedule, SideName::Starboard);
  if (side.name != SideName::Port || starboard.empty()) return holes;
  const auto near = [](Length a, Length b) {
    return std::abs((a - b).in_mm()) < rounding_mm;
  };
  if (side.start == SideEnd::Smooth && near(starboard.front()->girth, Length()))
    holes.insert(holes.begin(), {Length(), starboard.front()->mark});
  if (side.end == SideEnd::Smooth &&
      near(starboard.back()->girth, side.drill_line_length))
    holes.push_back({side.drill_line_length, starboard.back()->mark});
  return holes;
}

/// The spaces of a side; twice the distance to an end on the centreline is one.
void take_pitches(RuleSubject& subject,
                  const PerimeterSide& side,
                  const std::vector<Hole>& holes) {
  if (holes.empty()) return;
  const auto take = [&](Length pitch, const std::string& where) {
    if (!(pitch.in_mm() > rounding_mm)) return;  // a hole on the centreline itself
    keep_greatest(subject.largest_pitch, pitch, where);
    keep_least(subject.smallest_pitch, pitch, where);
  };
  if (side.start == SideEnd::Smooth)
    take(2 * holes.front().girth,
         fmt::format("from {} across the {}", holes.front().mark, start_word(side)));
  for (std::size_t i = 1; i < holes.size(); ++i)
    if (!parted(side, holes[i - 1].girth, holes[i].girth))
      take(holes[i].girth - holes[i - 1].girth,
           fmt::format("from {} to {}", holes[i - 1].mark, holes[i].mark));
  if (side.end == SideEnd::Smooth)
    take(2 * (side.drill_line_length - holes.back().girth),
         fmt::format("from {} across the {}", holes.back().mark, end_word(side)));
}

/// Takes the lap where a stretch of joint starts and ends; between, it runs straight.
void take_laps(RuleSubject& subject,
               const RuledFace& face,
               const PerimeterSide& side,
               Length trims) {
  for (const SpanPart& part : side.parts)
    for (const double u_mm : {part.from_u, part.to_u}) {
      const Place place{part.span, u_mm};
      keep_least(subject.lap, Length::mm(face.lap_mm(place)) - trims,
                 fmt::format("on {} at girth {} on the sheer", side_word(side.name),
                             worded(side.sheer.girth_at(place))));
    }
}

/// A bond that is softer carries so little that the joint is a fastened one.
/// @source  derived: share of a fastener against adhesives of several families
constexpr double softest_adhesive = 5;  // N/mm2, in shear

JointFilling filling_of(const std::optional<Adhesive>& adhesive) {
  if (!adhesive) return JointFilling::NotGiven;
  return adhesive->strength.shear_modulus.value_or(softest_adhesive) < softest_adhesive
             ? JointFilling::Sealant
             : JointFilling::Adhesive;
}

}  // namespace

RuleSubject rule_subject(const Joint& joint, const FastenerSpec& fastener) {
  RuleSubject subject;
  subject.kind = fastener.kind;
  subject.diameter = fastener.diameter;
  subject.lip_hole = fastener.lip_hole;
  subject.hull_hole = fastener.hull_pilot.value_or(fastener.lip_hole);
  subject.lip_thickness = joint.lip.thickness;
  subject.hull_thickness = joint.hull.thickness;
  subject.filling = filling_of(joint.adhesive);
  return subject;
}

RuleSubject rule_subject(const Joint& joint,
                         const Perimeter& perimeter,
                         const Schedule& schedule) {
  RuleSubject subject = rule_subject(joint, schedule.fastener);
  for (const PerimeterSide& side : perimeter.sides) {
    take_pitches(subject, side, holes_on(schedule, side));
    take_ends(subject, side, stations_on(schedule, side.name));
    take_laps(subject, *perimeter.hull, side, joint.hull.trim + joint.lip.trim);
  }
  for (const DrillStation& station : schedule.stations) {
    keep_least(subject.edge_low, station.edge_low, "at " + station.mark);
    keep_least(subject.edge_top, station.edge_top, "at " + station.mark);
  }
  return subject;
}

}  // namespace sheerlap

#include "joint/drill_stations.h"

#include <fmt/format.h>

#include <algorithm>
#include <boost/math/tools/minima.hpp>
#include <cassert>
#include <utility>

#include "geometry/clearance.h"
#include "joint/drill_workings.h"

namespace sheerlap {
namespace {

/// The faces that a bit goes through, from outside.
struct Stack {
  const RuledFace& lip_outer;
  const RuledFace& lip;
  const RuledFace& hull;
  RuledFace hull_inner;
};

Stack stack_of(const Joint& joint, const Perimeter& perimeter) {
  return {*perimeter.lip_outer, *perimeter.lip, *perimeter.hull,
          perimeter.hull->thickened(-joint.hull.thickness.in_mm())};
}

/// A bit on its way through the stack.
struct Bore {
  Place place;
  FacePoint entry;
  Vector3 axis;
  FaceHit lip;
  FaceHit hull;
  FaceHit hull_inner;
};

std::optional<Bore> bore_at(const Stack& stack,
                            const SideLine& drill_line,
                            Length girth) {
  Bore bore;
  bore.place = drill_line.place_at(girth);
  bore.entry = drill_line.line().at(bore.place);
  bore.axis = -bore.entry.normal;
  const auto meet = [&](const RuledFace& face) {
    return face_hit(face, bore.entry.point, bore.axis, bore.place,
                    drill_line.line().depth_mm());
  };
  const auto lip = meet(stack.lip);
  const auto hull = meet(stack.hull);
  const auto hull_inner = meet(stack.hull_inner);
  if (!lip || !hull || !hull_inner) return std::nullopt;
  bore.lip = *lip;
  bore.hull = *hull;
  bore.hull_inner = *hull_inner;
  return bore;
}

BitWay way_of(const Bore& bore) {
  return {bore.lip.distance_mm, bore.hull.distance_mm, bore.hull_inner.distance_mm};
}

enum class FaceEdge { Top, Low };

/// The least distance from a point of a face to the face's edge (mm); negative beyond
/// it.
double edge_distance_mm(const RuledFace& face,
                        const FaceHit& at,
                        const Point3& point,
                        FaceEdge edge) {
  const auto edge_depth = [&](Place place) {
    return edge == FaceEdge::Top ? 0 : face.lap_mm(place);
  };
  const auto distance = [&](double along) {
    const Place place = face.curve().moved(at.place, along);
    return (face.at(place, edge_depth(place)).point - point).norm();
  };
  const double inside =
      edge == FaceEdge::Top ? at.depth_mm : edge_depth(at.place) - at.depth_mm;
  const double reach = 2 * distance(0);
  if (reach == 0) return 0;
  const int bits = std::numeric_limits<double>::digits / 2;
  const double least =
      boost::math::tools::brent_find_minima(distance, -reach, reach, bits).second;
  return std::copysign(std::min(least, distance(0)), inside);
}

/// The girth of a place of the hull line, also where it lies past the side's end.
Length hull_girth(const PerimeterSide& side, Place place) {
  const SideLine& line = side.hull_line;
  const SidePath& path = line.path();
  const std::size_t index = line.index_of(place.span);
  if (index < path.span_count) return line.girth_at(place);
  // round a smooth end the hull line of the neighbouring side goes on
  const FaceLine& along = line.line();
  const double from_begin =
      along.length_mm(place.span, along.begin_u_mm(place.span), place.u_mm);
  const double to_end = along.span_mm(place.span) - from_begin;
  const bool before = index != path.span_count;
  if (before) return Length::mm(path.forward ? -to_end : -from_begin);
  return line.length() + Length::mm(path.forward ? from_begin : to_end);
}

/// Whether a place lies past a corner or an end of the hull line; at a kink that is no
/// corner the hull goes on.
bool past_hull(const Perimeter& perimeter, const PerimeterSide& side, Place place) {
  constexpr double within_mm = 1e-6;
  const FaceLine& line = side.hull_line.line();
  const Curve& curve = line.face().curve();
  const auto stops = [&](std::size_t knot) {
    return perimeter.knots[knot].corner || !curve.joins_at(knot);
  };
  return (place.u_mm < line.begin_u_mm(place.span) - within_mm && stops(place.span)) ||
         (place.u_mm > line.end_u_mm(place.span) + within_mm &&
          stops(curve.knot_after(place.span)));
}

std::string mark_of(SideName side, std::size_t index, std::size_t count) {
  const char letter = side == SideName::Starboard ? 'S'
                      : side == SideName::Port    ? 'P'
                                                  : 'T';
  return fmt::format("{}{:0{}}", letter, index + 1, count < 100 ? 2 : 3);
}

std::optional<DrillStation> station_at(const Joint& joint,
                                       const Perimeter& perimeter,
                                       const PerimeterSide& side,
                                       const Stack& stack,
                                       Length girth) {
  const auto bore = bore_at(stack, side.drill_line, girth);
  if (!bore) return std::nullopt;
  const auto gap = gap_mm(stack.hull, stack.lip, bore->hull.place, bore->hull.depth_mm);
  if (!gap) return std::nullopt;
  DrillStation station;
  station.side = side.name;
  station.girth = girth;
  station.hull_girth = hull_girth(side, bore->hull.place);
  station.point = bore->entry.point;
  station.axis = bore->axis;
  const FaceHit on_lip{0, bore->place, side.drill_line.line().depth_mm()};
  const Point3 into_hull = station.point + bore->hull.distance_mm * station.axis;
  PlainWorking work;
  station.edge_low = Length::mm(
      edge_left(work, edge_low_words,
                edge_distance_mm(stack.lip_outer, on_lip, station.point, FaceEdge::Low),
                joint.lip.trim, "lip.trim"));
  station.edge_top = Length::mm(
      edge_left(work, edge_top_words,
                edge_distance_mm(stack.hull, bore->hull, into_hull, FaceEdge::Top),
                joint.hull.trim, "hull.trim"));
  station.past_hull = past_hull(perimeter, side, bore->hull.place);
  station.gap = Length::mm(*gap);
  station.stack = Length::mm(stack_along(work, way_of(*bore), *gap));
  station.lip_depth = Length::mm(lip_bit_depth(work, way_of(*bore)));
  return station;
}

void add_fastener(DrillStation& station, const FastenerSpec& spec) {
  station.length = serving_length(spec, station.stack);
  station.lip_hole = spec.lip_hole;
  station.hull_pilot = spec.hull_pilot;
  station.countersink = spec.countersink;
  PlainWorking work;
  station.drill_depth = Length::mm(through_bit_depth(work, station.stack));
  if (!spec.hull_pilot) station.lip_depth.reset();
}

}  // namespace

BitWay bit_way(const Joint& joint,
               const Perimeter& perimeter,
               const DrillStation& station) {
  const Stack stack = stack_of(joint, perimeter);
  const auto bore =
      bore_at(stack, perimeter.side(station.side)->drill_line, station.girth);
  assert(bore && "a station of the schedule goes through");
  return way_of(*bore);
}

bool misses_hull(const DrillStation& station) {
  return station.past_hull || !(station.edge_top > Length());
}

bool drillable(const DrillStation& station) {
  return station.length.has_value() && !misses_hull(station);
}

Result<std::vector<DrillStation>> drill_stations(const Joint& joint,
                                                 const Perimeter& perimeter,
                                                 const Layout& layout,
                                                 const FastenerSpec& spec) {
  const Stack stack = stack_of(joint, perimeter);
  std::vector<DrillStation> stations;
  Errors errors;
  for (const PerimeterSide& side : perimeter.sides) {
    const auto placed =
        std::find_if(layout.sides.begin(), layout.sides.end(),
                     [&](const LayoutSide& one) { return one.name == side.name; });
    if (placed == layout.sides.end()) continue;
    const std::size_t count = placed->girths.size();
    for (std::size_t i = 0; i < count; ++i) {
      auto station = station_at(joint, perimeter, side, stack, placed->girths[i]);
      const std::string mark = mark_of(side.name, i, count);
      if (!station) {
        errors.push_back(
            {ErrorKind::InvalidInput, "fastener.line",
             fmt::format("the bit at {}, {:.1f} mm along {}, does not go "
                         "through lip and hull: faces that run more "
                         "nearly side by side there",
                         mark, placed->girths[i].in_mm(), side_word(side.name))});
        continue;
      }
      station->mark = mark;
      station->because = placed->because[i];
      PlainWorking work;
      station->pitch = Length::mm(girth_between(
          work, i == 0 ? Length() : placed->girths[i - 1], station->girth));
      if (i > 0 && !stations.empty())
        station->chord =
            Length::mm(straight_between(work, stations.back().point, station->point));
      add_fastener(*station, spec);
      stations.push_back(std::move(*station));
    }
  }
  if (!errors.empty()) return tl::unexpected(std::move(errors));
  return stations;
}

std::vector<std::optional<DrillStation>> stations_at(
    const Joint& joint,
    const Perimeter& perimeter,
    const PerimeterSide& side,
    const std::vector<Length>& girths) {
  const Stack stack = stack_of(joint, perimeter);
  std::vector<std::optional<DrillStation>> stations;
  for (const Length girth : girths)
    stations.push_back(station_at(joint, perimeter, side, stack, girth));
  return stations;
}

}  // namespace sheerlap

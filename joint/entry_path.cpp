#include "joint/entry_path.h"

#include <Eigen/Geometry>
#include <algorithm>
#include <boost/math/tools/minima.hpp>
#include <boost/math/tools/toms748_solve.hpp>
#include <cmath>
#include <cstdint>
#include <vector>

#include "geometry/clearance.h"

namespace sheerlap {
namespace {

constexpr double step_mm = 25;
/// A squeeze helps where the side faces outboard by this share and more.
constexpr double sideways = 0.5;
/// How close to nothing still passes.
constexpr double keeps_mm = 1e-9;
/// Angles looked at at each place, the ends with them.
constexpr int angles = 9;
/// Whether the clearance rises from an end is seen this share of an angle's step in.
constexpr double rise_share = 1e-3;

/// The clearance at one place and moment.
struct Passing {
  EntryClearance at;
  double athwartships = 0;  ///< of the outboard way there, 0 to 1
};

/// The worst of the passings, and what would mend them.
class Worst {
 public:
  void add_low_edge(const Passing& passing) {
    const EntryClearance& at = passing.at;
    if (!path_.low_edge || below(at, *path_.low_edge)) path_.low_edge = at;
    path_.lead_in = std::max(path_.lead_in, -at.worst);
    add(passing);
  }
  void add(const Passing& passing) {
    if (first_ || below(passing.at, path_.face)) path_.face = passing.at;
    first_ = false;
    const double clash = -passing.at.worst.in_mm();
    if (!(clash > keeps_mm)) return;
    if (passing.athwartships < sideways)
      path_.squeeze.reset();
    else if (path_.squeeze)
      path_.squeeze =
          std::max(*path_.squeeze, Length::mm(clash / passing.athwartships));
  }
  EntryPath path() const { return path_; }

 private:
  /// Of those that are alike the first is kept.
  static bool below(const EntryClearance& at, const EntryClearance& least) {
    return at.worst.in_mm() < least.worst.in_mm() - keeps_mm;
  }

  EntryPath path_{std::nullopt, {}, Length(), Length()};
  bool first_ = true;
};

/// Places along a side's joint: at knots, and between them no further apart than the
/// step.
template <class Use>
void for_each_place(const PerimeterSide& side, double step, const Use& use) {
  for (const SpanPart& part : side.parts) {
    const double length = std::abs(part.to_u - part.from_u);
    const double steps = std::max(1.0, std::ceil(length / step));
    for (double i = 0; i <= steps; ++i)
      use(Place{part.span, part.from_u + (part.to_u - part.from_u) * i / steps});
  }
}

double athwartships(const Curve& curve, Place place) {
  return std::abs(plan_frame(curve.at(place)).outboard.y());
}

/// The end of the sheer that the lid turns on.
Point3 pivot_of(const Curve& curve, FirstEnd first) {
  const double sign = first == FirstEnd::Bow ? -1 : 1;
  Point3 pivot = curve.at({0, 0}).point;
  for (std::size_t span = 0; span < curve.spans(); ++span)
    for (const double u : {0.0, curve.chord_mm(span)}) {
      const Point3 point = curve.at({span, u}).point;
      if (sign * point.x() > sign * pivot.x()) pivot = point;
    }
  return pivot;
}

/// A lid that turns about one of its ends.
class TurningLid {
 public:
  TurningLid(const Perimeter& perimeter, const TurnedEntry& entry)
      : perimeter_(perimeter),
        pivot_(pivot_of(perimeter.hull->curve(), entry.first)),
        // about y, which is to starboard: a positive turn takes the stern down
        sign_(entry.first == FirstEnd::Bow ? -1 : 1),
        angle_(entry.angle.in_radians()) {}

  void add_passings(const PerimeterSide& side, Place place, Worst& worst) const;

 private:
  std::optional<FaceHit> hit(Place place, double angle) const;
  std::optional<double> low_edge_angle(Place place) const;
  std::optional<Passing> passing(const PerimeterSide& side,
                                 Place place,
                                 double angle) const;
  double clear_mm(Place place, double angle) const;
  double least_angle(Place place, double from) const;

  const Perimeter& perimeter_;
  Point3 pivot_;
  double sign_;
  double angle_;
};

/// Where the level line outboard from the hull's top edge meets the lip's face.
std::optional<FaceHit> TurningLid::hit(Place place, double angle) const {
  const Eigen::AngleAxisd back(-sign_ * angle, Vector3::UnitY());
  const Point3 edge = perimeter_.hull->at(place, 0).point;
  Vector3 outboard = Vector3::Zero();
  outboard.head<2>() = plan_frame(perimeter_.hull->curve().at(place)).outboard;
  const double height = std::abs(edge.x() - pivot_.x()) * std::sin(angle);
  return face_hit(*perimeter_.lip, back * (edge - pivot_) + pivot_, back * outboard,
                  place, height);
}

/// The angle at which the hull's edge is as far down the lip as its low edge; nothing
/// if it is not, even as the turning begins.
std::optional<double> TurningLid::low_edge_angle(Place place) const {
  const double lap = perimeter_.lip->lap_mm(place);
  const auto below = [&](double angle) {
    const auto found = hit(place, angle);
    return found ? found->depth_mm - lap : lap;
  };
  if (!(below(angle_) > 0)) return std::nullopt;
  if (!(below(0) < 0)) return 0;
  std::uintmax_t steps = 60;
  const auto [over, off] = boost::math::tools::toms748_solve(
      below, 0.0, angle_, boost::math::tools::eps_tolerance<double>(50), steps);
  return over;
}

double TurningLid::clear_mm(Place place, double angle) const {
  const auto found = hit(place, angle);
  return found ? found->distance_mm : 1e300;
}

std::optional<Passing> TurningLid::passing(const PerimeterSide& side,
                                           Place place,
                                           double angle) const {
  const auto found = hit(place, angle);
  if (!found) return std::nullopt;
  return Passing{{Length::mm(found->distance_mm), Length::mm(found->depth_mm),
                  Angle::radians(angle), side.name, side.sheer.girth_at(place)},
                 athwartships(perimeter_.hull->curve(), place)};
}

/// The angle of the least clearance from 0 to `from`.
double TurningLid::least_angle(Place place, double from) const {
  const auto clear = [&](double angle) { return clear_mm(place, angle); };
  const auto angle_at = [&](int i) { return from * i / (angles - 1); };
  int least = 0;
  double least_mm = clear(0);
  for (int i = 1; i < angles; ++i)
    if (const double here = clear(angle_at(i)); here < least_mm) {
      least = i;
      least_mm = here;
    }
  // at an end from which the clearance rises there is nothing to look for
  const double inward = from / (angles - 1) * rise_share;
  if (least == 0 && clear(inward) >= least_mm) return 0;
  if (least == angles - 1 && clear(from - inward) >= least_mm) return from;
  const auto [angle, clear_there] = boost::math::tools::brent_find_minima(
      clear, angle_at(std::max(0, least - 1)),
      angle_at(std::min(angles - 1, least + 1)), 26);
  return clear_there < least_mm - keeps_mm ? angle : angle_at(least);
}

void TurningLid::add_passings(const PerimeterSide& side,
                              Place place,
                              Worst& worst) const {
  const auto low_edge = low_edge_angle(place);
  const double from = low_edge.value_or(angle_);
  if (low_edge)
    if (const auto at = passing(side, place, from)) worst.add_low_edge(*at);
  if (const auto at = passing(side, place, least_angle(place, from))) worst.add(*at);
}

}  // namespace

EntryPath straight_entry(const Perimeter& perimeter) {
  Worst worst;
  const RuledFace& lip = *perimeter.lip;
  for (const PerimeterSide& side : perimeter.sides)
    for_each_place(side, 1e300, [&](Place place) {
      const double edge = perimeter.hull->offset(place, 0).offset;
      const double lap = lip.lap_mm(place);
      const auto passing = [&](double depth) {
        return Passing{
            {Length::mm(lip.offset(place, depth).offset - edge), Length::mm(depth),
             Angle(), side.name, side.sheer.girth_at(place)},
            athwartships(perimeter.hull->curve(), place)};
      };
      worst.add_low_edge(passing(lap));
      worst.add(passing(0));
    });
  return worst.path();
}

EntryPath turned_entry(const Perimeter& perimeter, const TurnedEntry& entry) {
  Worst worst;
  const TurningLid lid(perimeter, entry);
  for (const PerimeterSide& side : perimeter.sides)
    for_each_place(side, step_mm,
                   [&](Place place) { lid.add_passings(side, place, worst); });
  return worst.path();
}

}  // namespace sheerlap

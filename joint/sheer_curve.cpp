#include "joint/sheer_curve.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <optional>
#include <utility>

#include "joint/sheer_rows.h"

namespace sheerlap {
namespace {

/// A turn sharper than this leaves no corner to mitre.
constexpr double sharpest_turn = 170 * std::numbers::pi / 180;

Errors mark_corners(SheerPoints& sheer, Angle knuckle_angle) {
  Errors errors;
  const auto turns = plan_turns(sheer.points, sheer.closed);
  for (std::size_t i = 0; i < turns.size(); ++i) {
    SheerKnot& knot = sheer.knots[i];
    const bool end = !sheer.closed && (i == 0 || i + 1 == turns.size());
    knot.corner =
        !end && (knot.corner || std::abs(turns[i]) > knuckle_angle.in_radians());
    if (std::abs(turns[i]) > sharpest_turn && !knot.mirrored)
      errors.push_back({ErrorKind::InvalidInput, fmt::format("sheer.row[{}]", knot.row),
                        fmt::format("the sheer turns back on itself by {:.0f} degrees: "
                                    "a corner turns by less than 170",
                                    std::abs(turns[i]) * 180 / std::numbers::pi)});
  }
  return errors;
}

/// Where the sheer crosses the centreline aft: at a knot, or after `knot` within its
/// span.
struct AftCrossing {
  std::size_t knot = 0;
  bool at_knot = true;
};

std::optional<AftCrossing> aft_crossing(const SheerPoints& sheer) {
  const std::size_t n = sheer.points.size();
  std::optional<AftCrossing> best;
  double furthest = -1e300;
  for (std::size_t i = 0; i < n; ++i) {
    const double y = sheer.points[i].y();
    const double next = sheer.points[(i + 1) % n].y();
    const bool at_knot = y == 0;
    if (i == sheer.bow || !(at_knot || (y > 0 && next < 0))) continue;
    if (sheer.points[i].x() > furthest) best = AftCrossing{i, at_knot};
    furthest = std::max(furthest, sheer.points[i].x());
  }
  return best;
}

/// The transom corners: the last ones before the centreline, in the after half.
struct TransomCorners {
  std::optional<std::size_t> starboard, port;
};

TransomCorners transom_corners(const SheerPoints& sheer, AftCrossing aft) {
  const auto [low, high] = std::minmax_element(
      sheer.points.begin(), sheer.points.end(),
      [](const Point3& a, const Point3& b) { return a.x() < b.x(); });
  const double middle = (low->x() + high->x()) / 2;
  const auto corner = [&](std::size_t i) {
    return sheer.knots[i].corner && sheer.points[i].x() > middle;
  };
  TransomCorners corners;
  const std::size_t last = aft.at_knot ? aft.knot : aft.knot + 1;
  for (std::size_t i = 1; i < last; ++i)
    if (corner(i)) corners.starboard = i;
  for (std::size_t i = sheer.points.size() - 1; i > aft.knot; --i)
    if (corner(i)) corners.port = i;
  return corners;
}

SideEnd kind_of(const SheerKnot& knot) {
  return knot.corner ? SideEnd::Corner : SideEnd::Smooth;
}

/// The sides of an open sheer, which both end alike.
std::vector<SheerSide> open_sides(const SheerPoints& sheer, SideEnd end) {
  const SideEnd bow = kind_of(sheer.knots[sheer.bow]);
  const std::size_t spans = sheer.points.size() - 1;
  return {{SideName::Starboard, {sheer.bow, spans - sheer.bow, true}, bow, end},
          {SideName::Port, {sheer.bow, sheer.bow, false}, bow, end}};
}

/// The sheer from the port transom corner by way of the bow to the starboard one.
SheerPoints without_transom(const SheerPoints& sheer,
                            std::size_t starboard,
                            std::size_t port) {
  SheerPoints open;
  open.closed = false;
  open.bow = sheer.points.size() - port;
  for (std::size_t i = port; i <= sheer.points.size() + starboard; ++i) {
    open.points.push_back(sheer.points[i % sheer.points.size()]);
    open.knots.push_back(sheer.knots[i % sheer.points.size()]);
  }
  return open;
}

std::vector<SheerSide> sides_with_transom(const SheerPoints& sheer,
                                          std::size_t starboard,
                                          std::size_t port) {
  const SideEnd bow = kind_of(sheer.knots[0]);
  const std::size_t n = sheer.points.size();
  return {{SideName::Starboard, {0, starboard, true}, bow, SideEnd::Corner},
          {SideName::Port, {0, n - port, false}, bow, SideEnd::Corner},
          {SideName::Transom,
           {starboard, port - starboard, true},
           SideEnd::Corner,
           SideEnd::Corner}};
}

/// The place on a span where the curve crosses the centreline.
Place centreline_crossing(const Curve& curve, std::size_t span) {
  double from = 0;
  double to = curve.chord_mm(span);
  for (int step = 0; step < 80; ++step) {
    const double middle = (from + to) / 2;
    (curve.at({span, middle}).point.y() > 0 ? from : to) = middle;
  }
  return {span, from};
}

Curve curve_through(const Sheer& sheer, const SheerPoints& points) {
  CurveShape shape{points.closed, sheer.curve == CurveKind::Chords, {}};
  for (const SheerKnot& knot : points.knots) shape.knuckles.push_back(knot.corner);
  return Curve(points.points, shape);
}

SheerCurve open_curve(const Sheer& sheer, const SheerPoints& points, SideEnd end) {
  return {std::make_shared<const Curve>(curve_through(sheer, points)), points.knots,
          open_sides(points, end)};
}

/// Both sides end where the curve crosses the centreline aft; a knot is put in there if
/// there is none.
SheerCurve curve_without_transom(const Sheer& sheer,
                                 const SheerPoints& points,
                                 AftCrossing aft) {
  Curve curve = curve_through(sheer, points);
  std::vector<SheerKnot> knots = points.knots;
  std::size_t stern = aft.knot;
  if (!aft.at_knot) {
    curve = curve.with_knot(centreline_crossing(curve, aft.knot));
    stern = aft.knot + 1;
    knots.insert(knots.begin() + static_cast<std::ptrdiff_t>(stern),
                 {knots[aft.knot].row, false, true, false});
  }
  const SideEnd bow = kind_of(knots[0]);
  const SideEnd end = kind_of(knots[stern]);
  const std::vector<SheerSide> sides{
      {SideName::Starboard, {0, stern, true}, bow, end},
      {SideName::Port, {0, knots.size() - stern, false}, bow, end}};
  return {std::make_shared<const Curve>(std::move(curve)), std::move(knots), sides};
}

}  // namespace

Result<SheerCurve> sheer_curve(const Sheer& sheer) {
  auto points = sheer_points(sheer);
  if (!points) return tl::unexpected(points.error());
  Errors errors = mark_corners(*points, sheer.knuckle_angle);
  if (!errors.empty()) return tl::unexpected(std::move(errors));

  if (!points->closed) return open_curve(sheer, *points, SideEnd::End);
  const auto crossing = aft_crossing(*points);
  if (!crossing)
    return invalid_input("sheer.file",
                         "the whole sheer never comes back over the centreline aft: it "
                         "runs once round, with port at negative y");
  const AftCrossing aft = *crossing;
  const TransomCorners corners = transom_corners(*points, aft);
  if (corners.starboard.has_value() != corners.port.has_value())
    return invalid_input("sheer.file",
                         fmt::format("there is a transom corner on {} only: flag the "
                                     "other one as a knuckle too",
                                     corners.starboard ? "starboard" : "port"));
  if (corners.starboard && !sheer.closed)
    return open_curve(sheer,
                      without_transom(*points, *corners.starboard, *corners.port),
                      SideEnd::Corner);
  if (corners.starboard)
    return SheerCurve{std::make_shared<const Curve>(curve_through(sheer, *points)),
                      points->knots,
                      sides_with_transom(*points, *corners.starboard, *corners.port)};
  if (!sheer.closed)
    return invalid_input("sheer.closed",
                         "the joint is to stop at the transom corners, and the sheer "
                         "has none: flag them as knuckles, or say closed = true");
  return curve_without_transom(sheer, *points, aft);
}

}  // namespace sheerlap

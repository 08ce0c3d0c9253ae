#include "joint/whole_errors.h"

#include <Eigen/Geometry>
#include <boost/test/unit_test.hpp>
#include <cmath>
#include <functional>
#include <numbers>

#include "geometry/clearance.h"
#include "tests/joint/example_boats.h"

namespace sheerlap {
namespace {

using Move = std::function<Point3(const PerimeterSide&, Place, const Point3&)>;

/// The hull's face as it is once every point of it was moved.
struct MovedFace {
  const RuledFace& face;
  const PerimeterSide& side;
  Move move;

  Point3 at(Place place, double depth_mm) const {
    return move(side, place, face.at(place, depth_mm).point);
  }
  Vector3 normal(Place place, double depth_mm) const {
    constexpr double step = 1e-2;
    const Place before{place.span, place.u_mm - step};
    const Place after{place.span, place.u_mm + step};
    const Vector3 by_u = at(after, depth_mm) - at(before, depth_mm);
    const Vector3 by_depth = at(place, depth_mm + step) - at(place, depth_mm - step);
    return by_u.cross(by_depth).normalized();
  }
};

Joint uneven_joint() { return with_uneven_offsets(example_joint(small_boat(), {})); }

/// The gap's change for each unit of an error, from the gaps of two moved hulls.
double change_by_moving(const Perimeter& boat,
                        const PerimeterSide& side,
                        const LapPoint& point,
                        double size,
                        const std::function<Move(double)>& moved) {
  double gaps[2];
  for (const int sign : {0, 1}) {
    const MovedFace hull{*boat.hull, side, moved(sign == 0 ? -size : size)};
    const auto hit =
        face_hit(*boat.lip, hull.at(point.place, point.depth_mm),
                 hull.normal(point.place, point.depth_mm), point.place, point.depth_mm);
    BOOST_TEST_REQUIRE(hit.has_value());
    gaps[sign] = hit->distance_mm;
  }
  return (gaps[1] - gaps[0]) / (2 * size);
}

/// Whether a point is far enough from a row, where offsets change their rate and the
/// gap has a kink.
bool between_rows(const Perimeter& boat, const LapPoint& point) {
  const double chord = boat.hull->curve().chord_mm(point.place.span);
  return point.place.u_mm > 5 && point.place.u_mm < chord - 5;
}

/// Holds an error against moved hulls at the stations between rows.
void check_moved(ProcessErrorKind kind,
                 double size,
                 const std::function<Move(double)>& moved) {
  const Joint joint = uneven_joint();
  const Perimeter boat = perimeter_of(joint);
  const auto points = boat_points(joint, boat, {});
  BOOST_TEST_REQUIRE(points.has_value());
  const auto error = WholeError::of(kind, boat, "here");
  BOOST_TEST_REQUIRE(error.has_value());
  double greatest = 0;
  for (const BoatStation& station : points->stations)
    for (const BoatPoint* point : {&station.top, &station.low}) {
      if (!between_rows(boat, point->lap)) continue;
      const PerimeterSide& side = *boat.side(point->lap.side);
      const double change = error->gap_change(side, *point);
      const double other = change_by_moving(boat, side, point->lap, size, moved);
      greatest = std::max(greatest, std::abs(change));
      // two gaps good to 1e-12 over twice the size, and the numeric normals' 1e-6
      BOOST_TEST(std::abs(change - other) < 2e-6 * (1 + std::abs(change)));
    }
  BOOST_TEST(greatest * size > 1e-5);
}

BOOST_AUTO_TEST_SUITE(whole_errors_suite)

BOOST_AUTO_TEST_CASE(a_shrunken_hull_leaves_the_gap_that_its_faces_leave) {
  const Perimeter boat = perimeter_of(uneven_joint());
  // derived: the middle of the sheer's box, on the centreline
  Eigen::AlignedBox3d box;
  for (const Point3& point : small_boat()) box.extend(point);
  const Point3 middle(box.center().x(), 0, box.center().z());
  check_moved(ProcessErrorKind::HullShrinkage, 1e-6, [&](double size) -> Move {
    return [=](const PerimeterSide&, Place, const Point3& point) -> Point3 {
      return middle + (1 - size) * (point - middle);
    };
  });
}

BOOST_AUTO_TEST_CASE(a_twisted_hull_leaves_the_gap_that_its_faces_leave) {
  Eigen::AlignedBox3d box;
  for (const Point3& point : small_boat()) box.extend(point);
  const Point3 middle(box.center().x(), 0, box.center().z());
  const double length = box.sizes().x();
  check_moved(ProcessErrorKind::HullTwist, 1e-4, [&](double degrees) -> Move {
    return [=](const PerimeterSide&, Place, const Point3& point) -> Point3 {
      const double angle =
          degrees * std::numbers::pi / 180 * (point.x() - middle.x()) / length;
      const Vector3 arm = point - middle;
      return middle + Eigen::AngleAxisd(angle, Vector3::UnitX()) * arm;
    };
  });
}

BOOST_AUTO_TEST_CASE(an_opened_hull_leaves_the_gap_that_its_faces_leave) {
  const Perimeter boat = perimeter_of(uneven_joint());
  Eigen::AlignedBox3d box;
  for (const Point3& point : small_boat()) box.extend(point);
  const auto opened = HullMovement::through(
      boat, {{Length::mm(box.center().x()), Length::mm(1), "here"}});
  BOOST_TEST_REQUIRE(opened.has_value());
  check_moved(ProcessErrorKind::HullOpening, 1e-3, [&](double size) -> Move {
    return [=](const PerimeterSide& side, Place place, const Point3& point) -> Point3 {
      return point + size * opened->at(side, place).y_mm * Vector3::UnitY();
    };
  });
}

BOOST_AUTO_TEST_CASE(a_shrunken_lid_leaves_the_gap_of_a_lid_drawn_smaller) {
  // derived: the lid's rows and offsets drawn smaller about the middle, as a perimeter
  // of its own
  const Joint joint = uneven_joint();
  const Perimeter boat = perimeter_of(joint);
  const auto points = boat_points(joint, boat, {});
  const auto error = WholeError::of(ProcessErrorKind::LidShrinkage, boat, "here");
  BOOST_TEST_REQUIRE((points.has_value() && error.has_value()));
  Eigen::AlignedBox3d box;
  for (const Point3& point : small_boat()) box.extend(point);
  const Point3 middle(box.center().x(), 0, box.center().z());
  constexpr double share = 1e-5;
  Joint smaller = joint;
  for (SheerRow& row : smaller.sheer.rows) {
    row.point = middle + (1 - share) * (row.point - middle);
    FlangeOffsets& at = row.offsets;
    for (Length* length :
         {&at.lap, &at.hull_top, &at.hull_low, &at.lip_top, &at.lip_low})
      *length = (1 - share) * *length;
  }
  const Perimeter lid = perimeter_of(smaller);
  double greatest = 0;
  for (const BoatStation& station : points->stations) {
    const LapPoint& at = station.low.lap;
    if (!between_rows(boat, at)) continue;
    const auto hit =
        face_hit(*lid.lip, at.hull.point, at.hull.normal, at.place, at.depth_mm);
    BOOST_TEST_REQUIRE(hit.has_value());
    const double change = hit->distance_mm - station.low.gap_mm;
    const double column = error->gap_change(*boat.side(station.side), station.low);
    greatest = std::max(greatest, std::abs(change));
    // the second order: a shift of up to 0.03 mm on a bend of 100 mm or more
    BOOST_TEST(std::abs(share * column - change) < 1e-5);
  }
  BOOST_TEST(greatest > 1e-3);
}

BOOST_AUTO_TEST_CASE(a_boat_shrunken_with_its_lid_has_its_gaps_shrunken) {
  // derived: hull and lid scaled alike about one point scale the gaps
  const Joint joint = uneven_joint();
  const Perimeter boat = perimeter_of(joint);
  const auto points = boat_points(joint, boat, {});
  const auto hull = WholeError::of(ProcessErrorKind::HullShrinkage, boat, "here");
  const auto lid = WholeError::of(ProcessErrorKind::LidShrinkage, boat, "here");
  BOOST_TEST_REQUIRE((points.has_value() && hull.has_value() && lid.has_value()));
  for (const BoatStation& station : points->stations) {
    const PerimeterSide& side = *boat.side(station.side);
    const double both =
        hull->gap_change(side, station.top) + lid->gap_change(side, station.top);
    BOOST_TEST(std::abs(both + station.top.gap_mm) < 1e-8);
  }
}

BOOST_AUTO_TEST_CASE(an_open_joint_opens_by_nothing_at_its_ends) {
  Joint joint =
      example_joint({{0, 0, 0}, {500, 400, 0}, {2000, 800, 0}, {4000, 900, 0}}, {});
  joint.sheer.closed = false;
  const Perimeter boat = perimeter_of(joint);
  const auto points = boat_points(joint, boat, {});
  const auto error = WholeError::of(ProcessErrorKind::HullOpening, boat, "here");
  BOOST_TEST_REQUIRE((points.has_value() && error.has_value()));
  for (const BoatStation& station : points->stations) {
    const PerimeterSide& side = *boat.side(station.side);
    const double change = error->gap_change(side, station.top);
    const double x = station.top.lap.hull.point.x();
    if (x < 1 || x > 3999) BOOST_TEST(std::abs(change) < 1e-2);
    // derived: the push is 1 mm at the middle, square to the centreline
    if (std::abs(x - 2000) < 1e-6)
      BOOST_TEST(change == -std::abs(station.top.lap.hull.normal.y()),
                 boost::test_tools::tolerance(1e-2));
  }
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

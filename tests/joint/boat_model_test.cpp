#include "joint/boat_model.h"

#include <algorithm>
#include <boost/test/unit_test.hpp>
#include <cmath>
#include <memory>

#include "geometry/clearance.h"
#include "joint/adhesive.h"
#include "joint/whole_errors.h"
#include "tests/joint/example_boats.h"

namespace sheerlap {
namespace {

using Eigen::Index;

Joint joint_with(std::vector<ProcessError> errors) {
  Joint joint = with_uneven_offsets(example_joint(small_boat(), {}));
  joint.tolerance = ToleranceInputs{1000, 1, std::move(errors)};
  return joint;
}

ProcessError error_of(ProcessErrorKind kind) {
  return {kind, ErrorLaw::Normal, 0, 0.5, Length::mm(300), false};
}

double volume_ml(const Joint& joint, const Perimeter& boat) {
  const auto plan = adhesive_plan(joint, boat, 0);
  BOOST_TEST_REQUIRE(plan.has_value());
  return plan->nominal.joint.in_ml();
}

BoatModel model_of(const Joint& joint, const Perimeter& boat) {
  auto model = boat_model(joint, boat, {}, volume_ml(joint, boat));
  BOOST_TEST_REQUIRE(model.has_value());
  return std::move(*model);
}

BOOST_AUTO_TEST_SUITE(boat_model_suite)

BOOST_AUTO_TEST_CASE(the_gaps_as_drawn_are_those_of_the_faces) {
  const Joint joint = joint_with({});
  const Perimeter boat = perimeter_of(joint);
  const BoatModel model = model_of(joint, boat);
  Index i = 0;
  double joint_mm = 0;
  for (const BoatStation& station : model.points.stations) {
    for (const BoatPoint* point : {&station.top, &station.low}) {
      const auto gap =
          gap_mm(*boat.hull, *boat.lip, point->lap.place, point->lap.depth_mm);
      BOOST_TEST(model.gaps[i++] == *gap, boost::test_tools::tolerance(1e-9));
    }
    joint_mm += station.run_mm;
  }
  // property: stations stand for the whole of the joint
  BOOST_TEST(joint_mm == boat.sheer_length.in_mm(), boost::test_tools::tolerance(1e-9));
}

BOOST_AUTO_TEST_CASE(stations_are_no_further_apart_than_asked) {
  const Joint joint = joint_with({});
  const Perimeter boat = perimeter_of(joint);
  const auto points = boat_points(joint, boat, {});
  BOOST_TEST_REQUIRE(points.has_value());
  for (std::size_t i = 1; i < points->stations.size(); ++i) {
    const BoatStation& a = points->stations[i - 1];
    const BoatStation& b = points->stations[i];
    if (a.side != b.side) continue;
    // the parameter is the chord, and a girth is a little longer
    BOOST_TEST((b.girth - a.girth).in_mm() < 53);
    BOOST_TEST((b.girth >= a.girth));
  }
}

BOOST_AUTO_TEST_CASE(the_ring_goes_once_round_without_a_jump) {
  const Joint joint = joint_with({});
  const Perimeter boat = perimeter_of(joint);
  const SheerRing ring = sheer_ring(boat);
  BOOST_TEST(ring.closed);
  const auto at = [&](SideName side, Length girth) {
    return along_ring_mm(boat, side, girth);
  };
  const auto length = [&](SideName side) { return boat.side(side)->sheer_length; };
  BOOST_TEST(at(SideName::Starboard, Length()) == 0);
  BOOST_TEST(at(SideName::Starboard, length(SideName::Starboard)) ==
             at(SideName::Transom, Length()));
  BOOST_TEST(at(SideName::Transom, length(SideName::Transom)) ==
                 at(SideName::Port, length(SideName::Port)),
             boost::test_tools::tolerance(1e-12));
  BOOST_TEST(at(SideName::Port, Length()) == ring.length_mm);
}

BOOST_AUTO_TEST_CASE(a_thicker_lip_or_a_fuller_hull_takes_the_gap_and_the_volume) {
  const Joint joint = joint_with(
      {error_of(ProcessErrorKind::LipThickness), error_of(ProcessErrorKind::HullFace)});
  const Perimeter boat = perimeter_of(joint);
  const BoatModel model = model_of(joint, boat);
  constexpr double by_mm = 0.05;
  Perimeter thicker = boat;
  thicker.lip = std::make_shared<const RuledFace>(boat.lip->thickened(-by_mm));
  Perimeter fuller = boat;
  fuller.hull = std::make_shared<const RuledFace>(boat.hull->thickened(by_mm));
  const Perimeter* rebuilt[] = {&thicker, &fuller};
  for (const std::size_t k : {0u, 1u}) {
    const AlongColumn& column = model.along[k];
    BOOST_TEST(column.error == k);
    const double lost = volume_ml(joint, *rebuilt[k]) - model.volume_ml;
    // the lip's face is larger than the hull's by the gap over the bend's radius, all
    // round 2 pi times the gap of 5 mm in 15 m, and the mitres' corners are left out
    BOOST_TEST(by_mm * column.volume_ml.sum() == lost,
               boost::test_tools::tolerance(5e-3));
    for (std::size_t i = 0; i < model.points.stations.size(); i += 5) {
      const LapPoint& at = model.points.stations[i].low.lap;
      const auto gap =
          gap_mm(*rebuilt[k]->hull, *rebuilt[k]->lip, at.place, at.depth_mm);
      const double change = *gap - model.points.stations[i].low.gap_mm;
      // the point that the rebuilt face has at that depth has slid down the face by
      // the draft of 4 in 50, and the gap changes by 3 in 50
      BOOST_TEST(std::abs(change - by_mm * column.low[static_cast<Index>(i)]) <
                 5e-3 * by_mm);
    }
  }
  BOOST_TEST(model.along[1].low.isConstant(-1));
  BOOST_TEST(model.along[0].hole_gap == -1);
  BOOST_TEST(model.along[0].hole_way == 0);
  BOOST_TEST(model.along[1].hole_way == -1);
}

BOOST_AUTO_TEST_CASE(a_higher_trim_reads_the_gap_further_up) {
  // derived: the faces carried on by 1 mm, as rows drawn 1 mm higher
  const Joint joint = joint_with({error_of(ProcessErrorKind::HullTrim)});
  const Perimeter boat = perimeter_of(joint);
  const BoatModel model = model_of(joint, boat);
  const AlongColumn& column = model.along.front();
  Joint higher = joint;
  for (SheerRow& row : higher.sheer.rows) {
    FlangeOffsets& at = row.offsets;
    row.point.z() += 1;
    const double share = 1 / at.lap.in_mm();
    at.hull_top = at.hull_top - share * (at.hull_low - at.hull_top);
    at.lip_top = at.lip_top - share * (at.lip_low - at.lip_top);
    at.lap += Length::mm(1);
  }
  const Perimeter raised = perimeter_of(higher);
  for (std::size_t i = 0; i < model.points.stations.size(); ++i) {
    const LapPoint& at = model.points.stations[i].top.lap;
    const auto gap = gap_mm(*raised.hull, *raised.lip, at.place, 0);
    const double change = *gap - model.points.stations[i].top.gap_mm;
    // rows' faces are not quite ruled the same between rows as carried on
    BOOST_TEST(std::abs(change - column.top[static_cast<Index>(i)]) < 2e-3);
    BOOST_TEST(column.low[static_cast<Index>(i)] == 0);
  }
  // the band is the whole lap: more of it is to be filled
  BOOST_TEST(column.volume_ml.sum() == volume_ml(higher, raised) - model.volume_ml,
             boost::test_tools::tolerance(2e-2));
  Joint lower_band = joint;
  lower_band.bond.from = Length::mm(5);
  const BoatModel banded = model_of(lower_band, boat);
  BOOST_TEST(banded.along.front().volume_ml.isZero(0));
}

BOOST_AUTO_TEST_CASE(a_correlation_shorter_than_the_stations_is_refused) {
  Joint joint = joint_with(
      {error_of(ProcessErrorKind::HullFace), error_of(ProcessErrorKind::HullTrim)});
  joint.tolerance->errors[1].correlation = Length::mm(19);
  const auto model = boat_model(joint, perimeter_of(joint), {}, 1000);
  BOOST_TEST_REQUIRE(!model.has_value());
  BOOST_TEST_REQUIRE(model.error().size() == 1u);
  BOOST_TEST(model.error()[0].where == "error[1].correlation");
  BOOST_TEST(model.error()[0].message ==
             "the gap is looked at every 50 mm of girth: at least 100 mm");
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

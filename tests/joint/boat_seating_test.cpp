#include "joint/boat_seating.h"

#include <boost/test/unit_test.hpp>
#include <cmath>

#include "joint/seating_search.h"
#include "tests/joint/example_boats.h"

namespace sheerlap {
namespace {

using Eigen::Index;

Joint joint_with_spreaders(std::vector<ProcessError> errors) {
  Joint joint = with_uneven_offsets(example_joint(small_boat(), {}));
  joint.tolerance = ToleranceInputs{1000, 1, std::move(errors)};
  for (const double x : {1700., 3300., 5300.})
    joint.seating.spreaders.push_back({Length::mm(x), Length::mm(5)});
  return joint;
}

BoatModel model_of(const Joint& joint, const Perimeter& boat) {
  auto model = boat_model(joint, boat, {}, 2000);
  BOOST_TEST_REQUIRE(model.has_value());
  return std::move(*model);
}

/// What was done to a hull.
struct Moved {
  double opened_mm = 0;
  double shrunken = 0;  ///< share
};

/// The same stations for the search by the true gaps, on a hull that was moved.
SeatingTask true_task(const Joint& joint,
                      const Perimeter& boat,
                      const BoatModel& model,
                      const Moved& moved) {
  const auto opened = HullMovement::through(
      boat, {{Length::mm(3125), Length::mm(moved.opened_mm), "here"}});
  BOOST_TEST_REQUIRE(opened.has_value());
  const Point3 middle(3125, 0, 717.5);
  const double size = 1 - moved.shrunken;
  SeatingTask task;
  for (const BoatStation& station : model.points.stations)
    for (const BoatPoint* point : {&station.top, &station.low}) {
      LapPoint lap = point->lap;
      lap.free = opened->at(*boat.side(station.side), lap.place);
      lap.hull.point = middle + size * (lap.hull.point - middle);
      lap.hull.by_u *= size;
      lap.hull.by_depth *= size;
      task.points.push_back(lap);
    }
  task.lip = boat.lip.get();
  task.datum = model.points.datum;
  task.gap_min_mm = joint.adhesive->gap_min.in_mm();
  task.gap_max_mm = joint.adhesive->gap_max.in_mm();
  for (const Spreader& spreader : joint.seating.spreaders)
    task.squeeze_most_mm.push_back(spreader.most.in_mm());
  return task;
}

BOOST_AUTO_TEST_SUITE(boat_seating_suite)

BOOST_AUTO_TEST_CASE(boats_are_seated_nearly_as_by_their_true_gaps) {
  using Kind = ProcessErrorKind;
  const Joint joint =
      joint_with_spreaders({{Kind::HullOpening, ErrorLaw::Normal, 0, 1, {}, false},
                            {Kind::HullShrinkage, ErrorLaw::Normal, 0, 1, {}, false}});
  const Perimeter boat = perimeter_of(joint);
  const BoatModel model = model_of(joint, boat);
  BoatSeating seating(model, *joint.adhesive, joint.seating.spreaders);
  SeatedBoat seated;
  const struct {
    Moved moved;
    double within_mm;
  } rows[] = {{{-4, 0}, 1e-3},      {{-1, 0.0003}, 1e-3}, {{0, 0}, 1e-3},
              {{3, -0.0003}, 1e-3}, {{8, 0}, 1e-3},       {{2, 0.001}, 3e-3}};
  for (const auto& [moved, within_mm] : rows)
    BOOST_TEST_CONTEXT("opened " << moved.opened_mm << ", shrunken "
                                 << moved.shrunken) {
      const auto best = best_seating(true_task(joint, boat, model, moved));
      BOOST_TEST_REQUIRE(best.has_value());
      seating.seat(model.gaps + moved.opened_mm * model.whole[0].gaps +
                       moved.shrunken * model.whole[1].gaps,
                   seated);
      // the second order: faces 3 mm further along, turned by 3 in 5000
      BOOST_TEST(std::abs(seated.margin_mm - best->margin_mm) < within_mm);
    }
}

BOOST_AUTO_TEST_CASE(a_boat_needs_what_brings_its_gaps_into_the_window) {
  // derived: a gap of 3 all round a level box of straight sides, opened by 6 where the
  // spreader is; squeezed back by 4 the sides are 2 out and the gap 1, the window's
  // least; the opening has the shape of the squeeze
  Joint joint = box_joint(4000, 2000, {});
  joint.tolerance = ToleranceInputs{
      1000, 1, {{ProcessErrorKind::HullOpening, ErrorLaw::Normal, 0, 1, {}, false}}};
  joint.seating.spreaders.push_back({Length::mm(2000), Length::mm(5)});
  const Perimeter boat = perimeter_of(joint);
  const BoatModel model = model_of(joint, boat);
  BoatSeating seating(model, *joint.adhesive, joint.seating.spreaders);
  SeatedBoat seated;
  const struct {
    double opened, squeeze;
    SqueezeNeed need;
  } rows[] = {{0, 0, SqueezeNeed::None},   {1.5, 0, SqueezeNeed::None},
              {6, 4, SqueezeNeed::Within}, {6.9, 4.9, SqueezeNeed::Within},
              {8, 6, SqueezeNeed::Beyond}, {40, 38, SqueezeNeed::Beyond},
              {-9, 4, SqueezeNeed::Within}};
  for (const auto& row : rows) BOOST_TEST_CONTEXT("opened by " << row.opened) {
      seating.seat(model.gaps + row.opened * model.whole[0].gaps, seated);
      BOOST_TEST((seated.need == row.need));
      BOOST_TEST(std::abs(seated.squeeze_mm - row.squeeze) < 1e-6);
      // property: joined, a boat that fits has its gaps in the window, squeezed no more
      // than it needs
      const Eigen::VectorXd joined = model.gaps + row.opened * model.whole[0].gaps +
                                     model.unknowns.gaps * seated.joined;
      const bool fits = row.need < SqueezeNeed::Beyond;
      BOOST_TEST((joined.minCoeff() >= 1 - 1e-8) == fits);
      const double squeezed = std::abs(seated.joined[first_squeeze]);
      BOOST_TEST(std::abs(squeezed - (fits ? row.squeeze : 5)) < 1e-6);
    }
  // derived: further than ten times the limit is not looked at
  seating.seat(model.gaps + 60 * model.whole[0].gaps, seated);
  BOOST_TEST((seated.need == SqueezeNeed::Never));
  // derived: no squeeze at the spreader makes the bow's gap any wider
  Eigen::VectorXd gaps = model.gaps;
  for (std::size_t i = 0; i < model.points.stations.size(); ++i)
    gaps.segment(2 * static_cast<Index>(i), 2).array() -= 2.5;
  seating.seat(gaps, seated);
  BOOST_TEST((seated.need == SqueezeNeed::Never));
}

BOOST_AUTO_TEST_CASE(without_spreaders_a_boat_goes_on_or_never) {
  Joint joint = box_joint(4000, 2000, {});
  joint.tolerance = ToleranceInputs{
      1000, 1, {{ProcessErrorKind::HullOpening, ErrorLaw::Normal, 0, 1, {}, false}}};
  const BoatModel model = model_of(joint, perimeter_of(joint));
  BoatSeating seating(model, *joint.adhesive, {});
  SeatedBoat seated;
  seating.seat(model.gaps + 1.9 * model.whole[0].gaps, seated);
  BOOST_TEST((seated.need == SqueezeNeed::None));
  seating.seat(model.gaps + 2.1 * model.whole[0].gaps, seated);
  BOOST_TEST((seated.need == SqueezeNeed::Never));
  BOOST_TEST(std::abs(seated.margin_mm + 0.1) < 1e-6);
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

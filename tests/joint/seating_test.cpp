#include "joint/seating.h"

#include <Eigen/Geometry>
#include <boost/test/unit_test.hpp>
#include <cmath>
#include <memory>
#include <numbers>

#include "joint/seating_task.h"
#include "tests/joint/example_boats.h"

namespace sheerlap {
namespace {

Seating seating_of(const Joint& joint,
                   const Perimeter& perimeter,
                   const SeatingInputs& inputs = {}) {
  auto found = seating(joint, inputs, perimeter);
  BOOST_TEST_REQUIRE(found.has_value());
  // property: at the end a linear programme has nothing left to promise
  BOOST_TEST(found->gain_left.in_mm() < 1e-6);
  return std::move(*found);
}

Joint ellipse_joint(double semi_x_mm, double semi_y_mm, const ExampleFaces& faces) {
  constexpr int rows = 61;
  std::vector<Point3> points;
  for (int i = 0; i < rows; ++i) {
    const double angle = std::numbers::pi * i / (rows - 1);
    points.emplace_back(semi_x_mm * (1 - std::cos(angle)),
                        i + 1 == rows ? 0 : semi_y_mm * std::sin(angle), 0);
  }
  return example_joint(points, faces);
}

/// A lid that is turned about `pivot` and then shifted, on a hull that is not.
void move_lid(Perimeter& perimeter, const Point2& pivot, Vector2 shift, double turn) {
  const Curve& curve = perimeter.lip->curve();
  std::vector<Point3> points;
  std::vector<RuledOffsets> offsets;
  for (std::size_t knot = 0; knot < curve.knots(); ++knot) {
    Point3 point = curve.at({knot, 0}).point;
    point.head<2>() =
        pivot + shift + Eigen::Rotation2Dd(turn) * Vector2(point.head<2>() - pivot);
    points.push_back(point);
    offsets.push_back(perimeter.lip->offsets(knot).from);
  }
  const CurveShape shape{true, false, std::vector<bool>(points.size(), false)};
  perimeter.lip = std::make_shared<const RuledFace>(
      std::make_shared<const Curve>(points, shape), offsets);
}

BOOST_AUTO_TEST_SUITE(seating_suite)

BOOST_AUTO_TEST_CASE(a_lid_shifted_on_a_circle_is_shifted_back) {
  // derived: hull and lid are circles with radii 3 apart, so the gap is 3 all round
  // where they are concentric, 2 inside the window of 1 to 8, and less on one side else
  const Joint joint = ellipse_joint(1000, 1000, {});
  Perimeter boat = perimeter_of(joint);
  move_lid(boat, {1000, 0}, {5, -3}, 0);
  const Seating found = seating_of(joint, boat);
  BOOST_TEST(std::abs(found.dx.in_mm() + 5) < 1e-6);
  BOOST_TEST(std::abs(found.dy.in_mm() - 3) < 1e-6);
  BOOST_TEST(std::abs(found.margin.in_mm() - 2) < 1e-6);
  BOOST_TEST(found.as_drawn.in_mm() < -3);
}

BOOST_AUTO_TEST_CASE(a_lid_shifted_and_turned_on_an_ellipse_is_put_back) {
  // derived: the lid was moved by p -> R (p - c) + c + d; turned back by R' = R^-1 and
  // shifted by -R' d about the same c it is where it was drawn
  const Joint joint = ellipse_joint(3000, 1000, {});
  Perimeter boat = perimeter_of(joint);
  const double turn = 0.3 * std::numbers::pi / 180;
  const Vector2 shift(4, -6);
  move_lid(boat, {3000, 0}, shift, turn);
  const Seating found = seating_of(joint, boat);
  const Vector2 back = -(Eigen::Rotation2Dd(-turn) * shift);
  BOOST_TEST(std::abs(found.dx.in_mm() - back.x()) < 1e-6);
  BOOST_TEST(std::abs(found.dy.in_mm() - back.y()) < 1e-6);
  BOOST_TEST(std::abs(found.turn.in_radians() + turn) * 3000 < 1e-6);
  BOOST_TEST(std::abs(found.margin.in_mm() - 2) < 1e-6);
  BOOST_TEST(found.at_bow.in_mm() ==
                 found.dy.in_mm() - 3000 * std::sin(found.turn.in_radians()),
             boost::test_tools::tolerance(1e-12));
}

BOOST_AUTO_TEST_CASE(a_boat_alike_on_both_hands_is_not_moved_across_or_turned) {
  const Joint joint = with_uneven_offsets(example_joint(small_boat(), {}));
  const Perimeter boat = perimeter_of(joint);
  const Seating found = seating_of(joint, boat);
  BOOST_TEST(std::abs(found.dy.in_mm()) < 1e-6);
  BOOST_TEST(std::abs(found.turn.in_radians()) * 3000 < 1e-6);
  BOOST_TEST(found.margin.in_mm() >= found.as_drawn.in_mm());
}

BOOST_AUTO_TEST_CASE(no_seating_on_a_grid_is_better) {
  const Joint joint = as_whole(with_uneven_offsets(example_joint(small_boat(), {})));
  Joint uneven = joint;
  uneven.sheer.rows[4].offsets.lip_low = Length::mm(9);
  uneven.sheer.rows[16].offsets.lip_top = Length::mm(1.2);
  const Perimeter boat = perimeter_of(uneven);
  auto task = seating_task(uneven, {}, boat, {});
  BOOST_TEST_REQUIRE(task.has_value());
  // every seventh point will do, and leaves time for the grid
  std::vector<LapPoint> points;
  for (std::size_t i = 0; i < task->points.size(); i += 7)
    points.push_back(task->points[i]);
  task->points = points;
  const auto found = best_seating(*task);
  BOOST_TEST_REQUIRE(found.has_value());
  double best = -1e300;
  for (int i = -4; i <= 4; ++i)
    for (int j = -4; j <= 4; ++j)
      for (int k = -4; k <= 4; ++k) {
        const LidUnknowns at = found->unknowns + 0.25 * Eigen::Vector3d(i, j, k);
        const auto there = seating_at(*task, at);
        if (there) best = std::max(best, there->margin_mm);
      }
  // the grid holds the answer itself
  BOOST_TEST(std::abs(best - found->margin_mm) < 1e-6);
}

BOOST_AUTO_TEST_CASE(a_hull_that_opened_is_squeezed_back_to_its_mould) {
  // derived: a strip moved by 9 at the spreader and pushed back by 9 there is where it
  // was; the gap is then 3 all round. The ends have it whatever is squeezed, so no more
  // than 2 can be had, and no less squeeze has it
  const Joint joint = box_joint(4000, 2000, {});
  const Perimeter boat = perimeter_of(joint);
  SeatingInputs inputs;
  inputs.readings.push_back(
      {Length::mm(2000), "", Length::mm(2000), Length::mm(2018), Length::mm(2002)});
  inputs.spreaders.push_back({Length::mm(2000), Length::mm(20)});
  const Seating found = seating_of(joint, boat, inputs);
  BOOST_TEST_REQUIRE(found.squeezes.size() == 1u);
  BOOST_TEST(std::abs(found.squeezes[0].amount.in_mm() - 9) < 1e-6);
  BOOST_TEST(std::abs(found.margin.in_mm() - 2) < 1e-6);
  BOOST_TEST((found.checks.front().state == CheckState::Pass));
  BOOST_TEST(found.squeezes[0].to_mould.in_mm() == 9,
             boost::test_tools::tolerance(1e-12));
  BOOST_TEST(found.squeezes[0].limit_price == 0);
  BOOST_TEST_REQUIRE(found.readings.size() == 1u);
  BOOST_TEST(std::abs(found.readings[0].seated.in_mm()) < 1e-6);
  BOOST_TEST(found.seated.least.gap.in_mm() == 3, boost::test_tools::tolerance(1e-6));
  BOOST_TEST(found.seated.greatest.gap.in_mm() == 3,
             boost::test_tools::tolerance(1e-6));
  // derived: free, the sides have gone 9 out under a lip 3 off; held 1 out
  BOOST_TEST_REQUIRE(found.free.has_value());
  BOOST_TEST(found.free->least.gap.in_mm() == -6, boost::test_tools::tolerance(1e-6));
  BOOST_TEST_REQUIRE(found.held.has_value());
  BOOST_TEST(found.held->least.gap.in_mm() == 2, boost::test_tools::tolerance(1e-6));
}

BOOST_AUTO_TEST_CASE(a_spreader_goes_no_further_than_it_may) {
  // derived: 5 of the 9 mm leave 4, and a gap of -1 where the window starts at 1
  const Joint joint = box_joint(4000, 2000, {});
  const Perimeter boat = perimeter_of(joint);
  SeatingInputs inputs;
  inputs.readings.push_back(
      {Length::mm(2000), "", Length::mm(2000), Length::mm(2018), std::nullopt});
  inputs.spreaders.push_back({Length::mm(2000), Length::mm(5)});
  const Seating found = seating_of(joint, boat, inputs);
  BOOST_TEST(found.squeezes[0].amount.in_mm() == 5, boost::test_tools::tolerance(1e-9));
  BOOST_TEST(found.margin.in_mm() == -2, boost::test_tools::tolerance(1e-6));
  BOOST_TEST((found.checks.front().state == CheckState::Fail));
  // derived: the worst gap is at the spreader, upright, and grows with the squeeze
  BOOST_TEST(found.squeezes[0].limit_price == 1, boost::test_tools::tolerance(1e-4));
}

BOOST_AUTO_TEST_CASE(a_gap_gains_the_margin_its_price_says_when_it_is_mended) {
  // property: the prices of the gaps that hold a seating add up to 1, and a gap window
  // wider by a little at its least end gains the prices of the gaps held there
  Joint joint = with_uneven_offsets(example_joint(small_boat(), {}));
  joint.sheer.rows[5].offsets.lip_low = Length::mm(9);
  const Perimeter boat = perimeter_of(joint);
  const Seating found = seating_of(joint, boat);
  BOOST_TEST_REQUIRE(found.contacts.size() >= 2u);
  double all = 0, least = 0;
  for (const HoldingGap& gap : found.contacts) {
    BOOST_TEST(gap.price > 0);
    all += gap.price;
    if (gap.tight) least += gap.price;
  }
  BOOST_TEST(all == 1, boost::test_tools::tolerance(1e-6));
  constexpr double more_mm = 0.01;
  joint.adhesive->gap_min = joint.adhesive->gap_min - Length::mm(more_mm);
  const Seating wider = seating_of(joint, boat);
  // the gaps' slopes change by about 1e-3 of themselves over the move
  BOOST_TEST((wider.margin - found.margin).in_mm() == least * more_mm,
             boost::test_tools::tolerance(1e-2));
}

BOOST_AUTO_TEST_CASE(slopes_of_the_gap_are_those_of_its_differences) {
  const Joint joint = with_uneven_offsets(example_joint(small_boat(), {}));
  const Perimeter boat = perimeter_of(joint);
  SeatingInputs inputs;
  inputs.spreaders = {{Length::mm(2500), Length::mm(9)},
                      {Length::mm(4200), Length::mm(9)}};
  const auto task = seating_task(joint, inputs, boat, {});
  BOOST_TEST_REQUIRE(task.has_value());
  LidUnknowns at(5);
  at << 1.5, -0.7, 2, 3, -2;
  for (std::size_t i = 0; i < task->points.size(); i += 97) {
    const auto gap = lid_gap(task->points[i], *task->lip, task->datum, at);
    BOOST_TEST_REQUIRE(gap.has_value());
    for (Eigen::Index k = 0; k < at.size(); ++k) {
      const LidUnknowns step = 1e-4 * LidUnknowns::Unit(at.size(), k);
      const auto more = lid_gap(task->points[i], *task->lip, task->datum, at + step);
      const auto less = lid_gap(task->points[i], *task->lip, task->datum, at - step);
      BOOST_TEST_REQUIRE((more && less));
      // rounding of a gap, 1e-12, over the step
      BOOST_TEST(std::abs((more->gap_mm - less->gap_mm) / 2e-4 - gap->slope[k]) < 1e-7);
    }
  }
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

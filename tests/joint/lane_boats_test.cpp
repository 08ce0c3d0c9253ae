#include "joint/lane_boats.h"

#include <boost/test/unit_test.hpp>
#include <cmath>

#include "joint/sample_figures.h"
#include "tests/joint/example_boats.h"

namespace sheerlap {
namespace {

using Eigen::Index;

BoatModel model_with(std::vector<ProcessError> errors) {
  Joint joint = with_uneven_offsets(example_joint(small_boat(), {}));
  joint.tolerance = ToleranceInputs{1000, 1, std::move(errors)};
  auto model = boat_model(joint, perimeter_of(joint), {}, 2000);
  BOOST_TEST_REQUIRE(model.has_value());
  return std::move(*model);
}

BoatLane lane_from(std::uint64_t first, ErrorSet set = ErrorSet::First) {
  BoatLane lane{17, set, {}};
  for (std::uint64_t& boat : lane.boats) boat = first++;
  return lane;
}

constexpr auto normal = ErrorLaw::Normal, even = ErrorLaw::Uniform;

BOOST_AUTO_TEST_SUITE(lane_boats_suite)

BOOST_AUTO_TEST_CASE(boats_without_errors_are_the_boat_as_drawn) {
  const BoatModel model =
      model_with({{ProcessErrorKind::HullTwist, normal, 0, 0, {}, false},
                  {ProcessErrorKind::HullFace, even, 0, 0, Length::mm(200), false}});
  LaneErrors errors;
  LaneBoats boats;
  draw_errors(model, lane_from(3), errors);
  apply_errors(model, errors, boats);
  for (Index at = 0; at < lane_count; ++at) {
    BOOST_TEST((boats.gaps.row(at).matrix().transpose() == model.gaps));
    BOOST_TEST(boats.volume_ml[at] == model.volume_ml);
  }
}

BOOST_AUTO_TEST_CASE(a_mean_alone_moves_every_boat_by_its_column) {
  const BoatModel model = model_with(
      {{ProcessErrorKind::HullOpening, normal, 2, 0, {}, false},
       {ProcessErrorKind::LipThickness, normal, 0.3, 0, Length::mm(200), false}});
  LaneErrors errors;
  LaneBoats boats;
  draw_errors(model, lane_from(0), errors);
  apply_errors(model, errors, boats);
  Eigen::VectorXd gaps = model.gaps + 2 * model.whole[0].gaps;
  for (Index i = 0; i < model.along[0].top.size(); ++i) {
    gaps[2 * i] += 0.3 * model.along[0].top[i];
    gaps[2 * i + 1] += 0.3 * model.along[0].low[i];
  }
  const double volume = model.volume_ml + 2 * model.whole[0].volume_ml +
                        0.3 * model.along[0].volume_ml.sum();
  BOOST_TEST((boats.gaps.row(5).matrix().transpose() - gaps).norm() < 1e-12);
  BOOST_TEST(boats.volume_ml[2] == volume, boost::test_tools::tolerance(1e-12));
}

BOOST_AUTO_TEST_CASE(errors_have_their_laws) {
  // derived: a normal law of mean 1 and deviation 0.5; an even one of mean 2 and half
  // width 3, whose variance is 3; the same at a place of an error along the joint
  const BoatModel model = model_with(
      {{ProcessErrorKind::HullTwist, normal, 1, 0.5, {}, false},
       {ProcessErrorKind::HullShrinkage, even, 2, 3, {}, false},
       {ProcessErrorKind::HullFace, normal, 1, 0.5, Length::mm(400), false},
       {ProcessErrorKind::LipThickness, even, 2, 3, Length::mm(400), false}});
  RunningFigures figures[4];
  LaneErrors errors;
  double furthest = 0;
  constexpr std::uint64_t boats = 40000;
  for (std::uint64_t first = 0; first < boats; first += lane_count) {
    draw_errors(model, lane_from(first), errors);
    for (Index at = 0; at < lane_count; ++at) {
      figures[0].add(errors.whole[0][at]);
      figures[1].add(errors.whole[1][at]);
      figures[2].add(errors.along[0](at, 40));
      figures[3].add(errors.along[1](at, 40));
      furthest = std::max(furthest, std::abs(errors.along[1](at, 40) - 2));
    }
  }
  for (const std::size_t k : {0u, 1u, 2u, 3u}) {
    const double mean = k % 2 == 0 ? 1 : 2, variance = k % 2 == 0 ? 0.25 : 3;
    // 4.4 deviations: a wrong alarm in 100,000, with the one seed there is
    BOOST_TEST(std::abs(figures[k].mean() - mean) < 4.4 * figures[k].mean_error());
    BOOST_TEST(std::abs(figures[k].variance() - variance) <
               4.4 * figures[k].variance_error() + 1e-5 * variance);
  }
  BOOST_TEST(furthest <= 3);
  BOOST_TEST(furthest > 2.99);
}

BOOST_AUTO_TEST_CASE(an_error_along_the_joint_is_alike_close_by_and_not_far_off) {
  const BoatModel model =
      model_with({{ProcessErrorKind::HullFace, normal, 0, 1, Length::mm(300), false}});
  const auto& stations = model.points.stations;
  LaneErrors errors;
  RunningFigures products[2];
  constexpr std::size_t places[2][2] = {{20, 24}, {20, 60}};
  for (std::uint64_t first = 0; first < 40000; first += lane_count) {
    draw_errors(model, lane_from(first), errors);
    for (Index at = 0; at < lane_count; ++at)
      for (const std::size_t k : {0u, 1u})
        products[k].add(errors.along[0](at, static_cast<Index>(places[k][0])) *
                        errors.along[0](at, static_cast<Index>(places[k][1])));
  }
  for (const std::size_t k : {0u, 1u}) {
    // derived: the correlation is exp(-(d / 300)^2 / 2)
    const double apart =
        stations[places[k][1]].ring_mm - stations[places[k][0]].ring_mm;
    const double correlation = std::exp(-apart * apart / (2 * 300 * 300));
    BOOST_TEST(std::abs(products[k].mean() - correlation) <
               4.4 * products[k].mean_error());
  }
}

BOOST_AUTO_TEST_CASE(a_boat_is_the_same_one_in_any_lane) {
  const BoatModel model = model_with(
      {{ProcessErrorKind::HullTwist, normal, 0, 0.5, {}, false},
       {ProcessErrorKind::HullFace, normal, 0, 0.5, Length::mm(100), false}});
  LaneErrors one, other;
  LaneBoats boats_one, boats_other;
  draw_errors(model, lane_from(0), one);
  draw_errors(model, lane_from(5), other);
  apply_errors(model, one, boats_one);
  apply_errors(model, other, boats_other);
  BOOST_TEST((boats_one.gaps.row(6) == boats_other.gaps.row(1)).all());
  BOOST_TEST(!(boats_one.gaps.row(6) == boats_other.gaps.row(2)).all());
  draw_errors(model, lane_from(0, ErrorSet::Second), other);
  BOOST_TEST(one.whole[0][0] != other.whole[0][0]);
}

BOOST_AUTO_TEST_CASE(changing_an_error_over_changes_that_one_alone) {
  const BoatModel model = model_with(
      {{ProcessErrorKind::HullTwist, normal, 0, 0.5, {}, false},
       {ProcessErrorKind::HullFace, normal, 0, 0.5, Length::mm(100), false}});
  LaneErrors first, second;
  draw_errors(model, lane_from(0), first);
  draw_errors(model, lane_from(0, ErrorSet::Second), second);
  const LaneErrors kept = first, other = second;
  swap_error(model, 1, first, second);
  BOOST_TEST((first.whole[0] == kept.whole[0]).all());
  BOOST_TEST((first.along[0] == other.along[0]).all());
  BOOST_TEST((second.along[0] == kept.along[0]).all());
  swap_error(model, 0, first, second);
  BOOST_TEST((first.whole[0] == other.whole[0]).all());
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

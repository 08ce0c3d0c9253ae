#include "joint/tolerance.h"

#include <algorithm>
#include <atomic>
#include <boost/math/distributions/normal.hpp>
#include <boost/test/unit_test.hpp>
#include <cmath>
#include <numbers>
#include <utility>

#include "joint/job.h"
#include "tests/joint/example_boats.h"

namespace sheerlap {
namespace {

constexpr auto normal = ErrorLaw::Normal, even = ErrorLaw::Uniform;
/// So long that the error is one number all round.
constexpr Length all_round = Length::mm(1e6);

/// A round boat whose gap is 3 all round in a window of 1 to 8: an error that takes t
/// off it everywhere leaves a margin of 2 - t, or of 5 + t where that is less.
Joint round_joint(std::size_t boats, std::vector<ProcessError> errors) {
  Joint joint = circle_joint(1000, 25, {});
  joint.tolerance = ToleranceInputs{boats, 1, std::move(errors)};
  joint.order = OrderRules{30, std::nullopt, 0};
  return joint;
}

Tolerance tolerance_of(const Joint& joint, const ToleranceHooks& hooks = {}) {
  Parts parts;
  parts.adhesive = parts.layout = parts.schedule = true;
  const auto job = work_out(joint, parts);
  BOOST_TEST_REQUIRE(job.has_value());
  auto found =
      tolerance(job->joint, job->perimeter, {*job->adhesive, &*job->schedule}, hooks);
  BOOST_TEST_REQUIRE(found.has_value());
  return std::move(*found);
}

/// Whether an exact value is near an estimate: 2.25 times its 95 % interval is a wrong
/// alarm in 100,000, with the one seed there is.
bool near(const Estimate& estimate, double exact, double within = 0) {
  return exact <= estimate.value + 2.25 * (estimate.high - estimate.value) + within &&
         exact >= estimate.value - 2.25 * (estimate.value - estimate.low) - within;
}

/// What does not depend on the threads, in one line each.
std::vector<double> figures(const Tolerance& found) {
  std::vector<double> all;
  const auto add = [&](const Estimate& one) {
    all.insert(all.end(), {one.value, one.low, one.high});
  };
  for (const Estimate& one :
       {found.shares.on, found.shares.unsqueezed, found.margin_mean_mm,
        found.margin_mm.p10, found.adhesive.mean, found.adhesive.deviation,
        found.adhesive.joint.p90, found.run->laid_p90})
    add(one);
  for (const BlamedStretch& stretch : found.stretches) {
    add(stretch.holds);
    add(stretch.tight);
  }
  for (const LengthMix& mix : found.lengths) add(mix.in_a_boat);
  for (const auto* shares :
       {&found.drives.volume, &found.drives.margin, &found.drives.squeeze})
    for (const VarianceShare& share : *shares) {
      add(share.first);
      add(share.total);
    }
  return all;
}

/// A boat with errors of every kind, and spreaders.
Joint uneven_joint(std::size_t boats) {
  Joint joint = with_uneven_offsets(example_joint(small_boat(), {}));
  using Kind = ProcessErrorKind;
  joint.tolerance =
      ToleranceInputs{boats,
                      5,
                      {{Kind::HullShrinkage, normal, 0.0005, 0.0002, {}, false},
                       {Kind::LidShrinkage, even, 0.0005, 0.0003, {}, false},
                       {Kind::HullOpening, normal, 1, 1.5, {}, false},
                       {Kind::HullTwist, normal, 0, 0.1, {}, false},
                       {Kind::HullTrim, normal, 0, 0.7, Length::mm(150), false},
                       {Kind::HullFace, normal, 0, 0.4, Length::mm(300), false},
                       {Kind::LipThickness, even, 0, 0.5, Length::mm(200), false}}};
  joint.order = OrderRules{30, std::nullopt, 0};
  for (const double x : {1700., 3300., 5300.})
    joint.seating.spreaders.push_back({Length::mm(x), Length::mm(2)});
  return joint;
}

BOOST_AUTO_TEST_SUITE(tolerance_suite)

BOOST_AUTO_TEST_CASE(a_normal_error_all_round_leaves_the_exact_normal_law) {
  // derived: the lip is thicker by t, normal with mean 0.5 and deviation 1.2
  const Joint joint = round_joint(
      20000, {{ProcessErrorKind::LipThickness, normal, 0.5, 1.2, all_round, false}});
  const Tolerance found = tolerance_of(joint);
  const boost::math::normal law(0.5, 1.2);
  const double on = cdf(law, 2.0) - cdf(law, -5.0);
  BOOST_TEST(near(found.shares.on, on));
  BOOST_TEST(near(found.shares.never, 1 - on));
  BOOST_TEST(found.shares.squeezed.value == 0);
  // derived: the margin 2 - t, but for boats that the wide side holds, t < -1.5
  BOOST_TEST(near(found.margin_mm.p10, 2 - quantile(law, 0.9), 0.0025));
  BOOST_TEST(near(found.margin_mm.p50, 2 - quantile(law, 0.5), 0.0025));
  // derived: 50 mm of lap all round, on the hull's face of radius 1000
  const double area = 2 * std::numbers::pi * 1000 * 50 / 1000;
  const double drawn = 3 * area * 1.0015;
  const double step = found.adhesive.joint.within;
  BOOST_TEST(near(found.adhesive.mean, drawn - 0.5 * area, 1e-3 * drawn));
  BOOST_TEST(near(found.adhesive.deviation, 1.2 * area, 1e-3 * drawn));
  BOOST_TEST(near(found.adhesive.joint.p10, drawn - area * quantile(law, 0.9),
                  step + 1e-3 * drawn));
  BOOST_TEST(near(found.adhesive.joint.p90, drawn - area * quantile(law, 0.1),
                  step + 1e-3 * drawn));
}

BOOST_AUTO_TEST_CASE(an_even_error_all_round_leaves_the_exact_even_law) {
  // derived: t even from -1 to 3; of that 2 - t >= 0 for three quarters
  const Joint joint =
      round_joint(20000, {{ProcessErrorKind::HullFace, even, 1, 2, all_round, false}});
  const Tolerance found = tolerance_of(joint);
  BOOST_TEST(near(found.shares.on, 0.75));
  for (const auto& [estimate, t] :
       {std::pair{found.margin_mm.p10, 2.6}, {found.margin_mm.p90, -0.6}})
    BOOST_TEST(near(estimate, 2 - t, 0.0025));
}

BOOST_AUTO_TEST_CASE(boats_without_errors_are_the_boat_as_drawn) {
  const Joint joint = round_joint(
      300, {{ProcessErrorKind::HullTwist, normal, 0, 0, {}, false},
            {ProcessErrorKind::HullFace, normal, 0, 0, Length::mm(100), false}});
  const Tolerance found = tolerance_of(joint);
  BOOST_TEST(found.boats == 300u);
  BOOST_TEST(found.shares.unsqueezed.value == 1);
  BOOST_TEST(found.nominal_margin_mm == 2, boost::test_tools::tolerance(1e-6));
  BOOST_TEST(found.margin_mean_mm.low == found.nominal_margin_mm,
             boost::test_tools::tolerance(1e-9));
  BOOST_TEST(found.adhesive.deviation.high == 0);
  BOOST_TEST(found.run->at_p90.packs == found.run->nominal.packs);
  for (const LengthMix& mix : found.lengths) {
    BOOST_TEST(mix.in_a_boat.value == static_cast<double>(mix.nominal));
    BOOST_TEST(mix.run_p90->value == 30 * static_cast<double>(mix.nominal));
  }
  BOOST_TEST(found.drives.volume.empty());
}

BOOST_AUTO_TEST_CASE(a_run_takes_less_than_its_boats_at_their_own_p90) {
  // derived: the lip's thickness t of deviation 0.5 takes area x t off each boat; a
  // bead takes 1.1 times that; 30 boats have sqrt(30) times one's deviation together
  const Joint joint = round_joint(
      20000, {{ProcessErrorKind::LipThickness, normal, 0, 0.5, all_round, false}});
  const Tolerance found = tolerance_of(joint);
  const double deviation = 1.1 * 0.5 * 2 * std::numbers::pi * 1000 * 50 / 1000;
  const double drawn = found.run->nominal.laid.in_ml();
  BOOST_TEST(near(found.run->laid_mean, drawn, 1e-3 * drawn));
  const double p90 = 1.2815515655446004;
  BOOST_TEST(
      near(found.run->laid_p90, drawn + p90 * std::sqrt(30) * deviation, 1e-3 * drawn));
  BOOST_TEST(near(
      found.run->laid_p90,
      found.run->at_every_p90.laid.in_ml() - p90 * (30 - std::sqrt(30)) * deviation,
      1e-2 * drawn));
  BOOST_TEST(found.run->at_p90.packs > found.run->nominal.packs);
  BOOST_TEST(found.run->at_p90.packs < found.run->at_every_p90.packs);
}

BOOST_AUTO_TEST_CASE(screws_are_counted_by_each_boats_own_stacks) {
  // derived: a lip 5, a gap of 3 and a hull 6 take 14, and a screw's point more; a hull
  // 1.2 in takes the stack up as much at every hole, a thicker lip does not
  const auto lengths = [](std::vector<ProcessError> errors) {
    return tolerance_of(round_joint(256, std::move(errors))).lengths;
  };
  const auto drawn = lengths({});
  const auto in =
      lengths({{ProcessErrorKind::HullFace, normal, -3, 0, Length::mm(100), false}});
  const auto thick =
      lengths({{ProcessErrorKind::LipThickness, normal, 1, 0, Length::mm(100), false}});
  BOOST_TEST_REQUIRE(drawn.size() == 5u);
  std::size_t moved = 0;
  for (std::size_t i = 0; i < drawn.size(); ++i) {
    BOOST_TEST(thick[i].in_a_boat.value == drawn[i].in_a_boat.value);
    moved += in[i].in_a_boat.value != drawn[i].in_a_boat.value;
    if (i + 1 < drawn.size() && drawn[i].nominal > 0)
      BOOST_TEST(in[i + 1].in_a_boat.value == static_cast<double>(drawn[i].nominal));
  }
  BOOST_TEST(moved == 2u);
}

BOOST_AUTO_TEST_CASE(errors_drive_a_straight_answer_by_their_squares) {
  // derived: variances 0.09 and 0.16 of 0.25; both take the same off the volume
  const Joint joint = round_joint(
      3000, {{ProcessErrorKind::LipThickness, normal, 0, 0.3, all_round, false},
             {ProcessErrorKind::HullFace, normal, 0, 0.4, all_round, false}});
  const Tolerance found = tolerance_of(joint);
  BOOST_TEST_REQUIRE(found.drives.volume.size() == 2u);
  for (const auto* shares : {&found.drives.volume, &found.drives.margin})
    for (const std::size_t k : {0u, 1u}) {
      BOOST_TEST(near((*shares)[k].first, k == 0 ? 0.36 : 0.64, 5e-3));
      BOOST_TEST(near((*shares)[k].total, k == 0 ? 0.36 : 0.64, 5e-3));
    }
  BOOST_TEST(found.drives.squeeze.empty());
}

BOOST_AUTO_TEST_CASE(the_answers_are_the_same_on_any_number_of_threads) {
  const Joint joint = uneven_joint(1500);
  const Tolerance one = tolerance_of(joint, {1, {}, nullptr});
  const Tolerance three = tolerance_of(joint, {3, {}, nullptr});
  // to the last bit
  BOOST_TEST((figures(one) == figures(three)));
  BOOST_TEST(one.shares.on.value > 0.05);
  BOOST_TEST(one.shares.on.value < 0.999);
  // property: shares add up
  const SqueezeShares& shares = one.shares;
  BOOST_TEST(shares.unsqueezed.value + shares.squeezed.value == shares.on.value,
             boost::test_tools::tolerance(1e-12));
  BOOST_TEST(shares.on.value + shares.beyond.value + shares.never.value == 1,
             boost::test_tools::tolerance(1e-12));
  double held = 0;
  for (const BlamedStretch& stretch : one.stretches) held += stretch.holds.value;
  BOOST_TEST(held == 1, boost::test_tools::tolerance(1e-9));
  double holes = 0, nominal = 0;
  for (const LengthMix& mix : one.lengths) {
    holes += mix.in_a_boat.value;
    nominal += static_cast<double>(mix.nominal);
  }
  BOOST_TEST(holes == nominal, boost::test_tools::tolerance(1e-12));
}

BOOST_AUTO_TEST_CASE(what_is_stopped_keeps_the_boats_that_are_done) {
  std::atomic<bool> stop = false;
  std::vector<std::size_t> told;
  const auto progress = [&](std::size_t done, std::size_t boats) {
    BOOST_TEST(boats == 4000u);
    told.push_back(done);
    if (done >= 700) stop = true;
  };
  const Tolerance stopped = tolerance_of(uneven_joint(4000), {2, progress, &stop});
  BOOST_TEST(stopped.asked == 4000u);
  BOOST_TEST(stopped.boats >= 700u);
  BOOST_TEST(stopped.boats < 4000u);
  BOOST_TEST(stopped.boats == told.back());
  BOOST_TEST(std::is_sorted(told.begin(), told.end()));
  // property: they are the first boats of the seed
  const Tolerance same = tolerance_of(uneven_joint(stopped.boats));
  BOOST_TEST(same.margin_mean_mm.value == stopped.margin_mean_mm.value);
  BOOST_TEST(same.adhesive.mean.value == stopped.adhesive.mean.value);
}

BOOST_AUTO_TEST_CASE(a_run_that_is_stopped_at_once_has_no_boats) {
  const std::atomic<bool> stop = true;
  const Tolerance found = tolerance_of(uneven_joint(4000), {2, {}, &stop});
  BOOST_TEST(found.boats == 0u);
  BOOST_TEST(found.stretches.empty());
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

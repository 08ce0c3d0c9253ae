#include "joint/limit_zones.h"

#include <algorithm>
#include <boost/test/unit_test.hpp>
#include <cmath>
#include <limits>

#include "tests/geometry/random_sides.h"
#include "tests/geometry/spacing_rules.h"

namespace sheerlap {
namespace {

/// Edges lie on whole steps, so that ground between two of them is all alike.
constexpr int step_mm = 10;

PitchLimit limit(double from_mm, double to_mm, double greatest_mm) {
  return {Length::mm(from_mm), Length::mm(to_mm), Length::mm(greatest_mm), "rule"};
}

struct Trial {
  SpacingProblem problem;
  std::vector<PitchLimit> limits;
};

/// A stretch of 300 to 600 mm with zones and limits that overlap.
Trial random_trial(std::uint64_t seed) {
  RandomNumbers random(seed);
  const auto whole = [&](int least, int greatest) {
    return double(random.whole(least, greatest) * step_mm);
  };
  Trial trial;
  SpacingProblem& problem = trial.problem;
  problem.to_mm = whole(30, 60);
  problem.limits = {40, whole(9, 14)};
  problem.start.mirrored = random.one_in(3);
  problem.end.mirrored = random.one_in(3);
  if (random.one_in(2))
    problem.zones.push_back({whole(0, 20), whole(21, 50), {40, whole(6, 20)}});
  for (int left = random.whole(1, 6); left > 0; --left) {
    const double from = whole(-5, 55);
    trial.limits.push_back(limit(from, from + whole(0, 20), whole(3, 18)));
  }
  return trial;
}

/// What the definition asks of a space, step of ground by step of ground.
SpaceLimits asked(const Trial& trial, double from_mm, double to_mm) {
  SpaceLimits result{0, std::numeric_limits<double>::infinity()};
  for (double ground = step_mm / 2.; ground < trial.problem.to_mm; ground += step_mm) {
    if (ground + step_mm / 2. <= from_mm || ground - step_mm / 2. >= to_mm) continue;
    SpaceLimits here = trial.problem.limits;
    for (const SpaceZone& zone : trial.problem.zones)
      if (zone.from_mm < ground && ground < zone.to_mm) here = zone.limits;
    for (const PitchLimit& one : trial.limits)
      if (one.from.in_mm() < ground && ground < one.to.in_mm())
        here.greatest_mm =
            std::min(here.greatest_mm, std::max(one.greatest.in_mm(), here.least_mm));
    result = {std::max(result.least_mm, here.least_mm),
              std::min(result.greatest_mm, here.greatest_mm)};
  }
  return result;
}

/// Whether points may stand on whole steps so that all limits are kept with so many.
///
/// @source  derived: every number is a multiple of the step, and halves of spaces are
///          multiples of half of it, so the differences that the limits bound have a
///          solution on the half steps if they have one at all
std::size_t fewest_by_trial(const Trial& trial, double most_mm) {
  const double half = step_mm / 2.;
  const auto places = static_cast<int>(trial.problem.to_mm / half);
  const auto fits = [&](double from, double to, double times) {
    const SpaceLimits limits = asked(trial, from, to);
    const double space = times * (to - from);
    return space >= limits.least_mm && space <= std::min(limits.greatest_mm, most_mm);
  };
  const auto at_end = [&](const StretchEnd& end, double from, double to) {
    return end.mirrored ? to > from && fits(from, to, 2) : from == to;
  };
  constexpr std::size_t none = 1000;
  std::vector<std::size_t> points(static_cast<std::size_t>(places) + 1, none);
  std::size_t fewest = none;
  for (std::size_t to = 0; to < points.size(); ++to) {
    const double at = static_cast<double>(to) * half;
    if (at_end(trial.problem.start, 0, at)) points[to] = 1;
    for (std::size_t from = 0; from < to; ++from)
      if (points[from] + 1 < points[to] &&
          fits(static_cast<double>(from) * half, at, 1))
        points[to] = points[from] + 1;
    if (at_end(trial.problem.end, at, trial.problem.to_mm))
      fewest = std::min(fewest, points[to]);
  }
  return fewest;
}

LayoutStretch held(const Trial& trial) {
  LayoutStretch stretch;
  stretch.problem = trial.problem;
  hold_limits(stretch, trial.limits);
  return stretch;
}

BOOST_AUTO_TEST_SUITE(limit_zones)

BOOST_AUTO_TEST_CASE(a_space_keeps_the_tightest_limits_of_the_ground_it_covers) {
  for (std::uint64_t seed = 1; seed <= 200; ++seed) BOOST_TEST_CONTEXT(seed) {
      const Trial trial = random_trial(seed);
      const LayoutStretch stretch = held(trial);
      RandomNumbers random(seed);
      for (int left = 40; left > 0; --left) {
        const double from = random.between(0, trial.problem.to_mm);
        const double to = random.between(from, trial.problem.to_mm);
        const SpaceLimits expected = asked(trial, from, to);
        const SpaceLimits limits = limits_between(stretch.problem, from, to);
        BOOST_TEST(limits.least_mm == expected.least_mm);  // derived: step by step
        BOOST_TEST(limits.greatest_mm == expected.greatest_mm);
      }
    }
}

BOOST_AUTO_TEST_CASE(no_placing_on_trial_has_fewer_points_or_a_smaller_largest_space) {
  std::size_t tried = 0;
  for (std::uint64_t seed = 1; seed <= 120; ++seed) BOOST_TEST_CONTEXT(seed) {
      const Trial trial = random_trial(seed);
      const double any = std::numeric_limits<double>::infinity();
      const std::size_t fewest = fewest_by_trial(trial, any);
      const auto spacing = space_out({held(trial).problem});
      BOOST_TEST_REQUIRE(spacing.has_value());
      const bool kept = spacing->front().bridged.empty();
      BOOST_TEST(kept == (fewest < 1000));
      if (!kept) continue;
      ++tried;
      const double largest = spacing->front().largest_mm;
      BOOST_TEST(spacing->front().points_mm.size() == fewest);
      // none on trial is better by 1e-6 of a space, and the next whole step is enough
      BOOST_TEST(fewest_by_trial(trial, largest * (1 - 1e-6)) > fewest);
      BOOST_TEST(fewest_by_trial(
                     trial, step_mm * std::ceil(largest / step_mm - 1e-6)) == fewest);
    }
  BOOST_TEST(tried > 60u);  // property of the generator
}

BOOST_AUTO_TEST_CASE(limits_no_tighter_than_the_joint_file_add_nothing) {
  Trial trial;
  trial.problem.to_mm = 500;
  trial.problem.limits = {40, 150};
  trial.problem.zones = {{100, 200, {40, 90}}};
  trial.limits = {limit(0, 500, 150), limit(120, 180, 90)};
  BOOST_TEST(held(trial).limits.empty());
  BOOST_TEST(held(trial).problem.zones.size() == 1u);
}

BOOST_AUTO_TEST_CASE(touching_limits_that_differ_in_nothing_are_one) {
  Trial trial;
  trial.problem.to_mm = 500;
  trial.problem.limits = {40, 150};
  trial.limits = {limit(100, 200, 80), limit(200, 300, 80), limit(300, 400, 70)};
  const LayoutStretch stretch = held(trial);
  BOOST_TEST_REQUIRE(stretch.limits.size() == 2u);
  BOOST_TEST(stretch.limits[0].zone.to_mm == 300);
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

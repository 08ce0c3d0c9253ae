#include <algorithm>
#include <boost/test/unit_test.hpp>
#include <cmath>

#include "geometry/spacing.h"
#include "tests/geometry/random_sides.h"
#include "tests/geometry/spacing_rules.h"

namespace sheerlap {
namespace {

constexpr std::uint64_t trials = 400;

/// A stretch whose lengths are no whole numbers, so that no two placings are alike.
SpacingProblem uneven_stretch(std::uint64_t seed) {
  RandomNumbers random(seed);
  SpacingProblem problem = random_stretch(random);
  problem.to_mm = problem.to_mm * 4 + random.between(0, 1);
  problem.limits.greatest_mm += random.between(0, 1);
  for (SpaceZone& zone : problem.zones) {
    zone.from_mm = zone.from_mm * 4 + random.between(0, 1);
    zone.to_mm = zone.to_mm * 4 + random.between(1, 2);
  }
  for (Forbidden& gap : problem.forbidden) {
    const double width = gap.to_mm - gap.from_mm + random.between(0, 1);
    gap.from_mm = gap.from_mm * 4 + random.between(0, 1);
    gap.to_mm = gap.from_mm + width;
  }
  for (double& at : problem.fixed_mm) {
    if (at != problem.from_mm) at = at * 4 + random.between(0, 1);
    at = std::min(at, problem.to_mm);
  }
  std::erase_if(problem.fixed_mm, [&](double at) {
    return std::any_of(
        problem.forbidden.begin(), problem.forbidden.end(),
        [&](const auto& gap) { return at > gap.from_mm && at < gap.to_mm; });
  });
  return problem;
}

/// The problem with every place moved.
template <class Move>
SpacingProblem moved(const SpacingProblem& problem, const Move& move) {
  SpacingProblem result = problem;
  result.from_mm = move(problem.from_mm);
  result.to_mm = move(problem.to_mm);
  for (SpaceZone& zone : result.zones)
    zone = {move(zone.from_mm), move(zone.to_mm), zone.limits};
  for (Forbidden& gap : result.forbidden) gap = {move(gap.from_mm), move(gap.to_mm)};
  for (double& at : result.fixed_mm) at = move(at);
  return result;
}

SpacingProblem mirrored(const SpacingProblem& problem) {
  SpacingProblem result = moved(problem, [](double at) { return -at; });
  std::swap(result.from_mm, result.to_mm);
  std::swap(result.start, result.end);
  for (SpaceZone& zone : result.zones) std::swap(zone.from_mm, zone.to_mm);
  for (Forbidden& gap : result.forbidden) std::swap(gap.from_mm, gap.to_mm);
  return result;
}

SpacingProblem scaled(const SpacingProblem& problem, double factor) {
  SpacingProblem result = moved(problem, [&](double at) { return factor * at; });
  const auto scale = [&](auto& limits) {
    limits.least_mm *= factor;
    limits.greatest_mm *= factor;
  };
  scale(result.limits);
  scale(result.start);
  scale(result.end);
  for (SpaceZone& zone : result.zones) scale(zone.limits);
  return result;
}

Spacing spacing_of(const SpacingProblem& problem) {
  const auto result = space_out({problem});
  BOOST_TEST_REQUIRE(result.has_value());
  return result->front();
}

void check_same(const std::vector<double>& points,
                const std::vector<double>& expected,
                double tolerance_mm) {
  BOOST_TEST_REQUIRE(points.size() == expected.size());
  for (std::size_t index = 0; index < points.size(); ++index)
    BOOST_TEST(std::abs(points[index] - expected[index]) < tolerance_mm,
               points[index] << " is not " << expected[index]);
}

BOOST_AUTO_TEST_SUITE(spacing_property)

BOOST_AUTO_TEST_CASE(the_mirror_image_of_a_stretch_has_the_mirror_image_of_its_points) {
  for (std::uint64_t seed = 1; seed <= trials; ++seed) BOOST_TEST_CONTEXT(seed) {
      const SpacingProblem problem = uneven_stretch(seed);
      std::vector<double> points = spacing_of(mirrored(problem)).points_mm;
      std::reverse(points.begin(), points.end());
      for (double& at : points) at = -at;
      // property; twice the accuracy of 1e-9 of a space
      check_same(points, spacing_of(problem).points_mm, 5e-7);
    }
}

BOOST_AUTO_TEST_CASE(a_stretch_that_is_shifted_has_the_same_points) {
  for (std::uint64_t seed = 1; seed <= trials; ++seed) BOOST_TEST_CONTEXT(seed) {
      const SpacingProblem problem = uneven_stretch(seed);
      const double shift = 12345.678;
      std::vector<double> points =
          spacing_of(moved(problem, [&](double at) { return at + shift; })).points_mm;
      for (double& at : points) at -= shift;
      check_same(points, spacing_of(problem).points_mm, 5e-7);  // property
    }
}

BOOST_AUTO_TEST_CASE(a_stretch_in_other_units_has_the_same_points) {
  for (std::uint64_t seed = 1; seed <= trials; ++seed) BOOST_TEST_CONTEXT(seed) {
      const SpacingProblem problem = uneven_stretch(seed);
      std::vector<double> points = spacing_of(scaled(problem, 1 / 25.4)).points_mm;
      for (double& at : points) at *= 25.4;
      check_same(points, spacing_of(problem).points_mm, 5e-7);  // property
    }
}

BOOST_AUTO_TEST_CASE(more_to_keep_never_takes_fewer_points) {
  for (std::uint64_t seed = 1; seed <= trials; ++seed) BOOST_TEST_CONTEXT(seed) {
      const SpacingProblem problem = uneven_stretch(seed);
      const Spacing before = spacing_of(problem);
      RandomNumbers random(seed);
      SpacingProblem more = problem;
      const double from = random.between(problem.from_mm, problem.to_mm);
      more.forbidden.push_back({from, from + random.between(1, 60)});
      std::erase_if(more.fixed_mm, [&](double at) {
        return at > from && at < more.forbidden.back().to_mm;
      });
      if (more.fixed_mm.size() != problem.fixed_mm.size()) continue;
      const Spacing after = spacing_of(more);
      // property: holds while every limit can be kept
      if (before.bridged.empty() && after.bridged.empty())
        BOOST_TEST(after.points_mm.size() >= before.points_mm.size());
      const double excess_before =
          judged_as_a_whole(problem, before.points_mm, 1e-6).excess_mm;
      const double excess_after =
          judged_as_a_whole(more, after.points_mm, 1e-6).excess_mm;
      if (!after.points_mm.empty()) BOOST_TEST(excess_after >= excess_before - 1e-6);
    }
}

BOOST_AUTO_TEST_CASE(points_once_found_find_themselves_when_they_are_fixed) {
  for (std::uint64_t seed = 1; seed <= trials; ++seed) BOOST_TEST_CONTEXT(seed) {
      SpacingProblem problem = uneven_stretch(seed);
      const Spacing found = spacing_of(problem);
      problem.fixed_mm = found.points_mm;
      const Spacing again = spacing_of(problem);
      if (found.points_mm.empty()) continue;
      BOOST_TEST(again.points_mm == found.points_mm);  // property
      BOOST_TEST(again.bridged.size() == found.bridged.size());
      BOOST_TEST(std::abs(again.largest_mm - found.largest_mm) < 1e-9);
    }
}

BOOST_AUTO_TEST_CASE(a_largest_space_once_found_finds_itself_as_the_greatest) {
  for (std::uint64_t seed = 1; seed <= trials; ++seed) BOOST_TEST_CONTEXT(seed) {
      SpacingProblem problem = uneven_stretch(seed);
      const Spacing found = spacing_of(problem);
      if (!found.bridged.empty() || found.largest_mm == 0) continue;
      problem.limits.greatest_mm =
          std::max(problem.limits.least_mm,
                   std::min(problem.limits.greatest_mm, found.largest_mm));
      for (SpaceZone& zone : problem.zones)
        zone.limits.greatest_mm = std::max(
            zone.limits.least_mm, std::min(zone.limits.greatest_mm, found.largest_mm));
      check_same(spacing_of(problem).points_mm, found.points_mm, 5e-7);  // property
    }
}

BOOST_AUTO_TEST_CASE(the_order_of_what_is_given_does_not_matter) {
  for (std::uint64_t seed = 1; seed <= trials; ++seed) BOOST_TEST_CONTEXT(seed) {
      SpacingProblem problem = uneven_stretch(seed);
      const Spacing found = spacing_of(problem);
      std::reverse(problem.zones.begin(), problem.zones.end());
      std::reverse(problem.forbidden.begin(), problem.forbidden.end());
      std::reverse(problem.fixed_mm.begin(), problem.fixed_mm.end());
      BOOST_TEST(spacing_of(problem).points_mm == found.points_mm);  // property
    }
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

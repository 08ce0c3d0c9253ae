#include <algorithm>
#include <boost/test/unit_test.hpp>
#include <cmath>
#include <limits>

#include "geometry/spacing.h"
#include "tests/geometry/random_sides.h"
#include "tests/geometry/spacing_milp.h"
#include "tests/geometry/spacing_quadratic.h"
#include "tests/geometry/spacing_rules.h"

namespace sheerlap {
namespace {

constexpr std::uint64_t sides = 300;
/// The accuracy of the linear programmes on some hundred mm.
constexpr double milp_mm = 1e-4;
/// Above the accuracy of 1e-7 mm, below the whole mm of the problems.
constexpr double exceeds_mm = 1e-5;

/// The fewest points of those with the least excess, by trying every number.
struct Fewest {
  std::size_t points = 0;
  double excess_mm = std::numeric_limits<double>::infinity();
};

Fewest fewest_by_milp(const SpacingProblem& problem) {
  Fewest fewest;
  std::vector<double> fixed = problem.fixed_mm;
  std::sort(fixed.begin(), fixed.end());
  const auto different = std::unique(fixed.begin(), fixed.end()) - fixed.begin();
  for (auto points = std::max<std::size_t>(1, static_cast<std::size_t>(different));
       fewest.excess_mm > exceeds_mm; ++points) {
    const auto answer = milp_spacing(problem, points, MilpGoal::LeastExcess);
    if (!answer) break;  // with more points there is no more room for the least spaces
    if (answer->value_mm < fewest.excess_mm - exceeds_mm)
      fewest = {points, answer->value_mm};
  }
  return fewest;
}

/// A stretch between bridged spaces.
struct Part {
  SpacingProblem problem;
  std::size_t points = 0;
};

/// The part between two bridged spaces, with a point on its ends, or up to an end.
Part part_of(const SpacingProblem& whole,
             const Spacing& spacing,
             const JudgedSpace* before,
             const JudgedSpace* after) {
  Part part{whole, 0};
  part.problem.fixed_mm.clear();
  if (before != nullptr) {
    part.problem.from_mm = before->to_mm;
    part.problem.start = {};
    part.problem.fixed_mm.push_back(before->to_mm);
  }
  if (after != nullptr) {
    part.problem.to_mm = after->from_mm;
    part.problem.end = {};
    part.problem.fixed_mm.push_back(after->from_mm);
  }
  const auto inside = [&](double at) {
    return at >= part.problem.from_mm && at <= part.problem.to_mm;
  };
  std::copy_if(whole.fixed_mm.begin(), whole.fixed_mm.end(),
               std::back_inserter(part.problem.fixed_mm), inside);
  part.points = static_cast<std::size_t>(
      std::count_if(spacing.points_mm.begin(), spacing.points_mm.end(), inside));
  return part;
}

std::vector<Part> parts_between_bridges(const SpacingProblem& problem,
                                        const Spacing& spacing) {
  std::vector<JudgedSpace> bridges;
  const std::vector<JudgedSpace> spaces = judged(problem, spacing.points_mm);
  for (const JudgedSpace& space : spaces)
    if (space.excess_mm() > exceeds_mm) bridges.push_back(space);
  const bool bridged_start =
      spaces.front().excess_mm() > exceeds_mm && spaces.front().weight != 1;
  const bool bridged_end =
      spaces.back().excess_mm() > exceeds_mm && spaces.back().weight != 1;
  std::vector<Part> parts;
  for (std::size_t index = 0; index <= bridges.size(); ++index) {
    if ((index == 0 && bridged_start) || (index == bridges.size() && bridged_end))
      continue;
    parts.push_back(part_of(problem, spacing, index > 0 ? &bridges[index - 1] : nullptr,
                            index < bridges.size() ? &bridges[index] : nullptr));
  }
  return parts;
}

/// A side and its answer, solved once for all the cases below.
struct Trial {
  std::uint64_t seed = 0;
  std::vector<SpacingProblem> side;
  std::vector<Spacing> answer;
};

const std::vector<Trial>& trials() {
  static const std::vector<Trial> all = [] {
    std::vector<Trial> result;
    for (std::uint64_t seed = 1; seed <= sides; ++seed) {
      Trial trial{seed, random_side(seed), {}};
      trial.answer = space_out(trial.side).value();
      result.push_back(std::move(trial));
    }
    return result;
  }();
  return all;
}

/// Calls with each stretch that has points, its problem and its spacing.
template <class Check>
void for_each_stretch(const Check& check) {
  for (const Trial& trial : trials())
    for (std::size_t index = 0; index < trial.side.size(); ++index) {
      if (trial.answer[index].points_mm.empty()) continue;
      BOOST_TEST_CONTEXT("side " << trial.seed << ", stretch " << index)
      check(trial.side[index], trial.answer[index]);
    }
}

double largest_of(const std::vector<Spacing>& answer) {
  double largest = 0;
  for (const Spacing& spacing : answer) largest = std::max(largest, spacing.largest_mm);
  return largest;
}

/// The smallest largest space that a side can have, bridged spaces left out.
double largest_by_milp(const Trial& trial) {
  double largest = 0;
  for (std::size_t index = 0; index < trial.side.size(); ++index) {
    if (trial.answer[index].points_mm.empty()) continue;
    for (const Part& part :
         parts_between_bridges(trial.side[index], trial.answer[index])) {
      const auto answer =
          milp_spacing(part.problem, part.points, MilpGoal::SmallestLargest);
      largest = std::max(largest, answer.value().value_mm);
    }
  }
  return largest;
}

/// The least sum of squares that a stretch can have, bridged spaces left out.
double least_sum(const SpacingProblem& problem,
                 const Spacing& spacing,
                 double largest_mm) {
  double least = 0;
  for (const Part& part : parts_between_bridges(problem, spacing))
    least +=
        least_squares(part.problem, part.points, {largest_mm, 0}).value().squares_mm2;
  return least;
}

BOOST_AUTO_TEST_SUITE(spacing_optimum)

BOOST_AUTO_TEST_CASE(the_random_sides_have_every_kind_of_stretch) {
  std::size_t kept = 0;
  std::size_t exceeded = 0;
  std::size_t without_points = 0;
  for (const Trial& trial : trials())
    for (std::size_t index = 0; index < trial.side.size(); ++index) {
      const auto& points = trial.answer[index].points_mm;
      const double excess =
          judged_as_a_whole(trial.side[index], points, exceeds_mm).excess_mm;
      ++(points.empty() ? without_points : excess > 0 ? exceeded : kept);
    }
  BOOST_TEST(kept > 200u);  // property of the generator
  BOOST_TEST(exceeded > 100u);
  BOOST_TEST(without_points > 10u);
}

BOOST_AUTO_TEST_CASE(every_point_stands_where_it_may) {
  for_each_stretch([](const SpacingProblem& problem, const Spacing& spacing) {
    const auto whole = judged_as_a_whole(problem, spacing.points_mm, exceeds_mm);
    BOOST_TEST(whole.allowed);  // property: by the definition
    const auto listed_below =
        std::count_if(spacing.bridged.begin(), spacing.bridged.end(),
                      [](const BridgedSpace& bridged) { return bridged.below_least; });
    BOOST_TEST(whole.below_least == static_cast<std::size_t>(listed_below));
    BOOST_TEST(std::abs(whole.largest_mm - spacing.largest_mm) < exceeds_mm);
  });
}

BOOST_AUTO_TEST_CASE(what_exceeds_its_limit_is_listed_and_nothing_else) {
  for_each_stretch([](const SpacingProblem& problem, const Spacing& spacing) {
    std::vector<JudgedSpace> exceeding;
    for (const JudgedSpace& space : judged(problem, spacing.points_mm))
      if (space.excess_mm() > exceeds_mm) exceeding.push_back(space);
    std::size_t next = 0;
    for (const BridgedSpace& bridged : spacing.bridged) {
      if (bridged.below_least) continue;
      BOOST_TEST_REQUIRE(next < exceeding.size());
      const JudgedSpace& space = exceeding[next++];
      const double share = space.weight == 0.5 ? 0.5 : 1;
      BOOST_TEST(bridged.from_mm == space.from_mm);  // property: by the definition
      BOOST_TEST(bridged.to_mm == space.to_mm);
      BOOST_TEST(std::abs(bridged.limit_mm - share * space.limits.greatest_mm) < 1e-9);
    }
    BOOST_TEST(next == exceeding.size());
  });
}

BOOST_AUTO_TEST_CASE(only_neighbouring_fixed_points_are_closer_than_the_least_space) {
  for_each_stretch([](const SpacingProblem& problem, const Spacing& spacing) {
    const auto is_fixed = [&](double at) {
      return at == problem.from_mm || at == problem.to_mm ||
             std::find(problem.fixed_mm.begin(), problem.fixed_mm.end(), at) !=
                 problem.fixed_mm.end();
    };
    for (const JudgedSpace& space : judged(problem, spacing.points_mm)) {
      if (space.space_mm >= space.limits.least_mm - exceeds_mm) continue;
      BOOST_TEST(is_fixed(space.from_mm));  // property: by the definition
      BOOST_TEST(is_fixed(space.to_mm));
    }
  });
}

BOOST_AUTO_TEST_CASE(no_placing_has_less_excess_or_with_it_fewer_points) {
  for_each_stretch([](const SpacingProblem& problem, const Spacing& spacing) {
    const Fewest fewest = fewest_by_milp(problem);
    const auto whole = judged_as_a_whole(problem, spacing.points_mm, exceeds_mm);
    // derived: linear programme with a yes or no for every choice
    BOOST_TEST(spacing.points_mm.size() == fewest.points);
    BOOST_TEST(std::abs(whole.excess_mm - fewest.excess_mm) < milp_mm);
  });
}

BOOST_AUTO_TEST_CASE(a_stretch_has_no_points_only_if_there_is_no_room_for_one) {
  for (const Trial& trial : trials())
    for (std::size_t index = 0; index < trial.side.size(); ++index) {
      const Spacing& spacing = trial.answer[index];
      if (!spacing.points_mm.empty()) continue;
      // derived: linear programme with one point
      BOOST_TEST(!milp_spacing(trial.side[index], 1, MilpGoal::LeastExcess));
      BOOST_TEST_REQUIRE(spacing.bridged.size() == 1u);
      BOOST_TEST(spacing.bridged[0].from_mm == trial.side[index].from_mm);
      BOOST_TEST(spacing.bridged[0].to_mm == trial.side[index].to_mm);
    }
}

BOOST_AUTO_TEST_CASE(no_placing_has_a_smaller_largest_space) {
  for (const Trial& trial : trials()) {
    const double largest = largest_by_milp(trial);
    // derived: linear programme of each part between bridged spaces
    BOOST_TEST(std::abs(largest_of(trial.answer) - largest) < milp_mm,
               "side " << trial.seed << ": " << largest_of(trial.answer) << " and "
                       << largest);
  }
}

BOOST_AUTO_TEST_CASE(no_placing_has_a_lesser_sum_of_squares) {
  for (const Trial& trial : trials()) {
    const double largest = std::max(largest_of(trial.answer), 1.0);
    for (std::size_t index = 0; index < trial.side.size(); ++index) {
      const auto& spacing = trial.answer[index];
      if (spacing.points_mm.empty()) continue;
      const double least = least_sum(trial.side[index], spacing, largest);
      const double own =
          judged_as_a_whole(trial.side[index], spacing.points_mm, exceeds_mm)
              .squares_mm2;
      // derived: quadratic programmes of every way to spread the points, whose limits
      // are looser by 1e-9
      BOOST_TEST(std::abs(own - least) <= 1e-7 * least,
                 "side " << trial.seed << ", stretch " << index << ": " << own
                         << " and " << least);
    }
  }
}

BOOST_AUTO_TEST_CASE(limits_are_exceeded_where_that_is_most_even) {
  for_each_stretch([](const SpacingProblem& problem, const Spacing& spacing) {
    const std::size_t points = spacing.points_mm.size();
    const double excess =
        judged_as_a_whole(problem, spacing.points_mm, exceeds_mm).excess_mm;
    if (excess < exceeds_mm || points > 7) return;
    SpacingProblem held = problem;
    for (const JudgedSpace& space : judged(problem, spacing.points_mm)) {
      if (space.excess_mm() <= exceeds_mm) continue;
      if (space.from_mm != problem.from_mm || space.weight == 1)
        held.fixed_mm.push_back(space.from_mm);
      if (space.to_mm != problem.to_mm || space.weight == 1)
        held.fixed_mm.push_back(space.to_mm);
    }
    const SquaresRules rules{std::numeric_limits<double>::max() / 2, excess + 1e-7};
    const auto free_answer = least_squares(problem, points, rules);
    const auto held_answer = least_squares(held, points, rules);
    // derived: holding the points beside the bridged spaces costs nothing
    BOOST_TEST(held_answer.value().squares_mm2 <=
               free_answer.value().squares_mm2 * (1 + 1e-7) + 1e-3);
  });
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

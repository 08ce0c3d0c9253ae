#include "geometry/spacing_input.h"

#include <boost/test/unit_test.hpp>
#include <functional>
#include <limits>
#include <string>

namespace sheerlap {
namespace {

constexpr double nan = std::numeric_limits<double>::quiet_NaN();
constexpr double infinity = std::numeric_limits<double>::infinity();

SpacingProblem good_problem() {
  SpacingProblem problem;
  problem.to_mm = 900;
  problem.limits = {40, 150};
  problem.start = {false, 30, 75};
  problem.end = {true, -1, -2};  // not looked at
  problem.zones = {{-10, 100, {40, 100}}};
  problem.forbidden = {{400, 500}};
  problem.fixed_mm = {0, 400, 900};
  return problem;
}

BOOST_AUTO_TEST_SUITE(spacing_input)

BOOST_AUTO_TEST_CASE(a_good_problem_has_no_errors) {
  BOOST_TEST(spacing_errors({good_problem()}).empty());
}

BOOST_AUTO_TEST_CASE(a_bad_value_is_told_with_its_place_and_what_would_be_right) {
  using Spoil = std::function<void(SpacingProblem&)>;
  const struct {
    Spoil spoil;
    std::string where, message;
  } rows[] = {
      {[](auto& problem) { problem.to_mm = -1; }, "stretches[1]",
       "from 0 to -1 mm is no stretch: finite numbers, in order"},
      {[](auto& problem) { problem.from_mm = nan; }, "stretches[1]",
       "from nan to 900 mm is no stretch: finite numbers, in order"},
      {[](auto& problem) { problem.limits.least_mm = 0; }, "stretches[1].limits",
       "a least space of 0 mm and a greatest of 150 mm cannot be kept: 0 < least <= "
       "greatest"},
      {[](auto& problem) { problem.limits.greatest_mm = 39; }, "stretches[1].limits",
       "a least space of 40 mm and a greatest of 39 mm cannot be kept: 0 < least <= "
       "greatest"},
      {[](auto& problem) { problem.limits.greatest_mm = infinity; },
       "stretches[1].limits",
       "a least space of 40 mm and a greatest of inf mm cannot be kept: 0 < least <= "
       "greatest"},
      {[](auto& problem) { problem.start.least_mm = 80; }, "stretches[1].start",
       "an outer point at least 80 mm and at most 75 mm from the end cannot be placed: "
       "0 <= least <= greatest"},
      {[](auto& problem) { problem.zones[0].to_mm = -11; }, "stretches[1].zones[0]",
       "from -10 to -11 mm is no stretch: finite numbers, in order"},
      {[](auto& problem) { problem.zones[0].limits.least_mm = 101; },
       "stretches[1].zones[0].limits",
       "a least space of 101 mm and a greatest of 100 mm cannot be kept: 0 < least <= "
       "greatest"},
      {[](auto& problem) { problem.forbidden[0].from_mm = 501; },
       "stretches[1].forbidden[0]",
       "from 501 to 500 mm is no stretch: finite numbers, in order"},
      {[](auto& problem) { problem.fixed_mm[1] = 450; }, "stretches[1].fixed_mm[1]",
       "a fixed point at 450 mm lies where none may be: outside 400 to 500 mm"},
      {[](auto& problem) { problem.fixed_mm[2] = 901; }, "stretches[1].fixed_mm[2]",
       "a fixed point at 901 mm is off its stretch: 0 to 900 mm"},
  };
  for (const auto& row : rows) BOOST_TEST_CONTEXT(row.message) {
      SpacingProblem problem = good_problem();
      row.spoil(problem);
      const Errors errors = spacing_errors({good_problem(), problem});
      BOOST_TEST_REQUIRE(errors.size() == 1u);
      BOOST_TEST(errors[0].where == row.where);
      BOOST_TEST(errors[0].message == row.message);
      BOOST_TEST(!space_out({good_problem(), problem}).has_value());
    }
}

BOOST_AUTO_TEST_CASE(all_that_is_wrong_is_told_at_once) {
  SpacingProblem problem = good_problem();
  problem.limits.least_mm = -1;
  problem.start.greatest_mm = nan;
  problem.fixed_mm[0] = -5;
  BOOST_TEST(spacing_errors({problem}).size() == 3u);
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

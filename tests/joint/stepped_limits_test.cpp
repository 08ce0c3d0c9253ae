#include "joint/stepped_limits.h"

#include <algorithm>
#include <boost/test/unit_test.hpp>
#include <cmath>
#include <limits>

#include "tests/geometry/random_sides.h"

namespace sheerlap {
namespace {

namespace tt = boost::test_tools;

LimitSample sample(double girth_mm, double greatest_mm, const char* whose = "rule") {
  return {Length::mm(girth_mm), Length::mm(greatest_mm), whose};
}

/// A walk of samples with slopes, level parts and jumps.
std::vector<LimitSample> random_samples(std::uint64_t seed) {
  RandomNumbers random(seed);
  std::vector<LimitSample> samples{sample(0, random.between(1, 200))};
  for (int left = random.whole(1, 9); left > 0; --left) {
    const LimitSample last = samples.back();
    const double girth =
        last.girth.in_mm() + (random.one_in(4) ? 0 : random.between(1, 300));
    const double greatest = random.one_in(4)   ? last.greatest.in_mm()
                            : random.one_in(9) ? 0
                                               : random.between(1, 200);
    samples.push_back(
        sample(girth, greatest, random.one_in(6) ? "other" : last.whose.c_str()));
  }
  return samples;
}

/// What is allowed at a girth between two samples, straight from one to the other.
double limit_at(const std::vector<LimitSample>& samples, double at_mm) {
  const auto next = std::find_if(samples.begin(), samples.end(), [&](const auto& one) {
    return one.girth.in_mm() > at_mm;
  });
  const auto before = std::prev(next);
  const double share =
      (at_mm - before->girth.in_mm()) / (next->girth.in_mm() - before->girth.in_mm());
  return before->greatest.in_mm() +
         share * (next->greatest.in_mm() - before->greatest.in_mm());
}

BOOST_AUTO_TEST_SUITE(stepped_limits_suite)

BOOST_AUTO_TEST_CASE(a_level_limit_is_one_stretch) {
  const auto steps = stepped_limits({sample(0, 90), sample(400, 90), sample(500, 90)});
  BOOST_TEST_REQUIRE(steps.size() == 1u);
  BOOST_TEST(steps[0].to.in_mm() == 500);
  BOOST_TEST(steps[0].greatest.in_mm() == 90);
  BOOST_TEST(steps[0].whose == "rule");
}

BOOST_AUTO_TEST_CASE(a_slope_takes_as_many_steps_as_its_ratio_has_shares) {
  // derived: 100 to 50 with 10 % a step: ln(2) / -ln(0.9) = 6.58, so 7; the first cut
  // from the start is where the limit is 90
  const auto steps = stepped_limits({sample(0, 100), sample(500, 50)},
                                    {unlimited_pitch, 0.1, Length::mm(1e-6)});
  BOOST_TEST_REQUIRE(steps.size() == 7u);
  BOOST_TEST(steps[0].to.in_mm() == 100, tt::tolerance(1e-12));
  BOOST_TEST(steps[0].greatest.in_mm() == 90, tt::tolerance(1e-12));
  // the last one from the end: 50 / 0.9
  BOOST_TEST(steps[6].from.in_mm() == 1000 - 10 * 50 / 0.9, tt::tolerance(1e-12));
}

BOOST_AUTO_TEST_CASE(a_jump_is_a_cut_where_it_is_too_high_to_leave_out) {
  const auto jump = [](double after_mm) {
    return stepped_limits({sample(0, 100), sample(300, 100), sample(300, after_mm),
                           sample(400, after_mm)});
  };
  BOOST_TEST(jump(99.5).size() == 1u);
  const auto steps = jump(70);
  BOOST_TEST_REQUIRE(steps.size() == 2u);
  BOOST_TEST(steps[0].to.in_mm() == 300);
  BOOST_TEST(steps[0].greatest.in_mm() == 100);
  BOOST_TEST(steps[1].greatest.in_mm() == 70);
}

BOOST_AUTO_TEST_CASE(a_change_of_name_is_a_cut_halfway) {
  const auto steps =
      stepped_limits({sample(0, 100), sample(100, 100), sample(120, 100, "other")});
  BOOST_TEST_REQUIRE(steps.size() == 2u);
  BOOST_TEST(steps[0].to.in_mm() == 110);
  BOOST_TEST(steps[1].whose == "other");
}

BOOST_AUTO_TEST_CASE(what_is_above_the_most_is_not_told_apart) {
  const double infinity = std::numeric_limits<double>::infinity();
  const auto steps =
      stepped_limits({sample(0, infinity), sample(100, 900), sample(200, 200)},
                     {Length::mm(150), 0.01, Length::mm(0.1)});
  BOOST_TEST_REQUIRE(steps.size() == 1u);
  BOOST_TEST(steps[0].greatest.in_mm() == 150);
}

BOOST_AUTO_TEST_CASE(steps_cover_the_samples_and_stay_within_their_share) {
  for (std::uint64_t seed = 1; seed <= 300; ++seed) BOOST_TEST_CONTEXT(seed) {
      const auto samples = random_samples(seed);
      const auto steps = stepped_limits(samples);
      double at = samples.front().girth.in_mm();
      for (const PitchLimit& step : steps) {
        BOOST_TEST(step.from.in_mm() == at);
        at = step.to.in_mm();
        const double length = (step.to - step.from).in_mm();
        BOOST_TEST(length > 0);
        for (const double share : {1e-9, 0.1, 0.3, 0.5, 0.8, 1 - 1e-9}) {
          const double limit = limit_at(samples, step.from.in_mm() + share * length);
          const double greatest = step.greatest.in_mm();
          BOOST_TEST(greatest <= limit + 1e-6);  // rounding near jumps and slopes
          BOOST_TEST(limit - greatest <= std::max(0.01 * limit, 0.1) + 1e-6);
        }
      }
      BOOST_TEST(at == samples.back().girth.in_mm());
    }
}

BOOST_AUTO_TEST_CASE(no_two_neighbours_could_be_one_step) {
  // derived: fewest stretches leave no neighbours that fit one greatest space
  for (std::uint64_t seed = 1; seed <= 300; ++seed) BOOST_TEST_CONTEXT(seed) {
      const auto samples = random_samples(seed);
      const auto steps = stepped_limits(samples);
      for (std::size_t i = 0; i + 1 < steps.size(); ++i) {
        if (steps[i].whose != steps[i + 1].whose) continue;
        const double from = steps[i].from.in_mm();
        const double to = steps[i + 1].to.in_mm();
        double least = std::numeric_limits<double>::infinity();
        double largest = 0;
        std::vector<double> places{from + 1e-9 * (to - from), to - 1e-9 * (to - from)};
        for (const LimitSample& one : samples)
          for (const double near : {-1e-9, 1e-9})
            if (one.girth.in_mm() + near > from && one.girth.in_mm() + near < to)
              places.push_back(one.girth.in_mm() + near);
        for (const double place : places) {
          least = std::min(least, limit_at(samples, place));
          largest = std::max(largest, limit_at(samples, place));
        }
        BOOST_TEST(largest - least > std::max(0.01 * largest, 0.1) - 1e-6);
      }
    }
}

BOOST_AUTO_TEST_CASE(samples_in_reverse_give_the_steps_in_reverse) {
  for (std::uint64_t seed = 1; seed <= 300; ++seed) BOOST_TEST_CONTEXT(seed) {
      const auto samples = random_samples(seed);
      std::vector<LimitSample> back(samples.rbegin(), samples.rend());
      for (LimitSample& one : back) one.girth = Length() - one.girth;
      const auto steps = stepped_limits(samples);
      const auto other = stepped_limits(back);
      BOOST_TEST_REQUIRE(steps.size() == other.size());
      for (std::size_t i = 0; i < steps.size(); ++i) {
        const PitchLimit& twin = other[steps.size() - 1 - i];
        BOOST_TEST(std::abs((steps[i].from + twin.to).in_mm()) < 1e-9);  // property
        BOOST_TEST(std::abs((steps[i].greatest - twin.greatest).in_mm()) < 1e-9);
        BOOST_TEST(steps[i].whose == twin.whose);
      }
    }
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

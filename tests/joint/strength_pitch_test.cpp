#include "joint/strength_pitch.h"

#include <boost/test/unit_test.hpp>
#include <cmath>

#include "joint/job.h"
#include "tests/joint/example_joint.h"
#include "tests/joint/example_layout.h"
#include "tests/joint/example_strength.h"

namespace sheerlap {
namespace {

namespace tt = boost::test_tools;

/// A box 4000 by 2000 under a line load, its pitch left to the strength. What one ST4.8
/// carries is the lip's and hull's bearing, derived: 0.9 x 4.8 x 5 x 100 = 2160 N. No
/// pull, so nothing else is in use.
Joint example(double along) {
  Joint joint = with_strength(box_joint(4000, 2000, {}), {along, 0, 0});
  joint.layout.pitch_max = unlimited_pitch;
  joint.layout.by_strength = true;
  return joint;
}

PitchLimits limits_of(const Joint& joint) {
  const auto result = strength_pitch(joint, perimeter_of(joint));
  BOOST_TEST_REQUIRE(result.has_value(),
                     (result ? "" : result.error().front().message));
  return *result;
}

Error refused(const Joint& joint) {
  const auto result = strength_pitch(joint, perimeter_of(joint));
  BOOST_TEST_REQUIRE(!result.has_value());
  return result.error().front();
}

Job job_of(Joint joint) {
  Parts parts;
  parts.strength = true;
  auto job = work_out(std::move(joint), parts);
  BOOST_TEST_REQUIRE(job.has_value(), (job ? "" : job.error().front().message));
  return *job;
}

double greatest_use(const Job& job) {
  const FastenerStrengths& fasteners = job.strength->fasteners;
  return fasteners.rows[fasteners.worst].utilisation;
}

/// The least limit on a stretch of starboard, mm.
double least_between(const PitchLimits& limits, double from_mm, double to_mm) {
  double least = std::numeric_limits<double>::infinity();
  for (const PitchLimit& limit : limits.front().limits)
    if (limit.from.in_mm() < to_mm && limit.to.in_mm() > from_mm)
      least = std::min(least, limit.greatest.in_mm());
  return least;
}

BOOST_AUTO_TEST_SUITE(strength_pitch_limits)

BOOST_AUTO_TEST_CASE(an_even_load_allows_one_pitch_all_round) {
  const PitchLimits limits = limits_of(example(20));
  BOOST_TEST_REQUIRE(limits.size() == 3u);
  for (const SidePitchLimits& side : limits) {
    BOOST_TEST_REQUIRE(!side.limits.empty());
    for (const PitchLimit& limit : side.limits) {
      // derived: 2160 N / 20 N/mm
      BOOST_TEST(limit.greatest.in_mm() == 108, tt::tolerance(1e-9));
      BOOST_TEST(limit.whose == "what the fasteners carry alone");
    }
    for (const EndLimit& end : side.ends)  // derived: half of it
      BOOST_TEST(end.greatest.in_mm() == 54, tt::tolerance(1e-9));
  }
}

BOOST_AUTO_TEST_CASE(a_factor_asked_of_the_fasteners_lessens_the_pitch) {
  Joint joint = example(20);
  joint.loads->factor_fastener = 2.5;
  // derived: 2160 N / 2.5 / 20 N/mm
  BOOST_TEST(least_between(limits_of(joint), 1100, 4900) == 43.2, tt::tolerance(1e-9));
}

BOOST_AUTO_TEST_CASE(the_layout_made_with_it_has_no_fastener_over_one) {
  for (const double along : {2., 11., 20., 37.}) {
    BOOST_TEST_CONTEXT(along) {
      const Job job = job_of(example(along));
      BOOST_TEST(greatest_use(job) <= 1 + 1e-9);  // property
      for (const LayoutSide& side : job.layout->sides) BOOST_TEST(side.bridged.empty());
    }
  }
}

BOOST_AUTO_TEST_CASE(a_knee_of_load_draws_holes_together_only_there) {
  Joint joint = example(12);
  joint.loads->stretches.push_back(
      {{SideChoice::Starboard, Length::mm(3000), Length::mm(3400), false},
       {18, 0, 0},
       "shroud"});
  const PitchLimits limits = limits_of(joint);
  // derived: 2160 / 12 and 2160 / 30
  BOOST_TEST(least_between(limits, 1100, 3000) == 180, tt::tolerance(1e-9));
  BOOST_TEST(least_between(limits, 3000, 3400) == 72, tt::tolerance(1e-9));
  BOOST_TEST(least_between(limits, 3400, 4900) == 180, tt::tolerance(1e-9));
  const Job job = job_of(joint);
  BOOST_TEST(greatest_use(job) <= 1 + 1e-9);  // property
  const LayoutSide& starboard = job.layout->sides.front();
  for (std::size_t hole = 1; hole < starboard.girths.size(); ++hole) {
    const double from = starboard.girths[hole - 1].in_mm();
    const double to = starboard.girths[hole].in_mm();
    if (to < 3400 && from > 3000) BOOST_TEST(to - from <= 72 + 1e-6);
    // far from it the spaces are those of the even load
    if (from > 1100 && to < 2700) BOOST_TEST(to - from > 120);
  }
  bool named = false;
  for (const std::string& because : starboard.because)
    named =
        named || because.find("what the fasteners carry alone") != std::string::npos;
  BOOST_TEST(named);
}

BOOST_AUTO_TEST_CASE(nothing_that_limits_is_refused_in_words) {
  const Error error = refused(example(0));
  BOOST_TEST(error.where == "layout.pitch_max");
  BOOST_TEST(error.message ==
             "[layout] pitch_max is \"strength\" and nothing limits a space: no load "
             "on the fasteners, no [strength] gap_change for a paste with a "
             "yield_stress, no chosen rule with a pitch; give one of them, or a "
             "length");
}

BOOST_AUTO_TEST_CASE(a_chosen_rule_limits_the_pitch_by_its_name) {
  Joint joint = example(0);
  joint.strength.rules = {"pitch_hull_to_deck_bonded"};
  const PitchLimits limits = limits_of(joint);
  for (const SidePitchLimits& side : limits) {
    BOOST_TEST_REQUIRE(side.limits.size() == 1u);
    // published: 20 diameters of 4.8 mm; the rule's source stands in its table
    BOOST_TEST(side.limits[0].greatest.in_mm() == 96, tt::tolerance(1e-12));
    BOOST_TEST(side.limits[0].whose == "the chosen rule pitch_hull_to_deck_bonded");
  }
}

BOOST_AUTO_TEST_CASE(the_bow_of_the_wet_lip_limits_where_the_gap_is_least) {
  Joint joint = example(0);
  joint.strength.gap_change = Length::mm(0.1);
  joint.adhesive->strength.yield_stress = 500;
  // derived: the paste presses with 500e-6 x 50^2 / (2 x 3) = 0.208333 N/mm; the bow
  // of a built-in span, f s^4 / (384 E I), with E I = 8000 x 50 x 125 / 12
  const double f = 500e-6 * 2500 / 6, stiffness = 8000. * 50 * 125 / 12;
  const double span = std::pow(384 * stiffness * 0.1 / f, 0.25);
  const PitchLimits limits = limits_of(joint);
  for (const PitchLimit& limit : limits.front().limits) {
    BOOST_TEST(limit.greatest.in_mm() == span, tt::tolerance(0.01));
    BOOST_TEST(limit.whose == "the bow of the wet lip");
  }
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

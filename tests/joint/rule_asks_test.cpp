#include "joint/rule_asks.h"

#include <boost/test/unit_test.hpp>
#include <cmath>
#include <utility>

#include "tests/joint/example_rule_subject.h"

namespace sheerlap {
namespace {

using boost::test_tools::tolerance;

/// The one length that a rule asks.
Length asked(const RuleSubject& subject, const std::string& id) {
  const PublishedRule* rule = published_rule(id);
  BOOST_TEST_REQUIRE((rule != nullptr), "no rule " + id);
  const RuleAsked found = rule_asked(rule->asks.front(), subject);
  BOOST_TEST_REQUIRE(found.length.has_value());
  return *found.length;
}

RuleSubject with_diameter(double diameter_mm) {
  RuleSubject subject = example_rule_subject();
  subject.diameter = Length::mm(diameter_mm);
  return subject;
}

RuleSubject of_vessel(double vessel_ft, double diameter_in) {
  RuleSubject subject = with_diameter(25.4 * diameter_in);
  subject.vessel_length = Length::inches(12 * vessel_ft);
  return subject;
}

BOOST_AUTO_TEST_SUITE(rule_asks)

BOOST_AUTO_TEST_CASE(the_class_table_in_millimetres_is_diameters_times_diameter) {
  constexpr double inch = 25.4;
  const struct {
    const char* fastener;
    double diameter, edge, row_gap, ten, fifteen, twenty;  // mm
  } rows[] = {
      // derived: 2, 3, 10, 15 and 20 d of the class-rule table, printed to 0.01
      {"M5", 5, 10, 15, 50, 75, 100},
      {"M6", 6, 12, 18, 60, 90, 120},
      {"M8", 8, 16, 24, 80, 120, 160},
      {"#8", .164 * inch, 8.33, 12.50, 41.66, 62.48, 83.31},
      {"#10", .190 * inch, 9.65, 14.48, 48.26, 72.39, 96.52},
      {"#12", .216 * inch, 10.97, 16.46, 54.86, 82.30, 109.73},
      {"1/4 in", .25 * inch, 12.70, 19.05, 63.50, 95.25, 127.00},
      {"5/16 in", .3125 * inch, 15.88, 23.81, 79.38, 119.06, 158.75},
      {"3/8 in", .375 * inch, 19.05, 28.58, 95.25, 142.88, 190.50},
      {"ST4.8", 4.8, 9.6, 14.4, 48, 72, 96},
      {"ST5.5", 5.5, 11.0, 16.5, 55, 82.5, 110},
      {"ST6.3", 6.3, 12.6, 18.9, 63, 94.5, 126},
  };
  for (const auto& row : rows) BOOST_TEST_CONTEXT(row.fastener) {
      const RuleSubject subject = with_diameter(row.diameter);
      const auto asks = [&](const char* id, double mm) {
        BOOST_TEST(std::abs(asked(subject, id).in_mm() - mm) < 0.005 + 1e-9, id);
      };
      asks("edge_class", row.edge);
      asks("row_gap_class", row.row_gap);
      asks("pitch_below_waterline", row.ten);
      asks("pitch_above_waterline", row.fifteen);
      asks("pitch_hull_to_deck_bonded", row.twenty);
    }
}

BOOST_AUTO_TEST_CASE(the_rules_ask_their_check_values) {
  const struct {
    const char* id;
    double diameter, asks;  // mm
    const char* source;
  } rows[] = {
      {"pitch_hull_to_deck_bonded", 6, 120, "published: class table, 20 d, M6"},
      {"edge_class", 6, 12, "published: class table, 2 d, M6"},
      {"row_gap_class", 6, 18, "published: class table, 3 d, M6"},
      {"pitch_below_waterline", 6.35, 63.5, "published: class table, 10 d, 1/4 in"},
      {"pitch_above_waterline", 8, 120, "published: class table, 15 d, M8"},
      {"edge_tests", 6.35, 15.875, "published: Report 1824, 2.5 D, 1/4 in"},
      {"end_tests", 6.35, 25.4, "published: Report 1824, 4 D, 1/4 in"},
  };
  for (const auto& row : rows) BOOST_TEST_CONTEXT(row.source)
  BOOST_TEST(asked(with_diameter(row.diameter), row.id).in_mm() == row.asks,
             tolerance(1e-12));
}

BOOST_AUTO_TEST_CASE(the_greatest_pitch_of_a_rule_is_its_own) {
  const auto pitch = [](const char* id, const RuleSubject& subject) {
    return greatest_pitch(*published_rule(id), subject);
  };
  BOOST_TEST(pitch("pitch_hull_to_deck_bonded", with_diameter(6))->in_mm() == 120,
             tolerance(1e-12));
  BOOST_TEST(pitch("pitch_bedded", with_diameter(6))->in_mm() == 203.2,
             tolerance(1e-12));  // common practice, no source: 8 in
  BOOST_TEST(!pitch("edge_class", with_diameter(6)).has_value());
  BOOST_TEST(!pitch("pitch_light_craft", with_diameter(6)).has_value());
  // from memory, confirm: 6 in at 1/4 in on 30 ft, and never at a thinner bolt
  BOOST_TEST(pitch("deck_to_hull_by_length", of_vessel(30, .25))->in_inches() == 6,
             tolerance(1e-12));
  BOOST_TEST(!pitch("deck_to_hull_by_length", of_vessel(30, .2)).has_value());
  BOOST_TEST(!pitch("deck_to_hull_by_length", of_vessel(29, .5)).has_value());
  BOOST_TEST(!pitch("deck_to_hull_by_length", with_diameter(6)).has_value());
}

BOOST_AUTO_TEST_CASE(the_two_tables_of_pitch_cross_at_fifty_feet) {
  // derived: 24 d at 30 ft against 20 d, alike at 50 ft, 15 d at 120 ft, where each
  // bolt is as thick as the table by length asks; from memory, confirm
  const struct {
    double vessel_ft, diameter_in, share;
  } rows[] = {{30, .25, 24. / 20}, {50, .35, 1}, {120, .70, 15. / 20}};
  for (const auto& row : rows) BOOST_TEST_CONTEXT(row.vessel_ft) {
      const RuleSubject subject = of_vessel(row.vessel_ft, row.diameter_in);
      const auto by_length =
          greatest_pitch(*published_rule("deck_to_hull_by_length"), subject);
      const auto by_class =
          greatest_pitch(*published_rule("pitch_hull_to_deck_bonded"), subject);
      BOOST_TEST_REQUIRE(by_length.has_value());
      BOOST_TEST(by_length->in_mm() / by_class->in_mm() == row.share, tolerance(1e-12));
    }
}

BOOST_AUTO_TEST_CASE(all_of_the_chosen_rules_are_kept_by_the_least_of_their_pitches) {
  const auto pitch_of = [](const std::vector<std::string>& ids,
                           const RuleSubject& subject) {
    const auto chosen = chosen_rules(ids, "strength.rules");
    BOOST_TEST_REQUIRE(chosen.has_value());
    return greatest_pitch(*chosen, subject);
  };
  const std::vector<std::string> three{"edge_class", "pitch_hull_to_deck_bonded",
                                       "pitch_above_waterline"};
  // derived: 15 x 6 mm, under 20 x 6
  const auto closest = pitch_of(three, with_diameter(6));
  BOOST_TEST_REQUIRE(closest.has_value());
  BOOST_TEST(closest->pitch.in_mm() == 90, tolerance(1e-12));
  BOOST_TEST(closest->rule->id == "pitch_above_waterline");
  BOOST_TEST(!pitch_of({"edge_class"}, with_diameter(6)).has_value());
  BOOST_TEST(!pitch_of({}, with_diameter(6)).has_value());
  // a bolt too thin for the table by length has no pitch of it
  const auto thin =
      pitch_of({"deck_to_hull_by_length", "pitch_bedded"}, of_vessel(30, .2));
  BOOST_TEST(thin->rule->id == "pitch_bedded");
}

BOOST_AUTO_TEST_CASE(a_taper_runs_down_to_twenty_thousandths) {
  // published: MIL-HDBK-17-3F, vol. 3, ch. 12, D-11: 0.020 in (0.51 mm) at 1 in 10;
  // derived: 10 (5 - 0.508)
  BOOST_TEST(asked(example_rule_subject(), "taper_1_in_10").in_mm() == 44.92,
             tolerance(1e-12));
}

BOOST_AUTO_TEST_CASE(steel_is_spaced_by_its_larger_hole) {
  RuleSubject subject = example_rule_subject();
  subject.lip_hole = Length::mm(7);
  // published: a steel design manual: 2, 1.5 and 3.5 hole diameters
  BOOST_TEST(asked(subject, "end_steel").in_mm() == 14, tolerance(1e-12));
  BOOST_TEST(asked(subject, "edge_steel").in_mm() == 10.5, tolerance(1e-12));
  BOOST_TEST(asked(subject, "pitch_steel").in_mm() == 24.5, tolerance(1e-12));
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

#include "joint/rule_rows.h"

#include <algorithm>
#include <boost/test/unit_test.hpp>
#include <cmath>
#include <utility>

#include "tests/joint/example_rule_subject.h"

namespace sheerlap {
namespace {

using boost::test_tools::tolerance;

std::vector<const PublishedRule*> choice(const std::vector<std::string>& ids) {
  const auto chosen = chosen_rules(ids, "strength.rules");
  BOOST_TEST_REQUIRE(chosen.has_value());
  return *chosen;
}

RuleRow row_of(const RuleSubject& subject,
               const std::string& id,
               const std::vector<std::string>& chosen = {}) {
  return row_named(rule_rows(subject, choice(chosen)), id);
}

/// The rows of one rule.
RuleRows rows_of(const RuleSubject& subject,
                 const std::string& id,
                 const std::vector<std::string>& chosen = {}) {
  RuleRows rows = rule_rows(subject, choice(chosen));
  std::erase_if(rows, [&](const RuleRow& row) { return row.rule != id; });
  return rows;
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

bool noted(const RuleRow& row, const std::string& words) {
  return std::any_of(row.notes.begin(), row.notes.end(), [&](const std::string& note) {
    return note.find(words) != std::string::npos;
  });
}

BOOST_AUTO_TEST_SUITE(rule_rows_)

BOOST_AUTO_TEST_CASE(two_diameters_to_the_edge_pass_and_below_two_and_a_half_warn) {
  const struct {
    double edge;  // mm; M6: 2 d = 12, 2.5 d = 15
    RuleState by_class, by_tests;
  } rows[] = {
      // published: class table, 2 d; Report 1824, 2.5 D
      {15, RuleState::Pass, RuleState::Pass}, {14.9, RuleState::Pass, RuleState::Warn},
      {12, RuleState::Pass, RuleState::Warn}, {11.9, RuleState::Warn, RuleState::Warn},
      {-1, RuleState::Warn, RuleState::Warn},
  };
  for (const auto& row : rows) BOOST_TEST_CONTEXT(row.edge) {
      RuleSubject subject = example_rule_subject();
      subject.edge_low->length = Length::mm(row.edge);
      BOOST_TEST((row_of(subject, "edge_class").state == row.by_class));
      BOOST_TEST((row_of(subject, "edge_tests").state == row.by_tests));
      BOOST_TEST(row_of(subject, "edge_class").margin->in_mm() == row.edge - 12,
                 tolerance(1e-12));
    }
}

BOOST_AUTO_TEST_CASE(an_edge_rule_is_put_to_the_lip_and_to_the_hull) {
  RuleSubject subject = example_rule_subject();
  subject.edge_top->length = Length::mm(11);
  const RuleRows rows = rows_of(subject, "edge_class");
  BOOST_TEST_REQUIRE(rows.size() == 2u);
  BOOST_TEST((rows[0].state == RuleState::Pass));
  BOOST_TEST((rows[1].state == RuleState::Warn));
  BOOST_TEST(rows[0].has_words ==
             "least distance to the lip's low edge, trim tolerance taken off");
  BOOST_TEST(rows[0].where == "at S04");
  BOOST_TEST(rows[1].has_words ==
             "least distance to the hull's top edge, trim tolerance taken off");
  BOOST_TEST(rows[1].where == "at S05");
}

BOOST_AUTO_TEST_CASE(only_a_rule_that_was_chosen_fails) {
  RuleSubject subject = example_rule_subject();
  subject.largest_pitch->length = Length::mm(1000);
  subject.smallest_pitch->length = Length::mm(1);
  subject.edge_low->length = subject.edge_top->length = subject.end->length =
      subject.lap->length = Length::mm(1);
  subject.row_gap = Length::mm(1);
  subject.vessel_length = Length::inches(12 * 30);
  for (const RuleRow& row : rule_rows(subject, {})) BOOST_TEST_CONTEXT(row.rule) {
      BOOST_TEST((row.state != RuleState::Fail));
      const RuleSureness sureness = published_rule(row.rule)->sureness;
      if (row.state != RuleState::DoesNotApply)
        BOOST_TEST(
            (row.state == (sureness == RuleSureness::Seen ? RuleState::Warn
                                                          : RuleState::Information)));
    }
  for (const PublishedRule& rule : published_rules())
    if (rule.sureness != RuleSureness::Information) BOOST_TEST_CONTEXT(rule.id) {
        const RuleRows rows = rule_rows(subject, {&rule});
        for (const RuleRow& row : rows) {
          const bool short_of =
              row.rule == rule.id && row.margin && *row.margin < Length();
          BOOST_TEST((row.state == RuleState::Fail) == short_of);
          BOOST_TEST(row.chosen == (row.rule == rule.id));
        }
        // of a bolt of 6 mm and a lip of 5 mm, the least thickness is kept
        if (rule.id != "diameter_aerospace")
          BOOST_TEST((row_named(rows, std::string(rule.id)).state == RuleState::Fail));
      }
}

BOOST_AUTO_TEST_CASE(a_rule_that_is_remembered_passes_only_where_it_was_chosen) {
  const RuleSubject subject = example_rule_subject();
  BOOST_TEST((row_of(subject, "edge_light_craft").state == RuleState::Information));
  BOOST_TEST((row_of(subject, "edge_light_craft", {"edge_light_craft"}).state ==
              RuleState::Pass));
}

BOOST_AUTO_TEST_CASE(a_rule_for_another_place_applies_only_where_it_was_chosen) {
  const RuleSubject subject = example_rule_subject();  // largest pitch 100, M6
  const RuleRow row = row_of(subject, "pitch_below_waterline");
  BOOST_TEST((row.state == RuleState::DoesNotApply));
  BOOST_TEST(row.notes.front() ==
             "it is for watertight connections below the static load waterline");
  const RuleRow chosen =
      row_of(subject, "pitch_below_waterline", {"pitch_below_waterline"});
  BOOST_TEST((chosen.state == RuleState::Fail));
  BOOST_TEST(chosen.margin->in_mm() == -40, tolerance(1e-12));
  BOOST_TEST(chosen.notes.front() ==
             "it is for watertight connections below the static load waterline; this "
             "joint is held to it by choice");
}

BOOST_AUTO_TEST_CASE(adhesive_and_sealant_have_each_their_rule) {
  RuleSubject subject = example_rule_subject();
  const auto state = [&](const char* id) { return row_of(subject, id).state; };
  BOOST_TEST((state("pitch_hull_to_deck_bonded") == RuleState::Pass));
  BOOST_TEST((state("pitch_hull_to_deck_mastic") == RuleState::DoesNotApply));
  subject.filling = JointFilling::Sealant;
  BOOST_TEST((state("pitch_hull_to_deck_bonded") == RuleState::DoesNotApply));
  BOOST_TEST((state("pitch_hull_to_deck_mastic") == RuleState::Pass));
  BOOST_TEST(noted(row_of(subject, "pitch_hull_to_deck_mastic"), "sealing angle"));
  subject.filling = JointFilling::NotGiven;
  BOOST_TEST((state("pitch_hull_to_deck_bonded") == RuleState::DoesNotApply));
}

BOOST_AUTO_TEST_CASE(a_screw_held_to_a_rule_for_bolts_is_told_so) {
  RuleSubject subject = example_rule_subject();
  BOOST_TEST(!noted(row_of(subject, "edge_class"), "our extension"));
  subject.kind = FastenerKind::TappingScrew;
  BOOST_TEST(row_of(subject, "edge_class").notes.front() ==
             "written for bolts: holding tapping screws to it is our extension");
  BOOST_TEST(!noted(row_of(subject, "edge_aerospace"), "our extension"));
}

BOOST_AUTO_TEST_CASE(eighty_thicknesses_of_overlap_are_never_a_failed_check) {
  RuleSubject subject = example_rule_subject();
  subject.lip_thickness = Length::mm(6);
  const RuleRow row = row_of(subject, "lap_single_80t");
  // derived: 80 x 6 mm
  BOOST_TEST(row.asks->in_mm() == 480, tolerance(1e-12));
  BOOST_TEST((row.state == RuleState::Information));
  BOOST_TEST(noted(row, "carbon"));
  const RuleRows held =
      rule_rows(subject, {published_rule("lap_single_80t")});  // past the refusal
  BOOST_TEST((row_named(held, "lap_single_80t").state == RuleState::Information));
}

BOOST_AUTO_TEST_CASE(what_the_joint_has_not_does_not_apply) {
  RuleSubject subject = example_rule_subject();
  subject.end.reset();
  subject.largest_pitch.reset();
  const RuleRow end = row_of(subject, "end_tests", {"end_tests"});
  BOOST_TEST((end.state == RuleState::DoesNotApply));
  BOOST_TEST(end.notes.front() ==
             "no hole has a corner, an opening or an end beside it");
  BOOST_TEST(end.asks->in_mm() == 24, tolerance(1e-12));
  BOOST_TEST(!end.margin.has_value());
  BOOST_TEST(row_of(subject, "row_gap_class").notes.front() ==
             "there is one line of holes");
  BOOST_TEST(
      (row_of(subject, "pitch_hull_to_deck_bonded").state == RuleState::DoesNotApply));
}

BOOST_AUTO_TEST_CASE(the_table_by_vessel_length_is_used_whole) {
  // from memory, confirm: 30 ft: overlap 2.5, bolt 0.25, spacing 6 in
  const RuleRows thick =
      rows_of(of_vessel(30, .25), "deck_to_hull_by_length", {"deck_to_hull_by_length"});
  BOOST_TEST_REQUIRE(thick.size() == 3u);
  BOOST_TEST(thick[0].asks->in_inches() == 2.5, tolerance(1e-12));
  BOOST_TEST(thick[1].asks->in_inches() == .25, tolerance(1e-12));
  BOOST_TEST(thick[2].asks->in_inches() == 6, tolerance(1e-12));
  BOOST_TEST((thick[0].state == RuleState::Fail));  // 46 mm of lap
  BOOST_TEST((thick[1].state == RuleState::Pass));
  BOOST_TEST((thick[2].state == RuleState::Pass));
  const RuleRows thin =
      rows_of(of_vessel(30, .19), "deck_to_hull_by_length", {"deck_to_hull_by_length"});
  BOOST_TEST((thin[1].state == RuleState::Fail));
  BOOST_TEST((thin[2].state == RuleState::DoesNotApply));
  BOOST_TEST(!thin[2].asks.has_value());
  BOOST_TEST(thin[2].notes.front() ==
             "the spacing is for bolts of at least 6.35 mm; these are of 4.826 mm");
}

BOOST_AUTO_TEST_CASE(the_table_by_vessel_length_is_not_carried_on) {
  const auto note = [](const RuleSubject& subject) {
    const RuleRow row = row_of(subject, "deck_to_hull_by_length");
    BOOST_TEST((row.state == RuleState::DoesNotApply));
    return row.notes.front();
  };
  BOOST_TEST(note(example_rule_subject()) == "the vessel's length is not given");
  BOOST_TEST(
      note(of_vessel(20, .25)) ==
      "the table runs from 9144 to 36576 mm and is not carried on to a vessel of "
      "6096 mm");
}

BOOST_AUTO_TEST_CASE(
    a_gasketed_flange_asks_two_diameters_and_a_share_of_its_thickness) {
  const struct {
    const char* id;
    double diameter, thickness, pitch;  // mm
  } rows[] = {
      // derived: 2 d + 6 t / (m + 0.5), from memory
      {"flange_self_energising", 6, 5, 72},
      {"flange_soft", 6, 5, 42},
      {"flange_harder", 6, 5, 32},
      {"flange_soft", 8, 8, 64},
  };
  for (const auto& row : rows) BOOST_TEST_CONTEXT(row.id) {
      RuleSubject subject = with_diameter(row.diameter);
      subject.lip_thickness = Length::mm(row.thickness);
      subject.hull_thickness = Length::mm(row.thickness + 1);
      BOOST_TEST(row_of(subject, row.id).asks->in_mm() == row.pitch, tolerance(1e-12));
      std::swap(subject.lip_thickness, subject.hull_thickness);
      BOOST_TEST(row_of(subject, row.id).asks->in_mm() == row.pitch, tolerance(1e-12));
    }
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

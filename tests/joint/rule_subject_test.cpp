#include "joint/rule_subject.h"

#include <boost/test/unit_test.hpp>
#include <cmath>

#include "joint/layout.h"
#include "tests/joint/example_boats.h"
#include "tests/joint/example_joint.h"
#include "tests/joint/example_layout.h"

namespace sheerlap {
namespace {

using boost::test_tools::tolerance;

/// The facts of a joint with its holes at the girths given (mm).
RuleSubject subject_at(const Joint& joint,
                       const std::map<SideName, std::vector<double>>& girths_mm) {
  const Perimeter boat = perimeter_of(joint);
  const auto drilled = schedule(joint, boat, layout_at(girths_mm));
  BOOST_TEST_REQUIRE(drilled.has_value());
  return rule_subject(joint, boat, *drilled);
}

struct LaidOut {
  Layout layout;
  RuleSubject subject;
};

LaidOut laid_out(const Joint& joint) {
  const Perimeter boat = perimeter_of(joint);
  const auto holes = layout(joint, boat);
  BOOST_TEST_REQUIRE(holes.has_value());
  const auto drilled = schedule(joint, boat, *holes);
  BOOST_TEST_REQUIRE(drilled.has_value());
  return {*holes, rule_subject(joint, boat, *drilled)};
}

/// Its starboard drill line runs 508 mm from the bow to the corner, then 2016 mm aft:
/// the lip's outer face stands 3 + 5 mm outside the hull.
Joint box() { return box_joint(2000, 1000, {}); }

BOOST_AUTO_TEST_SUITE(rule_subject_)

BOOST_AUTO_TEST_CASE(a_box_has_the_facts_that_it_was_given) {
  const RuleSubject subject =
      subject_at(box(), {{SideName::Starboard, {400, 600, 700}}});
  const auto close = tolerance(1e-9);
  // derived: vertical faces, the line at 25 of 50 mm, trims of 2 mm
  BOOST_TEST(subject.edge_low->length.in_mm() == 23, close);
  BOOST_TEST(subject.edge_top->length.in_mm() == 23, close);
  BOOST_TEST(subject.edge_low->where == "at S01");
  BOOST_TEST(subject.lap->length.in_mm() == 46, close);
  BOOST_TEST(subject.lip_thickness.in_mm() == 5);
  BOOST_TEST(subject.hull_thickness.in_mm() == 6);
  // published: ISO 1478, ST4.8: 4.80; a fastener maker's holes: 5.8 and 4.5
  BOOST_TEST(subject.diameter.in_mm() == 4.80);
  BOOST_TEST(subject.lip_hole.in_mm() == 5.8);
  BOOST_TEST(subject.hull_hole.in_mm() == 4.5);
  BOOST_TEST((subject.kind == FastenerKind::TappingScrew));
  BOOST_TEST(!subject.row_gap.has_value());
  BOOST_TEST(!subject.vessel_length.has_value());
}

BOOST_AUTO_TEST_CASE(before_the_holes_are_laid_out_the_rest_is_known) {
  const auto screw = fastener(box().fastener);
  BOOST_TEST_REQUIRE(screw.has_value());
  const RuleSubject subject = rule_subject(box(), *screw);
  BOOST_TEST(subject.diameter.in_mm() == 4.80);  // published: ISO 1478
  BOOST_TEST(subject.lip_thickness.in_mm() == 5);
  BOOST_TEST((subject.filling == JointFilling::Adhesive));
  BOOST_TEST(!subject.largest_pitch.has_value());
  BOOST_TEST(!subject.edge_low.has_value());
  BOOST_TEST(!subject.end.has_value());
}

BOOST_AUTO_TEST_CASE(no_pitch_is_taken_across_a_corner_or_an_opening) {
  Joint joint = box();
  joint.openings.push_back(
      {{SideChoice::Starboard, Length::mm(1000), Length::mm(1200)}, "well"});
  const RuleSubject subject =
      subject_at(joint, {{SideName::Starboard, {10, 400, 600, 950, 1300, 1360}}});
  // derived: 390 to the corner at 508, 350 and 60; not 200 nor 350 across the well
  BOOST_TEST(subject.largest_pitch->length.in_mm() == 390, tolerance(1e-12));
  BOOST_TEST(subject.largest_pitch->where == "from S01 to S02");
  // derived: twice the 10 mm to the bow's centreline
  BOOST_TEST(subject.smallest_pitch->length.in_mm() == 20, tolerance(1e-12));
  BOOST_TEST(subject.smallest_pitch->where == "from S01 across the bow datum");
}

BOOST_AUTO_TEST_CASE(an_end_distance_is_the_lesser_of_lip_and_hull) {
  const struct {
    double girth, end;  // mm
    const char* where;
  } rows[] = {
      // derived: the corner lies 8 mm further out on the drill line than on the hull
      {458, 42, "at S01, corner within starboard"},
      {558, 42, "at S01, corner within starboard"},
      {503, -3, "at S01, corner within starboard"},
      {2464, 52, "at S01, starboard transom corner"},
  };
  for (const auto& row : rows) BOOST_TEST_CONTEXT(row.girth) {
      const RuleSubject subject =
          subject_at(box(), {{SideName::Starboard, {row.girth}}});
      BOOST_TEST_REQUIRE(subject.end.has_value());
      BOOST_TEST(subject.end->length.in_mm() == row.end, tolerance(1e-9));
      BOOST_TEST(subject.end->where == row.where);
    }
}

BOOST_AUTO_TEST_CASE(an_opening_ends_the_laminate_on_both_its_sides) {
  Joint joint = box();
  joint.openings.push_back(
      {{SideChoice::Starboard, Length::mm(1000), Length::mm(1200)}, "well"});
  const RuleSubject before =
      subject_at(joint, {{SideName::Starboard, {700, 970, 1300}}});
  BOOST_TEST(before.end->length.in_mm() == 30, tolerance(1e-9));
  BOOST_TEST(before.end->where == "at S02, opening well");
  const RuleSubject after =
      subject_at(joint, {{SideName::Starboard, {700, 950, 1220}}});
  BOOST_TEST(after.end->length.in_mm() == 20, tolerance(1e-9));
  BOOST_TEST(after.end->where == "at S03, opening well");
}

BOOST_AUTO_TEST_CASE(a_round_boat_has_no_end) {
  const LaidOut boat = laid_out(circle_joint(1000, 13, {}));
  BOOST_TEST(!boat.subject.end.has_value());
}

BOOST_AUTO_TEST_CASE(the_pitches_are_those_of_the_layout) {
  // property: the same spaces, found from the holes alone
  Joint centred = circle_joint(1000, 13, {});
  FixedPlace bow;
  bow.what = "stem eye";
  centred.places.push_back(bow);  // a hole on the centreline, which port does without
  Joint well = example_joint(small_boat(), {});
  well.openings.push_back(
      {{SideChoice::Transom, Length::mm(200), Length::mm(500)}, "well"});
  for (const Joint& joint :
       {box(), circle_joint(1000, 13, {}), centred, example_joint(small_boat(), {}),
        well, as_whole(example_joint(small_boat(), {}))}) {
    const LaidOut boat = laid_out(joint);
    BOOST_TEST_REQUIRE(boat.subject.largest_pitch.has_value());
    BOOST_TEST(
        boat.subject.largest_pitch->length.in_mm() == boat.layout.largest_pitch.in_mm(),
        tolerance(1e-9));
    BOOST_TEST(boat.subject.smallest_pitch->length.in_mm() ==
                   boat.layout.smallest_pitch.in_mm(),
               tolerance(1e-9));
  }
}

BOOST_AUTO_TEST_CASE(the_lap_is_the_least_there_is_where_there_is_joint) {
  Joint joint = box();
  joint.sheer.rows[2].offsets.lap = Length::mm(48);  // the transom corner
  const std::map<SideName, std::vector<double>> holes{{SideName::Starboard, {700}}};
  BOOST_TEST(subject_at(joint, holes).lap->length.in_mm() == 44, tolerance(1e-9));
  joint.openings.push_back(
      {{SideChoice::Starboard, Length::mm(1516), Length::mm(2524)}, "cut-out"});
  joint.openings.push_back(
      {{SideChoice::Transom, Length::mm(0), Length::mm(508)}, "cut-out"});
  joint.openings.push_back(
      {{SideChoice::Transom, Length::mm(508), Length::mm(1016)}, "cut-out"});
  joint.openings.push_back(
      {{SideChoice::Port, Length::mm(1516), Length::mm(2524)}, "cut-out"});
  // derived: half way from 50 at the bow's corner to 48, 4 mm of trims off: the sheer
  // is half way at 1000 of 2000, the drill line at 508 + 1008
  const RuleSubject cut = subject_at(joint, holes);
  BOOST_TEST(cut.lap->length.in_mm() == 45, tolerance(1e-9));
  BOOST_TEST(cut.lap->where == "on starboard at girth 1500 mm on the sheer");
}

BOOST_AUTO_TEST_CASE(a_soft_adhesive_is_a_sealant) {
  Joint joint = box();
  const auto filling = [&] {
    return subject_at(joint, {{SideName::Starboard, {700}}}).filling;
  };
  BOOST_TEST((filling() == JointFilling::Adhesive));
  joint.adhesive->strength.shear_modulus = 4.9;
  BOOST_TEST((filling() == JointFilling::Sealant));
  joint.adhesive->strength.shear_modulus = 5;
  BOOST_TEST((filling() == JointFilling::Adhesive));
  joint.adhesive.reset();
  BOOST_TEST((filling() == JointFilling::NotGiven));
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

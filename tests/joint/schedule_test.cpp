#include "joint/schedule.h"

#include <boost/test/unit_test.hpp>

#include "tests/joint/example_joint.h"
#include "tests/joint/example_layout.h"

namespace sheerlap {
namespace {

using boost::test_tools::tolerance;
using Girths = std::map<SideName, std::vector<double>>;

Schedule schedule_of(const Joint& joint, const Girths& girths) {
  const auto made = schedule(joint, perimeter_of(joint), layout_at(girths));
  BOOST_TEST_REQUIRE(made.has_value());
  return *made;
}

BOOST_AUTO_TEST_SUITE(schedule_suite)

BOOST_AUTO_TEST_CASE(each_station_has_its_jig_and_its_girth_on_it) {
  Joint joint = circle_joint(800, 25, {});
  joint.jig.length_max = Length::mm(250);
  const Schedule made = schedule_of(
      joint,
      {{SideName::Starboard, {50, 150, 250, 350, 450}}, {SideName::Port, {50, 150}}});
  const struct {
    const char* jig;
    double girth;  // derived: pieces 50-250 and 250-450 share the hole at 250
  } rows[] = {{"J-S1", 0},   {"J-S1", 100}, {"J-S1", 200}, {"J-S2", 100},
              {"J-S2", 200}, {"J-P1", 0},   {"J-P1", 100}};
  BOOST_TEST_REQUIRE(made.stations.size() == std::size(rows));
  for (std::size_t i = 0; i < std::size(rows); ++i) {
    BOOST_TEST(made.stations[i].jig == rows[i].jig);
    BOOST_TEST(made.stations[i].jig_girth.in_mm() == rows[i].girth, tolerance(1e-12));
  }
}

BOOST_AUTO_TEST_CASE(a_shared_hole_names_the_jig_that_is_pinned_through_it) {
  Joint joint = circle_joint(800, 25, {});
  joint.jig.length_max = Length::mm(250);
  const Schedule made =
      schedule_of(joint, {{SideName::Starboard, {50, 150, 250, 350, 450}}});
  // derived: 200 from hole to hole and a bush of 8 at each end are 216, 300 are too
  // long
  const char* next[] = {"", "", "J-S2", "", ""};
  for (std::size_t i = 0; i < 5; ++i) BOOST_TEST(made.stations[i].next_jig == next[i]);
}

BOOST_AUTO_TEST_CASE(a_jig_counts_its_ends) {
  // derived: holes 200 apart and a bush of 8 at each end make 216
  Joint joint = circle_joint(800, 25, {});
  const auto jigs_with = [&](double longest) {
    joint.jig.length_max = Length::mm(longest);
    return schedule_of(joint, {{SideName::Starboard, {50, 150, 250}}}).jigs.size();
  };
  BOOST_TEST(jigs_with(216) == 1u);
  BOOST_TEST(jigs_with(215.9) == 2u);
}

BOOST_AUTO_TEST_CASE(a_jig_that_its_ends_fill_is_the_users_error) {
  Joint joint = circle_joint(800, 25, {});
  joint.jig.length_max = Length::mm(16);
  const auto made = schedule(joint, perimeter_of(joint), layout_at({}));
  BOOST_TEST_REQUIRE(!made.has_value());
  BOOST_TEST(made.error().front().where == "jig.length_max");
}

BOOST_AUTO_TEST_CASE(the_datums_are_the_starts_and_ends_of_the_sides) {
  // derived: the box of 2000 by 1000 with the drill line 8 outside it, 25 down
  const Schedule made = schedule_of(box_joint(2000, 1000, {}), {});
  const struct {
    const char* what;
    Point3 point;
  } rows[] = {{"bow datum", {-8, 0, -25}},
              {"starboard transom corner", {2008, 508, -25}},
              {"bow datum", {-8, 0, -25}},
              {"port transom corner", {2008, -508, -25}},
              {"starboard transom corner", {2008, 508, -25}},
              {"port transom corner", {2008, -508, -25}}};
  BOOST_TEST_REQUIRE(made.datums.size() == std::size(rows));
  for (std::size_t i = 0; i < std::size(rows); ++i) {
    BOOST_TEST(made.datums[i].what == rows[i].what);
    BOOST_TEST((made.datums[i].point - rows[i].point).norm() < 1e-9);
  }
}

BOOST_AUTO_TEST_CASE(the_length_follows_the_stack_along_a_widening_gap) {
  // derived: along the box's side the gap grows from 3 to 9 over 2000; 14.7 is the last
  // stack for 19 mm (gap 3.7, x 233, girth about 749), 17.7 for 22 (6.7, 1233, 1749)
  Joint joint = box_joint(2000, 1000, {});
  for (const std::size_t row : {2u, 3u}) {
    joint.sheer.rows[row].offsets.lip_top = Length::mm(9);
    joint.sheer.rows[row].offsets.lip_low = Length::mm(9);
  }
  const Schedule made =
      schedule_of(joint, {{SideName::Starboard, {600, 740, 760, 1740, 1760}}});
  const double lengths[] = {19, 19, 22, 22, 25};
  for (std::size_t i = 0; i < 5; ++i) {
    BOOST_TEST_REQUIRE(made.stations[i].length.has_value());
    BOOST_TEST(made.stations[i].length->in_mm() == lengths[i]);
  }
}

BOOST_AUTO_TEST_CASE(an_unknown_fastener_is_the_users_error) {
  Joint joint = box_joint(2000, 1000, {});
  joint.fastener.size = "ST5";
  const auto made = schedule(joint, perimeter_of(joint), layout_at({}));
  BOOST_TEST_REQUIRE(!made.has_value());
  BOOST_TEST(made.error().front().where == "fastener.size");
}

BOOST_AUTO_TEST_CASE(a_layout_without_holes_makes_a_schedule_without_stations) {
  const Schedule made = schedule_of(box_joint(2000, 1000, {}), {});
  BOOST_TEST(made.stations.empty());
  BOOST_TEST(made.jigs.empty());
}

BOOST_AUTO_TEST_CASE(the_checks_name_the_worst_station_of_the_boat) {
  // derived: the lap narrows from 50 to 36 on starboard and port, least at the transom
  Joint joint = box_joint(2000, 1000, {});
  for (const std::size_t row : {2u, 3u})
    joint.sheer.rows[row].offsets.lap = Length::mm(36);
  const Schedule made = schedule_of(
      joint, {{SideName::Starboard, {600, 1200}}, {SideName::Transom, {400}}});
  const Check edge = check_named(made.checks, "schedule.edge_low");
  BOOST_TEST((edge.state == CheckState::Fail));  // 36 - 25 - 2 = 9 against 9.6
  BOOST_TEST(edge.value == 9, tolerance(1e-9));
  BOOST_TEST(edge.what.find("T01") != std::string::npos);
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

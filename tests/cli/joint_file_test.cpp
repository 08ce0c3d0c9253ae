#include "cli/joint_file.h"

#include <boost/test/unit_test.hpp>
#include <string>
#include <vector>

#include "joint/perimeter.h"
#include "tests/cli/boat_folder.h"
#include "tests/places.h"

namespace sheerlap {
namespace {

Joint joint_of(const std::string& joint, const std::string& sheer = sheer_text) {
  const BoatFolder folder;
  folder.write("joint.toml", joint);
  folder.write("sheer.csv", sheer);
  const auto file = folder.read();
  BOOST_REQUIRE_MESSAGE(file.has_value(), file.error().front().message);
  return file->joint;
}

BOOST_AUTO_TEST_SUITE(joint_file)

// values of the next five cases: derived, as full_joint_text writes them

BOOST_AUTO_TEST_CASE(the_shape_is_read_as_written) {
  const Joint joint = joint_of(full_joint_text);
  BOOST_TEST(joint.title == "Test boat");
  BOOST_TEST(joint.sheer.half);
  BOOST_TEST(joint.sheer.closed);
  BOOST_TEST((joint.sheer.curve == CurveKind::Chords));
  BOOST_TEST((joint.sheer.knuckle_angle == Angle::degrees(25)));
  BOOST_TEST_REQUIRE(joint.sheer.rows.size() == 4u);
  BOOST_TEST(joint.sheer.rows[1].point.y() == 800.0);
  BOOST_TEST(joint.sheer.rows[3].offsets.lap.in_mm() == 50.0);
  BOOST_TEST(joint.sheer.rows[0].offsets.hull_low.in_mm() == -1.0);
  BOOST_TEST(joint.sheer.rows[0].offsets.lip_low.in_mm() == 5.0);
  BOOST_TEST(joint.bond.from->in_mm() == 5.0);
  BOOST_TEST(joint.bond.to->in_mm() == 45.0);
  BOOST_TEST(joint.hull.thickness.in_mm() == 6.0);
  BOOST_TEST(joint.lip.trim.in_mm() == 1.5);
  BOOST_TEST_REQUIRE(joint.openings.size() == 1u);
  BOOST_TEST((joint.openings[0].stretch.side == SideChoice::Transom));
  BOOST_TEST(joint.openings[0].stretch.to.in_mm() == 800.0);
  BOOST_TEST(joint.openings[0].what == "outboard well");
}

BOOST_AUTO_TEST_CASE(the_fastening_is_read_as_written) {
  const Joint joint = joint_of(full_joint_text);
  BOOST_TEST((joint.fastener.kind == FastenerKind::Bolt));
  BOOST_TEST((joint.fastener.head == HeadKind::Countersunk));
  BOOST_TEST(joint.fastener.size == "M6");
  BOOST_TEST(joint.fastener.lengths.size() == 3u);
  BOOST_TEST(joint.fastener.hull_pilot->in_mm() == 6.4);
  BOOST_TEST(*joint.fastener.box == 100u);
  BOOST_TEST(joint.layout.end_max.in_mm() == 70.0);
  BOOST_TEST(joint.layout.round_to.in_mm() == 0.5);
  BOOST_TEST(joint.zones[0].pitch_min->in_mm() == 50.0);
  BOOST_TEST_REQUIRE(joint.keepouts.size() == 2u);
  BOOST_TEST(joint.keepouts[0].clear.in_mm() == 25.0);
  BOOST_TEST(joint.keepouts[1].stretch.by_x);
  BOOST_TEST(joint.keepouts[1].stretch.from.in_mm() == 2000.0);
  BOOST_TEST(joint.keepouts[1].clear.in_mm() == 0.0);
  BOOST_TEST(!joint.places[0].by_x);
  BOOST_TEST(joint.places[1].by_x);
  BOOST_TEST(joint.places[1].at.in_mm() == 2500.0);
  BOOST_TEST(joint.jig.length_max.in_mm() == 1200.0);
  BOOST_TEST(joint.jig.plate.in_mm() == 3.0);
  BOOST_TEST((joint.jig.marks == PlateSide::Lip));
}

BOOST_AUTO_TEST_CASE(the_supplies_are_read_as_written) {
  const Joint joint = joint_of(full_joint_text);
  BOOST_TEST_REQUIRE(joint.adhesive.has_value());
  BOOST_TEST((joint.adhesive->bead_shape == BeadShape::Round));
  BOOST_TEST(joint.adhesive->bead_sizes.back().in_mm() == 10.0);
  BOOST_TEST(joint.adhesive->pack_usable.in_ml() == 430.0);
  BOOST_TEST(joint.adhesive->working_time->in_minutes() == 50.0);
  BOOST_TEST(joint.adhesive->working_time_at == 20.0);
  BOOST_TEST(joint.adhesive->shelf_life->in_days() == 270.0);
  BOOST_TEST_REQUIRE(joint.shop.has_value());
  BOOST_TEST(joint.shop->pack_change.in_minutes() == 1.5);
  BOOST_TEST(joint.shop->drivers == 3);
  BOOST_TEST_REQUIRE(joint.order.has_value());
  BOOST_TEST(joint.order->boats == 120u);
  BOOST_TEST(joint.order->spare == 0.03);
}

BOOST_AUTO_TEST_CASE(what_only_the_strength_needs_is_kept) {
  const Joint joint = joint_of(strength_joint_text);
  BOOST_TEST(*joint.hull.strength.interlaminar == 14.0);
  BOOST_TEST(*joint.hull.strength.poisson == 0.3);
  BOOST_TEST(*joint.lip.strength.bearing == 90.0);
  BOOST_TEST(!joint.lip.strength.modulus.has_value());
  BOOST_TEST(*joint.adhesive->strength.plastic_strain == 0.3);
  BOOST_TEST_REQUIRE(joint.loads.has_value());
  BOOST_TEST(joint.loads->off == 0.5);
  BOOST_TEST(joint.loads->factor_fastener == 3.0);
  BOOST_TEST(*joint.hull.strength.through == 7.0);
  BOOST_TEST(*joint.hull.strength.bending_ratio == 0.9);
  BOOST_TEST(*joint.hull.strength.expansion == 25.0);
  BOOST_TEST(*joint.hull.strength.glass_fraction == 0.33);
  BOOST_TEST(*joint.adhesive->strength.viscosity == 300.0);
  BOOST_TEST(*joint.adhesive->strength.yield_stress == 500.0);
  BOOST_TEST(*joint.adhesive->strength.gasket_factor == 0.5);
  BOOST_TEST(*joint.fastener.strength.property_class == "A4-70");
  BOOST_TEST(*joint.fastener.strength.tensile == 690.0);
  BOOST_TEST(*joint.fastener.strength.modulus == 193000.0);
  BOOST_TEST(*joint.fastener.strength.shear_capacity == 5000.0);
  BOOST_TEST(*joint.fastener.strength.pull_capacity == 6000.0);
}

BOOST_AUTO_TEST_CASE(the_loads_are_read_as_written) {
  const Joint joint = joint_of(full_joint_text);
  const Loads& loads = *joint.loads;
  BOOST_TEST_REQUIRE(loads.stretches.size() == 1u);
  BOOST_TEST(loads.stretches[0].stretch.to.in_mm() == 2600.0);
  BOOST_TEST(loads.stretches[0].load.along == 8.0);
  BOOST_TEST(loads.stretches[0].load.across == 0.0);
  BOOST_TEST(loads.stretches[0].what == "mast bulkhead");
  BOOST_TEST_REQUIRE(loads.points.size() == 2u);
  BOOST_TEST(loads.points[0].force == 4000.0);
  BOOST_TEST((loads.points[0].direction == LoadDirection::Across));
  BOOST_TEST(loads.points[0].spread.in_mm() == 200.0);
  BOOST_TEST(loads.points[1].by_x);
  BOOST_TEST(loads.points[1].at.in_mm() == 3000.0);
  BOOST_TEST_REQUIRE(loads.girder.has_value());
  BOOST_TEST(loads.girder->shear_force == 20000.0);
  BOOST_TEST(loads.girder->torque == 5e6);  // N m in the file
  BOOST_TEST_REQUIRE(loads.girder->plates.size() == 2u);
  BOOST_TEST(loads.girder->plates[0].modulus_ratio == 0.9);
  BOOST_TEST_REQUIRE(loads.panel.has_value());
  BOOST_TEST(*loads.panel->category_factor == 0.8);
  BOOST_TEST(loads.panel->longitudinal_factor == 0.9);
  BOOST_TEST_REQUIRE(loads.warmth.has_value());
  BOOST_TEST(loads.warmth->kelvin == 40.0);
  BOOST_TEST(loads.warmth->hull_width.in_mm() == 250.0);
}

BOOST_AUTO_TEST_CASE(how_the_strength_is_worked_is_read_as_written) {
  const Joint joint = joint_of(full_joint_text);
  const StrengthRules& rules = joint.strength;
  BOOST_TEST_REQUIRE(rules.rules.size() == 1u);
  BOOST_TEST(rules.rules[0] == "class-pitch-bonded-hull-deck");
  BOOST_TEST(rules.edges_held);
  BOOST_TEST(rules.hole_brittleness == 0.5);
  BOOST_TEST(rules.thread_grip == 0.4);
  BOOST_TEST(rules.wet == 0.85);
  BOOST_TEST(rules.gap_change->in_mm() == 0.3);
  BOOST_TEST(rules.closing_speed == 2.0);
  BOOST_TEST(rules.hull_length->in_mm() == 12000.0);
  BOOST_TEST_REQUIRE(joint.adhesive_options.size() == 1u);
  BOOST_TEST(joint.adhesive_options[0].name == "epoxy paste");
  BOOST_TEST(*joint.adhesive_options[0].strength.modulus == 3000.0);
}

BOOST_AUTO_TEST_CASE(a_pitch_can_be_left_to_the_strength) {
  const Joint joint = joint_of(
      replaced(full_joint_text, "pitch_max = 150\n", "pitch_max = \"strength\"\n"));
  BOOST_TEST(joint.layout.by_strength);
  BOOST_TEST((joint.layout.pitch_max == unlimited_pitch));
}

BOOST_AUTO_TEST_CASE(loads_that_say_too_little_are_refused) {
  const struct {
    const char *from, *to, *message;
  } rows[] = {
      {"pitch_max = 150\npitch_min = 40\nend_min = 25\nend_max = 70\n",
       "pitch_max = \"strength\"\npitch_min = 40\nend_min = 25\n",
       "joint.toml:77: [layout] has no end_max: the most from a corner to the first "
       "hole; pitch_max gives no length to halve"},
      {"what = \"mast bulkhead\"\n", "",
       "joint.toml:143: [[load]] has no what: what loads it, such as \"mast "
       "bulkhead\""},
      {"along = 8\noff = 0.25\n", "",
       "joint.toml:143: [[load]] has no load: along, across or off, N/mm"},
      {"direction = \"across\"", "direction = \"down\"",
       "joint.toml:155: [[point_load]] direction is \"down\": one of along, across, "
       "off"},
      {"category = \"B\"\n", "",
       "joint.toml:188: [deck_panel] has no category: the design category, A to D; or "
       "give the pressure, kN/m2"},
      {"rules = [\"class-pitch-bonded-hull-deck\"]", "rules = [20]",
       "joint.toml:202: [strength] rules is not a list of texts: texts in quotes, in "
       "brackets"},
  };
  for (const auto& row : rows) BOOST_TEST_CONTEXT(row.message)
  check_messages(refusal_of(replaced(full_joint_text, row.from, row.to)),
                 {row.message});
}

BOOST_AUTO_TEST_CASE(a_file_that_says_everything_uses_no_default) {
  BOOST_TEST(joint_of(full_joint_text).defaults.size() == 0u);
}

BOOST_AUTO_TEST_CASE(every_default_used_is_on_record) {
  const Joint joint = joint_of(replaced(short_joint_text, "units = \"mm\"\n", ""));
  const char* practice = "common practice, no source";
  const std::vector<DefaultUsed> expected{
      {"units", "mm", practice},
      {"sheer.half", "true",
       "common practice, no source: a table gives one half of the boat"},
      {"sheer.closed", "true",
       "common practice, no source: the joint runs all the way round"},
      {"sheer.curve", "spline",
       "common practice, no source: a sheer is fair between its corners"},
      {"sheer.knuckle_angle", "30 degrees", practice},
      {"hull.trim", "2 mm", practice},
      {"lip.trim", "2 mm", practice},
      {"fastener.head", "pan", practice},
      {"layout.end_max", "75 mm", "common practice, no source: half of pitch_max"},
      {"layout.end_min", "30 mm", practice},
      {"layout.radius_min", "150 mm", practice},
      {"layout.round_to", "1 mm", practice},
      {"jig.length_max", "1300 mm", practice},
      {"jig.bush", "8 mm", "from memory, confirm"},
      {"jig.plate", "0 mm", "a strip of film or paper"},
      {"jig.marks", "outer", practice}};
  BOOST_TEST_REQUIRE(joint.defaults.size() == expected.size());
  for (std::size_t i = 0; i < expected.size(); ++i) {
    BOOST_TEST(joint.defaults[i].key == expected[i].key);
    BOOST_TEST(joint.defaults[i].value == expected[i].value);
    BOOST_TEST(joint.defaults[i].why == expected[i].why);
  }
  BOOST_TEST(joint.layout.end_max.in_mm() == 75.0);
  BOOST_TEST(joint.jig.bush.in_mm() == 8.0);
}

BOOST_AUTO_TEST_CASE(a_small_pitch_alone_does_not_contradict_its_own_ends) {
  // derived: half of 50 is 25, less than the usual 30
  const Joint joint =
      joint_of(replaced(short_joint_text, "pitch_max = 150", "pitch_max = 50"));
  BOOST_TEST(joint.layout.end_min.in_mm() == 25.0);
  BOOST_TEST(joint.layout.end_max.in_mm() == 25.0);
}

BOOST_AUTO_TEST_CASE(a_bond_over_the_whole_lap_is_on_record_if_there_is_an_adhesive) {
  const Joint joint =
      joint_of(replaced(full_joint_text, "bond_from = 5\nbond_to = 45\n", ""));
  BOOST_TEST_REQUIRE(joint.defaults.size() == 2u);
  BOOST_TEST(joint.defaults[0].key == "lap.bond_from");
  BOOST_TEST(joint.defaults[0].value == "0");
  BOOST_TEST(joint.defaults[1].key == "lap.bond_to");
  BOOST_TEST(joint.defaults[1].value == "the lap's depth");
}

BOOST_AUTO_TEST_CASE(an_adhesive_without_a_name_is_called_adhesive) {
  const Joint joint = joint_of(replaced(full_joint_text, "name = \"paste\"\n", ""));
  BOOST_TEST(joint.adhesive->name == "adhesive");
  BOOST_TEST_REQUIRE(joint.defaults.size() == 1u);
  BOOST_TEST(joint.defaults[0].key == "adhesive.name");
}

BOOST_AUTO_TEST_CASE(tables_that_are_left_out_are_absent_and_no_error) {
  const Joint joint = joint_of(short_joint_text);
  BOOST_TEST(!joint.adhesive.has_value());
  BOOST_TEST(!joint.shop.has_value());
  BOOST_TEST(!joint.order.has_value());
  BOOST_TEST(!joint.loads.has_value());
}

BOOST_AUTO_TEST_CASE(a_joint_without_a_title_takes_the_files_name) {
  const Joint joint = joint_of(replaced(short_joint_text, "title = \"Short\"\n", ""));
  BOOST_TEST(joint.title == "joint");
  BOOST_TEST(joint.defaults.front().key == "title");
}

BOOST_AUTO_TEST_CASE(inches_are_the_unit_of_bare_numbers_only) {
  // derived: 2 x 25.4, 160 x 25.4, 3/16 x 25.4, 5 x 25.4, 1/16 x 25.4; "6 mm" carries
  // its own unit
  std::string text = replaced(short_joint_text, "units = \"mm\"", "units = \"in\"");
  text = replaced(text, "depth = 50", "depth = 2");
  text = replaced(text, "lip_top = 3\nlip_low = 5", "lip_top = 0.1\nlip_low = \"1/8\"");
  text = replaced(text, "thickness = 6", "thickness = \"6 mm\"");
  text = replaced(text, "thickness = 5", "thickness = \"3/16\"");
  text = replaced(text, "line = 28", "line = 1");
  text = replaced(text, "pitch_max = 150\npitch_min = 40",
                  "pitch_max = \"0-5-0\"\npitch_min = 1.5");
  const Joint joint = joint_of(text, "x,y,z\n0,0,36\n60,30,34\n160,40,32\n160,0,32\n");
  BOOST_TEST(joint.sheer.rows[0].offsets.lap.in_mm() == 50.8);
  BOOST_TEST(joint.sheer.rows[2].point.x() == 4064.0);
  BOOST_TEST(joint.hull.thickness.in_mm() == 6.0);
  BOOST_TEST(joint.lip.thickness.in_mm() == 4.7625,
             boost::test_tools::tolerance(1e-14));  // rounding only
  BOOST_TEST(joint.layout.pitch_max.in_mm() == 127.0);
  BOOST_TEST(joint.layout.round_to.in_mm() == 1.5875);
}

BOOST_AUTO_TEST_CASE(columns_of_the_sheer_table_stand_in_place_of_constants) {
  const Joint joint = joint_of(replaced(short_joint_text, "depth = 50\n", ""),
                               "x,y,z,lap,lip_low\n0,0,9,40,6\n1500,800,9,42,7\n4000,"
                               "1000,9,44,8\n4000,0,9,44,8\n");
  BOOST_TEST(joint.sheer.rows[1].offsets.lap.in_mm() == 42.0);
  BOOST_TEST(joint.sheer.rows[1].offsets.lip_low.in_mm() == 7.0);
  BOOST_TEST(joint.sheer.rows[1].offsets.lip_top.in_mm() == 3.0);
}

BOOST_AUTO_TEST_CASE(an_interference_is_an_answer_and_no_error) {
  const std::string tight = replaced(short_joint_text, "lip_top = 3", "lip_top = -3");
  check_messages(refusal_of(tight), {});
}

BOOST_AUTO_TEST_CASE(the_example_boats_read_without_errors) {
  for (const char* name : {"demo-640", "double-ender", "pram", "whole"})
    BOOST_TEST_CONTEXT(name) {
      const auto file = read_joint_file(fixtures_folder() / name / "joint.toml");
      BOOST_TEST_REQUIRE(file.has_value());
      BOOST_TEST(perimeter(file->joint).has_value());
    }
}

BOOST_AUTO_TEST_CASE(errors_found_later_are_given_the_line_of_their_value) {
  const BoatFolder folder;
  folder.write("joint.toml", full_joint_text);
  folder.write("sheer.csv", sheer_text);
  const auto file = folder.read();
  BOOST_TEST_REQUIRE(file.has_value());
  const struct {
    const char* where;
    const char* place;
  } rows[] = {
      // derived: lines counted in full_joint_text and sheer_text
      {"layout.pitch_max", "joint.toml:78: "},
      {"keepout[1].x_to", "joint.toml:103: "},
      {"keepout[1].clear", "joint.toml:100: "},
      {"opening[0].side", "joint.toml:38: "},
      {"opening", "joint.toml:37: "},
      {"adhesive.bead_sizes[2]", "joint.toml:50: "},
      {"sheer.row[2]", "sheer.csv:4: "},
      {"sheer.row[2].x", "sheer.csv:4: "},
      {"sheer.row[99]", "joint.toml:4: "},
      {"sheer", "joint.toml:4: "},
      {"no.such.thing", "joint.toml:1: "},
      {"", "joint.toml:1: "},
  };
  for (const auto& row : rows) BOOST_TEST_CONTEXT(row.where) {
      const Errors errors =
          located({{ErrorKind::InvalidInput, row.where, "wrong"}}, file->sources);
      BOOST_TEST(errors.front().message ==
                 folder.path().string() + "/" + row.place + "wrong");
    }
}

BOOST_AUTO_TEST_CASE(all_errors_come_in_one_run_by_file_and_line) {
  std::string text = replaced(short_joint_text, "pitch_min = 40", "pitch_mim = 40");
  text = replaced(text, "thickness = 5", "thickness = \"thin\"");
  text = replaced(text, "depth = 50", "depth = -50");
  check_messages(
      refusal_of(text, "x,y,z\n0,0,900\n1500,wide,850\n4000,1000,nan\n4000,0,800\n"),
      {"joint.toml:6: [lap] depth is -50 mm: more than 0",
       "joint.toml:14: [lip] thickness \"thin\" is not a length: write a number, a "
       "number with its unit (mm, cm, m, in or ft), or feet-inches-eighths such as "
       "\"3-4-5\"",
       "joint.toml:19: [layout] has no pitch_min: the smallest space from hole to hole",
       "joint.toml:21: unknown key \"pitch_mim\" in [layout]: did you mean pitch_min?",
       "sheer.csv:3: y \"wide\" is not a length: write a number, a number with its "
       "unit "
       "(mm, cm, m, in or ft), or feet-inches-eighths such as \"3-4-5\"",
       "sheer.csv:4: z nan is not a length: a finite number"});
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

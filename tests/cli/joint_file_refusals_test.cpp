#include <boost/test/unit_test.hpp>
#include <string>
#include <vector>

#include "tests/cli/boat_folder.h"

namespace sheerlap {
namespace {

using Messages = std::vector<std::string>;

/// A change to a joint file and the messages that it brings; lines are counted in
/// `full_joint_text`.
struct Damage {
  const char* from;
  const char* to;
  Messages messages;
};

void check_damages(const std::vector<Damage>& damages) {
  for (const Damage& damage : damages)
    BOOST_TEST_CONTEXT(damage.from << " -> " << damage.to)
  check_messages(refusal_of(replaced(full_joint_text, damage.from, damage.to)),
                 damage.messages);
}

BOOST_AUTO_TEST_SUITE(joint_file_refusals)

BOOST_AUTO_TEST_CASE(an_unknown_key_names_the_nearest_known_one) {
  check_damages({
      {"knuckle_angle",
       "nuckle_angle",
       {"joint.toml:9: unknown key \"nuckle_angle\" in [sheer]: did you mean "
        "knuckle_angle?"}},
      {"radius_min",
       "raduis_min",
       {"joint.toml:82: unknown key \"raduis_min\" in [layout]: did you mean "
        "radius_min?"}},
      {"clear = 25",
       "width = 25",
       {"joint.toml:97: unknown key \"width\" in [[keepout]]: one of side, from, to, "
        "x_from, x_to, clear, what"}},
      {"clear = 25",
       "clearance = 25",
       {"joint.toml:97: unknown key \"clearance\" in [[keepout]]: did you mean "
        "clear?"}},
      {"[jig]", "[gig]", {"joint.toml:123: unknown table \"gig\": did you mean jig?"}},
      {"title =",
       "titel =",
       {"joint.toml:1: unknown key \"titel\": did you mean title?"}},
      {"bush = 10",
       "bush = 10\ncolour.of = 3",
       {"joint.toml:126: unknown key \"colour\" in [jig]: one of length_max, bush, "
        "plate, "
        "marks"}},
  });
}

BOOST_AUTO_TEST_CASE(a_missing_key_says_what_to_give) {
  check_damages({
      {"gap_max = 8\n",
       "",
       {"joint.toml:43: [adhesive] has no gap_max: the largest gap on the product's "
        "data sheet"}},
      {"pack_usable = 430\n",
       "",
       {"joint.toml:43: [adhesive] has no pack_usable: the ml that come out of a "
        "pack"}},
      {"line = 28\n",
       "",
       {"joint.toml:66: [fastener] has no line: the depth of the drill line below the "
        "sheer"}},
      {"pitch_max = 150\n",
       "",
       {"joint.toml:77: [layout] has no pitch_max: the largest space from hole to "
        "hole, or \"strength\""}},
      {"to = 720\n",
       "",
       {"joint.toml:93: [[keepout]] has no to: the running girth on the drill line "
        "where it ends, or x_from and x_to"}},
      {"x_from = 2000\n",
       "",
       {"joint.toml:100: [[keepout]] has no x_from: the x where it starts"}},
      {"at = 300\n",
       "",
       {"joint.toml:106: [[place]] has no at: the running girth of the hole on the "
        "drill line, or x"}},
      {"side = \"starboard\"\n",
       "",
       {"joint.toml:93: [[keepout]] has no side: starboard, port, both or transom"}},
      {"what = \"bow cleat\"\n",
       "",
       {"joint.toml:93: [[keepout]] has no what: what stands there, such as \"bow "
        "cleat\""}},
      {"pitch_max = 100\npitch_min = 50\n",
       "",
       {"joint.toml:85: [[zone]] has no limit of its own: pitch_max, pitch_min or "
        "both"}},
      {"lip_low = 5\n",
       "",
       {"joint.toml:11: [lap] has no lip_low and the sheer table no column lip_low: "
        "give one of the two"}},
      {"depth = 50\n",
       "",
       {"joint.toml:11: [lap] has no depth and the sheer table no column lap: give one "
        "of the two"}},
      {"factor_bond = 4\n",
       "",
       {"joint.toml:116: [loads] has no factor_bond: the factor asked of the bond"}},
  });
}

BOOST_AUTO_TEST_CASE(a_missing_table_is_missed_once) {
  check_messages(
      refusal_of("title = \"Nothing\"\n"),
      {"joint.toml:1: the joint file has no [sheer]: it names the file of the sheer "
       "table",
       "joint.toml:1: the joint file has no [hull]: it gives the thickness of the "
       "laminate in the lap",
       "joint.toml:1: the joint file has no [lip]: it gives the thickness of the "
       "laminate "
       "in the lap",
       "joint.toml:1: the joint file has no [fastener]: it gives the fastener's kind, "
       "size and drill line",
       "joint.toml:1: the joint file has no [layout]: it gives pitch_max and "
       "pitch_min"});
}

BOOST_AUTO_TEST_CASE(a_value_of_the_wrong_kind_says_what_kind_is_right) {
  check_damages({
      {"thickness = 6",
       "thickness = true",
       {"joint.toml:21: [hull] thickness is true: a length"}},
      {"thickness = 6",
       "thickness = \"\"",
       {"joint.toml:21: [hull] thickness \"\" is empty: write a number, or text such "
        "as \"12 mm\""}},
      {"waste = 0.15",
       "waste = \"15 %\"",
       {"joint.toml:48: [adhesive] waste is \"15 %\": a bare number, without quotes"}},
      {"waste = 0.15",
       "waste = [1]",
       {"joint.toml:48: [adhesive] waste is an array: a number"}},
      {"half = true", "half = 1", {"joint.toml:6: [sheer] half is 1: true or false"}},
      {"size = \"M6\"",
       "size = 6",
       {"joint.toml:68: [fastener] size is 6: text in quotes"}},
      {"size = \"M6\"",
       "size = \"\"",
       {"joint.toml:68: [fastener] size is empty: write the text, or leave the key "
        "out"}},
      {"\"Test boat\"",
       "\"Test\\nboat\"",
       {"joint.toml:1: title \"Test\\x0aboat\" has a control character: one line of "
        "plain text"}},
      {"kind = \"bolt\"",
       "kind = \"blot\"",
       {"joint.toml:67: [fastener] kind is \"blot\": did you mean bolt?"}},
      {"kind = \"bolt\"",
       "kind = \"nail\"",
       {"joint.toml:67: [fastener] kind is \"nail\": one of tapping screw, bolt, blind "
        "rivet"}},
      {"units = \"mm\"",
       "units = \"m\"",
       {"joint.toml:2: units is \"m\": did you mean mm?"}},
      {"drivers = 3",
       "drivers = 2.5",
       {"joint.toml:136: [shop] drivers is 2.5: a whole number from 1 to a million"}},
      {"[order]",
       "[[order]]",
       {"joint.toml:138: order is an array of tables: a table, [order]"}},
      {"[[opening]]",
       "[opening]",
       {"joint.toml:37: opening is a table: a table for each, [[opening]]"}},
      {"bead_sizes = [6, 8, 10]",
       "bead_sizes = 8",
       {"joint.toml:50: [adhesive] bead_sizes is 8: lengths in brackets, such as [6, "
        "8]"}},
      {"bead_sizes = [6, 8, 10]",
       "bead_sizes = []",
       {"joint.toml:50: [adhesive] bead_sizes is empty: lengths in brackets, such as "
        "[6, 8]"}},
      {"bead_sizes = [6, 8, 10]",
       "bead_sizes = [6,\n \"wide\",\n 1979-05-27]",
       {"joint.toml:51: [adhesive] bead_sizes \"wide\" is not a length: write a "
        "number, "
        "a number with its unit (mm, cm, m, in or ft), or feet-inches-eighths such as "
        "\"3-4-5\"",
        "joint.toml:52: [adhesive] bead_sizes is a date or time: a length"}},
  });
}

BOOST_AUTO_TEST_CASE(a_list_where_tables_belong_is_refused) {
  check_messages(refusal_of("place = [3]\n" + short_joint_text),
                 {"joint.toml:1: place is 3: a table for each, [[place]]"});
}

BOOST_AUTO_TEST_CASE(a_value_out_of_range_says_the_range) {
  check_damages({
      {"depth = 50", "depth = 0", {"joint.toml:12: [lap] depth is 0 mm: more than 0"}},
      {"trim = 1\n", "trim = -1\n", {"joint.toml:22: [hull] trim is -1 mm: 0 or more"}},
      {"thickness = 6",
       "thickness = nan",
       {"joint.toml:21: [hull] thickness nan is not a length: a finite number"}},
      {"hull_top = 0",
       "hull_top = inf",
       {"joint.toml:13: [lap] hull_top inf is not a length: a finite number"}},
      {"lip_top = 3",
       "lip_top = 3e6",
       {"joint.toml:15: [lap] lip_top 3000000 is out of range: at most 1 km either "
        "way"}},
      {"knuckle_angle = 25",
       "knuckle_angle = 180",
       {"joint.toml:9: [sheer] knuckle_angle is 180: more than 0 and at most 170 "
        "degrees"}},
      {"waste = 0.15",
       "waste = 15",
       {"joint.toml:48: [adhesive] waste is 15: a share, from 0 to 1"}},
      {"waste = 0.15",
       "waste = nan",
       {"joint.toml:48: [adhesive] waste is nan: a share, from 0 to 1"}},
      {"density = 1.1",
       "density = inf",
       {"joint.toml:56: [adhesive] density is inf: more than 0"}},
      {"poisson = 0.3",
       "poisson = 3",
       {"joint.toml:25: [hull] poisson is 3: from 0 to 1"}},
      {"factor_bond = 4",
       "factor_bond = 0.5",
       {"joint.toml:120: [loads] factor_bond is 0.5: 1 or more"}},
      {"boats = 120",
       "boats = 0",
       {"joint.toml:139: [order] boats is 0: a whole number from 1 to a million"}},
      {"temperature = 21",
       "temperature = 210",
       {"joint.toml:130: [shop] temperature is 210: degrees C, from -30 to 80"}},
      {"from = 640",
       "from = -640",
       {"joint.toml:95: [[keepout]] from is -640 mm: 0 or more"}},
      {"lengths = [16, 20, 25]",
       "lengths = [16, 25, 20, 0]",
       {"joint.toml:70: [fastener] lengths has 20 mm after 25 mm: each larger than the "
        "one before",
        "joint.toml:70: [fastener] lengths is 0 mm: more than 0"}},
  });
}

BOOST_AUTO_TEST_CASE(values_that_contradict_each_other_are_named_together) {
  check_damages({
      {"pitch_min = 40",
       "pitch_min = 160",
       {"joint.toml:79: [layout] pitch_min is 160 mm and pitch_max 150 mm: pitch_min "
        "is "
        "no larger"}},
      {"end_min = 25",
       "end_min = 80",
       {"joint.toml:80: [layout] end_min is 80 mm and end_max 70 mm: end_min is no "
        "larger"}},
      {"gap_max = 8",
       "gap_max = 1",
       {"joint.toml:46: [adhesive] gap_max is 1 mm and gap_min 1 mm: gap_max is the "
        "larger"}},
      {"line = 28",
       "line = 51",
       {"joint.toml:71: [fastener] line is at a depth of 51 mm and the lap is 50 mm "
        "deep: within the lap"}},
      {"bond_to = 45",
       "bond_to = 60",
       {"joint.toml:18: [lap] bond_to is 60 mm and the lap is 50 mm deep: within the "
        "lap"}},
      {"bond_to = 45",
       "bond_to = 5",
       {"joint.toml:18: [lap] bond_to is 5 mm and bond_from 5 mm: bond_to is the "
        "deeper"}},
      {"bond_from = 5\nbond_to = 45",
       "bond_from = 50",
       {"joint.toml:17: [lap] bond_from is 50 mm and the lap is 50 mm deep: within the "
        "lap"}},
      {"pack_usable = 430",
       "pack_usable = 500",
       {"joint.toml:52: [adhesive] pack_usable is 500 ml and pack 490 ml: no more "
        "comes "
        "out than is in it"}},
      {"nozzle_purge = 30",
       "nozzle_purge = 430",
       {"joint.toml:53: [adhesive] nozzle_purge is 430 ml and pack_usable 430 ml: the "
        "purge leaves nothing to lay"}},
      {"to = 720",
       "to = 640",
       {"joint.toml:96: [[keepout]] runs from 640 mm to 640 mm: to is the larger"}},
      {"x_to = 2100",
       "x_to = 1900",
       {"joint.toml:103: [[keepout]] runs from 2000 mm to 1900 mm: x_to is the "
        "larger"}},
      {"pitch_max = 100\npitch_min = 50",
       "pitch_max = 30",
       {"joint.toml:89: [[zone]] has a pitch_min of 40 mm (from [layout]) and a "
        "pitch_max of 30 mm: pitch_min is no larger"}},
      {"pitch_max = 100\npitch_min = 50",
       "pitch_min = 200",
       {"joint.toml:89: [[zone]] has a pitch_min of 200 mm and a pitch_max of 150 mm "
        "(from [layout]): pitch_min is no larger"}},
      {"box = 100\n",
       "",
       {"joint.toml:74: a box has a price and no size: give box, the pieces in one"}},
      {"pitch_min = 40",
       "pitch_min = 6",
       {"joint.toml:79: [layout] pitch_min is 6 mm and the hole in the lip 6.6 mm "
        "wide: the holes would run into each other"}},
      {"pitch_max = 100\npitch_min = 50",
       "pitch_max = 100\npitch_min = 6.5",
       {"joint.toml:90: [[zone]] pitch_min is 6.5 mm and the hole in the lip 6.6 mm "
        "wide: the holes would run into each other"}},
      {"round_to = 0.5",
       "round_to = 21",
       {"joint.toml:83: [layout] round_to is 21 mm and pitch_min 40 mm: no more than "
        "half of pitch_min"}},
      {"[loads]",
       "[[zone]]\nside = \"port\"\nfrom = 900\nto = 1100\npitch_min = 110\n"
       "what = \"rail\"\n[loads]",
       {"joint.toml:116: zones bow and rail overlap, and no pitch keeps the limits of "
        "both, 50 mm to 100 mm and 110 mm to 150 mm: part them, or let their limits "
        "meet"}},
      {"from = 640",
       "from = 640\nx_from = 600",
       {"joint.toml:96: [[keepout]] is given by girth and by x: from and to, or x_from "
        "and x_to"}},
      {"at = 300",
       "at = 300\nx = 2",
       {"joint.toml:109: [[place]] is given by girth and by x: at, or x"}},
      {"[loads]",
       "[[place]]\nside = \"port\"\nx = 2500\nwhat = \"again\"\n[loads]",
       {"joint.toml:116: this [[place]] stands where number 2 of them does: leave one "
        "out"}},
      {"[loads]",
       "[[keepout]]\nside = \"both\"\nfrom = 640\nto = 720\nwhat = \"again\"\n[loads]",
       {"joint.toml:116: this [[keepout]] stands where number 1 of them does: leave "
        "one "
        "out"}},
  });
}

BOOST_AUTO_TEST_CASE(a_faulty_sheer_table_is_refused_for_its_own_fault_only) {
  const struct {
    const char* sheer;
    Messages messages;
  } rows[] = {
      {"x,y\n0,0\n1500,800\n4000,0\n",
       {"sheer.csv:1: the sheer table has no column z: x, y and z are needed"}},
      {"0,0,900\n1500,800,850\n4000,0,800\n",
       {"sheer.csv:1: the first line holds numbers: start with a header line such as "
        "x,y,z"}},
      // the ragged row would be a point at the origin, in the middle of the side
      {"x,y,z\n0,0,900\n1500,800\n4000,1000,800\n4000,0,800\n",
       {"sheer.csv:3: the row has 2 cells and the header 3 columns: one cell for each "
        "column"}},
  };
  for (const auto& row : rows) BOOST_TEST_CONTEXT(row.sheer)
  check_messages(refusal_of(short_joint_text, row.sheer), row.messages);
}

BOOST_AUTO_TEST_CASE(a_value_that_could_not_be_read_contradicts_nothing) {
  check_damages({
      {"pitch_max = 150",
       "pitch_max = -150",
       {"joint.toml:78: [layout] pitch_max is -150 mm: more than 0"}},
      {"gap_min = 1\n",
       "gap_min = -1\n",
       {"joint.toml:45: [adhesive] gap_min is -1 mm: 0 or more"}},
      {"pack = 490",
       "pack = -1",
       {"joint.toml:51: [adhesive] pack is -1: more than 0"}},
  });
}

BOOST_AUTO_TEST_CASE(two_things_on_different_sides_do_not_stand_twice) {
  check_damages({
      {"[loads]",
       "[[keepout]]\nside = \"port\"\nfrom = 640\nto = 720\nwhat = \"other\"\n[loads]",
       {}},
  });
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

#include "joint/sheets/joint_page_holes.h"

#include <boost/test/unit_test.hpp>
#include <cmath>

#include "cli/joint_file.h"
#include "joint/sheets/joint_page_data.h"
#include "tests/places.h"

namespace sheerlap {
namespace {

const NumberStyle in_mm(LengthUnit::Millimetres, Length::mm(1));

const Job& demo() {
  static const Job job = [] {
    auto file = read_joint_file(fixtures_folder() / "demo-640" / "joint.toml");
    BOOST_TEST_REQUIRE(file.has_value());
    auto made = work_out(std::move(file->joint), Parts::all());
    BOOST_TEST_REQUIRE(made.has_value());
    return std::move(*made);
  }();
  return job;
}

const PageHole& hole(const std::vector<PageHole>& holes, const std::string& mark) {
  const auto found = std::find_if(holes.begin(), holes.end(), [&](const PageHole& one) {
    return one.station->mark == mark;
  });
  BOOST_TEST_REQUIRE((found != holes.end()));
  return *found;
}

BOOST_AUTO_TEST_SUITE(joint_page_holes_suite)

BOOST_AUTO_TEST_CASE(holes_come_in_the_order_of_the_schedule) {
  const auto holes = page_holes(demo(), in_mm);
  const auto& stations = demo().schedule->stations;
  BOOST_TEST_REQUIRE(holes.size() == stations.size());
  for (std::size_t i = 0; i < holes.size(); ++i)
    BOOST_TEST(holes[i].station == &stations[i]);
}

BOOST_AUTO_TEST_CASE(the_ends_of_a_bridged_space_say_so_and_no_others) {
  const auto holes = page_holes(demo(), in_mm);
  std::string bridged;
  for (const PageHole& one : holes)
    if (one.bridged) bridged += one.station->mark + " ";
  // derived from the joint file: the stem fitting before the first hole of each hand,
  // the bow cleat's edges at 615 and 745, starboard's fuel fill at 4535 and 4695, the
  // number plate on the transom at 175 and 375
  BOOST_TEST(bridged == "S01 S07 S08 S35 S36 P01 P07 P08 T02 T03 ");
  BOOST_TEST(hole(holes, "S08").note ==
             "space before it bridged, 130.0 against 100.0: the bow cleat");
}

BOOST_AUTO_TEST_CASE(the_nearest_keep_out_is_measured_to_itself_without_its_clearance) {
  const auto holes = page_holes(demo(), in_mm);
  // derived: the cleat lies from 640 to 720, the holes at 615 and 745
  BOOST_TEST(hole(holes, "S07").keepout == "25.0 before bow cleat");
  BOOST_TEST(hole(holes, "S08").keepout == "25.0 after bow cleat");
}

BOOST_AUTO_TEST_CASE(the_gaps_at_a_hole_are_those_of_the_offsets) {
  const auto holes = page_holes(demo(), in_mm);
  const PageHole& far_aft = hole(holes, "S45");
  // derived: offsets 0 and 2.1 at the top, 0 and 3.9 low, on an upright hull face
  BOOST_TEST_REQUIRE((far_aft.gaps[0] && far_aft.gaps[1] && far_aft.gaps[2]));
  BOOST_TEST(std::abs(far_aft.gaps[0]->in_mm() - 2.1) < 1e-6);
  BOOST_TEST(std::abs(far_aft.gaps[1]->in_mm() - 3.0) < 1e-6);
  BOOST_TEST(std::abs(far_aft.gaps[2]->in_mm() - 3.9) < 1e-6);
}

BOOST_AUTO_TEST_CASE(the_bit_of_a_section_meets_the_faces_as_the_schedule_says) {
  for (const PageHole& one : page_holes(demo(), in_mm)) {
    const HoleSection& section = one.section;
    const auto along_to = [&](const std::array<double, 2>& face) {
      const double slope = (face[1] - face[0]) / section.lap_mm;
      return (face[0] + slope * section.entry.y() - section.entry.x()) /
             (section.bit.x() - slope * section.bit.y());
    };
    // derived: straight faces in the section; the bit leaves it by the sheer's slope
    // and bend only, for which a hundredth of the stack is allowed
    const double stack_mm = one.station->stack.in_mm();
    BOOST_TEST(std::abs(along_to(section.hull_inner) - stack_mm) < stack_mm / 100);
    BOOST_TEST(std::abs(along_to(section.lip_outer)) < 1e-9);
  }
}

BOOST_AUTO_TEST_CASE(a_layout_has_another_name_when_any_of_its_holes_moves) {
  Schedule schedule = *demo().schedule;
  const std::string before = layout_fingerprint(schedule);
  BOOST_TEST(before.size() == 16U);
  BOOST_TEST(layout_fingerprint(schedule) == before);
  schedule.stations[70].girth += Length::mm(0.01);
  BOOST_TEST(layout_fingerprint(schedule) != before);
  schedule = *demo().schedule;
  schedule.stations.back().hull_pilot.reset();
  BOOST_TEST(layout_fingerprint(schedule) != before);
}

BOOST_AUTO_TEST_CASE(a_layout_without_holes_is_named_by_the_published_basis) {
  // published: FNV-1a, 64 bits: the hash of no bytes is the offset basis,
  // 14695981039346656037 (Fowler, Noll, Vo; Eastlake, The FNV Non-Cryptographic Hash
  // Algorithm, section 5; from memory, confirm)
  BOOST_TEST(layout_fingerprint(Schedule{}) == "cbf29ce484222325");
}

BOOST_AUTO_TEST_CASE(the_data_of_the_page_say_whose_they_are) {
  const Json data = page_data(demo(), page_holes(demo(), in_mm), in_mm);
  BOOST_TEST(data["title"] == "Demo 640");
  BOOST_TEST(data["layout"] == layout_fingerprint(*demo().schedule));
  BOOST_TEST(data["window"] == (Json{1.0, 8.0}));
  BOOST_TEST(data["window_text"] == "1 to 8 mm");
  BOOST_TEST(data["holes"].size() == demo().schedule->stations.size());
  BOOST_TEST(data["holes"][0]["mark"] == "S01");
  BOOST_TEST(data["holes"][0]["girth"] == 70.0);
}

BOOST_AUTO_TEST_CASE(the_data_of_a_page_in_inches_keep_millimetres) {
  const NumberStyle in_inches(LengthUnit::Inches, Length::mm(1));
  const Json data = page_data(demo(), page_holes(demo(), in_inches), in_inches);
  BOOST_TEST(data["unit"] == "in");
  BOOST_TEST(data["unit_mm"] == 25.4);
  BOOST_TEST(data["holes"][0]["girth"] == 70.0);
  BOOST_TEST(data["window_text"] == "0.039 to 0.315 in");
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

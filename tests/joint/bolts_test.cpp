#include "joint/bolts.h"

#include <boost/test/unit_test.hpp>

#include "tests/published_table.h"

namespace sheerlap {
namespace {

using boost::test_tools::tolerance;

FastenerSpec bolt_of(const std::string& size, HeadKind head = HeadKind::Pan) {
  const auto spec = bolt(size, head);
  BOOST_TEST_REQUIRE(spec.has_value(), size);
  return *spec;
}

BOOST_AUTO_TEST_SUITE(bolts)

BOOST_AUTO_TEST_CASE(the_holes_are_the_medium_series_of_iso_273) {
  for (const auto& row : published_table("iso_273.csv"))
    BOOST_TEST(bolt_of(row.text("size")).lip_hole.in_mm() == row.number("medium"));
}

BOOST_AUTO_TEST_CASE(the_hole_of_m12_is_from_memory_and_says_so) {
  const FastenerSpec spec = bolt_of("M12");
  BOOST_TEST(spec.lip_hole.in_mm() == 13.5);  // from memory, confirm
  bool said = false;
  for (const FastenerValue& value : spec.values)
    if (value.value == spec.lip_hole) said = value.source.ends_with(memory_note);
  BOOST_TEST(said);
}

BOOST_AUTO_TEST_CASE(the_stress_areas_are_those_of_iso_898_1) {
  for (const auto& row : published_table("iso_898_1.csv"))
    BOOST_TEST_CONTEXT(row.text("size")) {
      const Length diameter = Length::mm(row.number("diameter"));
      const Length pitch = Length::mm(row.number("pitch"));
      // the standard rounds to three figures
      BOOST_TEST(stress_area_mm2(diameter, pitch) == row.number("stress_area"),
                 tolerance(0.005));
      // printed to three decimals; its own root constant is rounded
      BOOST_TEST(root_area_mm2(diameter, pitch) == row.number("root_area"),
                 tolerance(1e-4));
      BOOST_TEST(bolt_of(row.text("size")).thread_pitch.in_mm() == row.number("pitch"));
    }
}

BOOST_AUTO_TEST_CASE(washers_and_countersunk_heads_are_those_of_their_standards) {
  for (const auto& row : published_table("heads_and_washers.csv")) {
    const std::string standard = row.text("standard");
    if (standard == "ISO 7049") continue;
    const HeadKind head =
        standard == "ISO 7046-2" ? HeadKind::Countersunk : HeadKind::Pan;
    BOOST_TEST(bolt_of(row.text("size"), head).head_diameter.in_mm() ==
               row.number("diameter"));
  }
}

BOOST_AUTO_TEST_CASE(a_bolt_reaches_through_its_washers_and_nut_by_two_threads) {
  // derived: M6: two washers of 1.6, a nut of 5.2, two pitches of 1: 10.4
  BOOST_TEST(bolt_of("M6").beyond_stack.in_mm() == 10.4, tolerance(1e-12));
  // derived: no washer under a countersunk head: 8.8
  BOOST_TEST(bolt_of("M6", HeadKind::Countersunk).beyond_stack.in_mm() == 8.8,
             tolerance(1e-12));
}

BOOST_AUTO_TEST_CASE(an_inch_bolt_may_be_named_with_its_thread) {
  BOOST_TEST(bolt_of("1/4-20").size == "1/4");
  // published: 1/4 in normal clearance 9/32 in (retyped table)
  BOOST_TEST(bolt_of("1/4").lip_hole.in_mm() == 25.4 * 9 / 32, tolerance(1e-12));
  BOOST_TEST(!bolt("1/4-28", HeadKind::Pan).has_value());
}

BOOST_AUTO_TEST_CASE(no_countersunk_head_is_known_for_m12) {
  BOOST_TEST(!bolt("M12", HeadKind::Countersunk).has_value());
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

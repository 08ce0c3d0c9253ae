#include "joint/tapping_screws.h"

#include <boost/test/unit_test.hpp>

#include "tests/published_table.h"

namespace sheerlap {
namespace {

using boost::test_tools::tolerance;

FastenerSpec screw(const std::string& size, HeadKind head = HeadKind::Pan) {
  const auto spec = tapping_screw(size, head);
  BOOST_TEST_REQUIRE(spec.has_value(), size);
  return *spec;
}

std::string source_of(const FastenerSpec& spec, const std::string& what) {
  for (const FastenerValue& value : spec.values)
    if (value.what == what) return value.source;
  BOOST_FAIL("no value: " + what);
  return "";
}

BOOST_AUTO_TEST_SUITE(tapping_screws)

BOOST_AUTO_TEST_CASE(the_metric_threads_are_those_of_iso_1478) {
  for (const auto& row : published_table("iso_1478.csv"))
    BOOST_TEST_CONTEXT(row.text("size")) {
      const FastenerSpec spec = screw(row.text("size"));
      BOOST_TEST(spec.diameter.in_mm() == row.number("d1_max"));
      BOOST_TEST(spec.diameter_min.in_mm() == row.number("d1_min"));
      BOOST_TEST(spec.core.in_mm() == row.number("d2_min"));
      BOOST_TEST(spec.thread_pitch.in_mm() == row.number("pitch"));
      BOOST_TEST(spec.beyond_stack.in_mm() == row.number("point"));
    }
}

BOOST_AUTO_TEST_CASE(the_metric_holes_are_those_for_thermoset_plastics) {
  for (const auto& row : published_table("tapping_screw_holes.csv"))
    BOOST_TEST_CONTEXT(row.text("size")) {
      const FastenerSpec spec = screw(row.text("size"));
      BOOST_TEST_REQUIRE(spec.hull_pilot.has_value());
      BOOST_TEST(spec.hull_pilot->in_mm() == row.number("thermoset"));
      BOOST_TEST(spec.lip_hole.in_mm() == row.number("clearance"));
    }
}

BOOST_AUTO_TEST_CASE(the_pan_heads_are_those_of_iso_7049) {
  for (const auto& row : published_table("heads_and_washers.csv"))
    if (row.text("standard") == "ISO 7049")
      BOOST_TEST(screw(row.text("size")).head_diameter.in_mm() ==
                 row.number("diameter"));
}

BOOST_AUTO_TEST_CASE(the_inch_sizes_are_those_of_the_published_table) {
  for (const auto& row : published_table("inch_tapping_screws.csv"))
    BOOST_TEST_CONTEXT(row.text("size")) {
      const FastenerSpec spec = screw(row.text("size"));
      const auto close = tolerance(1e-12);  // the factor 25.4 only
      BOOST_TEST(spec.thread_pitch.in_inches() * row.number("threads") == 1.0, close);
      BOOST_TEST(spec.diameter.in_inches() == row.number("major_max"), close);
      BOOST_TEST(spec.diameter_min.in_inches() == row.number("major_min"), close);
      BOOST_TEST(spec.core.in_inches() == row.number("root_min"), close);
      BOOST_TEST(spec.hull_pilot->in_inches() == row.number("light_metal"), close);
      BOOST_TEST(spec.head_diameter.in_inches() == row.number("pan_head"), close);
    }
}

BOOST_AUTO_TEST_CASE(the_pilot_of_a_number_10_is_drilled_with_a_number_21) {
  // published: type AB hole sizes, light metal: drill #21 = .1590 in = 4.039 mm
  BOOST_TEST(screw("#10").hull_pilot->in_mm() == 4.039, tolerance(1e-4));
}

BOOST_AUTO_TEST_CASE(a_number_14_has_the_holes_of_a_quarter_inch) {
  // from memory, confirm: #14 is the quarter inch in trade usage
  BOOST_TEST(screw("#14").hull_pilot->in_mm() == screw("1/4").hull_pilot->in_mm());
  BOOST_TEST(screw("#14").size == "#14");
  BOOST_TEST(source_of(screw("#14"), "#14, the quarter inch").ends_with(memory_note));
}

BOOST_AUTO_TEST_CASE(a_value_that_was_not_read_says_so) {
  BOOST_TEST(
      source_of(screw("ST5.5"), "pilot hole in the hull").ends_with(memory_note));
  BOOST_TEST(source_of(screw("ST6.3"), "hole in the lip").ends_with(memory_note));
  BOOST_TEST(
      source_of(screw("ST4.8", HeadKind::Countersunk), "countersunk head, diameter")
          .ends_with(memory_note));
  BOOST_TEST(
      !source_of(screw("ST4.8"), "pilot hole in the hull").ends_with(memory_note));
}

BOOST_AUTO_TEST_CASE(the_stock_lengths_are_the_range_of_iso_7049) {
  // published: ISO 7049 (retyped table): ST4.8 from 9.5 to 38
  const auto lengths = screw("ST4.8").lengths;
  BOOST_TEST_REQUIRE(lengths.size() == 8u);  // 9.5 13 16 19 22 25 32 38
  BOOST_TEST(lengths.front().in_mm() == 9.5);
  BOOST_TEST(lengths.back().in_mm() == 38.0);
}

BOOST_AUTO_TEST_CASE(a_size_of_another_standard_is_not_known) {
  BOOST_TEST(!tapping_screw("M6", HeadKind::Pan).has_value());
  BOOST_TEST(!tapping_screw("ST4.81", HeadKind::Pan).has_value());
  BOOST_TEST(!tapping_screw("", HeadKind::Pan).has_value());
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

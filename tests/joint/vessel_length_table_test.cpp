#include "joint/vessel_length_table.h"

#include <boost/test/unit_test.hpp>

namespace sheerlap {
namespace {

using boost::test_tools::tolerance;

Length feet(double value) { return Length::inches(12 * value); }

VesselLengthRow row_at(double vessel_ft) {
  const auto row = vessel_length_row(feet(vessel_ft));
  BOOST_TEST_REQUIRE(row.has_value(), vessel_ft);
  return *row;
}

BOOST_AUTO_TEST_SUITE(vessel_length_table)

BOOST_AUTO_TEST_CASE(each_ten_feet_add_as_much) {
  // from memory, confirm: 2.5 in, 0.25 in and 6 in at 30 ft; each 10 ft adds 0.5, 0.05
  // and 0.5 in, and between the rows in proportion
  const auto close = tolerance(1e-12);  // rounding only
  for (int vessel = 30; vessel <= 120; vessel += 5) BOOST_TEST_CONTEXT(vessel) {
      const double tens = (vessel - 30) / 10.;
      const VesselLengthRow row = row_at(vessel);
      BOOST_TEST(row.overlap.in_inches() == 2.5 + 0.5 * tens, close);
      BOOST_TEST(row.diameter.in_inches() == 0.25 + 0.05 * tens, close);
      BOOST_TEST(row.spacing.in_inches() == 6 + 0.5 * tens, close);
    }
}

BOOST_AUTO_TEST_CASE(the_spacing_falls_from_24_to_15_diameters) {
  const struct {
    double vessel_ft, diameters;
    const char* source;
  } rows[] = {
      {30, 24, "derived: 6.0 / 0.25, from memory"},
      {50, 20, "derived: 7.0 / 0.35, where the class table's 20 diameters cross"},
      {120, 15, "derived: 10.5 / 0.70"},
  };
  for (const auto& row : rows) BOOST_TEST_CONTEXT(row.source) {
      const VesselLengthRow found = row_at(row.vessel_ft);
      BOOST_TEST(found.spacing.in_mm() / found.diameter.in_mm() == row.diameters, tolerance(1e-12));
    }
  // property: wider than 20 diameters below 50 ft, closer above
  BOOST_TEST((row_at(49).spacing > 20 * row_at(49).diameter));
  BOOST_TEST((row_at(51).spacing < 20 * row_at(51).diameter));
}

BOOST_AUTO_TEST_CASE(the_table_is_not_carried_on_at_either_end) {
  BOOST_TEST(!vessel_length_row(feet(29.99)).has_value());
  BOOST_TEST(!vessel_length_row(feet(120.01)).has_value());
  BOOST_TEST(!vessel_length_row(Length()).has_value());
  BOOST_TEST(!vessel_length_row(Length::mm(9000)).has_value());  // 29.53 ft
  // 30 ft is 9.144 m exactly
  BOOST_TEST(vessel_length_row(Length::mm(9144)).has_value());
  BOOST_TEST(vessel_length_row(Length::mm(36576)).has_value());
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

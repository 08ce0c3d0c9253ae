#include "joint/blind_rivets.h"

#include <boost/test/unit_test.hpp>
#include <cmath>

namespace sheerlap {
namespace {

using boost::test_tools::tolerance;

FastenerSpec rivet(const std::string& size) {
  const auto spec = blind_rivet(size);
  BOOST_TEST_REQUIRE(spec.has_value(), size);
  return *spec;
}

Grip grip_of(const FastenerSpec& spec, Length length) {
  for (const Grip& grip : spec.grips)
    if (std::abs((grip.length - length).in_mm()) < 1e-9) return grip;
  BOOST_FAIL("no such length");
  return {};
}

BOOST_AUTO_TEST_SUITE(blind_rivets)

BOOST_AUTO_TEST_CASE(the_holes_are_within_the_published_range) {
  const struct {
    const char* size;
    double least, greatest;  // in
  } rows[] = {
      // published: US Army TM 10-5410-221-14, table 4-3
      {"1/8", .128, .132},
      {"5/32", .160, .164},
      {"1/4", .257, .261},
  };
  for (const auto& row : rows) BOOST_TEST_CONTEXT(row.size) {
      const double hole = rivet(row.size).lip_hole.in_inches();
      BOOST_TEST(hole > row.least - 1e-9);
      BOOST_TEST(hole < row.greatest + 1e-9);
    }
}

BOOST_AUTO_TEST_CASE(the_grip_of_an_inch_code_is_its_last_digits_in_sixteenths) {
  // published: US Army TM 10-5410-221-14, table 4-3: 46 grips .313 to .375 in
  const Grip grip = grip_of(rivet("1/8"), Length::inches(.375));
  BOOST_TEST(grip.least.in_inches() == .313, tolerance(1e-12));
  BOOST_TEST(grip.greatest.in_inches() == 6. / 16, tolerance(1e-12));
}

BOOST_AUTO_TEST_CASE(a_metric_rivet_of_16_grips_8_to_12) {
  // published: ISO 15981:2002, l 16-17, the column read as 4.8
  const Grip grip = rivet("4.8").grips[2];
  BOOST_TEST(grip.length.in_mm() == 16);
  BOOST_TEST(grip.least.in_mm() == 8);
  BOOST_TEST(grip.greatest.in_mm() == 12);
}

BOOST_AUTO_TEST_CASE(grips_ascend_and_never_overlap_by_more_than_their_ends) {
  // property of any one grip table
  for (const char* size : {"3.2", "4", "4.8", "6.4"}) BOOST_TEST_CONTEXT(size) {
      const auto grips = rivet(size).grips;
      for (std::size_t i = 0; i < grips.size(); ++i) {
        BOOST_TEST(grips[i].least.in_mm() < grips[i].greatest.in_mm());
        if (i > 0) BOOST_TEST(grips[i].least.in_mm() >= grips[i - 1].greatest.in_mm());
      }
    }
}

BOOST_AUTO_TEST_CASE(an_inch_rivet_may_be_stocked_by_its_body_length_too) {
  // from memory, confirm: 3/16 in is the 4.8 of ISO 15981, whose 16 grips 8 to 12
  const FastenerSpec spec = rivet("3/16");
  bool found = false;
  for (const Grip& grip : spec.grips)
    if (grip.length == Length::mm(16)) found = grip.greatest == Length::mm(12);
  BOOST_TEST(found);
  for (const Length length : spec.lengths)
    BOOST_TEST(length.in_inches() * 16 == std::round(length.in_inches() * 16),
               tolerance(1e-12));
}

BOOST_AUTO_TEST_CASE(a_trailing_nought_names_the_same_rivet) {
  BOOST_TEST(rivet("4.0").size == "4");
  BOOST_TEST(!blind_rivet("5").has_value());
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

#include "joint/bead.h"

#include <boost/test/unit_test.hpp>
#include <cmath>

#include "tests/published_table.h"

namespace sheerlap {
namespace {

using boost::test_tools::tolerance;

Adhesive with_sizes(const std::vector<double>& sizes) {
  Adhesive adhesive;
  for (const double size : sizes) adhesive.bead_sizes.push_back(Length::mm(size));
  return adhesive;
}

BOOST_AUTO_TEST_SUITE(bead)

BOOST_AUTO_TEST_CASE(a_pack_lays_the_length_that_makers_print) {
  for (const auto& row : published_table("bead_yield.csv")) {
    const Length length = bead_yield(Volume::ml(row.number("volume")), BeadShape::Round,
                                     Length::mm(row.number("bead")));
    BOOST_TEST(
        std::abs(length.in_mm() / 1000 - row.number("length")) <= row.number("within"),
        row.text("volume") << " ml: " << length.in_mm() / 1000 << " m");
  }
}

BOOST_AUTO_TEST_CASE(a_triangle_is_as_high_as_it_is_wide) {
  BOOST_TEST(bead_area_mm2(BeadShape::Triangle, Length::mm(12)) == 72);
}

BOOST_AUTO_TEST_CASE(the_smallest_bead_that_covers_is_taken) {
  const Adhesive adhesive = with_sizes({6, 8, 10});
  const struct {
    double needed, size;
    std::size_t count;
    double area;
    const char* source;
  } rows[] = {
      {0, 6, 1, 18, "derived: nothing needs more than the smallest"},
      {18, 6, 1, 18, "derived: 6 x 6 / 2 = 18 is just enough"},
      {18 * (1 + 1e-12), 6, 1, 18, "property: rounding opens no larger bead"},
      {18.001, 8, 1, 32, "derived: 8 x 8 / 2 = 32"},
      {50, 10, 1, 50, "derived: 10 x 10 / 2 = 50"},
      {51, 8, 2, 64, "derived: two of the largest would do, so do two of 8"},
      {65, 10, 2, 100, "derived: two of 8 are 64"},
      {165, 10, 4, 200, "derived: 165 / 50 = 3.3; four of 8 are 128"},
  };
  for (const auto& row : rows) BOOST_TEST_CONTEXT(row.source) {
      const Beads beads = smallest_beads(adhesive, row.needed);
      BOOST_TEST(beads.size.in_mm() == row.size);
      BOOST_TEST(beads.count == row.count);
      BOOST_TEST(beads.area_mm2 == row.area, tolerance(1e-14));
    }
}

BOOST_AUTO_TEST_CASE(sizes_may_come_in_any_order) {
  BOOST_TEST(smallest_beads(with_sizes({10, 6, 8}), 30).size.in_mm() == 8);
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

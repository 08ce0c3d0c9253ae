#include "joint/sheets/bond_course.h"

#include <boost/test/unit_test.hpp>
#include <limits>
#include <utility>
#include <vector>

namespace sheerlap {
namespace {

BOOST_AUTO_TEST_SUITE(bond_course_test)

BOOST_AUTO_TEST_CASE(an_axis_of_uses_shows_the_limit_and_the_greatest_use_up_to_four) {
  const struct {
    std::vector<double> uses;
    double top, step;
    const char* source;
  } rows[] = {
      {{0.1}, 1.2, 0.2, "derived: a fifth over the limit at least"},
      {{0.9, 1.0}, 1.2, 0.2, "derived: 1.1 * 1.0 = 1.1, to the next 0.2"},
      {{1.23}, 1.4, 0.2, "derived: 1.1 * 1.23 = 1.353, to the next 0.2"},
      {{2.0}, 2.5, 0.5, "derived: 1.1 * 2 = 2.2, to the next 0.5"},
      {{3.0}, 4, 1, "derived: 1.1 * 3 = 3.3, to the next 1"},
      {{70.0}, 4, 1, "derived: no further than 4"},
      {{0.5, std::numeric_limits<double>::infinity()},
       1.2,
       0.2,
       "derived: a place without a bond line is left out"},
  };
  for (const auto& row : rows) BOOST_TEST_CONTEXT(row.source) {
      const UseAxis axis = use_axis(row.uses);
      BOOST_TEST(axis.top == row.top, boost::test_tools::tolerance(1e-12));
      BOOST_TEST(axis.step == row.step);
    }
}

BOOST_AUTO_TEST_CASE(the_step_of_girths_is_a_round_number_of_the_unit) {
  const auto millimetres = [](double whole) {
    return girth_step(Length::mm(whole), LengthUnit::Millimetres).in_mm();
  };
  BOOST_TEST(millimetres(6740) == 1000);  // derived: 842.5, to the next of 1, 2, 5
  BOOST_TEST(millimetres(2281) == 500);   // derived: 285.1
  BOOST_TEST(millimetres(1200) == 200);   // derived: 150
  const Length step = girth_step(Length::inches(265.4), LengthUnit::Inches);
  // derived: 33.2 in, to 50
  BOOST_TEST(step.in_inches() == 50, boost::test_tools::tolerance(1e-12));
}

BOOST_AUTO_TEST_CASE(stretches_that_do_not_meet_share_a_row) {
  using Extents = std::vector<std::pair<double, double>>;
  using Rows = std::vector<std::size_t>;
  const auto rows = [](const Extents& extents) { return rows_apart(extents); };
  BOOST_TEST(rows({}) == Rows{}, boost::test_tools::per_element());
  // derived: by hand
  BOOST_TEST(rows({{0, 10}, {10, 20}, {30, 40}}) == (Rows{0, 0, 0}),
             boost::test_tools::per_element());
  BOOST_TEST(rows({{0, 10}, {5, 20}, {8, 9}, {12, 14}}) == (Rows{0, 1, 2, 0}),
             boost::test_tools::per_element());
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

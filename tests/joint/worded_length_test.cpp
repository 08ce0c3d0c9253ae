#include "joint/worded_length.h"

#include <boost/test/unit_test.hpp>

namespace sheerlap {
namespace {

BOOST_AUTO_TEST_SUITE(worded_length)

BOOST_AUTO_TEST_CASE(a_length_is_worded_to_four_decimals_without_zeros_at_the_end) {
  const struct {
    Length length;
    const char* words;
    const char* source;
  } rows[] = {
      {Length::mm(75), "75 mm", "derived"},
      {Length::mm(100), "100 mm", "derived: zeros before the point stay"},
      {Length::inches(0.75), "19.05 mm", "derived: 3/4 x 25.4"},
      {Length::inches(1. / 16), "1.5875 mm", "derived: 25.4 / 16"},
      {Length::mm(1. / 3), "0.3333 mm", "derived"},
      {Length::mm(-0.00001), "0 mm", "derived: no negative zero"},
      {Length::mm(-12.5), "-12.5 mm", "derived"},
  };
  for (const auto& row : rows) BOOST_TEST_CONTEXT(row.source)
  BOOST_TEST(worded(row.length) == row.words);
}

BOOST_AUTO_TEST_CASE(a_range_names_its_unit_once) {
  BOOST_TEST(worded_range(Length::inches(26.75), Length::inches(30.25)) ==
             "679.45 to 768.35 mm");  // derived: x 25.4
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

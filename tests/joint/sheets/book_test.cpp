#include "joint/sheets/book.h"

#include <boost/test/unit_test.hpp>

namespace sheerlap {
namespace {

BOOST_AUTO_TEST_SUITE(book_suite)

BOOST_AUTO_TEST_CASE(columns_are_named_by_letters_of_base_26_without_a_nought) {
  const struct {
    Spot spot;
    const char* name;
    const char* working;
  } rows[] = {{{0, 0}, "A1", "the first"},
              {{4, 25}, "Z5", "derived: 26 letters"},
              {{9, 26}, "AA10", "derived: 26 + 1"},
              {{0, 701}, "ZZ1", "derived: 26 x 26 + 26 = 702"},
              {{0, 702}, "AAA1", "derived: the next"}};
  for (const auto& row : rows) BOOST_TEST_CONTEXT(row.working) {
      BOOST_TEST(address(row.spot) == row.name);
    }
  BOOST_TEST(address({4, 1}, true) == "$B$5");
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

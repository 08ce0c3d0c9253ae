#include "joint/whole_packs.h"

#include <boost/test/unit_test.hpp>

namespace sheerlap {
namespace {

BOOST_AUTO_TEST_SUITE(whole_packs_suite)

BOOST_AUTO_TEST_CASE(packs_are_rounded_up_but_not_for_rounding_errors) {
  const struct {
    double amount, pack;
    std::size_t packs;
    const char* working;
  } rows[] = {
      {0, 430, 0, "derived: nothing needs no pack"},
      {1, 430, 1, "derived: a drop opens one"},
      {1290, 430, 3, "derived: 3 x 430"},
      {1290.001, 430, 4, "derived: a drop more opens a fourth"},
      {0.1 + 0.2, 0.1, 3, "property: 0.30000000000000004 is three tenths"},
      {118 * 120 * 1.05, 1, 14868, "derived: 14160 x 1.05"},
  };
  for (const auto& row : rows) BOOST_TEST_CONTEXT(row.working)
  BOOST_TEST(whole_packs(row.amount, row.pack) == row.packs);
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

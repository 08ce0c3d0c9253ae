#include "joint/fit_reach.h"

#include <boost/test/unit_test.hpp>

namespace sheerlap {
namespace {

SideWorst worst(SideName side, double value_mm, double girth_mm, double spread_mm) {
  return {side, Length::mm(value_mm), Length::mm(girth_mm), Length::mm(spread_mm)};
}

std::string words(const std::vector<SideWorst>& sides) {
  return reach_words(reach_of(sides, 0), sides.front().girth);
}

BOOST_AUTO_TEST_SUITE(fit_reach)

BOOST_AUTO_TEST_CASE(sides_of_the_same_worst_value_are_named_together) {
  const struct {
    std::vector<SideWorst> sides;
    const char* words;
    const char* source;
  } rows[] = {
      {{worst(SideName::Starboard, 2, 500, 1), worst(SideName::Port, 2 + 1e-7, 500, 1)},
       "on starboard and port at girth 500 mm along the sheer",
       "derived: mirrored"},
      {{worst(SideName::Starboard, 2, 500, 1), worst(SideName::Port, 2.01, 500, 1)},
       "on starboard at girth 500 mm along the sheer",
       "derived: 0.01 mm apart"},
      {{worst(SideName::Starboard, 2, 500, 1), worst(SideName::Port, 2, 900, 1)},
       "on starboard at girth 500 mm along the sheer",
       "derived: another place"},
      {{worst(SideName::Starboard, 2, 0, 1e-9), worst(SideName::Port, 2, 40, 0)},
       "all round",
       "derived: nothing varies, places are noise"},
      {{worst(SideName::Starboard, 2, 0, 0), worst(SideName::Port, 2, 40, 0),
        worst(SideName::Transom, 3, 0, 0)},
       "all along starboard and port",
       "derived: the transom is another"},
  };
  for (const auto& row : rows) BOOST_TEST_CONTEXT(row.source)
  BOOST_TEST(words(row.sides) == row.words);
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

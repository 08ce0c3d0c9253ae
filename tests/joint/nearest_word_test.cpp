#include "joint/nearest_word.h"

#include <boost/test/unit_test.hpp>
#include <string>

namespace sheerlap {
namespace {

BOOST_AUTO_TEST_SUITE(nearest_word)

BOOST_AUTO_TEST_CASE(a_slip_names_the_word_that_was_meant) {
  const std::vector<std::string_view> known{"pitch_max", "pitch_min", "end_max", "x"};
  const struct {
    const char* word;
    const char* hint;
    const char* source;
  } rows[] = {
      {"pitch_mx", "did you mean pitch_max?", "derived: a letter too few"},
      {"pitch_maxx", "did you mean pitch_max?", "derived: a letter too many"},
      {"pitch_mon", "did you mean pitch_min?", "derived: a wrong letter"},
      {"pithc_min", "did you mean pitch_min?", "derived: neighbours swapped, one slip"},
      {"pitch_m", "did you mean pitch_max?", "derived: the earlier of two as near"},
      {"X", "did you mean x?", "derived: one slip, one allowed"},
      {"diameter", "one of pitch_max, pitch_min, end_max, x",
       "derived: six slips to end_max, three allowed"},
      {"", "did you mean x?", "derived: one slip, one allowed"},
  };
  for (const auto& row : rows) BOOST_TEST_CONTEXT(row.word << ": " << row.source)
  BOOST_TEST(word_hint(row.word, known) == row.hint);
}

BOOST_AUTO_TEST_CASE(an_endless_word_is_near_nothing) {
  BOOST_TEST(word_hint(std::string(1'000'000, 'x'), {"x", "y"}) == "one of x, y");
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

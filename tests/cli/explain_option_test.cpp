#include "cli/explain_option.h"

#include <boost/test/unit_test.hpp>

namespace sheerlap {
namespace {

BOOST_AUTO_TEST_SUITE(explain_option_suite)

BOOST_AUTO_TEST_CASE(a_mark_stands_behind_the_option_or_its_equals_sign) {
  using Words = std::vector<std::string>;
  const struct {
    Words arguments;
    std::string mark;  // "-": none
    Words rest;
  } rows[] = {
      {{"strength", "j.toml", "--explain"}, "-", {"strength", "j.toml"}},
      {{"--explain", "strength", "j.toml"}, "-", {"strength", "j.toml"}},
      {{"strength", "--explain", "j.toml"}, "-", {"strength", "j.toml"}},
      {{"strength", "j.toml", "--explain", "S14"}, "S14", {"strength", "j.toml"}},
      {{"strength", "--explain", "S14", "j.toml"}, "S14", {"strength", "j.toml"}},
      {{"--explain", "S14", "strength", "j.toml"}, "S14", {"strength", "j.toml"}},
      {{"strength", "--explain=S14", "j.toml"}, "S14", {"strength", "j.toml"}},
      {{"strength", "j.toml", "--explain", "--json"},
       "-",
       {"strength", "j.toml", "--json"}},
      // command and file are there: it can only be a mark
      {{"strength", "j.toml", "--explain", "S1x"}, "S1x", {"strength", "j.toml"}},
      {{"--units", "in", "strength", "--explain", "j.toml"},
       "-",
       {"--units", "in", "strength", "j.toml"}},
      {{"job", "j.toml", "--out", "--explain"},
       "-",
       {"job", "j.toml", "--out", "--explain"}},
      {{"strength", "j.toml", "--explain="}, "", {"strength", "j.toml"}},
  };
  for (const auto& row : rows) {
    Words arguments = row.arguments;
    const ExplainOption found = take_explain(arguments);
    BOOST_TEST(arguments == row.rest, boost::test_tools::per_element());
    BOOST_TEST(found.mark.value_or("-") == row.mark);
  }
}

BOOST_AUTO_TEST_CASE(what_stands_behind_two_dashes_is_left_alone) {
  std::vector<std::string> arguments{"check", "--", "--explain"};
  BOOST_TEST(!take_explain(arguments).given);
  BOOST_TEST(arguments.size() == 3);
}

BOOST_AUTO_TEST_CASE(without_the_option_nothing_changes) {
  std::vector<std::string> arguments{"schedule", "S14"};
  BOOST_TEST(!take_explain(arguments).given);
  BOOST_TEST(arguments.size() == 2);
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

#include "cli/source_map.h"

#include <boost/test/unit_test.hpp>

namespace sheerlap {
namespace {

const SourceMap sources{"a.toml",
                        "b.csv",
                        {{"layout", {false, 3}},
                         {"layout.pitch_max", {false, 4}},
                         {"keepout", {false, 10}},
                         {"keepout[1]", {false, 15}},
                         {"sheer.header", {true, 1}},
                         {"file", {false, 0}}},
                        {2, 3, 5}};

Error error_at(const char* where, const char* message) {
  return {ErrorKind::InvalidInput, where, message};
}

BOOST_AUTO_TEST_SUITE(source_map)

BOOST_AUTO_TEST_CASE(an_address_falls_back_to_the_nearest_that_is_known) {
  const struct {
    const char* where;
    std::size_t line;
    bool in_table;
  } rows[] = {
      // derived: as `sources` says
      {"layout.pitch_max", 4, false}, {"layout.end_max", 3, false},
      {"keepout[1].to", 15, false},   {"keepout[0].to", 10, false},
      {"jig.bush", 1, false},         {"", 1, false},
      {"sheer.header", 1, true},      {"sheer.row[2]", 5, true},
      {"sheer.row[2].y", 5, true},    {"sheer.row[3]", 1, false},
      {"sheer.row[", 2, true},
  };
  for (const auto& row : rows) BOOST_TEST_CONTEXT(row.where) {
      const SourceLine found = source_line(sources, row.where);
      BOOST_TEST(found.line == row.line);
      BOOST_TEST(found.in_table == row.in_table);
    }
}

BOOST_AUTO_TEST_CASE(errors_go_by_file_and_line_and_then_as_they_were_found) {
  const Errors errors = located(
      {error_at("sheer.row[1]", "second row"), error_at("sheer.header", "header"),
       error_at("layout.pitch_max", "first found"), error_at("keepout", "a keep-out"),
       error_at("layout.pitch_max", "found after"), error_at("file", "all of it")},
      sources);
  const char* expected[] = {"a.toml: all of it",     "a.toml:4: first found",
                            "a.toml:4: found after", "a.toml:10: a keep-out",
                            "b.csv:1: header",       "b.csv:3: second row"};
  BOOST_TEST_REQUIRE(errors.size() == std::size(expected));
  for (std::size_t i = 0; i < errors.size(); ++i)
    BOOST_TEST(errors[i].message == expected[i]);
}

BOOST_AUTO_TEST_CASE(a_value_is_found_by_its_file_and_line_only_if_it_is_there) {
  SourceMap elsewhere = sources;
  elsewhere.joint_file = "boats/a.toml";
  // derived: as `sources` says
  BOOST_TEST(origin_words(elsewhere, "layout.pitch_max") == "yours: a.toml:4");
  BOOST_TEST(origin_words(elsewhere, "sheer.row[2]") == "yours: b.csv:5");
  // the line of [layout] would be another value's
  BOOST_TEST(origin_words(elsewhere, "layout.end_max") == "not given in a.toml");
}

BOOST_AUTO_TEST_CASE(what_is_said_twice_is_printed_once) {
  const Errors errors =
      located({error_at("layout", "wrong"), error_at("layout", "wrong")}, sources);
  BOOST_TEST(errors.size() == 1u);
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

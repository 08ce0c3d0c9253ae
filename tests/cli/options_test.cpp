#include "cli/options.h"

#include <boost/test/unit_test.hpp>

#include "cli/commands.h"

namespace sheerlap {
namespace {

Options options_of(const std::vector<std::string>& arguments) {
  const auto asked = parse_options(arguments);
  BOOST_TEST_REQUIRE(asked.has_value());
  BOOST_TEST_REQUIRE(std::holds_alternative<Options>(*asked));
  return std::get<Options>(*asked);
}

std::string text_of(const std::vector<std::string>& arguments) {
  const auto asked = parse_options(arguments);
  BOOST_TEST_REQUIRE(asked.has_value());
  BOOST_TEST_REQUIRE(std::holds_alternative<TextAsked>(*asked));
  return std::get<TextAsked>(*asked).text;
}

BOOST_AUTO_TEST_SUITE(options)

BOOST_AUTO_TEST_CASE(options_stand_before_or_after_the_command) {
  for (const std::vector<std::string>& arguments :
       {std::vector<std::string>{"--json", "--quiet", "--units", "in", "--out", "d",
                                 "job", "j.toml"},
        std::vector<std::string>{"job", "j.toml", "--json", "--quiet", "--units", "in",
                                 "--out", "d"},
        std::vector<std::string>{"--units=in", "job", "--json", "j.toml", "--out=d",
                                 "--quiet"}}) {
    const Options options = options_of(arguments);
    BOOST_TEST((options.command == Command::Job));
    BOOST_TEST(options.target == "j.toml");
    BOOST_TEST(options.json);
    BOOST_TEST(options.quiet);
    BOOST_TEST((options.unit == LengthUnit::Inches));
    BOOST_TEST(options.out.value() == "d");
  }
}

BOOST_AUTO_TEST_CASE(reasons_are_asked_for_all_or_for_one_hole) {
  const Options all = options_of({"fit", "j.toml", "--explain"});
  BOOST_TEST(all.explain);
  BOOST_TEST(!all.explain_hole.has_value());
  const Options one = options_of({"strength", "j.toml", "--explain", "S14"});
  BOOST_TEST(one.explain);
  BOOST_TEST(one.explain_hole.value() == "S14");
  BOOST_TEST(!options_of({"fit", "j.toml"}).explain);
}

BOOST_AUTO_TEST_CASE(what_is_not_given_is_not_set) {
  const Options options = options_of({"fit", "j.toml"});
  BOOST_TEST(!options.json);
  BOOST_TEST(!options.quiet);
  BOOST_TEST(!options.unit.has_value());
  BOOST_TEST(!options.out.has_value());
}

BOOST_AUTO_TEST_CASE(every_command_is_known_by_its_name) {
  for (const CommandWords& words : all_commands())
    BOOST_TEST((options_of({words.name, "x"}).command == words.command));
}

BOOST_AUTO_TEST_CASE(a_name_that_starts_with_a_dash_can_stand_behind_two_dashes) {
  BOOST_TEST(options_of({"check", "--", "-j.toml"}).target == "-j.toml");
}

BOOST_AUTO_TEST_CASE(wrong_command_lines_are_told_what_would_be_right) {
  const struct {
    std::vector<std::string> arguments;
    std::string message;
  } rows[] = {
      {{"fit"}, "fit needs its JOINT.toml: sheerlap fit JOINT.toml"},
      {{"new"}, "new needs its DIR: sheerlap new DIR"},
      {{"fti", "j.toml"}, "unknown command fti: did you mean fit?"},
      {{"fit", "j.toml", "--jsn"}, "unknown option --jsn: did you mean --json?"},
      {{"fit", "j.toml", "k.toml"},
       "k.toml is an argument too many: one file or folder at a time"},
      {{"fit", "j.toml", "--units", "cm"}, "--units cm is not known: mm or in"},
      {{"job", "j.toml", "--paper", "a5"}, "--paper a5 is not known: a4 or letter"},
      {{"fit", "j.toml", "--paper", "a4"},
       "--paper is for the sheets of job: leave it out, or run job"},
      {{"new", "d", "--units", "in"},
       "--units is for what a joint file gives: new writes millimetres, so leave it "
       "out "
       "and set units in the file"},
      {{"fit", "j.toml", "--explain=S14"},
       "--explain with a hole's mark is for schedule, strength and job: leave the mark "
       "out"},
      {{"new", "d", "--explain"},
       "--explain is for what is worked out: new works nothing out, so leave it out"},
      {{"strength", "j.toml", "--explain", "--explain"},
       "--explain is given once, alone or with one hole's mark: --explain S14"},
      {{"strength", "j.toml", "--explain="},
       "--explain= is empty: name a hole, as --explain=S14, or leave the = out"},
      {{"fit", "j.toml", "--out", "d"},
       "--out is for the documents of job: leave it out, or run job"},
  };
  for (const auto& row : rows) {
    const auto asked = parse_options(row.arguments);
    BOOST_TEST_REQUIRE(!asked.has_value());
    BOOST_TEST_REQUIRE(asked.error().size() == 1);
    BOOST_TEST(asked.error()[0].message == row.message);
    BOOST_TEST((asked.error()[0].kind == ErrorKind::InvalidInput));
  }
}

BOOST_AUTO_TEST_CASE(no_command_at_all_is_told_the_commands) {
  const auto asked = parse_options({});
  BOOST_TEST_REQUIRE(!asked.has_value());
  for (const CommandWords& words : all_commands())
    BOOST_TEST(asked.error()[0].message.find(words.name) != std::string::npos);
}

BOOST_AUTO_TEST_CASE(an_option_takes_as_many_values_as_it_needs) {
  const struct {
    std::vector<std::string> arguments;
    std::string message;
  } rows[] = {
      {{"fit", "j.toml", "--units"},
       "--units takes one value, and is given once: see sheerlap --help"},
      {{"fit", "j.toml", "--units", "mm", "--units", "in"},
       "--units takes one value, and is given once: see sheerlap --help"},
      {{"job", "j.toml", "--out"},
       "--out takes one value, and is given once: see sheerlap --help"},
      {{"job", "j.toml", "--out", ""}, "--out is empty: name a folder"},
      {{"job", "j.toml", "--json=maybe"},
       "an option without a value has one, or the like (Could not convert: --json = "
       "maybe): see sheerlap --help"},
  };
  for (const auto& row : rows) {
    const auto asked = parse_options(row.arguments);
    BOOST_TEST_REQUIRE(!asked.has_value());
    BOOST_TEST(asked.error()[0].message == row.message);
  }
}

BOOST_AUTO_TEST_CASE(all_that_is_wrong_is_told_in_one_run) {
  const auto asked = parse_options({"fti", "j.toml", "--units", "cm", "--jsn", "k"});
  BOOST_TEST_REQUIRE(!asked.has_value());
  BOOST_TEST(asked.error().size() == 4);
}

BOOST_AUTO_TEST_CASE(help_and_version_ask_for_nothing_else) {
  BOOST_TEST(text_of({"--help"}) == help_text());
  BOOST_TEST(text_of({"-h"}) == help_text());
  BOOST_TEST(text_of({"fit", "--help"}) == help_text(Command::Fit));
  BOOST_TEST(text_of({"--help", "fit", "j.toml"}) == help_text(Command::Fit));
  BOOST_TEST(text_of({"--version"}).starts_with("sheerlap "));
  BOOST_TEST(text_of({"fit", "--version"}).starts_with("sheerlap "));
}

BOOST_AUTO_TEST_CASE(the_help_of_an_unknown_command_is_refused) {
  BOOST_TEST(!parse_options({"fti", "--help"}).has_value());
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

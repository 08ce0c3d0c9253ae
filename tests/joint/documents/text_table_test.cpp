#include "joint/documents/text_table.h"

#include <boost/test/unit_test.hpp>
#include <sstream>

namespace sheerlap {
namespace {

std::size_t widest(const std::string& text) {
  std::istringstream lines(text);
  std::size_t width = 0;
  for (std::string line; std::getline(lines, line);)
    width = std::max(width, width_of(line));
  return width;
}

BOOST_AUTO_TEST_SUITE(text_table)

BOOST_AUTO_TEST_CASE(cells_keep_to_their_side_and_headings_stand_at_the_foot) {
  const TextTable table{
      {{{"mark"}, Align::Left}, {{"jig", "girth"}}, {{"why"}, Align::Left}},
      {{"S01", "5", "corner"}, {"S02", "12345", ""}}};
  BOOST_TEST(text_of(table) ==
             "        jig\n"
             "mark  girth  why\n"
             "----  -----  ------\n"
             "S01       5  corner\n"
             "S02   12345\n");
}

BOOST_AUTO_TEST_CASE(a_long_last_cell_is_wrapped_under_itself) {
  const std::string words =
      "one two three four five six seven eight nine ten eleven "
      "twelve thirteen fourteen fifteen sixteen";
  const TextTable table{{{{"n"}}, {{"words"}, Align::Left}}, {{"1", words}}};
  BOOST_TEST(
      text_of(table) ==
      "n  words\n"
      "-  " +
          std::string(77, '-') +
          "\n"
          "1  one two three four five six seven eight nine ten eleven twelve thirteen\n"
          "   fourteen fifteen sixteen\n");
}

BOOST_AUTO_TEST_CASE(no_line_is_wider_than_the_limit) {
  // property: whatever the last cell, lines keep to text_width; where the columns
  // before it leave it less than 24 characters, to widest_line
  const std::string endless(500, 'x');
  for (const std::size_t before : {std::size_t{1}, std::size_t{50}, std::size_t{70}}) {
    const TextTable table{{{{"a"}}, {{"b"}, Align::Left}},
                          {{std::string(before, 'a'), endless + " " + endless}}};
    const std::size_t limit = before + 2 + 24 <= text_width ? text_width : widest_line;
    BOOST_TEST(widest(text_of(table)) == limit);
  }
}

BOOST_AUTO_TEST_CASE(characters_are_counted_not_bytes) {
  BOOST_TEST(width_of("sur\xC3\xA9lev\xC3\xA9") ==
             8);  // derived: two of two bytes each
  const TextTable table{{{{"a"}, Align::Left}, {{"b"}}},
                        {{"\xC3\xA9", "1"}, {"e", "2"}}};
  BOOST_TEST(text_of(table) == "a  b\n-  -\n\xC3\xA9  1\ne  2\n");
}

BOOST_AUTO_TEST_CASE(a_word_longer_than_the_line_is_broken_between_characters) {
  BOOST_TEST(wrapped("\xC3\xA9\xC3\xA9\xC3\xA9 ab", 2) ==
             "\xC3\xA9\xC3\xA9\n\xC3\xA9\nab\n");
}

BOOST_AUTO_TEST_CASE(lines_after_the_first_are_indented) {
  BOOST_TEST(wrapped("- one two three", 9, 2) == "- one\n  two\n  three\n");
}

BOOST_AUTO_TEST_CASE(no_text_is_one_empty_line) { BOOST_TEST(wrapped("") == "\n"); }

BOOST_AUTO_TEST_CASE(a_line_break_in_a_cell_does_not_break_the_table) {
  const TextTable table{{{{"a"}, Align::Left}}, {{"one\ntwo"}}};
  BOOST_TEST(text_of(table) == "a\n-------\none two\n");
}

BOOST_AUTO_TEST_CASE(a_long_name_in_any_column_stays_within_the_line) {
  TextTable table;
  table.columns = {{{"item"}, Align::Left}, {{"need"}}, {{"unit"}, Align::Left}};
  table.rows = {{std::string(60, 'x') + " " + std::string(60, 'y'), "12345", "ml"}};
  std::istringstream lines(text_of(table));
  for (std::string line; std::getline(lines, line);) BOOST_TEST(line.size() <= 100);
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

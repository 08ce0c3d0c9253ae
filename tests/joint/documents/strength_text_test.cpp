#include "joint/documents/strength_text.h"

#include <algorithm>
#include <boost/test/unit_test.hpp>
#include <limits>
#include <sstream>

#include "joint/documents/bond_text.h"
#include "joint/documents/text_table.h"
#include "tests/joint/documents/sample_job.h"

namespace sheerlap {
namespace {

bool holds(const std::string& text, const std::string& part) {
  return text.find(part) != std::string::npos;
}

NumberStyle style_in(LengthUnit unit) { return NumberStyle(unit, Length::mm(1)); }

std::string words_of(const std::string& address) { return "yours: " + address; }

std::string text_in(LengthUnit unit) {
  return strength_text(sample_job(), style_in(unit), words_of);
}

std::string metric() { return text_in(LengthUnit::Millimetres); }

/// The text with runs of blanks and line ends as one blank.
std::string flowing(const std::string& text) {
  std::istringstream stream(text);
  std::string all;
  for (std::string word; stream >> word;) all += (all.empty() ? "" : " ") + word;
  return all;
}

/// The only line that holds all of two parts.
std::string line_with(const std::string& text,
                      const std::string& part,
                      const std::string& other) {
  std::istringstream stream(text);
  for (std::string line; std::getline(stream, line);)
    if (holds(line, part) && holds(line, other)) return line;
  return "";
}

BOOST_AUTO_TEST_SUITE(strength_text_suite)

BOOST_AUTO_TEST_CASE(a_calculation_has_all_of_its_parts_in_order) {
  const std::string text = metric();
  std::size_t at = 0;
  for (const char* part :
       {"part ", "\nLoads\n", "\nThe bond\n", "\nThe fasteners alone\n", "\nLoad share",
        "\nClamping\n", "\nRules beside this joint\n", "\nLeft out, and why\n",
        "\nFrom memory", "\nWho decides\n"}) {
    const std::size_t found = text.find(part, at);
    BOOST_TEST(found != std::string::npos, part);
    at = found == std::string::npos ? at : found;
  }
}

BOOST_AUTO_TEST_CASE(nothing_is_said_to_comply) {
  for (const char* word : {"compl", "Compl", "satisf", "certif"})
    BOOST_TEST(!holds(metric(), word), word);
}

BOOST_AUTO_TEST_CASE(a_use_beyond_1_never_reads_as_1) {
  // property: the digits go on until it is told from 1
  BOOST_TEST(use_text(1.004) == "1.004");
  BOOST_TEST(use_text(1.0000004) == "1.0000004");
  BOOST_TEST(use_text(1) == "1.00");
  BOOST_TEST(use_text(0.996) == "1.00");
  BOOST_TEST(use_flag(1.0000004) == "OVER");
  BOOST_TEST(use_flag(1) == "high");
  BOOST_TEST(use_flag(0.89) == "");
}

BOOST_AUTO_TEST_CASE(a_place_that_uses_more_than_the_rows_beside_it_is_a_row) {
  const std::string text = metric();
  BOOST_TEST(holds(line_with(text, "1500+", "plies"), "OVER*"));
  // 500 uses less than both rows beside it
  BOOST_TEST(line_with(text, " 500+", "").empty());
}

BOOST_AUTO_TEST_CASE(a_place_without_a_bond_line_has_no_stresses) {
  const std::string line = line_with(metric(), "no bond", "OVER");
  BOOST_TEST(!holds(line, "0.32"));
  BOOST_TEST(!line.empty());
}

BOOST_AUTO_TEST_CASE(the_holes_that_use_too_much_are_named) {
  BOOST_TEST(holds(flowing(metric()), "1 of 3 holes uses more than 1: S02."));
  BOOST_TEST(holds(line_with(metric(), "S02  ", "crushed"), "1.23  OVER*"));
}

BOOST_AUTO_TEST_CASE(a_capacity_that_is_the_same_at_every_hole_has_no_column) {
  const std::string text = metric();
  BOOST_TEST(holds(flowing(text),
                   "The same at every hole: fastener sheared 3881 N, laminate crushed "
                   "2160 N, thread pulled out 570 N."));
  // what shears out differs by hole: 7000 N and its girth
  BOOST_TEST(holds(line_with(text, "S02  ", "crushed"), "7166"));
  BOOST_TEST(!holds(line_with(text, "S02  ", "crushed"), "2160"));
}

BOOST_AUTO_TEST_CASE(loads_are_told_by_cause_with_where_they_are_from) {
  const std::string text = flowing(metric());
  for (const char* words :
       {"line load 4.00 1.00 0.20 all round [yours: loads.along]",
        "girth 2880 to 2980 [yours: load[0]]", "1200 N over 200 mm",
        "pressure on the deck - 1.25 - all round", "warm deck varies",
        "bond 3, fasteners 2.5 [yours: loads.factor_bond"})
    BOOST_TEST(holds(text, words), words);
}

BOOST_AUTO_TEST_CASE(
    a_rule_says_what_it_asks_what_there_is_and_how_surely_it_is_known) {
  const std::string text = metric();
  BOOST_TEST(holds(line_with(text, "19.9", "pass"), "9.6"));
  BOOST_TEST(holds(flowing(text), "[chosen] A line of bolts at least 2 diameters"));
  for (const char* state : {"fail ", "warn ", "pass ", "info "})
    BOOST_TEST(!line_with(text, "9.6  19.9", state).empty(), state);
  BOOST_TEST(holds(flowing(text), "; read in its source"));
  BOOST_TEST(holds(flowing(text), "- Holes in plates of steel: there is one line"));
}

BOOST_AUTO_TEST_CASE(what_is_from_memory_is_listed_and_what_was_read_is_not) {
  const std::string text = metric();
  const std::string memory = flowing(text.substr(text.find("\nFrom memory")));
  BOOST_TEST(holds(memory, "(p_T): a textbook; from memory, confirm"));
  BOOST_TEST(holds(memory, "aerospace custom: from memory, confirm"));
  BOOST_TEST(!holds(memory, "class-rule table"));
}

BOOST_AUTO_TEST_CASE(lengths_go_into_inches_and_stresses_stay) {
  const std::string text = text_in(LengthUnit::Inches);
  BOOST_TEST(holds(flowing(text), "N, N/mm and N/mm2, which stay metric"));
  // derived: 2.28 / 25.4 = 0.0898; 9.6 / 25.4 = 0.378
  BOOST_TEST(holds(text, "0.090"));
  BOOST_TEST(holds(text, "0.38"));
  BOOST_TEST(!holds(text, " mm"));
}

BOOST_AUTO_TEST_CASE(no_line_is_wider_than_100_characters) {
  for (const LengthUnit unit : {LengthUnit::Millimetres, LengthUnit::Inches}) {
    std::istringstream stream(text_in(unit));
    for (std::string line; std::getline(stream, line);)
      BOOST_TEST(width_of(line) <= 100, line);
  }
}

BOOST_AUTO_TEST_CASE(a_use_over_1_is_never_shown_as_1) {
  BOOST_TEST(use_text(1.0004) == "1.0004");
  BOOST_TEST(use_text(0.9999) == "1.00");
  BOOST_TEST(use_text(std::numeric_limits<double>::infinity()) == "beyond all");
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

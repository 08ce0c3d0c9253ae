#include "joint/documents/number_style.h"

#include <boost/test/unit_test.hpp>
#include <cmath>
#include <random>

#include "joint/worded_length.h"

namespace sheerlap {
namespace {

const NumberStyle in_mm(LengthUnit::Millimetres, Length::mm(1));
const NumberStyle in_inches(LengthUnit::Inches, Length::mm(1));

BOOST_AUTO_TEST_SUITE(number_style)

BOOST_AUTO_TEST_CASE(inches_are_rounded_to_the_nearest_sixteenth_and_reduced) {
  const struct {
    double inches;
    const char* text;
    const char* source;
  } rows[] = {
      {12.3125, "12-5/16", "derived: 5/16 = 0.3125"},
      {12.5, "12-1/2", "derived: 8/16 reduced"},
      {0.75, "3/4", "derived: no whole inch, 12/16 reduced"},
      {12, "12", "derived: no fraction"},
      {0, "0", "derived"},
      {11.97, "12", "derived: 15.52/16 rounds to 16/16 and carries"},
      {11.96, "11-15/16", "derived: 15.36/16 rounds to 15/16"},
      {0.03125, "1/16", "derived: half a sixteenth goes away from zero"},
      {0.0312, "0", "derived: less than half a sixteenth"},
      {-0.02, "0", "derived: no negative zero"},
      {-12.3125, "-12-5/16", "derived"},
  };
  for (const auto& row : rows) BOOST_TEST_CONTEXT(row.source)
  BOOST_TEST(in_inches.running(Length::inches(row.inches)) == row.text);
}

BOOST_AUTO_TEST_CASE(a_running_dimension_reads_back_within_half_a_sixteenth) {
  // property: what is shown is what our own reader of shop lengths understands
  std::mt19937 random(20240501);
  std::uniform_real_distribution<double> girth_mm(0, 20000);
  for (int i = 0; i < 1000; ++i) {
    const Length length = Length::mm(girth_mm(random));
    const std::string text = in_inches.running(length) + " in";
    const auto back = length_from_text(text, LengthUnit::Inches);
    BOOST_TEST_REQUIRE(back.has_value());
    BOOST_TEST(std::abs((*back - length).in_inches()) <= 1.0 / 32 + 1e-9);
  }
}

BOOST_AUTO_TEST_CASE(a_step_that_no_tape_has_gives_way_to_a_usual_one) {
  const struct {
    LengthUnit unit;
    Length round_to;
    const char* step;
    const char* shown;  // of 1234.56 mm = 48.60472 in
    const char* source;
  } rows[] = {
      {LengthUnit::Millimetres, Length::mm(1), "1 mm", "1235", "derived"},
      {LengthUnit::Millimetres, Length::mm(0.5), "0.5 mm", "1234.5", "derived"},
      {LengthUnit::Millimetres, Length::mm(5), "5 mm", "1235", "derived: 1234.56 / 5"},
      {LengthUnit::Millimetres, Length::inches(0.0625), "1 mm", "1235",
       "1/16 in is 1.5875 mm, on no metric tape"},
      {LengthUnit::Inches, Length::mm(1), "1/16 in", "48-5/8",
       "derived: 0.60472 x 16 = 9.68, so 10/16"},
      {LengthUnit::Inches, Length::inches(0.125), "1/8 in", "48-5/8",
       "derived: 0.60472 x 8 = 4.84"},
      {LengthUnit::Inches, Length::inches(1. / 32), "1/32 in", "48-19/32",
       "derived: 0.60472 x 32 = 19.35"},
      {LengthUnit::Inches, Length::inches(1), "1 in", "49", "derived"},
  };
  for (const auto& row : rows) BOOST_TEST_CONTEXT(row.source) {
      const NumberStyle style(row.unit, row.round_to);
      BOOST_TEST(style.step_name() == row.step);
      BOOST_TEST(style.running(Length::mm(1234.56)) == row.shown);
    }
}

BOOST_AUTO_TEST_CASE(millimetres_have_fixed_decimals) {
  BOOST_TEST(in_mm.running(Length::mm(1234.5)) == "1235");  // derived: away from zero
  BOOST_TEST(in_mm.span(Length::mm(144.25)) == "144.3");
  BOOST_TEST(in_mm.span(Length::mm(-614)) == "-614.0");
  BOOST_TEST(in_mm.span(Length::mm(-0.04)) == "0.0");
  BOOST_TEST(in_mm.gap(Length::mm(3)) == "3.00");
  BOOST_TEST(in_mm.size(Length::mm(19)) == "19");
  BOOST_TEST(in_mm.size_with_unit(Length::mm(5.3)) == "5.3 mm");
  BOOST_TEST(in_mm.full(Length::mm(1. / 3)) == "0.333");
}

BOOST_AUTO_TEST_CASE(chords_and_thicknesses_in_inches_are_decimals) {
  BOOST_TEST(in_inches.span(Length::mm(144.25)) == "5.68");  // derived: 5.67913
  BOOST_TEST(in_inches.gap(Length::mm(3)) == "0.118");       // derived: 0.118110
  BOOST_TEST(in_inches.size(Length::mm(19.05)) == "0.75");   // derived: 3/4 in
  BOOST_TEST(in_inches.full(Length::mm(25.4)) == "1.0000");
}

BOOST_AUTO_TEST_CASE(lengths_in_a_sentence_take_the_documents_unit) {
  const struct {
    const char* metric;
    const char* inches;
  } rows[] = {// derived: 25.4 mm is 1 in
              {"25.4 mm clear of the cleat", "1 in clear of the cleat"},
              {"bridge, 50.8 to 101.6 mm: the cleat", "bridge, 2 to 4 in: the cleat"},
              {"12.7 mm", "0.5 in"},
              {"ST4.8 x 19.05 mm screw", "ST4.8 x 0.75 in screw"},
              {"8 mmol and 3 to go", "8 mmol and 3 to go"},
              {"no length", "no length"},
              {"120 to", "120 to"},
              {"", ""}};
  for (const auto& row : rows) {
    BOOST_TEST(in_inches.sentence(row.metric) == row.inches);
    BOOST_TEST(in_mm.sentence(row.metric) == row.metric);  // as round as given
  }
}

BOOST_AUTO_TEST_CASE(a_sentence_keeps_what_was_given_and_rounds_what_was_worked_out) {
  const struct {
    const char* worded;
    const char* metric;
    const char* inches;
    const char* source;
  } rows[] = {
      {"19.05 mm clear", "19.05 mm clear", "0.75 in clear", "derived: 3/4 x 25.4"},
      {"1.5875 mm", "1.59 mm", "0.0625 in", "derived: 1/16 x 25.4, a size in mm"},
      {"31.75 mm", "31.75 mm", "1.25 in", "derived: 1-1/4 x 25.4"},
      {"144.2548 mm", "144.3 mm", "5.68 in", "derived: 5.67932 in, a pitch"},
      {"2.4892 mm", "2.49 mm", "0.098 in", "derived: 0.098 x 25.4, a bit"},
      {"3.4567 mm", "3.46 mm", "0.136 in", "derived: 0.13609 in"},
      {"on port, girth 679.45 to 768.35 mm: a", "on port, girth 679 to 768 mm: a",
       "on port, girth 26-3/4 to 30-1/4 in: a", "derived: 26.75 and 30.25 x 25.4"},
      {"the hole at girth 844.55 mm", "the hole at girth 845 mm",
       "the hole at girth 33-1/4 in", "derived: 33.25 x 25.4; 844.55 to 1 mm"},
  };
  for (const auto& row : rows) BOOST_TEST_CONTEXT(row.source) {
      BOOST_TEST(in_mm.sentence(row.worded) == row.metric);
      BOOST_TEST(in_inches.sentence(row.worded) == row.inches);
    }
}

/// The length a text shows, and what its last digit is worth.
struct ShownLength {
  Length length;
  double last_digit_inches;
};

ShownLength shown(const std::string& text) {
  const auto length = length_from_text(text, LengthUnit::Inches);
  BOOST_TEST_REQUIRE(length.has_value());
  const auto point = text.find('.');
  const auto digits = point == std::string::npos ? 0 : text.find(' ') - point - 1;
  return {*length, std::pow(10., -static_cast<double>(digits))};
}

BOOST_AUTO_TEST_CASE(lengths_given_in_inches_come_back_as_they_were_given) {
  // property: every 1/16 and every 0.001 in, worded in mm, reads back as itself
  for (int i = 1; i <= 1600; ++i)
    for (const double step : {1. / 16, 0.001}) {
      const double inches = i * step;
      const auto text = in_inches.sentence(worded(Length::inches(inches)));
      BOOST_TEST(std::abs(shown(text).length.in_inches() - inches) < 1e-9, text);
    }
}

BOOST_AUTO_TEST_CASE(any_length_in_a_sentence_loses_less_than_half_of_its_last_digit) {
  // property; the wording itself loses 0.00005 mm, 2e-6 in
  std::mt19937 random(20240502);
  std::uniform_real_distribution<double> inches(0.01, 60);
  for (int i = 0; i < 1000; ++i) {
    const double given = inches(random);
    const std::string text = in_inches.sentence(worded(Length::inches(given)));
    const auto [length, last_digit] = shown(text);
    // zeros at the end are left off: 0.01 in is the coarsest step there is
    const double step = std::min(last_digit, 0.01);
    BOOST_TEST(std::abs(length.in_inches() - given) <= step / 2 + 2.1e-6, text);
  }
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

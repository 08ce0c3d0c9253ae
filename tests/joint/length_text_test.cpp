#include "joint/length_text.h"

#include <boost/test/unit_test.hpp>
#include <cmath>
#include <limits>
#include <string>
#include <vector>

namespace sheerlap {
namespace {

struct Accepted {
  const char* text;
  double mm;
  const char* source;
};

void check_rows(const std::vector<Accepted>& rows, LengthUnit unit) {
  for (const auto& row : rows) BOOST_TEST_CONTEXT(row.text << ": " << row.source) {
      const auto length = length_from_text(row.text, unit);
      BOOST_TEST_REQUIRE(length.has_value());
      BOOST_TEST(length->in_mm() == row.mm,
                 boost::test_tools::tolerance(1e-14));  // rounding only
    }
}

BOOST_AUTO_TEST_SUITE(length_text)

BOOST_AUTO_TEST_CASE(a_bare_number_is_in_the_files_units) {
  const std::vector<Accepted> millimetres{
      {"12", 12, "derived: as written"},
      {"-2.5", -2.5, "derived: as written"},
      {"+3", 3, "derived: as written"},
      {"1e3", 1000, "derived: 1 x 10^3"},
      {" 7 ", 7, "derived: spaces about it say nothing"},
      {"0", 0, "derived: as written"},
      {"\u22124", -4, "derived: a typographic minus is a minus"},
  };
  check_rows(millimetres, LengthUnit::Millimetres);
  const std::vector<Accepted> inches{
      {"2", 50.8, "derived: 2 x 25.4"},
      {"1/4", 6.35, "derived: 25.4 / 4"},
      {"1 1/2", 38.1, "derived: 1.5 x 25.4"},
      {"-0.5", -12.7, "derived: 0.5 x 25.4"},
  };
  check_rows(inches, LengthUnit::Inches);
}

BOOST_AUTO_TEST_CASE(text_that_carries_its_unit_reads_alike_in_either_units) {
  const std::vector<Accepted> rows{
      {"6.4 m", 6400, "derived: 6.4 x 1000"},
      {"12 cm", 120, "derived: 12 x 10"},
      {"5 mm", 5, "derived: as written"},
      {"5mm", 5, "derived: no space needed"},
      {"5 MM", 5, "derived: capitals say nothing"},
      {"1/4 in", 6.35, "derived: 25.4 / 4"},
      {"4-5/8 in", 117.475, "derived: 4.625 x 25.4"},
      {"4 5/8\"", 117.475, "derived: 4.625 x 25.4"},
      {"27.5 inches", 698.5, "derived: 27.5 x 25.4"},
      {"9/8 in", 28.575, "derived: 1.125 x 25.4"},
      {"2 ft", 609.6, "derived: 24 x 25.4"},
      {"1/2 ft", 152.4, "derived: 6 x 25.4"},
      {"3 ft 4-5/8 in", 1031.875, "derived: 40.625 x 25.4"},
      {"3' 4 5/8\"", 1031.875, "derived: 40.625 x 25.4"},
      {"3'4-5/8\"", 1031.875, "derived: 40.625 x 25.4"},
      {"3'-4\"", 1016, "derived: 40 x 25.4"},
      {"3\u2032 4\u2033", 1016, "derived: typographic primes are feet and inches"},
      {"-3 ft 4 in", -1016, "derived: the sign leads the whole length"},
      {"0' 10 3/8\"", 263.525, "derived: 10.375 x 25.4"},
      {"1' 10 1/2\"", 571.5,
       "derived: 22.5 x 25.4; form: C. H. Clark, Amateur Work "
       "vol. 5, high-speed launch"},
  };
  check_rows(rows, LengthUnit::Millimetres);
  check_rows(rows, LengthUnit::Inches);
}

BOOST_AUTO_TEST_CASE(feet_inches_eighths_read_as_a_table_of_offsets_means_them) {
  const std::vector<Accepted> rows{
      {"2-3-4", 698.5,
       "published: 2-3-4 is 2 ft 3 1/2 in (table-of-offsets notation); "
       "derived: 27.5 x 25.4"},
      {"3-8-4", 1130.3,
       "published: 3 ft 8 1/2 in, legend Ft. Ins. 8ths; derived: "
       "44.5 x 25.4"},
      {"3-4-5", 1031.875, "derived: 40.625 x 25.4"},
      {"1-07-4", 495.3, "published: leading zeros occur; derived: 19.5 x 25.4"},
      {"1-7-4+", 496.8875,
       "derived: (19.5 + 1/16) x 25.4; the + is from memory, "
       "confirm"},
      {"1-7-4-", 493.7125,
       "derived: (19.5 - 1/16) x 25.4; the - is from memory, "
       "confirm"},
      {"1-7-3+", 493.7125, "derived: 19 3/8 + 1/16 = 19 7/16"},
      {"0-0-0", 0, "derived: nothing"},
      {"0-11-7", 301.625, "derived: 11.875 x 25.4"},
      {"-0-1-0", -25.4, "derived: the sign leads the whole length"},
      {"-1-7-4+", -496.8875, "derived: the sign leads the whole length"},
  };
  check_rows(rows, LengthUnit::Millimetres);
  check_rows(rows, LengthUnit::Inches);
}

BOOST_AUTO_TEST_CASE(what_is_no_length_is_refused_with_what_would_be_right) {
  const std::string general =
      " is not a length: write a number, a number with its unit (mm, cm, m, in or "
      "ft), or feet-inches-eighths such as \"3-4-5\"";
  const struct {
    std::string text, message;
  } rows[] = {
      {"", "\"\" is empty: write a number, or text such as \"12 mm\""},
      {"  ", "\"\" is empty: write a number, or text such as \"12 mm\""},
      {"wide", "\"wide\"" + general},
      {"--5", "\"--5\"" + general},
      {"5 -", "\"5 -\"" + general},
      {"1-2-3-4", "\"1-2-3-4\"" + general},
      {"2-3-4 in", "\"2-3-4 in\"" + general},
      {"3 ft 4 ft", "\"3 ft 4 ft\"" + general},
      {"3 ft 4 in 5", "\"3 ft 4 in 5\"" + general},
      {"3.5 ft 2 in", "\"3.5 ft 2 in\"" + general},
      {"5 mm 2 mm", "\"5 mm 2 mm\"" + general},
      {"1/ in", "\"1/ in\"" + general},
      {".", "\".\"" + general},
      {"inf mm", "\"inf mm\"" + general},
      {"nan", "nan is not a length: a finite number"},
      {"-inf", "-inf is not a length: a finite number"},
      {"6.4 yd", "\"6.4 yd\" has the unit \"yd\": mm, cm, m, in or ft"},
      {"12mn", "\"12mn\" has the unit \"mn\": mm, cm, m, in or ft"},
      {"12,5 mm",
       "\"12,5 mm\" has a comma: write a decimal point, and no thousands "
       "mark"},
      {"1/4", "\"1/4\" has a fraction: it goes with in or ft, as in \"1/4 in\""},
      {"1/4 mm", "\"1/4 mm\" has a fraction: it goes with in or ft, as in \"1/4 in\""},
      {"1/0 in", "\"1/0 in\" divides by zero: 1/0"},
      {"4 9/8 in",
       "\"4 9/8 in\" has the fraction 9/8 after a whole number: less than "
       "1"},
      {"3' 4", "\"3' 4\" ends without a unit: write in or \" after the inches"},
      {"3 ft 12 in", "\"3 ft 12 in\" has 12 inches after the feet: less than 12"},
      {"1' 10 1-2\"",
       "\"1' 10 1-2\"\" has two numbers for the inches: a fraction is "
       "written 1/2"},
      {"3-4",
       "\"3-4\" has two parts: feet-inches-eighths has three, such as \"3-4-0\""},
      {"2-3-8", "\"2-3-8\" has 8 eighths: 0 to 7"},
      {"2-12-0", "\"2-12-0\" has 12 inches: 0 to 11"},
      {"1001 m", "\"1001 m\" is out of range: at most 1 km either way"},
      {"2e6", "2000000 is out of range: at most 1 km either way"},
      {"1e999 mm", "\"1e999 mm\" is out of range: at most 1 km either way"},
      {std::string("5\x01mm"), "\"5\\x01mm\"" + general},
      {std::string(50, 'x'), "\"" + std::string(40, 'x') + "...\"" + general},
  };
  for (const auto& row : rows) BOOST_TEST_CONTEXT(row.text) {
      const auto length = length_from_text(row.text, LengthUnit::Millimetres);
      BOOST_TEST_REQUIRE(!length.has_value());
      BOOST_TEST(length.error().size() == 1u);
      BOOST_TEST(length.error().front().message == row.message);
      BOOST_TEST(length.error().front().where == "");
    }
}

BOOST_AUTO_TEST_CASE(a_bare_number_from_elsewhere_meets_the_same_guards) {
  const double infinity = std::numeric_limits<double>::infinity();
  BOOST_TEST(!length_from_number(infinity, LengthUnit::Millimetres).has_value());
  BOOST_TEST(!length_from_number(std::nan(""), LengthUnit::Inches).has_value());
  // derived: 1 km is 39370.08 in
  BOOST_TEST(length_from_number(39370, LengthUnit::Inches).has_value());
  BOOST_TEST(!length_from_number(39371, LengthUnit::Inches).has_value());
}

BOOST_AUTO_TEST_CASE(a_length_is_shown_in_the_files_units) {
  BOOST_TEST(length_words(Length::mm(76.2), LengthUnit::Millimetres) == "76.2 mm");
  BOOST_TEST(length_words(Length::mm(76.2), LengthUnit::Inches) == "3 in");
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

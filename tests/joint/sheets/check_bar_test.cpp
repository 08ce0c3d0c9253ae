#include "joint/sheets/check_bar.h"

#include <algorithm>
#include <boost/test/unit_test.hpp>
#include <cmath>

#include "joint/sheets/pdf_file.h"
#include "tests/joint/sheets/read_back.h"

namespace sheerlap {
namespace {

std::string bars(LengthUnit unit) {
  auto bytes = pdf_bytes({"Bars"}, [&](PdfFile& file) {
    draw_check_bars(file.add_page(small_page(Paper::A4)), {40, 200}, unit);
  });
  BOOST_REQUIRE(bytes.has_value());
  return *bytes;
}

BOOST_AUTO_TEST_SUITE(check_bar)

BOOST_AUTO_TEST_CASE(check_bars_are_as_long_as_they_say_both_ways) {
  const struct {
    LengthUnit unit;
    double length;  // mm
    const char* says;
  } rows[] = {{LengthUnit::Millimetres, 100, "must be 100 mm"},
              {LengthUnit::Inches, 101.6, "must be 4 in"}};  // derived: 4 x 25.4
  for (const auto& row : rows) {
    const std::string pdf = bars(row.unit);
    const auto lines = lines_of_pdf(pdf);
    const auto is_bar = [&](double along, double across) {
      return std::abs(std::abs(along) - row.length) < 0.003 && std::abs(across) < 0.003;
    };
    BOOST_TEST(std::count_if(lines.begin(), lines.end(), [&](const auto& line) {
                 return is_bar(line.to_x - line.from_x, line.to_y - line.from_y);
               }) == 1);
    BOOST_TEST(std::count_if(lines.begin(), lines.end(), [&](const auto& line) {
                 return is_bar(line.to_y - line.from_y, line.to_x - line.from_x);
               }) == 1);
    const std::string text = text_of_pdf(pdf);
    BOOST_TEST(text.find(row.says) != std::string::npos);
    BOOST_TEST(text.find("print at 100 % (no fit to page)") != std::string::npos);
  }
}

BOOST_AUTO_TEST_CASE(both_ends_of_a_bar_are_ticked_longer_than_its_parts) {
  const auto lines = lines_of_pdf(bars(LengthUnit::Millimetres));
  int ends = 0, parts = 0;
  for (const DrawnLine& line : lines) {
    if (std::abs(line.to_x - line.from_x) > 0.003) continue;
    const double height = line.from_y - line.to_y;
    if (std::abs(height - 4) < 0.003) {
      BOOST_TEST(
          (std::abs(line.from_x - 40) < 0.003 || std::abs(line.from_x - 140) < 0.003));
      ++ends;
    } else if (std::abs(height - 2) < 0.003) {
      ++parts;
    }
  }
  BOOST_TEST(ends == 2);
  BOOST_TEST(parts == 9);  // derived: ten parts have nine ticks between them
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

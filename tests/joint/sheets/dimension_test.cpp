#include "joint/sheets/dimension.h"

#include <algorithm>
#include <boost/test/unit_test.hpp>
#include <cmath>

#include "joint/sheets/pdf_file.h"
#include "tests/joint/sheets/read_back.h"

namespace sheerlap {
namespace {

/// The lines of a page on which something is drawn.
std::vector<DrawnLine> lines_of(const std::function<void(Page&)>& draw) {
  auto bytes = pdf_bytes({"Dimension"}, [&](PdfFile& file) {
    draw(file.add_page(small_page(Paper::A4)));
  });
  BOOST_REQUIRE(bytes.has_value());
  return lines_of_pdf(*bytes);
}

bool has_line(const std::vector<DrawnLine>& lines, const DrawnLine& wanted) {
  const double near = 0.003;  // twice 1/256 of a point
  return std::any_of(lines.begin(), lines.end(), [&](const DrawnLine& line) {
    return std::abs(line.from_x - wanted.from_x) < near &&
           std::abs(line.from_y - wanted.from_y) < near &&
           std::abs(line.to_x - wanted.to_x) < near &&
           std::abs(line.to_y - wanted.to_y) < near;
  });
}

BOOST_AUTO_TEST_SUITE(dimensions)

BOOST_AUTO_TEST_CASE(a_level_dimension_is_of_the_distance_across) {
  const auto lines = lines_of([](Page& page) {
    draw_level_dimension(page, {{50, 80}, {90, 70}, "40"}, 100);
  });
  BOOST_TEST(has_line(lines, {50, 100, 90, 100}));
  // derived: from 0.8 off the point to 1.5 beyond the line
  BOOST_TEST(has_line(lines, {50, 80.8, 50, 101.5}));
  BOOST_TEST(has_line(lines, {90, 70.8, 90, 101.5}));
}

BOOST_AUTO_TEST_CASE(an_upright_dimension_is_of_the_distance_up) {
  const auto lines = lines_of([](Page& page) {
    draw_upright_dimension(page, {{50, 80}, {60, 120}, "40"}, 70);
  });
  BOOST_TEST(has_line(lines, {70, 80, 70, 120}));
  BOOST_TEST(has_line(lines, {50.8, 80, 71.5, 80}));
}

BOOST_AUTO_TEST_CASE(an_aligned_dimension_stands_to_the_left_of_its_way) {
  // derived: a 3-4-5 triangle; left of the way from (50, 90) to (80, 50), seen with y
  // down, is up and to the left: (-0.8, -0.6)
  const auto lines = lines_of([](Page& page) {
    draw_aligned_dimension(page, {{50, 90}, {80, 50}, "50"}, 10);
  });
  BOOST_TEST(has_line(lines, {42, 84, 72, 44}));
}

BOOST_AUTO_TEST_CASE(without_room_between_the_points_the_heads_stand_outside) {
  const auto lines = lines_of([](Page& page) {
    draw_level_dimension(page, {{50, 80}, {53, 80}, "wide words"}, 90);
  });
  BOOST_TEST(has_line(lines, {50, 90, 53, 90}));
  // the tails of 5 mm, each ending within its head
  BOOST_TEST(std::count_if(lines.begin(), lines.end(), [](const DrawnLine& line) {
               return std::abs(line.from_x - 45) < 0.003 ||
                      std::abs(line.from_x - 58) < 0.003;
             }) == 2);
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

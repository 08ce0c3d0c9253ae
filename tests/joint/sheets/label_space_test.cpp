#include "joint/sheets/label_space.h"

#include <boost/test/unit_test.hpp>
#include <cmath>

#include "joint/sheets/pdf_file.h"

namespace sheerlap {
namespace {

void on_a_page(const std::function<void(Page&)>& draw) {
  BOOST_REQUIRE(pdf_bytes({"Labels"}, [&](PdfFile& file) {
                  draw(file.add_page(small_page(Paper::A4)));
                }).has_value());
}

BOOST_AUTO_TEST_SUITE(label_space)

BOOST_AUTO_TEST_CASE(words_are_not_written_where_words_are) {
  on_a_page([](Page& page) {
    LabelSpace space({0, 0, 210, 297});
    BOOST_TEST(space.write(page, {50, 50}, "S01"));
    BOOST_TEST(!space.write(page, {51, 50}, "S02"));
    BOOST_TEST(space.write(page, {50, 60}, "S02"));
  });
}

BOOST_AUTO_TEST_CASE(words_are_not_written_over_the_edge_of_the_room) {
  on_a_page([](Page& page) {
    LabelSpace space({20, 10, 180, 250});
    BOOST_TEST(!space.write(page, {19, 50}, "S01"));
    BOOST_TEST(!space.write(page, {198, 50}, "S01"));
    BOOST_TEST(!space.write(page, {50, 11}, "S01"));
    BOOST_TEST(space.write(page, {50, 20}, "S01"));
  });
}

BOOST_AUTO_TEST_CASE(turned_words_take_the_room_of_turned_words) {
  on_a_page([](Page& page) {
    const Lettering upright{.height_mm = 2, .turn_degrees = 90};
    const Box box = text_box(page, {50, 50}, "wide words", upright);
    const double width = page.width_of("wide words", upright);
    // derived: a quarter turn takes the width up from the point; letters go left of it
    BOOST_TEST(std::abs(box.height - width) < 1e-9);
    BOOST_TEST(std::abs(box.bottom() - 50) < 1e-9);
    BOOST_TEST(std::abs(box.left - 48) < 1e-9);
  });
}

BOOST_AUTO_TEST_CASE(words_beside_a_point_go_to_the_first_spot_that_is_free) {
  on_a_page([](Page& page) {
    LabelSpace space({0, 0, 210, 297});
    const LabelSpots spots{{2, 6}, {0}};
    const auto first = space.write_beside(page, {50, 50}, {0, -1}, spots, "one");
    const auto second = space.write_beside(page, {50, 50}, {0, -1}, spots, "two");
    const auto third = space.write_beside(page, {50, 50}, {0, -1}, spots, "three");
    BOOST_TEST_REQUIRE(first.has_value());
    BOOST_TEST_REQUIRE(second.has_value());
    BOOST_TEST(!third.has_value());
    // derived: the words' middle line is a spot's distance and half a letter off
    BOOST_TEST(std::abs(50 - 2 - letter_height::least - first->top) < 1e-9);
    BOOST_TEST(std::abs(first->top - second->top - 4) < 1e-9);
    BOOST_TEST(!first->overlaps(*second));
  });
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

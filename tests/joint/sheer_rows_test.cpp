#include "joint/sheer_rows.h"

#include <boost/test/unit_test.hpp>

#include "tests/joint/example_joint.h"

namespace sheerlap {
namespace {

Sheer sheer_of(const std::vector<Point3>& points,
               bool half = true,
               bool closed = true) {
  Sheer sheer = example_joint(points, {}).sheer;
  sheer.half = half;
  sheer.closed = closed;
  return sheer;
}

BOOST_AUTO_TEST_SUITE(sheer_rows)

BOOST_AUTO_TEST_CASE(a_half_is_mirrored_to_run_bow_starboard_transom_port) {
  const auto sheer =
      sheer_points(sheer_of({{0, 0, 9}, {0, 5, 8}, {20, 6, 7}, {21, 0, 6}})).value();
  const std::vector<Point3> expected{{0, 0, 9},  {0, 5, 8},   {20, 6, 7},
                                     {21, 0, 6}, {20, -6, 7}, {0, -5, 8}};
  BOOST_TEST((sheer.points == expected));
  BOOST_TEST(sheer.closed);
  BOOST_TEST(sheer.bow == 0u);
  const std::size_t rows[] = {0, 1, 2, 3, 2, 1};
  for (std::size_t i = 0; i < 6; ++i) {
    BOOST_TEST(sheer.knots[i].row == rows[i]);
    BOOST_TEST(sheer.knots[i].mirrored == (i > 3));
  }
}

BOOST_AUTO_TEST_CASE(an_open_half_runs_from_its_port_end_by_way_of_the_bow) {
  const auto sheer =
      sheer_points(sheer_of({{0, 0, 9}, {0, 5, 8}, {20, 6, 7}}, true, false)).value();
  const std::vector<Point3> expected{
      {20, -6, 7}, {0, -5, 8}, {0, 0, 9}, {0, 5, 8}, {20, 6, 7}};
  BOOST_TEST((sheer.points == expected));
  BOOST_TEST(!sheer.closed);
  BOOST_TEST(sheer.bow == 2u);
}

BOOST_AUTO_TEST_CASE(a_whole_sheer_is_turned_to_run_clockwise_from_its_bow) {
  const std::vector<Point3> clockwise{{0, 0, 9}, {3, 5, 8}, {20, 6, 7}, {19, -6, 7}};
  const auto expected = sheer_points(sheer_of(clockwise, false)).value();
  BOOST_TEST((expected.points == clockwise));
  const std::vector<Point3> other{{0, 0, 9}, {19, -6, 7}, {20, 6, 7}, {3, 5, 8}};
  BOOST_TEST((sheer_points(sheer_of(other, false))->points == clockwise));
  const std::vector<Point3> bow_last{{3, 5, 8}, {20, 6, 7}, {19, -6, 7}, {0, 0, 9}};
  BOOST_TEST((sheer_points(sheer_of(bow_last, false))->points == clockwise));
}

BOOST_AUTO_TEST_CASE(what_is_wrong_with_the_rows_is_said_word_for_word) {
  const struct {
    std::vector<Point3> points;
    bool half, closed;
    const char* where;
    const char* message;
  } rows[] = {
      {{{0, 0, 0}}, true, true, "sheer.file", "the sheer table has 1 rows: at least 2"},
      {{{0, 0, 0}, {9, 0, 0}},
       true,
       true,
       "sheer.file",
       "the sheer encloses nothing: at least one row off the centreline"},
      {{{0, 100, 0}, {900, 300, 0}, {2000, 200, 0}},
       true,
       true,
       "sheer.row[0]",
       "the half sheer starts at y = 100.000 mm: it starts at the bow datum, on the "
       "centreline (y = 0)"},
      {{{0, 0, 0}, {900, 300, 0}, {2000, 200, 0}},
       true,
       true,
       "sheer.row[2]",
       "the closed half sheer ends at y = 200.000 mm: carry it on to the centreline (y "
       "= "
       "0), or say closed = false for a joint that stops at the transom corners"},
      {{{0, 0, 0}, {900, 300, 0}, {1200, 0, 0}, {2000, 200, 0}, {2000, 0, 0}},
       true,
       true,
       "sheer.row[2]",
       "the half sheer touches the centreline between its ends: y > 0 for every row "
       "but "
       "the first and the last"},
      {{{0, 0, 0}, {900, -300, 0}, {2000, -200, 0}, {2000, 0, 0}},
       true,
       true,
       "sheer.row[1]",
       "the half sheer is to port here, y = -300.000 mm: give the starboard half, y > "
       "0 "
       "for every row but those on the centreline"},
      {{{2000, 0, 0}, {900, 300, 0}, {0, 200, 0}},
       true,
       false,
       "sheer.row[0]",
       "the half sheer runs forward from its row on the centreline: x is measured aft, "
       "so "
       "that the bow datum has the least x"},
      {{{0, 10, 0}, {900, 300, 0}, {900, -300, 0}},
       false,
       true,
       "sheer.row[0]",
       "the whole sheer starts at y = 10.000 mm: its first row is the bow datum, on "
       "the "
       "centreline (y = 0)"},
      {{{2000, 0, 0}, {1900, -300, 0}, {0, 0, 0}, {1900, 300, 0}},
       false,
       true,
       "sheer.row[0]",
       "the whole sheer starts aft, at x = 2000.000 mm: its first row is the bow "
       "datum, "
       "and x is measured aft"},
      {{{0, 0, 0}, {900, 300, 0}, {900, 300, 50}, {2000, 0, 0}},
       true,
       true,
       "sheer.row[2]",
       "the row lies over its neighbour in plan: rows must be apart in x or y"},
      {{{0, 0, 0}, {900, 300, 0}, {900, -300, 0}, {0, 0, 0}},
       false,
       true,
       "sheer.row[3]",
       "the row lies over its neighbour in plan: rows must be apart in x or y"},
      {{{0, 0, 0}, {900, 300, 0}, {900, 900, 0}, {500, 50, 0}, {2000, 0, 0}},
       true,
       true,
       "sheer.row[0]",
       "the sheer crosses itself in plan: the stretch between rows 1 and 2 meets that "
       "between rows 3 and 4: rows run once round without crossing"},
  };
  for (const auto& row : rows) BOOST_TEST_CONTEXT(row.message) {
      const auto sheer = sheer_points(sheer_of(row.points, row.half, row.closed));
      BOOST_TEST_REQUIRE(!sheer.has_value());
      BOOST_TEST(sheer.error().size() == 1u);
      BOOST_TEST(sheer.error().front().where == row.where);
      BOOST_TEST(sheer.error().front().message == row.message);
    }
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

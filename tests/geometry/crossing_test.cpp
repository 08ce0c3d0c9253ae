#include "geometry/crossing.h"

#include <algorithm>
#include <boost/test/unit_test.hpp>
#include <chrono>
#include <cmath>
#include <cstdint>
#include <random>

#include "tests/geometry/example_curves.h"

namespace sheerlap {
namespace {

using Pair = std::pair<std::size_t, std::size_t>;

/// A point with whole coordinates, so that products of differences are exact.
struct Whole {
  std::int64_t x, y;
  bool operator==(const Whole&) const = default;
};

std::int64_t side_of(Whole a, Whole b, Whole c) {
  return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
}

int sign(std::int64_t value) { return value > 0 ? 1 : value < 0 ? -1 : 0; }

bool lies_on(Whole a, Whole b, Whole c) {
  return side_of(a, b, c) == 0 && std::min(a.x, b.x) <= c.x &&
         c.x <= std::max(a.x, b.x) && std::min(a.y, b.y) <= c.y &&
         c.y <= std::max(a.y, b.y);
}

bool segments_meet(Whole a, Whole b, Whole c, Whole d) {
  if (lies_on(a, b, c) || lies_on(a, b, d) || lies_on(c, d, a) || lies_on(c, d, b))
    return true;
  return sign(side_of(a, b, c)) != sign(side_of(a, b, d)) &&
         sign(side_of(c, d, a)) != sign(side_of(c, d, b));
}

/// Every pair of edges tried, with whole numbers only.
std::optional<Pair> crossing_by_brute_force(const std::vector<Whole>& points,
                                            bool closed) {
  const std::size_t n = points.size();
  const std::size_t count = closed ? n : n - 1;
  for (std::size_t j = 1; j < count; ++j)
    for (std::size_t i = 0; i < j; ++i) {
      const Whole a = points[i], b = points[i + 1];
      const Whole c = points[j], d = points[(j + 1) % n];
      bool meet = false;
      if (b == c && j == i + 1)  // neighbours: more than their common point
        meet = lies_on(a, b, d) || lies_on(c, d, a);
      else if (d == a && i == 0 && closed && j + 1 == n)
        meet = lies_on(a, b, c) || lies_on(c, d, b);
      else
        meet = segments_meet(a, b, c, d);
      if (meet) return Pair{i, j};
    }
  return std::nullopt;
}

BOOST_AUTO_TEST_SUITE(crossing)

BOOST_AUTO_TEST_CASE(crossings_are_those_found_by_trying_every_pair) {
  // derived: whole-number arithmetic on all pairs; on a small grid touching corners,
  // points on edges and overlaps in line are common
  std::mt19937 random(5);
  int crossed = 0;
  for (int trial = 0; trial < 20000; ++trial) {
    const bool closed = random() % 2 == 0;
    const std::size_t n = 3 + random() % 7;
    const auto grid = 2 + random() % 12;
    std::vector<Whole> points;
    while (points.size() < n) {
      const Whole next{static_cast<std::int64_t>(random() % grid),
                       static_cast<std::int64_t>(random() % grid)};
      if (!points.empty() && next == points.back()) continue;
      points.push_back(next);
    }
    if (closed && points.front() == points.back()) continue;
    std::vector<Point2> plan;
    for (const Whole& point : points)
      plan.emplace_back(static_cast<double>(point.x), static_cast<double>(point.y));
    const auto expected = crossing_by_brute_force(points, closed);
    BOOST_TEST_REQUIRE((crossing_edges(plan, closed) == expected));
    crossed += expected.has_value();
  }
  BOOST_TEST(crossed > 5000);  // the trial is of both kinds
  BOOST_TEST(crossed < 19000);
}

BOOST_AUTO_TEST_CASE(a_sheer_that_touches_itself_crosses_itself) {
  // derived: by eye
  const struct {
    std::vector<Point2> points;
    bool closed;
    std::optional<Pair> expected;
    const char* what;
  } rows[] = {
      {{{0, 0}, {2, 1}, {2, -1}}, true, std::nullopt, "a triangle"},
      {{{0, 0}, {2, 2}, {2, 0}, {0, 2}}, true, Pair{0, 2}, "a bow tie"},
      {{{0, 0}, {2, 2}, {2, 0}, {0, 2}}, false, Pair{0, 2}, "a bow tie left open"},
      {{{0, 0}, {4, 0}, {4, 4}, {2, 0}}, false, Pair{0, 2}, "an end upon an edge"},
      {{{0, 0}, {4, 0}, {2, 0}}, false, Pair{0, 1}, "straight back"},
      {{{2, 0}, {4, 0}, {4, 1}, {6, 0}}, true, Pair{0, 3}, "back over the first edge"},
      {{{0, 0}, {4, 0}, {4, 1}, {1, 0}, {0, 1}},
       false,
       Pair{0, 2},
       "a point on an edge"},
      {{{0, 0}, {1, 0}, {2, 0}, {3, 0}}, false, std::nullopt, "points in line"},
  };
  for (const auto& row : rows) BOOST_TEST_CONTEXT(row.what)
  BOOST_TEST((crossing_edges(row.points, row.closed) == row.expected));
}

BOOST_AUTO_TEST_CASE(a_scribble_is_found_out_at_once) {
  // property: of 100000 points at random nearly every two edges cross; trying them all
  // would take minutes
  std::mt19937 random(2);
  std::vector<Point2> plan;
  for (int i = 0; i < 100000; ++i)
    plan.emplace_back(static_cast<double>(random()), static_cast<double>(random()));
  const auto start = std::chrono::steady_clock::now();
  const auto crossing = crossing_edges(plan, true);
  const std::chrono::duration<double> taken = std::chrono::steady_clock::now() - start;
  BOOST_TEST_REQUIRE(crossing.has_value());
  BOOST_TEST(crossing->second < 20u);
  BOOST_TEST(taken.count() < 1);
}

BOOST_AUTO_TEST_CASE(a_hundred_thousand_points_take_less_than_a_second) {
  std::vector<Point2> plan;
  for (const Point3& point : ellipse_points(3200, 1200, 100000))
    plan.push_back(point.head<2>());
  const auto start = std::chrono::steady_clock::now();
  BOOST_TEST(!crossing_edges(plan, true).has_value());
  std::swap(plan[50000], plan[50001]);
  BOOST_TEST(crossing_edges(plan, true).has_value());
  const std::chrono::duration<double> taken = std::chrono::steady_clock::now() - start;
  BOOST_TEST(taken.count() < 1);  // about 0.1 s; a quadratic test would take minutes
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

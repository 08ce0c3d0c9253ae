#include "geometry/crossing.h"

#include <CGAL/Exact_predicates_inexact_constructions_kernel.h>
#include <CGAL/box_intersection_d.h>
#include <CGAL/intersections.h>

#include <algorithm>

namespace sheerlap {
namespace {

using Kernel = CGAL::Exact_predicates_inexact_constructions_kernel;
using Edge = Kernel::Segment_2;
using Box = CGAL::Box_intersection_d::Box_with_info_d<double, 2, std::size_t>;

/// Whether two edges that share a point have another in common.
bool fold_back(const Edge& before, const Edge& after) {
  return CGAL::orientation(before.source(), before.target(), after.target()) ==
             CGAL::COLLINEAR &&
         CGAL::angle(before.source(), before.target(), after.target()) == CGAL::ACUTE;
}

/// The crossing among the first `tried` edges.
std::optional<std::pair<std::size_t, std::size_t>> crossing_among(
    const std::vector<Edge>& edges, std::size_t tried, bool closed) {
  std::vector<Box> boxes;
  boxes.reserve(tried);
  for (std::size_t i = 0; i < tried; ++i) boxes.emplace_back(edges[i].bbox(), i);
  std::optional<std::pair<std::size_t, std::size_t>> first;
  const auto consider = [&](const Box& one, const Box& other) {
    const auto [i, j] = std::minmax({one.info(), other.info()});
    if (first && std::pair(j, i) >= std::pair(first->second, first->first)) return;
    const bool neighbours = j == i + 1;
    const bool round_the_end = closed && i == 0 && j + 1 == edges.size();
    const bool meet = neighbours      ? fold_back(edges[i], edges[j])
                      : round_the_end ? fold_back(edges[j], edges[i])
                                      : CGAL::do_intersect(edges[i], edges[j]);
    if (meet) first = {i, j};
  };
  CGAL::box_self_intersection_d(boxes.begin(), boxes.end(), consider);
  return first;
}

}  // namespace

std::optional<std::pair<std::size_t, std::size_t>> crossing_edges(
    const std::vector<Point2>& points, bool closed) {
  const std::size_t n = points.size();
  const std::size_t count = closed ? n : n - 1;
  std::vector<Edge> edges;
  edges.reserve(count);
  for (std::size_t i = 0; i < count; ++i) {
    const Point2& a = points[i];
    const Point2& b = points[(i + 1) % n];
    edges.emplace_back(Kernel::Point_2(a.x(), a.y()), Kernel::Point_2(b.x(), b.y()));
  }
  // ever longer stretches from the start, so that a scribble, of which nearly every two
  // edges cross, is not tried out to its end
  for (std::size_t tried = std::min<std::size_t>(count, 1000);;
       tried = std::min(2 * tried, count)) {
    const auto first = crossing_among(edges, tried, closed);
    if (first || tried == count) return first;
  }
}

}  // namespace sheerlap

#include "joint/sheets/plan_line.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "joint/documents/number_style.h"

namespace sheerlap {
namespace {

double distance_to_segment(const Point2& point, const Point2& from, const Point2& to) {
  const Vector2 along = to - from;
  const double square = along.squaredNorm();
  const double share =
      square > 0 ? std::clamp((point - from).dot(along) / square, 0.0, 1.0) : 0.0;
  return (from + share * along - point).norm();
}

}  // namespace

std::vector<Point2> simplified(const std::vector<Point2>& points, double within) {
  if (points.size() < 3) return points;
  std::vector<bool> kept(points.size(), false);
  kept.front() = kept.back() = true;
  std::vector<std::pair<std::size_t, std::size_t>> open{{0, points.size() - 1}};
  while (!open.empty()) {
    const auto [from, to] = open.back();
    open.pop_back();
    std::size_t furthest = from;
    double most = within;
    for (std::size_t i = from + 1; i < to; ++i) {
      const double away = distance_to_segment(points[i], points[from], points[to]);
      if (away <= most) continue;
      most = away;
      furthest = i;
    }
    if (furthest == from) continue;
    kept[furthest] = true;
    open.emplace_back(from, furthest);
    open.emplace_back(furthest, to);
  }
  std::vector<Point2> result;
  for (std::size_t i = 0; i < points.size(); ++i)
    if (kept[i]) result.push_back(points[i]);
  return result;
}

std::vector<Length> girths_along(const SideLine& line, const PlanStretch& stretch) {
  const Curve& curve = line.line().face().curve();
  std::vector<Length> girths{stretch.from};
  for (std::size_t k = 0; k < line.path().span_count; ++k) {
    const Length start = std::max(stretch.from, line.girth_at_span(k));
    const Length stop = std::min(stretch.to, line.girth_at_span(k + 1));
    if (!(stop > start)) continue;
    const double bend = curve.bend(line.path().span(k, curve.spans()));
    const double run_mm = (stop - start).in_mm() + std::abs(stretch.outboard_mm);
    // an arc cut in n has a rise of run * bend / (8 n^2)
    const double cuts = std::ceil(std::sqrt(run_mm * bend / (8 * stretch.within_mm)));
    for (double i = 1; i <= std::max(1.0, cuts); ++i)
      girths.push_back(start + (stop - start) * (i / std::max(1.0, cuts)));
  }
  return girths;
}

PlanPoint plan_point(const SideLine& line, Length girth) {
  const FacePoint at = line.line().at(line.place_at(girth));
  return {at.point.head<2>(), at.normal.head<2>().normalized()};
}

std::vector<Point2> plan_line(const SideLine& line, const PlanStretch& stretch) {
  std::vector<Point2> points;
  for (const Length girth : girths_along(line, stretch)) {
    const PlanPoint at = plan_point(line, girth);
    points.push_back(at.point + stretch.outboard_mm * at.outboard);
  }
  return simplified(points, stretch.within_mm);
}

Point2 drawn_point(const Point2& point) { return {point.x(), -point.y()}; }

std::string path_data(const std::vector<Point2>& points, int count) {
  std::string data;
  for (const Point2& point : points)
    data += (data.empty() ? "M" : "L") + at_most_decimals(point.x(), count) + " " +
            at_most_decimals(point.y(), count);
  return data;
}

}  // namespace sheerlap

#include "joint/sheer_rows.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "geometry/crossing.h"

namespace sheerlap {
namespace {

constexpr double on_centreline_mm = 1e-6;

bool on_centreline(const SheerRow& row) {
  return std::abs(row.point.y()) <= on_centreline_mm;
}

std::string row_address(std::size_t row) { return fmt::format("sheer.row[{}]", row); }

void add_point(SheerPoints& sheer,
               const std::vector<SheerRow>& rows,
               std::size_t row,
               bool mirrored) {
  Point3 point = rows[row].point;
  if (on_centreline(rows[row])) point.y() = 0;
  if (mirrored) point.y() = -point.y();
  sheer.points.push_back(point);
  sheer.knots.push_back({row, mirrored, false, rows[row].knuckle});
}

/// The rows' numbers from the bow aft.
std::vector<std::size_t> from_the_bow(const std::vector<SheerRow>& rows) {
  std::vector<std::size_t> order(rows.size());
  for (std::size_t i = 0; i < rows.size(); ++i) order[i] = i;
  const SheerRow& first = rows.front();
  const SheerRow& last = rows.back();
  const bool bow_last = on_centreline(last) &&
                        (!on_centreline(first) || last.point.x() < first.point.x());
  if (bow_last) std::reverse(order.begin(), order.end());
  return order;
}

Result<SheerPoints> half_points(const Sheer& sheer) {
  const auto& rows = sheer.rows;
  const auto order = from_the_bow(rows);
  if (!on_centreline(rows[order.front()]))
    return invalid_input(
        row_address(order.front()),
        fmt::format("the half sheer starts at y = {:.3f} mm: it starts "
                    "at the bow datum, on the centreline (y = 0)",
                    rows[order.front()].point.y()));
  SheerPoints result;
  result.closed = on_centreline(rows[order.back()]);
  if (!result.closed && sheer.closed)
    return invalid_input(
        row_address(order.back()),
        fmt::format("the closed half sheer ends at y = {:.3f} mm: carry it on to the "
                    "centreline (y = 0), or say closed = false for a joint that stops "
                    "at the transom corners",
                    rows[order.back()].point.y()));
  if (!result.closed && !(rows[order.front()].point.x() < rows[order.back()].point.x()))
    return invalid_input(
        row_address(order.front()),
        "the half sheer runs forward from its row on the centreline: x "
        "is measured aft, so that the bow datum has the least x");
  for (const std::size_t row : order) {
    if (rows[row].point.y() < -on_centreline_mm)
      return invalid_input(
          row_address(row),
          fmt::format(
              "the half sheer is to port here, y = {:.3f} mm: give the starboard "
              "half, y > 0 for every row but those on the centreline",
              rows[row].point.y()));
    const bool end = row == order.front() || row == order.back();
    if (on_centreline(rows[row]) && !end)
      return invalid_input(row_address(row),
                           "the half sheer touches the centreline between its ends: "
                           "y > 0 for every row but the first and the last");
  }
  if (!result.closed)
    for (std::size_t i = order.size() - 1; i > 0; --i)
      add_point(result, rows, order[i], true);
  result.bow = result.points.size();
  for (const std::size_t row : order) add_point(result, rows, row, false);
  if (result.closed)
    for (std::size_t i = order.size() - 2; i > 0; --i)
      add_point(result, rows, order[i], true);
  return result;
}

double signed_area(const std::vector<SheerRow>& rows) {
  double twice = 0;
  for (std::size_t i = 0; i < rows.size(); ++i) {
    const Point3& a = rows[i].point;
    const Point3& b = rows[(i + 1) % rows.size()].point;
    twice += a.x() * b.y() - a.y() * b.x();
  }
  return twice / 2;
}

Result<SheerPoints> whole_points(const Sheer& sheer) {
  const auto& rows = sheer.rows;
  std::vector<std::size_t> order(rows.size());
  for (std::size_t i = 0; i < rows.size(); ++i) order[i] = i;
  if (signed_area(rows) > 0) std::reverse(order.begin(), order.end());
  const auto forward = [&](std::size_t a, std::size_t b) {
    return rows[a].point.x() < rows[b].point.x();
  };
  const std::size_t ends[] = {0, rows.size() - 1};
  const std::size_t bow_row = *std::min_element(ends, ends + 2, [&](auto a, auto b) {
    if (on_centreline(rows[a]) != on_centreline(rows[b])) return on_centreline(rows[a]);
    return forward(a, b);
  });
  if (!on_centreline(rows[bow_row]))
    return invalid_input(row_address(0),
                         fmt::format("the whole sheer starts at y = {:.3f} mm: its "
                                     "first row is the bow datum, on the centreline "
                                     "(y = 0)",
                                     rows[0].point.y()));
  const auto [foremost, aftmost] =
      std::minmax_element(order.begin(), order.end(), forward);
  if (2 * rows[bow_row].point.x() >
      rows[*foremost].point.x() + rows[*aftmost].point.x())
    return invalid_input(
        row_address(bow_row),
        fmt::format(
            "the whole sheer starts aft, at x = {:.3f} mm: its first row is the "
            "bow datum, and x is measured aft",
            rows[bow_row].point.x()));
  std::rotate(order.begin(), std::find(order.begin(), order.end(), bow_row),
              order.end());
  SheerPoints result;
  for (const std::size_t row : order) add_point(result, rows, row, false);
  return result;
}

Errors faults(const SheerPoints& sheer) {
  Errors errors;
  const std::size_t n = sheer.points.size();
  std::vector<Point2> plan(n);
  for (std::size_t i = 0; i < n; ++i) plan[i] = sheer.points[i].head<2>();
  for (std::size_t i = 0; i < (sheer.closed ? n : n - 1); ++i) {
    const std::size_t next = (i + 1) % n;
    if (sheer.knots[i].mirrored || (plan[i] - plan[next]).norm() > 1e-6) continue;
    errors.push_back({ErrorKind::InvalidInput,
                      row_address(std::max(sheer.knots[i].row, sheer.knots[next].row)),
                      "the row lies over its neighbour in plan: rows must be apart in "
                      "x or y"});
  }
  if (!errors.empty()) return errors;
  if (const auto pair = crossing_edges(plan, sheer.closed)) {
    const auto edge = [&](std::size_t i) {
      const SheerKnot& a = sheer.knots[i];
      const SheerKnot& b = sheer.knots[(i + 1) % n];
      return fmt::format("rows {} and {}{}", std::min(a.row, b.row) + 1,
                         std::max(a.row, b.row) + 1,
                         a.mirrored || b.mirrored ? " (port)" : "");
    };
    errors.push_back({ErrorKind::InvalidInput,
                      row_address(sheer.knots[pair->first].row),
                      fmt::format("the sheer crosses itself in plan: the stretch "
                                  "between {} meets that between {}: rows run once "
                                  "round without crossing",
                                  edge(pair->first), edge(pair->second))});
  }
  return errors;
}

}  // namespace

Result<SheerPoints> sheer_points(const Sheer& sheer) {
  const std::size_t least = sheer.half ? 2 : 3;
  if (sheer.rows.size() < least)
    return invalid_input("sheer.file",
                         fmt::format("the sheer table has {} rows: at least {}",
                                     sheer.rows.size(), least));
  auto points = sheer.half ? half_points(sheer) : whole_points(sheer);
  if (!points) return points;
  if (points->closed && points->points.size() < 3)
    return invalid_input("sheer.file",
                         "the sheer encloses nothing: at least one row off the "
                         "centreline");
  Errors errors = faults(*points);
  if (!errors.empty()) return tl::unexpected(std::move(errors));
  return points;
}

}  // namespace sheerlap

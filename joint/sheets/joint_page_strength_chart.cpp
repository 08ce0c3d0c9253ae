#include "joint/sheets/joint_page_strength_chart.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "joint/sheets/html_text.h"
#include "joint/sheets/pen.h"
#include "joint/sheets/plan_line.h"
#include "joint/sheets/short_text.h"
#include "joint/sheets/strength_words.h"

namespace sheerlap {
namespace {

/// The frame of a chart, in its own units.
constexpr double left = 58, right = 800, width = 840;
constexpr double plot_top = 14, plot_low = 174, band = 20, letter = 7.2;
constexpr std::size_t longest_name = 40;

std::string coordinate(double value) { return at_most_decimals(value, 1); }

std::string straight(const char* kind, Point2 from, Point2 to) {
  return fmt::format("<path class=\"{}\" d=\"{}\"/>\n", kind, path_data({from, to}, 1));
}

std::string words(const char* kind, double x, double y, const std::string& text) {
  return fmt::format("<text class=\"{}\" x=\"{}\" y=\"{}\">{}</text>\n", kind,
                     coordinate(x), coordinate(y), html_text(text));
}

std::string rectangle(const char* kind, Point2 from, Point2 to) {
  return fmt::format(
      "<rect class=\"{}\" x=\"{}\" y=\"{}\" width=\"{}\" height=\"{}\"/>\n", kind,
      coordinate(from.x()), coordinate(from.y()), coordinate(to.x() - from.x()),
      coordinate(to.y() - from.y()));
}

const char* class_of(BondMode mode) {
  switch (mode) {
    case BondMode::AdhesiveShear:
    case BondMode::NoBondLine:
      return "use-line";
    case BondMode::AdhesivePeel:
      return "use-line peel";
    case BondMode::LaminateShear:
      return "use-line plies";
    case BondMode::LaminateThrough:
      break;
  }
  return "use-line through";
}

/// How lengths and uses come to stand in a chart.
struct Chart {
  const BondCourse& course;
  UseAxis axis;

  double x(Length girth) const {
    return left + (right - left) * (girth / course.side->sheer_length);
  }
  double y(double use) const {
    return plot_low - (plot_low - plot_top) * std::min(use, axis.top) / axis.top;
  }
};

std::string use_marks(const Chart& chart) {
  std::string svg;
  for (double use = 0; use < chart.axis.top + 1e-9; use += chart.axis.step) {
    svg += straight("grid", {left, chart.y(use)}, {right, chart.y(use)});
    svg += words("before", left - 7, chart.y(use) + 4, at_most_decimals(use, 1));
  }
  svg += straight("window", {left, chart.y(1)}, {right, chart.y(1)});
  svg += words("", right + 5, chart.y(1) + 4, "limit");
  return svg + words("upright", -(plot_top + plot_low) / 2, 16, "use of 1");
}

std::string girth_marks(const Chart& chart, const NumberStyle& style) {
  std::string svg;
  const Length whole = chart.course.side->sheer_length;
  const Length step = girth_step(whole, style.unit());
  for (double i = 0; step * i <= whole + step * 1e-9; ++i)
    svg +=
        straight("grid", {chart.x(step * i), plot_top}, {chart.x(step * i), plot_low}) +
        words("middle", chart.x(step * i), plot_low + 17, style.size(step * i));
  return svg;
}

std::string ground(const Chart& chart) {
  std::string svg;
  for (const CourseStretch& opening : chart.course.openings) {
    const double from = chart.x(opening.from), to = chart.x(opening.to);
    svg += rectangle("no-joint", {from, plot_top}, {to, plot_low});
    svg += words("middle", (from + to) / 2, (plot_top + plot_low) / 2,
                 "opening: " + short_text(opening.what, longest_name));
  }
  for (const Length jump : chart.course.jumps)
    svg += straight("jump", {chart.x(jump), plot_top}, {chart.x(jump), plot_low});
  return svg;
}

std::string line(const Chart& chart) {
  std::string svg;
  for (const CourseRun& run : chart.course.runs) {
    std::vector<Point2> points;
    for (const CourseRun::Point& point : run.points)
      points.emplace_back(chart.x(point.girth), chart.y(point.use));
    svg += fmt::format("<path class=\"{}\" d=\"{}\"><title>{}</title></path>\n",
                       class_of(run.mode), path_data(points, 1), mode_words(run.mode));
    for (const CourseRun::Point& point : run.points)
      if (!std::isfinite(point.use))
        svg += words("verdict", chart.x(point.girth), plot_top + 12, "X");
  }
  return svg;
}

/// A row or more of stretches below the plot, moved down by what they take.
std::string stretches(const Chart& chart,
                      const std::vector<CourseStretch>& all,
                      const char* name,
                      double& top) {
  if (all.empty()) return "";
  const auto run_of = [](const CourseStretch& one) {
    return letter * static_cast<double>(short_text(one.what, longest_name).size() + 2);
  };
  // a name stands behind its stretch, before it, or on it
  const auto place = [&](const CourseStretch& one) {
    if (chart.x(one.to) + run_of(one) < width) return Across::Left;
    return chart.x(one.from) - run_of(one) > left ? Across::Right : Across::Centre;
  };
  std::vector<std::pair<double, double>> extents;
  for (const CourseStretch& one : all)
    extents.emplace_back(
        chart.x(one.from) - (place(one) == Across::Right ? run_of(one) : 4),
        chart.x(one.to) + (place(one) == Across::Left ? run_of(one) : 4));
  const auto rows = rows_apart(extents);
  std::string svg = words("before", left - 7, top + band / 2 + 4, name);
  for (std::size_t i = 0; i < all.size(); ++i) {
    const double y = top + band * (static_cast<double>(rows[i]) + 0.5);
    const double from = chart.x(all[i].from), to = chart.x(all[i].to);
    svg += straight("stretch", {from, y}, {std::max(to, from + 1), y});
    svg += straight("stretch-end", {from, y - 5}, {from, y + 5});
    svg += straight("stretch-end", {to, y - 5}, {to, y + 5});
    const Across where = place(all[i]);
    svg += words(where == Across::Left    ? ""
                 : where == Across::Right ? "before"
                                          : "middle on-stretch",
                 where == Across::Left    ? to + 6
                 : where == Across::Right ? from - 6
                                          : (from + to) / 2,
                 y + 4, short_text(all[i].what, longest_name));
  }
  top += band * static_cast<double>(1 + *std::max_element(rows.begin(), rows.end()));
  return svg;
}

std::string worst_mark(const Chart& chart, const BondPoint& worst) {
  if (worst.side != chart.course.side->name) return "";
  const double x = chart.x(worst.girth), y = chart.y(worst.utilisation);
  const bool before = x > (left + right) / 2;
  return fmt::format("<circle class=\"worst\" cx=\"{}\" cy=\"{}\" r=\"5\"/>\n",
                     coordinate(x), coordinate(y)) +
         words(before ? "on-line worst-words" : "on-start worst-words",
               x + (before ? -9 : 9), y < plot_top + 20 ? y + 18 : y - 8,
               "worst, " + use_words(worst.utilisation));
}

}  // namespace

std::string use_chart(const BondCourse& course,
                      UseAxis axis,
                      const BondPoint& worst,
                      const NumberStyle& style) {
  const Chart chart{course, axis};
  double top = plot_low + 24;
  std::string svg = ground(chart) + use_marks(chart) + girth_marks(chart, style) +
                    line(chart) + worst_mark(chart, worst);
  svg += stretches(chart, course.loads, "load", top);
  svg += stretches(chart, course.wedges, "gap", top);
  svg += words("middle", (left + right) / 2, top + 14,
               fmt::format("girth along the sheer, the hull's trimmed top edge, {}",
                           style.unit_name()));
  return fmt::format(
             "<svg class=\"chart use\" viewBox=\"0 0 {} {}\" role=\"img\" "
             "aria-label=\"Use of the bond along the girth, {}\">\n",
             width, coordinate(top + 22), side_word(course.side->name)) +
         svg + "</svg>\n";
}

}  // namespace sheerlap

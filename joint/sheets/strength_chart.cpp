#include "joint/sheets/strength_chart.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "joint/documents/wording.h"
#include "joint/sheets/bond_course.h"
#include "joint/sheets/short_text.h"
#include "joint/sheets/strength_words.h"
#include "joint/sheets/use_plot.h"

namespace sheerlap {
namespace {

constexpr double band_mm = 4.2;           // a row below the plot
constexpr double marks_mm = 5;            // of the axis of girth
constexpr std::size_t longest_name = 44;  // characters
constexpr std::size_t most_rows = 20;

Dash dash_of(BondMode mode) {
  switch (mode) {
    case BondMode::AdhesiveShear:
    case BondMode::NoBondLine:
      return Dash::Solid;
    case BondMode::AdhesivePeel:
      return Dash::Dashed;
    case BondMode::LaminateShear:
      return Dash::Chain;
    case BondMode::LaminateThrough:
      break;
  }
  return Dash::DoubleChain;
}

/// The chart of one side.
class BondChart {
 public:
  BondChart(UsePlot plot, const BondCourse& course) : plot_(plot), course_(course) {}

  void draw_ground() const {
    draw_use_axis(plot_);
    for (const CourseStretch& opening : course_.openings) {
      const Box hole{x(opening.from), plot_.box.top, x(opening.to) - x(opening.from),
                     plot_.box.height};
      plot_.page.hatch(hole.corners(), {.spacing_mm = 2.5}, {.width_mm = 0.13});
      plot_.page.box(hole);
      Lettering words = least_lettering(Across::Centre);
      words.clears_ground = true;
      plot_.page.fitted(hole.centre(),
                        "opening: " + short_text(opening.what, longest_name),
                        std::max(hole.width - 2, 8.0), words);
    }
    for (const Length jump : course_.jumps)
      plot_.page.line({x(jump), plot_.box.top}, {x(jump), plot_.box.bottom()},
                      {.width_mm = line_width::thin, .dash = Dash::DoubleChain});
  }

  void draw_course() const {
    draw_use_limit(plot_);
    for (const CourseRun& run : course_.runs) {
      std::vector<Point2> points;
      for (const CourseRun::Point& point : run.points)
        points.emplace_back(x(point.girth), plot_.y(point.use));
      plot_.page.polyline(points,
                          {.width_mm = line_width::thick, .dash = dash_of(run.mode)});
      for (const CourseRun::Point& point : run.points)
        if (!std::isfinite(point.use))
          plot_.page.text({x(point.girth), plot_.box.top + 2}, "X",
                          least_lettering(Across::Centre));
    }
  }

  void draw_worst(const BondPoint& worst) const {
    const Point2 at(x(worst.girth), plot_.y(worst.utilisation));
    plot_.page.circle(at, 1.4, {.width_mm = line_width::medium});
    const bool left = at.x() > plot_.box.centre().x();
    Lettering words = least_lettering(left ? Across::Right : Across::Left);
    words.bold = true;
    words.clears_ground = true;
    const double down = at.y() < plot_.box.top + 4 ? 3.2 : -3.2;
    plot_.page.text({at.x() + (left ? -2.2 : 2.2), at.y() + down},
                    "worst, " + use_words(worst.utilisation), words);
  }

  void draw_girths(const NumberStyle& style) const {
    const Length whole = course_.side->sheer_length;
    const Length step = girth_step(whole, style.unit());
    for (double i = 0; step * i <= whole + step * 1e-9; ++i) {
      const double at = x(step * i);
      plot_.page.line({at, plot_.box.bottom()}, {at, plot_.box.bottom() + 1});
      plot_.page.text({at, plot_.box.bottom() + 1.6}, style.size(step * i),
                      least_lettering(Across::Centre, Upright::Top));
    }
  }

  /// How many rows stretches take.
  std::size_t rows(const std::vector<CourseStretch>& stretches) const {
    const auto all = rows_of(stretches);
    return all.empty()
               ? 0
               : std::min(*std::max_element(all.begin(), all.end()) + 1, most_rows);
  }

  /// Stretches with their names beside them, from `top` down; those for which there
  /// are not rows enough are left out.
  void draw_stretches(const std::vector<CourseStretch>& stretches,
                      const std::string& name,
                      double top) const {
    const auto all = rows_of(stretches);
    for (std::size_t i = 0; i < stretches.size(); ++i)
      if (all[i] < most_rows)
        draw_stretch(stretches[i], top + band_mm * (static_cast<double>(all[i]) + 0.5));
    if (!stretches.empty())
      plot_.page.text({plot_.box.left - 1.2, top + band_mm / 2}, name,
                      least_lettering(Across::Right));
  }

 private:
  double x(Length girth) const {
    return plot_.box.left + plot_.box.width * (girth / course_.side->sheer_length);
  }
  std::string name_of(const CourseStretch& one) const {
    return short_text(one.what, longest_name);
  }
  double name_mm(const CourseStretch& one) const {
    return plot_.page.width_of(name_of(one), least_lettering()) + 1.2;
  }
  /// Where a name stands at its stretch: behind it, before it, or on it.
  Across name_place(const CourseStretch& one) const {
    if (x(one.to) + name_mm(one) < plot_.box.right()) return Across::Left;
    return x(one.from) - name_mm(one) > plot_.box.left ? Across::Right : Across::Centre;
  }
  std::vector<std::size_t> rows_of(const std::vector<CourseStretch>& stretches) const {
    std::vector<std::pair<double, double>> extents;
    for (const CourseStretch& one : stretches) {
      const Across place = name_place(one);
      const double name = name_mm(one) + 2;
      extents.emplace_back(x(one.from) - (place == Across::Right ? name : 2),
                           x(one.to) + (place == Across::Left ? name : 2));
    }
    return rows_apart(extents);
  }
  void draw_stretch(const CourseStretch& one, double y) const {
    const double from = x(one.from), to = x(one.to);
    plot_.page.line({from, y}, {std::max(to, from + 0.3), y},
                    {.width_mm = line_width::heavy});
    for (const double at : {from, to})
      plot_.page.line({at, y - 1}, {at, y + 1}, {.width_mm = line_width::medium});
    const Across place = name_place(one);
    Lettering words = least_lettering(place);
    words.clears_ground = place == Across::Centre;
    const double at = place == Across::Left    ? to + 1.2
                      : place == Across::Right ? from - 1.2
                                               : (from + to) / 2;
    plot_.page.text({at, y}, name_of(one), words);
  }

  UsePlot plot_;
  const BondCourse& course_;
};

void draw_side(SheetFlow& flow,
               const BondCourse& course,
               UseAxis axis,
               const Job& job,
               const NumberStyle& style) {
  const BondChart measured({flow.page(), use_plot_box(flow.room()), axis}, course);
  const double below =
      marks_mm + band_mm * static_cast<double>(measured.rows(course.loads) +
                                               measured.rows(course.wedges));
  const UsePlot plot =
      start_use_plot(flow, capitalised(side_word(course.side->name)), axis, below);
  const BondChart chart(plot, course);
  chart.draw_ground();
  chart.draw_course();
  const BondPoint& worst = job.strength->bond.worst;
  if (worst.side == course.side->name) chart.draw_worst(worst);
  chart.draw_girths(style);
  const double top = plot.box.bottom() + marks_mm;
  chart.draw_stretches(course.loads, "load", top);
  chart.draw_stretches(course.wedges, "gap",
                       top + band_mm * static_cast<double>(chart.rows(course.loads)));
  end_use_plot(flow, plot.box.bottom() + below);
}

}  // namespace

void draw_bond_use(SheetFlow& flow, const Job& job, const NumberStyle& style) {
  std::vector<double> uses;
  for (const BondPoint& point : job.strength->bond.along)
    uses.push_back(point.utilisation);
  const UseAxis axis = use_axis(uses);
  constexpr double heading_and_chart_mm = 80;
  flow.need(heading_and_chart_mm);
  flow.heading("Use of the bond along the girth");
  flow.paragraph(
      fmt::format(
          "Girth along the sheer, the hull's trimmed top edge, {}: starboard and port "
          "from the bow datum aft, the transom from its starboard corner. Heavy "
          "dashes: "
          "1, all there is. The line is drawn by what gives first: full, {}; dashes, "
          "{}; "
          "chain, {}; chain of two dots, {}; X, {}. Chain across: the load jumps. Uses "
          "over {} are drawn at the top.",
          style.unit_name(), mode_words(BondMode::AdhesiveShear),
          mode_words(BondMode::AdhesivePeel), mode_words(BondMode::LaminateShear),
          mode_words(BondMode::LaminateThrough), mode_words(BondMode::NoBondLine),
          at_most_decimals(axis.top, 1)),
      least_lettering());
  for (const BondCourse& course : bond_courses(job))
    draw_side(flow, course, axis, job, style);
}

}  // namespace sheerlap

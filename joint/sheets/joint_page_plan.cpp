#include "joint/sheets/joint_page_plan.h"

#include <fmt/format.h>

#include <Eigen/Geometry>
#include <algorithm>
#include <cmath>
#include <numbers>

#include "joint/documents/text_table.h"
#include "joint/documents/wording.h"
#include "joint/layout_stretches.h"
#include "joint/sheets/html_text.h"
#include "joint/sheets/plan_line.h"
#include "joint/sheets/short_text.h"
#include "joint/side_ends.h"

namespace sheerlap {
namespace {

/// Keeps names in a drawing apart.
class NameRoom {
 public:
  /// Whether a name as high as `letter` along a segment is clear of all before it; it
  /// then counts from now on.
  bool take(const Point2& from, const Point2& to, double letter) {
    constexpr int steps = 12;
    std::vector<Point2> points;
    for (int i = 0; i <= steps; ++i)
      points.push_back(from + (to - from) * (static_cast<double>(i) / steps));
    for (const Point2& taken : taken_)
      for (const Point2& point : points)
        if ((taken - point).norm() < letter) return false;
    taken_.insert(taken_.end(), points.begin(), points.end());
    return true;
  }

 private:
  std::vector<Point2> taken_;
};

/// What the parts of a plan have in common; sizes in mm of the boat.
struct Plan {
  const Job& job;
  const NumberStyle& style;
  Eigen::AlignedBox2d box;  ///< of the drill line as drawn
  double letter_mm = 0;     ///< height of the lettering
  double within_mm = 0;     ///< how true the lines are
  NameRoom names;           ///< taken by names so far
};

Plan make_plan(const Job& job, const NumberStyle& style) {
  Plan plan{job, style, {}, 0, 0, {}};
  for (const PerimeterSide& side : job.perimeter.sides)
    for (const Point2& point :
         plan_line(side.drill_line, {Length(), side.drill_line_length, 0, 1}))
      plan.box.extend(drawn_point(point));
  const double extent = std::max(plan.box.sizes().x(), 2 * plan.box.sizes().y());
  plan.letter_mm = extent / 108;
  plan.within_mm = extent / 20000;
  return plan;
}

std::string coordinate(double value) { return at_most_decimals(value, 3); }

std::vector<Point2> drawn(const std::vector<Point2>& points) {
  std::vector<Point2> result;
  for (const Point2& point : points) result.push_back(drawn_point(point));
  return result;
}

std::string line(const Plan& plan,
                 const SideLine& along,
                 const PlanStretch& stretch,
                 const std::string& kind) {
  const PlanStretch true_stretch{stretch.from, stretch.to, stretch.outboard_mm,
                                 plan.within_mm};
  return fmt::format("<path class=\"{}\" d=\"{}\"/>\n", kind,
                     path_data(drawn(plan_line(along, true_stretch)), 1));
}

/// A band of even width along a side's drill line.
std::string band(const Plan& plan,
                 const PerimeterSide& side,
                 Length from,
                 Length to,
                 const std::string& kind) {
  const double half_mm = 0.8 * plan.letter_mm;
  auto outline = plan_line(side.drill_line, {from, to, half_mm, plan.within_mm});
  const auto back = plan_line(side.drill_line, {from, to, -half_mm, plan.within_mm});
  outline.insert(outline.end(), back.rbegin(), back.rend());
  return fmt::format("<path class=\"{}\" d=\"{}Z\"/>", kind,
                     path_data(drawn(outline), 1));
}

/// Lettering that runs away from a line, outboard or inboard of it, from left to right
/// or upwards.
std::string lettering(const Plan& plan,
                      const PlanPoint& at,
                      double outboard_mm,
                      const std::string& text,
                      const std::string& kind) {
  const Point2 place = drawn_point(at.point + outboard_mm * at.outboard);
  const Vector2 way = drawn_point(std::copysign(1, outboard_mm) * at.outboard);
  double angle = std::atan2(way.y(), way.x()) * 180 / std::numbers::pi;
  const bool turned = angle <= -135 || angle > 45;
  if (turned) angle += angle > 0 ? -180 : 180;
  return fmt::format(
      "<text class=\"{}\" transform=\"translate({} {}) rotate({})\" dy=\"{}\"{}>{}"
      "</text>",
      kind, coordinate(place.x()), coordinate(place.y()), at_most_decimals(angle, 1),
      at_most_decimals(0.35 * plan.letter_mm, 1), turned ? " text-anchor=\"end\"" : "",
      html_text(text));
}

/// A name inboard of a stretch of the drill line, moved along it to where there is
/// room; none where there is not.
std::string name(Plan& plan,
                 const PerimeterSide& side,
                 Length middle,
                 const std::string& text) {
  const double inboard_mm = 3.3 * plan.letter_mm;
  const double run_mm = 0.5 * plan.letter_mm * static_cast<double>(width_of(text));
  for (const double shift : {0.0, 1.2, -1.2, 2.4, -2.4, 3.6, -3.6}) {
    const Length girth = middle + Length::mm(shift * plan.letter_mm);
    if (girth < Length() || girth > side.drill_line_length) continue;
    const PlanPoint at = plan_point(side.drill_line, girth);
    const Point2 from = at.point - inboard_mm * at.outboard;
    if (plan.names.take(from, from - run_mm * at.outboard, plan.letter_mm))
      return lettering(plan, at, -inboard_mm, text, "name") + "\n";
  }
  return "";
}

std::string outlines(Plan& plan, const PerimeterSide& side) {
  std::string svg = line(plan, side.sheer, {Length(), side.sheer_length}, "sheer");
  Length from;
  for (const OpeningSpan& opening : side.openings) {
    svg += line(plan, side.drill_line, {from, opening.from}, "drill-line");
    svg += line(plan, side.drill_line, {opening.from, opening.to}, "opening");
    const Length middle = (opening.from + opening.to) / 2;
    svg += name(plan, side, middle, "opening: " + short_text(opening.what, 18));
    from = opening.to;
  }
  return svg +
         line(plan, side.drill_line, {from, side.drill_line_length}, "drill-line");
}

std::string keepouts(const Plan& plan, const PerimeterSide& side) {
  std::string svg;
  const auto ground = layout_ground(plan.job.joint, plan.job.perimeter, side);
  for (const Obstacle& obstacle : ground->named.obstacles) {
    const Length end = side.drill_line_length;
    const Length from = std::clamp(obstacle.from, Length(), end);
    const Length to = std::clamp(obstacle.to, Length(), end);
    const Length bare_from = std::clamp(obstacle.from + obstacle.clear, Length(), end);
    const Length bare_to = std::clamp(obstacle.to - obstacle.clear, Length(), end);
    svg +=
        fmt::format("<g><title>{}</title>{}", html_text("keep-out: " + obstacle.what),
                    band(plan, side, from, to, "clearance"));
    if (bare_to > bare_from) svg += band(plan, side, bare_from, bare_to, "keepout");
    svg += "</g>\n";
  }
  return svg;
}

/// The names of a side's keep-outs: of those with a clearance, or of the rest.
std::string keepout_names(Plan& plan, const PerimeterSide& side, bool with_clearance) {
  std::string svg;
  const auto ground = layout_ground(plan.job.joint, plan.job.perimeter, side);
  for (const Obstacle& obstacle : ground->named.obstacles) {
    const Length from = std::max(obstacle.from + obstacle.clear, Length());
    const Length to = std::min(obstacle.to - obstacle.clear, side.drill_line_length);
    if ((obstacle.clear > Length()) == with_clearance && to > from)
      svg += name(plan, side, (from + to) / 2, short_text(obstacle.what, 20));
  }
  return svg;
}

std::string corners(const Plan& plan, const PerimeterSide& side) {
  std::vector<std::pair<Length, std::string>> found;
  if (side.start == SideEnd::Corner) found.emplace_back(Length(), start_word(side));
  if (side.end == SideEnd::Corner)
    found.emplace_back(side.drill_line_length, end_word(side));
  for (const InnerCorner& corner : side.corners)
    found.emplace_back(corner.girth, "corner on " + side_word(side.name));
  std::string svg;
  const double half_mm = 0.5 * plan.letter_mm;
  for (const auto& [girth, name] : found) {
    const Point2 at = drawn_point(plan_point(side.drill_line, girth).point);
    svg += fmt::format(
        "<path class=\"corner\" d=\"M{0} {2}L{1} {3}L{0} {4}L{5} {3}Z\"><title>{6}"
        "</title></path>\n",
        coordinate(at.x()), coordinate(at.x() + half_mm), coordinate(at.y() - half_mm),
        coordinate(at.y()), coordinate(at.y() + half_mm), coordinate(at.x() - half_mm),
        html_text(name));
  }
  return svg;
}

std::string fit_stretches(Plan& plan, const PerimeterSide& side) {
  if (!plan.job.fit) return "";
  std::string svg;
  const double inboard_mm = -1.7 * plan.letter_mm;
  for (const FitRun& run :
       drawn_runs(*plan.job.fit, side.name, Length::mm(plan.letter_mm / 4))) {
    svg += line(plan, side.sheer, {run.from, run.to, inboard_mm},
                "fit " + word_of(run.verdict));
    const PlanPoint at = plan_point(side.sheer, (run.from + run.to) / 2);
    const Point2 place = drawn_point(at.point + inboard_mm * at.outboard);
    svg += fmt::format(
        "<text class=\"verdict\" x=\"{}\" y=\"{}\">{}</text>\n", coordinate(place.x()),
        coordinate(place.y() + 0.35 * plan.letter_mm), verdict_letter(run.verdict));
  }
  return svg;
}

std::string hole(const Plan& plan, const PageHole& hole, bool lettered) {
  const DrillStation& station = *hole.station;
  const double letter = plan.letter_mm;
  const Point2 at = drawn_point(station.point.head<2>());
  const std::string centre =
      fmt::format("cx=\"{}\" cy=\"{}\"", coordinate(at.x()), coordinate(at.y()));
  const PlanPoint on_line{station.point.head<2>(),
                          -station.axis.head<2>().normalized()};
  return fmt::format(
      "<g class=\"hole{}\" data-mark=\"{}\" role=\"option\" tabindex=\"-1\" "
      "aria-selected=\"false\" aria-label=\"{}\"><circle class=\"reach\" {} r=\"{}\"/>"
      "<circle class=\"ring\" {} r=\"{}\"/><circle class=\"dot\" {} r=\"{}\"/>{}</g>\n",
      drillable(station) ? "" : " forbidden", station.mark,
      fmt::format("{}, {}, girth {} {}", station.mark, side_word(station.side),
                  plan.style.running(station.girth), plan.style.unit_name()),
      centre, at_most_decimals(0.9 * letter, 1), centre,
      at_most_decimals(0.62 * letter, 1), centre, at_most_decimals(0.33 * letter, 1),
      lettering(plan, on_line, 1.05 * letter, station.mark,
                lettered ? "mark" : "mark quiet"));
}

/// The holes; a mark is written where there is room for it beside the one before.
std::string all_holes(const Plan& plan, const std::vector<PageHole>& holes) {
  std::string svg;
  Point2 written(1e300, 1e300);
  for (const PageHole& one : holes) {
    const Point2 at = one.station->point.head<2>();
    const bool room = !((at - written).norm() < 1.05 * plan.letter_mm);
    if (room) written = at;
    svg += hole(plan, one, room);
  }
  return svg;
}

std::string scale_bar(const Plan& plan) {
  const Length unit =
      plan.style.unit() == LengthUnit::Millimetres ? Length::mm(1) : Length::inches(12);
  const double most = plan.box.sizes().x() / 6 / unit.in_mm();
  double count = std::pow(10, std::floor(std::log10(most)));
  for (const double factor : {5.0, 2.0})
    if (count * factor <= most) {
      count *= factor;
      break;
    }
  const Length length = unit * count;
  const double left = plan.box.min().x();
  const double down = plan.box.max().y() + 5.6 * plan.letter_mm;
  return fmt::format(
      "<path class=\"scale\" d=\"M{0} {2}v{4}h{1}v-{4}\"/><text x=\"{3}\" "
      "y=\"{5}\">{6} "
      "in plan</text>\n",
      coordinate(left), coordinate(length.in_mm()),
      coordinate(down - 0.5 * plan.letter_mm),
      coordinate(left + length.in_mm() + 0.6 * plan.letter_mm),
      coordinate(0.5 * plan.letter_mm), coordinate(down + 0.2 * plan.letter_mm),
      html_text(plan.style.size_with_unit(length)));
}

std::string side_names(const Plan& plan) {
  const Point2 centre = plan.box.center();
  const double up = 0.14 * plan.box.sizes().y();
  const double letter = plan.letter_mm;
  std::string svg = fmt::format("<path class=\"centreline\" d=\"M{} 0H{}\"/>\n",
                                coordinate(plan.box.min().x() - 3 * letter),
                                coordinate(plan.box.max().x() + 2 * letter));
  const auto write = [&](double x, double y, const std::string& text) {
    svg += fmt::format("<text class=\"side\" x=\"{}\" y=\"{}\">{}</text>\n",
                       coordinate(x), coordinate(y), text);
  };
  write(centre.x(), -up + 0.5 * letter, "STARBOARD");
  write(centre.x(), up + 0.5 * letter, "PORT");
  write(plan.box.min().x() - 6 * letter, 0.35 * letter, "BOW");
  if (plan.job.perimeter.side(SideName::Transom))
    svg += fmt::format(
        "<text class=\"side\" transform=\"translate({} {}) rotate(-90)\">TRANSOM"
        "</text>\n",
        coordinate(plan.box.max().x() - 16 * letter), coordinate(0.3 * up));
  return svg;
}

/// Hatching for keep-outs, to the size of the lettering.
std::string hatching(const Plan& plan) {
  const std::string step = at_most_decimals(0.42 * plan.letter_mm, 1);
  return fmt::format(
      "<defs><pattern id=\"hatch\" width=\"{0}\" height=\"{0}\" "
      "patternUnits=\"userSpaceOnUse\" patternTransform=\"rotate(45)\"><path "
      "d=\"M0 0V{0}\" stroke=\"#000\" stroke-width=\"{1}\"/></pattern></defs>\n",
      step, at_most_decimals(0.14 * plan.letter_mm, 1));
}

}  // namespace

char verdict_letter(FitVerdict verdict) {
  switch (verdict) {
    case FitVerdict::Good:
      return 'G';
    case FitVerdict::Tight:
      return 'T';
    case FitVerdict::Wide:
      return 'W';
    case FitVerdict::Interference:
      break;
  }
  return 'X';
}

std::vector<FitRun> drawn_runs(const Fit& fit, SideName side, Length shortest) {
  std::vector<FitRun> runs;
  for (const FitRun& run : fit.runs) {
    if (run.side != side) continue;
    const bool joins =
        !runs.empty() && std::abs((runs.back().to - run.from).in_mm()) < 1e-3 &&
        (run.to - run.from < shortest || runs.back().to - runs.back().from < shortest ||
         runs.back().verdict == run.verdict);
    if (!joins) {
      runs.push_back(run);
      continue;
    }
    runs.back().to = run.to;
    // the verdicts are in the order of their weight
    runs.back().verdict = std::max(runs.back().verdict, run.verdict);
  }
  return runs;
}

std::string plan_svg(const Job& job,
                     const std::vector<PageHole>& holes,
                     const NumberStyle& style) {
  Plan plan = make_plan(job, style);
  const double letter = plan.letter_mm;
  const Point2 from = plan.box.min() - Vector2(9 * letter, 5 * letter);
  const Vector2 size = plan.box.sizes() + Vector2(15 * letter, 12 * letter);
  std::string svg = fmt::format(
      "<svg class=\"plan\" viewBox=\"{} {} {} {}\" font-size=\"{}\" role=\"group\" "
      "aria-label=\"Plan of the joint\">\n",
      coordinate(from.x()), coordinate(from.y()), coordinate(size.x()),
      coordinate(size.y()), at_most_decimals(letter, 1));
  svg += hatching(plan) + side_names(plan);
  for (const PerimeterSide& side : job.perimeter.sides)
    svg += keepouts(plan, side) + fit_stretches(plan, side) + outlines(plan, side) +
           corners(plan, side);
  for (const bool with_clearance : {true, false})
    for (const PerimeterSide& side : job.perimeter.sides)
      svg += keepout_names(plan, side, with_clearance);
  return svg + scale_bar(plan) +
         "<g class=\"roving\" role=\"listbox\" aria-label=\"Holes in plan\">\n" +
         all_holes(plan, holes) + "</g>\n</svg>\n";
}

}  // namespace sheerlap

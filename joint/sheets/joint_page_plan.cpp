#include "joint/sheets/joint_page_plan.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "joint/layout_stretches.h"
#include "joint/sheets/html_text.h"
#include "joint/sheets/joint_page_drawing.h"
#include "joint/sheets/joint_page_fit.h"
#include "joint/sheets/plan_line.h"
#include "joint/sheets/short_text.h"
#include "joint/side_ends.h"

namespace sheerlap {
namespace {

std::string outlines(PlanDrawing& plan, const PerimeterSide& side) {
  std::string svg = plan_path(plan, side.sheer, {Length(), side.sheer_length}, "sheer");
  Length from;
  for (const OpeningSpan& opening : side.openings) {
    svg += plan_path(plan, side.drill_line, {from, opening.from}, "drill-line");
    svg += plan_path(plan, side.drill_line, {opening.from, opening.to}, "opening");
    const Length middle = (opening.from + opening.to) / 2;
    svg += plan_name(plan, side, middle, "opening: " + short_text(opening.what, 18),
                     NamePlace::Inboard);
    from = opening.to;
  }
  return svg +
         plan_path(plan, side.drill_line, {from, side.drill_line_length}, "drill-line");
}

/// A keep-out without its clearance, on its side.
std::pair<Length, Length> bare(const Obstacle& obstacle, const PerimeterSide& side) {
  const Length end = side.drill_line_length;
  return {std::clamp(obstacle.from + obstacle.clear, Length(), end),
          std::clamp(obstacle.to - obstacle.clear, Length(), end)};
}

std::string keepouts(const PlanDrawing& plan,
                     const PerimeterSide& side,
                     const std::vector<Obstacle>& obstacles) {
  std::string svg;
  for (const Obstacle& obstacle : obstacles) {
    const Length end = side.drill_line_length;
    const auto [from, to] = bare(obstacle, side);
    svg += fmt::format("<g><title>{}</title>{}",
                       html_text((obstacle.bend ? "" : "keep-out: ") +
                                 keepout_name(plan.job, obstacle, plan.style)),
                       plan_band(plan, side, std::clamp(obstacle.from, Length(), end),
                                 std::clamp(obstacle.to, Length(), end), "clearance"));
    if (to > from)
      svg += plan_band(plan, side, from, to, obstacle.bend ? "bend" : "keepout");
    svg += "</g>\n";
  }
  return svg;
}

/// The names of a side's keep-outs: of those with a clearance, or of the rest.
std::string keepout_names(PlanDrawing& plan,
                          const PerimeterSide& side,
                          const std::vector<Obstacle>& obstacles,
                          bool with_clearance) {
  std::string svg;
  for (const Obstacle& obstacle : obstacles) {
    const auto [from, to] = bare(obstacle, side);
    if ((obstacle.clear > Length()) == with_clearance && to > from)
      svg += plan_name(
          plan, side, (from + to) / 2,
          short_text(keepout_name(plan.job, obstacle, plan.style),
                     obstacle.bend ? 40 : 20),
          with_clearance ? NamePlace::InboardOrBeyondTheMarks : NamePlace::Inboard);
  }
  return svg;
}

std::string corners(const PlanDrawing& plan, const PerimeterSide& side) {
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

std::string hole(const PlanDrawing& plan, const PageHole& hole, bool lettered) {
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
      centre, at_most_decimals(letter, 1), centre, at_most_decimals(0.62 * letter, 1),
      centre, at_most_decimals(0.33 * letter, 1),
      lettering(plan, on_line, 1.05 * letter, station.mark,
                lettered ? "mark" : "mark quiet"));
}

/// The holes; a mark is written where there is room for it beside the one before.
std::string all_holes(const PlanDrawing& plan, const std::vector<PageHole>& holes) {
  std::string svg;
  Point2 written(1e300, 1e300);
  for (const PageHole& one : holes) {
    const Point2 at = one.station->point.head<2>();
    const bool room = !((at - written).norm() < 0.85 * plan.letter_mm);
    if (room) written = at;
    svg += hole(plan, one, room);
  }
  return svg;
}

std::string scale_bar(const PlanDrawing& plan) {
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

std::string side_names(PlanDrawing& plan) {
  const Point2 centre = plan.box.center();
  const double up = 0.14 * plan.box.sizes().y();
  const double letter = plan.letter_mm;
  std::string svg = fmt::format("<path class=\"centreline\" d=\"M{} 0H{}\"/>\n",
                                coordinate(plan.box.min().x() - 3 * letter),
                                coordinate(plan.box.max().x() + 2 * letter));
  const auto write = [&](double x, double y, const std::string& text) {
    const double half_mm = 0.55 * letter * static_cast<double>(text.size());
    plan.names.take({x - half_mm, 0.5 * letter - y}, {x + half_mm, 0.5 * letter - y},
                    letter);
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
std::string hatching(const PlanDrawing& plan) {
  const std::string step = at_most_decimals(0.42 * plan.letter_mm, 1);
  return fmt::format(
      "<defs><pattern id=\"hatch\" width=\"{0}\" height=\"{0}\" "
      "patternUnits=\"userSpaceOnUse\" patternTransform=\"rotate(45)\"><path "
      "d=\"M0 0V{0}\" stroke=\"#000\" stroke-width=\"{1}\"/></pattern></defs>\n",
      step, at_most_decimals(0.14 * plan.letter_mm, 1));
}

/// The start of the drawing, with room for all that is in it.
std::string opening_tag(const PlanDrawing& plan) {
  const double letter = plan.letter_mm;
  Eigen::AlignedBox2d view(plan.box.min() - Vector2(9 * letter, 5 * letter),
                           plan.box.max() + Vector2(6 * letter, 7 * letter));
  if (!plan.names_box.isEmpty()) {
    view.extend(plan.names_box.min() - Vector2(letter, letter));
    view.extend(plan.names_box.max() + Vector2(letter, letter));
  }
  return fmt::format(
      "<svg class=\"plan\" viewBox=\"{} {} {} {}\" font-size=\"{}\" role=\"group\" "
      "aria-label=\"Plan of the joint\">\n",
      coordinate(view.min().x()), coordinate(view.min().y()),
      coordinate(view.sizes().x()), coordinate(view.sizes().y()),
      at_most_decimals(letter, 1));
}

}  // namespace

std::string bend_legend(const Job& job, const NumberStyle& style) {
  for (const PerimeterSide& side : job.perimeter.sides)
    for (const Obstacle& obstacle : joined_keepouts(job, side, Length()))
      if (obstacle.bend)
        return fmt::format(
            "<li><svg viewBox=\"0 0 44 14\" aria-hidden=\"true\"><path class=\"bend\" "
            "d=\"M0 1H44V13H0Z\"/></svg> {}: kept free of holes like a keep-out; "
            "nobody "
            "enters it, it follows from <code>layout.radius_min</code> and the drill "
            "line</li>\n",
            html_text(keepout_name(job, obstacle, style)));
  return "";
}

std::string plan_svg(const Job& job,
                     const std::vector<PageHole>& holes,
                     const NumberStyle& style) {
  PlanDrawing plan = plan_drawing(job, style);
  std::string svg = hatching(plan) + side_names(plan);
  std::vector<std::vector<Obstacle>> obstacles;
  for (const PerimeterSide& side : job.perimeter.sides) {
    obstacles.push_back(joined_keepouts(job, side, Length::mm(plan.letter_mm / 4)));
    svg += keepouts(plan, side, obstacles.back()) + fit_stretches(plan, side) +
           outlines(plan, side) + corners(plan, side);
  }
  for (const bool with_clearance : {true, false})
    for (std::size_t i = 0; i < obstacles.size(); ++i)
      svg += keepout_names(plan, job.perimeter.sides[i], obstacles[i], with_clearance);
  return opening_tag(plan) + svg + scale_bar(plan) +
         "<g class=\"roving\" role=\"listbox\" aria-label=\"Holes in plan\">\n" +
         all_holes(plan, holes) + "</g>\n</svg>\n";
}

}  // namespace sheerlap

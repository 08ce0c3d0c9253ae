#include "joint/sheets/joint_page_charts.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "joint/documents/wording.h"
#include "joint/gap_profile.h"
#include "joint/sheets/html_text.h"
#include "joint/sheets/joint_page_beads.h"
#include "joint/sheets/joint_page_fit.h"
#include "joint/sheets/plan_line.h"

namespace sheerlap {
namespace {

/// The frame of a chart, in its own units.
constexpr double left = 58, right = 764, width = 840;
constexpr double fit_line = 22, gap_top = 34, gap_low = 214, hole_line = 240;
constexpr double bead_top = 278, bead_low = 338, height = 382;

/// A chart, and how lengths come to stand in it.
struct Chart {
  const Job& job;
  const PerimeterSide& side;
  const NumberStyle& style;
  Length least;     ///< of the gap axis
  Length greatest;  ///< likewise

  double x(Length girth) const {
    return left + (right - left) * (girth / side.sheer_length);
  }
  double y(Length gap) const {
    return gap_low - (gap_low - gap_top) * ((gap - least) / (greatest - least));
  }
};

std::string coordinate(double value) { return at_most_decimals(value, 1); }

/// 1, 2 or 5 times a power of ten of the unit, about a `parts`-th of a length.
Length tick_step(Length whole, double parts, const NumberStyle& style) {
  const Length unit =
      style.unit() == LengthUnit::Millimetres ? Length::mm(1) : Length::inches(1);
  const double rough = whole / unit / parts;
  const double power = std::pow(10, std::floor(std::log10(rough)));
  for (const double factor : {1.0, 2.0, 5.0})
    if (factor * power >= rough) return unit * (factor * power);
  return unit * (10 * power);
}

std::string straight(const char* kind, Point2 from, Point2 to) {
  return fmt::format("<path class=\"{}\" d=\"{}\"/>\n", kind, path_data({from, to}, 1));
}

std::string words(const char* kind, double x, double y, const std::string& text) {
  return fmt::format("<text class=\"{}\" x=\"{}\" y=\"{}\">{}</text>\n", kind,
                     coordinate(x), coordinate(y), html_text(text));
}

std::string axes(const Chart& chart) {
  std::string svg;
  const Length gap_step = tick_step(chart.greatest - chart.least, 6, chart.style);
  const auto ticks = [](Length from, Length to, Length step) {
    std::vector<Length> at;
    for (double i = std::ceil(from / step - 1e-9); step * i <= to + step * 1e-9; ++i)
      at.push_back(step * i);
    return at;
  };
  for (const Length gap : ticks(chart.least, chart.greatest, gap_step)) {
    const double y = chart.y(gap);
    svg += straight("grid", {left, y}, {right, y}) +
           words("before", left - 7, y + 4, chart.style.size(gap));
  }
  const Length length = chart.side.sheer_length;
  for (const Length girth : ticks(Length(), length, tick_step(length, 8, chart.style)))
    svg += straight("grid", {chart.x(girth), gap_top}, {chart.x(girth), bead_low}) +
           words("middle", chart.x(girth), bead_low + 17, chart.style.size(girth));
  svg += words("middle", (left + right) / 2, height - 6,
               fmt::format("girth along the sheer, the hull's trimmed top edge, {}",
                           chart.style.unit_name()));
  return svg + words("upright", -(gap_top + gap_low) / 2, 16,
                     fmt::format("gap, {}", chart.style.unit_name()));
}

std::string window(const Chart& chart) {
  const Adhesive& adhesive = *chart.job.joint.adhesive;
  std::string svg;
  for (const auto& [gap, name] : {std::pair{adhesive.gap_min, "least"},
                                  std::pair{adhesive.gap_max, "greatest"}}) {
    const double y = chart.y(gap);
    svg += straight("window", {left, y}, {right, y}) +
           words("on-line", right - 6, y - 4,
                 fmt::format("the adhesive's {} gap, {}", name,
                             chart.style.size_with_unit(gap)));
  }
  return svg;
}

std::string openings(const Chart& chart) {
  std::string svg;
  for (const OpeningSpan& opening : chart.side.openings) {
    const double from = chart.x(opening.sheer_from), to = chart.x(opening.sheer_to);
    svg += fmt::format(
        "<rect class=\"no-joint\" x=\"{}\" y=\"{}\" width=\"{}\" height=\"{}\"/>\n",
        coordinate(from), coordinate(gap_top), coordinate(to - from),
        coordinate(bead_low - gap_top));
    svg += words("middle", (from + to) / 2, (gap_top + gap_low) / 2,
                 "opening: " + opening.what);
  }
  return svg;
}

/// One curve of the gap, a path for each strand of the joint.
std::string curve(const Chart& chart,
                  const std::vector<GapSection>& sections,
                  double GapSection::*gap_mm,
                  const char* kind) {
  std::string data;
  std::vector<Point2> points;
  for (std::size_t i = 0; i < sections.size(); ++i) {
    const GapSection& at = sections[i];
    points.emplace_back(chart.x(Length::mm(at.girth_mm)),
                        chart.y(Length::mm(at.*gap_mm)));
    if (i + 1 < sections.size() && sections[i + 1].strand == at.strand) continue;
    data += path_data(simplified(points, 0.15), 2);
    points.clear();
  }
  return fmt::format("<path class=\"gap {}\" d=\"{}\"/>\n", kind, data);
}

/// The names of the curves behind their ends, moved apart where they would run into
/// each other.
std::string curve_names(const Chart& chart, const GapSection& end) {
  std::vector<std::pair<double, const char*>> names{
      {chart.y(Length::mm(end.low_mm)), "low edge"},
      {chart.y(Length::mm(end.middle_mm)), "middle"},
      {chart.y(Length::mm(end.top_mm)), "hull top"}};
  std::stable_sort(names.begin(), names.end(),
                   [](const auto& a, const auto& b) { return a.first < b.first; });
  for (std::size_t i = 1; i < names.size(); ++i)
    names[i].first = std::max(names[i].first, names[i - 1].first + 15);
  std::string svg;
  for (const auto& [y, name] : names) svg += words("", right + 6, y + 4, name);
  return svg;
}

std::string verdicts(const Chart& chart) {
  std::string svg;
  const Length shortest = chart.side.sheer_length / 400;
  for (const FitRun& run : drawn_runs(*chart.job.fit, chart.side.name, shortest)) {
    const double from = chart.x(run.from), to = chart.x(run.to);
    svg += fmt::format("<path class=\"fit {}\" d=\"{}\"/>\n", word_of(run.verdict),
                       path_data({{from, fit_line}, {to, fit_line}}, 1));
    svg += words("verdict", (from + to) / 2, fit_line - 6,
                 std::string(1, verdict_letter(run.verdict)));
  }
  return svg + words("before", left - 7, fit_line + 4, "fit");
}

std::string beads(const Chart& chart) {
  if (!chart.job.adhesive) return "";
  const auto runs =
      drawn_beads(*chart.job.adhesive, chart.side.name, chart.side.sheer_length / 1000);
  Length largest = Length::mm(1);
  for (const BeadRun& run : runs) largest = std::max(largest, run.size);
  std::string svg = words("before", left - 7, (bead_top + bead_low) / 2, "bead") +
                    words("before", left - 7, (bead_top + bead_low) / 2 + 15,
                          chart.style.unit_name());
  for (const BeadRun& run : runs) {
    const double from = chart.x(run.from), to = chart.x(run.to);
    const double y = bead_low - (bead_low - bead_top) * (run.size / largest);
    const std::string name = bead_name(run, chart.style);
    svg += fmt::format(
        "<rect class=\"bead\" x=\"{}\" y=\"{}\" width=\"{}\" height=\"{}\"><title>{} "
        "to "
        "{} {}: {} bead</title></rect>\n",
        coordinate(from), coordinate(y), coordinate(to - from),
        coordinate(bead_low - y), chart.style.running(run.from),
        chart.style.running(run.to), chart.style.unit_name(), name);
    if (to - from > 8.0 * static_cast<double>(name.size()) + 4)
      svg += words("middle", (from + to) / 2, std::max(y, bead_top) + 15, name);
  }
  return svg;
}

std::string holes(const Chart& chart, const std::vector<PageHole>& all) {
  std::string svg = words("before", left - 7, hole_line + 4, "holes");
  svg += fmt::format(
      "<g class=\"roving\" role=\"listbox\" aria-label=\"Holes along the girth, "
      "{}\">\n",
      side_word(chart.side.name));
  for (const PageHole& hole : all) {
    const DrillStation& station = *hole.station;
    if (station.side != chart.side.name) continue;
    const std::string x = coordinate(chart.x(hole.sheer_girth));
    svg += fmt::format(
        "<g class=\"hole{0}\" data-mark=\"{1}\" role=\"option\" tabindex=\"-1\" "
        "aria-selected=\"false\" aria-label=\"{1}, girth along the sheer {2} "
        "{3}\"><path "
        "class=\"line\" d=\"M{4} {5}V{6}\"/><rect class=\"reach\" x=\"{7}\" y=\"{8}\" "
        "width=\"9\" height=\"28\"/><rect class=\"ring\" x=\"{7}\" y=\"{8}\" "
        "width=\"9\" "
        "height=\"28\"/><path class=\"tick\" d=\"M{4} {9}v16\"/><text class=\"mark "
        "quiet\" x=\"{4}\" y=\"{10}\">{1}</text></g>\n",
        drillable(station) ? "" : " forbidden", station.mark,
        chart.style.running(hole.sheer_girth), chart.style.unit_name(), x, gap_top,
        bead_low, coordinate(chart.x(hole.sheer_girth) - 4.5), hole_line - 14,
        hole_line - 8, hole_line + 29);
  }
  return svg + "</g>\n";
}

Chart make_chart(const Job& job,
                 const PerimeterSide& side,
                 const std::vector<GapSection>& sections,
                 const NumberStyle& style) {
  Length least, greatest = job.joint.adhesive->gap_max;
  for (const GapSection& section : sections) {
    least = std::min(least, Length::mm(section.least.gap_mm));
    greatest = std::max(greatest, Length::mm(section.greatest.gap_mm));
  }
  const Length step = tick_step(greatest - least, 6, style);
  return {job, side, style, step * std::floor(least / step),
          greatest + (greatest - least) * 0.06};
}

/// Sections along a side need be no closer for the eye; rows are all looked at.
constexpr double step_mm = 10;

}  // namespace

std::string side_chart(const Job& job,
                       const PerimeterSide& side,
                       const std::vector<PageHole>& holes_of_job,
                       const NumberStyle& style) {
  const auto sections = GapProfile(job.perimeter, side).sections(step_mm);
  if (sections.empty()) return "";
  const Chart chart = make_chart(job, side, sections, style);
  std::string svg = fmt::format(
      "<svg class=\"chart\" viewBox=\"0 0 {} {}\" role=\"group\" aria-label=\"Gap, "
      "beads "
      "and holes along the girth, {}\">\n",
      width, height, side_word(side.name));
  svg += axes(chart) + openings(chart) + window(chart) + verdicts(chart) + beads(chart);
  svg += curve(chart, sections, &GapSection::top_mm, "top");
  svg += curve(chart, sections, &GapSection::middle_mm, "middle-lap");
  svg += curve(chart, sections, &GapSection::low_mm, "low");
  return svg + curve_names(chart, sections.back()) + holes(chart, holes_of_job) +
         "</svg>\n";
}

}  // namespace sheerlap

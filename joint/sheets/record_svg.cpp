#include "joint/sheets/record_svg.h"

#include <fmt/format.h>

#include <algorithm>
#include <set>

#include "joint/documents/record_words.h"
#include "joint/documents/wording.h"
#include "joint/sheets/chart_panel.h"
#include "joint/sheets/short_text.h"

namespace sheerlap {
namespace {

const char* const sheet_head =
    "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"210mm\" height=\"148mm\" "
    "viewBox=\"0 0 210 148\">\n<style>\n"
    "text { font: 2.7px sans-serif }\n.title { font: 4px sans-serif }\n"
    ".frame, .thin { fill: none; stroke: black; stroke-width: 0.18 }\n"
    ".line { fill: none; stroke: black; stroke-width: 0.25 }\n"
    ".point { fill: white; stroke: black; stroke-width: 0.2 }\n"
    ".mean { stroke: black; stroke-width: 0.35 }\n"
    ".limit { stroke: black; stroke-width: 0.35; stroke-dasharray: 3 1.5 }\n"
    ".window { stroke: black; stroke-width: 0.5; stroke-dasharray: 0.5 1 }\n"
    "</style>\n<rect width=\"100%\" height=\"100%\" fill=\"white\"/>\n";

constexpr std::size_t longest_title = 50;
constexpr std::size_t longest_sentence = 110;  ///< what goes across the sheet

/// The values that a rule of single values names; a range by its later boat.
std::set<std::size_t> marked_by(const PlaceChart& chart, ChartRule rule) {
  std::set<std::size_t> marked;
  for (const ChartSignal& signal : chart.chart.signals)
    if (signal.rule == rule) marked.insert(signal.last);
  return marked;
}

std::string hull_numbers(const GapSeries& series, const ChartPanel& panel, double y) {
  std::string text;
  const std::size_t count = series.hulls.size();
  const std::size_t step = std::max<std::size_t>(1, (count + 9) / 10);
  for (std::size_t i = 0; i < count; i += step)
    text += svg_text(panel.x(i), y, fmt::format("{}", series.hulls[i]),
                     " text-anchor=\"middle\"");
  return text + svg_text(ChartPanel::right + 1.5, y, "hull number");
}

std::string sentences(const PlaceChart& chart, const NumberStyle& style, double y) {
  auto lines = chart_sentences(chart, style);
  if (lines.empty()) lines.push_back("nothing: no point, no run, no drift, no step");
  std::string text;
  for (const std::string& sentence : lines) {
    text += svg_text(
        ChartPanel::left, y,
        short_text((text.empty() ? "Says: " : "- ") + sentence, longest_sentence));
    y += 4;
  }
  return text;
}

std::string heading(const RecordCharts& charts,
                    const PlaceChart& chart,
                    const NumberStyle& style) {
  const GapSeries& series = chart.series;
  const std::string title = fmt::format(
      "{}: {}, {}, {}, {}", short_text(charts.title, longest_title),
      side_word(series.side), short_text(place_name(series, style), longest_title),
      edge_words(series.low), state_word(series.state));
  std::string facts =
      fmt::format("{} by hull number; limits from the first {}",
                  counted(series.hulls.size(), "boat"), chart.chart.base);
  if (const auto& found = chart.capability)
    facts += fmt::format("; Cpk {} ({} to {}) to the gap window, {} to {}",
                         decimals(found->cpk, 2), decimals(found->cpk_low, 2),
                         decimals(found->cpk_high, 2), style.size(charts.gap_min),
                         style.size_with_unit(charts.gap_max));
  return svg_text(ChartPanel::left, 9, title, " class=\"title\"") +
         svg_text(ChartPanel::left, 14.5, facts);
}

/// Draws the two charts; lengths in the unit of the style.
class RecordDrawing {
 public:
  RecordDrawing(const RecordCharts& charts,
                const PlaceChart& chart,
                const NumberStyle& style)
      : charts_(charts), chart_(chart), style_(style) {}

  std::string gaps() const {
    const IndividualsChart& limits = chart_.chart;
    const std::vector<double> values = shown(chart_.series.gaps_mm);
    const auto [least, most] = std::minmax_element(values.begin(), values.end());
    const ChartPanel panel(
        24, 76,
        {std::min(*least, shown(limits.low)), std::max(*most, shown(limits.high))},
        values.size());
    return panel.frame("gap, " + style_.unit_name()) +
           panel.level(shown(limits.mean), "mean", "mean " + gap(limits.mean)) +
           panel.level(shown(limits.low), "limit", "limit " + gap(limits.low)) +
           panel.level(shown(limits.high), "limit", "limit " + gap(limits.high)) +
           window(panel, charts_.gap_min) + window(panel, charts_.gap_max) +
           panel.series(values, 0, marked_by(chart_, ChartRule::BeyondLimit));
  }

  std::string ranges() const {
    const IndividualsChart& limits = chart_.chart;
    const std::vector<double> values = shown(limits.ranges);
    const double most = *std::max_element(values.begin(), values.end());
    const ChartPanel panel(86, 112, {0, std::max(most, shown(limits.range_high))},
                           values.size() + 1);
    return panel.frame("moving range, " + style_.unit_name()) +
           panel.level(shown(limits.mean_range), "mean",
                       "mean " + gap(limits.mean_range)) +
           panel.level(shown(limits.range_high), "limit",
                       "limit " + gap(limits.range_high)) +
           panel.series(values, 1, marked_by(chart_, ChartRule::RangeBeyondLimit)) +
           hull_numbers(chart_.series, panel, 116);
  }

 private:
  double shown(double mm) const {
    const Length length = Length::mm(mm);
    return style_.unit() == LengthUnit::Inches ? length.in_inches() : length.in_mm();
  }
  std::vector<double> shown(std::vector<double> values) const {
    for (double& value : values) value = shown(value);
    return values;
  }
  std::string gap(double mm) const { return style_.gap(Length::mm(mm)); }
  std::string window(const ChartPanel& panel, Length end) const {
    return panel.level(shown(end.in_mm()), "window", "window " + style_.size(end));
  }

  const RecordCharts& charts_;
  const PlaceChart& chart_;
  const NumberStyle& style_;
};

}  // namespace

std::string record_svg(const RecordCharts& charts,
                       const PlaceChart& chart,
                       const NumberStyle& style) {
  const RecordDrawing drawing(charts, chart, style);
  return sheet_head + heading(charts, chart, style) + drawing.gaps() +
         drawing.ranges() + sentences(chart, style, 123) + "</svg>\n";
}

}  // namespace sheerlap

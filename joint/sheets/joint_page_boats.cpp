#include "joint/sheets/joint_page_boats.h"

#include <fmt/format.h>

#include <algorithm>
#include <cstddef>
#include <string_view>
#include <vector>

#include "joint/documents/record_chart_text.h"
#include "joint/documents/record_words.h"
#include "joint/documents/sparkline.h"
#include "joint/documents/wording.h"
#include "joint/sheets/html_text.h"
#include "joint/sheets/record_svg.h"

namespace sheerlap {
namespace {

constexpr std::size_t spark_width = 24;

/// A drawing as the address of an image, so that its styles stay its own.
std::string image_address(std::string_view svg) {
  static constexpr std::string_view as_it_is =
      "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_.~ :;,/=()'";
  std::string address = "data:image/svg+xml;charset=utf-8,";
  for (const char letter : svg)
    address += as_it_is.find(letter) != std::string_view::npos
                   ? std::string(1, letter)
                   : fmt::format("%{:02X}", static_cast<unsigned char>(letter));
  return address;
}

std::string place_words(const PlaceChart& chart, const NumberStyle& style) {
  return fmt::format("{}, {}", side_word(chart.series.side),
                     place_name(chart.series, style));
}

std::string row(const PlaceChart& chart, const NumberStyle& style) {
  const GapSeries& series = chart.series;
  const auto [least, most] =
      std::minmax_element(series.gaps_mm.begin(), series.gaps_mm.end());
  const auto gap = [&](double mm) { return style.gap(Length::mm(mm)); };
  return fmt::format(
      "<tr{}><th scope=\"row\">{}</th><td>{}</td><td>{}</td><td>{}</td><td>{}</td>"
      "<td>{}</td><td>{}</td><td>{}</td><td class=\"spark\">{}</td><td>{}</td></tr>\n",
      chart.drifts || chart.steps ? " class=\"look\"" : "",
      html_text(place_words(chart, style)), edge_word(series.low),
      state_word(series.state), gap(chart.chart.low), gap(chart.chart.mean),
      gap(chart.chart.high), gap(series.gaps_mm.back()),
      chart.capability ? decimals(chart.capability->cpk, 2) : "",
      sparkline(series.gaps_mm, std::min(chart.chart.low, *least),
                std::max(chart.chart.high, *most), spark_width),
      chart_letters(chart));
}

std::string table(const RecordCharts& charts, const NumberStyle& style) {
  std::string rows;
  for (const PlaceChart& chart : charts.charts) rows += row(chart, style);
  return fmt::format(
      "<div class=\"sheet table\" tabindex=\"0\" role=\"region\" "
      "aria-labelledby=\"boats-name\">\n<table class=\"boats\">\n<thead><tr><th>place"
      "</th><th>edge</th><th>state</th><th>lower limit, {0}</th><th>mean, {0}</th>"
      "<th>upper limit, {0}</th><th>last boat, {0}</th><th>Cpk</th><th>boats</th>"
      "<th>says</th></tr></thead>\n<tbody>\n{1}</tbody>\n</table>\n</div>\n",
      style.unit_name(), rows);
}

std::string figure(const RecordCharts& charts,
                   const PlaceChart& chart,
                   const NumberStyle& style) {
  std::string said;
  for (const std::string& sentence : chart_sentences(chart, style))
    said += (said.empty() ? "" : "; ") + sentence;
  const std::string words =
      fmt::format("{}, {}, {}: {}", capitalised(place_words(chart, style)),
                  edge_words(chart.series.low), state_word(chart.series.state), said);
  return fmt::format(
      "<figure>\n<figcaption>{0}</figcaption>\n<img class=\"boats\" alt=\"{0}\" "
      "src=\"{1}\">\n</figure>\n",
      html_text(words), image_address(record_svg(charts, chart, style)));
}

}  // namespace

std::string boats_section(const RecordCharts& charts, const NumberStyle& style) {
  std::string html =
      "<section id=\"boats\" aria-labelledby=\"boats-name\">\n<h2 "
      "id=\"boats-name\">Boats built</h2>\n";
  if (charts.boats.empty())
    return html + "<p>The record holds no boat yet.</p>\n</section>\n";
  html += fmt::format(
      "<p>{} of the record of {}, hull {} to {}; gap window {} to {}.</p>\n<p><b>{}</b>"
      "</p>\n",
      counted(charts.boats.size(), "boat"), html_text(charts.title),
      charts.boats.front().hull, charts.boats.back().hull, style.size(charts.gap_min),
      style.size_with_unit(charts.gap_max), html_text(change_line(charts, style)));
  html += "<div class=\"boats\">\n";
  for (const PlaceChart& chart : charts.charts)
    if (chart.drifts || chart.steps) html += figure(charts, chart, style);
  html += "</div>\n";
  if (!charts.charts.empty()) html += table(charts, style);
  for (const std::string& note : chart_notes(charts))
    html += fmt::format("<p class=\"small\">{}</p>\n", html_text(note));
  return html + "</section>\n";
}

}  // namespace sheerlap

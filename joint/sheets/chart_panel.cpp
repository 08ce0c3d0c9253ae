#include "joint/sheets/chart_panel.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "joint/documents/number_style.h"
#include "joint/sheets/html_text.h"

namespace sheerlap {
namespace {

/// Circles closer together than this run into each other, mm.
constexpr double least_between_circles = 1.6;

}  // namespace

std::string svg_text(double x,
                     double y,
                     const std::string& text,
                     const char* attributes) {
  return fmt::format("<text x=\"{:.2f}\" y=\"{:.2f}\"{}>{}</text>\n", x, y, attributes,
                     html_text(text));
}

double tick_step(double span) {
  const double rough = span / 5;
  const double power = std::pow(10.0, std::floor(std::log10(rough)));
  for (const double factor : {1.0, 2.0, 5.0})
    if (factor * power >= rough) return factor * power;
  return 10 * power;
}

ChartPanel::ChartPanel(double top, double bottom, ValueRange values, std::size_t boats)
    : top_(top), bottom_(bottom), values_(values), boats_(boats) {
  const double span = values.high - values.low;
  const double size = std::max(std::abs(values.low), std::abs(values.high));
  const double margin = span > 1e-9 * size ? 0.08 * span : 0.5;
  values_ = {values.low - margin, values.high + margin};
}

double ChartPanel::x(std::size_t boat) const {
  const double share =
      boats_ < 2 ? 0.5 : static_cast<double>(boat) / static_cast<double>(boats_ - 1);
  return left + 2 + share * (right - left - 4);
}

double ChartPanel::y(double value) const {
  return bottom_ -
         (value - values_.low) / (values_.high - values_.low) * (bottom_ - top_);
}

std::string ChartPanel::frame(const std::string& name) const {
  std::string text = fmt::format(
      "<rect x=\"{}\" y=\"{}\" width=\"{}\" height=\"{}\" class=\"frame\"/>\n", left,
      top_, right - left, bottom_ - top_);
  const double step = tick_step(values_.high - values_.low);
  const int digits = std::max(0, static_cast<int>(-std::floor(std::log10(step))));
  for (double i = std::ceil(values_.low / step); i * step <= values_.high; ++i) {
    text += fmt::format("<path d=\"M{} {:.2f}h-1.5\" class=\"thin\"/>\n", left,
                        y(i * step));
    text += svg_text(left - 2.2, y(i * step) + 1, decimals(i * step, digits),
                     " text-anchor=\"end\"");
  }
  return text + svg_text(left, top_ - 1.8, name);
}

std::string ChartPanel::level(double value,
                              const char* kind,
                              const std::string& name) const {
  if (value < values_.low || value > values_.high) return "";
  return fmt::format("<path d=\"M{} {:.2f}H{}\" class=\"{}\"/>\n", left, y(value),
                     right, kind) +
         svg_text(right + 1.5, y(value) + 1, name);
}

std::string ChartPanel::series(const std::vector<double>& values,
                               std::size_t first,
                               const std::set<std::size_t>& marked) const {
  std::string points;
  std::string shapes;
  const bool circles =
      (right - left) / static_cast<double>(boats_) >= least_between_circles;
  for (std::size_t i = 0; i < values.size(); ++i) {
    const double at_x = x(i + first);
    const double at_y = y(values[i]);
    points += fmt::format("{}{:.2f},{:.2f}", i == 0 ? "" : " ", at_x, at_y);
    if (marked.contains(i + first))
      shapes += fmt::format(
          "<rect x=\"{:.2f}\" y=\"{:.2f}\" width=\"1.8\" height=\"1.8\"/>\n",
          at_x - 0.9, at_y - 0.9);
    else if (circles)
      shapes += fmt::format(
          "<circle cx=\"{:.2f}\" cy=\"{:.2f}\" r=\"0.7\" class=\"point\"/>\n", at_x,
          at_y);
  }
  return fmt::format("<polyline points=\"{}\" class=\"line\"/>\n", points) + shapes;
}

}  // namespace sheerlap

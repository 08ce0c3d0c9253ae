#include "joint/sheets/pattern_svg.h"

#include <fmt/format.h>

#include "joint/documents/number_style.h"
#include "joint/sheets/html_text.h"

namespace sheerlap {
namespace {

/// The capitals of a sans-serif letter are about this share of its size.
constexpr double capital_share = 0.72;

std::string mm_text(double value) { return at_most_decimals(value, 4); }

/// SVG's y runs down.
std::string point(const PatternDrawing& drawing, const Point2& at) {
  return mm_text(at.x()) + "," + mm_text(drawing.height_mm - at.y());
}

std::string layer_group(const PatternDrawing& drawing, PatternLayer layer) {
  std::string group = fmt::format("<g id=\"{}\"", layer_name(layer));
  group += " fill=\"none\" stroke=\"black\" stroke-width=\"0.2\">\n";
  for (const PatternLine& line : drawing.lines) {
    if (line.layer != layer) continue;
    group += line.closed ? "<polygon points=\"" : "<polyline points=\"";
    for (std::size_t i = 0; i < line.points.size(); ++i)
      group += (i == 0 ? "" : " ") + point(drawing, line.points[i]);
    group += "\"/>\n";
  }
  for (const PatternCircle& circle : drawing.circles)
    if (circle.layer == layer)
      group += fmt::format(
          "<circle cx=\"{}\" cy=\"{}\" r=\"{}\"/>\n", mm_text(circle.centre.x()),
          mm_text(drawing.height_mm - circle.centre.y()), mm_text(circle.radius_mm));
  for (const PatternText& text : drawing.texts)
    if (text.layer == layer)
      group += fmt::format(
          "<text x=\"{}\" y=\"{}\" font-size=\"{}\" font-family=\"sans-serif\" "
          "text-anchor=\"middle\" fill=\"black\" stroke=\"none\">{}</text>\n",
          mm_text(text.at.x()), mm_text(drawing.height_mm - text.at.y()),
          mm_text(text.height_mm / capital_share), html_text(text.words));
  return group + "</g>\n";
}

}  // namespace

std::string pattern_svg(const PatternDrawing& drawing) {
  std::string svg = fmt::format(
      "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
      "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{0}mm\" height=\"{1}mm\" "
      "viewBox=\"0 0 {0} {1}\">\n<title>{2}</title>\n"
      "<desc>Full size; one unit is one millimetre.</desc>\n",
      mm_text(drawing.width_mm), mm_text(drawing.height_mm), html_text(drawing.title));
  for (const PatternLayer layer : pattern_layers) svg += layer_group(drawing, layer);
  return svg + "</svg>\n";
}

}  // namespace sheerlap

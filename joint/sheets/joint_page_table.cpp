#include "joint/sheets/joint_page_table.h"

#include <fmt/format.h>

#include <algorithm>
#include <functional>
#include <optional>

#include "joint/documents/bit_angles.h"
#include "joint/documents/drilling_words.h"
#include "joint/documents/wording.h"
#include "joint/sheets/html_text.h"
#include "joint/sheets/joint_page_drawing.h"

namespace sheerlap {
namespace {

/// A column of the schedule: its heading, what is measured and on which surface, its
/// unit, and its cells.
struct PageColumn {
  std::string heading;
  std::string what;
  std::string unit;
  bool in_words = false;  ///< kept to the left
  std::function<std::string(const PageHole&)> cell;
  bool in_short = false;  ///< in the short schedule: on paper, and what is shown first
};

using Columns = std::vector<PageColumn>;
using Write = std::string (NumberStyle::*)(Length) const;

/// How the cells of a column are made of a hole's line in the schedule.
class StationCells {
 public:
  explicit StationCells(const NumberStyle& style) : style_(style) {}

  std::function<std::string(const PageHole&)> of(Length DrillStation::*length,
                                                 Write write) const {
    return [style = style_, length, write](const PageHole& hole) {
      return (style.*write)(hole.station->*length);
    };
  }
  std::function<std::string(const PageHole&)> of(
      std::optional<Length> DrillStation::*length,
      Write write,
      std::string none = "–") const {
    return [style = style_, length, write, none](const PageHole& hole) {
      const auto& value = hole.station->*length;
      return value ? (style.*write)(*value) : none;
    };
  }
  std::function<std::string(const PageHole&)> coordinate(Eigen::Index axis) const {
    return [style = style_, axis](const PageHole& hole) {
      return style.span(Length::mm(hole.station->point[axis]));
    };
  }

 private:
  NumberStyle style_;
};

void add_places(Columns& columns, const NumberStyle& style) {
  const StationCells cells(style);
  const std::string unit = style.unit_name();
  columns.push_back({"girth", "running, on the drill line, lip's outer face", unit,
                     false, cells.of(&DrillStation::girth, &NumberStyle::running),
                     true});
  columns.push_back({"hull girth", "running, on the hull's outer face, at the bit",
                     unit, false,
                     cells.of(&DrillStation::hull_girth, &NumberStyle::running), true});
  columns.push_back({"pitch", "girth from the hole before, on the drill line", unit,
                     false, cells.of(&DrillStation::pitch, &NumberStyle::span), true});
  columns.push_back({"chord", "straight from the hole before, lip's outer face", unit,
                     false, cells.of(&DrillStation::chord, &NumberStyle::span)});
  const char* const names[] = {"X", "Y", "Z"};
  const char* const ways[] = {"aft", "to starboard", "up"};
  for (Eigen::Index i = 0; i < 3; ++i)
    columns.push_back(
        {names[i],
         fmt::format("{}, where the bit enters the lip's outer face", ways[i]), unit,
         false, cells.coordinate(i)});
  columns.push_back({"edge low", "least to the lip's low edge, trim taken off", unit,
                     false, cells.of(&DrillStation::edge_low, &NumberStyle::span)});
  columns.push_back({"edge top", "least to the hull's top edge, trim taken off", unit,
                     false, cells.of(&DrillStation::edge_top, &NumberStyle::span)});
}

void add_references(Columns& columns, const NumberStyle& style) {
  const std::string unit = style.unit_name();
  columns.push_back({"near row",
                     "row of the sheer table, + further along, on the sheer", unit,
                     true, [](const PageHole& hole) { return hole.near_row; }});
  columns.push_back({"run", "number of the run: its equal spaces and their pitch", unit,
                     true, [](const PageHole& hole) { return hole.run; }});
  columns.push_back({"jig", "the first that has the hole", "", true,
                     [](const PageHole& hole) { return hole.station->jig; }, true});
  columns.push_back(
      {"jig girth", "from that jig's first hole, on the drill line", unit, false,
       StationCells(style).of(&DrillStation::jig_girth, &NumberStyle::running), true});
}

/// A depth stop, or that the hole is not to be drilled.
std::function<std::string(const PageHole&)> stop(
    std::function<std::string(const PageHole&)> depth) {
  return [depth](const PageHole& hole) {
    return drillable(*hole.station) ? depth(hole) : "no";
  };
}

void add_drilling(Columns& columns, const Job& job, const NumberStyle& style) {
  const StationCells cells(style);
  const FastenerSpec& spec = job.schedule->fastener;
  const NumberStyle tools = tool_style(spec, style);
  const StationCells tool_cells(tools);
  const std::string unit = style.unit_name();
  const std::string size = tools.unit_name();
  const bool pan = spec.head == HeadKind::Pan;
  const auto angle = [](Angle BitAngles::*which) {
    return [which](const PageHole& hole) {
      const DrillStation& station = *hole.station;
      return decimals((bit_angles(station.side, station.axis).*which).in_degrees(), 1);
    };
  };
  columns.push_back({"tilt", "of the bit from level, + rises going in, boat level",
                     "degrees", false, angle(&BitAngles::tilt)});
  columns.push_back({"skew",
                     "of the bit in plan: sides, + leads aft; transom, + to starboard",
                     "degrees", false, angle(&BitAngles::skew)});
  columns.push_back({"lip hole", "diameter", size, false,
                     tool_cells.of(&DrillStation::lip_hole, &NumberStyle::size), true});
  columns.push_back({"hull pilot", "diameter; – as the lip", size, false,
                     tool_cells.of(&DrillStation::hull_pilot, &NumberStyle::size),
                     true});
  columns.push_back({pan ? "chamfer" : "countersink",
                     "its width on the lip's outer face", unit, false,
                     cells.of(&DrillStation::countersink, &NumberStyle::size)});
  columns.push_back({"drill depth", "stop, from the lip's outer face", unit, false,
                     stop(cells.of(&DrillStation::drill_depth, &NumberStyle::span)),
                     true});
  columns.push_back(
      {"lip depth", "stop for the lip's bit, from the lip's outer face", unit, false,
       stop(cells.of(&DrillStation::lip_depth, &NumberStyle::gap)), true});
  columns.push_back({"gap", "square to the hull's outer face, where the bit goes in",
                     unit, false, cells.of(&DrillStation::gap, &NumberStyle::gap),
                     true});
  columns.push_back({"stack", "lip, gap and hull along the bit", unit, false,
                     cells.of(&DrillStation::stack, &NumberStyle::gap)});
  columns.push_back({"length", "of the " + word_of(spec.kind), size, false,
                     tool_cells.of(&DrillStation::length, &NumberStyle::size, "none"),
                     true});
}

Columns all_columns(const Job& job, const NumberStyle& style) {
  Columns columns;
  add_places(columns, style);
  add_references(columns, style);
  add_drilling(columns, job, style);
  return columns;
}

std::string class_of(const PageColumn& column) {
  if (column.in_short) return column.in_words ? " class=\"words\"" : "";
  return column.in_words ? " class=\"words rest\"" : " class=\"rest\"";
}

std::string heading_cell(const PageColumn& column) {
  return fmt::format("<th scope=\"col\"{}><div><b>{}</b>{} <span>{}</span></div></th>",
                     class_of(column), html_text(column.heading),
                     column.unit.empty() ? "" : ", " + html_text(column.unit),
                     html_text(column.what));
}

/// Why a hole is there, what is near it and what is special about it, in words.
std::string words_row(const PageHole& hole,
                      const Columns& columns,
                      const NumberStyle& style) {
  std::string html = fmt::format(
      "<tr class=\"in-words\"><td colspan=\"{}\"><div><span "
      "class=\"because\">{}</span>",
      columns.size() + 2, html_text(style.sentence(hole.station->because)));
  if (!hole.keepout.empty())
    html += fmt::format("; nearest keep-out <span class=\"keep-out\">{}</span>",
                        html_text(hole.keepout));
  if (!hole.note.empty())
    html += fmt::format("; <b class=\"note\">{}</b>", html_text(hole.note));
  return html + "<span class=\"read\"></span></div></td></tr></tbody>\n";
}

std::string rows(const PageHole& hole,
                 const Columns& columns,
                 const NumberStyle& style) {
  const DrillStation& station = *hole.station;
  std::string html = fmt::format(
      "<tbody class=\"hole{}\" data-mark=\"{}\" data-side=\"{}\" data-jigs=\"{}\"{}>"
      "<tr><th scope=\"row\"><button type=\"button\" class=\"mark\" tabindex=\"-1\" "
      "aria-pressed=\"false\">{}</button></th><td class=\"drilled\"><input "
      "type=\"checkbox\" tabindex=\"-1\" aria-label=\"{} drilled\"></td>",
      drillable(station) ? "" : " forbidden", station.mark, side_word(station.side),
      html_text(station.jig + " " + station.next_jig),
      hole.bridged || !drillable(station) ? " data-flagged" : "", station.mark,
      station.mark);
  for (const PageColumn& column : columns)
    html +=
        fmt::format("<td{}>{}</td>", class_of(column), html_text(column.cell(hole)));
  return html + "</tr>" + words_row(hole, columns, style);
}

std::string stretch_rows(const Job& job,
                         const PerimeterSide& side,
                         const NumberStyle& style) {
  constexpr std::size_t most = 60;
  std::size_t count = 0;
  std::string rows;
  const auto add = [&](Length from, Length to, const std::string& clear,
                       const std::string& what) {
    // what only its clearance brings here stands on the next side
    if (!(to > Length()) || !(from < side.drill_line_length)) return;
    if (++count > most) return;
    rows += fmt::format(
        "<tr><td>{}</td><td>{}</td><td>{}</td><td class=\"words\">{}</td></tr>\n",
        style.running(std::max(from, Length())),
        style.running(std::min(to, side.drill_line_length)), clear,
        html_text(style.sentence(what)));
  };
  for (const OpeningSpan& opening : side.openings)
    add(opening.from, opening.to, "–", "opening: " + opening.what);
  // those no tape can part are one
  for (const Obstacle& obstacle : joined_keepouts(job, side, job.joint.layout.round_to))
    add(obstacle.from + obstacle.clear, obstacle.to - obstacle.clear,
        style.size(obstacle.clear), keepout_name(job, obstacle, style));
  if (count > most)
    rows += fmt::format("<tr><td colspan=\"4\" class=\"words\">and {} more</td></tr>\n",
                        count - most);
  return rows;
}

}  // namespace

std::string schedule_table(const Job& job,
                           const std::vector<PageHole>& holes,
                           const NumberStyle& style) {
  const Columns columns = all_columns(job, style);
  std::string html =
      "<table id=\"schedule-table\" class=\"roving\"><thead><tr><th "
      "scope=\"col\"><div><b>mark</b></div></th><th scope=\"col\"><div><b>drilled</b>"
      "</div></th>";
  for (const PageColumn& column : columns) html += heading_cell(column);
  html += fmt::format(
      "</tr><tr class=\"in-words\"><th scope=\"col\" colspan=\"{}\"><div>below each: "
      "why "
      "the hole is there; the nearest keep-out, {} along the drill line, lip’s outer "
      "face; <b>what is special</b>; gap read, {}, at hull top / at low "
      "edge</div></th></tr></thead>\n",
      columns.size() + 2, style.unit_name(), style.unit_name());
  for (const PageHole& hole : holes) html += rows(hole, columns, style);
  return html + "</table>\n";
}

std::string stretch_table(const Job& job, const NumberStyle& style) {
  std::string tables;
  for (const PerimeterSide& side : job.perimeter.sides) {
    const std::string rows = stretch_rows(job, side, style);
    if (rows.empty()) continue;
    tables += fmt::format(
        "<table class=\"small\"><caption>{}</caption><thead><tr><th scope=\"col\">from"
        "</th><th scope=\"col\">to</th><th scope=\"col\">clear</th><th scope=\"col\" "
        "class=\"words\">what</th></tr></thead><tbody>\n{}</tbody></table>\n",
        capitalised(side_word(side.name)), rows);
  }
  if (tables.empty()) return "";
  return fmt::format(
      "<h3>Keep-outs and openings, by girth on the drill line, lip’s outer face, "
      "{}</h3>\n"
      "<div class=\"abreast\">\n{}</div>\n",
      style.unit_name(), tables);
}

}  // namespace sheerlap

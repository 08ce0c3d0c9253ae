#include "joint/sheets/joint_page_data.h"

#include <array>
#include <cmath>

#include "joint/documents/drilling_words.h"
#include "joint/documents/printable.h"
#include "joint/perimeter.h"

namespace sheerlap {
namespace {

/// To 0.001 mm, so that a page says no more than can be seen.
Json rounded(double value) { return number(std::round(value * 1000) / 1000); }

Json rounded(Length length) { return rounded(length.in_mm()); }

Json pair(const std::array<double, 2>& face) {
  return {rounded(face[0]), rounded(face[1])};
}

Json section_json(const PageHole& hole) {
  const HoleSection& section = hole.section;
  const DrillStation& station = *hole.station;
  const bool drill = drillable(station);
  return {{"lap", rounded(section.lap_mm)},
          {"hull_inner", pair(section.hull_inner)},
          {"hull", pair(section.hull)},
          {"lip", pair(section.lip)},
          {"lip_outer", pair(section.lip_outer)},
          {"entry", {rounded(section.entry.x()), rounded(section.entry.y())}},
          {"bit", {rounded(section.bit.x()), rounded(section.bit.y())}},
          {"stack", rounded(station.stack)},
          {"length", station.length ? rounded(*station.length) : Json(nullptr)},
          {"lip_hole", rounded(station.lip_hole)},
          {"hull_pilot", rounded(station.hull_pilot.value_or(station.lip_hole))},
          {"drill_depth", drill ? rounded(station.drill_depth) : Json(nullptr)}};
}

/// The gaps of the drawing at the hull's top, mid-lap and the low edge, for people.
Json drawn_gaps(const PageHole& hole, const NumberStyle& style) {
  Json texts = Json::array();
  for (const auto& gap : hole.gaps) texts.push_back(gap ? style.gap(*gap) : "–");
  return texts;
}

/// The lengths in stock, each with the least and the greatest stack it serves (mm).
Json serving(const FastenerSpec& spec, const NumberStyle& style) {
  const NumberStyle tools = tool_style(spec, style);
  Json list = Json::array();
  for (const Grip& grip : spec.grips)
    list.push_back(
        {tools.size(grip.length), rounded(grip.least), rounded(grip.greatest)});
  if (!spec.grips.empty()) return list;
  const Length beyond = length_needed(spec, Length());
  for (const Length length : spec.lengths)
    list.push_back({tools.size(length), 0, rounded(length - beyond)});
  return list;
}

/// The sides, each with its length on the drill line (mm).
Json side_lengths(const Perimeter& perimeter) {
  Json lengths = Json::object();
  for (const PerimeterSide& side : perimeter.sides)
    lengths[side_word(side.name)] = rounded(side.drill_line_length);
  return lengths;
}

Json hole_json(const PageHole& hole,
               const FastenerSpec& spec,
               const NumberStyle& style) {
  const DrillStation& station = *hole.station;
  return {
      {"mark", station.mark},
      {"side", side_word(station.side)},
      {"girth", rounded(station.girth)},
      {"fastener", station.length ? fastener_name(spec, *station.length)
                                  : "no fastener in stock serves"},
      {"length", station.length ? tool_style(spec, style).size(*station.length) : ""},
      {"drawn", drawn_gaps(hole, style)},
      {"section", section_json(hole)}};
}

}  // namespace

Json page_data(const Job& job,
               const std::vector<PageHole>& holes,
               const NumberStyle& style) {
  const FastenerSpec& spec = job.schedule->fastener;
  Json list = Json::array();
  for (const PageHole& hole : holes) list.push_back(hole_json(hole, spec, style));
  const auto& adhesive = job.joint.adhesive;
  const double unit_mm =
      style.unit() == LengthUnit::Millimetres ? 1 : Length::inches(1).in_mm();
  return {
      {"title", printable(job.joint.title)},
      {"layout", layout_fingerprint(*job.schedule)},
      {"unit", style.unit_name()},
      {"unit_mm", unit_mm},
      {"window", adhesive ? Json{number(adhesive->gap_min), number(adhesive->gap_max)}
                          : Json(nullptr)},
      {"bond",
       {rounded(job.joint.bond.from.value_or(Length())),
        job.joint.bond.to ? rounded(*job.joint.bond.to) : Json(nullptr)}},
      {"window_text", adhesive ? style.size(adhesive->gap_min) + " to " +
                                     style.size_with_unit(adhesive->gap_max)
                               : ""},
      {"head", {rounded(spec.head_diameter), spec.head == HeadKind::Countersunk}},
      {"pointed", spec.kind == FastenerKind::TappingScrew},
      {"diameter", rounded(spec.diameter)},
      {"fastener", fastener_name(spec)},
      {"serves", serving(spec, style)},
      {"sides", side_lengths(job.perimeter)},
      {"check_bar", style.unit() == LengthUnit::Millimetres
                        ? Json{50, "50 mm when printed full size"}
                        : Json{50.8, "2 in when printed full size"}},
      {"holes", std::move(list)}};
}

}  // namespace sheerlap

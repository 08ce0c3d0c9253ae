#include "joint/documents/perimeter_text.h"

#include <fmt/format.h>

#include <algorithm>

#include "joint/documents/text_table.h"
#include "joint/documents/wording.h"

namespace sheerlap {
namespace {

/// "2 to 3 mm", or "3 mm" where the rows agree.
std::string range_over_rows(const Joint& joint,
                            Length FlangeOffsets::*offset,
                            const NumberStyle& style) {
  const auto by_offset = [&](const SheerRow& a, const SheerRow& b) {
    return a.offsets.*offset < b.offsets.*offset;
  };
  const auto& rows = joint.sheer.rows;
  const auto [least, most] = std::minmax_element(rows.begin(), rows.end(), by_offset);
  const std::string low = style.size(least->offsets.*offset);
  const std::string high = style.size(most->offsets.*offset);
  return fmt::format("{}{} {}", low, low == high ? "" : " to " + high,
                     style.unit_name());
}

std::string sheer_words(const Sheer& sheer) {
  return fmt::format("{}, {}, {}, {}", counted(sheer.rows.size(), "row"),
                     sheer.half ? "the starboard half, mirrored" : "the whole boat",
                     sheer.closed ? "closed" : "stops at the transom corners",
                     sheer.curve == CurveKind::Spline ? "smooth between corners"
                                                      : "straight from point to point");
}

}  // namespace

TextTable perimeter_table(const Job& job, const NumberStyle& style) {
  TextTable table;
  table.columns = {{{"side"}, Align::Left},    {{"sheer"}},
                   {{"drill line"}},           {{"starts at"}, Align::Left},
                   {{"ends at"}, Align::Left}, {{"openings"}, Align::Left}};
  const auto end_word = [](SideEnd end) {
    if (end == SideEnd::Corner) return "a corner";
    return end == SideEnd::Smooth ? "the centreline" : "the table's end";
  };
  for (const PerimeterSide& side : job.perimeter.sides) {
    std::string openings;
    for (const OpeningSpan& opening : side.openings)
      openings +=
          fmt::format("{}{} {} to {}", openings.empty() ? "" : "; ", opening.what,
                      style.running(opening.from), style.running(opening.to));
    table.rows.push_back({side_word(side.name), style.running(side.sheer_length),
                          style.running(side.drill_line_length), end_word(side.start),
                          end_word(side.end), openings});
  }
  table.rows.push_back({"all", style.running(job.perimeter.sheer_length),
                        style.running(job.perimeter.drill_line_length), "", "", ""});
  return table;
}

std::string perimeter_words(const Job& job, const NumberStyle& style) {
  return fmt::format(
      "Lengths in {}, rounded to {}: the sheer is the hull's trimmed top edge; the "
      "drill "
      "line lies on the lip's outer face {} below it. Openings, by girth on the drill "
      "line, are within the lengths. Totals are summed before rounding.",
      style.unit_words(), style.step_name(),
      style.size_with_unit(job.joint.fastener.line));
}

std::string perimeter_text(const Job& job, const NumberStyle& style) {
  return wrapped(perimeter_words(job, style)) + text_of(perimeter_table(job, style));
}

std::string input_text(const Job& job, const NumberStyle& style) {
  const Joint& joint = job.joint;
  TextTable table;
  table.columns = {{{"what"}, Align::Left}, {{"as understood"}, Align::Left}};
  const auto add = [&](const char* what, const std::string& value) {
    table.rows.push_back({what, value});
  };
  const auto offsets = [&](Length FlangeOffsets::*top, Length FlangeOffsets::*low) {
    return fmt::format("{} at the top, {} at the low edge of the lap",
                       range_over_rows(joint, top, style),
                       range_over_rows(joint, low, style));
  };
  add("sheer", sheer_words(joint.sheer));
  add("lap", range_over_rows(joint, &FlangeOffsets::lap, style));
  add("hull face", offsets(&FlangeOffsets::hull_top, &FlangeOffsets::hull_low));
  add("lip face", offsets(&FlangeOffsets::lip_top, &FlangeOffsets::lip_low));
  add("thickness",
      fmt::format("hull {}, lip {}", style.size_with_unit(joint.hull.thickness),
                  style.size_with_unit(joint.lip.thickness)));
  add("fastener",
      fmt::format("{} {}, {} below the sheer", word_of(joint.fastener.kind),
                  joint.fastener.size, style.size_with_unit(joint.fastener.line)));
  add("pitch", fmt::format("{} to {}", style.size_with_unit(joint.layout.pitch_min),
                           joint.layout.by_strength
                               ? "what the strength allows"
                               : style.size_with_unit(joint.layout.pitch_max)));
  add("places", fmt::format("{}, {}, {}, {}", counted(joint.zones.size(), "zone"),
                            counted(joint.keepouts.size(), "keep-out"),
                            counted(joint.places.size(), "fixed place"),
                            counted(joint.openings.size(), "opening")));
  return text_of(table);
}

}  // namespace sheerlap

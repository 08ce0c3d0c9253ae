#include "joint/documents/clamping_text.h"

#include <fmt/format.h>

#include "joint/documents/text_table.h"

namespace sheerlap {
namespace {

std::string percent(double share) { return decimals(100 * share, 2) + " %"; }

TextTable figures() {
  return {{{{"value"}}, {{"unit"}, Align::Left}, {{"what"}, Align::Left}}, {}};
}

}  // namespace

std::string sharing_text(const Job& job, const NumberStyle& style) {
  const LoadSharing& sharing = job.strength->sharing;
  const BondPoint& place = job.strength->sharing_place;
  std::string text =
      "Load share while the bond is whole: for information, no capacity\n";
  if (!sharing.says.empty())
    text +=
        wrapped(fmt::format("At {}, gap {} {}, at the largest space: {}.",
                            style.sentence(place_words(place)), style.gap(place.gap()),
                            style.unit_name(), style.sentence(sharing.says)));
  TextTable table = figures();
  const auto row = [&](const std::optional<double>& value, bool is_share,
                       const char* what) {
    if (value)
      table.rows.push_back({is_share ? percent(*value) : decimals(1 / *value, 0),
                            is_share ? "" : "N/mm", what});
  };
  row(sharing.flexibility, false,
      "stiffness of one fastener, 1/C, formula for laminates");
  row(sharing.metal_flexibility, false, "the same, formula for metal sheets");
  row(sharing.share, true, "of the load in the fasteners, by the first");
  row(sharing.metal_share, true, "of the load in the fasteners, by the second");
  return table.rows.empty() ? text : text + "\n" + text_of(table);
}

std::string clamping_text(const Job& job, const NumberStyle& style) {
  const Clamping& clamping = job.strength->clamping;
  TextTable table = figures();
  const auto force = [&](const std::optional<double>& value, const char* unit,
                         int count, const char* what) {
    if (value) table.rows.push_back({decimals(*value, count), unit, what});
  };
  const auto length = [&](const std::optional<Length>& value, bool is_gap,
                          const std::string& what) {
    if (value)
      table.rows.push_back(
          {is_gap ? style.gap(*value) : style.span(*value), style.unit_name(), what});
  };
  force(clamping.flow_force, "N/mm", 2,
        "to close at the speed given, by the paste's viscosity");
  force(clamping.hold_force, "N/mm", 2, "below which the paste does not yield");
  force(clamping.line_force, "N/mm", 2, "to close at the speed given, in all");
  force(clamping.fastener_force, "N", 0,
        "the same for each fastener beside that space: what clamps or fasteners "
        "have to pull, or close more slowly");
  length(clamping.bow, true, "bow of the lip midway between the two holes, wet");
  const auto& allowed = job.joint.strength.gap_change;
  length(clamping.pitch, false,
         "the largest space for the change of gap allowed while wet" +
             (allowed ? ", " + style.size_with_unit(*allowed) : ""));
  const auto trend = [&](const std::optional<Length>& pitch) {
    const bool stocky = pitch && *pitch < 10 * job.joint.lip.thickness;
    return std::string(stocky ? "; under 10 lip thicknesses: a trend only" : "");
  };
  length(clamping.even_pitch, false,
         "cured: beyond it each fastener presses alone (pi/beta)" +
             trend(clamping.even_pitch));
  length(clamping.lift_pitch, false,
         "cured: beyond it the lip lifts between fasteners that pull" +
             trend(clamping.lift_pitch));
  length(clamping.tight_pitch, false,
         "for a seal: the space of a gasketed flange, where a sealant seals");
  return "Clamping\n" +
         wrapped(fmt::format("Closing the lip onto the wet adhesive in the space "
                             "between two holes that "
                             "asks most: {}, gap {} {} midway, space {} {}.",
                             style.sentence(place_words(clamping.place)),
                             style.gap(clamping.place.gap()), style.unit_name(),
                             style.span(clamping.space), style.unit_name())) +
         (table.rows.empty() ? "" : "\n" + text_of(table));
}

}  // namespace sheerlap

#include "joint/documents/layout_text.h"

#include <fmt/format.h>

#include <algorithm>

#include "joint/documents/text_table.h"
#include "joint/documents/wording.h"

namespace sheerlap {
namespace {

std::string heading(const Job& job, const NumberStyle& style) {
  return wrapped(fmt::format(
      "{}s on the drill line: on the lip's outer face, {} below the sheer. Girths run "
      "along that line, starboard and port from the bow datum aft, the transom from "
      "its starboard corner; they are rounded to {}. A pitch is the girth from hole to "
      "hole, to {}, and not the difference of rounded girths. All in {}.",
      capitalised(word_of(job.joint.fastener.kind)),
      style.size_with_unit(job.joint.fastener.line), style.step_name(),
      style.span_step(), style.unit_words()));
}

std::string overview(const Layout& layout, const NumberStyle& style) {
  TextTable table;
  table.columns = {{{"side"}, Align::Left},
                   {{"holes"}},
                   {{"largest", "pitch"}},
                   {{"smallest", "pitch"}}};
  for (const LayoutSide& side : layout.sides)
    table.rows.push_back({side_word(side.name), fmt::format("{}", side.girths.size()),
                          style.span(side.largest_pitch),
                          style.span(side.smallest_pitch)});
  table.rows.push_back({"all", fmt::format("{}", layout.count),
                        style.span(layout.largest_pitch),
                        style.span(layout.smallest_pitch)});
  return text_of(table);
}

std::string runs(const LayoutSide& side, const NumberStyle& style) {
  TextTable table;
  table.columns = {{{"run from"}}, {{"to"}}, {{"spaces"}}, {{"pitch"}}};
  for (const LayoutRun& run : side.runs)
    table.rows.push_back({style.running(run.from), style.running(run.to),
                          fmt::format("{}", run.spaces), style.span(run.pitch)});
  return text_of(table);
}

std::string bridged(const LayoutSide& side, const NumberStyle& style) {
  if (side.bridged.empty()) return "";
  TextTable table;
  table.columns = {{{"bridged from"}},
                   {{"to"}},
                   {{"pitch"}},
                   {{"limit"}},
                   {{"what stands in the way"}, Align::Left}};
  for (const Bridge& bridge : side.bridged)
    table.rows.push_back({style.running(bridge.from), style.running(bridge.to),
                          style.span(bridge.pitch), style.span(bridge.limit),
                          style.sentence(bridge.what)});
  return "\n" + text_of(table);
}

/// Whether the space before a hole is one of the layout, and no opening or corner.
bool has_pitch(const LayoutSide& side, std::size_t hole) {
  return hole > 0 &&
         std::any_of(side.runs.begin(), side.runs.end(), [&](const auto& run) {
           return run.from < side.girths[hole] && side.girths[hole] <= run.to;
         });
}

std::string holes(const LayoutSide& side, const NumberStyle& style) {
  TextTable table;
  table.columns = {{{"hole"}}, {{"girth"}}, {{"pitch"}}, {{"because"}, Align::Left}};
  for (std::size_t i = 0; i < side.girths.size(); ++i)
    table.rows.push_back(
        {fmt::format("{}", i + 1), style.running(side.girths[i]),
         has_pitch(side, i) ? style.span(side.girths[i] - side.girths[i - 1]) : "",
         style.sentence(side.because[i])});
  return text_of(table);
}

std::string side_text(const LayoutSide& side, const NumberStyle& style) {
  return fmt::format("\n{}: {}\n", capitalised(side_word(side.name)),
                     counted(side.girths.size(), "hole")) +
         runs(side, style) + bridged(side, style) + "\n" + holes(side, style);
}

}  // namespace

std::string layout_text(const Job& job, const NumberStyle& style) {
  std::string text = heading(job, style) + "\n" + overview(*job.layout, style);
  for (const LayoutSide& side : job.layout->sides) text += side_text(side, style);
  return text;
}

}  // namespace sheerlap

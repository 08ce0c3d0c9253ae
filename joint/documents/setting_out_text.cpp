#include "joint/documents/setting_out_text.h"

#include <fmt/format.h>

#include <cmath>
#include <vector>

#include "joint/documents/text_table.h"
#include "joint/documents/wording.h"

namespace sheerlap {
namespace {

std::string runs_text(const SettingOut& errors, const NumberStyle& style) {
  if (errors.runs.empty()) return "";
  TextTable table;
  table.columns = {{{"side"}, Align::Left},
                   {{"from"}},
                   {{"to"}},
                   {{"spaces"}},
                   {{"pitch"}},
                   {{"last hole,", "stepped"}},
                   {{"last hole,", "rounded"}}};
  for (const SteppedRun& run : errors.runs)
    table.rows.push_back({side_word(run.side), style.running(run.run.from),
                          style.running(run.run.to), fmt::format("{}", run.run.spaces),
                          style.gap(run.run.pitch), style.gap(run.stepped),
                          style.gap(run.rounded)});
  return wrapped(fmt::format(
             "How far past its place the last hole of a run would come, in {}: "
             "\"stepped\" with dividers set to the pitch and stepped off along the "
             "drill line, \"rounded\" with the pitch rounded to {} and added up.",
             style.unit_words(), style.step_name())) +
         text_of(table);
}

void add_rows(TextTable& table,
              const std::string& way,
              const std::vector<HoleError>& errors,
              const NumberStyle& style) {
  for (const HoleError& error : errors)
    table.rows.push_back({way, "+/- " + style.gap(error.off),
                          style.sentence(error.what) + " (" + error.source + ")"});
}

/// What the lip's hole is good for where lip and hull are drilled apart.
std::string remedy(Length lip_hole, const ApartHoles& apart) {
  const std::string together =
      "drill lip and hull together, through the jig, at the dry fit.";
  if (lip_hole < apart.hole_root_sum) return together;
  if (lip_hole < apart.hole_worst)
    return "it takes the latter but not the worst; to be sure, " + together;
  return "it takes both.";
}

std::string apart_text(const Job& job, const NumberStyle& style) {
  const ApartHoles& apart = job.schedule->setting_out.apart;
  const FastenerSpec& spec = job.schedule->fastener;
  TextTable table;
  table.columns = {{{"way"}, Align::Left},
                   {{"off", style.unit_name()}},
                   {{"what, and from where"}, Align::Left}};
  add_rows(table, "along", apart.along, style);
  add_rows(table, "up, down", apart.across, style);
  add_rows(table, "leaning", apart.leaning, style);
  const auto hole = [&](Length size) {
    return style.gap(size) + " " + style.unit_name();
  };
  const std::string where = spec.hull_pilot ? "in the lip" : "in lip and hull";
  return "\nLip and hull drilled apart\n" +
         wrapped(fmt::format(
             "Marked and drilled each by itself, the two holes of a fastener are up to "
             "{} apart at the worst, {} by the root of the sum of squares; it would "
             "take holes of {} or {} {} to let the {} through. The lip's hole is {}: "
             "{}",
             hole(apart.off_worst), hole(apart.off_root_sum), hole(apart.hole_worst),
             hole(apart.hole_root_sum), where, word_of(spec.kind),
             style.size_with_unit(spec.lip_hole), remedy(spec.lip_hole, apart))) +
         text_of(table);
}

}  // namespace

std::string setting_out_text(const Job& job, const NumberStyle& style) {
  const SettingOut& errors = job.schedule->setting_out;
  std::string text = "What a hole is off by\n";
  text += wrapped(fmt::format(
      "By running dimensions rounded to {}: no more than {} {}, at every hole.{}",
      style.step_name(), style.gap(errors.running), style.unit_name(),
      errors.thickest.empty()
          ? ""
          : fmt::format(" By a bit {} degrees out of square (common practice, no "
                        "source): where it leaves the hull, {} {} at {}, where the "
                        "stack is thickest.",
                        decimals(bit_out_of_square.in_degrees(), 0),
                        style.gap(errors.leaning_exit), style.unit_name(),
                        errors.thickest)));
  return text + runs_text(errors, style) + apart_text(job, style);
}

}  // namespace sheerlap

#include "joint/documents/fit_text.h"

#include <fmt/format.h>

#include "joint/documents/seated_text.h"
#include "joint/documents/seating_text.h"
#include "joint/documents/text_table.h"
#include "joint/documents/wording.h"

namespace sheerlap {
namespace {

std::string heading(const Job& job, const NumberStyle& style) {
  std::string text = fmt::format(
      "The gap is measured from the hull's outer face to the lip's inner face, square "
      "to the hull face, in {}, to {}. Girths run along the sheer: starboard and port "
      "from the bow datum aft, the transom from its starboard corner; they are rounded "
      "to {}. Depths are straight down from the sheer.",
      style.unit_words(), style.gap_step(), style.step_name());
  if (job.joint.adhesive)
    text += fmt::format(" The gap window is {} to {} {} ({}).",
                        style.size(job.joint.adhesive->gap_min),
                        style.size(job.joint.adhesive->gap_max), style.unit_name(),
                        job.joint.adhesive->name);
  return wrapped(text);
}

std::string way_down() {
  return wrapped(
      "Way down is the least clearance, level, of the lip's low edge past the hull's "
      "top edge while the lid comes straight down; below 0 it does not pass by "
      "itself.");
}

std::string stations(const Fit& fit, const NumberStyle& style) {
  TextTable table;
  table.columns = {{{"side"}, Align::Left},
                   {{"girth"}},
                   {{"X"}},
                   {{"Y"}},
                   {{"Z"}},
                   {{"gap", "top"}},
                   {{"gap", "middle"}},
                   {{"gap", "low"}},
                   {{"station"}, Align::Left}};
  for (const FitStation& station : fit.stations) {
    std::vector<std::string> row{side_word(station.side), style.running(station.girth)};
    for (const double coordinate :
         {station.point.x(), station.point.y(), station.point.z()})
      row.push_back(style.span(Length::mm(coordinate)));
    for (const Length gap : station.gaps) row.push_back(style.gap(gap));
    row.push_back(station.station);
    table.rows.push_back(std::move(row));
  }
  return text_of(table);
}

}  // namespace

TextTable fit_extremes(const Fit& fit, const NumberStyle& style) {
  TextTable table;
  table.columns = {{{"gap"}, Align::Left},
                   {{style.unit_name()}},
                   {{"side"}, Align::Left},
                   {{"girth"}},
                   {{"depth"}}};
  const auto side_words = [](const Reach& reach) {
    return reach.all_round ? "all round" : sides_words(reach.sides);
  };
  const auto girth = [&](const Reach& reach, Length at) {
    return reach.all_along ? "all" : style.running(at);
  };
  const auto add = [&](const char* name, const GapAt& at, const Reach& reach) {
    table.rows.push_back({name, style.gap(at.gap), side_words(reach),
                          girth(reach, at.girth), style.span(at.depth)});
  };
  add("least", fit.least, fit.least_reach);
  add("greatest", fit.greatest, fit.greatest_reach);
  table.rows.push_back({"mean", style.gap(fit.mean), "over the bond band", "", ""});
  table.rows.push_back({"way down", style.gap(fit.entry.worst),
                        side_words(fit.entry_reach),
                        girth(fit.entry_reach, fit.entry.girth), ""});
  return table;
}

TextTable fit_runs(const Fit& fit, const NumberStyle& style) {
  TextTable table;
  table.columns = {{{"side"}, Align::Left},    {{"from"}},         {{"to"}},
                   {{"verdict"}, Align::Left}, {{"worst", "gap"}}, {{"at", "girth"}},
                   {{"at", "depth"}}};
  for (const FitRun& run : fit.runs)
    table.rows.push_back({side_word(run.side), style.running(run.from),
                          style.running(run.to), word_of(run.verdict),
                          style.gap(run.worst.gap), style.running(run.worst.girth),
                          style.span(run.worst.depth)});
  return table;
}

std::string fit_text(const Job& job, const NumberStyle& style) {
  const Fit& fit = *job.fit;
  const bool goes_on = job.going_on.has_value();
  return (goes_on ? what_to_do(job, style) + "\n" : "") + heading(job, style) + "\n" +
         text_of(fit_extremes(fit, style)) + way_down() +
         (goes_on ? seating_text(job, style) + seated_text(job, style) +
                        entry_text(job, style)
                  : "") +
         "\nWhere the verdict changes\n" + text_of(fit_runs(fit, style)) +
         "\nAt the rows of the sheer table: top, middle and low edge of the lap\n" +
         stations(fit, style);
}

}  // namespace sheerlap

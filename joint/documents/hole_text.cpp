#include "joint/documents/hole_text.h"

#include <fmt/format.h>

#include <array>
#include <cassert>
#include <optional>

#include "joint/documents/bond_text.h"
#include "joint/documents/hole_move_words.h"
#include "joint/documents/text_table.h"
#include "joint/documents/wording.h"
#include "joint/hole_story.h"
#include "joint/rule_words.h"

namespace sheerlap {
namespace {

std::string heading(const HoleAt& here, const Job& job, const NumberStyle& style) {
  return wrapped(fmt::format(
      "{}: {} on {}, girth {} {} on the drill line (lip's outer face). Lengths in {}, "
      "forces in N, stresses in N/mm2.",
      here.station.mark, fastener_name(job.schedule->fastener),
      side_word(here.station.side), style.running(here.station.girth),
      style.unit_name(), style.unit_words()));
}

std::string why(const HoleStory& story, const NumberStyle& style) {
  std::string text = "\nWhy it is there\n";
  const auto line = [&](const std::string& words) {
    text += "  " + wrapped(style.sentence(words), text_width - 2, 4);
  };
  line(story.here.station.because);
  for (const std::string& hold : story.held_by)
    if (hold != story.here.station.because) line("held: " + hold);
  for (const std::string& what : story.here.stands_in) line("it stands " + what);
  return text;
}

std::string spaces(const HoleAt& here, const NumberStyle& style) {
  TextTable table;
  table.columns = {{{"from it to"}, Align::Left},
                   {{"girth"}},
                   {{"least"}},
                   {{"most"}},
                   {{"whose limit"}, Align::Left}};
  for (const HoleSpace* space : {&here.before, &here.after})
    table.rows.push_back(
        {space->to, style.span(space->space), style.span(space->least),
         space->greatest < unlimited_pitch ? style.span(space->greatest) : "none",
         space->whose.empty() ? "the joint file's" : space->whose});
  return "\nSpaces on either hand\n" + text_of(table);
}

std::string edges(const HoleAt& here, const NumberStyle& style) {
  std::string text =
      "\nEdges and rules\n" +
      wrapped(fmt::format(
          "{} to the lip's low edge and {} to the hull's top edge, trim "
          "tolerance taken off{}.",
          style.span(here.station.edge_low), style.span(here.station.edge_top),
          misses_hull(here.station) ? "; it misses the hull" : ""));
  TextTable table;
  table.columns = {
      {{"has"}},
      {{"asked"}},
      {{"state"}, Align::Left},
      {{"rule, chosen or read in its source, and what it measures"}, Align::Left}};
  for (const RuleRow& row : here.rules)
    table.rows.push_back(
        {style.span(*row.has), style.span(*row.asks),
         std::string(state_words(row.state)),
         fmt::format("{}{}: {} ({})", row.rule, row.chosen ? " (chosen)" : "",
                     row.has_words, row.source)});
  return table.rows.empty() ? text : text + text_of(table);
}

std::string stack(const HoleStory& story, const Job& job, const NumberStyle& style) {
  const DrillStation& station = story.here.station;
  std::string length = "no length in stock serves it";
  if (station.length)
    length = fmt::format("a length of {} serves it", style.size(*station.length));
  if (story.here.reserve)
    length += fmt::format(
        ": the stack may grow by {} before {}", style.gap(*story.here.reserve),
        story.next_length ? style.size(*story.next_length) + " is needed"
                          : "there is none in stock");
  return "\nThrough the stack\n" +
         wrapped(fmt::format(
             "Gap {}, stack along the bit {}, length needed {}; {}. Hole in the lip "
             "{}, "
             "in the hull {}, depth stop {}.",
             style.gap(station.gap), style.gap(station.stack),
             style.gap(length_needed(job.schedule->fastener, station.stack)), length,
             style.size(station.lip_hole),
             style.size(station.hull_pilot.value_or(station.lip_hole)),
             style.span(station.drill_depth)));
}

/// A way to fail, what it carries and what loads it.
struct ModeRow {
  FastenerMode mode;
  std::optional<double> carries;
  double load;
};

std::string alone(const FastenerRow& row,
                  const Joint& joint,
                  const NumberStyle& style) {
  const double factor = joint.loads->factor_fastener;
  const std::array<ModeRow, 7> modes{{
      {FastenerMode::Shank, row.shank, row.load},
      {FastenerMode::Bearing, row.bearing, row.load},
      {FastenerMode::ShearOut, row.shear_out, row.load},
      {FastenerMode::NetTension, row.net_tension, row.load},
      {FastenerMode::ShankPull, row.shank_pull, row.pull},
      {FastenerMode::PullThrough, row.pull_through, row.pull},
      {FastenerMode::PullOut, row.pull_out, row.pull},
  }};
  TextTable table;
  table.columns = {
      {{"gives by"}, Align::Left}, {{"carries"}}, {{"load"}}, {{"use by", "itself"}}};
  for (const ModeRow& mode : modes) {
    const bool known = mode.carries.has_value();
    const double use =
        !known || mode.load == 0 ? 0 : factor * mode.load / *mode.carries;
    table.rows.push_back({mode_words(mode.mode),
                          known ? decimals(*mode.carries, 0) : "-",
                          decimals(mode.load, 0), known ? use_text(use) : "-"});
  }
  return "\nThe fastener alone, the bond gone\n" + text_of(table) +
         wrapped(fmt::format(
             "It carries {} of joint. Load times {:g}, over what it carries; shear and "
             "pull together use {}, by: {}.",
             style.span(row.tributary), factor, use_text(row.utilisation),
             mode_words(row.governing)));
}

std::string bond(const BondPoint& at, const NumberStyle& style) {
  return "\nThe bond there\n" +
         wrapped(fmt::format(
             "Gap {} at the upper edge of the bond band and {} at its lower edge, band "
             "{} "
             "wide. Limit load, N/mm: {:.3g} along, {:.3g} across, {:.3g} off. Peaks, "
             "N/mm2: {:.3g} in shear along, {:.3g} in shear across, {:.3g} in peel. "
             "Use {}: {}.",
             style.gap(at.gap_top), style.gap(at.gap_low), style.span(at.width),
             at.load.along, at.load.across, at.load.off, at.shear_along,
             at.shear_across, at.peel, use_text(at.utilisation), mode_words(at.mode)));
}

std::string moves(const HoleStory& story, const NumberStyle& style) {
  std::string text = "\nA step either way, all other holes as they are\n";
  for (const HoleMove& move : story.moves)
    text += "  " + wrapped(style.sentence(hole_move_words(move, story.here, style)),
                           text_width - 2, 4);
  return text;
}

}  // namespace

std::string hole_text(const Job& job,
                      const std::string& mark,
                      const NumberStyle& style) {
  const auto story = hole_story(job, mark);
  assert(story);
  const HoleAt& here = story->here;
  std::string text = heading(here, job, style) + why(*story, style) +
                     spaces(here, style) + edges(here, style) +
                     stack(*story, job, style);
  if (here.alone) text += alone(*here.alone, job.joint, style);
  if (here.bond) text += bond(*here.bond, style);
  return text + moves(*story, style);
}

}  // namespace sheerlap

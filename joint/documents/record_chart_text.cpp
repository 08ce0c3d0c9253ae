#include "joint/documents/record_chart_text.h"

#include <fmt/format.h>

#include <algorithm>

#include "joint/documents/record_words.h"
#include "joint/documents/sparkline.h"
#include "joint/documents/text_table.h"
#include "joint/documents/wording.h"
#include "joint/records/outside_places.h"

namespace sheerlap {
namespace {

constexpr std::size_t spark_width = 24;
/// More charts than this that have nothing but a point or a run to say are not told one
/// by one.
constexpr std::size_t most_told = 12;
/// Of the places with gaps outside the window so many are named.
constexpr std::size_t worst_named = 3;

std::string side_table(const RecordCharts& charts,
                       SideName side,
                       ReadingState state,
                       const NumberStyle& style) {
  TextTable table{{{{"place", ""}, Align::Left},
                   {{"edge", ""}, Align::Left},
                   {{"limits", "low"}},
                   {{"", "mean"}},
                   {{"", "high"}},
                   {{"last", "boat"}},
                   {{"Cpk", ""}},
                   {{"boats", ""}, Align::Left},
                   {{"says", ""}, Align::Left}},
                  {}};
  std::string last_name;
  for (const PlaceChart& chart : charts.charts) {
    const GapSeries& series = chart.series;
    if (series.side != side || series.state != state) continue;
    const auto [least, most] =
        std::minmax_element(series.gaps_mm.begin(), series.gaps_mm.end());
    const auto gap = [&](double mm) { return style.gap(Length::mm(mm)); };
    const std::string name =
        series.kind == PlaceKind::Girth ? style.running(series.girth) : series.name;
    table.rows.push_back({name == last_name ? "" : name, edge_word(series.low),
                          gap(chart.chart.low), gap(chart.chart.mean),
                          gap(chart.chart.high), gap(series.gaps_mm.back()),
                          chart.capability ? decimals(chart.capability->cpk, 2) : "",
                          sparkline(series.gaps_mm, std::min(chart.chart.low, *least),
                                    std::max(chart.chart.high, *most), spark_width),
                          chart_letters(chart)});
    last_name = name;
  }
  if (table.rows.empty()) return "";
  return fmt::format("\n{}, {}, gaps in {}\n", capitalised(side_word(side)),
                     state_word(state), style.unit_words()) +
         text_of(table);
}

std::string said(const PlaceChart& chart, const NumberStyle& style) {
  const auto sentences = chart_sentences(chart, style);
  std::string text;
  for (const std::string& sentence : sentences)
    text += (text.empty() ? "" : "; ") + sentence;
  if (text.empty()) return "";
  return wrapped(
      fmt::format("- {} {}, {}, {}: {}.", capitalised(side_word(chart.series.side)),
                  place_name(chart.series, style), edge_word(chart.series.low),
                  state_word(chart.series.state), text),
      text_width, 2);
}

/// Drifts and steps, then the rest as far as it can be told.
std::string findings(const RecordCharts& charts, const NumberStyle& style) {
  std::string changes;
  std::string others;
  std::size_t told = 0;
  std::size_t untold = 0;
  for (const PlaceChart& chart : charts.charts) {
    const std::string words = said(chart, style);
    if (words.empty()) continue;
    if (chart.drifts || chart.steps)
      changes += words;
    else if (++told <= most_told)
      others += words;
    else
      ++untold;
  }
  std::string text;
  if (!changes.empty()) text += "\nDrifts and steps\n" + changes;
  if (!others.empty()) text += "\nPoints and runs\n" + others;
  if (untold > 0)
    text += wrapped(
        fmt::format("- {} more charts have points or runs: see the letters.", untold));
  return text;
}

std::string correlation_words(const RecordCharts& charts) {
  if (!charts.gap_and_litres)
    return "Mean gap against litres used: not told, for want of four boats that differ "
           "in both.";
  const Correlation& found = *charts.gap_and_litres;
  const bool told = found.low > 0 || found.high < 0;
  return fmt::format(
      "Mean gap against litres used, {} boats: r = {} (95 % interval {} to {}), {} "
      "litres for each mm of gap.{}",
      found.count, decimals(found.r, 2), decimals(found.low, 2),
      decimals(found.high, 2), decimals(found.slope, 2),
      told ? "" : " The interval holds 0: the two are not seen to go together.");
}

std::string limit_words(std::size_t base) {
  return fmt::format(
      "Limits: mean -+ {} times the mean moving range of the first {} boats with a "
      "reading there (all of them where fewer than {}, and then the limits are rough); "
      "moving range: {} times its mean; d2 = {} (ISO 7870-2, from memory, confirm).",
      chart_factors::limit, base, boats_for_limits, chart_factors::range_limit,
      chart_factors::d2);
}

std::string letter_words(std::size_t values) {
  return fmt::format(
      "Says: ! a gap beyond a limit, m a moving range beyond its limit, r {} or more "
      "in "
      "a row on one side of the mean, t {} or more in a row rising or falling "
      "(Nelson's "
      "tests 1, 2 and 3 of 1984, from memory, confirm), D a drift, S a step, o "
      "a gap outside the gap window. Of {} "
      "gaps "
      "about {} are beyond a limit by chance.",
      one_side_run, trend_run, values,
      decimals(0.0027 * static_cast<double>(values), 0));
}

/// Whether the gap drifts or steps, without a full stop.
std::string change_words(const RecordCharts& charts) {
  const auto count_of = [&](auto condition) {
    return static_cast<std::size_t>(
        std::count_if(charts.charts.begin(), charts.charts.end(), condition));
  };
  const std::size_t telling = count_of(can_tell);
  const std::size_t silent = charts.charts.size() - telling;
  const std::string need = fmt::format("({} are needed)", boats_to_tell);
  if (telling == 0)
    return fmt::format("too few boats to tell a drift or a step {}", need);
  const std::size_t changed =
      count_of([](const PlaceChart& chart) { return chart.drifts || chart.steps; });
  std::string words = changed == 0 ? fmt::format("no drift and no step in {}",
                                                 counted(telling, "chart"))
                                   : fmt::format("the gap drifts or steps in {} of {}",
                                                 changed, counted(telling, "chart"));
  if (silent > 0)
    words += fmt::format(", too few boats to tell in {} more {}", silent, need);
  return words;
}

/// ", and gaps are outside ..." with the worst places, or "".
std::string outside_words(const RecordCharts& charts, const NumberStyle& style) {
  const auto places = outside_places(charts);
  if (places.empty()) return "";
  std::string words = fmt::format(", and gaps are outside the window at {}: ",
                                  counted(places.size(), "place"));
  for (std::size_t i = 0; i < std::min(places.size(), worst_named); ++i) {
    const GapSeries& series = places[i].chart->series;
    words += fmt::format("{}{} {}, {} ({} of {})", i == 0 ? "" : "; ",
                         side_word(series.side), place_name(series, style),
                         edge_word(series.low), places[i].outside,
                         counted(places[i].boats, "boat"));
  }
  if (places.size() > worst_named)
    words += fmt::format(" and {} more", places.size() - worst_named);
  return words;
}

}  // namespace

std::vector<std::string> chart_notes(const RecordCharts& charts) {
  std::vector<std::string> notes{correlation_words(charts)};
  if (charts.charts.empty()) return notes;
  std::size_t values = 0;
  std::size_t base = 0;
  for (const PlaceChart& chart : charts.charts) {
    values += chart.series.gaps_mm.size();
    base = std::max(base, chart.chart.base);
  }
  notes.push_back(limit_words(base));
  notes.push_back(letter_words(values));
  notes.push_back(fmt::format(
      "D and S: told where the chance of one as large in a steady series is below "
      "{:.2g}, so that of steady records at most {} in 100 is told to change "
      "(Student's t, gaps taken as independent and normal).",
      charts.level, decimals(100 * false_alarms, 0)));
  notes.push_back(
      "Cpk: to the nearer end of the adhesive's gap window, by the standard deviation "
      "of all boats, drift and all; its interval is in charts.csv and in the JSON. "
      "Below 8 boats at a "
      "place there are too few to tell D, S and Cpk.");
  notes.push_back(
      "Blocks: from the lower to the upper limit, or as far as the gaps go; neighbours "
      "together where there are many boats.");
  return notes;
}

std::string change_line(const RecordCharts& charts, const NumberStyle& style) {
  if (charts.charts.empty()) return "No chart: two boats read at one place are needed.";
  const std::string outside = outside_words(charts, style);
  const bool look = finds_change(charts) || !outside.empty();
  const std::string change = change_words(charts);
  return (look ? "LOOK: " + change : capitalised(change)) + outside + ".";
}

std::string record_chart_text(const RecordCharts& charts, const NumberStyle& style) {
  if (charts.boats.empty()) return "The record holds no boat yet.\n";
  std::string text =
      wrapped(fmt::format("{}: charts of {}, hull {} to {}; gap window {} to {}",
                          charts.title, counted(charts.boats.size(), "boat"),
                          charts.boats.front().hull, charts.boats.back().hull,
                          style.size(charts.gap_min),
                          style.size_with_unit(charts.gap_max))) +
      wrapped(change_line(charts, style));
  for (const ReadingState state :
       {ReadingState::Dry, ReadingState::Held, ReadingState::After})
    for (const SideName side : {SideName::Starboard, SideName::Port, SideName::Transom})
      text += side_table(charts, side, state, style);
  text += findings(charts, style);
  if (charts.too_short > 0)
    text +=
        "\n" + wrapped(fmt::format("Of {} places and edges one boat only was read: no "
                                   "chart.",
                                   charts.too_short));
  const auto notes = chart_notes(charts);
  for (std::size_t i = 0; i < notes.size(); ++i)
    text += (i < 2 ? "\n" : "") + wrapped(notes[i]);
  return text;
}

}  // namespace sheerlap

#include "joint/documents/record_csv.h"

#include <fmt/format.h>

#include "joint/documents/csv_files.h"
#include "joint/documents/number_style.h"
#include "joint/documents/record_json.h"
#include "joint/documents/record_words.h"

namespace sheerlap {
namespace {

std::vector<std::string> place_fields(const PlaceChart& chart,
                                      const NumberStyle& style) {
  const GapSeries& series = chart.series;
  return {side_word(series.side),   kind_word(series.kind),   series.name,
          style.full(series.girth), state_word(series.state), edge_word(series.low)};
}

void add(std::vector<std::string>& fields, std::vector<std::string> more) {
  fields.insert(fields.end(), more.begin(), more.end());
}

/// Names with the unit of lengths for "#".
std::vector<std::string> heads(const std::vector<std::string>& names,
                               const NumberStyle& style) {
  std::vector<std::string> result;
  for (std::string name : names) {
    if (name.back() == '#') name.replace(name.size() - 1, 1, "_" + style.unit_name());
    result.push_back(name);
  }
  return result;
}

std::string chance_text(double chance) { return fmt::format("{:.3g}", chance); }

/// The rules that each value meets.
std::vector<std::string> rules_met(const PlaceChart& chart) {
  std::vector<std::string> met(chart.series.gaps_mm.size());
  for (const ChartSignal& signal : chart.chart.signals) {
    // a range stands with the later of its two boats
    const bool range = signal.rule == ChartRule::RangeBeyondLimit;
    for (std::size_t i = range ? signal.last : signal.first; i <= signal.last; ++i)
      met[i] += (met[i].empty() ? "" : " ") + std::string(rule_key(signal.rule));
  }
  return met;
}

}  // namespace

std::string charts_csv(const RecordCharts& charts, LengthUnit unit) {
  const NumberStyle style(unit, Length::mm(1));
  std::string text = csv_record(heads(
      {"side",       "place",        "name",          "girth#",       "state",
       "edge",       "boats",        "limits_from",   "mean#",        "sigma#",
       "low#",       "high#",        "mean_range#",   "range_high#",  "outside",
       "deviation#", "cp",           "cp_from",       "cp_to",        "cpk",
       "cpk_from",   "cpk_to",       "slope_a_boat#", "slope_error#", "drift_chance",
       "drift",      "step_at_hull", "step_before#",  "step_after#",  "step_chance",
       "step"},
      style));
  const auto full = [&](double mm) { return style.full(Length::mm(mm)); };
  const auto word = [](bool flag) { return std::string(flag ? "yes" : "no"); };
  for (const PlaceChart& chart : charts.charts) {
    const IndividualsChart& limits = chart.chart;
    std::vector<std::string> fields = place_fields(chart, style);
    add(fields, {fmt::format("{}", chart.series.hulls.size()),
                 fmt::format("{}", limits.base), full(limits.mean), full(limits.sigma),
                 full(limits.low), full(limits.high), full(limits.mean_range),
                 full(limits.range_high), fmt::format("{}", chart.outside)});
    if (const auto& c = chart.capability)
      add(fields, {full(c->deviation), decimals(c->cp, 3), decimals(c->cp_low, 3),
                   decimals(c->cp_high, 3), decimals(c->cpk, 3),
                   decimals(c->cpk_low, 3), decimals(c->cpk_high, 3)});
    else
      add(fields, std::vector<std::string>(7));
    if (chart.drift)
      add(fields, {full(chart.drift->slope), full(chart.drift->slope_error),
                   chance_text(chart.drift->chance), word(chart.drifts)});
    else
      add(fields, std::vector<std::string>(4));
    if (chart.step)
      add(fields, {fmt::format("{}", chart.series.hulls[chart.step->at]),
                   full(chart.step->before), full(chart.step->after),
                   chance_text(chart.step->chance), word(chart.steps)});
    else
      add(fields, std::vector<std::string>(5));
    text += csv_record(fields);
  }
  return text;
}

std::string points_csv(const RecordCharts& charts, LengthUnit unit) {
  const NumberStyle style(unit, Length::mm(1));
  std::string text =
      csv_record(heads({"side", "place", "name", "girth#", "state", "edge", "hull",
                        "gap#", "moving_range#", "rules"},
                       style));
  for (const PlaceChart& chart : charts.charts) {
    const std::vector<std::string> place = place_fields(chart, style);
    const auto met = rules_met(chart);
    for (std::size_t i = 0; i < chart.series.gaps_mm.size(); ++i) {
      std::vector<std::string> fields = place;
      add(fields,
          {fmt::format("{}", chart.series.hulls[i]),
           style.full(Length::mm(chart.series.gaps_mm[i])),
           i == 0 ? "" : style.full(Length::mm(chart.chart.ranges[i - 1])), met[i]});
      text += csv_record(fields);
    }
  }
  return text;
}

}  // namespace sheerlap

#include "joint/documents/record_words.h"

#include <fmt/format.h>

#include <algorithm>
#include <cassert>
#include <cmath>
#include <initializer_list>

namespace sheerlap {
namespace {

constexpr std::size_t most_named = 5;

/// The boats a signal is of.
std::string hulls_words(const GapSeries& series, const ChartSignal& signal) {
  if (signal.first == signal.last) return fmt::format("{}", series.hulls[signal.first]);
  return fmt::format("{} to {}", series.hulls[signal.first], series.hulls[signal.last]);
}

std::string change(double mm, const NumberStyle& style) {
  return (mm < 0 ? "-" : "+") + style.gap(Length::mm(std::abs(mm)));
}

std::string drift_sentence(const PlaceChart& chart, const NumberStyle& style) {
  // a slope is small: shown over ten boats
  return fmt::format("drifts by {} {} in 10 boats (standard error {})",
                     change(10 * chart.drift->slope, style), style.unit_name(),
                     style.gap(Length::mm(10 * chart.drift->slope_error)));
}

std::string step_sentence(const PlaceChart& chart, const NumberStyle& style) {
  const Step& step = *chart.step;
  return fmt::format("steps by {} {} at hull {}, from {} to {}",
                     change(step.after - step.before, style), style.unit_name(),
                     chart.series.hulls[step.at], style.gap(Length::mm(step.before)),
                     style.gap(Length::mm(step.after)));
}

std::string signal_sentence(const PlaceChart& chart, ChartRule rule) {
  std::string hulls;
  std::size_t count = 0;
  for (const ChartSignal& signal : chart.chart.signals) {
    if (signal.rule != rule) continue;
    if (++count <= most_named)
      hulls += (hulls.empty() ? "" : ", ") + hulls_words(chart.series, signal);
  }
  if (count == 0) return "";
  if (count > most_named) hulls += fmt::format(" and {} more", count - most_named);
  return fmt::format("{}: hull {}", rule_words(rule), hulls);
}

}  // namespace

std::string place_name(const GapSeries& series, const NumberStyle& style) {
  if (series.kind == PlaceKind::Girth) return "girth " + style.running(series.girth);
  return kind_word(series.kind) + " " + series.name;
}

std::string edge_words(bool low) { return low ? "lap's low edge" : "hull's top edge"; }

std::string edge_word(bool low) { return low ? "low" : "top"; }

std::string rule_words(ChartRule rule) {
  switch (rule) {
    case ChartRule::BeyondLimit:
      return "beyond a limit";
    case ChartRule::RangeBeyondLimit:
      return "moving range beyond its limit";
    case ChartRule::OneSide:
      return fmt::format("{} or more in a row on one side of the mean", one_side_run);
    case ChartRule::Rising:
      return fmt::format("{} or more in a row, each wider", trend_run);
    case ChartRule::Falling:
      return fmt::format("{} or more in a row, each tighter", trend_run);
  }
  assert(false);
  return "";
}

std::string chart_letters(const PlaceChart& chart) {
  const auto met = [&](std::initializer_list<ChartRule> rules) {
    return std::any_of(chart.chart.signals.begin(), chart.chart.signals.end(),
                       [&](const ChartSignal& signal) {
                         return std::find(rules.begin(), rules.end(), signal.rule) !=
                                rules.end();
                       });
  };
  std::string letters;
  if (chart.drifts && (!chart.steps || !chart.more_step)) letters += 'D';
  if (chart.steps && (!chart.drifts || chart.more_step)) letters += 'S';
  if (chart.outside > 0) letters += 'o';
  if (met({ChartRule::BeyondLimit})) letters += '!';
  if (met({ChartRule::RangeBeyondLimit})) letters += 'm';
  if (met({ChartRule::OneSide})) letters += 'r';
  if (met({ChartRule::Rising, ChartRule::Falling})) letters += 't';
  return letters;
}

std::vector<std::string> chart_sentences(const PlaceChart& chart,
                                         const NumberStyle& style) {
  std::vector<std::string> sentences;
  const bool both = chart.drifts && chart.steps;
  if (both && chart.more_step)
    sentences.push_back(step_sentence(chart, style) +
                        "; nearer to a step than a drift");
  else if (both)
    sentences.push_back(drift_sentence(chart, style) +
                        "; nearer to a drift than a step");
  else if (chart.drifts)
    sentences.push_back(drift_sentence(chart, style));
  else if (chart.steps)
    sentences.push_back(step_sentence(chart, style));
  for (const ChartRule rule :
       {ChartRule::BeyondLimit, ChartRule::RangeBeyondLimit, ChartRule::OneSide,
        ChartRule::Rising, ChartRule::Falling}) {
    std::string sentence = signal_sentence(chart, rule);
    if (!sentence.empty()) sentences.push_back(std::move(sentence));
  }
  return sentences;
}

std::string chart_file_name(const GapSeries& series) {
  std::string name = series.name;
  for (char& letter : name) {
    const bool plain = (letter >= '0' && letter <= '9') ||
                       (letter >= 'a' && letter <= 'z') ||
                       (letter >= 'A' && letter <= 'Z') || letter == '.';
    if (!plain) letter = '_';
  }
  return fmt::format("{}-{}-{}-{}-{}", side_word(series.side), kind_word(series.kind),
                     name, state_word(series.state), edge_word(series.low));
}

}  // namespace sheerlap

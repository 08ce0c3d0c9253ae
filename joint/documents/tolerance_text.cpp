#include "joint/documents/tolerance_text.h"

#include <fmt/format.h>

#include <algorithm>
#include <string_view>
#include <vector>

#include "joint/documents/check_text.h"
#include "joint/documents/text_table.h"
#include "joint/documents/tolerance_run_text.h"
#include "joint/documents/tolerance_words.h"
#include "joint/documents/wording.h"
#include "joint/perimeter.h"

namespace sheerlap {
namespace {

/// Of stretches, those that are to blame for less than this are left out.
constexpr double least_blame = 0.01;

bool has_spreaders(const ToleranceJob& job) {
  return !job.job.joint.seating.spreaders.empty();
}

std::string window_words(const ToleranceJob& job, const NumberStyle& style) {
  const Adhesive& adhesive = *job.job.joint.adhesive;
  return fmt::format("the gap window of {} to {} {}", style.size(adhesive.gap_min),
                     style.size(adhesive.gap_max), style.unit_name());
}

std::string what_was_done(const ToleranceJob& job) {
  const Tolerance& of = job.tolerance;
  std::string text = fmt::format(
      "{} made up from seed {} by the errors listed at the end, the lid of each in its "
      "best place, the gap looked at in {} places along the joint and there at both "
      "edges of the lap. Behind each figure stands its range, which holds the true one "
      "in 95 of 100 such samples: that is the sample's own error; how well the errors "
      "are known it cannot tell.",
      counted(of.boats, "boat"), of.seed, of.stations);
  if (of.boats < of.asked)
    text += fmt::format(" It was stopped before all {} were done.", of.asked);
  return wrapped(text);
}

void add_share(TextTable& table,
               const SampleStyle& sample,
               const char* name,
               const Estimate& share) {
  table.rows.push_back({name, sample.share(share.value), sample.share_range(share)});
}

std::string shares(const ToleranceJob& job, const SampleStyle& sample) {
  const SqueezeShares& of = job.tolerance.shares;
  TextTable table;
  table.columns = {
      {{"of 100 boats"}, Align::Left}, {{"boats"}}, {{"range"}, Align::Left}};
  const auto add = [&](const char* name, const Estimate& share) {
    add_share(table, sample, name, share);
  };
  if (has_spreaders(job)) {
    add("go on", of.on);
    add("  as they are", of.unsqueezed);
    add("  with a squeeze at the spreaders", of.squeezed);
    add("only with a squeeze beyond a limit", of.beyond);
    add("not with ten times the limits", of.never);
  } else {
    add("go on", of.on);
    add("do not, and there is no spreader to squeeze at", of.never);
  }
  return text_of(table);
}

using LengthText = std::string (NumberStyle::*)(Length) const;

void add_figure(TextTable& table,
                const char* name,
                const char* below,
                const Estimate& of,
                const NumberStyle& style) {
  const auto text = [&](double mm) { return style.gap(Length::mm(mm)); };
  table.rows.push_back({name, below, text(of.value),
                        fmt::format("{} to {}", text(of.low), text(of.high))});
}

std::string margins(const ToleranceJob& job, const NumberStyle& style) {
  const Tolerance& of = job.tolerance;
  TextTable table;
  table.columns = {{{style.unit_name()}, Align::Left},
                   {{"boats that", "stay below"}, Align::Left},
                   {{"value"}},
                   {{"range"}, Align::Left}};
  const auto add_deciles = [&](const char* name, const Deciles& deciles) {
    add_figure(table, name, "10 of 100", deciles.p10, style);
    add_figure(table, "", "50 of 100", deciles.p50, style);
    add_figure(table, "", "90 of 100", deciles.p90, style);
  };
  table.rows.push_back(
      {"margin", "as drawn", style.gap(Length::mm(of.nominal_margin_mm)), ""});
  add_figure(table, "", "mean", of.margin_mean_mm, style);
  add_deciles("", of.margin_mm);
  if (of.squeeze_mm) add_deciles("squeeze needed", *of.squeeze_mm);
  std::string text = fmt::format(
      "The margin is how far the worst gap of a boat lies inside {}; below 0 it lies "
      "outside by so much.",
      window_words(job, style));
  if (of.squeeze_mm)
    text +=
        " The squeeze is that of the spreader that is forced most, of the boats that "
        "need any and that it helps.";
  return text_of(table) + wrapped(text);
}

double blame_of(const BlamedStretch& stretch) {
  return std::max({stretch.holds.value, stretch.tight.value, stretch.wide.value});
}

std::string places(const Tolerance& of,
                   const SampleStyle& sample,
                   const NumberStyle& style) {
  TextTable table;
  table.columns = {{{"side"}, Align::Left}, {{"from"}},         {{"to"}},
                   {{"held", "here"}},      {{"", "within"}},   {{"tight", "here"}},
                   {{"", "within"}},        {{"wide", "here"}}, {{"", "within"}}};
  std::size_t left_out = 0;
  for (const BlamedStretch& stretch : of.stretches) {
    if (blame_of(stretch) < least_blame) {
      ++left_out;
      continue;
    }
    std::vector<std::string> row{side_word(stretch.side), style.running(stretch.from),
                                 style.running(stretch.to)};
    for (const Estimate* share : {&stretch.holds, &stretch.tight, &stretch.wide}) {
      row.push_back(sample.share(share->value));
      row.push_back(sample.share_reach(*share));
    }
    table.rows.push_back(std::move(row));
  }
  std::string text = fmt::format(
      "Of 100 boats: \"held\" are those whose worst gap is there, the lid in its best "
      "place; \"tight\" and \"wide\" have a gap there below or above the window. "
      "\"Within\" is how far the true share may be off. Girths run along the sheer, in "
      "{}.",
      style.unit_words());
  if (left_out > 0)
    text += fmt::format(
        " {} where none of the three is {} of 100 {} left out.",
        left_out == 1 ? "1 stretch" : fmt::format("{} stretches", left_out),
        at_most_decimals(100 * least_blame, 1), left_out == 1 ? "is" : "are");
  return (table.rows.empty() ? "" : text_of(table)) + wrapped(text);
}

std::string lengths(const ToleranceJob& job, const NumberStyle& style) {
  const Tolerance& of = job.tolerance;
  if (of.lengths.empty()) return "";
  const bool run = std::any_of(of.lengths.begin(), of.lengths.end(),
                               [](const LengthMix& mix) { return mix.run_p90; });
  TextTable table;
  table.columns = {{{"length", style.unit_name()}, Align::Left},
                   {{"a boat", "as drawn"}},
                   {{"a boat,", "mean"}},
                   {{"range"}, Align::Left}};
  if (run) {
    table.columns.push_back({{"run, 90 of", "100 need"}});
    table.columns.push_back({{"range"}, Align::Left});
  }
  for (const LengthMix& mix : of.lengths) {
    std::vector<std::string> row{mix.length ? style.size(*mix.length) : "none serves",
                                 fmt::format("{}", mix.nominal),
                                 decimals(mix.in_a_boat.value, 2),
                                 fmt::format("{} to {}", decimals(mix.in_a_boat.low, 2),
                                             decimals(mix.in_a_boat.high, 2))};
    if (mix.run_p90) {
      row.push_back(decimals(mix.run_p90->value, 0));
      row.push_back(fmt::format("{} to {}", decimals(mix.run_p90->low, 0),
                                decimals(mix.run_p90->high, 0)));
    } else if (run) {
      row.insert(row.end(), 2, "");
    }
    table.rows.push_back(std::move(row));
  }
  return fmt::format("\nLengths of the fasteners, {} {}\n", job.job.joint.fastener.size,
                     word_of(job.job.joint.fastener.kind)) +
         text_of(table);
}

}  // namespace

std::string tolerance_verdict(const ToleranceJob& job) {
  const SampleStyle sample(job.tolerance.boats);
  const Estimate& on = job.tolerance.shares.on;
  return fmt::format("{} Of 100 boats {} go on ({}).", verdict_line(job.job.checks),
                     sample.share(on.value), sample.share_range(on));
}

std::string going_on_line(const ToleranceJob& job, const NumberStyle& style) {
  const SampleStyle sample(job.tolerance.boats);
  const Estimate& on = job.tolerance.shares.on;
  return fmt::format("Of 100 boats {} go on ({}): every gap inside {}{}.",
                     sample.share(on.value), sample.share_range(on),
                     window_words(job, style),
                     has_spreaders(job) ? ", no spreader forced beyond its limit" : "");
}

std::string tolerance_text(const ToleranceJob& job, const NumberStyle& style) {
  const SampleStyle sample(job.tolerance.boats);
  return wrapped(going_on_line(job, style)) + "\n" + what_was_done(job) +
         "\nHow they go on\n" + shares(job, sample) + "\nHow far inside\n" +
         margins(job, style) + "\nWhere they are tight or wide\n" +
         places(job.tolerance, sample, style) + "\nAdhesive\n" +
         tolerance_adhesive_text(job, style) + lengths(job, style) +
         "\nWhich error drives what\n" + tolerance_drives_text(job, style) +
         "\nThe errors put in\n" + tolerance_errors_text(job, style) +
         "\nAssumed and left out\n" + tolerance_limits_text(job);
}

}  // namespace sheerlap

#include "joint/sheets/joint_page_head.h"

#include <fmt/format.h>

#include <algorithm>
#include <vector>

#include "joint/documents/cautions.h"
#include "joint/documents/check_text.h"
#include "joint/documents/seating_words.h"
#include "joint/documents/wording.h"
#include "joint/fit_reach.h"
#include "joint/sheets/html_text.h"
#include "joint/sheets/joint_page_fit.h"

namespace sheerlap {
namespace {

std::string item(const std::string& kind, const std::string& html) {
  return fmt::format("<li{}>{}</li>\n",
                     kind.empty() ? "" : fmt::format(" class=\"{}\"", kind), html);
}

std::string checks(const Job& job, const NumberStyle& style) {
  std::string html;
  for (const CheckState state : {CheckState::Fail, CheckState::Warn})
    for (const Check& check : job.checks)
      if (check.state == state)
        html += item(
            word_of(state),
            fmt::format("<b>{}</b> <code>{}</code> {}",
                        state == CheckState::Fail ? "FAIL" : "WARN",
                        html_text(check.id), html_text(check_sentence(check, style))));
  if (html.empty()) return "<p>No check fails or warns.</p>\n";
  return "<ul class=\"checks\">\n" + html + "</ul>\n";
}

std::string at_words(const GapAt& at, const Reach& reach, const NumberStyle& style) {
  return fmt::format("{} {} {}, {} down", style.gap(at.gap), style.unit_name(),
                     style.sentence(reach_words(reach, at.girth)),
                     style.size_with_unit(at.depth));
}

std::string run_words(const FitRun& run,
                      const std::string& sides,
                      const NumberStyle& style) {
  return fmt::format(
      "{} on {} from {} to {} along the sheer, worst {} {} at a depth of "
      "{}",
      capitalised(word_of(run.verdict)), sides, style.running(run.from),
      style.running(run.to), style.gap(run.worst.gap), style.unit_name(),
      style.size_with_unit(run.worst.depth));
}

std::string fit_opening(const Job& job, std::size_t bad, const NumberStyle& style) {
  const Fit& fit = *job.fit;
  std::string text = "The lid goes straight down over the box";
  if (fit.entry.worst < Length())
    text = fmt::format(
        "The lid does not go straight down by itself: {} {} are in the "
        "way {}",
        style.gap(-fit.entry.worst), style.unit_name(),
        fit.entry_reach.all_round ? "all round"
                                  : "on " + sides_words(fit.entry_reach.sides));
  text += fmt::format("; the gap is {} the adhesive's window of {} to {}",
                      bad == 0 ? "everywhere inside" : "not everywhere inside",
                      style.size(job.joint.adhesive->gap_min),
                      style.size_with_unit(job.joint.adhesive->gap_max));
  return text + fmt::format(": least {}; greatest {}; mean {} {}.",
                            at_words(fit.least, fit.least_reach, style),
                            at_words(fit.greatest, fit.greatest_reach, style),
                            style.gap(fit.mean), style.unit_name());
}

/// The stretches outside the window; those that are the same on both hands are one.
std::vector<std::string> bad_runs(const Fit& fit, const NumberStyle& style) {
  std::vector<std::string> runs;
  for (const FitRun& run : fit.runs) {
    if (run.verdict == FitVerdict::Good) continue;
    // the sides come starboard first
    const auto same =
        std::find(runs.begin(), runs.end(), run_words(run, "starboard", style));
    if (run.side == SideName::Port && same != runs.end())
      *same = run_words(run, "starboard and port", style);
    else
      runs.push_back(run_words(run, side_word(run.side), style));
  }
  return runs;
}

/// What a builder does to set the lid on the box.
std::string to_do(const Job& job, const NumberStyle& style) {
  if (!job.going_on) return "";
  std::string list;
  for (const std::string& step : seating_steps(job, style))
    list += item("", html_text(step));
  return std::string("<p>") +
         (job.going_on->seating.fits() ? "To set the lid on the box:"
                                       : "The lid does not go on as it is:") +
         "</p>\n<ol>\n" + list + "</ol>\n";
}

std::string fit_words(const Job& job, const NumberStyle& style) {
  if (!job.fit)
    return "<p>Not worked out: the joint file has no adhesive to take a gap window "
           "from.</p>\n";
  constexpr std::size_t most = 12;
  std::string list;
  const std::vector<std::string> runs = bad_runs(*job.fit, style);
  const std::size_t bad = runs.size();
  for (std::size_t i = 0; i < std::min(bad, most); ++i)
    list += item("", html_text(runs[i]));
  if (bad > most) list += item("", fmt::format("and {} stretches more", bad - most));
  return fmt::format("<p>{}</p>\n", html_text(fit_opening(job, bad, style))) +
         (list.empty() ? "" : "<ul>\n" + list + "</ul>\n") + to_do(job, style);
}

std::string surfaces(const Job& job, const NumberStyle& style) {
  return item("", fmt::format("Lengths in {}; running girths to {}, pitches and "
                              "coordinates to {}, gaps to {}. No girth is a sum of "
                              "rounded pitches.",
                              style.unit_words(), style.step_name(), style.span_step(),
                              style.gap_step())) +
         item("", fmt::format("<b>Drill line</b>: on the lip’s <em>outer</em> face, {} "
                              "below the sheer. The tape is laid along it.",
                              style.size_with_unit(job.joint.fastener.line))) +
         item("",
              "<b>Girth</b> runs along a curve and always says along which: the "
              "drill line, the hull’s outer face, or the sheer, which is the hull’s "
              "trimmed top edge. Starboard and port run from the bow datum aft, the "
              "transom from its starboard corner.") +
         item("",
              "<b>Gap</b>: from the hull’s outer face to the lip’s inner face, "
              "square to the hull. <b>Depth</b>: straight down from the sheer.") +
         item("",
              "X aft, Y to starboard, Z up, where the bit enters the lip’s outer "
              "face. Drill inboard, square to that face.");
}

std::string caution_items() {
  std::string html;
  for (const std::string& paragraph : cautions())
    html += item("", html_text(paragraph));
  return html;
}

std::string default_words(const Joint& joint, const NumberStyle& style) {
  std::string html;
  for (const DefaultUsed& used : joint.defaults)
    html += item("", fmt::format("<code>{}</code> = {}: {}", html_text(used.key),
                                 html_text(style.sentence(used.value)),
                                 html_text(style.sentence(used.why))));
  if (html.empty()) return "";
  return "<h3>Defaults used, because the joint file does not say</h3>\n<ul>\n" + html +
         "</ul>\n";
}

}  // namespace

std::string page_head(const Job& job, const NumberStyle& style) {
  return "<section id=\"checks\" class=\"columns\" aria-label=\"Checks, units and "
         "cautions\">\n<div>\n<h2>Checks that fail or warn</h2>\n" +
         checks(job, style) + default_words(job.joint, style) +
         "</div>\n<div>\n<h2>Does the lid fit the box?</h2>\n" + fit_words(job, style) +
         "<h2>Units and surfaces</h2>\n<ul>\n" + surfaces(job, style) +
         "</ul>\n<h2>Cautions</h2>\n<ul class=\"cautions\">\n" + caution_items() +
         "</ul>\n</div>\n</section>\n";
}

}  // namespace sheerlap

#include <fmt/format.h>

#include "joint/documents/wording.h"
#include "joint/reasons/term.h"
#include "joint/sheets/html_text.h"
#include "joint/sheets/joint_page_strength.h"
#include "joint/sheets/strength_words.h"

namespace sheerlap {
namespace {

std::string value_of(const Reason& step) {
  const std::string unit = figure_unit(step.unit);
  return working_number(step.value) + (unit.empty() ? "" : " " + unit);
}

std::string given_row(const Reason& step, const std::string& from) {
  return fmt::format(
      "<tr><th scope=\"row\" class=\"words\">{}</th><td class=\"words\">{}</td>"
      "<td>{}</td><td class=\"words\">{}</td></tr>\n",
      html_text(step.letters), html_text(step.what), html_text(value_of(step)),
      html_text(from));
}

std::string given_table(const Explanation& explanation,
                        const Joint& joint,
                        const OriginWords& words_of) {
  std::string rows;
  for (const Reason& step : explanation.steps)
    if (step.is_given())
      rows += given_row(step, origin_text(step.origin, joint, words_of));
  if (rows.empty()) return "";
  return "<table class=\"small\"><thead><tr><th scope=\"col\" "
         "class=\"words\">given</th>"
         "<th scope=\"col\" class=\"words\">what</th><th scope=\"col\">value</th><th "
         "scope=\"col\" class=\"words\">where from</th></tr></thead><tbody>\n" +
         rows + "</tbody></table>\n";
}

std::string worked_step(const Reason& step, const Reason* before) {
  std::string html =
      fmt::format("<dt><b>{} = {}</b> {}</dt>\n<dd>", html_text(step.letters),
                  html_text(value_of(step)), html_text(step.what));
  if (step.is_found())
    html += fmt::format("{}<br>accuracy: {}", html_text(step.found),
                        html_text(step.accuracy));
  else
    html += fmt::format("<code>{} = {}</code>", html_text(step.letters),
                        html_text(step.formula));
  if (!step.is_found() && step.numbers != step.formula)
    html += fmt::format("<br><code>= {}</code>", html_text(step.numbers));
  const bool as_before =
      before && before->source == step.source && before->validity == step.validity;
  if (!as_before)
    html += fmt::format("<br><span class=\"small\">{}. Validity: {}</span>",
                        html_text(step.source), html_text(step.validity));
  return html + "</dd>\n";
}

std::string folded(const Explanation& explanation,
                   const Joint& joint,
                   const OriginWords& words_of) {
  std::string steps;
  const Reason* before = nullptr;
  for (const Reason& step : explanation.steps) {
    if (step.is_given()) continue;
    steps += worked_step(step, before);
    before = &step;
  }
  return fmt::format(
      "<details><summary>{} <code>{}</code></summary>\n{}<dl>\n{}</dl>\n</details>\n",
      html_text(capitalised(explanation.what)), html_text(explanation.figure),
      given_table(explanation, joint, words_of), steps);
}

}  // namespace

std::string folded_workings(const Explanations& explanations,
                            const Joint& joint,
                            const OriginWords& words_of) {
  std::string html;
  for (const Explanation& explanation : explanations)
    html += folded(explanation, joint, words_of);
  return html;
}

}  // namespace sheerlap

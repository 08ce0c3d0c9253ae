#include "joint/sheets/joint_page.h"

#include <fmt/format.h>

#include <set>
#include <vector>

#include "joint/documents/check_text.h"
#include "joint/documents/drilling_words.h"
#include "joint/documents/wording.h"
#include "joint/sheets/html_text.h"
#include "joint/sheets/joint_page_beads.h"
#include "joint/sheets/joint_page_boats.h"
#include "joint/sheets/joint_page_charts.h"
#include "joint/sheets/joint_page_data.h"
#include "joint/sheets/joint_page_files.h"
#include "joint/sheets/joint_page_head.h"
#include "joint/sheets/joint_page_holes.h"
#include "joint/sheets/joint_page_plan.h"
#include "joint/sheets/joint_page_strength.h"
#include "joint/sheets/joint_page_table.h"
#include "joint/sheets/joint_page_words.h"
#include "joint/sheets/short_text.h"

namespace sheerlap {
namespace {

/// Nothing is fetched, and only what stands in the page is run.
constexpr const char* content_policy =
    "default-src 'none'; script-src 'unsafe-inline'; style-src 'unsafe-inline'; "
    "img-src data:; base-uri 'none'; form-action 'none'";

/// Each printed page says whose it is, and which.
std::string paper_rules(const Job& job, const SheetStyle& style) {
  return fmt::format(
      "@page {{ size: {} landscape; margin: 10mm 10mm 14mm;\n  @bottom-left {{ "
      "content: {}; "
      "font: 7.5pt sans-serif; }}\n  @bottom-right {{ content: \"page \" counter(page) "
      "\" of \" counter(pages); font: 7.5pt sans-serif; }} }}\n",
      style.paper == Paper::A4 ? "A4" : "letter",
      css_string(short_text(job.joint.title, 90) + ", layout " +
                 layout_fingerprint(*job.schedule)));
}

std::string head(const Job& job, const SheetStyle& style) {
  return fmt::format(
      "<!DOCTYPE html>\n<html lang=\"en-GB\">\n<head>\n<meta charset=\"utf-8\">\n<meta "
      "http-equiv=\"Content-Security-Policy\" content=\"{}\">\n<meta name=\"viewport\" "
      "content=\"width=device-width, initial-scale=1\">\n<link rel=\"icon\" "
      "href=\"data:,\">\n<title>{}: the "
      "joint</title>\n<style>\n{}{}{}{}</style>\n<style "
      "id=\"paper-hull\">@page {{ @bottom-center {{ content: \"hull number "
      "________________\"; font: 7.5pt sans-serif; }} }}</style>\n</head>\n",
      content_policy, html_text(job.joint.title), joint_page_css,
      joint_page_strength_css, joint_page_boats_css, paper_rules(job, style));
}

std::string header(const Job& job, const SheetStyle& style) {
  const char* const kind = verdict(job.checks) == CheckState::Fail   ? "stop"
                           : verdict(job.checks) == CheckState::Warn ? "look"
                                                                     : "go";
  return fmt::format(
      "<header>\n<h1>{}</h1>\n{}<p class=\"verdict {}\">{}</p>\n{}</header>\n",
      html_text(job.joint.title),
      style.report.date
          ? "<p class=\"date\">" + html_text(*style.report.date) + "</p>\n"
          : "",
      kind, html_text(verdict_line(job.checks)),
      fmt::format(fmt::runtime(page_links), job.strength ? strength_link : "",
                  style.record ? boats_link : ""));
}

std::string plan_section(const Job& job,
                         const std::vector<PageHole>& holes,
                         const NumberStyle& style) {
  return fmt::format(
      "<section id=\"plan\" aria-labelledby=\"plan-name\">\n<h2 "
      "id=\"plan-name\">Plan</h2>\n{}<div class=\"sheet\" "
      "id=\"plan-sheet\">\n{}</div>\n"
      "{}{}</section>\n",
      plan_words, plan_svg(job, holes, style),
      plan_legend + bend_legend(job, style) + "</ul>\n", stretch_table(job, style));
}

std::string chart_section(const Job& job,
                          const std::vector<PageHole>& holes,
                          const NumberStyle& style) {
  if (!job.fit)
    return "<section id=\"charts\"><h2>Gap and beads along the girth</h2><p>Not worked "
           "out: the joint file has no adhesive to take a gap window "
           "from.</p></section>\n";
  std::string html = chart_words;
  for (const PerimeterSide& side : job.perimeter.sides) {
    html += fmt::format(
        "<figure>\n<figcaption><b>{}</b></figcaption>\n<div "
        "class=\"sheet\">\n{}</div>\n",
        capitalised(side_word(side.name)), side_chart(job, side, holes, style));
    const std::string beads = bead_words(job, side.name, style);
    if (!beads.empty())
      html += fmt::format(
          "<p class=\"small\">Beads, {}, by girth along the sheer, {}: "
          "{}.</p>\n",
          job.joint.adhesive->bead_shape == BeadShape::Triangle
              ? "base and height of a triangle"
              : "diameter",
          style.unit_name(), html_text(beads));
    html += "</figure>\n";
  }
  return "<section id=\"charts\" aria-labelledby=\"charts-name\">\n" + html +
         "</section>\n";
}

/// A choice among the lengths of the fasteners; none where all are of one.
std::string length_filter(const Job& job, const NumberStyle& style) {
  std::set<Length> lengths;
  for (const DrillStation& station : job.schedule->stations)
    if (station.length) lengths.insert(*station.length);
  if (lengths.size() < 2) return "";
  const NumberStyle tools = tool_style(job.schedule->fastener, style);
  std::string options;
  for (const Length length : lengths)
    options += fmt::format("<option>{}</option>", tools.size(length));
  return fmt::format(
      "</select></label>\n<label>Length, {} <select id=\"filter-length\">"
      "<option value=\"\">all</option>{}",
      tools.unit_name(), options);
}

std::string schedule_section(const Job& job,
                             const std::vector<PageHole>& holes,
                             const NumberStyle& style) {
  std::string jigs, sides;
  for (const JigSegment& jig : job.schedule->jigs)
    jigs += fmt::format("<option>{}</option>", html_text(jig.name));
  for (const PerimeterSide& side : job.perimeter.sides)
    sides += fmt::format("<option>{}</option>", side_word(side.name));
  return fmt::format(
      "<section id=\"schedule\" aria-labelledby=\"schedule-name\">\n<h2 "
      "id=\"schedule-name\">Drilling schedule</h2>\n<p>{} for {}, on "
      "{}.</p>\n{}{}{}{}{}<div "
      "class=\"sheet table\" id=\"schedule-sheet\" tabindex=\"0\" role=\"region\" "
      "aria-labelledby=\"schedule-name\">\n{}</div>\n</section>\n",
      counted(holes.size(), "hole"), html_text(fastener_name(job.schedule->fastener)),
      counted(job.schedule->jigs.size(), "jig"), filter_start, sides, filter_middle,
      jigs + length_filter(job, style), filter_end, schedule_table(job, holes, style));
}

std::string scripts(const Json& data) {
  std::string html =
      fmt::format("<script type=\"application/json\" id=\"page-data\">{}</script>\n",
                  script_json(data));
  for (const auto script :
       {joint_page_record_js, joint_page_section_js, joint_page_choice_js,
        joint_page_reading_js, joint_page_filter_js, joint_page_controls_js,
        joint_page_strength_js})
    html += fmt::format("<script>\n{}</script>\n", script);
  return html;
}

}  // namespace

Result<std::string> joint_page(const Job& job, const SheetStyle& style) {
  const NumberStyle numbers(style.report.unit, job.joint.layout.round_to);
  const auto holes = page_holes(job, numbers);
  std::string html = head(job, style) + "<body>\n" + header(job, style) + "<main>\n" +
                     page_head(job, numbers) + hull_controls +
                     plan_section(job, holes, numbers);
  html += "<div class=\"beside\">\n" + chart_section(job, holes, numbers);
  html += fmt::format(fmt::runtime(hole_panel), numbers.unit_name()) + "</div>\n";
  html += strength_section(job, numbers, style.report.origin);
  html += schedule_section(job, holes, numbers);
  if (style.record) html += boats_section(*style.record, numbers);
  html += "</main>\n" + std::string(chosen_bar);
  return html + scripts(page_data(job, holes, numbers)) + "</body>\n</html>\n";
}

}  // namespace sheerlap

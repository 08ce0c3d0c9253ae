#include "joint/sheets/joint_page_strength.h"

#include <fmt/format.h>

#include <cmath>
#include <functional>
#include <vector>

#include "joint/documents/check_text.h"
#include "joint/documents/wording.h"
#include "joint/sheets/bond_course.h"
#include "joint/sheets/html_text.h"
#include "joint/sheets/joint_page_strength_chart.h"
#include "joint/sheets/joint_page_words.h"
#include "joint/sheets/strength_words.h"

namespace sheerlap {
namespace {

std::string use_box(const char* name, double use, const std::string& where) {
  return fmt::format("<p class=\"use-box{}\">{}<b>{}: use {}</b>{}</p>\n",
                     use <= 1 ? "" : " over", name, use_verdict(use),
                     html_text(use_of_one(use)), html_text(where));
}

std::string use_boxes(const Job& job, const NumberStyle& style) {
  const BondPoint& bond = job.strength->bond.worst;
  const FastenerStrengths& fasteners = job.strength->fasteners;
  std::string html = use_box(
      "The bond alone, at its worst place", bond.utilisation,
      fmt::format("{}, girth {} {} along the sheer: {}", side_word(bond.side),
                  style.running(bond.girth), style.unit_name(), mode_words(bond.mode)));
  if (!fasteners.rows.empty()) {
    const FastenerRow& worst = fasteners.rows[fasteners.worst];
    html += use_box("The fasteners alone, at the worst hole", worst.utilisation,
                    fmt::format("{}, {}, girth {} {} on the drill line: {}", worst.mark,
                                side_word(worst.side), style.running(worst.girth),
                                style.unit_name(), mode_words(worst.governing)));
  }
  return "<div class=\"abreast\">\n" + html + "</div>\n";
}

std::string value_table(const char* caption, const std::vector<NamedValue>& values) {
  if (values.empty()) return "";
  std::string rows;
  for (const NamedValue& one : values)
    rows += fmt::format(
        "<tr><th scope=\"row\" class=\"words\">{}</th><td "
        "class=\"words\">{}</td></tr>\n",
        html_text(one.name), html_text(one.value));
  return fmt::format(
      "<table class=\"small named\"><caption>{}</caption><tbody>\n{}</tbody></table>\n",
      caption, rows);
}

std::string list(const std::vector<std::string>& items) {
  std::string html;
  for (const std::string& item : items)
    html += fmt::format("<li>{}</li>\n", html_text(item));
  return "<ul>\n" + html + "</ul>\n";
}

std::string left_out_words(const Job& job) {
  std::string html;
  for (const std::string& words : not_worked(job))
    html += fmt::format("<p><b>Not worked: {}.</b></p>\n", html_text(words));
  return html;
}

std::string checks(const Job& job, const NumberStyle& style) {
  std::vector<std::string> items;
  for (const Check& check : strength_checks(job))
    items.push_back(capitalised(word_of(check.state)) + ". " +
                    check_sentence(check, style));
  return "<h3>Checks of the strength</h3>\n" + list(items);
}

std::string charts(const Job& job, const NumberStyle& style) {
  std::vector<double> uses;
  for (const BondPoint& point : job.strength->bond.along)
    uses.push_back(point.utilisation);
  const UseAxis axis = use_axis(uses);
  std::string html = "<h3>Use of the bond along the girth</h3>\n";
  html += use_legend;
  for (const BondCourse& course : bond_courses(job))
    html += fmt::format(
        "<figure>\n<figcaption><b>{}</b></figcaption>\n<div "
        "class=\"sheet\">\n{}</div>\n"
        "</figure>\n",
        capitalised(side_word(course.side->name)),
        use_chart(course, axis, job.strength->bond.worst, style));
  return html;
}

std::string force(const std::optional<double>& value) {
  return value ? decimals(*value, 0) : "–";
}

/// A column of the holes: its heading, what it is, and its cells.
struct HoleColumn {
  const char* heading;
  const char* what;
  std::function<std::string(const FastenerRow&)> cell;
};

std::vector<HoleColumn> hole_columns(const NumberStyle& style) {
  const auto capacity = [](std::optional<double> FastenerRow::*which) {
    return [which](const FastenerRow& row) { return force(row.*which); };
  };
  return {
      {"use", "of 1, with the factor",
       [](const FastenerRow& row) {
         return use_words(row.utilisation) + (row.utilisation <= 1 ? "" : " !");
       }},
      {"girth", "on the drill line",
       [&style](const FastenerRow& row) { return style.running(row.girth); }},
      {"carries", "length of joint",
       [&style](const FastenerRow& row) { return style.span(row.tributary); }},
      {"shear, N", "on it, limit load",
       [](const FastenerRow& row) { return force(row.load); }},
      {"pull, N", "on it, limit load",
       [](const FastenerRow& row) { return force(row.pull); }},
      {"metal, N", "carries in shear", capacity(&FastenerRow::shank)},
      {"crushed, N", "laminate carries before", capacity(&FastenerRow::bearing)},
      {"sheared out, N", "laminate carries before", capacity(&FastenerRow::shear_out)},
      {"torn, N", "laminate carries before", capacity(&FastenerRow::net_tension)},
      {"metal, N", "carries in pull", capacity(&FastenerRow::shank_pull)},
      {"head, N", "carries before pulled through",
       capacity(&FastenerRow::pull_through)},
      {"thread, N", "carries before pulled out", capacity(&FastenerRow::pull_out)}};
}

std::string hole_row(const FastenerRow& row, const std::vector<HoleColumn>& columns) {
  std::string html = fmt::format(
      "<tr class=\"hole{0}\" data-mark=\"{1}\" data-use=\"{2}\"><th "
      "scope=\"row\"><button type=\"button\" class=\"mark\" tabindex=\"-1\" "
      "aria-pressed=\"false\">{1}</button></th>",
      row.utilisation <= 1 ? "" : " over", row.mark,
      std::isfinite(row.utilisation) ? decimals(row.utilisation, 6) : "1e9");
  for (const HoleColumn& column : columns)
    html += fmt::format("<td>{}</td>", html_text(column.cell(row)));
  return html + fmt::format("<td class=\"words\">{}</td></tr>\n",
                            html_text(mode_words(row.governing)));
}

std::string hole_table(const Job& job, const NumberStyle& style) {
  const FastenerStrengths& fasteners = job.strength->fasteners;
  if (fasteners.rows.empty()) return "";
  const auto columns = hole_columns(style);
  std::string html = "<tr><th scope=\"col\">mark</th>";
  for (const HoleColumn& column : columns)
    html += fmt::format("<th scope=\"col\"><b>{}</b> <span>{}</span></th>",
                        column.heading, column.what);
  html = "<table id=\"use-table\" class=\"roving\"><thead>" + html +
         "<th scope=\"col\" class=\"words\"><b>gives first</b></th></tr></thead>"
         "<tbody>\n";
  for (const FastenerRow& row : fasteners.rows) html += hole_row(row, columns);
  return fmt::format(fmt::runtime(use_table_words), style.unit_name()) + html +
         "</tbody></table>\n</div>\n";
}

std::string rules(const Job& job, const NumberStyle& style) {
  std::string rows;
  for (const RuleRow& row : job.strength->rules) {
    const RuleCells cells = rule_cells(row, style);
    rows += fmt::format(
        "<tr{}><th scope=\"row\" class=\"words\">{}</th><td "
        "class=\"words\">{}</td><td>{}"
        "</td><td class=\"words\">{}</td><td>{}</td><td>{}</td><td class=\"words\">{}"
        "</td><td class=\"words\">{}</td></tr>\n",
        row.state == RuleState::DoesNotApply ? " class=\"idle\"" : "",
        html_text(cells.state), html_text(cells.asks_words), cells.asks,
        html_text(cells.has_words), cells.has, cells.margin, html_text(cells.source),
        html_text(cells.notes));
  }
  return fmt::format(fmt::runtime(rules_words), style.unit_name()) + rows +
         "</tbody></table>\n</div>\n";
}

std::string limits(const Job& job, const NumberStyle& style) {
  std::vector<std::string> outside, memory;
  for (const OutsideValidity& one : job.strength->bond.outside)
    outside.push_back(style.sentence(one.what) +
                      ". Where: " + style.sentence(one.where));
  for (const std::string& one : remembered(*job.strength))
    memory.push_back(style.sentence(one));
  std::string html;
  if (!outside.empty())
    html += "<h3>Outside a formula’s validity</h3>\n" + list(outside);
  if (!memory.empty())
    html += "<h3>From memory, confirm before use</h3>\n" + list(memory);
  return html;
}

}  // namespace

std::string strength_section(const Job& job,
                             const NumberStyle& style,
                             const OriginWords& words_of) {
  if (!job.strength) return "";
  const Strength& strength = *job.strength;
  std::string left_out;
  for (const std::string& words : strength.clamping.left_out)
    left_out += fmt::format("<p class=\"small\">Not worked out: {}</p>\n",
                            html_text(style.sentence(words)));
  return std::string(strength_start) + use_boxes(job, style) + strength_hint +
         "<div class=\"abreast\">\n" +
         value_table("Bond, worst place", worst_bond_values(job, style)) +
         value_table("Fasteners, worst hole", worst_hole_values(job, style)) +
         "</div>\n" + left_out_words(job) + checks(job, style) +
         "<h3>How loads combine</h3>\n" + list(strength.combination) +
         charts(job, style) + hole_table(job, style) + rules(job, style) +
         "<h3>Clamping, and the share of the load while the bond is whole</h3>\n<div "
         "class=\"abreast\">\n" +
         value_table("Closing the lip on the wet paste",
                     clamping_values(strength.clamping, style)) +
         value_table("Load share, bond whole", sharing_values(strength.sharing)) +
         "</div>\n" + left_out +
         fmt::format("<p class=\"small\">For information: {}.</p>\n",
                     html_text(style.sentence(strength.sharing.says))) +
         limits(job, style) + reasons_words +
         folded_workings(strength.reasons, job.joint, words_of) +
         "</div>\n</section>\n";
}

}  // namespace sheerlap

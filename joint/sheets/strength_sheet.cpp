#include "joint/sheets/strength_sheet.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "joint/documents/cautions.h"
#include "joint/documents/check_text.h"
#include "joint/documents/wording.h"
#include "joint/sheets/sheet_flow.h"
#include "joint/sheets/strength_chart.h"
#include "joint/sheets/strength_tables.h"
#include "joint/sheets/strength_words.h"
#include "joint/sheets/strength_working.h"

namespace sheerlap {
namespace {

constexpr Lettering small{.height_mm = letter_height::least};
/// A table's heading and its words stand with this much of it at least.
constexpr double start_of_table_mm = 60;

void list(SheetFlow& flow, const std::vector<std::string>& items) {
  for (const std::string& item : items) flow.paragraph("- " + item, small);
}

/// The two uses in large figures, side by side; white on black where one is over 1.
void draw_uses(SheetFlow& flow, const Job& job, const NumberStyle& style) {
  const BondPoint& bond = job.strength->bond.worst;
  const FastenerStrengths& fasteners = job.strength->fasteners;
  constexpr double high_mm = 20, apart_mm = 4;
  flow.need(high_mm);
  const Box room = flow.room();
  const double width = (room.width - apart_mm) / 2;
  const auto draw = [&](double left, const std::string& name, double use,
                        const std::string& where) {
    Page& page = flow.page();
    const Box box{left, room.top, width, high_mm};
    const bool over = !(use <= 1);
    if (over) page.fill(box.corners());
    page.box(box, {.width_mm = line_width::heavy});
    const double ink = over ? shade::white : shade::black;
    page.fitted({box.left + 2.5, box.top + 2}, name, width - 5,
                {.upright = Upright::Top, .ink = ink});
    page.fitted({box.left + 2.5, box.top + 6.5},
                fmt::format("{}: use {}", use_verdict(use), use_of_one(use)), width - 5,
                {.height_mm = letter_height::title,
                 .bold = true,
                 .upright = Upright::Top,
                 .ink = ink});
    page.fitted_lines({box.left + 2.5, box.top + 14.5}, where, width - 5, 2,
                      {.height_mm = letter_height::least, .ink = ink});
  };
  draw(
      room.left, "The bond alone, at its worst place", bond.utilisation,
      fmt::format("{}, girth {} {} along the sheer: {}", side_word(bond.side),
                  style.running(bond.girth), style.unit_name(), mode_words(bond.mode)));
  if (!fasteners.rows.empty()) {
    const FastenerRow& worst = fasteners.rows[fasteners.worst];
    draw(room.left + width + apart_mm, "The fasteners alone, at the worst hole",
         worst.utilisation,
         fmt::format("{}, {}, girth {} {} on the drill line: {}", worst.mark,
                     side_word(worst.side), style.running(worst.girth),
                     style.unit_name(), mode_words(worst.governing)));
  }
  flow.take(high_mm);
  flow.space(2);
}

PageTable value_table(const std::vector<NamedValue>& values,
                      const std::string& heading) {
  PageColumn name;
  name.heading = {heading};
  name.align = Align::Left;
  name.wraps = true;
  name.stretch = 1;
  PageColumn value = name;
  value.heading = {""};
  value.bold = true;
  PageTable table;
  table.columns = {name, value};
  for (const NamedValue& one : values) table.rows.push_back({{one.name, one.value}});
  return table;
}

/// Two tables beside each other.
void abreast(SheetFlow& flow, const PageTable& first, const PageTable& second) {
  constexpr double apart_mm = 4;
  const double width = (flow.room().width - apart_mm) / 2;
  const PlacedTable left(flow.page(), first, width);
  const PlacedTable right(flow.page(), second, width);
  const auto height = [](const PlacedTable& placed, const PageTable& table) {
    double all = placed.heading_mm();
    for (std::size_t i = 0; i < table.rows.size(); ++i) all += placed.row_mm(i);
    return all;
  };
  flow.need(std::max(height(left, first), height(right, second)));
  const Box room = flow.room();
  double taken = 0;
  if (!first.rows.empty())
    taken = left.draw(flow.page(), {room.left, room.top}, 0, first.rows.size());
  if (!second.rows.empty())
    taken = std::max(
        taken, right.draw(flow.page(), {room.left + width + apart_mm, room.top}, 0,
                          second.rows.size()));
  flow.take(taken);
  flow.space(2);
}

void write_verdict(SheetFlow& flow, const Job& job, const NumberStyle& style) {
  draw_uses(flow, job, style);
  flow.paragraph(
      "Use = limit load x factor / capacity, at this place alone. Bond and fasteners "
      "are each worked for the whole load and never added. For the naval architect "
      "and the class or flag authority to judge; the adhesive's data sheet goes before "
      "any figure here.",
      {.height_mm = letter_height::least, .bold = true});
  abreast(flow, value_table(worst_bond_values(job, style), "bond, worst place"),
          value_table(worst_hole_values(job, style), "fasteners, worst hole"));
  for (const std::string& words : not_worked(job))
    flow.paragraph("NOT WORKED: " + words + ".",
                   {.height_mm = letter_height::least, .bold = true});
  flow.heading("Checks of the strength");
  flow.table(strength_check_table(job, style));
  flow.heading("How loads combine");
  list(flow, job.strength->combination);
}

void write_tables(SheetFlow& flow, const Job& job, const NumberStyle& style) {
  flow.need(start_of_table_mm);
  flow.heading("The bond at the rows of the sheer table");
  flow.paragraph(
      fmt::format("Lengths in {}. Girth along the sheer; gaps square to the hull's "
                  "outer face at the edges of the bond band; loads are limit loads, "
                  "heat included; stresses are peaks at the limit load; the use has "
                  "the factor {}. !: over 1.",
                  style.unit_words(),
                  at_most_decimals(job.joint.loads->factor_bond, 3)),
      small);
  flow.table(station_table(job, style));
  if (job.strength->fasteners.rows.empty()) return;
  flow.need(start_of_table_mm);
  flow.heading("The fasteners hole by hole, the bond gone");
  flow.paragraph(
      fmt::format("Girth on the drill line, lip's outer face, and the length of joint "
                  "that a hole carries in {}; forces in N, loads at the limit load, "
                  "capacities before factors, the lesser of lip and hull; the use has "
                  "the factor {}. !: over 1. -: does not apply.",
                  style.unit_words(),
                  at_most_decimals(job.joint.loads->factor_fastener, 3)),
      small);
  flow.table(hole_use_table(job, style));
}

void write_rules(SheetFlow& flow, const Job& job, const NumberStyle& style) {
  flow.need(start_of_table_mm);
  flow.heading("Published rules beside this joint");
  flow.paragraph(
      "Whether the joint has to keep a rule is for its naval architect or class to "
      "say. Held to: named in [strength] rules. Those remembered and those for "
      "information never pass, warn or fail by themselves.",
      small);
  const auto [table, notes] = rule_table(job, style);
  flow.table(table);
  for (std::size_t i = 0; i < notes.size(); ++i)
    flow.paragraph(fmt::format("{}: {}", i + 1, notes[i]), small);
}

void write_clamping(SheetFlow& flow, const Job& job, const NumberStyle& style) {
  const Strength& strength = *job.strength;
  const auto closing =
      value_table(clamping_values(strength.clamping, style), "closing the wet lip");
  const auto sharing =
      value_table(sharing_values(strength.sharing), "load share, bond whole");
  flow.heading("Clamping, and the share of the load while the bond is whole");
  abreast(flow, closing, sharing);
  for (const std::string& words : strength.clamping.left_out)
    flow.paragraph("- not worked out: " + style.sentence(words), small);
  flow.paragraph("For information: " + style.sentence(strength.sharing.says) + ".",
                 small);
}

void write_limits(SheetFlow& flow, const Job& job, const NumberStyle& style) {
  flow.heading("Outside a formula's validity");
  if (job.strength->bond.outside.empty())
    flow.paragraph("Nothing was found outside.", small);
  for (const OutsideValidity& outside : job.strength->bond.outside)
    flow.paragraph("- " + style.sentence(outside.what) +
                       ". Where: " + style.sentence(outside.where),
                   small);
  const auto memory = remembered(*job.strength);
  flow.heading("From memory, confirm before use");
  if (memory.empty()) flow.paragraph("Nothing was remembered.", small);
  for (const std::string& one : memory)
    flow.paragraph("- " + style.sentence(one), small);
  flow.heading("Cautions");
  list(flow, cautions());
}

}  // namespace

Result<std::string> strength_sheet(const Job& job, const SheetStyle& style) {
  const NumberStyle numbers(style.report.unit, job.joint.layout.round_to);
  SheetTitle title;
  title.title = job.joint.title;
  title.what = "strength of the joint, calculation";
  title.lengths = numbers.unit_name() + "; girths to " + numbers.step_name() +
                  "; forces N, stresses N/mm2";
  title.date = style.report.date;
  return pdf_bytes(
      {job.joint.title + ": strength", style.report.date}, [&](PdfFile& file) {
        SheetFlow flow(file, small_page(style.paper), title);
        write_verdict(flow, job, numbers);
        write_limits(flow, job, numbers);
        draw_bond_use(flow, job, numbers);
        draw_fastener_use(flow, job);
        write_tables(flow, job, numbers);
        write_rules(flow, job, numbers);
        write_clamping(flow, job, numbers);
        flow.heading("Calculations");
        flow.paragraph(
            "Lengths in mm, forces in N and stresses in N/mm2 throughout, whatever the "
            "unit of this sheet; six digits shown. Yours: the joint file's value at "
            "that line.",
            small);
        write_workings(flow, job.strength->reasons, job.joint, style.report.origin);
      });
}

}  // namespace sheerlap

#include "joint/documents/strength_text.h"

#include <fmt/format.h>

#include <algorithm>

#include "joint/documents/bond_text.h"
#include "joint/documents/clamping_text.h"
#include "joint/documents/fastener_use_text.h"
#include "joint/documents/load_text.h"
#include "joint/documents/memory_text.h"
#include "joint/documents/rule_text.h"
#include "joint/documents/text_table.h"
#include "joint/documents/wording.h"

namespace sheerlap {
namespace {

std::string governing_table(const Job& job, const NumberStyle& style) {
  const Strength& strength = *job.strength;
  TextTable table;
  table.columns = {{{"part"}, Align::Left},
                   {{"use"}},
                   {{"look"}, Align::Left},
                   {{"where, and what gives first"}, Align::Left}};
  const BondPoint& bond = strength.bond.worst;
  table.rows.push_back(
      {"bond", use_text(bond.utilisation), use_flag(bond.utilisation),
       style.sentence(place_words(bond)) + ": " + mode_words(bond.mode)});
  const FastenerStrengths& fasteners = strength.fasteners;
  if (!fasteners.rows.empty()) {
    const FastenerRow& worst = fasteners.rows[fasteners.worst];
    table.rows.push_back(
        {"fasteners alone", use_text(worst.utilisation), use_flag(worst.utilisation),
         fmt::format("{}, {}, girth {} on the drill line: {}", worst.mark,
                     side_word(worst.side), style.running(worst.girth),
                     mode_words(worst.governing))});
  }
  return text_of(table);
}

std::string heading(const Job& job, const NumberStyle& style) {
  return governing_table(job, style) + "\n" +
         wrapped(fmt::format(
             "Use is load x factor / capacity: up to 1 is carried, as far as the "
             "loads, "
             "strengths and formulas below go. Lengths are in {}, girths rounded to "
             "{}; "
             "forces and stresses are in N, N/mm and N/mm2{}.",
             style.unit_words(), style.step_name(),
             style.unit() == LengthUnit::Inches ? ", which stay metric" : ""));
}

std::string left_out(const Strength& strength, const NumberStyle& style) {
  std::string text;
  for (const auto& list : {strength.fasteners.left_out, strength.clamping.left_out})
    for (const std::string& one : list)
      text += wrapped("- " + style.sentence(capitalised(one)) + ".", text_width, 2);
  text += wrapped(
      "- Fatigue, creep, ageing, impact, fire and workmanship are in no figure but "
      "the factors asked for. Nor is the lamination around the joint, or prying.",
      text_width, 2);
  return "Left out, and why\n" + text;
}

std::string deferral() {
  return "Who decides\n" +
         wrapped(
             "This is a calculation to check, with the loads, factors and strengths of "
             "the joint file. Whether the joint is strong enough is for a qualified "
             "naval architect and the class or flag authority; what the adhesive "
             "carries is on its own data sheet and in a test of your own laminates.");
}

}  // namespace

std::string strength_text(const Job& job,
                          const NumberStyle& style,
                          const OriginWords& words_of) {
  std::string text = heading(job, style);
  for (const std::string& part :
       {load_text(job, style, words_of), bond_text(job, style),
        fastener_use_text(job, style), sharing_text(job, style),
        clamping_text(job, style), rule_text(job.strength->rules, style),
        left_out(*job.strength, style), memory_text(job), deferral()})
    if (!part.empty()) text += "\n" + part;
  return text;
}

std::string strength_summary(const Job& job, const NumberStyle& style) {
  const Strength& strength = *job.strength;
  const BondPoint& bond = strength.bond.worst;
  std::string text =
      fmt::format("bond: use {} at its worst place, {}: {}", use_text(bond.utilisation),
                  style.sentence(place_words(bond)), mode_words(bond.mode));
  const FastenerStrengths& fasteners = strength.fasteners;
  if (fasteners.rows.empty()) return text;
  const FastenerRow& worst = fasteners.rows[fasteners.worst];
  const auto over =
      std::count_if(fasteners.rows.begin(), fasteners.rows.end(),
                    [](const FastenerRow& row) { return row.utilisation > 1; });
  return text + fmt::format("; fasteners alone: use {} at {}: {}, {} over 1",
                            use_text(worst.utilisation), worst.mark,
                            mode_words(worst.governing),
                            counted(static_cast<std::size_t>(over), "hole"));
}

}  // namespace sheerlap

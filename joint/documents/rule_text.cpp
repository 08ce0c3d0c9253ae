#include "joint/documents/rule_text.h"

#include <fmt/format.h>

#include <array>
#include <set>

#include "joint/documents/text_table.h"
#include "joint/documents/wording.h"
#include "joint/fasteners.h"
#include "joint/rule_words.h"

namespace sheerlap {
namespace {

std::string length_or_dash(const std::optional<Length>& length,
                           const NumberStyle& style) {
  return length ? style.span(*length) : "-";
}

/// How surely it is known, if its source does not say so itself.
std::string known_words(const RuleRow& row) {
  const PublishedRule* rule = published_rule(row.rule);
  if (!rule || row.source.ends_with(sureness_words(rule->sureness))) return "";
  return fmt::format("; {}", sureness_words(rule->sureness));
}

/// What is said of every rule for bolts alike, and so once for all.
constexpr std::string_view for_bolts = "written for bolts";

std::string rule_words(const RuleRow& row, const NumberStyle& style) {
  std::string text = fmt::format(
      "{}. Here: {}{}{}. Source: {}{}", capitalised(row.asks_words), row.has_words,
      row.where.empty() ? "" : " ", row.where, row.source, known_words(row));
  for (const std::string& note : row.notes)
    if (!note.starts_with(for_bolts)) text += "; " + note;
  return style.sentence(text) + ".";
}

std::string table_of(const RuleRows& rows, RuleState state, const NumberStyle& style) {
  TextTable table;
  table.columns = {{{"asks"}},
                   {{"has"}},
                   {{"state"}, Align::Left},
                   {{"what is asked, of what, and whence"}, Align::Left}};
  for (const RuleRow& row : rows)
    if (row.state == state)
      table.rows.push_back(
          {length_or_dash(row.asks, style), length_or_dash(row.has, style),
           state == RuleState::Information ? "info" : std::string(state_words(state)),
           (row.chosen ? "[chosen] " : "") + rule_words(row, style)});
  return table.rows.empty() ? "" : "\n" + text_of(table);
}

/// Rules that do not apply, each once, with the reason.
std::string not_for_this_joint(const RuleRows& rows, const NumberStyle& style) {
  std::set<std::string> told;
  std::string text;
  for (const RuleRow& row : rows) {
    if (row.state != RuleState::DoesNotApply || !told.insert(row.rule).second) continue;
    // what a rule asks says already which joints it is for
    const bool says_itself =
        row.notes.empty() || row.notes.front().starts_with("it is for");
    const std::string why = says_itself ? "" : ": " + row.notes.front();
    text += wrapped("- " + style.sentence(capitalised(row.asks_words) + why) + ".",
                    text_width, 2);
  }
  return text.empty() ? "" : "\nRules that do not apply here, and why\n" + text;
}

bool any_for_bolts(const RuleRows& rows) {
  for (const RuleRow& row : rows)
    for (const std::string& note : row.notes)
      if (note.starts_with(for_bolts)) return true;
  return false;
}

}  // namespace

std::string rule_text(const RuleRows& rows, const NumberStyle& style) {
  std::string text =
      "Rules beside this joint\n" +
      wrapped(fmt::format(
          "What published rules ask and what this joint has, in {}. Pass, warn and "
          "fail "
          "speak of the one number in the row; whether the joint keeps to a rule is "
          "for "
          "the naval architect and the class to say. Rules remembered and not read, "
          "and "
          "rules made for something else, are for information (info) unless the joint "
          "file chooses them in [strength] rules. A rule's pitch belongs with its own "
          "diameter.",
          style.unit_name()));
  if (any_for_bolts(rows))
    text += wrapped(
        "Rules for bolts: holding another kind of fastener to them is our extension.");
  for (const RuleState state :
       {RuleState::Fail, RuleState::Warn, RuleState::Pass, RuleState::Information})
    text += table_of(rows, state, style);
  return text + not_for_this_joint(rows, style);
}

}  // namespace sheerlap

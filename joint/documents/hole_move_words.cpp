#include "joint/documents/hole_move_words.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <vector>

#include "joint/documents/bond_text.h"
#include "joint/joint.h"

namespace sheerlap {
namespace {

std::string span(Length length, const NumberStyle& style) {
  return style.span(length) + " " + style.unit_name();
}

std::string space_words(const HoleSpace& space, const NumberStyle& style) {
  return fmt::format("{} to {} {}, {}", space.to_hole ? "space" : "distance", space.to,
                     span(space.space, style), limit_words(space, style));
}

/// The same row of the rules where the hole was; none if there was none.
const RuleRow* row_like(const RuleRow& row, const RuleRows& rows) {
  const auto found = std::find_if(rows.begin(), rows.end(), [&](const RuleRow& one) {
    return one.rule == row.rule && one.has_words == row.has_words;
  });
  return found == rows.end() ? nullptr : &*found;
}

/// The rules whose state the move changes.
void add_rules(std::vector<std::string>& words,
               const HoleAt& at,
               const HoleAt& here,
               const NumberStyle& style) {
  for (const RuleRow& row : at.rules) {
    const RuleRow* before = row_like(row, here.rules);
    if (before != nullptr && before->state == row.state) continue;
    words.push_back(fmt::format(
        "{}: {}, {} asked by {}",
        row.state == RuleState::Pass ? "keeps what it did not" : "breaks a rule",
        span(*row.has, style), span(*row.asks, style), row.rule));
  }
}

std::string length_words(const HoleAt& at,
                         const HoleAt& here,
                         const NumberStyle& style) {
  const auto& length = at.station.length;
  if (!length) return "no length in stock serves";
  const std::string name = style.size_with_unit(*length);
  const std::string reserve =
      at.reserve ? fmt::format(", {} in reserve", span(*at.reserve, style)) : "";
  if (here.station.length && *here.station.length == *length)
    return fmt::format("{} long as here{}", name, reserve);
  return fmt::format(
      "{} long in place of {}{}", name,
      here.station.length ? style.size_with_unit(*here.station.length) : "none",
      reserve);
}

void add_uses(std::vector<std::string>& words, const HoleAt& at, const HoleAt& here) {
  if (at.alone && here.alone)
    words.push_back(fmt::format(
        "use alone {} (here {}), {}", use_text(at.alone->utilisation),
        use_text(here.alone->utilisation), mode_words(at.alone->governing)));
  if (at.bond && here.bond)
    words.push_back(fmt::format("use of the bond {} (here {})",
                                use_text(at.bond->utilisation),
                                use_text(here.bond->utilisation)));
}

}  // namespace

std::string limit_words(const HoleSpace& space, const NumberStyle& style) {
  const std::string by = space.whose.empty() ? "" : " by " + space.whose;
  if (space.over())
    return fmt::format("over the {} allowed{}", span(space.greatest, style), by);
  if (space.under())
    return fmt::format("under the least, {}", span(space.least, style));
  if (space.greatest >= unlimited_pitch)
    return fmt::format("at least {}", span(space.least, style));
  return fmt::format("within {} to {}{}", style.span(space.least),
                     span(space.greatest, style), by);
}

std::string hole_move_words(const HoleMove& move,
                            const HoleAt& here,
                            const NumberStyle& style) {
  const Length step = move.by < Length() ? -move.by : move.by;
  const std::string start =
      fmt::format("{} {}: ", style.size_with_unit(step), move.way);
  if (!move.at) return start + "it cannot be there, " + move.why_not;
  const HoleAt& at = *move.at;
  const bool on = move.by > Length();
  std::vector<std::string> words{space_words(on ? at.after : at.before, style),
                                 space_words(on ? at.before : at.after, style)};
  words.insert(words.end(), at.stands_in.begin(), at.stands_in.end());
  if (misses_hull(at.station)) words.emplace_back("misses the hull");
  words.push_back(fmt::format("{} to the lip's low edge, {} to the hull's top edge",
                              span(at.station.edge_low, style),
                              span(at.station.edge_top, style)));
  add_rules(words, at, here, style);
  words.push_back(length_words(at, here, style));
  add_uses(words, at, here);
  return start + fmt::format("{}", fmt::join(words, "; "));
}

}  // namespace sheerlap

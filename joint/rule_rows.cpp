#include "joint/rule_rows.h"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

#include "joint/rule_asks.h"
#include "joint/rule_words.h"

namespace sheerlap {
namespace {

/// Lengths no further apart count as equal.
constexpr double rounding_mm = 1e-6;

/// What a joint has of a quantity, or why it has nothing of it.
struct Measured {
  std::string what;
  std::optional<PlacedLength> has;
  std::string why_not;  ///< for the case that there is nothing
};

std::vector<Measured> measured(RuleQuantity quantity, const RuleSubject& subject) {
  constexpr const char* no_pitch = "no two holes have joint between them";
  constexpr const char* no_hole = "there is no hole";
  switch (quantity) {
    case RuleQuantity::GreatestPitch:
      return {{"largest pitch", subject.largest_pitch, no_pitch}};
    case RuleQuantity::LeastPitch:
      return {{"smallest pitch", subject.smallest_pitch, no_pitch}};
    case RuleQuantity::LeastEdgeDistance:
      return {{"least distance to the lip's low edge, trim tolerance taken off",
               subject.edge_low, no_hole},
              {"least distance to the hull's top edge, trim tolerance taken off",
               subject.edge_top, no_hole}};
    case RuleQuantity::LeastEndDistance:
      return {
          {"least girth from a hole to a corner, an opening or an end, on lip or hull",
           subject.end, "no hole has a corner, an opening or an end beside it"}};
    case RuleQuantity::LeastRowGap: {
      std::optional<PlacedLength> gap;
      if (subject.row_gap) gap = {*subject.row_gap, ""};
      return {{"gap between the lines of holes", gap, "there is one line of holes"}};
    }
    case RuleQuantity::LeastOverlap:
      return {{"least depth of the lap, trim tolerances taken off", subject.lap,
               "the lap's depth is not given"}};
    case RuleQuantity::LeastTaper:
      return {{"taper of the lap's ends", std::nullopt, "no taper is given"}};
    case RuleQuantity::LeastBoltDiameter:
      break;
  }
  return {{"diameter over the thread", PlacedLength{subject.diameter, ""}, ""}};
}

/// Why a rule is not for this joint; empty if it is.
std::string wrong_place(RulePlace place, const RuleSubject& subject) {
  const auto for_it = [&] { return fmt::format("it is for {}", place_words(place)); };
  switch (place) {
    case RulePlace::AnyFastened:
    case RulePlace::HullToDeck:
      return "";
    case RulePlace::HullToDeckAdhesive:
    case RulePlace::BondedLap:
      return subject.filling == JointFilling::Adhesive ? "" : for_it();
    case RulePlace::HullToDeckMastic:
      return subject.filling == JointFilling::Sealant ? "" : for_it();
    default:
      return for_it();
  }
}

std::string_view fasteners_word(FastenerKind kind) {
  return kind == FastenerKind::TappingScrew ? "tapping screws" : "blind rivets";
}

void add_notes(RuleRow& row, const PublishedRule& rule, const RuleSubject& subject) {
  if (rule.written_for == WrittenFor::Bolts && subject.kind != FastenerKind::Bolt)
    row.notes.push_back(
        fmt::format("written for bolts: holding {} to it is our extension",
                    fasteners_word(subject.kind)));
  row.notes.insert(row.notes.end(), rule.notes.begin(), rule.notes.end());
}

/// The state of a rule that is worked out and measured.
RuleState judged(const PublishedRule& rule, bool chosen, Length margin) {
  if (rule.sureness == RuleSureness::Information) return RuleState::Information;
  if (!chosen && rule.sureness != RuleSureness::Seen) return RuleState::Information;
  if (margin.in_mm() >= -rounding_mm) return RuleState::Pass;
  return chosen ? RuleState::Fail : RuleState::Warn;
}

RuleRow row_of(const PublishedRule& rule,
               const RuleAsk& ask,
               const Measured& measure,
               const RuleSubject& subject,
               bool chosen) {
  RuleRow row;
  row.rule = rule.id;
  row.quantity = ask.quantity;
  row.asks_words = fmt::format("{}: {}", rule.what, place_words(rule.place));
  row.has_words = measure.what;
  row.source = rule.source;
  row.chosen = chosen;
  const RuleAsked wanted = rule_asked(ask, subject);
  row.asks = wanted.length;
  if (measure.has) {
    row.has = measure.has->length;
    row.where = measure.has->where;
  }
  if (row.asks && row.has)
    row.margin = ask.quantity == RuleQuantity::GreatestPitch ? *row.asks - *row.has
                                                             : *row.has - *row.asks;
  const std::string place = wrong_place(rule.place, subject);
  const std::string why_not = !place.empty() && !chosen ? place
                              : !row.asks               ? wanted.why_not
                              : !row.has                ? measure.why_not
                                                        : "";
  row.state =
      why_not.empty() ? judged(rule, chosen, *row.margin) : RuleState::DoesNotApply;
  if (!why_not.empty()) row.notes.push_back(why_not);
  if (chosen && !place.empty())
    row.notes.push_back(place + "; this joint is held to it by choice");
  add_notes(row, rule, subject);
  return row;
}

}  // namespace

RuleRows rule_rows(const RuleSubject& subject,
                   const std::vector<const PublishedRule*>& chosen) {
  RuleRows rows;
  for (const PublishedRule& rule : published_rules()) {
    const bool is_chosen =
        std::find(chosen.begin(), chosen.end(), &rule) != chosen.end();
    for (const RuleAsk& ask : rule.asks)
      for (const Measured& measure : measured(ask.quantity, subject))
        rows.push_back(row_of(rule, ask, measure, subject, is_chosen));
  }
  return rows;
}

}  // namespace sheerlap

#pragma once

#include <optional>
#include <string>
#include <vector>

#include "geometry/quantity.h"
#include "joint/published_rules.h"
#include "joint/rule_subject.h"

namespace sheerlap {

enum class RuleState { Pass, Warn, Fail, Information, DoesNotApply };

/// What one rule asks of this joint, and what the joint has.
struct RuleRow {
  std::string rule;  ///< its id
  RuleQuantity quantity = RuleQuantity::GreatestPitch;
  std::string asks_words;        ///< what it asks, and where it applies
  std::string has_words;         ///< what is measured
  std::string where;             ///< its place: "at S03"; may be empty
  std::optional<Length> asks;    ///< none where the rule cannot be worked out
  std::optional<Length> has;     ///< none where the joint has no such thing
  std::optional<Length> margin;  ///< on the safe side if positive
  RuleState state = RuleState::Information;
  bool chosen = false;  ///< the user holds the joint to it
  std::string source;
  std::vector<std::string> notes;  ///< first why it does not apply, if it does not
};

using RuleRows = std::vector<RuleRow>;

/// Every published rule beside this joint.
///
/// A rule that is chosen passes or fails, wherever it was written for; it only does not
/// apply where the joint has nothing to measure or the table does not reach the vessel.
/// Of the others, those that were read pass or warn where they apply; those remembered,
/// and those for information, never pass, warn or fail. An edge distance is a row for
/// the lip and one for the hull. The table by vessel length is used whole: its spacing
/// is not held to a thinner bolt.
///
/// @param chosen  of `chosen_rules`
/// @source  each row's own
RuleRows rule_rows(const RuleSubject& subject,
                   const std::vector<const PublishedRule*>& chosen);

}  // namespace sheerlap

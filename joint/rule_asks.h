#pragma once

#include <optional>
#include <string>
#include <vector>

#include "geometry/quantity.h"
#include "joint/published_rules.h"
#include "joint/rule_subject.h"

namespace sheerlap {

/// What a rule asks of one joint, or why it asks nothing of it.
struct RuleAsked {
  std::optional<Length> length;
  std::string why_not;  ///< empty if there is a length
};

/// The length that a rule asks of this joint.
///
/// The table by vessel length is used whole: its spacing is asked of bolts as thick as
/// it asks, and of no thinner ones. A gasketed flange is as thick as the thinner of lip
/// and hull; a hole is the larger of the two.
///
/// @source  the rule's own
RuleAsked rule_asked(const RuleAsk& ask, const RuleSubject& subject);

/// The greatest pitch that a rule asks of this joint.
///
/// @returns  nothing if the rule asks none, or not of this fastener or vessel
std::optional<Length> greatest_pitch(const PublishedRule& rule,
                                     const RuleSubject& subject);

/// A pitch, and the rule that asks it.
struct RulePitch {
  Length pitch;
  const PublishedRule* rule = nullptr;
};

/// The pitch with which a layout keeps all of the chosen rules: the least of their
/// greatest pitches, each rule's own.
///
/// @param chosen   of `chosen_rules`
/// @param subject  may be that of a joint before its holes are laid out
/// @returns  nothing if none of them asks for one; the first of equal ones
std::optional<RulePitch> greatest_pitch(const std::vector<const PublishedRule*>& chosen,
                                        const RuleSubject& subject);

}  // namespace sheerlap

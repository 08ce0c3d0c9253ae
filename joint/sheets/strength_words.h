#pragma once

#include <string>
#include <vector>

#include "joint/documents/number_style.h"
#include "joint/job.h"

namespace sheerlap {

/// A use, "0.961" of 1, with as many decimals as it takes to tell it from 1; "beyond
/// all" where it is infinite.
std::string use_words(double use);

/// "PASS" up to 1, "FAIL" beyond.
std::string use_verdict(double use);

/// A use where it stands by itself: "0.961 of 1".
std::string use_of_one(double use);

/// "0.2 N/mm"; at most two decimals.
std::string with_unit(double value, const std::string& unit);

/// The unit of a figure as it stands behind its value; empty for a mere number.
std::string figure_unit(const std::string& unit);

/// Something of a joint, and what it comes to.
struct NamedValue {
  std::string name;
  std::string value;
};

/// The bond at its worst place: where that is, what it bears and what it uses.
/// @param job  with its strength
std::vector<NamedValue> worst_bond_values(const Job& job, const NumberStyle& style);

/// The worst hole: where it is, what it bears, what it carries and what it uses; empty
/// without holes.
/// @param job  with its strength
std::vector<NamedValue> worst_hole_values(const Job& job, const NumberStyle& style);

/// What closing the lip on the wet adhesive takes.
std::vector<NamedValue> clamping_values(const Clamping& clamping,
                                        const NumberStyle& style);

/// How bond and fasteners share the load.
std::vector<NamedValue> sharing_values(const LoadSharing& sharing);

/// What of the strength was remembered and not read, each once.
std::vector<std::string> remembered(const Strength& strength);

/// What gives first may be something that is not worked, for want of a value: one
/// sentence for each; may be empty.
std::vector<std::string> not_worked(const Job& job);

/// What a rule asks of the joint and what that has, as cells of a table.
struct RuleCells {
  std::string state;  ///< "pass"; "fail, held to"
  std::string asks_words;
  std::string asks;  ///< a length; "-" where it cannot be worked out
  std::string has_words;
  std::string has;
  std::string margin;
  std::string source;  ///< and how surely it is known
  std::string notes;   ///< may be empty
};
RuleCells rule_cells(const RuleRow& row, const NumberStyle& style);

/// The checks of the strength, in their order.
Checks strength_checks(const Job& job);

}  // namespace sheerlap

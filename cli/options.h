#pragma once

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "cli/tolerance_options.h"
#include "geometry/result.h"
#include "joint/documents/number_style.h"
#include "joint/gap_readings.h"
#include "joint/sheets/sheet_style.h"

namespace sheerlap {

enum class Command {
  New,
  Check,
  Fit,
  Adhesive,
  Layout,
  Schedule,
  Strength,
  Order,
  Tolerance,
  Job,
  Record
};

/// What the command line asks for.
struct Options {
  Command command = Command::Check;
  std::string target;              ///< the joint file, or the folder for `new`
  std::optional<std::string> out;  ///< `job`: the folder for its documents
  std::optional<LengthUnit> unit;  ///< for people; the joint file's own if not given
  std::optional<Paper> paper;      ///< of `job`'s sheets; that of the unit if not given
  bool explain = false;            ///< figures with their workings
  std::optional<std::string> explain_hole;  ///< its mark: tell of this hole alone
  std::optional<std::string> readings;      ///< the reading file of one boat
  std::optional<ReadingState> state;  ///< of the readings; the latest if not given
  bool compare = false;  ///< `strength`: the fasteners and adhesives to choose from
  ToleranceOptions tolerance;
  bool json = false;
  bool quiet = false;
};

/// A text that was asked for in place of any work: help or the version.
struct TextAsked {
  std::string text;
};

/// The command line, understood. Options stand before or after the command.
///
/// @param arguments  without the program's name
/// @errors  InvalidInput: every unknown option and command, missing and surplus
///          arguments, with the nearest known word
Result<std::variant<Options, TextAsked>> parse_options(
    const std::vector<std::string>& arguments);

}  // namespace sheerlap

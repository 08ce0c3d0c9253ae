#pragma once

#include <string>
#include <vector>

#include "cli/options.h"

namespace sheerlap {

/// A command as the command line names it and the help tells of it.
struct CommandWords {
  Command command;
  std::string name;
  std::string argument;  ///< "JOINT.toml" or "DIR"
  std::string answers;   ///< in a few words
  std::string more;      ///< one paragraph
};

/// All commands, in the order of the help.
const std::vector<CommandWords>& all_commands();

const CommandWords& words_of(Command command);

/// The help of the program.
std::string help_text();

/// The help of one command.
std::string help_text(Command command);

}  // namespace sheerlap

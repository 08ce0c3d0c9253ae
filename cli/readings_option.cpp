#include "cli/readings_option.h"

#include <fmt/format.h>

#include "joint/documents/printable.h"

namespace sheerlap {
namespace {

/// Why a command does not answer for one boat; empty if it does.
std::string refusal(Command command) {
  const auto leave_out = [](const char* why) {
    return fmt::format("--readings is for one boat, and {}", why);
  };
  switch (command) {
    case Command::Fit:
    case Command::Adhesive:
    case Command::Schedule:
    case Command::Strength:
      return "";
    case Command::Layout:
      return leave_out(
          "layout places the holes of all of them: leave it out, or run schedule");
    case Command::Order:
      return leave_out(
          "order buys for the run of boats: run adhesive for what this one takes, "
          "schedule for its fasteners");
    case Command::Job:
      return leave_out(
          "job's papers and jigs are those of all boats: run fit, adhesive, schedule "
          "or strength");
    case Command::Tolerance:
      return leave_out("tolerance makes up boats of its own: run fit for this one");
    case Command::New:
    case Command::Check:
    case Command::Record:
      break;
  }
  return "--readings is for fit, adhesive, schedule and strength: leave it out";
}

std::optional<ReadingState> state_named(const std::string& word, Errors& errors) {
  for (const ReadingState state :
       {ReadingState::Dry, ReadingState::Held, ReadingState::After})
    if (word == state_word(state)) return state;
  errors.push_back(
      {ErrorKind::InvalidInput, "",
       fmt::format("--state {} is not known: dry, held or after", printable(word))});
  return std::nullopt;
}

}  // namespace

std::optional<ReadingState> judged_readings(const ReadingsWords& words,
                                            Command command,
                                            Errors& errors) {
  const auto refuse = [&](std::string message) {
    errors.push_back({ErrorKind::InvalidInput, "", std::move(message)});
  };
  if (words.file) {
    const std::string why = refusal(command);
    if (!why.empty())
      refuse(why);
    else if (words.file->empty())
      refuse("--readings is empty: name a reading file");
  }
  if (!words.state) return std::nullopt;
  if (!words.file)
    refuse("--state says which readings count: give --readings FILE with it");
  return state_named(*words.state, errors);
}

}  // namespace sheerlap

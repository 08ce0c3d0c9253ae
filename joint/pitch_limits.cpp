#include "joint/pitch_limits.h"

#include <fmt/format.h>

#include <cmath>
#include <utility>

namespace sheerlap {
namespace {

/// What is wrong with a limit; empty if nothing is.
std::string fault_of(const PitchLimit& limit) {
  const double from = limit.from.in_mm();
  const double to = limit.to.in_mm();
  const double greatest = limit.greatest.in_mm();
  if (!(std::isfinite(from) && std::isfinite(to) && from <= to))
    return fmt::format("from {} to {} mm is no stretch: finite girths, in order", from,
                       to);
  if (!(std::isfinite(greatest) && greatest >= 0))
    return fmt::format(
        "a greatest space of {} mm cannot be kept: a finite length, 0 or more",
        greatest);
  return "";
}

}  // namespace

Errors pitch_limit_errors(const PitchLimits& limits, const Perimeter& perimeter) {
  Errors errors;
  const auto refuse = [&](std::string where, std::string message) {
    errors.push_back({ErrorKind::InvalidInput, std::move(where), std::move(message)});
  };
  for (std::size_t i = 0; i < limits.size(); ++i) {
    const std::string where = fmt::format("pitch_limits[{}]", i);
    if (perimeter.side(limits[i].side) == nullptr)
      refuse(where, fmt::format("this joint has no {} side: limits of the sides it has",
                                side_word(limits[i].side)));
    for (std::size_t k = 0; k < limits[i].limits.size(); ++k) {
      std::string fault = fault_of(limits[i].limits[k]);
      if (!fault.empty())
        refuse(fmt::format("{}.limits[{}]", where, k), std::move(fault));
    }
  }
  return errors;
}

std::vector<PitchLimit> limits_of(SideName side, const PitchLimits& limits) {
  std::vector<PitchLimit> result;
  for (const SidePitchLimits& given : limits)
    if (given.side == side)
      result.insert(result.end(), given.limits.begin(), given.limits.end());
  return result;
}

std::vector<EndLimit> end_limits_of(SideName side, const PitchLimits& limits) {
  std::vector<EndLimit> result;
  for (const SidePitchLimits& given : limits)
    if (given.side == side)
      result.insert(result.end(), given.ends.begin(), given.ends.end());
  return result;
}

}  // namespace sheerlap

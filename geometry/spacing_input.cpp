#include "geometry/spacing_input.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <string>
#include <utility>

namespace sheerlap {
namespace {

/// The faults of one stretch.
class Inspection {
 public:
  Inspection(const SpacingProblem& problem, std::string where, Errors& errors)
      : problem_(problem), where_(std::move(where)), errors_(errors) {}

  void all() {
    if (!interval("", problem_.from_mm, problem_.to_mm)) return;
    limits("limits", problem_.limits);
    end("start", problem_.start);
    end("end", problem_.end);
    for (std::size_t index = 0; index < problem_.zones.size(); ++index) {
      const SpaceZone& zone = problem_.zones[index];
      const std::string name = fmt::format("zones[{}]", index);
      interval(name, zone.from_mm, zone.to_mm);
      limits(name + ".limits", zone.limits);
    }
    for (std::size_t index = 0; index < problem_.forbidden.size(); ++index) {
      const Forbidden& gap = problem_.forbidden[index];
      interval(fmt::format("forbidden[{}]", index), gap.from_mm, gap.to_mm);
    }
    for (std::size_t index = 0; index < problem_.fixed_mm.size(); ++index)
      fixed(fmt::format("fixed_mm[{}]", index), problem_.fixed_mm[index]);
  }

 private:
  void fault(const std::string& what, std::string message) {
    errors_.push_back({ErrorKind::InvalidInput,
                       what.empty() ? where_ : where_ + "." + what,
                       std::move(message)});
  }

  bool interval(const std::string& what, double from_mm, double to_mm) {
    if (std::isfinite(from_mm) && std::isfinite(to_mm) && from_mm <= to_mm) return true;
    fault(what, fmt::format("from {} to {} mm is no stretch: finite numbers, in order",
                            from_mm, to_mm));
    return false;
  }

  void limits(const std::string& what, const SpaceLimits& limits) {
    if (limits.least_mm > 0 && limits.least_mm <= limits.greatest_mm &&
        std::isfinite(limits.greatest_mm))
      return;
    fault(what, fmt::format("a least space of {} mm and a greatest of {} mm cannot be "
                            "kept: 0 < least <= greatest",
                            limits.least_mm, limits.greatest_mm));
  }

  void end(const std::string& what, const StretchEnd& end) {
    if (end.mirrored || (end.least_mm >= 0 && end.least_mm <= end.greatest_mm &&
                         std::isfinite(end.greatest_mm)))
      return;
    fault(what, fmt::format("an outer point at least {} mm and at most {} mm from the "
                            "end cannot be placed: 0 <= least <= greatest",
                            end.least_mm, end.greatest_mm));
  }

  void fixed(const std::string& what, double at_mm) {
    if (!(at_mm >= problem_.from_mm && at_mm <= problem_.to_mm)) {
      fault(what, fmt::format("a fixed point at {} mm is off its stretch: {} to {} mm",
                              at_mm, problem_.from_mm, problem_.to_mm));
      return;
    }
    const double hair =
        1e-9 * std::min(problem_.limits.greatest_mm, problem_.to_mm - problem_.from_mm);
    for (const Forbidden& gap : problem_.forbidden) {
      if (!(at_mm > gap.from_mm + hair && at_mm < gap.to_mm - hair)) continue;
      fault(what, fmt::format("a fixed point at {} mm lies where none may be: outside "
                              "{} to {} mm",
                              at_mm, gap.from_mm, gap.to_mm));
      return;
    }
  }

  const SpacingProblem& problem_;
  const std::string where_;
  Errors& errors_;
};

}  // namespace

Errors spacing_errors(const std::vector<SpacingProblem>& stretches) {
  Errors errors;
  for (std::size_t index = 0; index < stretches.size(); ++index)
    Inspection(stretches[index], fmt::format("stretches[{}]", index), errors).all();
  return errors;
}

}  // namespace sheerlap

#pragma once

#include <optional>
#include <string>
#include <vector>

#include "joint/boat_job.h"

namespace sheerlap {

/// A reading by girth, as a reading file gives it; dry.
GivenReading girth_reading(SideName side,
                           double girth_mm,
                           std::optional<double> top_mm,
                           std::optional<double> low_mm);

/// One by the mark of a hole.
GivenReading mark_reading(SideName side,
                          const std::string& mark,
                          std::optional<double> top_mm,
                          std::optional<double> low_mm);

/// The job of a boat whose readings are known to be right.
Job boat_job(const Joint& joint,
             const Parts& parts,
             const std::vector<GivenReading>& readings);

/// Fit, adhesive and schedule, without their needs left out.
Parts boat_parts();

}  // namespace sheerlap

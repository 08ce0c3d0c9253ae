#pragma once

#include <optional>
#include <string>
#include <vector>

#include "joint/job.h"

namespace sheerlap {

/// Where a joint is cut through for a section of the drawing.
struct SectionPlace {
  std::string letter;  ///< "A", "B", "C"
  std::string what;    ///< "typical, at S22", "least gap", "greatest gap"
  const PerimeterSide* side = nullptr;
  Length sheer_girth;
  const DrillStation* hole = nullptr;  ///< none where the cut is not at one
  std::optional<GapAt> gap;            ///< the one that `what` speaks of
};

/// The places of the sections: at the hole whose gap is nearest to the mean, or at the
/// middle hole where there is no fit; and where the gap is least and greatest.
///
/// @param job  with its schedule; referred to
std::vector<SectionPlace> section_places(const Job& job);

}  // namespace sheerlap

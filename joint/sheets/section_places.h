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

/// Gaps that differ by less are the same: what feelers tell apart.
/// @source  common practice, no source
inline constexpr Length same_gap = Length::mm(0.05);

/// Whether the gap, though it may change on its way down, is the same all round at
/// each depth; not known without a fit.
bool same_gap_all_round(const Job& job);

/// The places of the sections: at the hole whose gap is nearest to the mean, or at the
/// middle hole where there is no fit or no difference; and where the gap is least and
/// greatest, unless it is the same all round.
///
/// @param job  with its schedule; referred to
std::vector<SectionPlace> section_places(const Job& job);

}  // namespace sheerlap

#pragma once

#include <vector>

#include "joint/perimeter.h"
#include "joint/readings_gap.h"
#include "joint/seating_search.h"

namespace sheerlap {

/// How far from the nominal gap a straight line between two corrections may stray from
/// what it stands for.
inline constexpr Length correction_tolerance = Length::mm(0.01);

/// How far the gaps of a seating are from those of the lid as drawn on the hull as
/// moulded, at as few places as keep `correction_tolerance` between them.
///
/// @param task   its points are pairs, of the top and the low edge, along each side
/// @param seated the gaps of the seating, at the task's points
std::vector<SideCorrections> seated_corrections(const Perimeter& perimeter,
                                                const SeatingTask& task,
                                                const FoundSeating& seated);

}  // namespace sheerlap

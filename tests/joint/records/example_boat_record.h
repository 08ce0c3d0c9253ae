#pragma once

#include "joint/records/boat_record.h"

namespace sheerlap {

/// A boat with three readings, litres and a leak with two marks.
BoatRecord example_boat_record(std::int64_t hull);

/// Fails the test unless the two boats are alike.
void check_alike(const BoatRecord& found, const BoatRecord& expected);

}  // namespace sheerlap

#pragma once

#include <optional>
#include <string>

#include "geometry/result.h"
#include "joint/records/boat_record.h"

namespace sheerlap {

/// A boat with more about it; nothing that is kept is written over.
///
/// @param there  the boat as it is kept, none if it is new
/// @param more   with the same hull number
/// @errors  at "reading[N]": a place that was read in that state already; at "litres",
///          "holes", "leak[N]": likewise
Result<BoatRecord> with_more(std::optional<BoatRecord> there, const BoatRecord& more);

/// The gaps of a boat's latest state that are outside its window.
std::size_t gaps_outside(const BoatRecord& boat);

/// How a gap lies to the window: "tight", "wide" or "".
std::string window_word(const BoatRecord& boat, const std::optional<Length>& gap);

}  // namespace sheerlap

#pragma once

#include <optional>
#include <string>
#include <vector>

#include "geometry/quantity.h"

namespace sheerlap {

/// The end of the lid that is set home first, and on which it then turns down.
enum class FirstEnd { Bow, Stern };

/// A way of lowering the lid other than straight down.
struct TurnedEntry {
  FirstEnd first = FirstEnd::Bow;
  Angle angle;  ///< > 0, of the lid to its seat as the turning begins
};

/// The beam over the hull's top edge at one station.
struct BeamReading {
  std::optional<Length> x;     ///< or `station`
  std::string station;         ///< the label of a row of the sheer table
  Length mould;                ///< in the mould
  Length free;                 ///< out of it, with nothing that holds it
  std::optional<Length> held;  ///< with its spreaders or straps
};

/// A place where the hull can be squeezed or spread.
struct Spreader {
  Length x;
  Length most;  ///< how far each side may be forced, in or out
};

/// What is known of the hull out of its mould, and what may be done about it.
struct SeatingInputs {
  std::vector<BeamReading> readings;
  std::vector<Spreader> spreaders;
};

}  // namespace sheerlap

#pragma once

#include <cstddef>
#include <cstdint>
#include <vector>

#include "geometry/quantity.h"

namespace sheerlap {

/// What goes wrong between the drawing and the boat.
enum class ProcessErrorKind {
  HullShrinkage,  ///< of the hull as a whole; a share of its size, > 0 is smaller
  LidShrinkage,   ///< of the lid as a whole
  HullOpening,    ///< each side outward at the middle of the joint, nothing at its ends
  HullTwist,      ///< the hull about its length, an angle from end to end
  HullTrim,       ///< the hull's top edge up, along the joint
  HullFace,       ///< the hull's face outward, along the joint
  LipThickness,   ///< the lip thicker, along the joint
};

enum class ErrorLaw { Normal, Uniform };

/// One error of the process. Lengths are mm, shrinkage is a share, twist is degrees.
struct ProcessError {
  ProcessErrorKind kind = ProcessErrorKind::HullFace;
  ErrorLaw law = ErrorLaw::Normal;
  double mean = 0;
  double spread = 0;   ///< standard deviation; of a uniform law half its width
  Length correlation;  ///< along the girth, of an error that varies along the joint
  bool from_record = false;  ///< mean and spread are to be estimated from the record
};

/// How many boats are to be made up, and of what errors.
struct ToleranceInputs {
  std::size_t boats = 0;
  std::uint64_t seed = 0;
  std::vector<ProcessError> errors;
};

}  // namespace sheerlap

#pragma once

#include "joint/joint.h"
#include "joint/reasons/working.h"

namespace sheerlap {

/// What is left of a laminate's strength hot and wet.
template <class Working>
auto wet_share(Working& work, const Joint& joint) {
  return work.given({"kw", "what is left of a laminate's strength hot and wet", "1"},
                    joint.strength.wet, Origin::of_file("strength.wet"));
}

}  // namespace sheerlap

#include "tests/joint/strong_joint.h"

#include "tests/joint/example_joint.h"
#include "tests/joint/example_strength.h"

namespace sheerlap {

Joint strong_joint() {
  Joint joint = with_strength(box_joint(4000, 2000, {}), {4, 0, 0.1});
  joint.fastener.lip_hole.reset();
  joint.fastener.hull_pilot.reset();
  return joint;
}

}  // namespace sheerlap

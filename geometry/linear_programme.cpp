#include "geometry/linear_programme.h"

#include "geometry/dual_simplex.h"

namespace sheerlap {

tl::expected<ProgrammeOptimum, ProgrammeConflict> optimum(
    const BoundedProgramme& programme) {
  DualSimplex simplex(programme);
  if (!simplex.run()) return tl::unexpected(simplex.conflict());
  return simplex.optimum();
}

}  // namespace sheerlap

#pragma once

#include "joint/job.h"

namespace sheerlap {

/// Works out the parts asked for on the joint's own perimeter, worked before: for
/// joints that differ in fastener and adhesive alone. How the lid goes on is not asked.
///
/// @errors  as `work_out`
Result<Job> work_out_on(Joint joint, const Perimeter& perimeter, const Parts& parts);

/// The same where the holes are laid out already: for a boat whose hull is not where it
/// is drawn, and which is drilled with the jigs of all boats.
Result<Job> work_out_on(Joint joint,
                        const Perimeter& perimeter,
                        const Layout& layout,
                        const Parts& parts);

}  // namespace sheerlap

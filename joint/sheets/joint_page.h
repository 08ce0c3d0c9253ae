#pragma once

#include <string>

#include "geometry/result.h"
#include "joint/job.h"
#include "joint/sheets/sheet_style.h"

namespace sheerlap {

/// The joint as one page for a browser: the checks, a plan, the gap and the beads along
/// the girth, the section at a hole and the schedule, in which holes are chosen,
/// searched, ticked off and measured. It fetches nothing; what is ticked off is kept by
/// the browser, and the page can be read without its script.
///
/// @param job  with its schedule
/// @errors  none
Result<std::string> joint_page(const Job& job, const SheetStyle& style);

}  // namespace sheerlap

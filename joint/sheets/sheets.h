#pragma once

#include <cstddef>
#include <functional>
#include <string>
#include <vector>

#include "geometry/result.h"
#include "joint/documents/report.h"
#include "joint/job.h"
#include "joint/sheets/sheet_style.h"

namespace sheerlap {

/// Told before each sheet is drawn: its name, how many are done, and of how many.
using SheetProgress =
    std::function<void(const std::string& name, std::size_t done, std::size_t of)>;

/// The sheets of a job that are not plain text: drawings, strips, patterns, the page
/// and the workbook; of the parts it holds, in a fixed order.
///
/// Each is a pure function of the job and the style: the same job gives the same bytes.
///
/// @errors  Unreadable: a library could not use its temporary file
Result<std::vector<Document>> sheets(const Job& job,
                                     const SheetStyle& style,
                                     const SheetProgress& progress = {});

/// The names a job's sheets can have.
std::vector<std::string> sheet_names();

}  // namespace sheerlap

#pragma once

#include "cli/record_options.h"
#include "geometry/result.h"
#include "joint/documents/record_text.h"

namespace sheerlap {

/// Adds to a record what the options say of a boat, all of it or nothing.
///
/// @errors  of the joint file, the reading file and the record, located
Result<AddedBoat> add_to_record(const RecordOptions& options);

}  // namespace sheerlap

#pragma once

#include <string>

#include "geometry/result.h"
#include "joint/joint.h"
#include "joint/records/boat_store.h"

namespace sheerlap {

/// Errors of a record's file, under its name.
tl::unexpected<Errors> of_record(Errors errors, const std::string& record);

/// The record of the boats built to a joint, open for reading.
///
/// @errors  a file that is none, or the record of another joint
Result<BoatStore> opened_record(const std::string& record, const Joint& joint);

}  // namespace sheerlap

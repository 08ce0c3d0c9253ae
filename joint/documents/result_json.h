#pragma once

#include <string>

#include "joint/documents/origin_words.h"
#include "joint/job.h"

namespace sheerlap {

/// The result for other programs: one JSON object of the parts the job holds, metric
/// (mm, mm2, ml, minutes, kg), numbers in full, keys in a fixed order, ended by a line
/// feed. What does not apply is null. Text that is not UTF-8 has its bad bytes
/// replaced.
/// @param words_of  where the user's values stand, for the workings
std::string result_json(const Job& job, const OriginWords& words_of = {});

}  // namespace sheerlap

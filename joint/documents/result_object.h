#pragma once

#include "joint/documents/json_parts.h"
#include "joint/documents/origin_words.h"
#include "joint/job.h"

namespace sheerlap {

/// The whole result as one object, for a caller that adds to it.
/// @param words_of  where the user's values stand, for the workings
Json result_object(const Job& job, const OriginWords& words_of = {});

}  // namespace sheerlap

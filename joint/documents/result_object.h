#pragma once

#include "joint/documents/json_parts.h"
#include "joint/documents/origin_words.h"
#include "joint/job.h"

namespace sheerlap {

/// The whole result as one object, for a caller that adds to it.
Json result_object(const Job& job, const OriginWords& words_of = {});

}  // namespace sheerlap

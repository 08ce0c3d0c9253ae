#pragma once

#include "joint/documents/json_parts.h"
#include "joint/documents/origin_words.h"
#include "joint/strength.h"

namespace sheerlap {

/// `strength` of the result.
Json strength_json(const Strength& strength);

/// Workings as JSON: figure, what, and step by step letters, what, value, unit, and
/// formula, numbers, source and validity, or where a number that was given comes from.
/// @param joint  of which the defaults are told
Json explanations_json(const Explanations& explanations,
                       const Joint& joint,
                       const OriginWords& words_of);

}  // namespace sheerlap

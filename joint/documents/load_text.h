#pragma once

#include <string>

#include "joint/documents/number_style.h"
#include "joint/documents/origin_words.h"
#include "joint/job.h"

namespace sheerlap {

/// What loads the joint, cause by cause, and how the causes are put together.
/// @param job  with its strength
std::string load_text(const Job& job,
                      const NumberStyle& style,
                      const OriginWords& words_of);

}  // namespace sheerlap

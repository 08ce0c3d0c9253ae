#pragma once

#include <string>

#include "joint/documents/number_style.h"
#include "joint/documents/origin_words.h"
#include "joint/job.h"

namespace sheerlap {

/// The strength as a section of the page: what bond and fasteners use at their worst,
/// charts of the bond, the holes as rows to choose, rules, and the reasons folded away;
/// empty without a strength.
/// @param words_of  where the user's values stand
std::string strength_section(const Job& job,
                             const NumberStyle& style,
                             const OriginWords& words_of);

/// The workings of figures as HTML that folds, one for each.
std::string folded_workings(const Explanations& explanations,
                            const Joint& joint,
                            const OriginWords& words_of);

}  // namespace sheerlap

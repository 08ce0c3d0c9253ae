#pragma once

#include <string>

#include "joint/documents/origin_words.h"
#include "joint/joint.h"
#include "joint/reasons/reason.h"

namespace sheerlap {

/// How figures come about, to be worked again on paper: for each its place in the
/// result, the numbers given and where from, and every formula in letters, in numbers,
/// with its value, source and validity.
///
/// A figure that an earlier explanation worked from the same formula and numbers is not
/// worked again. Numbers are metric, as the formulas are.
/// @param joint  of which the defaults are told
/// @returns      no line wider than 80 characters
std::string explain_text(const Explanations& explanations,
                         const Joint& joint,
                         const OriginWords& words_of);

}  // namespace sheerlap

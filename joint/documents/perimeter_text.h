#pragma once

#include <string>

#include "joint/documents/number_style.h"
#include "joint/documents/text_table.h"
#include "joint/job.h"

namespace sheerlap {

/// The lengths of the joint, side by side.
std::string perimeter_text(const Job& job, const NumberStyle& style);

/// What the joint file was understood to say: the sheer, the faces and the rules.
std::string input_text(const Job& job, const NumberStyle& style);

/// The same as a table, and what its columns are.
TextTable perimeter_table(const Job& job, const NumberStyle& style);
std::string perimeter_words(const Job& job, const NumberStyle& style);

}  // namespace sheerlap

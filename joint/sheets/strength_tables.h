#pragma once

#include <string>
#include <utility>
#include <vector>

#include "joint/documents/number_style.h"
#include "joint/job.h"
#include "joint/sheets/page_table.h"

namespace sheerlap {

/// The bond at the rows of the sheer table, a banner for each side.
/// @param job  with its strength, as for all of these
PageTable station_table(const Job& job, const NumberStyle& style);

/// What each hole bears, carries and uses, a banner for each side.
PageTable hole_use_table(const Job& job, const NumberStyle& style);

/// Every published rule beside the joint; notes by their numbers.
/// @returns  the table and its notes, numbered from 1
std::pair<PageTable, std::vector<std::string>> rule_table(const Job& job,
                                                          const NumberStyle& style);

/// The checks of the strength with their states.
PageTable strength_check_table(const Job& job, const NumberStyle& style);

}  // namespace sheerlap

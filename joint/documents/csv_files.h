#pragma once

#include <string>
#include <vector>

#include "joint/documents/number_style.h"
#include "joint/fit.h"
#include "joint/order.h"
#include "joint/schedule.h"

namespace sheerlap {

/// One record of comma-separated values, ended by carriage return and line feed. A
/// field with a comma, quote or line break is quoted, and its quotes are doubled.
/// @source  RFC 4180, section 2
std::string csv_record(const std::vector<std::string>& fields);

/// The gaps at the rows of the sheer table.
std::string fit_csv(const Fit& fit, LengthUnit unit);

/// One side's drilling schedule; lengths in full, not rounded for marking out.
std::string schedule_csv(const Schedule& schedule, SideName side, LengthUnit unit);

/// The lines of an order.
std::string order_csv(const Order& order, const Adhesive& adhesive);

/// What the needs of an order are made of.
std::string allowances_csv(const Order& order);

}  // namespace sheerlap

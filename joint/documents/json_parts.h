#pragma once

#include <nlohmann/json.hpp>
#include <optional>
#include <string>

#include "geometry/quantity.h"
#include "joint/adhesive.h"
#include "joint/fit.h"
#include "joint/layout.h"
#include "joint/order.h"
#include "joint/schedule.h"

namespace sheerlap {

using Json = nlohmann::ordered_json;

/// An object as text: two blanks to a level, ended by a line feed. Text that is not
/// UTF-8 has its bad bytes replaced.
std::string json_text(const Json& object);

/// A finite number; null if there is none.
Json number(double value);
Json number(std::optional<double> value);
Json number(Length length);  ///< in mm
Json number(std::optional<Length> length);
/// Where a gap is.
Json place_json(const GapAt& at);

/// The parts of the result, as `result_json` puts them together.
Json fit_json(const Fit& fit);
Json entry_json(const Entry& entry);
Json adhesive_json(const AdhesivePlan& plan);
Json layout_json(const Layout& layout);
Json stations_json(const Schedule& schedule);
Json check_lines_json(const Schedule& schedule);
Json datums_json(const Schedule& schedule);
Json order_lines_json(const Order& order);
Json allowances_json(const Order& order);
Json shelf_json(const Order& order);

}  // namespace sheerlap

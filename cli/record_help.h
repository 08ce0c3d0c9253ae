#pragma once

#include <string>

namespace sheerlap {

/// The help of `record`.
std::string record_help_text();

}  // namespace sheerlap

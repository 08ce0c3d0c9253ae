#pragma once

#include <string>

namespace sheerlap {

/// "sheerlap 1.2.3" and the licence, for people.
std::string version_text();

}  // namespace sheerlap

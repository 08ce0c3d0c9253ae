#pragma once

#include "joint/layout.h"
#include "joint/reasons/reason.h"

namespace sheerlap {

/// Why the holes of a layout are so many and stand where they do.
Explanations layout_reasons(const Layout& layout);

}  // namespace sheerlap

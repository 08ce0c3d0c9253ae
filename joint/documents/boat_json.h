#pragma once

#include "joint/boat.h"
#include "joint/documents/json_parts.h"

namespace sheerlap {

/// What there is to say of one boat beside its parts.
Json boat_json(const Boat& boat);

}  // namespace sheerlap

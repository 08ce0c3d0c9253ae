#pragma once

#include <functional>
#include <string>

#include "joint/joint.h"
#include "joint/reasons/reason.h"

namespace sheerlap {

/// Where a value that the user gave stands, by its address: "yours: joint.toml:31" of
/// "adhesive.modulus". Without it the address itself is told.
using OriginWords = std::function<std::string(const std::string& address)>;

/// Where a number that was given comes from: the user's file by `words_of`, "default:
/// from memory, confirm" where the joint file left it out, or what the origin says.
std::string origin_text(const Origin& origin,
                        const Joint& joint,
                        const OriginWords& words_of);

}  // namespace sheerlap

#pragma once

#include <string>

#include "joint/check.h"
#include "joint/fit.h"
#include "joint/joint.h"
#include "joint/perimeter.h"

namespace sheerlap {

/// "good", "tight", "wide" or "interference".
std::string word_of(FitVerdict verdict);

/// "corner", "smooth" or "end".
std::string word_of(SideEnd end);

/// "pass", "warn" or "fail".
std::string word_of(CheckState state);

/// "bow" or "stern".
std::string word_of(FirstEnd end);

/// "tapping screw", "bolt" or "blind rivet".
std::string word_of(FastenerKind kind);

/// "1 hole", "2 holes"; the plural is the noun with an s.
std::string counted(std::size_t count, const std::string& noun);

/// The text with its first letter a capital.
std::string capitalised(std::string text);

}  // namespace sheerlap

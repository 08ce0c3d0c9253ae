#pragma once

#include <string>

#include "geometry/quantity.h"

namespace sheerlap {

/// A length as the parts of a job word it in a text for a document: "19.05 mm".
///
/// It has up to 4 decimals, zeros left off, so that an inch document can turn it into
/// the inches it was given as: `NumberStyle::sentence` rounds for the reader. The word
/// "girth" before a length makes it a running dimension there.
std::string worded(Length length);

/// Two lengths of one unit: "19.05 to 25.4 mm".
std::string worded_range(Length from, Length to);

}  // namespace sheerlap

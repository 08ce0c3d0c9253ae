#pragma once

#include "joint/records/database.h"

namespace sheerlap {

/// Whether what the tables of a record hold can be true: lengths, litres and holes are
/// finite numbers of a size that boats have, words are known, places and boats that
/// readings and leaks name are there. Another program may have changed the file.
///
/// A boat without readings is in order.
///
/// @param database  brought up to date
/// @errors  Unreadable: the first fault, with its hull
Result<void> check_stored(const Database& database);

}  // namespace sheerlap

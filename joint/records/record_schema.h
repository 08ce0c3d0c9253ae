#pragma once

#include <cstdint>

#include "joint/records/database.h"

namespace sheerlap {

/// The version of the tables that this program writes.
inline constexpr std::int64_t record_version = 2;

/// What SQLite's header says of a file of ours: "SHLP".
inline constexpr std::int64_t record_application = 0x53484C50;

/// Brings the tables of a record up to `record_version`, all steps or none.
///
/// Version 0 is an empty file, 1 has boats, places and readings, 2 leaks too. Every
/// file goes through every step from the version it has.
///
/// @errors  Unreadable: a file that is no record, one of a later version, one that
///          cannot be written
Result<void> bring_up_to_date(const Database& database);

/// The same, up to an earlier version: for tests of the steps.
Result<void> bring_up_to(const Database& database, std::int64_t version);

}  // namespace sheerlap

#pragma once

#include <cstdint>
#include <filesystem>
#include <functional>
#include <memory>
#include <optional>

#include "joint/records/boat_record.h"
#include "joint/records/database.h"

namespace sheerlap {

/// Boats kept in a file.
class BoatStore {
 public:
  /// @errors  Unreadable: no record, or one that cannot be read or holds
  ///          what cannot be true; `where` is empty
  static Result<BoatStore> open(const std::filesystem::path& path,
                                Database::Missing missing);

  /// Replaces a boat, or adds it, by what `change` makes of what is there, in one
  /// transaction: other programs wait, and it is kept whole or not at all.
  ///
  /// @param change  from the boat with that hull number, if there is one
  /// @errors  those of `change`; InvalidInput: the record holds boats of another joint
  Result<BoatRecord> update(
      std::int64_t hull,
      const std::function<Result<BoatRecord>(std::optional<BoatRecord>)>& change) const;

  Result<std::optional<BoatRecord>> boat(std::int64_t hull) const;
  Result<BoatList> boats() const;
  Result<RecordSeries> series() const;

 private:
  explicit BoatStore(Database database);
  Result<void> put(const BoatRecord& boat) const;
  Result<void> put_readings(const BoatRecord& boat) const;
  Result<void> put_leaks(const BoatRecord& boat) const;
  Result<void> add_readings(BoatRecord& boat) const;
  Result<void> add_leaks(BoatRecord& boat) const;

  std::unique_ptr<Database> database_;  ///< its statements point to it
};

}  // namespace sheerlap

#include "cli/opened_record.h"

#include <fmt/format.h>

#include <utility>

#include "joint/quoted_text.h"

namespace sheerlap {

tl::unexpected<Errors> of_record(Errors errors, const std::string& record) {
  for (Error& error : errors)
    if (error.where.empty()) error.message = record + ": " + error.message;
  return tl::unexpected(std::move(errors));
}

Result<BoatStore> opened_record(const std::string& record, const Joint& joint) {
  auto store = BoatStore::open(record, Database::Missing::Refuse);
  if (!store) return of_record(store.error(), record);
  const auto list = store->boats();
  if (!list) return of_record(list.error(), record);
  if (list->title != joint.title)
    return of_record(
        {{ErrorKind::InvalidInput, "",
          fmt::format("holds boats of {}, not of {}: give the record of "
                      "this joint",
                      quoted_text(list->title), quoted_text(joint.title))}},
        record);
  return store;
}

}  // namespace sheerlap

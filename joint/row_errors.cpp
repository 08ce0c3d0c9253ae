#include "joint/row_errors.h"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>
#include <utility>

namespace sheerlap {

Errors at_rows(Errors errors, const std::vector<SheerKnot>& knots) {
  Errors by_row;
  for (Error& error : errors) {
    if (error.where.starts_with("knot[")) {
      std::size_t knot = 0;
      std::from_chars(error.where.data() + 5, error.where.data() + error.where.size(),
                      knot);
      if (knots[knot].mirrored && errors.size() > 1) continue;
      error.where = fmt::format("sheer.row[{}]", knots[knot].row);
    }
    by_row.push_back(std::move(error));
  }
  const auto same = [](const Error& a, const Error& b) {
    return a.where == b.where && a.message == b.message;
  };
  by_row.erase(std::unique(by_row.begin(), by_row.end(), same), by_row.end());
  return by_row;
}

Errors corner_errors(const Errors& errors, const std::vector<SheerKnot>& knots) {
  constexpr std::size_t most = 20;
  Errors by_row = at_rows(errors, knots);
  if (by_row.size() <= most) return by_row;
  const std::size_t more = by_row.size() - most;
  by_row.resize(most);
  by_row.push_back({ErrorKind::InvalidInput, by_row.back().where,
                    fmt::format("the faces do not meet at {} more corners: mend those "
                                "above first",
                                more)});
  return by_row;
}

}  // namespace sheerlap

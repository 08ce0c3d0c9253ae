#include "joint/face_folds.h"

#include <fmt/format.h>

#include "geometry/fold.h"

namespace sheerlap {
namespace {

constexpr std::size_t most_errors = 20;

/// Whether a span only mirrors one of the half that was given.
bool repeats(const SheerCurve& sheer, std::size_t span) {
  const Curve& curve = *sheer.curve;
  const std::size_t after = curve.knot_after(span);
  const auto mirrored = [&](std::size_t knot) { return sheer.knots[knot].mirrored; };
  const auto central = [&](std::size_t knot) {
    return knot < curve.spans() && curve.at({knot, 0}).point.y() == 0;
  };
  return (mirrored(span) && (mirrored(after) || central(after))) ||
         (central(span) && mirrored(after));
}

}  // namespace

Errors face_folds(const RuledFace& face,
                  const SheerCurve& sheer,
                  std::string_view name) {
  Errors errors;
  std::size_t more = 0;
  for (const Fold& fold : folds(face)) {
    if (repeats(sheer, fold.span)) continue;
    if (errors.size() == most_errors) {
      ++more;
      continue;
    }
    errors.push_back(
        {ErrorKind::InvalidInput, fmt::format("knot[{}]", fold.span),
         fmt::format(
             "{} folds on itself after this row: it stands {:.1f} mm off the "
             "sheer where the sheer bends to a radius of {:.1f} mm: an offset to "
             "the inside of a bend stays under its radius",
             name, fold.offset_mm, fold.radius_mm)});
  }
  if (more > 0)
    errors.push_back({ErrorKind::InvalidInput, errors.back().where,
                      fmt::format("{} folds after {} more rows: mend those above first",
                                  name, more)});
  return errors;
}

}  // namespace sheerlap

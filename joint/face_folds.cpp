#include "joint/face_folds.h"

#include <fmt/format.h>

#include <cmath>
#include <optional>

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

/// What is wrong with a face at a place; none if it does not fold there.
std::optional<std::string> fold_at(const RuledFace& face,
                                   const Place& place,
                                   std::string_view name) {
  const PlanFrame frame = plan_frame(face.curve().at(place));
  const auto folded = [&](double depth) {
    return !(frame.speed + face.offset(place, depth).offset * frame.turn > 0);
  };
  const double depth = folded(0) ? 0 : face.lap_mm(place);
  if (!folded(depth)) return std::nullopt;
  return fmt::format(
      "{} folds on itself after this row: it stands {:.1f} mm off the sheer where the "
      "sheer bends to a radius of {:.1f} mm: an offset to the inside of a bend stays "
      "under its radius",
      name, face.offset(place, depth).offset, std::abs(frame.speed / frame.turn));
}

std::optional<std::string> fold_in(const RuledFace& face,
                                   std::size_t span,
                                   std::string_view name) {
  const Curve& curve = face.curve();
  const int steps = curve.bend(span) < 0.01 ? 1 : 16;
  for (int i = 0; i <= steps; ++i)
    if (auto fold = fold_at(face, {span, curve.chord_mm(span) * i / steps}, name))
      return fold;
  return std::nullopt;
}

}  // namespace

Errors face_folds(const RuledFace& face,
                  const SheerCurve& sheer,
                  std::string_view name) {
  Errors errors;
  std::size_t more = 0;
  for (std::size_t span = 0; span < face.curve().spans(); ++span) {
    if (repeats(sheer, span)) continue;
    auto fold = fold_in(face, span, name);
    if (!fold) continue;
    if (errors.size() == most_errors)
      ++more;
    else
      errors.push_back(
          {ErrorKind::InvalidInput, fmt::format("knot[{}]", span), std::move(*fold)});
  }
  if (more > 0)
    errors.push_back({ErrorKind::InvalidInput, errors.back().where,
                      fmt::format("{} folds after {} more rows: mend those above first",
                                  name, more)});
  return errors;
}

}  // namespace sheerlap

#include "joint/hull_movement.h"

#include <fmt/format.h>

#include <algorithm>
#include <cassert>
#include <cmath>
#include <optional>
#include <utility>

#include "joint/sheer_places.h"
#include "joint/worded_length.h"

namespace sheerlap {
namespace {

/// Supports closer than this along the sheer are one.
constexpr double apart_mm = 1;

/// A support of a side's strips, and the push that set it; none for a hinge.
struct Support {
  StripSupport at;
  bool hinge = false;  ///< one strip ends there and the next begins
  const HullPush* push = nullptr;
};

std::vector<Support> hinges(const PerimeterSide& side) {
  std::vector<Support> supports;
  if (side.start != SideEnd::End) supports.push_back({{0, 0}, true});
  for (const InnerCorner& corner : side.corners)
    supports.push_back({{corner.sheer_girth.in_mm(), 0}, true});
  if (side.end != SideEnd::End)
    supports.push_back({{side.sheer_length.in_mm(), 0}, true});
  return supports;
}

/// Puts a push among the supports, in place of a hinge where one stands.
std::optional<Error> put(std::vector<Support>& supports, Support added) {
  for (Support& support : supports) {
    if (std::abs(support.at.at_mm - added.at.at_mm) >= apart_mm) continue;
    if (support.push)
      return Error{ErrorKind::InvalidInput, added.push->where,
                   fmt::format("x = {} is given twice: one of the two is to go",
                               worded(added.push->x))};
    support.at.moved_mm = added.at.moved_mm;
    support.push = added.push;
    return std::nullopt;
  }
  supports.push_back(added);
  return std::nullopt;
}

/// The supports of a side, ascending.
Result<std::vector<Support>> side_supports(const PerimeterSide& side,
                                           const std::vector<HullPush>& pushes) {
  std::vector<Support> supports = hinges(side);
  Errors errors;
  for (const HullPush& push : pushes) {
    const auto girth = sheer_girth_at_x(side, push.x, push.where);
    if (!girth) {
      errors.insert(errors.end(), girth.error().begin(), girth.error().end());
      continue;
    }
    if (auto error =
            put(supports, {{girth->in_mm(), push.outward.in_mm()}, false, &push}))
      errors.push_back(std::move(*error));
  }
  if (!errors.empty()) return tl::unexpected(std::move(errors));
  std::sort(supports.begin(), supports.end(),
            [](const Support& a, const Support& b) { return a.at.at_mm < b.at.at_mm; });
  return supports;
}

/// One strip from hinge to hinge; what has but one support is left out: nothing bends
/// it.
std::vector<BendingStrip> strips_on(const std::vector<Support>& supports) {
  std::vector<BendingStrip> strips;
  std::vector<StripSupport> held;
  const auto end_strip = [&] {
    if (held.size() >= 2) strips.emplace_back(held);
  };
  for (const Support& support : supports) {
    held.push_back(support.at);
    if (!support.hinge) continue;
    end_strip();
    held = {support.at};
  }
  end_strip();
  return strips;
}

}  // namespace

Result<HullMovement> HullMovement::through(const Perimeter& perimeter,
                                           const std::vector<HullPush>& pushes) {
  HullMovement movement;
  Errors errors;
  for (const PerimeterSide& side : perimeter.sides) {
    if (side.name == SideName::Transom) continue;
    const bool starboard = side.name == SideName::Starboard;
    (starboard ? movement.starboard_mm_ : movement.port_mm_) =
        side.sheer_length.in_mm();
    const auto supports = side_supports(side, pushes);
    if (!supports)
      errors.insert(errors.end(), supports.error().begin(), supports.error().end());
    else
      (starboard ? movement.starboard_ : movement.port_) = strips_on(*supports);
  }
  if (!errors.empty()) return tl::unexpected(std::move(errors));
  return movement;
}

StripPoint HullMovement::to_starboard(SideName side, double girth_mm) const {
  const auto& strips = side == SideName::Starboard ? starboard_ : port_;
  if (strips.empty()) return {};
  const auto found = std::find_if(
      strips.begin(), strips.end() - 1,
      [&](const BendingStrip& strip) { return girth_mm <= strip.to_mm(); });
  const StripPoint point = found->at(girth_mm);
  if (side == SideName::Starboard) return point;
  return {-point.moved_mm, -point.slope, -point.curvature};
}

HullShift HullMovement::on_transom(const PerimeterSide& side, Place place) const {
  const Curve& curve = side.sheer.line().face().curve();
  const auto y_at = [&](Length girth) {
    return curve.at(side.sheer.place_at(girth)).point.y();
  };
  const double starboard = to_starboard(SideName::Starboard, starboard_mm_).moved_mm;
  const double port = to_starboard(SideName::Port, port_mm_).moved_mm;
  const double from = y_at(Length());
  const double rate = (port - starboard) / (y_at(side.sheer_length) - from);
  const Jet jet = curve.at(place);
  return {starboard + rate * (jet.point.y() - from), rate * jet.first.y()};
}

HullShift HullMovement::at(const PerimeterSide& side, Place place) const {
  return at(side, place, side.sheer.girth_at(place));
}

HullShift HullMovement::at(const PerimeterSide& side, Place place, Length girth) const {
  if (side.name == SideName::Transom) return on_transom(side, place);
  const StripPoint point = to_starboard(side.name, girth.in_mm());
  const double girth_by_u = side.sheer.line().face().curve().at(place).first.norm();
  return {point.moved_mm,
          point.slope * (side.sheer.path().forward ? girth_by_u : -girth_by_u)};
}

}  // namespace sheerlap

#include "geometry/fold.h"

#include <algorithm>
#include <boost/math/tools/minima.hpp>
#include <cmath>

namespace sheerlap {
namespace {

/// Where a face goes on by less than this share of its curve, a fold is looked for
/// between the places tried.
constexpr double closely_looked_at = 0.5;

/// How far a face goes on for each unit of its curve, in plan, where it does so least
/// within a span; 0 or less where it folds.
struct LeastOnward {
  double share = 1e300;
  Place place;
  double depth_mm = 0;
};

LeastOnward least_onward(const RuledFace& face, std::size_t span) {
  const Curve& curve = face.curve();
  const auto at = [&](double u) {
    LeastOnward least;
    const Place place{span, u};
    const PlanFrame frame = plan_frame(curve.at(place));
    for (const double depth : {0.0, face.lap_mm(place)}) {
      const double share =
          1 + face.offset(place, depth).offset * frame.turn / frame.speed;
      if (share < least.share) least = {share, place, depth};
    }
    return least;
  };
  const int steps = curve.bend(span) < 0.01 ? 1 : 16;
  const double step = curve.chord_mm(span) / steps;
  LeastOnward least;
  for (int i = 0; i <= steps; ++i)
    if (const LeastOnward here = at(step * i); here.share < least.share) least = here;
  if (steps == 1 || least.share > closely_looked_at) return least;
  const double u = boost::math::tools::brent_find_minima(
                       [&](double near) { return at(near).share; },
                       std::max(least.place.u_mm - step, 0.0),
                       std::min(least.place.u_mm + step, curve.chord_mm(span)), 30)
                       .first;
  const LeastOnward between = at(u);
  return between.share < least.share ? between : least;
}

}  // namespace

std::vector<Fold> folds(const RuledFace& face) {
  std::vector<Fold> found;
  for (std::size_t span = 0; span < face.curve().spans(); ++span) {
    const LeastOnward least = least_onward(face, span);
    if (least.share > 0) continue;
    const PlanFrame frame = plan_frame(face.curve().at(least.place));
    found.push_back({span, face.offset(least.place, least.depth_mm).offset,
                     std::abs(frame.speed / frame.turn)});
  }
  return found;
}

}  // namespace sheerlap

#pragma once

#include <array>
#include <limits>
#include <optional>
#include <utility>

#include "joint/fastener_modes.h"
#include "joint/fastener_rows.h"
#include "joint/joint.h"
#include "joint/mechanics/fastener_strength.h"

namespace sheerlap {

/// The load on one hole, N.
template <class Number>
struct LoadOnHole {
  Number shear;
  Number pull;
};

using HoleLoad = LoadOnHole<double>;

/// What a hole's length of joint puts on it, the bond gone.
template <class Working>
LoadOnHole<typename Working::Number> load_on_hole(Working& work,
                                                  const JointLoad& load,
                                                  Length tributary) {
  const Origin summed =
      Origin::of_joint("limit load, summed, the mean over what this hole carries");
  const auto q =
      work.given({"q", "shear flow along the joint", "N/mm"}, load.along, summed);
  const auto p = work.given({"p", "load across the lap", "N/mm"}, load.across, summed);
  const auto off =
      work.given({"V_off", "load that pulls the lip away", "N/mm"}, load.off, summed);
  const auto b = work.given({"b", "length of joint that this hole carries", "mm"},
                            tributary.in_mm(),
                            Origin::of_joint("half of the space to either neighbour; "
                                             "all of the way to a corner or an end"));
  return {work.figure({"V", "shear on the fastener", "N",
                       "derived: load on each mm times the length it carries",
                       "bond gone; each fastener its own length's share"},
                      b * sqrt(power(q, 2) + power(p, 2))),
          work.figure({"N", "pull on the fastener", "N",
                       "derived: load on each mm times the length it carries",
                       "bond gone; no prying of the lip"},
                      b * off)};
}

/// A mode and what it carries, N; none where it does not apply.
using ModeCapacity = std::pair<FastenerMode, std::optional<double>>;

/// The modes that shear meets, and those that a pull meets.
inline std::array<ModeCapacity, 4> shear_modes(const FastenerRow& row) {
  return {{{FastenerMode::Shank, row.shank},
           {FastenerMode::Bearing, row.bearing},
           {FastenerMode::ShearOut, row.shear_out},
           {FastenerMode::NetTension, row.net_tension}}};
}

inline std::array<ModeCapacity, 3> pull_modes(const FastenerRow& row) {
  return {{{FastenerMode::ShankPull, row.shank_pull},
           {FastenerMode::PullThrough, row.pull_through},
           {FastenerMode::PullOut, row.pull_out}}};
}

/// The weakest of some modes.
template <std::size_t n>
std::pair<FastenerMode, double> weakest(const std::array<ModeCapacity, n>& modes) {
  std::pair<FastenerMode, double> least{modes.front().first,
                                        std::numeric_limits<double>::infinity()};
  for (const auto& [mode, capacity] : modes)
    if (capacity && *capacity < least.second) least = {mode, *capacity};
  return least;
}

/// What a hole uses of what it carries.
struct RowUse {
  FastenerMode governing = FastenerMode::Bearing;
  double use = 0;
};

/// Shear and pull together, with the factor.
/// @param row  its loads and capacities are read; a capacity of 0 is not
template <class Working>
auto hole_use(Working& work, const Joint& joint, const FastenerRow& row) {
  const Origin above = Origin::of_joint("worked out above");
  const ShearAndPull<typename Working::Number> load{
      work.given({"V", "shear on the fastener", "N"}, row.load, above),
      work.given({"Va", "least that carries the shear", "N"},
                 weakest(shear_modes(row)).second, above),
      work.given({"N", "pull on the fastener", "N"}, row.pull, above),
      work.given({"Na", "least that carries the pull", "N"},
                 weakest(pull_modes(row)).second, above)};
  const auto u_VN = shear_and_pull_use(work, load);
  return work.figure({"u", "use of the fastener, with the factor", "1",
                      "derived: share in use times the factor asked",
                      "shear and pull that grow together"},
                     work.given({"f", "factor asked of the fasteners", "1"},
                                joint.loads->factor_fastener,
                                Origin::of_file("loads.factor_fastener")) *
                         u_VN);
}

template <class Working>
RowUse row_use(Working& work, const Joint& joint, const FastenerRow& row) {
  const auto [shear_mode, Va] = weakest(shear_modes(row));
  const auto [pull_mode, Na] = weakest(pull_modes(row));
  const auto share = [](double load, double capacity) {
    if (load == 0) return 0.0;
    return capacity > 0 ? load / capacity : std::numeric_limits<double>::infinity();
  };
  const double sheared = share(row.load, Va), pulled = share(row.pull, Na);
  RowUse use;
  use.governing = sheared >= pulled ? shear_mode : pull_mode;
  if (!(Va > 0) || !(Na > 0))
    use.use = joint.loads->factor_fastener * std::max(sheared, pulled);
  else
    use.use = value_of(hole_use(work, joint, row));
  return use;
}

}  // namespace sheerlap

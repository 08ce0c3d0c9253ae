#pragma once

#include <optional>
#include <string>
#include <vector>

#include "geometry/quantity.h"
#include "geometry/result.h"
#include "joint/joint.h"
#include "joint/joint_loads.h"
#include "joint/layout.h"
#include "joint/perimeter.h"
#include "joint/schedule.h"

namespace sheerlap {

/// What gives first at a fastener when the bond is gone.
enum class FastenerMode {
  Shank,
  ShankPull,
  Bearing,
  ShearOut,
  NetTension,
  PullThrough,
  PullOut
};

/// One hole, the bond gone. Capacities are in N before factors; none where a mode does
/// not apply (a bolt does not pull out) or cannot be worked out.
struct FastenerRow {
  std::string mark;
  SideName side = SideName::Starboard;
  Length girth;      ///< on the drill line
  Length tributary;  ///< the length of joint it carries
  double load = 0;   ///< shear, N at the limit load
  double pull = 0;   ///< along the fastener, N at the limit load
  std::optional<double> shank;
  std::optional<double> shank_pull;
  std::optional<double> bearing;  ///< the lesser of lip and hull, as the next two
  std::optional<double> shear_out;
  std::optional<double> net_tension;
  std::optional<double> pull_through;
  std::optional<double> pull_out;
  FastenerMode governing = FastenerMode::Bearing;
  double utilisation = 0;  ///< with shear and pull together
};

struct FastenerStrengths {
  std::vector<FastenerRow> rows;      ///< in the order of the schedule
  std::size_t worst = 0;              ///< its index; rows may be empty
  std::vector<std::string> left_out;  ///< modes that could not be worked out, and why
};

/// The fasteners alone, hole by hole.
///
/// A hole carries half of the space on either side of it, with all the load there; next
/// to a corner, an opening or an end all of the way to it.
/// @param joint  with loads and all that `strength_lacks` asks for
/// @errors       at "fastener.class": a class that is not known
Result<FastenerStrengths> fastener_strengths(const Joint& joint,
                                             const Perimeter& perimeter,
                                             const Schedule& schedule,
                                             const JointLoads& loads);

/// How a hole stands among the others, and what it has to carry.
struct HoleNeighbours {
  Length tributary;  ///< the length of joint it carries
  Length space;      ///< the lesser space beside it; to an end, twice the way
  JointLoad load;    ///< limit load on each mm of it, the mean
};

/// A hole on the centreline, which starboard has, stands beside port's holes too.
HoleNeighbours hole_neighbours(const Perimeter& perimeter,
                               const std::vector<DrillStation>& stations,
                               std::size_t hole,
                               const JointLoads& loads);

/// One hole under its load.
/// @param joint  whose fastener class is known
FastenerRow fastener_row(const Joint& joint,
                         const FastenerSpec& spec,
                         const DrillStation& station,
                         const HoleNeighbours& neighbours);

/// The working of one hole.
/// @param figure  the place in the result it explains
Explanations fastener_reasons(const Joint& joint,
                              const FastenerSpec& spec,
                              const DrillStation& station,
                              const HoleNeighbours& neighbours,
                              const std::string& figure);

/// The greatest space that the fasteners alone carry at the load and the edge distances
/// of a station; 0 if it carries none, none where there is no load.
std::optional<Length> carried_pitch(const Joint& joint,
                                    const FastenerSpec& spec,
                                    const DrillStation& station,
                                    const JointLoad& load);

/// "shank in shear", "bearing" ...
std::string mode_words(FastenerMode mode);

}  // namespace sheerlap

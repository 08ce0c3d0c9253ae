#pragma once

#include <optional>
#include <string>

#include "geometry/quantity.h"
#include "joint/fasteners.h"
#include "joint/joint.h"
#include "joint/perimeter.h"
#include "joint/schedule.h"

namespace sheerlap {

/// A length of the joint, and where it stands in shop words: "at S03".
struct PlacedLength {
  Length length;
  std::string where;
};

/// What lies between hull and lip.
enum class JointFilling { NotGiven, Adhesive, Sealant };

/// The facts of a joint that published rules ask for.
struct RuleSubject {
  FastenerKind kind = FastenerKind::TappingScrew;
  Length diameter;  ///< over the thread at its greatest, d
  Length lip_hole;
  Length hull_hole;                           ///< the pilot, where there is one
  std::optional<PlacedLength> largest_pitch;  ///< none: no two holes with joint between
  std::optional<PlacedLength> smallest_pitch;
  std::optional<PlacedLength> edge_low;  ///< to the lip's low edge, trim taken off
  std::optional<PlacedLength> edge_top;  ///< to the hull's top edge, likewise
  std::optional<PlacedLength> end;       ///< none: no corner, opening or end
  std::optional<Length> row_gap;         ///< none: one line of holes
  std::optional<PlacedLength> lap;       ///< depth both cover, trims taken off
  Length lip_thickness;
  Length hull_thickness;
  std::optional<Length> vessel_length;  ///< none: not given
  JointFilling filling = JointFilling::NotGiven;
};

/// The facts that a joint has before its holes are laid out.
RuleSubject rule_subject(const Joint& joint, const FastenerSpec& fastener);

/// The facts of a laid-out joint; its vessel's length is left for the caller to add.
///
/// Edge distances are those of the schedule. An end distance is the girth from a hole
/// to the nearest corner, opening or end of its side: the lesser of that on the drill
/// line (lip's outer face) and that on the hull face at its depth; at a mitred corner
/// within a side likewise. An adhesive whose shear modulus is given and under 5 N/mm2
/// is a sealant.
///
/// @param schedule  of this joint; its stations are those of the layout
RuleSubject rule_subject(const Joint& joint,
                         const Perimeter& perimeter,
                         const Schedule& schedule);

}  // namespace sheerlap

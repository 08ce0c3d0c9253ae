#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "geometry/result.h"
#include "joint/adhesive_amounts.h"
#include "joint/bead_runs.h"
#include "joint/check.h"
#include "joint/joint.h"
#include "joint/perimeter.h"
#include "joint/reasons/reason.h"
#include "joint/working_time.h"

namespace sheerlap {

/// How much closer and further off the lip stands in the least and the most: what a
/// hull out of shape comes to (common practice, no source).
inline constexpr Length lip_shift = Length::mm(1);

/// How the figures of the adhesive that geometry gives are found.
inline constexpr FoundWords joint_volume_words{
    {"V_joint", "volume enclosed between the faces over the bond band", "ml",
     "derived: volume between the two ruled faces, mitres at the corners included",
     "where the lip is outside the hull: interference counts nothing"},
    "the integral of the joint's section along the girth, span by span, by Gauss "
    "quadrature, and the corners' own volume",
    "about 1e-10 of itself for the faces given"};
inline constexpr FoundWords shifted_volume_words{
    {"V_joint", "the same with the lip moved level, 1 mm closer or further off", "ml",
     "derived: volume between the ruled faces; 1 mm: common practice, no source",
     "a hull out of shape all round at once, which is the worst of it"},
    "as the joint's volume, the lip's offsets all less or more",
    "about 1e-10 of itself for the faces given"};
inline constexpr FoundWords run_girth_words{
    {"s_to", "girth on the sheer where the bead's size changes", "mm",
     "derived: where the section needed passes that of a bead",
     "also at openings and at the ends of a side"},
    "the girth at which the section needed passes a bead's, by halving",
    "1e-9 of a span; a rise and fall within a sixteenth of a span may be passed over"};

struct AdhesivePlan {
  double bond_area_mm2 = 0;  ///< of the hull face over the bond band
  std::vector<BeadRun> beads;
  AdhesiveAmounts nominal;
  /// The lip everywhere `lip_shift` closer, or further off, level; none if its corners
  /// do not meet there.
  std::optional<AdhesiveAmounts> least, most;
  std::optional<TimePlan> time;  ///< if shop and working time are given
  Checks checks;
};

/// The adhesive the joint takes.
///
/// The joint's volume is what the two faces enclose over the bond band, mitres at the
/// corners included, where the lip is outside the hull. The beads are laid along the
/// sheer; the corners' own volume is in the joint's, not in the section that a bead has
/// to cover.
///
/// @param joint       with its adhesive
/// @param perimeter   of the joint
/// @param fasteners   to drive before the adhesive goes off
/// @errors  at "sheer.row[N]": faces that do not meet at a corner
Result<AdhesivePlan> adhesive_plan(const Joint& joint,
                                   const Perimeter& perimeter,
                                   std::size_t fasteners);

}  // namespace sheerlap

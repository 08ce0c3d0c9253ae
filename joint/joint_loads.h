#pragma once

#include <optional>
#include <string>
#include <vector>

#include "geometry/quantity.h"
#include "geometry/result.h"
#include "joint/joint.h"
#include "joint/perimeter.h"
#include "joint/reasons/reason.h"

namespace sheerlap {

/// What one cause puts on each mm of the joint at a place.
struct LoadShare {
  std::string what;  ///< "the joint file's line load", "bow cleat"
  JointLoad load;
  Origin origin;  ///< of its figure, or of the table with a figure for each direction
};

/// A place of the joint with no joint beyond it, as heat sees it.
struct FreeEndDistance {
  Length distance;  ///< along the drill line to the nearest free end
  Length length;    ///< of the joint from that free end to the next
};

/// The limit loads on each mm of the joint, all round.
///
/// Loads of one direction add as if they acted together and the same way; the three
/// directions are taken to act at once. Both is the safe side.
class JointLoads {
 public:
  /// @param joint  with its loads
  /// @errors  at "load[N]...", "point_load[N]...": off its side, or on a side the joint
  ///          has not; at "plate[N]", "deck_panel...": what its formula refuses
  static Result<JointLoads> of(const Joint& joint, const Perimeter& perimeter);

  /// Where the load jumps, that of the hand that is loaded more.
  /// @param girth  on the drill line of the side
  JointLoad at(SideName side, Length girth) const;
  /// The mean over a stretch of a side; at its place if it has no length.
  JointLoad mean(SideName side, Length from, Length to) const;
  /// The causes that load a place, heat left out; those without effect there left out.
  std::vector<LoadShare> shares_at(SideName side, Length girth) const;
  /// Those of them that load every place alike; the first of `shares_at`.
  const std::vector<LoadShare>& all_round() const { return even_; }
  /// The girths on a side's drill line at which the load jumps.
  std::vector<Length> jumps_on(SideName side) const;
  /// How far a place is from where the joint ends; none if it ends nowhere.
  std::optional<FreeEndDistance> free_end(SideName side, Length girth) const;
  /// The workings of the causes that had to be worked out.
  const Explanations& reasons() const { return reasons_; }

 private:
  struct Piece {
    Length from;
    Length to;
    LoadShare share;
  };
  struct Side {
    SideName name = SideName::Starboard;
    std::vector<Piece> pieces;
    Length ring_start;           ///< of its girth 0 on the way round the boat
    bool forward = true;         ///< its girth grows the way round
    std::vector<Length> begins;  ///< girths at which joint begins
    std::vector<Length> stops;   ///< girths at which it stops
  };

  enum class Hand { Before, After };

  const Side& side(SideName name) const;
  JointLoad sum(SideName name, Length girth, Hand hand) const;
  Hand heavier_hand(SideName name, Length girth) const;
  static bool holds(const Piece& piece, Length girth, Hand hand);
  Errors add_stretches(const Joint& joint, const Perimeter& perimeter);
  Errors add_points(const Joint& joint, const Perimeter& perimeter);
  Errors add_girder(const HullGirder& girder);
  Errors add_panel(const DeckLoad& panel);
  void set_ring(const Perimeter& perimeter);

  std::vector<LoadShare> even_;  ///< all round
  std::vector<Side> sides_;
  std::vector<double> free_ends_mm_;  ///< on the way round, ascending
  double ring_mm_ = 0;
  Explanations reasons_;
};

}  // namespace sheerlap

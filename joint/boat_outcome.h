#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "joint/boat_model.h"
#include "joint/boat_seating.h"
#include "joint/joint.h"
#include "joint/lane_boats.h"
#include "joint/length_steps.h"
#include "joint/stretch.h"

namespace sheerlap {

/// A stretch of one side over which gaps are counted together.
struct CountedStretch {
  SideName side = SideName::Starboard;
  Length from, to;  ///< girth along the sheer
};

/// Which stretch each gap of a model is in.
struct StretchPlan {
  std::vector<CountedStretch> stretches;    ///< starboard, port, transom; by girth
  std::vector<std::size_t> stretch_of_gap;  ///< P
};

/// Each side in equal stretches of 500 mm or a little less.
StretchPlan stretch_plan(const BoatModel& model, const Perimeter& perimeter);

/// A share of a boat's margin that one stretch holds.
struct StretchHold {
  std::size_t stretch = 0;
  double share = 0;
};

/// What is counted of one boat.
struct BoatOutcome {
  double margin_mm = 0;
  SqueezeNeed need = SqueezeNeed::None;
  double squeeze_mm = 0;  ///< that is needed; 0 of a boat that it does not help
  bool afresh = false;
  double volume_ml = 0;                ///< of the joint, the lid in its best place
  std::vector<StretchHold> holds;      ///< shares add up to 1
  std::vector<std::size_t> tight;      ///< stretches with a gap below the window
  std::vector<std::size_t> wide;       ///< above it
  std::vector<std::uint32_t> lengths;  ///< fasteners of each length; last: not served
};

/// What boats are judged by; all of it is referred to.
struct JudgeGround {
  const BoatModel& model;
  const StretchPlan& plan;
  const Adhesive& adhesive;  ///< its window
  const std::vector<Spreader>& spreaders;
  const LengthSteps* lengths = nullptr;  ///< none: no fasteners are counted
};

/// Says what boats come to, one after the other.
class BoatJudge {
 public:
  explicit BoatJudge(const JudgeGround& ground)
      : ground_(ground), seating_(ground.model, ground.adhesive, ground.spreaders) {}

  /// @param at       the lane's boat
  /// @param outcome  written over; its memory is used again
  void judge(const LaneBoats& boats, Eigen::Index at, BoatOutcome& outcome);

 private:
  void add_holds(BoatOutcome& outcome) const;
  void add_misfits(BoatOutcome& outcome) const;
  void count_lengths(const LaneBoats& boats,
                     Eigen::Index at,
                     BoatOutcome& outcome) const;

  JudgeGround ground_;
  BoatSeating seating_;
  SeatedBoat boat_;
  Eigen::VectorXd gaps_;
};

}  // namespace sheerlap

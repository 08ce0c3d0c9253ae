#pragma once

#include <array>
#include <cstddef>
#include <optional>
#include <vector>

#include "joint/adhesive_amounts.h"
#include "joint/boat_outcome.h"
#include "joint/fine_histogram.h"
#include "joint/joint.h"
#include "joint/sample_figures.h"
#include "joint/tolerance_answers.h"

namespace sheerlap {

/// What a boat's joint takes of adhesive: where it holds more than as drawn, so much
/// more is laid, with the squeeze-out; what bead sizes round up stays as it is.
/// @param drawn  the boat as drawn
AdhesiveAmounts amounts_for(const AdhesiveAmounts& drawn,
                            const Adhesive& adhesive,
                            double volume_ml);

/// Counts boats as they come; what it holds does not grow with them.
///
/// Quantiles are told apart to 0.005 mm of margin, 0.01 mm of squeeze and a
/// ten-thousandth of the volumes as drawn.
class ToleranceTally {
 public:
  ToleranceTally(const Adhesive& adhesive,
                 const AdhesiveAmounts& drawn,
                 std::size_t stretches,
                 std::size_t lengths);

  /// Boats are to be added in one order, for the same figures to the last bit.
  void add(const BoatOutcome& boat);
  std::size_t boats() const { return boats_; }

  /// These need one boat or more.
  SqueezeShares shares() const;
  std::vector<BlamedStretch> stretches(const StretchPlan& plan) const;
  ToleranceAdhesive adhesive() const;
  Estimate margin_mean() const { return margin_.mean_estimate(); }
  Deciles margin() const { return margins_.deciles(); }
  /// None if no boat needs a squeeze that it helps.
  std::optional<Deciles> squeeze() const;
  std::size_t afresh() const { return afresh_; }

  /// Laid in a boat, ml; and how many of each length, the last of them not served.
  const RunningFigures& laid() const { return laid_; }
  double laid_p90() const;
  const std::vector<RunningFigures>& lengths() const { return lengths_; }

 private:
  struct Stretch {
    RunningFigures holds;
    std::size_t tight = 0, wide = 0;
  };
  std::size_t needing(SqueezeNeed need) const {
    return needs_[static_cast<std::size_t>(need)];
  }
  void add_adhesive(double volume_ml);
  void add_stretches(const BoatOutcome& boat);

  const Adhesive& product_;
  AdhesiveAmounts drawn_;
  std::size_t boats_ = 0, afresh_ = 0;
  std::array<std::size_t, 4> needs_ = {};
  RunningFigures margin_, volume_, laid_;
  FineHistogram margins_, squeezes_, volumes_, boat_volumes_;
  std::vector<Stretch> stretches_;
  std::vector<double> held_;  ///< scratch
  std::vector<RunningFigures> lengths_;
};

}  // namespace sheerlap

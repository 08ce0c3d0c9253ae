#pragma once

#include <optional>
#include <vector>

#include "geometry/window_programme.h"
#include "joint/adhesive_product.h"
#include "joint/boat_model.h"
#include "joint/seating_inputs.h"

namespace sheerlap {

/// What it takes to get a lid on.
enum class SqueezeNeed {
  None,    ///< every gap is in the window as the hull stands
  Within,  ///< with a squeeze within the spreaders' limits
  Beyond,  ///< with a squeeze beyond a limit
  Never,   ///< no squeeze at the spreaders does it
};

/// A boat with its lid on.
struct SeatedBoat {
  /// Of the best place within the limits: the worst gap's distance inside the window.
  double margin_mm = 0;
  LidUnknowns best;
  std::vector<WindowContact> contacts;  ///< that hold it, prices that add up to 1
  /// How the boat is joined: squeezed no more than it needs, or, if what it may be
  /// squeezed is not enough, as in its best place.
  LidUnknowns joined;
  SqueezeNeed need = SqueezeNeed::None;
  double squeeze_mm = 0;  ///< least that is needed, of the spreader that needs most
  bool afresh = false;    ///< some programme had to be solved the general way
};

/// Seats lids, one boat after the other, by the linear programmes of the boat as drawn.
///
/// The best place has the greatest margin within the limits, as `best_seating` has it.
/// Whether it goes on without a squeeze, and the least share of the limits it takes if
/// not, are programmes of their own.
class BoatSeating {
 public:
  /// @param spreaders  with limits above 0
  BoatSeating(const BoatModel& model,
              const Adhesive& adhesive,
              const std::vector<Spreader>& spreaders);

  /// @param gaps  of one boat, the lid not moved
  void seat(const Eigen::Ref<const Eigen::VectorXd>& gaps, SeatedBoat& boat);

 private:
  void add_need(const Eigen::Ref<const Eigen::VectorXd>& gaps, SeatedBoat& boat);

  WindowSolver best_;
  std::optional<WindowSolver> unsqueezed_;  ///< none without spreaders
  std::optional<WindowSolver> reach_;
};

}  // namespace sheerlap

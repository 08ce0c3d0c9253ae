#pragma once

#include <Eigen/Core>
#include <cstddef>
#include <optional>
#include <vector>

#include "joint/seating_search.h"

namespace sheerlap {

/// Points of a task, ascending.
using LapPoints = std::vector<std::size_t>;

/// The true gaps at some unknowns.
struct SeatingState {
  LidUnknowns at;
  LapPoints points;  ///< whose gaps they are
  Eigen::VectorXd gaps;
  Eigen::MatrixXd slopes;  ///< one row a point
  double margin = 0;
};

/// @returns  nothing if one of the gaps cannot be had
std::optional<SeatingState> state_at(const SeatingTask& task,
                                     const LapPoints& points,
                                     const LidUnknowns& unknowns);

/// How far a gap lies inside the window.
double margin_of(double gap_mm, const SeatingTask& task);

/// The ranges of the unknowns.
struct SeatingBox {
  Eigen::VectorXd low, high;
};

/// All that the lid and the spreaders may do.
SeatingBox whole_box(const SeatingTask& task);
SeatingBox within_reach(const SeatingBox& whole, const LidUnknowns& at, double reach);

/// The margin, less a very little for each mm of movement.
double worth(double margin, const LidUnknowns& at);

/// What a linear programme proposes.
struct SeatingProposal {
  LidUnknowns to;
  double margin = 0;
  std::vector<SeatingContact> contacts;  ///< the gaps with a price
  /// Of the limits of the box, one a spreader.
  std::vector<double> limit_prices;
};

/// The worthiest seating within a box, of the gaps as their slopes have it.
/// @param box  with the state's unknowns in it
SeatingProposal proposal(const SeatingTask& task,
                         const SeatingState& state,
                         const SeatingBox& box);

}  // namespace sheerlap

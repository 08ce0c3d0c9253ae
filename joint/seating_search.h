#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "geometry/ruled_face.h"
#include "joint/lid_gap.h"

namespace sheerlap {

/// A lid to be seated.
struct SeatingTask {
  std::vector<LapPoint> points;
  const RuledFace* lip = nullptr;
  LidDatum datum;
  double gap_min_mm = 0;
  double gap_max_mm = 0;
  std::vector<double> squeeze_most_mm;  ///< of each side, in or out; one a spreader
};

/// A gap that no seating can better without making another worse.
struct SeatingContact {
  std::size_t point = 0;
  bool tight = true;  ///< it is at the least gap, else at the greatest
  double price = 0;   ///< of margin, for each mm that this gap alone was better
};

struct FoundSeating {
  LidUnknowns unknowns;
  std::vector<double> gaps_mm;  ///< the true ones, one a point
  double margin_mm = 0;         ///< the worst of them inside the window
  std::size_t worst = 0;        ///< the point that has it
  double gain_left_mm = 0;      ///< what the last linear programme still promised
  std::vector<SeatingContact> contacts;  ///< by point, whose prices hold the margin
  /// Of margin, for each mm that a spreader's limit was further; one a spreader.
  std::vector<double> limit_prices;
};

/// How far the lid may be moved either way, and its ends by the turn (mm).
constexpr double furthest_mm = 100;

/// What a mm of each unknown takes off the worth of a seating, either way: so little
/// that it decides only between seatings whose margins are alike.
Eigen::VectorXd seating_prices(Eigen::Index unknowns);

/// The seating whose worst gap lies furthest inside the window. A mm of the lid's
/// movement is made only where it gains a millionth of a mm of margin, a mm of squeeze
/// only where it gains ten: of seatings that are alike it is the one that moves least.
///
/// A sequence of linear programmes in the unknowns and the margin, from the slopes of
/// the true gaps, each within a reach that shrinks where the gaps bend away; each
/// optimum is proved by its dual.
///
/// @returns   nothing if no gap can be had as drawn
/// @accuracy  the gaps are the true ones; the last programme's differ by under 1e-6 mm.
///            The optimum is a local one, from the lid as drawn
std::optional<FoundSeating> best_seating(const SeatingTask& task);

/// The gaps at given unknowns, in the form of a seating; the gain left is not known.
std::optional<FoundSeating> seating_at(const SeatingTask& task,
                                       const LidUnknowns& unknowns);

}  // namespace sheerlap

#pragma once

#include <cstddef>
#include <deque>
#include <limits>
#include <utility>
#include <vector>

#include "geometry/spacing_envelope.h"

namespace sheerlap {

/// A cost on a part of a cell, and the one it follows from.
struct SpacingPiece {
  SpacingCost cost;
  std::size_t cell = 0;
  std::size_t points = 0;  ///< so far; `any_points` if it only bounds the excess
  const SpacingPiece* before = nullptr;
};

constexpr std::size_t any_points = std::numeric_limits<std::size_t>::max();

/// The best costs known, cell by cell.
class SpacingPieces {
 public:
  /// @param same_excess_mm  excesses that differ by no more are the same
  SpacingPieces(std::size_t cells, double same_excess_mm)
      : held_(cells), same_excess_mm_(same_excess_mm) {}

  double same_excess_mm() const { return same_excess_mm_; }
  /// In order; they share no more than their ends.
  const std::vector<const SpacingPiece*>& in(std::size_t cell) const {
    return held_[cell];
  }
  /// What a piece that was won still holds: itself, or parts of it.
  std::vector<const SpacingPiece*> left_of(const SpacingPiece& piece) const;

  /// Keeps a piece without letting it hold anything.
  const SpacingPiece& keep(const SpacingPiece& piece);
  /// Lets a newcomer hold the ground on which it is better than what is known: where
  /// nothing is, or its excess is less, or it is the same with as many points and less
  /// squares. Where there is but a bound it has to match that.
  ///
  /// @returns  the pieces it holds now
  std::vector<const SpacingPiece*> offer(const SpacingPiece& newcomer);
  /// Lets a piece hold ground of which nothing is known.
  void add_bound(const SpacingPiece& piece);

 private:
  using Held = std::vector<const SpacingPiece*>;
  /// Those of a cell that share ground with a part of it, from the first to past the
  /// last.
  std::pair<std::size_t, std::size_t> sharing(std::size_t cell,
                                              const SpacingInterval& part) const;
  std::vector<SpacingInterval> won_by(const SpacingPiece& newcomer) const;
  void keep_parts(const SpacingPiece& piece,
                  const std::vector<SpacingInterval>& parts,
                  Held& held);

  std::deque<SpacingPiece> pieces_;  ///< all that ever were: others follow from them
  std::vector<Held> held_;
  double same_excess_mm_;
};

}  // namespace sheerlap

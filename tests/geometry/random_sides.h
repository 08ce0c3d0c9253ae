#pragma once

#include <cstdint>
#include <random>
#include <vector>

#include "geometry/spacing.h"

namespace sheerlap {

/// Numbers that look random; the same seed gives the same ones everywhere.
class RandomNumbers {
 public:
  explicit RandomNumbers(std::uint64_t seed) : engine_(seed) {}
  /// A whole number from `least` to `greatest`.
  int whole(int least, int greatest);
  double between(double least, double greatest);
  bool one_in(int chances) { return whole(1, chances) == 1; }

 private:
  std::mt19937_64 engine_;  ///< its sequence is fixed by the standard
};

/// A stretch of a side with keep-outs, zones, fixed places, corner or mirrored ends;
/// short enough to search through by brute force. All lengths are whole millimetres, so
/// that runs often just come out.
SpacingProblem random_stretch(RandomNumbers& random);

/// One to three such stretches, each from 0.
std::vector<SpacingProblem> random_side(std::uint64_t seed);

}  // namespace sheerlap

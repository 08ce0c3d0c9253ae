#pragma once

#include <Eigen/Core>
#include <cstddef>
#include <optional>
#include <vector>

#include "geometry/ring_field.h"
#include "joint/tolerance_answers.h"

namespace sheerlap {

/// What was read of one sample of a field.
struct FieldSample {
  std::vector<double> along_mm;  ///< N places on the line
  Eigen::VectorXd values;        ///< N
  /// N x modes: shapes of which the sample has some amount, nobody knows how much.
  Eigen::MatrixXd modes;
  /// N: which place of the pattern that all samples have each reading is at, from 0;
  /// empty: the pattern is the same all along.
  std::vector<std::size_t> pattern = {};
};

/// A field by its samples, with intervals of 95 %.
struct FieldEstimate {
  Estimate mean;    ///< of a pattern that is the same all along
  Estimate spread;  ///< standard deviation at a place, about the pattern there
  Estimate correlation_mm;        ///< l in exp(-d^2 / (2 l^2))
  double noise = 0;               ///< standard deviation of each reading by itself
  bool correlation_open = false;  ///< its interval ends where none was looked for
  std::size_t samples = 0;
  std::size_t readings = 0;
};

/// The mean, spread and correlation length that make the samples likeliest, their modes
/// taken out: a pattern that all samples have, a normal field about it, and noise of
/// each reading by itself.
///
/// The restricted likelihood, on a grid of correlation lengths from 50 mm to a quarter
/// of the line, finer where they are likely, and of noise against spread. Spread and
/// correlation length have the interval of those whose likelihood, the rest at its
/// best, is within 1.92 of the greatest in its logarithm; the mean has that of the
/// normal law at the likeliest rest.
///
/// What varies over much less than the readings stand apart cannot be told from noise:
/// the interval of the correlation length is then open, and spread and noise together
/// are what varies from place to place.
///
/// The pattern is free at each of its places, so that a place read once tells nothing
/// of the spread. Samples that are alike to a millionth of a mm have that spread.
///
/// @param samples  of one line
/// @returns   nothing if fewer than three numbers are left when modes and pattern are
///            taken out
/// @accuracy  the grid's: a fiftieth of the interval of the correlation length and of
///            the spread
/// @source    H. D. Patterson, R. Thompson, Recovery of inter-block information when
///            block sizes are unequal, Biometrika 58 (1971); S. S. Wilks, The large-
///            sample distribution of the likelihood ratio, Ann. Math. Stat. 9 (1938):
///            half of chi-square's 3.84; from memory, confirm
std::optional<FieldEstimate> field_estimate(const std::vector<FieldSample>& samples,
                                            double line_mm,
                                            bool closed);

}  // namespace sheerlap

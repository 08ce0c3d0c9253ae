#pragma once

#include <Eigen/Core>
#include <vector>

namespace sheerlap {

/// A line along which something varies at random: alike close by, unlike far off.
struct FieldLine {
  double length_mm = 0;       ///< > 0
  double correlation_mm = 0;  ///< l > 0 in exp(-d^2 / (2 l^2)), d along the line
  bool closed = true;         ///< its end is its start
};

/// How many unit normals make up one field on the line: odd, and about 1.6 for each
/// correlation length in it.
Eigen::Index field_terms(const FieldLine& line);

/// What makes a Gaussian field out of independent unit normals: field = basis * normals
/// has mean 0, variance 1 at every point, and between two points d apart the
/// correlation exp(-d^2 / (2 l^2)); on a closed line the sum of that over d + k *
/// length, whole k, with the same sum at d = 0 for its unit.
///
/// A Fourier series with that spectrum. Waves so short that all of them together have
/// less than 1e-6 of the variance are left out and the rest is made up to 1. An open
/// line is a part of a closed one that is 6 correlation lengths longer, across which no
/// more than 2e-8 is left of the correlation.
///
/// @param along_mm  0 to `length_mm`, any order
/// @returns   points x `field_terms`; rows have length 1
/// @accuracy  correlations within 2e-6
/// @source    derived: by Poisson's summation the wave with n periods round a line of
///            length P has variance in proportion to exp(-(2 pi n l / P)^2 / 2), shared
///            evenly by its cosine and its sine
Eigen::MatrixXd field_basis(const FieldLine& line, const std::vector<double>& along_mm);

}  // namespace sheerlap

#pragma once

#include <Eigen/Core>
#include <cstddef>
#include <vector>

#include "joint/field_estimate.h"

namespace sheerlap {

/// Samples that were read at the same places, their modes taken out.
struct SampleGroup {
  std::vector<double> along_mm;
  Eigen::MatrixXd modes;
  Eigen::MatrixXd rest;     ///< N x left: what is square to all modes
  Eigen::VectorXd level;    ///< left: of a field that is 1 all along
  Eigen::MatrixXd pattern;  ///< left x parts of the pattern that can be told
  std::vector<std::size_t> places;
  Eigen::VectorXd mean;     ///< left: of the samples
  Eigen::MatrixXd squares;  ///< left x left: about it, samples added up
  double samples = 0;
};

/// The samples by the places they were read at.
std::vector<SampleGroup> grouped(const std::vector<FieldSample>& samples);

/// Gives each group what the pattern's parts do there: those alone that the modes of
/// all samples leave to be told.
void add_pattern(std::vector<SampleGroup>& groups);

}  // namespace sheerlap

#pragma once

#include <cstddef>

#include "joint/sample_figures.h"

namespace sheerlap {

/// What 90 of a hundred runs of so many boats stay below, all boats of the run
/// together.
///
/// The boats of a run are independent of each other: an error that a mould or a season
/// gives all of them alike is to be in the means.
///
/// @param boats  of a run, > 0
/// @accuracy  the law of the sum by its mean, spread and skewness; of 10 boats or more
///            that are no more skew than the exponential law, within a fiftieth of the
///            sum's spread
/// @source    E. A. Cornish, R. A. Fisher, Moments and cumulants in the specification
///            of distributions, Revue de l'Institut international de statistique 5
///            (1938): the term in the skewness; from memory, confirm
Estimate run_p90(const RunningFigures& boat, std::size_t boats);

/// The run's total on the average.
Estimate run_mean(const RunningFigures& boat, std::size_t boats);

}  // namespace sheerlap

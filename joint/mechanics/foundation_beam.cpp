#include "joint/mechanics/foundation_beam.h"

#include <cmath>

namespace sheerlap {

double deflection(const FoundationBeam<double>& beam,
                  const std::vector<PointLoad>& loads,
                  double x) {
  PlainWorking work;
  const double beta = foundation_beta(work, beam);
  double sum = 0;
  for (const PointLoad& load : loads) {
    const double u = beta * std::abs(x - load.at);
    sum += load.P * beta / (2 * beam.k_f) * std::exp(-u) * (std::cos(u) + std::sin(u));
  }
  return sum;
}

double moment(const FoundationBeam<double>& beam,
              const std::vector<PointLoad>& loads,
              double x) {
  PlainWorking work;
  const double beta = foundation_beta(work, beam);
  double sum = 0;
  for (const PointLoad& load : loads) {
    const double u = beta * std::abs(x - load.at);
    sum += load.P / (4 * beta) * std::exp(-u) * (std::cos(u) - std::sin(u));
  }
  return sum;
}

}  // namespace sheerlap

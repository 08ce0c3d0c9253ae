#pragma once

#include <optional>

namespace sheerlap {

/// What a laminate is made of, as far as its strength goes; N/mm2.
struct LaminateStrength {
  std::optional<double> modulus;
  std::optional<double> shear_modulus;
  std::optional<double> poisson;  ///< no unit
  std::optional<double> tension;
  std::optional<double> compression;
  std::optional<double> shear;
  std::optional<double> interlaminar;
  std::optional<double> bearing;
};

/// What the cured adhesive can carry; N/mm2.
struct AdhesiveStrength {
  std::optional<double> modulus;
  std::optional<double> shear_modulus;
  std::optional<double> shear_strength;
  std::optional<double> peel_strength;
  std::optional<double> plastic_strain;  ///< shear strain beyond yield at failure
};

/// Limit loads on the joint, N for each mm of it, and the factors asked for.
struct Loads {
  double along = 0;   ///< shear flow along the joint
  double across = 0;  ///< up or down the lap
  double off = 0;     ///< square to the lap, pulling the lip away
  double factor_bond = 1;
  double factor_fastener = 1;
};

}  // namespace sheerlap

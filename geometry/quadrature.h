#pragma once

#include <boost/math/quadrature/gauss.hpp>
#include <boost/math/quadrature/gauss_kronrod.hpp>
#include <cmath>

namespace sheerlap {

/// The integral over [from, to] by a rule of 15 points, on halves of the interval as
/// long as the rule of 7 points among them is further off than `within`; at most
/// `levels` times halved.
///
/// The error of the 15 points is far below that of the 7: about its power of 1.5, both
/// relative (R. Piessens et al., QUADPACK, 1983, from memory, confirm).
template <class Function>
double halved_integral(
    const Function& function, double from, double to, double within, int levels) {
  double error = 0;  // on an interval of length 2
  const double sum = boost::math::quadrature::gauss_kronrod<double, 15>::integrate(
      function, from, to, 0, 0.0, &error);
  if (levels == 0 || error * std::abs(to - from) / 2 <= within) return sum;
  const double middle = (from + to) / 2;
  return halved_integral(function, from, middle, within, levels - 1) +
         halved_integral(function, middle, to, within, levels - 1);
}

/// The integral of a smooth function over [from, to].
///
/// @param variation  how much what lies beneath changes over the interval, as a turn in
///                   radians or a share of itself: it decides between a fixed rule and
///                   an adaptive one
/// @accuracy  about 1e-12 of the integral of the function's absolute value, for
///            functions as smooth as a cubic's arc length; digits lost to rounding
///            before, up to 1e-10, are not chased
/// @source    Gauss-Legendre and Gauss-Kronrod rules of Boost.Math
template <class Function>
double integral(const Function& function, double from, double to, double variation) {
  if (from == to) return 0;
  if (variation < 1e-3)
    return boost::math::quadrature::gauss<double, 2>::integrate(function, from, to);
  if (variation < 0.02)
    return boost::math::quadrature::gauss<double, 4>::integrate(function, from, to);
  double error = 0;  // on an interval of length 2
  double size = 0;
  const double sum = boost::math::quadrature::gauss_kronrod<double, 15>::integrate(
      function, from, to, 0, 0.0, &error, &size);
  const double within = 1e-10 * size;
  if (error * std::abs(to - from) / 2 <= within) return sum;
  const double middle = (from + to) / 2;
  return halved_integral(function, from, middle, within, 12) +
         halved_integral(function, middle, to, within, 12);
}

}  // namespace sheerlap

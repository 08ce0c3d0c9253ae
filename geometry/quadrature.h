#pragma once

#include <boost/math/quadrature/gauss.hpp>
#include <boost/math/quadrature/gauss_kronrod.hpp>

namespace sheerlap {

/// The integral of a smooth function over [from, to].
///
/// @param bend  how much the line beneath turns over the interval, radians: it
///              decides between a fixed rule and an adaptive one
/// @accuracy  about 1e-12 relative for functions as smooth as a cubic's arc length
/// @source    Gauss-Legendre and Gauss-Kronrod rules of Boost.Math
template <class Function>
double integral(const Function& function, double from, double to, double bend) {
  if (from == to) return 0;
  if (bend < 1e-3)
    return boost::math::quadrature::gauss<double, 2>::integrate(function, from, to);
  if (bend < 0.02)
    return boost::math::quadrature::gauss<double, 4>::integrate(function, from, to);
  return boost::math::quadrature::gauss_kronrod<double, 15>::integrate(function, from,
                                                                       to, 12, 1e-13);
}

}  // namespace sheerlap

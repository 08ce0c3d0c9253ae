#include "geometry/random_stream.h"

#include <cassert>
#include <cmath>
#include <cstddef>
#include <span>

namespace sheerlap {
namespace {

/// The upper half of a product of two words.
std::uint32_t high_half(std::uint32_t a, std::uint32_t b) {
  return static_cast<std::uint32_t>((std::uint64_t{a} * b) >> 32U);
}

std::uint32_t low_word(std::uint64_t value) {
  return static_cast<std::uint32_t>(value);
}

std::uint32_t high_word(std::uint64_t value) {
  return static_cast<std::uint32_t>(value >> 32U);
}

/// Coefficients rise with the power.
double polynomial(std::span<const double> coefficients, double x) {
  double sum = 0;
  for (std::size_t k = coefficients.size(); k-- > 0;) sum = sum * x + coefficients[k];
  return sum;
}

/// AS 241's own letters, of the middle, the tails and the far tails.
constexpr double a[] = {3.3871328727963666080e0, 1.3314166789178437745e2,
                        1.9715909503065514427e3, 1.3731693765509461125e4,
                        4.5921953931549871457e4, 6.7265770927008700853e4,
                        3.3430575583588128105e4, 2.5090809287301226727e3};
constexpr double b[] = {1.0,
                        4.2313330701600911252e1,
                        6.8718700749205790830e2,
                        5.3941960214247511077e3,
                        2.1213794301586595867e4,
                        3.9307895800092710610e4,
                        2.8729085735721942674e4,
                        5.2264952788528545610e3};
constexpr double c[] = {1.42343711074968357734e0,  4.63033784615654529590e0,
                        5.76949722146069140550e0,  3.64784832476320460504e0,
                        1.27045825245236838258e0,  2.41780725177450611770e-1,
                        2.27238449892691845833e-2, 7.74545014278341407640e-4};
constexpr double d[] = {1.0,
                        2.05319162663775882187e0,
                        1.67638483018380384940e0,
                        6.89767334985100004550e-1,
                        1.48103976427480074590e-1,
                        1.51986665636164571966e-2,
                        5.47593808499534494600e-4,
                        1.05075007164441684324e-9};
constexpr double e[] = {6.65790464350110377720e0,  5.46378491116411436990e0,
                        1.78482653991729133580e0,  2.96560571828504891230e-1,
                        2.65321895265761230930e-2, 1.24266094738807843860e-3,
                        2.71155556874348757815e-5, 2.01033439929228813265e-7};
constexpr double f[] = {1.0,
                        5.99832206555887937690e-1,
                        1.36929880922735805310e-1,
                        1.48753612908506148525e-2,
                        7.86869131145613259100e-4,
                        1.84631831751005468180e-5,
                        1.42151175831644588870e-7,
                        2.04426310338993978564e-15};

}  // namespace

std::array<std::uint32_t, 4> philox_words(std::array<std::uint32_t, 4> counter,
                                          std::array<std::uint32_t, 2> key) {
  constexpr std::uint32_t multiplier_0 = 0xD2511F53, multiplier_1 = 0xCD9E8D57;
  constexpr std::uint32_t key_step_0 = 0x9E3779B9, key_step_1 = 0xBB67AE85;
  for (int round = 0; round < 10; ++round) {
    counter = {high_half(multiplier_1, counter[2]) ^ counter[1] ^ key[0],
               multiplier_1 * counter[2],
               high_half(multiplier_0, counter[0]) ^ counter[3] ^ key[1],
               multiplier_0 * counter[0]};
    key[0] += key_step_0;
    key[1] += key_step_1;
  }
  return counter;
}

double normal_quantile(double share) {
  assert(share > 0 && share < 1);
  const double q = share - 0.5;
  if (std::abs(q) <= 0.425) {
    const double r = 0.180625 - q * q;
    return q * polynomial(a, r) / polynomial(b, r);
  }
  const double r = std::sqrt(-std::log(q < 0 ? share : 1 - share));
  const double size = r <= 5 ? polynomial(c, r - 1.6) / polynomial(d, r - 1.6)
                             : polynomial(e, r - 5) / polynomial(f, r - 5);
  return q < 0 ? -size : size;
}

RandomStream::RandomStream(std::uint64_t seed,
                           std::uint64_t sample,
                           std::uint32_t purpose)
    : counter_{0, purpose, low_word(sample), high_word(sample)},
      key_{low_word(seed), high_word(seed)} {}

double RandomStream::uniform() {
  if (!half_used_) {
    words_ = philox_words(counter_, key_);
    ++counter_[0];
    assert(counter_[0] != 0);  // 2^33 numbers are more than any sample takes
  }
  const std::size_t at = half_used_ ? 2 : 0;
  half_used_ = !half_used_;
  const std::uint64_t bits = (std::uint64_t{words_[at]} << 32U) | words_[at + 1];
  // 52 bits and a half more: exact, so that neither 0 nor 1 is ever reached
  return (static_cast<double>(bits >> 12U) + 0.5) * 0x1p-52;
}

}  // namespace sheerlap

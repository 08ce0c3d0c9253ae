#pragma once

#include <array>
#include <cstdint>

namespace sheerlap {

/// Four words that a counter and a key are stirred into; a counter and a key never give
/// the same words as another counter with that key.
///
/// @source  J. K. Salmon, M. A. Moraes, R. O. Dror, D. E. Shaw, Parallel random
/// numbers:
///          as easy as 1, 2, 3, SC11 (2011): Philox4x32 with 10 rounds; multipliers and
///          key steps from memory, held by the paper's known answers
std::array<std::uint32_t, 4> philox_words(std::array<std::uint32_t, 4> counter,
                                          std::array<std::uint32_t, 2> key);

/// Where the standard normal law has `share` of itself below.
///
/// @param share  0 < share < 1
/// @accuracy  relative 1e-15 or so, by a ratio of polynomials in each of three ranges
/// @source    M. J. Wichura, Algorithm AS 241: the percentage points of the normal
///            distribution, Applied Statistics 37 (1988), PPND16; from memory, held
///            against another implementation of the law
double normal_quantile(double share);

/// Random numbers of one sample for one purpose. They follow from seed, sample, purpose
/// alone: they are the same ones whatever was drawn before, on whichever thread. No two
/// streams of one seed share a number's words.
///
/// The words and the uniform numbers are the same to the last bit everywhere; of the
/// normal ones about a seventh go through the logarithm of the system's library, which
/// may differ in its last bit from one system to the next.
class RandomStream {
 public:
  RandomStream(std::uint64_t seed, std::uint64_t sample, std::uint32_t purpose);

  /// Evenly spread over 0 to 1, neither of them included; 2^52 values.
  double uniform();
  /// Mean 0, standard deviation 1; one uniform number each, and rising with it.
  double normal() { return normal_quantile(uniform()); }

 private:
  std::array<std::uint32_t, 4> counter_;
  std::array<std::uint32_t, 2> key_;
  std::array<std::uint32_t, 4> words_ = {};
  bool half_used_ = false;
};

}  // namespace sheerlap

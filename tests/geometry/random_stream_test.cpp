#include "geometry/random_stream.h"

#include <algorithm>
#include <boost/math/distributions/chi_squared.hpp>
#include <boost/math/distributions/normal.hpp>
#include <boost/test/unit_test.hpp>
#include <cmath>
#include <set>
#include <vector>

namespace sheerlap {
namespace {

/// A test of chance with a fresh seed would fail a sound program once in a million
/// times.
constexpr double false_alarm = 1e-6;

/// How likely a sum of squares as great as that of `counts` about equal shares is.
double chance_of(const std::vector<int>& counts) {
  double total = 0;
  for (const int count : counts) total += count;
  const double expected = total / static_cast<double>(counts.size());
  double sum = 0;
  for (const int count : counts)
    sum += (count - expected) * (count - expected) / expected;
  const boost::math::chi_squared_distribution<> law(static_cast<double>(counts.size()) -
                                                    1);
  return boost::math::cdf(boost::math::complement(law, sum));
}

/// Half of the alarm on either hand: too even is as suspect as too uneven.
bool believable(double chance) {
  return chance > false_alarm / 2 && chance < 1 - false_alarm / 2;
}

BOOST_AUTO_TEST_SUITE(random_stream)

BOOST_AUTO_TEST_CASE(words_are_the_papers_known_answers) {
  // published: J. K. Salmon, M. A. Moraes, R. O. Dror, D. E. Shaw, Parallel random
  // numbers: as easy as 1, 2, 3, SC11: known answers of Philox4x32-10 that go with it;
  // from memory, confirm
  using Words = std::array<std::uint32_t, 4>;
  const struct {
    Words counter;
    std::array<std::uint32_t, 2> key;
    Words words;
  } rows[] = {
      {{0, 0, 0, 0}, {0, 0}, {0x6627e8d5, 0xe169c58d, 0xbc57ac4c, 0x9b00dbd8}},
      {{~0U, ~0U, ~0U, ~0U},
       {~0U, ~0U},
       {0x408f276d, 0x41c83b0e, 0xa20bc7c6, 0x6d5451fd}},
      {{0x243f6a88, 0x85a308d3, 0x13198a2e, 0x03707344},
       {0xa4093822, 0x299f31d0},
       {0xd16cfe09, 0x94fdcceb, 0x5001e420, 0x24126ea1}},
  };
  for (const auto& row : rows)
    BOOST_TEST(philox_words(row.counter, row.key) == row.words,
               boost::test_tools::per_element());
}

BOOST_AUTO_TEST_CASE(normal_quantiles_are_those_of_another_implementation) {
  // published: Boost.Math, normal law, complementary error function's inverse
  const boost::math::normal_distribution<> law;
  for (double share = 1e-300; share < 0.4; share *= 1.7) {
    const double expected = boost::math::quantile(law, share);
    // AS 241 gives "about 1 part in 10^16"; Boost a few units in the last place
    BOOST_TEST(normal_quantile(share) == expected, boost::test_tools::tolerance(2e-15));
    if (share > 1e-3)  // 1 - share is told apart from 1 well enough
      BOOST_TEST(normal_quantile(1 - share) == boost::math::quantile(law, 1 - share),
                 boost::test_tools::tolerance(2e-15));
  }
  for (double share = 0.01; share < 1; share += 0.007)
    BOOST_TEST(std::abs(normal_quantile(share) - boost::math::quantile(law, share)) <
               2e-15 * std::max(1., std::abs(boost::math::quantile(law, share))));
  BOOST_TEST(normal_quantile(0.5) == 0);
}

BOOST_AUTO_TEST_CASE(the_ends_of_the_range_are_not_reached_and_are_no_trouble) {
  // derived: the least and the greatest that a stream can give
  BOOST_TEST(0.5 * 0x1p-52 > 0);
  BOOST_TEST((0x1p52 - 0.5) * 0x1p-52 < 1);
  BOOST_TEST(std::isfinite(normal_quantile(0x1p-53)));
  BOOST_TEST(normal_quantile(1 - 0x1p-53) == -normal_quantile(0x1p-53));
}

BOOST_AUTO_TEST_CASE(a_stream_is_known_by_seed_boat_and_purpose_alone) {
  RandomStream one(640, 17, 3);
  std::vector<double> first;
  for (int i = 0; i < 9; ++i) first.push_back(one.uniform());
  RandomStream other(640, 18, 3), again(640, 17, 3);
  for (const double value : first) {
    BOOST_TEST(other.uniform() != value);
    BOOST_TEST(again.uniform() == value);
  }
  // property: counted from 0 in the first word, keyed by the seed, so that the boats of
  // a seed stay the same from release to release
  const auto words = philox_words({0, 3, 17, 0}, {640, 0});
  const double top = std::floor(words[1] / 4096.);
  BOOST_TEST(first[0] == (words[0] * 0x1p20 + top + 0.5) * 0x1p-52);
}

BOOST_AUTO_TEST_CASE(streams_of_neighbours_share_no_number) {
  // derived: about 1e4 numbers of 2^52 meet with a chance of 1e8 / 2^53 = 1e-8
  std::set<double> seen;
  std::size_t drawn = 0;
  for (const std::uint64_t seed : {0ULL, 1ULL, 1ULL << 32U})
    for (const std::uint64_t boat : {0ULL, 1ULL, 2ULL, 1ULL << 32U})
      for (std::uint32_t purpose = 0; purpose < 8; ++purpose) {
        RandomStream stream(seed, boat, purpose);
        for (int i = 0; i < 100; ++i, ++drawn) seen.insert(stream.uniform());
      }
  BOOST_TEST(seen.size() == drawn);
}

BOOST_AUTO_TEST_CASE(uniform_numbers_are_even_within_a_stream_and_across_streams) {
  constexpr std::size_t bins = 100;
  std::vector<int> within(bins), across(bins), pairs(bins);
  const auto bin = [](double value, std::size_t of) {
    return static_cast<std::size_t>(value * static_cast<double>(of));
  };
  RandomStream stream(640, 0, 0);
  for (int i = 0; i < 200000; ++i) ++within[bin(stream.uniform(), bins)];
  for (std::uint64_t boat = 0; boat < 200000; ++boat)
    ++across[bin(RandomStream(640, boat, 5).uniform(), bins)];
  for (int i = 0; i < 200000; ++i) {
    const double one = stream.uniform();
    ++pairs[10 * bin(one, 10) + bin(stream.uniform(), 10)];
  }
  BOOST_TEST(believable(chance_of(within)));
  BOOST_TEST(believable(chance_of(across)));
  BOOST_TEST(believable(chance_of(pairs)));
}

BOOST_AUTO_TEST_CASE(normal_numbers_keep_to_the_normal_law) {
  // derived: bins of equal probability by Boost.Math's law; mean and variance against
  // their own standard errors, 1 / sqrt(n) and sqrt(2 / n)
  const boost::math::normal_distribution<> law;
  constexpr int count = 200000;
  std::vector<int> counts(50);
  double sum = 0, squares = 0, steps = 0, last = 0;
  RandomStream stream(640, 1, 0);
  for (int i = 0; i < count; ++i) {
    const double value = stream.normal();
    ++counts[static_cast<std::size_t>(boost::math::cdf(law, value) * 50)];
    sum += value;
    squares += value * value;
    steps += value * last;
    last = value;
  }
  BOOST_TEST(believable(chance_of(counts)));
  const auto chance = [&](double deviations) {
    return boost::math::cdf(law, deviations);
  };
  BOOST_TEST(believable(chance(sum / std::sqrt(count))));
  BOOST_TEST(believable(chance((squares - count) / std::sqrt(2. * count))));
  BOOST_TEST(believable(chance(steps / std::sqrt(count))));  // one and the next
}

BOOST_AUTO_TEST_CASE(the_tests_of_chance_find_a_generator_out) {
  // property: a sequence that is too even, one that is uneven by 4 of 100
  std::vector<int> even(100, 2000), uneven(100, 2000);
  for (std::size_t i = 0; i < 100; i += 2) uneven[i] += 80, uneven[i + 1] -= 80;
  BOOST_TEST(!believable(chance_of(even)));
  BOOST_TEST(!believable(chance_of(uneven)));
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

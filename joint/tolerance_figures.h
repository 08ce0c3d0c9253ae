#pragma once

#include <array>
#include <string_view>

#include "joint/reasons/reason.h"

namespace sheerlap {

/// What is said of the figures had from made-up boats, wherever they stand.

inline constexpr std::string_view sample_validity =
    "the joint as drawn with the errors put in, which have nothing to do with one "
    "another; the sample's own error alone";
inline constexpr std::string_view counted_source =
    "derived: counted over the boats made up";

/// A figure and both ends of the range that holds the true one in 95 of 100 samples.
struct RangeWords {
  FoundWords value, low, high;
};

consteval RangeWords mean_words(std::string_view unit) {
  constexpr std::string_view source =
      "B. P. Welford, Technometrics 4 (1962): mean and variance as numbers come";
  constexpr std::string_view ends =
      "1.96 standard errors from the mean, by the normal law";
  constexpr std::string_view rounding = "the sum's rounding, about 1e-12 of itself";
  return {{{"m", "mean over the boats", unit, source, sample_validity},
           "summed boat by boat in one order, whatever the threads",
           rounding},
          {{"m_low", "low end of the mean's range", unit, source, sample_validity},
           ends,
           rounding},
          {{"m_high", "high end of the mean's range", unit, source, sample_validity},
           ends,
           rounding}};
}

inline constexpr std::string_view rank_source =
    "derived: the number of boats below a quantile is binomial, whatever the law";
inline constexpr std::string_view rank_how =
    "the boat of this rank, counted in steps of `within`";
inline constexpr std::string_view rank_ends =
    "the boat of the rank that misses on this hand in no more than 2.5 of 100 samples";

consteval FoundWords rank_words(std::string_view letters,
                                std::string_view what,
                                std::string_view unit,
                                std::string_view how) {
  return {{letters, what, unit, rank_source, sample_validity}, how, "half of `within`"};
}

consteval RangeWords decile(std::string_view what,
                            std::string_view unit,
                            const std::array<std::string_view, 3>& letters) {
  return {rank_words(letters[0], what, unit, rank_how),
          rank_words(letters[1], "low end of its range", unit, rank_ends),
          rank_words(letters[2], "high end of its range", unit, rank_ends)};
}

/// What 10, 50 and 90 of 100 boats stay below.
consteval std::array<RangeWords, 3> decile_words(std::string_view unit) {
  return {
      decile("what 10 of 100 boats stay below", unit, {"q10", "q10_low", "q10_high"}),
      decile("what 50 of 100 boats stay below", unit, {"q50", "q50_low", "q50_high"}),
      decile("what 90 of 100 boats stay below", unit, {"q90", "q90_low", "q90_high"})};
}

consteval FoundWords within_words(std::string_view unit) {
  return {{"within", "steps in which boats are told apart", unit,
           "derived: so that what is kept does not grow with the boats",
           "quantiles alone; means and shares have all digits"},
          "fixed before the first boat",
          "exact"};
}

inline constexpr std::string_view moment_source =
    "derived: variance and its error by the second and fourth moments";
inline constexpr RangeWords deviation_words{
    {{"s", "standard deviation over the boats", "ml", moment_source, sample_validity},
     "summed boat by boat in one order, whatever the threads",
     "about 1e-12 of itself"},
    {{"s_low", "low end of its range", "ml", moment_source, sample_validity},
     "1.96 standard errors of the variance down",
     "for a law without long tails"},
    {{"s_high", "high end of its range", "ml", moment_source, sample_validity},
     "1.96 standard errors of the variance up",
     "for a law without long tails"}};

inline constexpr std::string_view run_source =
    "E. A. Cornish, R. A. Fisher, Revue de l'Institut international de statistique 5 "
    "(1938); from memory, confirm";
inline constexpr std::string_view run_validity =
    "boats of a run independent of each other; runs of 10 boats or more";
inline constexpr std::string_view run_accuracy =
    "a hundredth of the run's spread, where the boats' law has no long tail";

/// What 90 of 100 runs stay below.
consteval RangeWords run_words(std::string_view unit) {
  return {{{"r90", "what 90 of 100 runs stay below", unit, run_source, run_validity},
           "mean, spread and skewness of a boat, summed over the run's boats",
           run_accuracy},
          {{"r90_low", "low end of its range", unit, run_source, run_validity},
           "1.96 standard errors of mean and spread down",
           run_accuracy},
          {{"r90_high", "high end of its range", unit, run_source, run_validity},
           "1.96 standard errors of mean and spread up",
           run_accuracy}};
}

inline constexpr std::string_view drive_source =
    "M. J. W. Jansen, Computer Physics Communications 117 (1999); A. Saltelli and "
    "others, Computer Physics Communications 181 (2010), table 2; from memory, confirm";
inline constexpr std::string_view drive_how =
    "boats made up twice, with one error changed over at a time: mean square of the "
    "difference, over twice the variance";

/// The share of an answer's variance that an error brings by itself, or in all.
consteval RangeWords drive_words(bool total) {
  const std::string_view letters = total ? "S_T" : "S";
  const std::string_view what =
      total ? "share of the variance that the error brings with all it does with others"
            : "share of the variance that the error brings by itself";
  const std::string_view accuracy = "its own range; may come out a little below 0";
  return {{{letters, what, "1", drive_source, sample_validity}, drive_how, accuracy},
          {{total ? "S_T_low" : "S_low", "low end of its range", "1", drive_source,
            sample_validity},
           "1.96 standard errors of a ratio of means down",
           accuracy},
          {{total ? "S_T_high" : "S_high", "high end of its range", "1", drive_source,
            sample_validity},
           "1.96 standard errors of a ratio of means up",
           accuracy}};
}

/// What boats built have of the hull's face.
consteval RangeWords likely_words(std::string_view letters, std::string_view what) {
  constexpr std::string_view source =
      "H. D. Patterson, R. Thompson, Biometrika 58 (1971); S. S. Wilks, Ann. Math. "
      "Stat. "
      "9 (1938); from memory, confirm";
  constexpr std::string_view validity =
      "a normal field and noise of each reading by itself; lid's place and the hull's "
      "opening taken out";
  constexpr std::string_view how =
      "on a grid, where the readings of all boats are likeliest";
  constexpr std::string_view ends =
      "where the logarithm of that is 1.92 less, or by the "
      "normal law";
  constexpr std::string_view accuracy = "a fiftieth of the interval";
  return {{{letters, what, "mm", source, validity}, how, accuracy},
          {{"low", "low end of its range", "mm", source, validity}, ends, accuracy},
          {{"high", "high end of its range", "mm", source, validity}, ends, accuracy}};
}

}  // namespace sheerlap

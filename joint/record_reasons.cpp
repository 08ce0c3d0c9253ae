#include "joint/record_reasons.h"

#include <string>

#include "joint/range_reason.h"
#include "joint/reasons/working.h"

namespace sheerlap {
namespace {

constexpr FoundWords noise_words{
    {"sigma_0", "standard deviation of each reading by itself", "mm",
     "H. D. Patterson, R. Thompson, Biometrika 58 (1971); from memory, confirm",
     "what varies over much less than the readings stand apart is in it"},
    "on a grid, where the readings of all boats are likeliest",
    "that of the grid"};

constexpr std::string_view pattern_source =
    "derived: each place's mean over the boats, less how the lid lay on the mean";
constexpr std::string_view pattern_validity =
    "straight along the girth between places, held beyond the last";
constexpr std::string_view pattern_how =
    "means of readings; the lid's three moves by least squares beside a gap alike all "
    "round";
constexpr FoundWords least_words{
    {"mu_least", "what every boat has, outward, where it is least", "mm",
     pattern_source, pattern_validity},
    pattern_how,
    "that of the readings, over the root of the boats"};
constexpr FoundWords greatest_words{
    {"mu_greatest", "what every boat has, outward, where it is greatest", "mm",
     pattern_source, pattern_validity},
    pattern_how,
    "that of the readings, over the root of the boats"};

}  // namespace

Explanations record_reasons(const FieldEstimate& face,
                            const PatternReach& pattern,
                            std::size_t boats) {
  const std::string at = "tolerance.record.";
  const auto likely = [&](const RangeWords& words, const char* what, const char* name,
                          const Estimate& estimate) {
    return range_reason(words, what, estimate, at + name, {at + name});
  };
  constexpr auto mean = likely_words("mu", "mean of the hull's face, outward");
  constexpr auto spread =
      likely_words("sigma", "standard deviation of the hull's face");
  constexpr auto length = likely_words("l", "length over which it is alike");
  WrittenWorking work;
  const Origin counted = Origin::of_joint("counted in the record");
  work.given({"n_boats", "boats of the record", "1"}, static_cast<double>(boats),
             counted);
  work.given({"n_read", "of them boats with readings of the state", "1"},
             static_cast<double>(face.samples), counted);
  work.given({"n_places", "places read, of all boats", "1"},
             static_cast<double>(face.readings), counted);
  work.found(noise_words, face.noise);
  work.found(least_words, pattern.least.in_mm());
  work.found(greatest_words, pattern.greatest.in_mm());
  return {
      likely(mean, "the hull's face as the record has it, mean", "mean", face.mean),
      likely(spread, "the same, spread", "spread", face.spread),
      likely(length, "the same, over what length", "correlation", face.correlation_mm),
      {at + "noise",
       "each reading by itself",
       work.release(),
       {{at + "noise", "sigma_0"},
        {at + "least", "mu_least"},
        {at + "greatest", "mu_greatest"},
        {at + "boats", "n_boats"},
        {at + "samples", "n_read"},
        {at + "readings", "n_places"}}}};
}

}  // namespace sheerlap

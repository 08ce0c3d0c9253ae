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

}  // namespace

Explanations record_reasons(const FieldEstimate& face, std::size_t boats) {
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
  return {
      likely(mean, "the hull's face as the record has it, mean", "mean", face.mean),
      likely(spread, "the same, spread", "spread", face.spread),
      likely(length, "the same, over what length", "correlation", face.correlation_mm),
      {at + "noise",
       "each reading by itself",
       work.release(),
       {{at + "noise", "sigma_0"},
        {at + "boats", "n_boats"},
        {at + "samples", "n_read"},
        {at + "readings", "n_places"}}}};
}

}  // namespace sheerlap

#pragma once

#include <string>
#include <vector>

#include "joint/reasons/working.h"
#include "joint/setting_out.h"

namespace sheerlap {

/// How far dividers come past the end of a run is found by walking them.
inline constexpr FoundWords stepped_words{
    {"d_step", "last hole past its place, by dividers set to the pitch", "mm",
     "derived: equal chords walked along the drill line",
     "dividers set exactly to the pitch, along the drill line"},
    "the run's chords stepped off one after the other, each met by bracketing",
    "1e-9 mm a step"};

/// How far the exit of a hole shifts, mm.
template <class Working>
auto exit_shift_of(Working& work, Length stack, Angle out_of_square) {
  const auto t = work.given({"t", "what is drilled through", "mm"}, stack.in_mm(),
                            Origin::of_joint("the stack, or its part"));
  const auto phi =
      work.given({"phi", "bit out of square", "rad"}, out_of_square.in_radians(),
                 Origin::of_joint("3 degrees: common practice, no source"));
  return work.figure(
      {"d_exit", "shift of the exit", "mm", "derived: a straight hole that leans",
       "the bit enters on its mark"},
      t * tan(phi));
}

/// What is off by running dimensions, mm.
template <class Working>
auto running_error(Working& work, Length step) {
  const auto r = work.given({"r", "step that running dimensions are shown to", "mm"},
                            step.in_mm(), Origin::of_file("layout.round_to"));
  return work.figure(
      {"d_run", "off by running dimensions, either way", "mm",
       "derived: half of the step", "each hole by itself; the errors do not add up"},
      r / 2);
}

/// What is off at the end of a run whose pitch is rounded and added, mm.
template <class Working>
auto rounded_error(Working& work, const LayoutRun& run, Length step) {
  const auto n =
      work.given({"n", "spaces of the run", "1"}, static_cast<double>(run.spaces),
                 Origin::of_joint("layout"));
  const auto p =
      work.given({"p", "pitch", "mm"}, run.pitch.in_mm(), Origin::of_joint("layout"));
  const auto r = work.given({"r", "step of the tape", "mm"}, step.in_mm(),
                            Origin::of_file("layout.round_to"));
  return work.figure({"d_round", "last hole past its place, pitch rounded", "mm",
                      "derived: the rounding of one space, times the spaces",
                      "the rounded pitch added from hole to hole"},
                     n * (round(p / r) * r - p));
}

/// Errors by their direction, summed, mm, or their squares, mm2.
template <class Working>
typename Working::Number errors_added(Working& work,
                                      const std::vector<HoleError>& errors,
                                      const std::string& letter,
                                      int exponent) {
  typename Working::Number sum(0);
  std::size_t number = 0;
  for (const HoleError& error : errors) {
    const std::string letters = letter + "_" + std::to_string(++number);
    const auto off = work.given({letters, error.what, "mm"}, error.off.in_mm(),
                                Origin::of_joint(error.source));
    const auto term = exponent == 1 ? off : power(off, exponent);
    sum = number == 1 ? term : sum + term;
  }
  return sum;
}

/// Centre to centre, all errors at their greatest together, mm.
template <class Working>
auto worst_off(Working& work, const ApartHoles& holes) {
  return work.figure(
      {"d_worst", "centre to centre, all errors at their greatest", "mm",
       "derived: errors along and across as the sides of a triangle, leaning any way",
       "every error at its greatest and the same way at once"},
      sqrt(power(errors_added(work, holes.along, "e", 1), 2) +
           power(errors_added(work, holes.across, "f", 1), 2)) +
          errors_added(work, holes.leaning, "l", 1));
}

/// Centre to centre by the root of the sum of squares, mm.
template <class Working>
auto root_sum_off(Working& work, const ApartHoles& holes) {
  return work.figure({"d_root", "centre to centre, root of the sum of squares", "mm",
                      "derived: errors that do not depend on each other",
                      "a typical greatest, not the worst: now and then exceeded"},
                     sqrt(errors_added(work, holes.along, "e", 2) +
                          errors_added(work, holes.across, "f", 2) +
                          errors_added(work, holes.leaning, "l", 2)));
}

/// The hole through which a fastener still goes, mm.
/// @param off_mm  centre to centre
template <class Working>
auto hole_for(Working& work, const FastenerSpec& spec, Length off) {
  const auto d = work.given({"d", "greatest diameter of the fastener", "mm"},
                            spec.diameter.in_mm(), Origin::of_joint("fastener.size"));
  const auto e = work.given({"e", "holes off, centre to centre", "mm"}, off.in_mm(),
                            Origin::of_joint("setting_out.apart"));
  // both holes of a fastener loose in both parts give way by half of the error
  const auto k = work.given({"k", "share of the error that this hole takes", "1"},
                            spec.hull_pilot ? 2 : 1,
                            Origin::of_joint("2 where the hull is piloted, else 1"));
  return work.figure({"d_hole", "hole through which the fastener still goes", "mm",
                      "ASME Y14.5, appendix on fasteners, from memory, confirm",
                      "holes square to the faces"},
                     d + k * e);
}

}  // namespace sheerlap

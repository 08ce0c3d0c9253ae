#include "joint/beam_checks.h"

#include <fmt/format.h>

#include <cassert>
#include <cmath>

#include "joint/sheer_places.h"
#include "joint/worded_length.h"

namespace sheerlap {
namespace {

/// How far the beam in the mould may be off the drawn one: common practice, no source.
constexpr Length most_off_drawn = Length::mm(5);

/// How far a hull may have opened or closed out of its mould before the reading is more
/// likely misread: common practice, no source.
constexpr Length most_off_mould = Length::mm(100);

constexpr const char* practice = "common practice, no source";

Length apart(Length one, Length other) {
  return Length::mm(std::abs((one - other).in_mm()));
}

/// The drawn beam over the hull's top edge, outside, at an x that both sides have.
Length drawn_beam(const Perimeter& perimeter, Length x) {
  double beam_mm = 0;
  for (const SideName name : {SideName::Starboard, SideName::Port}) {
    const PerimeterSide& side = *perimeter.side(name);
    const auto girth = sheer_girth_at_x(side, x, "");
    // or the seating had been refused
    assert(girth.has_value());
    const double y_mm = perimeter.hull->at(side.sheer.place_at(*girth), 0).point.y();
    beam_mm += name == SideName::Starboard ? y_mm : -y_mm;
  }
  return Length::mm(beam_mm);
}

Check off(const std::string& what, Length by, Length most) {
  return {"fit.beam",   what, by.in_mm(),
          most.in_mm(), "mm", by <= most ? CheckState::Pass : CheckState::Warn,
          practice};
}

}  // namespace

Checks beam_checks(const SeatingInputs& inputs,
                   const Seating& seating,
                   const Perimeter& perimeter) {
  Checks checks;
  for (std::size_t i = 0; i < seating.readings.size(); ++i) {
    const BeamReading& read = inputs.readings[i];
    const Length x = seating.readings[i].moved.x;
    const Length drawn = drawn_beam(perimeter, x);
    checks.push_back(
        off(fmt::format("beam in the mould by reading {}, x = {}: {}, off "
                        "the drawn beam over the hull's top edge there, {}",
                        i + 1, worded(x), worded(read.mould), worded(drawn)),
            apart(read.mould, drawn), most_off_drawn));
    const Length opened = apart(read.free, read.mould);
    if (opened > most_off_mould)
      checks.push_back(
          off(fmt::format("free beam of reading {}, x = {}: {}, off the beam in the "
                          "mould, {}: look whether it was misread",
                          i + 1, worded(x), worded(read.free), worded(read.mould)),
              opened, most_off_mould));
  }
  return checks;
}

}  // namespace sheerlap

#include "tests/joint/example_readings.h"

#include <boost/test/unit_test.hpp>

namespace sheerlap {
namespace {

std::optional<Length> length(std::optional<double> mm) {
  return mm ? std::optional(Length::mm(*mm)) : std::nullopt;
}

}  // namespace

GivenReading girth_reading(SideName side,
                           double girth_mm,
                           std::optional<double> top_mm,
                           std::optional<double> low_mm) {
  GivenReading reading;
  reading.side = side;
  reading.girth = Length::mm(girth_mm);
  reading.top = length(top_mm);
  reading.low = length(low_mm);
  return reading;
}

GivenReading mark_reading(SideName side,
                          const std::string& mark,
                          std::optional<double> top_mm,
                          std::optional<double> low_mm) {
  GivenReading reading = girth_reading(side, 0, top_mm, low_mm);
  reading.kind = PlaceKind::Mark;
  reading.name = mark;
  return reading;
}

Job boat_job(const Joint& joint,
             const Parts& parts,
             const std::vector<GivenReading>& readings) {
  auto job = work_out_boat(joint, parts, {"hull.csv", readings, std::nullopt});
  BOOST_REQUIRE_MESSAGE(job.has_value(), job.error().front().message);
  return std::move(*job);
}

Parts boat_parts() {
  Parts parts;
  parts.fit = parts.adhesive = parts.schedule = true;
  return parts;
}

}  // namespace sheerlap

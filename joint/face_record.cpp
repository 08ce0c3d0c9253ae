#include "joint/face_record.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <string>
#include <utility>

#include "joint/boat_pattern.h"
#include "joint/boat_points.h"
#include "joint/readings_gap.h"
#include "joint/whole_errors.h"

namespace sheerlap {
namespace {

using Eigen::Index;

/// The modes of a boat: the lid's three moves and the hull's opening.
constexpr Index modes = first_squeeze + 1;

/// Less is rounding.
constexpr double no_spread_mm = 1e-3;

/// What samples are made from.
struct RecordGround {
  const Joint& joint;
  const Perimeter& perimeter;
  const WholeError& opening;
  std::vector<PatternPlace> places;
};

/// A place that was read, and how far the face is outward of the drawing there.
struct ReadPlace {
  std::size_t pattern = 0;
  double along_mm = 0;
  double outward_mm = 0;
  Eigen::Matrix<double, 1, modes> shape;
};

Result<ReadPlace> read_place(const RecordGround& ground,
                             const PerimeterSide& side,
                             const GapCorrection& correction) {
  const auto point =
      boat_point_at(ground.joint, ground.perimeter, side.name, correction.girth);
  if (!point) return tl::unexpected(point.error());
  ReadPlace place;
  place.pattern = place_of(ground.places, side.name, correction.girth);
  place.along_mm = along_ring_mm(ground.perimeter, side.name, point->lap.girth);
  place.outward_mm = -(correction.top + correction.low).in_mm() / 2;
  place.shape << point->slope.head(first_squeeze).transpose(),
      ground.opening.gap_change(side, *point);
  return place;
}

Result<FieldSample> sample_of(const RecordGround& ground,
                              const std::vector<GapReading>& readings,
                              ReadingState state) {
  const ReadingsGap gap(ground.perimeter, readings, state);
  std::vector<ReadPlace> places;
  for (const PerimeterSide& side : ground.perimeter.sides)
    for (const GapCorrection& correction : gap.corrections(side.name)) {
      if (correction.between_sides) continue;
      const auto place = read_place(ground, side, correction);
      if (!place) return tl::unexpected(place.error());
      places.push_back(*place);
    }
  const auto count = static_cast<Index>(places.size());
  FieldSample sample{{}, Eigen::VectorXd(count), Eigen::MatrixXd(count, modes), {}};
  for (Index i = 0; i < count; ++i) {
    const ReadPlace& place = places[static_cast<std::size_t>(i)];
    sample.along_mm.push_back(place.along_mm);
    sample.pattern.push_back(place.pattern);
    sample.values[i] = place.outward_mm;
    sample.modes.row(i) = place.shape;
  }
  return sample;
}

}  // namespace

Result<std::optional<FieldEstimate>> face_from_record(
    const Joint& joint,
    const Perimeter& perimeter,
    const std::vector<std::vector<GapReading>>& boats,
    ReadingState state) {
  const auto opening =
      WholeError::of(ProcessErrorKind::HullOpening, perimeter, "tolerance");
  if (!opening) return tl::unexpected(opening.error());
  const RecordGround ground{joint, perimeter, *opening,
                            pattern_places(perimeter, boats, state)};
  std::vector<FieldSample> samples;
  for (const auto& readings : boats) {
    auto sample = sample_of(ground, readings, state);
    if (!sample) return tl::unexpected(std::move(sample.error()));
    if (!sample->along_mm.empty()) samples.push_back(std::move(*sample));
  }
  const SheerRing ring = sheer_ring(perimeter);
  return field_estimate(samples, ring.length_mm, ring.closed);
}

Result<ToleranceInputs> with_record(ToleranceInputs inputs, const FieldEstimate& face) {
  Errors errors;
  bool taken = false;
  for (std::size_t i = 0; i < inputs.errors.size(); ++i) {
    ProcessError& error = inputs.errors[i];
    if (!error.from_record) continue;
    const std::string where = fmt::format("error[{}]", i);
    if (error.kind != ProcessErrorKind::HullFace) {
      errors.push_back({ErrorKind::InvalidInput, where + ".from_record",
                        "gap readings tell the hull's face alone: give mean and spread "
                        "of this error"});
      continue;
    }
    if (taken) {
      errors.push_back({ErrorKind::InvalidInput, where + ".from_record",
                        "the record's readings are one error, and another [[error]] "
                        "has it already: leave from_record out of this one"});
      continue;
    }
    taken = true;
    error.law = ErrorLaw::Normal;
    error.mean = 0;
    error.spread = face.spread.value;
    if (std::hypot(face.spread.value, face.noise) < no_spread_mm) {
      error.spread = 0;
      if (!(error.correlation > Length()))
        error.correlation = Length::mm(face.correlation_mm.value);
      continue;
    }
    if (!face.correlation_open) {
      error.correlation = Length::mm(face.correlation_mm.value);
      continue;
    }
    error.spread = std::hypot(face.spread.value, face.noise);
    if (!(error.correlation > Length()))
      errors.push_back({ErrorKind::InvalidInput, where + ".correlation",
                        "[[error]] has no correlation, and the readings of the record "
                        "stand too far apart to tell it: give a length"});
  }
  if (!errors.empty()) return tl::unexpected(std::move(errors));
  return inputs;
}

}  // namespace sheerlap

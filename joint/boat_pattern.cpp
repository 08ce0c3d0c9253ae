#include "joint/boat_pattern.h"

#include <Eigen/QR>
#include <algorithm>
#include <cassert>
#include <optional>
#include <utility>

#include "joint/readings_gap.h"
#include "joint/sheer_places.h"

namespace sheerlap {
namespace {

using Eigen::Index;

/// Girths closer than this are one place: a gap is not another one so near.
constexpr Length one_place = Length::mm(20);

/// The mean of numbers put in one by one.
struct MeanLength {
  double sum_mm = 0;
  double count = 0;

  void add(const std::optional<Length>& length) {
    if (!length) return;
    sum_mm += length->in_mm();
    ++count;
  }
  std::optional<Length> mean() const {
    if (count == 0) return std::nullopt;
    return Length::mm(sum_mm / count);
  }
};

struct MeanReading {
  MeanLength girth, top, low;
};

/// The mean readings as they were taken, the lid's lie in them.
std::vector<GapReading> mean_readings(const std::vector<PatternPlace>& places,
                                      const std::vector<std::vector<GapReading>>& boats,
                                      ReadingState state) {
  std::vector<MeanReading> means(places.size());
  for (const auto& readings : boats)
    for (const GapReading& reading : readings) {
      if (reading.state != state) continue;
      MeanReading& mean = means[place_of(places, reading.side, reading.girth)];
      mean.girth.add(reading.girth);
      mean.top.add(reading.top);
      mean.low.add(reading.low);
    }
  std::vector<GapReading> found;
  for (std::size_t i = 0; i < places.size(); ++i) {
    GapReading reading;
    reading.side = places[i].side;
    reading.girth = *means[i].girth.mean();
    reading.top = means[i].top.mean();
    reading.low = means[i].low.mean();
    reading.state = state;
    found.push_back(std::move(reading));
  }
  return found;
}

/// What a mm of each of the lid's moves, and of gap all round, adds to the readings.
Result<Eigen::MatrixXd> lid_moves(const Joint& joint,
                                  const Perimeter& perimeter,
                                  const std::vector<GapReading>& readings) {
  Eigen::MatrixXd moves(static_cast<Index>(readings.size()), first_squeeze + 1);
  for (Index i = 0; i < moves.rows(); ++i) {
    const GapReading& reading = readings[static_cast<std::size_t>(i)];
    const auto point = boat_point_at(joint, perimeter, reading.side, reading.girth);
    if (!point) return tl::unexpected(point.error());
    moves.row(i) << point->slope.head(first_squeeze).transpose(), 1;
  }
  return moves;
}

/// How far the gap at each reading is from the nominal one, the mean of its edges (mm).
Eigen::VectorXd off_drawing(const Perimeter& perimeter,
                            const std::vector<GapReading>& readings,
                            ReadingState state) {
  Eigen::VectorXd off(static_cast<Index>(readings.size()));
  const ReadingsGap gap(perimeter, readings, state);
  for (const PerimeterSide& side : perimeter.sides)
    for (const GapCorrection& correction : gap.corrections(side.name))
      for (const std::size_t reading : correction.readings)
        if (!correction.between_sides)
          off[static_cast<Index>(reading)] =
              (correction.top + correction.low).in_mm() / 2;
  return off;
}

}  // namespace

std::vector<PatternPlace> pattern_places(
    const Perimeter& perimeter,
    const std::vector<std::vector<GapReading>>& boats,
    ReadingState state) {
  std::vector<PatternPlace> places;
  for (const PerimeterSide& side : perimeter.sides) {
    std::vector<Length> girths;
    for (const auto& readings : boats)
      for (const GapReading& reading : readings)
        if (reading.side == side.name && reading.state == state)
          girths.push_back(reading.girth);
    std::sort(girths.begin(), girths.end());
    std::optional<Length> from;
    for (const Length girth : girths) {
      if (from && girth - *from <= one_place) continue;
      from = girth;
      places.push_back({side.name, girth});
    }
  }
  return places;
}

std::size_t place_of(const std::vector<PatternPlace>& places,
                     SideName side,
                     Length girth) {
  std::optional<std::size_t> found;
  for (std::size_t i = 0; i < places.size(); ++i)
    if (places[i].side == side && places[i].from <= girth) found = i;
  assert(found);
  return *found;
}

Result<BuiltPattern> pattern_of(const Joint& joint,
                                const Perimeter& perimeter,
                                const std::vector<std::vector<GapReading>>& boats,
                                ReadingState state) {
  auto readings = mean_readings(pattern_places(perimeter, boats, state), boats, state);
  const auto moves = lid_moves(joint, perimeter, readings);
  if (!moves) return tl::unexpected(moves.error());
  const Eigen::VectorXd amounts = moves->completeOrthogonalDecomposition().solve(
      off_drawing(perimeter, readings, state));
  const Eigen::VectorXd lid =
      moves->leftCols(first_squeeze) * amounts.head(first_squeeze);
  for (Index i = 0; i < lid.size(); ++i) {
    GapReading& reading = readings[static_cast<std::size_t>(i)];
    for (auto* edge : {&reading.top, &reading.low})
      if (*edge) *edge = **edge - Length::mm(lid[i]);
  }
  return BuiltPattern{std::move(readings), state};
}

PatternReach reach_of(const Perimeter& perimeter, const BuiltPattern& pattern) {
  const Eigen::VectorXd off = off_drawing(perimeter, pattern.readings, pattern.state);
  return {Length::mm(-off.maxCoeff()), Length::mm(-off.minCoeff())};
}

void add_pattern(BoatModel& model,
                 const Perimeter& perimeter,
                 const BuiltPattern& pattern) {
  const ReadingsGap built(perimeter, pattern.readings, pattern.state);
  const ReadingsGap drawn(perimeter, {}, pattern.state);
  const auto change_mm = [&](const LapPoint& point) {
    const Length girth = drill_girth(*perimeter.side(point.side), point.place);
    const Length depth = Length::mm(point.depth_mm);
    return (built.gap(point.side, girth, depth) - drawn.gap(point.side, girth, depth))
        .in_mm();
  };
  Eigen::VectorXd gaps(model.gaps.size());
  Index i = 0;
  for (const BoatStation& station : model.points.stations) {
    gaps[i++] = change_mm(station.top.lap);
    gaps[i++] = change_mm(station.low.lap);
  }
  model.gaps += gaps;
  model.volume_ml += volume_of(model.areas, gaps);
  for (Index hole = 0; hole < model.hole_gaps.size(); ++hole) {
    const double change =
        change_mm(model.points.holes[static_cast<std::size_t>(hole)].lap);
    model.hole_gaps[hole] += change;
    model.hole_ways[hole] += change;
  }
}

}  // namespace sheerlap

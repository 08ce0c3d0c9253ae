#include "joint/lane_boats.h"

#include <cmath>
#include <numbers>
#include <utility>

#include "geometry/random_stream.h"

namespace sheerlap {
namespace {

using Eigen::Index;

RandomStream stream_of(const BoatLane& lane, Index at, std::size_t error) {
  return {lane.seed, lane.boats[static_cast<std::size_t>(at)],
          2 * static_cast<std::uint32_t>(error) + static_cast<std::uint32_t>(lane.set)};
}

/// From -1 to 1, for a number of the standard normal law.
double even_share(double normal) { return std::erf(normal / std::numbers::sqrt2); }

Lane draw_whole(const BoatModel& model, const BoatLane& lane, std::size_t error) {
  const ProcessError& process = model.errors[error];
  Lane amounts;
  for (Index at = 0; at < lane_count; ++at) {
    RandomStream stream = stream_of(lane, at, error);
    const double number =
        process.law == ErrorLaw::Normal ? stream.normal() : 2 * stream.uniform() - 1;
    amounts[at] = process.mean + process.spread * number;
  }
  return amounts;
}

void draw_along(const BoatModel& model,
                const BoatLane& lane,
                const AlongColumn& column,
                Lanes& normals,
                Lanes& amounts) {
  normals.resize(lane_count, column.basis.rows());
  for (Index at = 0; at < lane_count; ++at) {
    RandomStream stream = stream_of(lane, at, column.error);
    for (Index k = 0; k < normals.cols(); ++k) normals(at, k) = stream.normal();
  }
  sum_lanes(column.basis, normals, amounts);
  const ProcessError& process = model.errors[column.error];
  if (process.law == ErrorLaw::Uniform) amounts = amounts.unaryExpr(&even_share);
  amounts = process.mean + process.spread * amounts;
}

void add_along(const AlongColumn& column, const Lanes& amounts, LaneBoats& boats) {
  for (Index i = 0; i < amounts.cols(); ++i) {
    const Lane amount = amounts.col(i);
    boats.gaps.col(2 * i) += column.top[i] * amount;
    boats.gaps.col(2 * i + 1) += column.low[i] * amount;
    boats.volume_ml += column.volume_ml[i] * amount;
  }
}

void add_to_holes(const BoatModel& model,
                  const AlongColumn& column,
                  const Lanes& amounts,
                  LaneBoats& boats) {
  if (column.hole_gap == 0 && column.hole_way == 0) return;
  for (std::size_t i = 0; i < model.hole_places.size(); ++i) {
    const HolePlace& place = model.hole_places[i];
    const Lane amount = (1 - place.share) * amounts.col(place.before) +
                        place.share * amounts.col(place.after);
    const auto hole = static_cast<Index>(i);
    boats.hole_gaps.col(hole) += column.hole_gap * amount;
    boats.hole_ways.col(hole) += column.hole_way * amount;
  }
}

void start_as_drawn(const BoatModel& model, LaneBoats& boats) {
  boats.gaps = model.gaps.transpose().replicate<lane_count, 1>().array();
  boats.volume_ml.setConstant(model.volume_ml);
  boats.hole_gaps = model.hole_gaps.transpose().replicate<lane_count, 1>().array();
  boats.hole_ways = model.hole_ways.transpose().replicate<lane_count, 1>().array();
}

}  // namespace

void draw_errors(const BoatModel& model, const BoatLane& lane, LaneErrors& errors) {
  errors.whole.resize(model.whole.size());
  errors.along.resize(model.along.size());
  for (std::size_t i = 0; i < model.whole.size(); ++i)
    errors.whole[i] = draw_whole(model, lane, model.whole[i].error);
  for (std::size_t i = 0; i < model.along.size(); ++i)
    draw_along(model, lane, model.along[i], errors.normals, errors.along[i]);
}

void apply_errors(const BoatModel& model, const LaneErrors& errors, LaneBoats& boats) {
  start_as_drawn(model, boats);
  for (std::size_t i = 0; i < model.whole.size(); ++i) {
    const WholeColumn& column = model.whole[i];
    const Lane amount = errors.whole[i];
    for (Index point = 0; point < column.gaps.size(); ++point)
      boats.gaps.col(point) += column.gaps[point] * amount;
    for (Index hole = 0; hole < column.holes.size(); ++hole) {
      boats.hole_gaps.col(hole) += column.holes[hole] * amount;
      boats.hole_ways.col(hole) += column.holes[hole] * amount;
    }
    boats.volume_ml += column.volume_ml * amount;
  }
  for (std::size_t i = 0; i < model.along.size(); ++i) {
    add_along(model.along[i], errors.along[i], boats);
    add_to_holes(model, model.along[i], errors.along[i], boats);
  }
}

void swap_error(const BoatModel& model,
                std::size_t error,
                LaneErrors& a,
                LaneErrors& b) {
  for (std::size_t i = 0; i < model.whole.size(); ++i)
    if (model.whole[i].error == error) std::swap(a.whole[i], b.whole[i]);
  for (std::size_t i = 0; i < model.along.size(); ++i)
    if (model.along[i].error == error) a.along[i].swap(b.along[i]);
}

}  // namespace sheerlap

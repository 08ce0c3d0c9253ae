#include "joint/boat_model.h"

#include <fmt/format.h>

#include <algorithm>
#include <cassert>
#include <optional>
#include <utility>

#include "geometry/ring_field.h"
#include "joint/whole_errors.h"
#include "joint/worded_length.h"

namespace sheerlap {
namespace {

using Eigen::Index;

constexpr double mm3_in_ml = 1000;
/// Stations 50 mm apart miss the crests of shorter waves.
constexpr Length least_correlation = Length::mm(100);

/// The area that each edge of a station stands for (mm2): of the bond band it has the
/// share that runs straight from 1 there to 0 at the other edge.
EdgeAreas edge_areas(const BondBand& bond,
                     const Perimeter& perimeter,
                     const std::vector<BoatStation>& stations) {
  const auto count = static_cast<Index>(stations.size());
  EdgeAreas areas{Eigen::VectorXd(count), Eigen::VectorXd(count)};
  for (Index i = 0; i < count; ++i) {
    const BoatStation& station = stations[static_cast<std::size_t>(i)];
    const double lap = station.lap_mm;
    const double from = std::min(bond.from.value_or(Length()).in_mm(), lap);
    const double to = std::clamp(bond.to.value_or(Length::mm(lap)).in_mm(), from, lap);
    const double low = (to * to - from * from) / (2 * lap);
    const auto by_girth = [&](const LapPoint& point) {
      const Jet jet = perimeter.hull->curve().at(point.place);
      return point.hull.area_mm() / jet.first.norm();
    };
    areas.top[i] = station.run_mm * (to - from - low) * by_girth(station.top.lap);
    areas.low[i] = station.run_mm * low * by_girth(station.low.lap);
  }
  return {areas.top / mm3_in_ml, areas.low / mm3_in_ml};
}

void add_drawn(BoatModel& model, const std::vector<DrillStation>& holes) {
  const auto& stations = model.points.stations;
  const auto count = static_cast<Index>(stations.size());
  const Index unknowns = stations.front().top.slope.size();
  model.gaps.resize(2 * count);
  model.unknowns.gaps.resize(2 * count, unknowns);
  for (Index i = 0; i < count; ++i) {
    const BoatStation& station = stations[static_cast<std::size_t>(i)];
    model.gaps[2 * i] = station.top.gap_mm;
    model.gaps[2 * i + 1] = station.low.gap_mm;
    model.unknowns.gaps.row(2 * i) = station.top.slope.transpose();
    model.unknowns.gaps.row(2 * i + 1) = station.low.slope.transpose();
  }
  const auto drilled = static_cast<Index>(holes.size());
  model.hole_gaps.resize(drilled);
  model.hole_ways.resize(drilled);
  model.unknowns.holes.resize(drilled, unknowns);
  for (Index i = 0; i < drilled; ++i) {
    const auto at = static_cast<std::size_t>(i);
    const double gap = holes[at].gap.in_mm();
    model.hole_gaps[i] = gap;
    model.hole_ways[i] = holes[at].stack.in_mm() - std::max(0.0, -gap);
    model.unknowns.holes.row(i) = model.points.holes[at].slope.transpose();
  }
}

/// The stations on both sides of a hole; one of them alone beyond the last.
HolePlace hole_place(const std::vector<BoatStation>& stations, const LapPoint& hole) {
  HolePlace place;
  std::optional<Index> before, after;
  for (std::size_t i = 0; i < stations.size(); ++i) {
    if (stations[i].side != hole.side) continue;
    if (stations[i].girth <= hole.girth) before = static_cast<Index>(i);
    if (stations[i].girth >= hole.girth && !after) after = static_cast<Index>(i);
  }
  place.before = before ? *before : *after;
  place.after = after ? *after : *before;
  const Length from = stations[static_cast<std::size_t>(place.before)].girth;
  const Length to = stations[static_cast<std::size_t>(place.after)].girth;
  place.share = to > from ? (hole.girth - from) / (to - from) : 0;
  return place;
}

/// The columns of one error; its place in the inputs is set by the caller.
Result<WholeColumn> whole_column(const BoatModel& model,
                                 const EdgeAreas& areas,
                                 const Perimeter& perimeter,
                                 std::size_t error) {
  const auto whole = WholeError::of(model.errors[error].kind, perimeter,
                                    fmt::format("error[{}]", error));
  if (!whole) return tl::unexpected(whole.error());
  WholeColumn column;
  column.error = error;
  column.gaps.resize(model.gaps.size());
  const auto change = [&](const BoatPoint& point) {
    return whole->gap_change(*perimeter.side(point.lap.side), point);
  };
  Index i = 0;
  for (const BoatStation& station : model.points.stations) {
    column.gaps[i++] = change(station.top);
    column.gaps[i++] = change(station.low);
  }
  column.volume_ml = volume_of(areas, column.gaps);
  column.holes.resize(static_cast<Index>(model.points.holes.size()));
  for (Index hole = 0; hole < column.holes.size(); ++hole)
    column.holes[hole] = change(model.points.holes[static_cast<std::size_t>(hole)]);
  return column;
}

Error short_correlation(std::size_t error) {
  return {ErrorKind::InvalidInput,
          fmt::format("error[{}].correlation", error),
          fmt::format("the gap is looked at every 50 mm of girth: at least {}",
                      worded(least_correlation))};
}

/// What a mm of trim adds to the joint (ml): the gap at the top edge, if the band
/// starts there.
Eigen::VectorXd trim_volume(const BondBand& bond,
                            const std::vector<BoatStation>& stations) {
  Eigen::VectorXd volume = Eigen::VectorXd::Zero(static_cast<Index>(stations.size()));
  if (bond.from.value_or(Length()) > Length()) return volume;
  for (Index i = 0; i < volume.size(); ++i) {
    const BoatStation& station = stations[static_cast<std::size_t>(i)];
    volume[i] = station.run_mm * std::max(0.0, station.top.gap_mm) / mm3_in_ml;
  }
  return volume;
}

AlongColumn along_column(const BoatModel& model,
                         const EdgeAreas& areas,
                         const Joint& joint,
                         const Perimeter& perimeter,
                         std::size_t error) {
  const ProcessError& process = model.errors[error];
  const auto& stations = model.points.stations;
  const SheerRing ring = sheer_ring(perimeter);
  std::vector<double> along;
  for (const BoatStation& station : stations) along.push_back(station.ring_mm);
  AlongColumn column;
  column.error = error;
  column.basis =
      field_basis({ring.length_mm, process.correlation.in_mm(), ring.closed}, along)
          .transpose();
  const auto count = static_cast<Index>(stations.size());
  column.top = Eigen::VectorXd::Constant(count, -1);
  column.low = column.top;
  if (process.kind == ProcessErrorKind::HullTrim) {
    for (Index i = 0; i < count; ++i)
      column.top[i] = -stations[static_cast<std::size_t>(i)].by_depth;
    column.low.setZero();
    column.volume_ml = trim_volume(joint.bond, stations);
    return column;
  }
  const bool hull = process.kind == ProcessErrorKind::HullFace;
  for (Index i = 0; i < count && !hull; ++i) {
    const BoatStation& station = stations[static_cast<std::size_t>(i)];
    column.top[i] = -1 / station.top.facing();
    column.low[i] = -1 / station.low.facing();
  }
  column.volume_ml =
      areas.top.cwiseProduct(column.top) + areas.low.cwiseProduct(column.low);
  column.hole_gap = -1;
  column.hole_way = hull ? -1 : 0;
  return column;
}

}  // namespace

double volume_of(const EdgeAreas& areas, const Eigen::VectorXd& gaps) {
  double volume = 0;
  for (Index i = 0; i < areas.top.size(); ++i)
    volume += areas.top[i] * gaps[2 * i] + areas.low[i] * gaps[2 * i + 1];
  return volume;
}

Result<BoatModel> boat_model(const Joint& joint,
                             const Perimeter& perimeter,
                             const std::vector<DrillStation>& holes,
                             double volume_ml) {
  assert(joint.tolerance && joint.adhesive);
  auto points = boat_points(joint, perimeter, holes);
  if (!points) return tl::unexpected(std::move(points.error()));
  BoatModel model;
  model.errors = joint.tolerance->errors;
  model.points = std::move(*points);
  model.volume_ml = volume_ml;
  add_drawn(model, holes);
  for (const BoatPoint& hole : model.points.holes)
    model.hole_places.push_back(hole_place(model.points.stations, hole.lap));
  model.areas = edge_areas(joint.bond, perimeter, model.points.stations);
  const EdgeAreas& areas = model.areas;
  model.unknowns.volume_ml.resize(model.unknowns.gaps.cols());
  for (Index k = 0; k < model.unknowns.gaps.cols(); ++k)
    model.unknowns.volume_ml[k] = volume_of(areas, model.unknowns.gaps.col(k));
  Errors errors;
  for (std::size_t i = 0; i < model.errors.size(); ++i) {
    if (varies_along(model.errors[i].kind)) {
      if (!(model.errors[i].correlation >= least_correlation)) {
        errors.push_back(short_correlation(i));
        continue;
      }
      model.along.push_back(along_column(model, areas, joint, perimeter, i));
      continue;
    }
    auto column = whole_column(model, areas, perimeter, i);
    if (column)
      model.whole.push_back(std::move(*column));
    else
      errors.insert(errors.end(), column.error().begin(), column.error().end());
  }
  if (!errors.empty()) return tl::unexpected(std::move(errors));
  return model;
}

}  // namespace sheerlap

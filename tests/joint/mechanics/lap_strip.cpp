#include "tests/joint/mechanics/lap_strip.h"

#include <Eigen/SparseCholesky>
#include <Eigen/SparseLU>
#include <array>
#include <cmath>
#include <vector>

namespace sheerlap {
namespace {

using Index = Eigen::Index;
using Entries = std::vector<Eigen::Triplet<double>>;

/// Points and weights of Gauss' rule with four points on 0 .. 1.
struct GaussPoint {
  double at, weight;
};
std::array<GaussPoint, 4> gauss_points() {
  const double inner = std::sqrt(3. / 7 - 2. / 7 * std::sqrt(6. / 5));
  const double outer = std::sqrt(3. / 7 + 2. / 7 * std::sqrt(6. / 5));
  const double heavy = (18 + std::sqrt(30.)) / 72, light = (18 - std::sqrt(30.)) / 72;
  return {{{(1 - outer) / 2, light},
           {(1 - inner) / 2, heavy},
           {(1 + inner) / 2, heavy},
           {(1 + outer) / 2, light}}};
}

/// Adds an element's matrix to those of its two nodes.
template <int Size>
void add(Entries& entries,
         Index first,
         const Eigen::Matrix<double, Size, Size>& matrix) {
  for (Index row = 0; row < Size; ++row)
    for (Index column = 0; column < Size; ++column)
      entries.emplace_back(first + row, first + column, matrix(row, column));
}

/// Solves with the first `held` displacements kept at zero.
template <class Solver>
Eigen::VectorXd solved(Entries entries, const Eigen::VectorXd& load, Index held) {
  double greatest = 0;
  for (const auto& entry : entries)
    greatest = std::max(greatest, std::abs(entry.value()));
  std::erase_if(entries, [&](const auto& entry) {
    return entry.row() < held || entry.col() < held;
  });
  for (Index i = 0; i < held; ++i) entries.emplace_back(i, i, greatest);
  Eigen::SparseMatrix<double> matrix(load.size(), load.size());
  matrix.setFromTriplets(entries.begin(), entries.end());
  Solver solver;
  solver.compute(matrix);
  Eigen::VectorXd forces = load;
  forces.head(held).setZero();
  return solver.solve(forces);
}

double gap_at(double eta_1, double eta_2, double along) {
  return eta_1 + (eta_2 - eta_1) * along;
}

/// The shear gap over the layer from the displacements (u1, w1, turn1, u2, w2, turn2)
/// of two nodes, and the peel gap.
using BeamRow = Eigen::Matrix<double, 1, 12>;

/// Beam functions at `at` on an element of length h: deflection, slope and curvature by
/// the deflections and turnings of its nodes.
struct BeamFunctions {
  std::array<double, 4> deflection, slope, curvature;
};
BeamFunctions beam_functions(double s, double h) {
  return {{1 - 3 * s * s + 2 * s * s * s, h * (s - 2 * s * s + s * s * s),
           3 * s * s - 2 * s * s * s, h * (s * s * s - s * s)},
          {(6 * s * s - 6 * s) / h, 1 - 4 * s + 3 * s * s, (6 * s - 6 * s * s) / h,
           3 * s * s - 2 * s},
          {(12 * s - 6) / (h * h), (6 * s - 4) / h, (6 - 12 * s) / (h * h),
           (6 * s - 2) / h}};
}

/// A row of the beams' displacements with one beam's functions in its place.
BeamRow row_of(const std::array<double, 4>& functions, Index beam, double factor) {
  BeamRow row = BeamRow::Zero();
  for (Index node = 0; node < 2; ++node)
    for (Index turn = 0; turn < 2; ++turn)
      row(6 * node + 3 * beam + 1 + turn) =
          factor * functions[static_cast<std::size_t>(2 * node + turn)];
  return row;
}

/// u2 - u1 at `s` of an element.
BeamRow slide_row(double s) {
  BeamRow row = BeamRow::Zero();
  row(0) = -(1 - s);
  row(3) = 1 - s;
  row(6) = -s;
  row(9) = s;
  return row;
}

BeamRow shear_row(const BeamFunctions& beam, double s, double arm) {
  return slide_row(s) + row_of(beam.slope, 0, arm) + row_of(beam.slope, 1, arm);
}

Eigen::Matrix<double, 12, 12> beam_element(const BeamStrip& strip,
                                           double from,
                                           double to) {
  const double h = (to - from) * strip.l;
  Eigen::Matrix<double, 12, 12> matrix = Eigen::Matrix<double, 12, 12>::Zero();
  for (const auto& [s, weight] : gauss_points()) {
    const BeamFunctions beam = beam_functions(s, h);
    const double eta = gap_at(strip.eta_1, strip.eta_2, from + (to - from) * s);
    const BeamRow peel = row_of(beam.deflection, 1, 1) + row_of(beam.deflection, 0, -1);
    matrix += weight * h *
              (strip.Ga / eta * shear_row(beam, s, strip.force_arm).transpose() *
                   shear_row(beam, s, strip.strain_arm) +
               strip.Ea / eta * peel.transpose() * peel);
    for (Index one = 0; one < 2; ++one) {
      const BeamRow bend = row_of(beam.curvature, one, 1);
      BeamRow stretch = BeamRow::Zero();
      stretch(3 * one) = -1 / h;
      stretch(6 + 3 * one) = 1 / h;
      matrix += weight * h *
                (strip.D * bend.transpose() * bend +
                 strip.Et * stretch.transpose() * stretch);
    }
  }
  return matrix;
}

}  // namespace

StripStresses strip_stresses(const BarStrip& strip, std::size_t elements) {
  const auto count = static_cast<Index>(elements);
  const double h = strip.l / static_cast<double>(count);
  Entries entries;
  Eigen::VectorXd load = Eigen::VectorXd::Zero(2 * count + 2);
  for (Index i = 0; i < count; ++i) {
    Eigen::Matrix4d matrix = Eigen::Matrix4d::Zero();
    for (const auto& [s, weight] : gauss_points()) {
      const double along = (static_cast<double>(i) + s) / static_cast<double>(count);
      const Eigen::RowVector4d slide(-(1 - s), 1 - s, -s, s);
      matrix += weight * h * strip.Ga / gap_at(strip.eta_1, strip.eta_2, along) *
                slide.transpose() * slide;
    }
    const Eigen::RowVector4d stretch_1(-1, 0, 1, 0), stretch_2(0, -1, 0, 1);
    matrix += strip.E1t1 / h * stretch_1.transpose() * stretch_1 +
              strip.E2t2 / h * stretch_2.transpose() * stretch_2;
    add<4>(entries, 2 * i, matrix);
    load.segment<4>(2 * i) += strip.E1t1 * strip.e1 * stretch_1.transpose() +
                              strip.E2t2 * strip.e2 * stretch_2.transpose();
  }
  load(2 * count + 1) += strip.P;
  const Eigen::VectorXd u =
      solved<Eigen::SimplicialLDLT<Eigen::SparseMatrix<double>>>(entries, load, 1);
  return {strip.Ga / strip.eta_1 * (u(1) - u(0)),
          strip.Ga / strip.eta_2 * (u(2 * count + 1) - u(2 * count)), 0, 0};
}

StripStresses strip_stresses(const BeamStrip& strip, std::size_t elements) {
  const auto count = static_cast<Index>(elements);
  Entries entries;
  for (Index i = 0; i < count; ++i)
    add<12>(entries, 6 * i,
            beam_element(strip, static_cast<double>(i) / static_cast<double>(count),
                         static_cast<double>(i + 1) / static_cast<double>(count)));
  Eigen::VectorXd load = Eigen::VectorXd::Zero(6 * count + 6);
  load.tail<3>() << strip.P, strip.V, strip.M;
  const Eigen::VectorXd u =
      solved<Eigen::SparseLU<Eigen::SparseMatrix<double>>>(entries, load, 3);
  const auto shear = [&](Index node, double eta) {
    const auto at = u.segment<6>(6 * node);
    return strip.Ga / eta * (at(3) - at(0) + strip.strain_arm * (at(2) + at(5)));
  };
  const auto peel = [&](Index node, double eta) {
    return strip.Ea / eta * (u(6 * node + 4) - u(6 * node + 1));
  };
  return {shear(0, strip.eta_1), shear(count, strip.eta_2), peel(0, strip.eta_1),
          peel(count, strip.eta_2)};
}

}  // namespace sheerlap

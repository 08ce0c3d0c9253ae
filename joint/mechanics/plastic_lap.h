#pragma once

#include "joint/mechanics/bracketed_root.h"
#include "joint/mechanics/plastic_lap_words.h"
#include "joint/mechanics/single_lap.h"

namespace sheerlap {

/// A single lap whose adhesive yields in shear and then strains on at the same stress.
/// Its bond is even: of a wedge the thin end strains more than an even bond of its gap,
/// by how much once it yields has not been worked out.
template <class Number>
struct PlasticLap {
  SingleLap<Number> lap;
  Number tau_p;  ///< shear stress at which the adhesive yields, N/mm2; > 0
  Number g_p;    ///< shear strain beyond yield at failure, no unit; >= 0
  EdgeMoment edge;
};

/// The same in plain numbers, for solvers.
template <class Number>
PlasticLap<double> plain(const PlasticLap<Number>& bond) {
  const auto& lap = bond.lap;
  return {{value_of(lap.Ga), value_of(lap.Ea), value_of(lap.eta), value_of(lap.E),
           value_of(lap.t), value_of(lap.nu), value_of(lap.k_b), value_of(lap.l),
           lap.strain},
          value_of(bond.tau_p),
          value_of(bond.g_p),
          bond.edge};
}

/// The length at each end over which the adhesive yields under a pull of P, s_p.
/// @param P  from first yield to tau_p*l, N/mm; 0 to first yield gives 0
/// @source   derived: equilibrium of the overlap, the single lap of L. J. Hart-Smith,
///           NASA CR-112236 (1973)
template <class Working>
typename Working::Number plastic_length(
    Working& work,
    const PlasticLap<typename Working::Number>& bond,
    const typename Working::Number& P) {
  const auto& lap = bond.lap;
  const auto terms =
      lap_shear_terms(work, lap, P, edge_loads(work, lap, P, bond.edge).k);
  const auto reach = work.figure(
      plastic_lap_words::reach,
      terms.g_end * lap.Ga / (power(terms.om, 2) * (bond.tau_p - terms.C0)));
  const double om = value_of(terms.om), l = value_of(lap.l);
  const double root = bracketed_root(
      [&](double s_p) {
        return std::tanh(om * (l / 2 - s_p)) / om + s_p - value_of(reach);
      },
      0, l / 2);
  return work.solved(plastic_lap_words::s_p, root, [&](const auto& s_p) {
    return Equation<typename Working::Number>{
        tanh(terms.om * (lap.l / 2 - s_p)) / terms.om + s_p, reach};
  });
}

/// The shear strain at the ends of the overlap under a pull of P, g_0.
/// @param P  0 .. tau_p*l
template <class Working>
typename Working::Number end_strain(Working& work,
                                    const PlasticLap<typename Working::Number>& bond,
                                    const typename Working::Number& P) {
  const auto& lap = bond.lap;
  const auto tau_max = single_lap_shear(work, lap, P, bond.edge);
  if (value_of(tau_max) <= value_of(bond.tau_p))
    return work.figure(plastic_lap_words::g_0, tau_max / lap.Ga);
  const auto s_p = plastic_length(work, bond, P);
  const auto terms =
      lap_shear_terms(work, lap, P, edge_loads(work, lap, P, bond.edge).k);
  return work.figure(
      plastic_lap_words::g_0,
      bond.tau_p / lap.Ga + terms.om / lap.Ga * (bond.tau_p - terms.C0) *
                                (tanh(terms.om * (lap.l / 2 - s_p)) * s_p +
                                 terms.om / 2 * power(s_p, 2)));
}

/// The pull at which the ends first yield, P_y. It is worked as a trial load, so the
/// working is to hold nothing of another load.
template <class Working>
typename Working::Number first_yield(Working& work,
                                     const PlasticLap<typename Working::Number>& bond) {
  const PlasticLap<double> numbers = plain(bond);
  const double root = bracketed_root(
      [&](double P) {
        PlainWorking aside;
        return single_lap_shear(aside, numbers.lap, P, numbers.edge) - numbers.tau_p;
      },
      0, numbers.tau_p * numbers.lap.l);
  const auto P_y = work.sought(plastic_lap_words::P_y.letters, root);
  const auto tau_max = single_lap_shear(work, bond.lap, P_y, bond.edge);
  return work.solved(plastic_lap_words::P_y, root, [&](const auto&) {
    return Equation<typename Working::Number>{tau_max, bond.tau_p};
  });
}

/// The pull at which the strain at the ends is all that the adhesive bears, P_cap; at
/// most tau_p*l, where the whole overlap yields. It is worked as a trial load, so the
/// working is to hold nothing of another load.
/// @accuracy  1e-12 of the pull
template <class Working>
typename Working::Number shear_capacity(
    Working& work, const PlasticLap<typename Working::Number>& bond) {
  const PlasticLap<double> numbers = plain(bond);
  const auto beyond = [&](double P) {
    PlainWorking aside;
    return end_strain(aside, numbers, P) - numbers.tau_p / numbers.lap.Ga - numbers.g_p;
  };
  const double full = numbers.tau_p * numbers.lap.l;
  if (beyond(full) <= 0)
    return work.figure(plastic_lap_words::P_full, bond.tau_p * bond.lap.l);
  const double root = bracketed_root(beyond, 0, full);
  const auto P_cap = work.sought(plastic_lap_words::P_cap.letters, root);
  const auto g_0 = end_strain(work, bond, P_cap);
  return work.solved(plastic_lap_words::P_cap, root, [&](const auto&) {
    return Equation<typename Working::Number>{g_0, bond.tau_p / bond.lap.Ga + bond.g_p};
  });
}

}  // namespace sheerlap

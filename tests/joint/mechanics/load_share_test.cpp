#include "joint/mechanics/load_share.h"

#include <boost/test/unit_test.hpp>
#include <cstddef>
#include <vector>

#include "joint/mechanics/fastener_flexibility.h"

namespace sheerlap {
namespace {

using boost::test_tools::tolerance;

BOOST_AUTO_TEST_SUITE(load_share_test)

/// Laminates of 5.5 mm, 50 mm of overlap, a screw each 150 mm.
template <class Number>
SharedLap<Number> lap_of(double Ga, double eta) {
  PlainWorking work;
  const double C =
      huth_flexibility(work, {6, 193000, 5, 8000, 6, 8000}, bolted_composite);
  return {{Ga, eta, 44000., 44000., 50.}, 150., C};
}

BOOST_AUTO_TEST_CASE(stiff_adhesives_leave_the_fasteners_next_to_nothing) {
  const struct {
    const char* adhesive;
    double Ga, eta, share, rigid;  // derived: by both formulas, outside this program
  } rows[] = {
      {"elastic sealant", 0.4, 3, 0.842157, 0.843586},
      {"flexible polyurethane", 5, 3, 0.297637, 0.301414},
      {"toughened methacrylate", 100, 3, 0.0180062, 0.0211175},
      {"stiff methacrylate", 370, 3, 0.00340048, 0.00579677},
      {"epoxy paste", 1000, 3, 0.000609115, 0.00215267},
      {"epoxy paste, thin", 1000, 0.5, 2.879e-6, 3.59423e-4},
  };
  PlainWorking work;
  for (const auto& row : rows) BOOST_TEST_CONTEXT(row.adhesive) {
      const auto shared = lap_of<double>(row.Ga, row.eta);
      BOOST_TEST(fastener_share(work, shared) == row.share, tolerance(1e-5));
      BOOST_TEST(rigid_share(work, shared) == row.rigid, tolerance(1e-5));
    }
}

BOOST_AUTO_TEST_CASE(the_share_tends_to_that_of_two_springs_as_laminates_grow_rigid) {
  // property: lam l -> 0
  PlainWorking work;
  auto shared = lap_of<double>(5, 3);
  shared.lap.E1t1 = shared.lap.E2t2 = 44e9;
  BOOST_TEST(fastener_share(work, shared) == rigid_share(work, shared),
             tolerance(1e-6));
}

BOOST_AUTO_TEST_CASE(the_share_runs_from_all_to_nothing_with_the_adhesives_stiffness) {
  // property
  PlainWorking work;
  BOOST_TEST(fastener_share(work, lap_of<double>(1e-9, 3)) == 1, tolerance(1e-7));
  BOOST_TEST(fastener_share(work, lap_of<double>(1e9, 0.01)) == 0);
  double before = 1;
  for (double Ga = 0.01; Ga < 1e4; Ga *= 2) {
    const double share = fastener_share(work, lap_of<double>(Ga, 3));
    BOOST_TEST(share < before);
    before = share;
  }
}

BOOST_AUTO_TEST_CASE(the_share_never_exceeds_that_of_rigid_laminates) {
  // property: stretching laminates spare the middle
  PlainWorking work;
  for (double eta = 0.1; eta < 20; eta *= 1.5) {
    const auto shared = lap_of<double>(100, eta);
    BOOST_TEST(fastener_share(work, shared) < rigid_share(work, shared));
  }
}

/// The share of one row of springs at mid-overlap from the slip at `count` + 1 points:
/// slip'' = lam^2 slip, with the known strains at the ends and the row as a knot.
double share_by_differences(const SharedLap<double>& shared, int count) {
  const double S = 1 / shared.lap.E1t1 + 1 / shared.lap.E2t2;
  const double step = shared.lap.l / count;
  const double spread = step * step * shared.lap.Ga / shared.lap.eta * S;
  // forward sweep of slip[i] = keep[i] * slip[i+1] + add[i], load 1 N/mm
  std::vector<double> keep, add;
  for (int i = 0; i <= count; ++i) {
    const bool first = i == 0, last = i == count;
    const double knot = i == count / 2 ? step * S / (shared.C * shared.s) : 0;
    const double middle = (first || last ? 1 + spread / 2 : 2 + spread) + knot;
    const double load = first  ? step / shared.lap.E1t1
                        : last ? step / shared.lap.E2t2
                               : 0;
    const double gone = first ? 0 : keep.back(), brought = first ? 0 : add.back();
    keep.push_back(1 / (middle - gone));
    add.push_back((load + brought) / (middle - gone));
  }
  double slip = add.back();
  for (int i = count - 1; i >= count / 2; --i)
    slip = keep[static_cast<std::size_t>(i)] * slip + add[static_cast<std::size_t>(i)];
  return slip / shared.C / shared.s;
}

BOOST_AUTO_TEST_CASE(
    the_share_is_that_of_finite_differences_even_for_unequal_laminates) {
  // derived: by the difference equations above, error of the order of (lam step)^2/12
  PlainWorking work;
  auto shared = lap_of<double>(100, 3);
  BOOST_TEST(fastener_share(work, shared) == share_by_differences(shared, 20000),
             tolerance(1e-6));
  shared.lap.E1t1 = 20000;
  shared.lap.E2t2 = 90000;
  BOOST_TEST(fastener_share(work, shared) == share_by_differences(shared, 20000),
             tolerance(1e-6));
}

BOOST_AUTO_TEST_CASE(a_working_on_paper_gives_the_numbers_of_the_plain_one) {
  WrittenWorking work;
  PlainWorking plain;
  BOOST_TEST(fastener_share(work, lap_of<Term>(100, 3)).value() ==
             fastener_share(plain, lap_of<double>(100, 3)));
  BOOST_TEST(rigid_share(work, lap_of<Term>(100, 3)).value() ==
             rigid_share(plain, lap_of<double>(100, 3)));
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

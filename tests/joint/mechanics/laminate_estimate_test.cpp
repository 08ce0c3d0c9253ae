#include "joint/mechanics/laminate_estimate.h"

#include <array>
#include <boost/test/unit_test.hpp>
#include <cmath>

namespace sheerlap {
namespace {

BOOST_AUTO_TEST_SUITE(laminate_estimate_test)

template <class Working>
std::array<typename Working::Number, 5> strengths(Working& work,
                                                  double psi,
                                                  double kM) {
  const GlassContent<typename Working::Number> glass{psi, kM};
  return {estimated_tension(work, glass), estimated_compression(work, glass),
          estimated_flexure(work, glass), estimated_shear(work, glass),
          estimated_interlaminar(work, glass)};
}

BOOST_AUTO_TEST_CASE(the_strengths_are_those_of_the_published_sample) {
  // published: scantlings of a 4.5 m motor boat after ISO 12215-5:2008, material
  // tables, psi = 0.25, kM = 0.8; rounded there to 0.1
  PlainWorking work;
  const double published[] = {53.6, 87.6, 110.7, 46.4, 14.5};
  const auto found = strengths(work, 0.25, 0.8);
  for (std::size_t i = 0; i < found.size(); ++i)
    BOOST_TEST(std::abs(found[i] - published[i]) <= 0.06);
}

BOOST_AUTO_TEST_CASE(the_strengths_at_other_contents_are_those_worked_by_hand) {
  // derived: 800 psi^2 - 80 psi + 37 and so on, kM = 1
  PlainWorking work;
  const struct {
    double psi;
    double expected[5];
  } rows[] = {{0.30, {85, 117, 152.18, 62, 17.25}},
              {0.35, {107, 124.5, 168.495, 66, 16.375}}};
  for (const auto& row : rows) {
    const auto found = strengths(work, row.psi, 1);
    for (std::size_t i = 0; i < found.size(); ++i)
      BOOST_TEST(found[i] == row.expected[i], boost::test_tools::tolerance(1e-12));
  }
}

BOOST_AUTO_TEST_CASE(more_glass_is_stronger_but_for_the_layers_between_it) {
  // property
  PlainWorking work;
  const auto lean = strengths(work, 0.3, 1), rich = strengths(work, 0.4, 1);
  for (std::size_t i = 0; i < 4; ++i) BOOST_TEST(rich[i] > lean[i]);
  BOOST_TEST(rich[4] < lean[4]);
}

BOOST_AUTO_TEST_CASE(a_remembered_formula_says_so) {
  WrittenWorking work;
  PlainWorking plain;
  const auto found = strengths(work, 0.3, 0.8);
  const auto same = strengths(plain, 0.3, 0.8);
  for (std::size_t i = 0; i < found.size(); ++i)
    BOOST_TEST(found[i].value() == same[i]);
  for (const Reason& step : work.steps())
    BOOST_TEST(step.source.ends_with("; from memory, confirm"));
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

#include "joint/mechanics/deck_pressure.h"

#include <algorithm>
#include <boost/test/unit_test.hpp>

namespace sheerlap {
namespace {

using boost::test_tools::tolerance;

BOOST_AUTO_TEST_SUITE(deck_pressure_test)

/// A motor boat of 8.5 m and 3500 kg, a deck panel of 600 by 1200 mm.
template <class Number>
DeckDesign<Number> boat(DesignCategory category) {
  return {8.5, 3500., 600., 1200., category_factor(category), 1.};
}

BOOST_AUTO_TEST_CASE(the_base_pressure_is_that_of_the_published_sample) {
  // published: scantlings of a motor boat after ISO 12215-5:2008: 16.000 at LWL 4.00 m,
  // kDC 0.4 in category D, least pressure 5.000
  PlainWorking work;
  DeckDesign<double> sample = boat<double>(DesignCategory::D);
  sample.LWL = 4;
  BOOST_TEST(base_pressure(work, sample) == 16, tolerance(1e-12));
  BOOST_TEST(sample.kDC == 0.4);
  BOOST_TEST(least_deck_pressure == 5);
}

BOOST_AUTO_TEST_CASE(a_deck_of_category_b_has_the_worked_pressure) {
  // derived: 0.35 x 8.5 + 14.6; kR = 1.5 - 0.18; AD = 0.72;
  // kAR = 1.32 x 0.1 x 3500^0.15/0.72^0.3; 17.575 x 0.495432 x 0.8
  PlainWorking work;
  const auto design = boat<double>(DesignCategory::B);
  BOOST_TEST(base_pressure(work, design) == 17.575, tolerance(1e-12));
  BOOST_TEST(area_factor(work, design) == 0.495432, tolerance(2e-6));
  BOOST_TEST(deck_pressure(work, design) == 6.96578, tolerance(2e-6));
}

BOOST_AUTO_TEST_CASE(the_pressure_never_falls_below_the_least) {
  // derived: 17.575 x 0.495432 x 0.4 = 3.48 in category D
  PlainWorking work;
  BOOST_TEST(deck_pressure(work, boat<double>(DesignCategory::D)) == 5);
}

BOOST_AUTO_TEST_CASE(a_panel_longer_than_two_and_a_half_widths_counts_no_further) {
  // property
  PlainWorking work;
  auto design = boat<double>(DesignCategory::A);
  design.l = 1500;
  const double at_limit = area_factor(work, design);
  design.l = 4000;
  BOOST_TEST(area_factor(work, design) == at_limit);
  design.l = 1000;
  BOOST_TEST(area_factor(work, design) > at_limit);
}

BOOST_AUTO_TEST_CASE(sheltered_waters_ask_for_less) {
  const double factors[] = {
      category_factor(DesignCategory::D), category_factor(DesignCategory::C),
      category_factor(DesignCategory::B), category_factor(DesignCategory::A)};
  BOOST_TEST(std::is_sorted(std::begin(factors), std::end(factors)));
  BOOST_TEST(factors[3] == 1);
}

BOOST_AUTO_TEST_CASE(remembered_factors_say_so_in_the_working) {
  WrittenWorking work;
  PlainWorking plain;
  BOOST_TEST(deck_pressure(work, boat<Term>(DesignCategory::B)).value() ==
             deck_pressure(plain, boat<double>(DesignCategory::B)));
  BOOST_TEST(work.steps().size() == 5U);
  for (const Reason& step : work.steps())
    BOOST_TEST(step.source.ends_with("; from memory, confirm"), step.letters);
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

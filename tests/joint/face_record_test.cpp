#include "joint/face_record.h"

#include <boost/test/unit_test.hpp>
#include <cmath>

#include "geometry/random_stream.h"
#include "geometry/ring_field.h"
#include "joint/boat_pattern.h"
#include "joint/boat_points.h"
#include "joint/readings_gap.h"
#include "tests/joint/example_boats.h"

namespace sheerlap {
namespace {

/// A place that is read on every boat, and what moves the gap there.
struct Place {
  SideName side;
  Length girth;
  double ring_mm;
  double top_mm, low_mm;  ///< as drawn
  Eigen::Vector3d lid;    ///< what a mm of the lid's moves adds
};

std::vector<Place> read_places(const Joint& joint, const Perimeter& boat) {
  const ReadingsGap drawn(boat, {}, ReadingState::Dry);
  std::vector<Place> places;
  for (const PerimeterSide& side : boat.sides)
    for (double share = 0.04; share < 1; share += 0.06) {
      const Length girth = share * side.drill_line_length;
      const auto point = boat_point_at(joint, boat, side.name, girth);
      BOOST_TEST_REQUIRE(point.has_value());
      places.push_back(
          {side.name, girth, along_ring_mm(boat, side.name, point->lap.girth),
           drawn.gap(side.name, girth, Length()).in_mm(),
           drawn.gap(side.name, girth, Length::mm(2 * point->lap.depth_mm)).in_mm(),
           point->slope.head<3>()});
    }
  return places;
}

/// A shape of the mould that neither the lid's moves nor the hull's opening have.
double wave(std::size_t place) { return place % 3 == 0 ? 1 : place % 3 == 1 ? -1 : 0; }

/// Boats whose hull's face is 0.4 mm outward, 0.6 either way, alike over 900 mm, under
/// lids that lie 3 mm off.
std::vector<std::vector<GapReading>> boats_read(const std::vector<Place>& places,
                                                double ring_mm,
                                                double pattern_mm = 0) {
  std::vector<double> along;
  for (const Place& place : places) along.push_back(place.ring_mm);
  const Eigen::MatrixXd basis = field_basis({ring_mm, 900, true}, along);
  std::vector<std::vector<GapReading>> boats;
  for (std::uint64_t boat = 0; boat < 25; ++boat) {
    RandomStream stream(8, boat, 0);
    Eigen::VectorXd normals(basis.cols());
    for (double& normal : normals) normal = stream.normal();
    const Eigen::VectorXd face = 0.6 * basis * normals;
    const Eigen::Vector3d lid(3 * stream.normal(), 3 * stream.normal(),
                              3 * stream.normal());
    std::vector<GapReading> readings;
    for (std::size_t i = 0; i < places.size(); ++i) {
      const double off = places[i].lid.dot(lid) - 0.4 -
                         face[static_cast<Eigen::Index>(i)] - pattern_mm * wave(i) +
                         0.05 * stream.normal();
      GapReading reading;
      reading.side = places[i].side;
      reading.girth = places[i].girth;
      reading.top = Length::mm(places[i].top_mm + off);
      reading.low = Length::mm(places[i].low_mm + off);
      readings.push_back(reading);
    }
    boats.push_back(readings);
  }
  return boats;
}

bool holds(const Estimate& estimate, double exact) {
  return estimate.low <= exact && exact <= estimate.high;
}

BOOST_AUTO_TEST_SUITE(face_record_suite)

BOOST_AUTO_TEST_CASE(the_hulls_face_is_told_from_readings_under_lids_anyhow) {
  const Joint joint = with_uneven_offsets(example_joint(small_boat(), {}));
  const Perimeter boat = perimeter_of(joint);
  const auto places = read_places(joint, boat);
  const auto boats = boats_read(places, sheer_ring(boat).length_mm);
  const auto found = face_from_record(joint, boat, boats, ReadingState::Dry);
  BOOST_TEST_REQUIRE((found.has_value() && found->has_value()));
  // derived: what the boats were made of
  BOOST_TEST((*found)->samples == 25u);
  BOOST_TEST(holds((*found)->mean, 0.4));
  BOOST_TEST(holds((*found)->spread, 0.6));
  BOOST_TEST(holds((*found)->correlation_mm, 900));
  BOOST_TEST((*found)->spread.high - (*found)->spread.low < 0.2);
  const auto none = face_from_record(joint, boat, boats, ReadingState::Held);
  BOOST_TEST_REQUIRE(none.has_value());
  BOOST_TEST(!none->has_value());
}

BOOST_AUTO_TEST_CASE(pattern_and_field_are_told_apart) {
  const Joint joint = with_uneven_offsets(example_joint(small_boat(), {}));
  const Perimeter boat = perimeter_of(joint);
  const auto places = read_places(joint, boat);
  const auto boats = boats_read(places, sheer_ring(boat).length_mm, 2);
  const auto found = face_from_record(joint, boat, boats, ReadingState::Dry);
  BOOST_TEST_REQUIRE((found.has_value() && found->has_value()));
  BOOST_TEST(holds((*found)->spread, 0.6));
  BOOST_TEST(holds((*found)->correlation_mm, 900));
  const auto pattern = pattern_of(joint, boat, boats, ReadingState::Dry);
  BOOST_TEST_REQUIRE(pattern.has_value());
  BOOST_TEST_REQUIRE(pattern->readings.size() == places.size());
  for (std::size_t i = 0; i + 1 < places.size(); ++i) {
    if (places[i].side != places[i + 1].side) continue;
    const auto outward = [&](std::size_t place) {
      return places[place].top_mm - pattern->readings[place].top->in_mm();
    };
    // derived: neighbours differ by the wave and by what is left of the field in the
    // mean of 25 boats, under 0.6 sqrt(2 / 25) = 0.17 by its deviation; 0.5 is 3 of it
    const double exact = 2 * (wave(i) - wave(i + 1));
    BOOST_TEST(std::abs(outward(i) - outward(i + 1) - exact) < 0.5);
  }
  const PatternReach reach = reach_of(boat, *pattern);
  // derived: 0.4 and the wave of 2, within three deviations of the mean of 25 boats and
  // what the lid's moves take of the wave
  BOOST_TEST(std::abs(reach.greatest.in_mm() - 2.4) < 0.6);
  BOOST_TEST(std::abs(reach.least.in_mm() + 1.6) < 0.6);
}

FieldEstimate estimate_of(double mean, double spread, double correlation_mm) {
  FieldEstimate face;
  face.mean.value = mean;
  face.spread.value = spread;
  face.correlation_mm.value = correlation_mm;
  face.noise = 0.4;
  return face;
}

ToleranceInputs inputs_of(ProcessErrorKind kind, Length correlation) {
  return {100,
          1,
          {{ProcessErrorKind::HullTwist, ErrorLaw::Normal, 1, 2, {}, false},
           {kind, ErrorLaw::Uniform, 0, 0, correlation, true}}};
}

BOOST_AUTO_TEST_CASE(the_records_numbers_take_the_place_of_those_to_be_estimated) {
  FieldEstimate face = estimate_of(0.2, 0.3, 700);
  const auto inputs = inputs_of(ProcessErrorKind::HullFace, Length::mm(400));
  const auto told = with_record(inputs, face);
  BOOST_TEST_REQUIRE(told.has_value());
  BOOST_TEST(told->errors[0].spread == 2);
  BOOST_TEST((told->errors[1].law == ErrorLaw::Normal));
  // what every boat has is the pattern's
  BOOST_TEST(told->errors[1].mean == 0);
  BOOST_TEST(told->errors[1].spread == 0.3);
  BOOST_TEST(told->errors[1].correlation.in_mm() == 700);
  face.correlation_open = true;
  const auto open = with_record(inputs, face);
  BOOST_TEST_REQUIRE(open.has_value());
  // derived: 0.3 and 0.4 of noise are 0.5 from place to place
  BOOST_TEST(open->errors[1].spread == 0.5, boost::test_tools::tolerance(1e-12));
  BOOST_TEST(open->errors[1].correlation.in_mm() == 400);
}

BOOST_AUTO_TEST_CASE(boats_without_spread_need_no_correlation) {
  FieldEstimate face = estimate_of(0.2, 1e-5, 700);
  face.noise = 0;
  face.correlation_open = true;
  const auto told = with_record(inputs_of(ProcessErrorKind::HullFace, Length()), face);
  BOOST_TEST_REQUIRE(told.has_value());
  BOOST_TEST(told->errors[1].spread == 0);
  BOOST_TEST(told->errors[1].correlation.in_mm() == 700);
}

BOOST_AUTO_TEST_CASE(a_second_error_from_the_record_is_refused) {
  ToleranceInputs inputs = inputs_of(ProcessErrorKind::HullFace, Length::mm(400));
  inputs.errors.push_back(inputs.errors[1]);
  const auto told = with_record(inputs, estimate_of(0.2, 0.3, 700));
  BOOST_TEST_REQUIRE(!told.has_value());
  BOOST_TEST(told.error().size() == 1u);
  BOOST_TEST(told.error()[0].where == "error[2].from_record");
}

BOOST_AUTO_TEST_CASE(what_the_record_does_not_tell_is_asked_for) {
  FieldEstimate face = estimate_of(0.2, 0.3, 700);
  const auto opening =
      with_record(inputs_of(ProcessErrorKind::HullOpening, Length()), face);
  BOOST_TEST_REQUIRE(!opening.has_value());
  BOOST_TEST(opening.error()[0].where == "error[1].from_record");
  BOOST_TEST(opening.error()[0].message ==
             "gap readings tell the hull's face alone: give mean and spread of this "
             "error");
  face.correlation_open = true;
  const auto length =
      with_record(inputs_of(ProcessErrorKind::HullFace, Length()), face);
  BOOST_TEST_REQUIRE(!length.has_value());
  BOOST_TEST(length.error()[0].where == "error[1].correlation");
  BOOST_TEST(length.error()[0].message ==
             "[[error]] has no correlation, and the readings of the record stand too "
             "far apart to tell it: give a length");
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

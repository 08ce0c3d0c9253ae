#include "joint/strength_classes.h"

#include <boost/test/unit_test.hpp>
#include <cmath>

#include "joint/bolts.h"
#include "joint/fasteners.h"
#include "tests/published_table.h"

namespace sheerlap {
namespace {

using boost::test_tools::tolerance;

StrengthClass class_named(const std::string& name) {
  const auto found = strength_class(name, "fastener.class");
  BOOST_TEST_REQUIRE(found.has_value(), name);
  return *found;
}

double load_kn(const char* name, double diameter, double pitch) {
  return class_named(name).tensile.mpa *
         stress_area_mm2(Length::mm(diameter), Length::mm(pitch)) / 1000;
}

BOOST_AUTO_TEST_SUITE(strength_classes)

BOOST_AUTO_TEST_CASE(the_stainless_classes_are_those_of_iso_3506_1) {
  for (const auto& row : published_table("iso_3506_1.csv"))
    BOOST_TEST_CONTEXT(row.text("class")) {
      const StrengthClass found = class_named(row.text("class"));
      BOOST_TEST(found.tensile.mpa == row.number("tensile"));
      BOOST_TEST(found.proof.mpa == row.number("proof"));
      BOOST_TEST(!found.tensile.source.ends_with(memory_note));
      BOOST_TEST(!found.proof.source.ends_with(memory_note));
    }
}

BOOST_AUTO_TEST_CASE(the_row_of_a4_70_is_remembered_and_says_so) {
  const StrengthClass found = class_named("A4-70");
  BOOST_TEST(found.tensile.mpa == 700);  // from memory, confirm
  BOOST_TEST(found.proof.mpa == 450);    // from memory, confirm
  BOOST_TEST(found.tensile.source.ends_with(memory_note));
  BOOST_TEST(found.proof.source.ends_with(memory_note));
}

BOOST_AUTO_TEST_CASE(stress_areas_and_8_8_loads_are_those_of_iso_898_1) {
  const StrengthClass steel = class_named("8.8");
  for (const auto& row : published_table("iso_898_1_loads.csv"))
    BOOST_TEST_CONTEXT(row.text("size")) {
      const double area = stress_area_mm2(Length::mm(row.number("diameter")),
                                          Length::mm(row.number("pitch")));
      // 0.5 %: the standard rounds the area to three figures, and then the load
      BOOST_TEST(area == row.number("stress_area"), tolerance(0.005));
      BOOST_TEST(steel.tensile.mpa * area == row.number("load_8_8"), tolerance(0.005));
    }
  BOOST_TEST(!steel.tensile.source.ends_with(memory_note));
  BOOST_TEST(steel.proof.mpa == 640);  // from memory, confirm
  BOOST_TEST(steel.proof.source.ends_with(memory_note));
}

BOOST_AUTO_TEST_CASE(stainless_bolts_carry_strength_times_stress_area) {
  const struct {
    double diameter, pitch;  // mm
    double area;             // mm2
    double a2_70, a4_80;     // kN
  } rows[] = {
      // derived: As = pi/4 (d - 0.9382 P)^2, times 700 and 800 N/mm2
      {3, 0.5, 5.031, 3.52, 4.02},      {4, 0.7, 8.779, 6.15, 7.02},
      {5, 0.8, 14.183, 9.93, 11.35},    {6, 1.0, 20.123, 14.09, 16.10},
      {8, 1.25, 36.608, 25.63, 29.29},  {10, 1.5, 57.989, 40.59, 46.39},
      {12, 1.75, 84.266, 58.99, 67.41},
  };
  for (const auto& row : rows) BOOST_TEST_CONTEXT("M" << row.diameter) {
      const double area =
          stress_area_mm2(Length::mm(row.diameter), Length::mm(row.pitch));
      BOOST_TEST(std::abs(area - row.area) <= 0.0005);  // as printed
      BOOST_TEST(std::abs(load_kn("A2-70", row.diameter, row.pitch) - row.a2_70) <=
                 0.005);  // as printed
      BOOST_TEST(std::abs(load_kn("A4-80", row.diameter, row.pitch) - row.a4_80) <=
                 0.005);  // as printed
    }
}

BOOST_AUTO_TEST_CASE(the_moduli_are_remembered_and_say_so) {
  // from memory, confirm: 193 GPa for austenitic stainless steel, 200 GPa for steel
  for (const std::string_view name : strength_class_names()) {
    const StrengthClass found = class_named(std::string(name));
    BOOST_TEST(found.modulus.mpa == (name == "8.8" ? 200000 : 193000));
    BOOST_TEST(found.modulus.source.ends_with(memory_note));
  }
}

BOOST_AUTO_TEST_CASE(a_class_has_more_strength_than_proof_stress) {
  // property of any metal
  for (const std::string_view name : strength_class_names()) {
    const StrengthClass found = class_named(std::string(name));
    BOOST_TEST(found.name == name);
    BOOST_TEST(found.proof.mpa > 0);
    BOOST_TEST(found.tensile.mpa > found.proof.mpa);
  }
}

BOOST_AUTO_TEST_CASE(an_unknown_class_is_refused_with_the_nearest_there_is) {
  const auto near = strength_class("A4-8O", "fastener.class");
  BOOST_TEST_REQUIRE(!near.has_value());
  BOOST_TEST_REQUIRE(near.error().size() == 1u);
  BOOST_TEST(near.error().front().where == "fastener.class");
  BOOST_TEST(near.error().front().message ==
             "no table here has a property class \"A4-8O\": did you mean A4-80?");
  const auto far = strength_class("titanium", "fastener.class");
  BOOST_TEST_REQUIRE(!far.has_value());
  BOOST_TEST(far.error().front().message ==
             "no table here has a property class \"titanium\": one of A2-50, A2-70, "
             "A4-70, A4-80, class 100, 8.8");
  BOOST_TEST(!strength_class("", "fastener.class").has_value());
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

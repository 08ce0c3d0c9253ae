#include "joint/documents/tolerance_json.h"

#include <boost/test/unit_test.hpp>

#include "tests/joint/documents/sample_tolerance.h"

namespace sheerlap {
namespace {

BOOST_AUTO_TEST_SUITE(tolerance_json_of_a_joint)

BOOST_AUTO_TEST_CASE(figures_stand_with_the_ends_of_their_range) {
  const Json json = tolerance_json(sample_tolerance());
  BOOST_TEST(json["boats"] == 10000);
  BOOST_TEST(json["seed"] == 640);
  BOOST_TEST(json["shares"]["on"]["value"] == 0.929);
  BOOST_TEST(json["shares"]["on"]["low"] == 0.929 - 0.0051);
  BOOST_TEST(json["margin"]["p10"]["high"] == -0.12 + 0.02);
  BOOST_TEST(json["adhesive"]["boat_volume"]["p90"]["value"] == 2831);
  BOOST_TEST(json["run"]["at_p90"]["packs"] == 771);
  BOOST_TEST(json["run"]["laid_p90"]["value"] == 228400);
  BOOST_TEST(json["stretches"].size() == 3U);  // those left out for people too
  BOOST_TEST(json["stretches"][2]["to"] == 487.5);
  BOOST_TEST(json["drives"]["margin"][1]["total"]["value"] == 1);
}

BOOST_AUTO_TEST_CASE(errors_are_given_as_the_joint_file_has_them) {
  const Json errors = tolerance_json(sample_tolerance())["errors"];
  BOOST_TEST(errors[0]["kind"] == "lid shrinkage");
  BOOST_TEST(errors[0]["unit"] == "per cent");
  BOOST_TEST(errors[0]["mean"].get<double>() == 0.05,
             boost::test_tools::tolerance(1e-14));
  BOOST_TEST(errors[0]["correlation"].is_null());
  BOOST_TEST(errors[1]["law"] == "uniform");
  BOOST_TEST(errors[1]["unit"] == "mm");
  BOOST_TEST(errors[1]["correlation"] == 700);
}

BOOST_AUTO_TEST_CASE(what_does_not_apply_is_null) {
  ToleranceJob job = sample_tolerance();
  job.tolerance.squeeze_mm = std::nullopt;
  job.tolerance.run = std::nullopt;
  const Json json = tolerance_json(job);
  BOOST_TEST(json["squeeze"].is_null());
  BOOST_TEST(json["run"].is_null());
  BOOST_TEST(json["lengths"][2]["length"].is_null());
  BOOST_TEST(json["lengths"][2]["run_p90"].is_null());
  BOOST_TEST(json_text(json).find("nan") == std::string::npos);
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

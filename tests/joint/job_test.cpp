#include "joint/job.h"

#include <boost/test/unit_test.hpp>

#include "tests/joint/example_joint.h"

namespace sheerlap {
namespace {

Joint box() { return box_joint(4000, 2000, {}); }

Parts only(bool Parts::*part) {
  Parts parts;
  parts.*part = true;
  return parts;
}

Job job_of(Joint joint, const Parts& parts) {
  auto job = work_out(std::move(joint), parts);
  BOOST_TEST_REQUIRE(job.has_value());
  return *job;
}

/// "WHERE: MESSAGE" of each error.
std::vector<std::string> errors_of(Joint joint, const Parts& parts) {
  const auto job = work_out(std::move(joint), parts);
  BOOST_TEST_REQUIRE(!job.has_value());
  std::vector<std::string> lines;
  for (const Error& error : job.error())
    lines.push_back(error.where + ": " + error.message);
  return lines;
}

using Lines = std::vector<std::string>;

BOOST_AUTO_TEST_SUITE(job)

BOOST_AUTO_TEST_CASE(a_part_is_worked_out_with_what_it_needs_and_no_more) {
  const Job fit = job_of(box(), only(&Parts::fit));
  BOOST_TEST((fit.fit && !fit.layout && !fit.schedule && !fit.adhesive && !fit.order));
  const Job schedule = job_of(box(), only(&Parts::schedule));
  BOOST_TEST(
      (!schedule.fit && schedule.layout && schedule.schedule && !schedule.adhesive));
  Joint joint = box();
  joint.order.emplace();
  const Job order = job_of(joint, only(&Parts::order));
  BOOST_TEST((order.layout && order.schedule && order.adhesive && order.order));
}

BOOST_AUTO_TEST_CASE(the_adhesive_needs_the_layout_only_to_plan_the_time) {
  BOOST_TEST(!job_of(box(), only(&Parts::adhesive)).layout.has_value());
  Joint joint = box();
  joint.shop.emplace();
  joint.shop->gun_rate = 150;
  joint.shop->screw_rate = 5;
  BOOST_TEST(job_of(joint, only(&Parts::adhesive)).layout.has_value());
}

BOOST_AUTO_TEST_CASE(a_missing_table_is_an_error_of_the_part_that_needs_it) {
  Joint joint = box();
  joint.adhesive.reset();
  BOOST_TEST(
      (errors_of(joint, only(&Parts::fit)) ==
       Lines{"adhesive: [adhesive] is missing: `fit` needs its gap_min and gap_max"}));
  BOOST_TEST(
      (errors_of(joint, only(&Parts::adhesive)) ==
       Lines{"adhesive: [adhesive] is missing: `adhesive` needs its gap window, bead "
             "sizes and pack"}));
  BOOST_TEST(
      (errors_of(joint, only(&Parts::order)) ==
       Lines{"adhesive: [adhesive] is missing: `order` needs its gap window, bead "
             "sizes and pack",
             "order: [order] is missing: `order` needs its boats and spare"}));
  BOOST_TEST(work_out(joint, only(&Parts::schedule)).has_value());
}

BOOST_AUTO_TEST_CASE(a_whole_job_leaves_out_what_has_no_table_and_warns) {
  Joint joint = box();
  joint.adhesive.reset();
  const Job job = job_of(joint, Parts::all());
  BOOST_TEST((!job.fit && job.layout && job.schedule && !job.adhesive && !job.order));
  BOOST_TEST_REQUIRE(job.checks.size() >= 3);
  const char* const left_out[] = {
      "`fit` is left out: the joint file has no [adhesive]",
      "`adhesive` is left out: the joint file has no [adhesive]",
      "`order` is left out: the joint file has no [adhesive] and no [order]"};
  for (std::size_t i = 0; i < 3; ++i) {
    BOOST_TEST(job.checks[i].id == "job.left_out");
    BOOST_TEST(job.checks[i].what == left_out[i]);
    BOOST_TEST((job.checks[i].state == CheckState::Warn));
  }
}

BOOST_AUTO_TEST_CASE(errors_of_all_parts_come_at_once_and_each_once) {
  Joint joint = box();
  joint.order.reset();
  joint.keepouts = {
      {{SideChoice::Starboard, Length::mm(90000), Length::mm(90010)}, {}, "x"}};
  joint.places = {{SideChoice::Port, Length::mm(90000), false, "y"}};
  const Lines lines = errors_of(joint, only(&Parts::order));
  BOOST_TEST_REQUIRE(lines.size() == 4);
  BOOST_TEST(lines[0].starts_with("order: [order] is missing"));
  BOOST_TEST(lines[1].starts_with("keepout[0].from"));
  BOOST_TEST(lines[2].starts_with("keepout[0].to"));
  BOOST_TEST(lines[3].starts_with("place[0].at"));
}

BOOST_AUTO_TEST_CASE(openings_that_leave_no_joint_are_an_error) {
  // derived: half a box of 4000 by 2000 has sides of 1000 + 4000 mm and a transom of
  // 2000; the drill line lies 8 mm outside it, so its sides are 5024 and its transom is
  // 2016, of which the last 8 mm at a corner have no sheer above them
  Joint joint = box();
  joint.openings = {{{SideChoice::Both, Length(), Length::mm(5020)}, "all of a side"},
                    {{SideChoice::Transom, Length(), Length::mm(2015)}, "the transom"}};
  BOOST_TEST((
      errors_of(joint, only(&Parts::fit)) ==
      Lines{"opening: the openings leave no joint: a stretch of a side outside them"}));
  joint.openings.pop_back();
  BOOST_TEST(work_out(joint, only(&Parts::fit)).has_value());
}

BOOST_AUTO_TEST_CASE(checks_of_every_part_are_gathered) {
  const Job job = job_of(box(), only(&Parts::fit));
  BOOST_TEST(job.checks.size() == job.perimeter.checks.size() + job.fit->checks.size() +
                                      job.going_on->checks.size());
}

BOOST_AUTO_TEST_CASE(trying_out_keeps_the_input_and_finds_the_errors_of_every_part) {
  const auto input = try_out(box());
  BOOST_TEST_REQUIRE(input.has_value());
  BOOST_TEST((!input->fit && !input->layout && !input->adhesive));
  BOOST_TEST(!input->perimeter.sides.empty());
  BOOST_TEST_REQUIRE(input->checks.size() == 1);  // [order]
  BOOST_TEST(input->checks[0].id == "job.left_out");
  Joint joint = box();
  joint.places = {{SideChoice::Port, Length::mm(90000), false, "y"}};
  BOOST_TEST(!try_out(joint).has_value());
}

BOOST_AUTO_TEST_CASE(the_verdict_is_the_worst_state) {
  const auto with = [](std::vector<CheckState> states) {
    Checks checks;
    for (const CheckState state : states) {
      checks.emplace_back();
      checks.back().state = state;
    }
    return checks;
  };
  using enum CheckState;
  BOOST_TEST((verdict({}) == Pass));
  BOOST_TEST((verdict(with({Pass, Pass})) == Pass));
  BOOST_TEST((verdict(with({Warn, Pass})) == Warn));
  BOOST_TEST((verdict(with({Warn, Fail, Pass})) == Fail));
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

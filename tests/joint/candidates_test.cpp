#include "joint/candidates.h"

#include <algorithm>
#include <boost/test/unit_test.hpp>

#include "joint/fastener_sizes.h"
#include "joint/job.h"
#include "joint/tapping_screws.h"
#include "tests/joint/strong_joint.h"

namespace sheerlap {
namespace {

constexpr double rounding = 1e-6;  // mm: faces are met to 1e-9

Candidates candidates_of(const Joint& joint) {
  Parts parts;
  parts.strength = true;
  const auto job = work_out(joint, parts);
  BOOST_TEST_REQUIRE(job.has_value());
  return candidates(*job);
}

const Candidate& own_of(const Candidates& all) {
  const auto found = std::find_if(all.begin(), all.end(),
                                  [](const Candidate& one) { return one.own(); });
  BOOST_TEST_REQUIRE((found != all.end()));
  return *found;
}

const Candidate& with_fastener(const Candidates& all, const std::string& name) {
  const auto found = std::find_if(
      all.begin(), all.end(), [&](const auto& one) { return one.fastener == name; });
  BOOST_TEST_REQUIRE((found != all.end()));
  return *found;
}

const Candidate& with_adhesive(const Candidates& all, const std::string& name) {
  const auto found = std::find_if(
      all.begin(), all.end(), [&](const auto& one) { return one.adhesive == name; });
  BOOST_TEST_REQUIRE((found != all.end()));
  return *found;
}

Joint priced_joint() {
  Joint joint = strong_joint();
  joint.adhesive->pack_price = 34;
  joint.adhesive->nozzle_price = 2;
  joint.fastener.box = 100;
  joint.fastener.box_price = 11;
  return joint;
}

Adhesive other_adhesive(const std::string& name) {
  Adhesive adhesive = *priced_joint().adhesive;
  adhesive.name = name;
  return adhesive;
}

BOOST_AUTO_TEST_SUITE(candidates_of_a_joint)

BOOST_AUTO_TEST_CASE(the_own_choice_is_the_plain_job) {  // property
  Joint joint = priced_joint();
  joint.order.emplace();
  joint.order->boats = 12;
  joint.order->spare = 0.05;
  Parts parts;
  parts.fit = parts.order = parts.strength = true;
  const auto job = work_out(joint, parts);
  BOOST_TEST_REQUIRE(job.has_value());
  const Candidates all = candidates(*job);
  const auto& figures = own_of(all).figures;
  BOOST_TEST_REQUIRE(figures.has_value());
  BOOST_TEST(figures->fasteners == job->layout->count);
  BOOST_TEST(figures->bond_use == job->strength->bond.worst.utilisation);
  const FastenerStrengths& fasteners = job->strength->fasteners;
  BOOST_TEST(figures->worst->mark == fasteners.rows[fasteners.worst].mark);
  BOOST_TEST(figures->worst->utilisation ==
             fasteners.rows[fasteners.worst].utilisation);
  BOOST_TEST(figures->packs == job->adhesive->nominal.packs);
  BOOST_TEST(figures->cost.known());
  BOOST_TEST(figures->cost.priced == *job->order->per_boat);
}

BOOST_AUTO_TEST_CASE(without_an_order_one_boat_pays_for_whole_boxes_and_packs) {
  const Candidates all = candidates_of(priced_joint());
  const CandidateFigures& own = *own_of(all).figures;
  // derived: one box of 100 at 11 for each started hundred, all of one length
  const double boxes = static_cast<double>((own.fasteners + 99) / 100);
  const double paste =
      static_cast<double>(own.packs) * 34 + static_cast<double>(own.nozzles) * 2;
  BOOST_TEST(own.cost.priced == 11 * boxes + paste,
             boost::test_tools::tolerance(1e-12));
}

BOOST_AUTO_TEST_CASE(what_the_joint_file_gives_is_its_own_sizes_alone) {
  Joint joint = priced_joint();
  joint.fastener.lip_hole = Length::mm(6);
  joint.fastener.hull_pilot = Length::mm(3.5);
  joint.fastener.strength.shear_capacity = 1;  // N: next to nothing
  const Candidates all = candidates_of(joint);
  const CandidateFigures& own = *own_of(all).figures;
  const Candidate& other = with_fastener(all, "tapping screw ST5.5");
  BOOST_TEST(own.cost.known());
  BOOST_TEST(!other.figures->cost.known());
  BOOST_TEST((own.worst->governing == FastenerMode::Shank));
  BOOST_TEST(own.worst->utilisation > 100 * other.figures->worst->utilisation);
  // derived: 25 mm down an upright hull, trim 2 mm, less half of the pilot hole
  BOOST_TEST(own.hull_clear->least.in_mm() == 25 - 2 - 3.5 / 2,
             boost::test_tools::tolerance(rounding));
  const Length pilot = *tapping_screw("ST5.5", HeadKind::Pan)->hull_pilot;
  BOOST_TEST(other.figures->hull_clear->least.in_mm() == 25 - 2 - pilot.in_mm() / 2,
             boost::test_tools::tolerance(rounding));
  BOOST_TEST(other.figures->hull_clear->missing == 0u);
}

BOOST_AUTO_TEST_CASE(every_size_of_the_tables_stands_there_once) {
  for (const char* own : {"ST4.8", "#14"}) {  // #14 is another name of 1/4
    Joint joint = strong_joint();
    joint.fastener.size = own;
    joint.fastener.lengths.clear();
    const Candidates all = candidates_of(joint);
    BOOST_TEST(all.size() == fastener_sizes(FastenerKind::TappingScrew).size());
    BOOST_TEST(std::count_if(all.begin(), all.end(),
                             [](const auto& one) { return one.own(); }) == 1);
  }
}

BOOST_AUTO_TEST_CASE(a_size_without_holes_in_the_tables_is_ruled_out_and_says_so) {
  const Candidates all = candidates_of(strong_joint());
  std::size_t without = 0;
  for (const FastenerSize& size : fastener_sizes(FastenerKind::TappingScrew)) {
    if (!size.needs_own_holes) continue;
    ++without;
    const Candidate& candidate = with_fastener(all, "tapping screw " + size.size);
    BOOST_TEST(!candidate.figures.has_value());
    BOOST_TEST_REQUIRE(!candidate.ruled_out.empty());
    BOOST_TEST(candidate.ruled_out.front().find("no table here has a") == 0u);
  }
  BOOST_TEST(without > 0u);
}

BOOST_AUTO_TEST_CASE(without_a_capacity_of_its_own_a_rivet_says_what_is_left_out) {
  Joint joint = strong_joint();
  joint.fastener.kind = FastenerKind::BlindRivet;
  joint.fastener.size = "4.8";
  joint.fastener.lengths.clear();
  joint.fastener.strength = {};
  joint.fastener.strength.shear_capacity = 2000;
  const Candidates all = candidates_of(joint);
  BOOST_TEST(all.size() == fastener_sizes(FastenerKind::BlindRivet).size());
  // the capacity in N is that of 4.8: others say what they were worked without
  BOOST_TEST(own_of(all).notes.size() <
             with_fastener(all, "blind rivet 4").notes.size());
}

BOOST_AUTO_TEST_CASE(an_edge_too_near_for_its_diameter_rules_a_size_out) {
  Joint joint = strong_joint();
  joint.fastener.line = Length::mm(36);
  joint.strength.rules = {"edge_class"};
  const Candidates all = candidates_of(joint);
  // derived: 50 - 36 - 2 = 12 mm to the lip's low edge; 2 d of ST5.5 is 10.92 mm, of
  // ST6.3 12.5 mm
  BOOST_TEST(with_fastener(all, "tapping screw ST5.5").workable());
  const Candidate& wide = with_fastener(all, "tapping screw ST6.3");
  BOOST_TEST_REQUIRE(wide.ruled_out.size() == 1u);  // the check and the rule, told once
  BOOST_TEST(wide.ruled_out.front() ==
             "least distance from a hole to the lip's low edge, trim tolerance taken "
             "off, at S01 (2 d is asked): 12 mm against 12.5 mm");
}

BOOST_AUTO_TEST_CASE(a_gap_outside_the_window_rules_an_adhesive_out) {
  Joint joint = priced_joint();
  joint.adhesive_options = {other_adhesive("stiff"), other_adhesive("runny")};
  joint.adhesive_options[0].gap_min = Length::mm(4);
  joint.adhesive_options[1].gap_max = Length::mm(2.5);
  const Candidates all = candidates_of(joint);
  // derived: the gap is 3 mm all round
  const Candidate& stiff = with_adhesive(all, "stiff");
  BOOST_TEST(stiff.figures->outside.by.in_mm() == 1,
             boost::test_tools::tolerance(rounding));
  BOOST_TEST_REQUIRE(stiff.ruled_out.size() == 1u);
  BOOST_TEST(stiff.ruled_out.front() ==
             "gap of 3 mm on starboard, girth 0 mm, 1 mm under the 4 mm allowed by the "
             "adhesive");
  BOOST_TEST(with_adhesive(all, "runny").figures->outside.by.in_mm() == 0.5,
             boost::test_tools::tolerance(rounding));
  BOOST_TEST(own_of(all).workable());
}

BOOST_AUTO_TEST_CASE(an_adhesive_without_strengths_says_what_it_lacks) {
  Joint joint = strong_joint();
  joint.adhesive_options = {other_adhesive("unknown")};
  joint.adhesive_options[0].strength.peel_strength.reset();
  const Candidates all = candidates_of(joint);
  const Candidate& unknown = with_adhesive(all, "unknown");
  BOOST_TEST(!unknown.figures.has_value());
  BOOST_TEST_REQUIRE(unknown.ruled_out.size() == 1u);
  BOOST_TEST(unknown.ruled_out.front() ==
             "[adhesive] has no peel_strength: `strength` needs the peel strength, "
             "N/mm2; from a test or the data sheet");
}

BOOST_AUTO_TEST_CASE(a_use_over_one_rules_out_and_names_the_place) {
  Joint joint = strong_joint();
  joint.loads->factor_fastener = 100;
  const Candidates all = candidates_of(joint);
  const Candidate& own = own_of(all);
  BOOST_TEST_REQUIRE(own.ruled_out.size() == 1u);
  BOOST_TEST(own.ruled_out.front().find("fasteners alone: use ") == 0u);
}

BOOST_AUTO_TEST_CASE(workable_ones_come_first_then_cost_then_use) {  // property
  Joint joint = priced_joint();
  joint.fastener.line = Length::mm(36);
  joint.adhesive_options = {other_adhesive("dear"), other_adhesive("cheap"),
                            other_adhesive("stiff")};
  joint.adhesive_options[0].pack_price = 100;
  joint.adhesive_options[1].pack_price = 1;
  joint.adhesive_options[2].gap_min = Length::mm(4);
  const Candidates all = candidates_of(joint);
  BOOST_TEST(all[0].adhesive == "cheap");
  BOOST_TEST(all[1].own());
  BOOST_TEST(all[2].adhesive == "dear");
  for (std::size_t i = 0; i + 1 < all.size(); ++i) {
    const Candidate &one = all[i], &next = all[i + 1];
    BOOST_TEST(one.workable() >= next.workable());
    if (one.workable() != next.workable()) continue;
    if (!one.figures || !next.figures) {
      BOOST_TEST(one.figures.has_value() >= next.figures.has_value());
      continue;
    }
    const CandidateFigures &a = *one.figures, &b = *next.figures;
    BOOST_TEST(a.cost.known() >= b.cost.known());
    if (a.cost.known() != b.cost.known()) continue;
    if (a.cost.known()) BOOST_TEST(a.cost.priced <= b.cost.priced);
    if (!a.cost.known() || a.cost.priced == b.cost.priced)
      BOOST_TEST(a.use() <= b.use());
  }
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

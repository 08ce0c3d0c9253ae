#include "joint/documents/seating_text.h"

#include <algorithm>
#include <boost/test/unit_test.hpp>
#include <string>

#include "joint/documents/seating_words.h"
#include "tests/joint/documents/sample_job.h"

namespace sheerlap {
namespace {

const NumberStyle millimetres(LengthUnit::Millimetres, Length::mm(1));
const NumberStyle inches(LengthUnit::Inches, Length::inches(0.0625));

bool holds(const std::string& text, const std::string& part) {
  return text.find(part) != std::string::npos;
}

/// The text on one line, its runs of blanks made one.
std::string unwrapped(std::string text) {
  std::replace(text.begin(), text.end(), '\n', ' ');
  text.erase(std::unique(text.begin(), text.end(),
                         [](char a, char b) { return a == ' ' && b == ' '; }),
             text.end());
  return text;
}

using Steps = std::vector<std::string>;

BOOST_AUTO_TEST_SUITE(seating_text_suite)

BOOST_AUTO_TEST_CASE(steps_say_what_a_builder_does_in_order) {
  BOOST_TEST((seating_steps(sample_job(), millimetres) ==
              Steps{"Squeeze each side in by 6.0 mm at spreader 1 (X 2560) and "
                    "spread each side out by 10.0 mm at spreader 2 (X 4480).",
                    "Set the bow home first and turn the lid down from 4 degrees: it "
                    "clears the hull as moulded by 0.25 mm at the least.",
                    "Move the deck 2.2 mm to port at the bow, 1.2 mm to starboard at "
                    "the stern and 1.0 mm aft.",
                    "Worst gap then 1.30 mm on starboard at girth 2310 along the "
                    "sheer, 0 mm deep: 0.30 mm inside the window."}));
}

BOOST_AUTO_TEST_CASE(a_deck_that_stays_and_a_hull_left_alone_are_said_to) {
  Job job = sample_job();
  Seating& seating = job.going_on->seating;
  seating.squeezes.clear();
  // 0.04 mm is printed as 0.0
  seating.dx = Length::mm(0.04);
  seating.dy = seating.at_bow = seating.at_stern = Length::mm(-0.04);
  seating.turn = Angle();
  const Steps steps = seating_steps(job, millimetres);
  BOOST_TEST_REQUIRE(steps.size() == 3u);
  BOOST_TEST(steps[1] ==
             "Leave the deck where it is drawn: no move betters its worst gap.");
  seating.dy = seating.at_bow = seating.at_stern = Length::mm(2);
  BOOST_TEST(seating_steps(job, millimetres)[1] ==
             "Move the deck 2.0 mm to starboard.");
}

BOOST_AUTO_TEST_CASE(a_clash_says_what_squeeze_lets_the_lid_pass) {
  Job job = sample_job();
  job.joint.turned_entry.reset();
  job.going_on->turned.reset();
  BOOST_TEST(seating_steps(job, millimetres)[1] ==
             "Lower the lid straight down: 0.40 mm are in its way on starboard at "
             "girth 2500 along the sheer; squeeze each side in by 0.40 mm there, on "
             "the hull as moulded, until it is past.");
  job.going_on->straight.squeeze.reset();
  BOOST_TEST(holds(seating_steps(job, millimetres)[1],
                   ", where no squeeze of the sides helps."));
}

BOOST_AUTO_TEST_CASE(a_seating_that_does_not_fit_says_so_first) {
  Job job = sample_job();
  job.going_on->seating.margin = Length::mm(-0.7);
  job.going_on->seating.worst.gap = Length::mm(0.3);
  const Steps expected{
      "Do not lower the lid: no seating fits, the best by 0.70 mm outside the gap "
      "window.",
      "There it is worst: 0.30 mm on starboard at girth 2310 along the sheer, 0 mm "
      "deep.",
      "What holds it: least gap 1.30 mm on starboard at girth 2310 along the sheer, 0 "
      "mm deep; greatest gap 7.70 mm on port at girth 411 along the sheer, 50 mm deep.",
      "Spreader 2 is at its limit: it may not be forced further.",
      "The best there is, to look at and not to glue: squeeze each side in by 6.0 mm "
      "at spreader 1 (X 2560) and spread each side out by 10.0 mm at spreader 2 (X "
      "4480) and move the deck 2.2 mm to port at the bow, 1.2 mm to starboard at the "
      "stern and 1.0 mm aft."};
  BOOST_TEST(seating_steps(job, millimetres) == expected,
             boost::test_tools::per_element());
  job.going_on->seating.squeezes[1].amount = Length::mm(-9);
  BOOST_TEST(seating_steps(job, millimetres)[3] ==
             "No spreader is at its limit: more force would not mend it.");
  job.going_on->seating.squeezes.clear();
  BOOST_TEST(seating_steps(job, millimetres)[3] ==
             "There is no spreader to squeeze the hull with.");
  BOOST_TEST(holds(seating_in_short(job, millimetres), "no seating fits, worst gap"));
}

BOOST_AUTO_TEST_CASE(limits_of_a_boat_read_held_do_not_count_what_holds_it) {
  Job job = sample_job();
  BOOST_TEST(limits_from(job).empty());
  job.boat.emplace();
  job.boat->state = ReadingState::Held;
  const std::string held =
      "The limits of the spreaders count from the hull as it was read: what the "
      "spreaders already do is not in it.";
  BOOST_TEST(limits_from(job) == held);
  BOOST_TEST(holds(unwrapped(seating_text(job, millimetres)), held));
  job.going_on->seating.margin = Length::mm(-0.7);
  BOOST_TEST(holds(seating_steps(job, millimetres)[3], held));
  job.boat->state = ReadingState::Dry;
  BOOST_TEST(limits_from(job) ==
             "The limits of the spreaders count from the hull as it was read.");
}

BOOST_AUTO_TEST_CASE(inches_are_inches_all_through) {
  const Job job = sample_job();
  const std::string text =
      what_to_do(job, inches) + entry_text(job, inches) + seating_text(job, inches);
  // "for each mm" is of a ratio without a unit
  BOOST_TEST(!holds(text, " mm"));
  // derived: 6 / 25.4 = 0.236, 2560 / 25.4 = 100.79
  BOOST_TEST(holds(unwrapped(text), "0.24 in at spreader 1 (X 100.787)"));
}

BOOST_AUTO_TEST_CASE(states_contacts_and_proof_are_shown) {
  const std::string text = unwrapped(seating_text(sample_job(), millimetres));
  for (const char* words :
       {"as drawn least 0.60 starboard 2500 0.0 -0.40",
        "as drawn, hull free least -4.50 starboard 2310 0.0 -5.50 greatest 14.00 port "
        "4600 50.0 -6.00",
        "best seating least 1.30 starboard 2310 0.0 0.30 greatest 7.70 port 411 50.0 "
        "0.30",
        "least 1.30 starboard 2310 0.0 0.750", "greatest 7.70 port 411 50.0 0.250",
        "is under 0.001 mm",
        "Spreader 2 stands on its limit of 10 mm: each mm more would gain 0.250 mm."})
    BOOST_TEST(holds(text, words), words << " in " << text);
}

BOOST_AUTO_TEST_CASE(readings_say_how_far_the_sides_moved_and_the_beam_to_bring_it_to) {
  const std::string text = unwrapped(seating_text(sample_job(), millimetres));
  // derived: seated 2216 + 2 x 1.5; the other reading 2416 - 2 x 1, by its station
  BOOST_TEST(holds(text, "2560.0 2216.0 2231.0 2219.0 2219.0 7.5 1.5 1.5"), text);
  BOOST_TEST(holds(text, "4480.0 2416.0 2394.0 - 2414.0 -11.0 - -1.0 12"), text);
  // to the mould, to the best seating, most
  BOOST_TEST(holds(text, "1 2560.0 9.0 6.0 8.0"), text);
  BOOST_TEST(holds(text, "2 4480.0 -11.0 -10.0 10.0"), text);
}

BOOST_AUTO_TEST_CASE(the_ways_down_are_beside_each_other_and_a_clash_is_mended) {
  const std::string text = unwrapped(entry_text(sample_job(), millimetres));
  for (const char* words :
       {"straight down, low edge -0.40 starboard 2500 50.0 0.00",
        "straight down, to its seat -0.40 starboard 2500 50.0 0.00",
        "turned, bow first, low edge 0.25 starboard 2500 50.0 1.50",
        "To pass straight down: squeeze each side in by 0.40 mm, or lead the lip's low "
        "edge out by 0.40 mm."})
    BOOST_TEST(holds(text, words), words << " in " << text);
  BOOST_TEST(!holds(text, "To pass turned"));
}

BOOST_AUTO_TEST_CASE(gaps_that_all_lie_in_the_middle_leave_nothing_to_hold) {
  Job job = sample_job();
  job.going_on->seating.contacts.clear();
  BOOST_TEST(holds(unwrapped(seating_text(job, millimetres)),
                   "Every gap lies in the middle of the window"));
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

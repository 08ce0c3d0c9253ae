#include "joint/documents/result_json.h"

#include <boost/test/unit_test.hpp>
#include <nlohmann/json.hpp>

#include "tests/joint/documents/sample_job.h"

namespace sheerlap {
namespace {

using Json = nlohmann::ordered_json;

/// The keys of an object in their order, with commas.
std::string keys(const Json& object) {
  std::string text;
  for (const auto& [key, value] : object.items())
    text += (text.empty() ? "" : ",") + key;
  return text;
}

/// The sample with a piece of jig: it is told without the faces it lies on.
Job sample_with_jig() {
  Job job = sample_job();
  JigHole second;
  second.station = 1;
  second.run = Length::mm(90.5);
  second.straight = second.along_chord = Length::mm(90.4);
  second.above_edge = Length::mm(22);
  job.schedule->jig_pieces = {
      {job.schedule->jigs[0], {{}, second}, second.straight, Length::mm(1.5)}};
  return job;
}

Json sample() { return Json::parse(result_json(sample_with_jig())); }

BOOST_AUTO_TEST_SUITE(result_json_suite)

BOOST_AUTO_TEST_CASE(the_keys_of_each_part_keep_their_order) {
  const Json result = sample();
  BOOST_TEST(
      keys(result) ==
      "format,title,defaults,perimeter,fit,entry,seating,adhesive,layout,schedule,"
      "schedule_checks,jigs,schedule_datums,setting_out,order,order_allowances,"
      "order_shelf,"
      "order_total,"
      "order_per_boat,strength,explain,checks");
  BOOST_TEST(keys(result["defaults"][0]) == "key,value,why");
  BOOST_TEST(keys(result["perimeter"]) == "sheer_length,drill_line_length,sides");
  BOOST_TEST(keys(result["perimeter"]["sides"][0]) ==
             "name,sheer_length,drill_line_length,start,end");
  BOOST_TEST(keys(result["checks"][0]) == "id,what,value,limit,unit,state,source");
}

BOOST_AUTO_TEST_CASE(the_keys_of_fit_and_adhesive_keep_their_order) {
  const Json result = sample();
  BOOST_TEST(keys(result["fit"]) ==
             "gap_min,gap_max,gap_mean,gap_min_at,gap_max_at,runs,stations");
  BOOST_TEST(keys(result["fit"]["gap_min_at"]) == "side,girth,depth");
  BOOST_TEST(keys(result["fit"]["runs"][0]) == "side,from,to,verdict,worst,worst_at");
  BOOST_TEST(keys(result["fit"]["stations"][0]) == "side,girth,x,y,z,gaps,station,lap");
  BOOST_TEST(keys(result["adhesive"]) ==
             "joint_volume,bond_area,bead_volume,boat_volume,packs,mass_kg,beads,time,"
             "nozzles,least,most");
  BOOST_TEST(keys(result["adhesive"]["beads"][0]) ==
             "side,from,to,size,area,beads,needed");
}

BOOST_AUTO_TEST_CASE(the_keys_of_layout_schedule_and_order_keep_their_order) {
  const Json result = sample();
  BOOST_TEST(keys(result["layout"]) == "count,largest_pitch,smallest_pitch,sides");
  BOOST_TEST(keys(result["layout"]["sides"][0]) ==
             "name,count,girths,largest_pitch,runs,bridged,why,smallest_pitch");
  BOOST_TEST(keys(result["layout"]["sides"][0]["runs"][0]) == "from,to,spaces,pitch");
  BOOST_TEST(keys(result["layout"]["sides"][0]["bridged"][0]) ==
             "from,to,pitch,limit,what");
  BOOST_TEST(keys(result["layout"]["sides"][0]["why"][0]) == "girth,because");
  BOOST_TEST(
      keys(result["schedule"][0]) ==
      "mark,side,girth,hull_girth,pitch,chord,x,y,z,ax,ay,az,edge_low,edge_top,gap,"
      "stack,length,lip_hole,hull_pilot,countersink,drill_depth,jig,jig_girth,"
      "because,next_jig,lip_depth");
  BOOST_TEST(keys(result["schedule_datums"][0]) == "side,what,x,y,z");
  BOOST_TEST(
      keys(result["jigs"][0]) ==
      "name,side,first,last,holes,girth,from_start,index,piece,chord,middle_off_chord,"
      "hole_list,bushes");
  BOOST_TEST(keys(result["jigs"][0]["hole_list"][0]) ==
             "mark,girth,straight,along_chord,off_chord,above_edge,lean_up,lean_along");
  BOOST_TEST(keys(result["jigs"][0]["bushes"][0]) == "for,bore,outer,count");
  BOOST_TEST(keys(result["setting_out"]) == "running,thickest,leaning_exit,runs,apart");
  BOOST_TEST(keys(result["setting_out"]["runs"][0]) ==
             "side,from,to,spaces,pitch,stepped,rounded");
  BOOST_TEST(keys(result["setting_out"]["apart"]) ==
             "along,across,leaning,off_worst,off_root_sum,hole_worst,hole_root_sum");
  BOOST_TEST(keys(result["setting_out"]["apart"]["along"][0]) == "what,off,source");
  BOOST_TEST(keys(result["order"][0]) == "item,need,packs,pack_size,price,total,unit");
}

BOOST_AUTO_TEST_CASE(workings_say_where_their_numbers_are_from) {
  const Json told = Json::parse(result_json(
      sample_job(), [](const std::string&) { return "yours: joint.toml:31"; }));
  const Json steps = told["explain"][0]["steps"];
  BOOST_TEST(keys(told["explain"][0]) == "figure,what,steps,tells");
  BOOST_TEST(keys(steps[0]) == "letters,what,value,unit,address,from");
  BOOST_TEST(steps[0]["from"] == "yours: joint.toml:31");
  BOOST_TEST(keys(steps[1]) ==
             "letters,what,value,unit,formula,numbers,source,validity");
}

BOOST_AUTO_TEST_CASE(the_keys_of_entry_and_seating_keep_their_order) {
  const Json result = sample();
  const Json& entry = result["entry"];
  BOOST_TEST(keys(entry) == "worst,height,side,girth,squeeze,lead_in,turned");
  BOOST_TEST(keys(entry["turned"]) ==
             "first,angle,worst,height,at_angle,side,girth,low_edge,squeeze,lead_in");
  BOOST_TEST(keys(entry["turned"]["low_edge"]) == "worst,height,at_angle,side,girth");
  const Json& seating = result["seating"];
  BOOST_TEST(keys(seating) ==
             "dx,dy,turn,squeeze,margin,side,girth,depth,gap,as_drawn,gain_left,at_bow,"
             "at_stern,pivot,contacts,readings,free,held,seated,follows");
  const Json& follows = seating["follows"];
  BOOST_TEST(keys(follows) == "drawn,seated");
  BOOST_TEST(keys(follows["seated"]) ==
             "girth,joint_volume,bead_volume,boat_volume,packs,fasteners");
  BOOST_TEST(keys(follows["seated"]["girth"]) == "good,tight,wide,interference");
  BOOST_TEST(keys(follows["seated"]["fasteners"][0]) == "length,count");
  BOOST_TEST(keys(seating["squeeze"][0]) == "at,amount,limit,to_mould,limit_price");
  BOOST_TEST(keys(seating["contacts"][0]) == "side,girth,depth,gap,holds,price");
  BOOST_TEST(keys(seating["readings"][0]) == "at,free,held,seated");
  BOOST_TEST(keys(seating["free"]) == "gap_min,gap_max,gap_min_at,gap_max_at");
  BOOST_TEST(seating["contacts"][1]["holds"] == "gap_max");
  BOOST_TEST(seating["readings"][1]["held"].is_null());
  BOOST_TEST(entry["turned"]["first"] == "bow");
}

BOOST_AUTO_TEST_CASE(parts_that_were_not_worked_out_are_left_out) {
  Job job = sample_job();
  job.fit.reset();
  job.going_on.reset();
  job.adhesive.reset();
  job.layout.reset();
  job.schedule.reset();
  job.order.reset();
  job.strength.reset();
  job.reasons.clear();
  BOOST_TEST(keys(Json::parse(result_json(job))) ==
             "format,title,defaults,perimeter,checks");
}

BOOST_AUTO_TEST_CASE(numbers_come_back_as_they_were) {
  const Json result = sample();
  BOOST_TEST(result["schedule"][0]["x"].get<double>() == 1.0 / 3);
  BOOST_TEST(result["schedule"][0]["y"].get<double>() == -614.25);
}

BOOST_AUTO_TEST_CASE(what_does_not_apply_is_null) {
  const Json result = sample();
  BOOST_TEST(result["schedule"][0]["chord"].is_null());
  BOOST_TEST(result["schedule"][5]["length"].is_null());
  BOOST_TEST(result["schedule"][5]["drill_depth"].is_null());
  BOOST_TEST(result["schedule"][5]["lip_depth"].is_null());
  BOOST_TEST(result["order"][1]["price"].is_null());
  BOOST_TEST(result["checks"][2]["limit"].is_null());
}

BOOST_AUTO_TEST_CASE(a_lid_that_is_not_turned_and_no_squeeze_lets_pass_has_nulls) {
  Job job = sample_job();
  job.going_on->turned.reset();
  job.going_on->straight.squeeze.reset();
  job.going_on->seating.free.reset();
  job.going_on->seating.held.reset();
  const Json result = Json::parse(result_json(job));
  BOOST_TEST(result["entry"]["turned"].is_null());
  BOOST_TEST(result["entry"]["squeeze"].is_null());
  BOOST_TEST(result["seating"]["free"].is_null());
  BOOST_TEST(result["seating"]["held"].is_null());
}

BOOST_AUTO_TEST_CASE(words_are_those_of_the_result) {
  const Json result = sample();
  BOOST_TEST(result["format"] == "sheerlap/1");
  BOOST_TEST(result["perimeter"]["sides"][2]["start"] == "corner");
  BOOST_TEST(result["perimeter"]["sides"][0]["start"] == "smooth");
  BOOST_TEST(result["fit"]["runs"][0]["verdict"] == "tight");
  BOOST_TEST(result["checks"][0]["state"] == "fail");
}

BOOST_AUTO_TEST_CASE(bytes_that_are_no_text_do_not_stop_the_result) {
  Job job = sample_job();
  job.joint.title = "bad \xFF byte";
  // U+FFFD, the replacement character
  BOOST_TEST(Json::parse(result_json(job))["title"] == "bad \xEF\xBF\xBD byte");
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

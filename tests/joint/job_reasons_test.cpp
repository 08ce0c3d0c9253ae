#include "joint/job_reasons.h"

#include <algorithm>
#include <boost/test/unit_test.hpp>
#include <cmath>
#include <map>
#include <nlohmann/json.hpp>
#include <set>
#include <string>
#include <vector>

#include "cli/joint_file.h"
#include "joint/documents/result_json.h"
#include "tests/places.h"

namespace sheerlap {
namespace {

using Json = nlohmann::ordered_json;
using Path = std::vector<std::string>;

Job boat(const char* name) {
  auto file = read_joint_file(fixtures_folder() / name / "joint.toml");
  BOOST_TEST_REQUIRE(file.has_value());
  auto job = work_out(std::move(file->joint), Parts::all());
  BOOST_TEST_REQUIRE(job.has_value());
  return std::move(*job);
}

const Job& demo() {
  static const Job job = boat("demo-640");
  return job;
}

Path split(const std::string& path) {
  Path parts{""};
  for (const char letter : path)
    if (letter == '.')
      parts.emplace_back();
    else
      parts.back() += letter;
  return parts;
}

std::string joined(const Path& parts) {
  std::string path;
  for (const std::string& part : parts) path += (path.empty() ? "" : ".") + part;
  return path;
}

/// Whether a path is one that another stands for; "*" is any member of a list.
bool stands_for(const Path& any, const Path& path) {
  if (any.size() != path.size()) return false;
  for (std::size_t i = 0; i < any.size(); ++i)
    if (any[i] != "*" && any[i] != path[i]) return false;
  return true;
}

/// Every number of a result, by its path.
void take_numbers(const Json& value, Path& path, std::vector<Path>& found) {
  if (value.is_number()) found.push_back(path);
  if (!value.is_structured()) return;
  std::size_t index = 0;
  for (const auto& [key, member] : value.items()) {
    path.push_back(value.is_array() ? std::to_string(index++) : key);
    take_numbers(member, path, found);
    path.pop_back();
  }
}

/// A member of a result, where a list's may also be named by its name or its mark;
/// null if there is none.
const Json* member_at(const Json& result, const Path& path) {
  const Json* at = &result;
  for (const std::string& part : path) {
    if (at->is_object()) {
      if (!at->contains(part)) return nullptr;
      at = &(*at)[part];
      continue;
    }
    const Json* next = nullptr;
    for (std::size_t i = 0; i < at->size(); ++i) {
      const Json& one = (*at)[i];
      const bool named = one.is_object() && (one.value("name", "") == part ||
                                             one.value("mark", "") == part);
      if (named || std::to_string(i) == part) next = &one;
    }
    if (next == nullptr) return nullptr;
    at = next;
  }
  return at;
}

/// Numbers that are no answers: what was put in, and where it is told.
const std::map<std::string, std::string> echoes{
    {"fit.stations.*.x", "sheer.file: x"},
    {"fit.stations.*.y", "sheer.file: y"},
    {"fit.stations.*.z", "sheer.file: z"},
    {"fit.stations.*.lap", "lap.depth, or sheer.file: lap"},
    {"order.*.price", "adhesive.pack_price, adhesive.nozzle_price, fastener.box_price"},
    {"order.*.pack_size", "nozzles and nuts by the piece"},
    {"strength.rules.*.asks_mm", "the rule's row: asks, source and notes"},
    {"strength.rules.*.has_mm", "the rule's row: has"},
    {"checks.*.value", "the check's own words; the number stands in its part too"},
    {"checks.*.limit", "the check's own source"},
};

/// The numbers of a result that neither a reason tells of nor an input echoes.
std::set<std::string> untold(const Job& job) {
  Json result = Json::parse(result_json(job));
  result.erase("explain");
  std::vector<Path> numbers, told;
  Path path;
  take_numbers(result, path, numbers);
  for (const Explanation& reason : job.reasons)
    for (const Told& one : reason.tells) told.push_back(split(one.path));
  for (const auto& [echo, address] : echoes) told.push_back(split(echo));
  std::set<std::string> lost;
  for (Path& number : numbers) {
    const bool known = std::any_of(told.begin(), told.end(), [&](const Path& any) {
      return stands_for(any, number);
    });
    if (known) continue;
    for (std::string& part : number)
      if (part.find_first_not_of("0123456789") == std::string::npos) part = "*";
    lost.insert(joined(number));
  }
  return lost;
}

void check_all_told(const Job& job) {
  const auto lost = untold(job);
  BOOST_TEST(lost.empty());
  for (const std::string& path : lost) BOOST_TEST_MESSAGE("no reason: " << path);
}

/// The line of a reason with some letters.
const Reason* line_of(const Explanation& reason, const std::string& letters) {
  for (const Reason& step : reason.steps)
    if (step.letters == letters) return &step;
  return nullptr;
}

/// The place a reason tells of by name, if one of its paths is a place.
Path place_told(const Explanation& reason, const Told& told) {
  const Path any = split(told.path);
  if (told.path.find('*') == std::string::npos) return any;
  const Path figure = split(reason.figure);
  return stands_for(any, figure) ? figure : Path();
}

const Explanation& reason_of(const std::string& figure) {
  for (const Explanation& reason : demo().reasons)
    if (reason.figure == figure) return reason;
  BOOST_TEST_REQUIRE(false, "no reason of " << figure);
  return demo().reasons.front();
}

BOOST_AUTO_TEST_SUITE(job_reasons)

// property: a number without a reason is a fault, whichever key it is given
BOOST_AUTO_TEST_CASE(every_number_of_the_result_has_a_reason) {
  check_all_told(demo());
  check_all_told(boat("double-ender"));
}

BOOST_AUTO_TEST_CASE(a_number_whose_reason_is_taken_away_is_missed) {
  Job job = demo();
  std::erase_if(job.reasons, [](const Explanation& reason) {
    return reason.figure == "fit.gap_mean";
  });
  BOOST_TEST((untold(job) == std::set<std::string>{"fit.gap_mean"}));
}

// property: what is explained is what is printed
BOOST_AUTO_TEST_CASE(each_working_ends_in_the_number_that_the_result_has) {
  for (const char* name : {"demo-640", "double-ender"}) {
    const Job job = boat(name);
    const Json result = Json::parse(result_json(job));
    std::size_t compared = 0;
    for (const Explanation& reason : job.reasons)
      for (const Told& told : reason.tells) BOOST_TEST_CONTEXT(reason.figure) {
          const Reason* line = line_of(reason, told.letters);
          BOOST_TEST_REQUIRE(line != nullptr);
          const Path place = place_told(reason, told);
          if (place.empty()) continue;
          const Json* number = member_at(result, place);
          BOOST_TEST_REQUIRE((number != nullptr && number->is_number()));
          // the result has all digits; a rounding may differ
          BOOST_TEST(std::abs(number->get<double>() - line->value) <=
                     1e-9 * std::max(1.0, std::abs(line->value)));
          ++compared;
        }
    BOOST_TEST(compared > 80U);
  }
}

BOOST_AUTO_TEST_CASE(a_pitch_is_the_run_over_its_spaces) {
  const Explanation& reason = reason_of("layout.sides.starboard.runs.0.pitch");
  const Reason& pitch = reason.steps.back();
  BOOST_TEST(pitch.formula == "(s_to - s_from)/n");
  // derived: 545 / 6, as the boat's keep-out and its end leave
  BOOST_TEST(pitch.numbers == "(615 - 70)/6");
  BOOST_TEST(pitch.value == 545. / 6, boost::test_tools::tolerance(1e-12));
}

BOOST_AUTO_TEST_CASE(packs_are_worked_from_what_the_user_gave) {
  const Explanation& reason = reason_of("adhesive.boat_volume");
  const Reason* packs = line_of(reason, "n_packs");
  BOOST_TEST_REQUIRE(packs != nullptr);
  BOOST_TEST(packs->formula == "max(1, ceil(V_laid/V_pack))");
  BOOST_TEST(line_of(reason, "w")->origin.address == "adhesive.waste");
  BOOST_TEST(line_of(reason, "V_purge")->origin.address == "adhesive.nozzle_purge");
}

BOOST_AUTO_TEST_CASE(a_gap_says_how_it_was_found_and_from_what) {
  const Explanation& reason = reason_of("fit.gap_min");
  const Reason& gap = reason.steps.back();
  BOOST_TEST(gap.is_found());
  BOOST_TEST(gap.formula.empty());
  BOOST_TEST(gap.found.find("Brent") != std::string::npos);
  BOOST_TEST(gap.accuracy.starts_with("1e-9 mm"));
  BOOST_TEST(line_of(reason, "g_level")->formula ==
             "l_top + (l_low - l_top)*d/lap - (h_top + (h_low - h_top)*d/lap)");
  // derived: the demo's hull face is upright, so that the level gap is the gap
  BOOST_TEST(line_of(reason, "g_level")->value == gap.value,
             boost::test_tools::tolerance(1e-9));
}

BOOST_AUTO_TEST_CASE(every_line_that_is_worked_or_found_has_source_and_validity) {
  for (const Explanation& reason : demo().reasons) BOOST_TEST_CONTEXT(reason.figure) {
      BOOST_TEST_REQUIRE(!reason.steps.empty());
      for (const Reason& step : reason.steps) {
        BOOST_TEST((!step.what.empty() && !step.unit.empty()));
        if (step.is_given())
          BOOST_TEST((!step.origin.address.empty() || !step.origin.words.empty()));
        else
          BOOST_TEST((!step.source.empty() && !step.validity.empty()));
      }
    }
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
}  // namespace sheerlap

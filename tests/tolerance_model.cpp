#include <cstdio>
#include <cstdlib>
#include <ctime>
#include <nlohmann/json.hpp>
#include <string>
#include <string_view>
#include <vector>

#include "cli/joint_file.h"
#include "joint/boat_outcome.h"
#include "joint/job.h"
#include "joint/seating_search.h"
#include "joint/tolerance.h"

/// What another program needs to make up, seat and count the same boats, and what ours
/// says of them: for the comparison in tests/tolerance_speed.sh.
///
///     sheerlap_tolerance_model model JOINT.toml BOATS   the model, and the first boats
///     sheerlap_tolerance_model speed JOINT.toml BOATS THREADS   seconds: wall,
///     processor
namespace sheerlap {
namespace {

using Eigen::Index;
using Json = nlohmann::json;

Json numbers(const Eigen::VectorXd& values) {
  return std::vector<double>(values.begin(), values.end());
}

Json rows(const Eigen::MatrixXd& matrix) {
  Json all = Json::array();
  for (Index row = 0; row < matrix.rows(); ++row)
    all.push_back(numbers(matrix.row(row).transpose()));
  return all;
}

Json law_of(const ProcessError& error, std::size_t number) {
  return {{"number", number},
          {"even", error.law == ErrorLaw::Uniform},
          {"mean", error.mean},
          {"spread", error.spread}};
}

Json errors_of(const BoatModel& model) {
  Json all = Json::array();
  for (const WholeColumn& column : model.whole) {
    Json one = law_of(model.errors[column.error], column.error);
    one["gaps"] = numbers(column.gaps);
    one["volume"] = column.volume_ml;
    one["holes"] = numbers(column.holes);
    all.push_back(one);
  }
  for (const AlongColumn& column : model.along) {
    Json one = law_of(model.errors[column.error], column.error);
    one["basis"] = rows(column.basis);
    one["top"] = numbers(column.top);
    one["low"] = numbers(column.low);
    one["volume"] = numbers(column.volume_ml);
    one["hole_gap"] = column.hole_gap;
    one["hole_way"] = column.hole_way;
    all.push_back(one);
  }
  return all;
}

Json holes_of(const BoatModel& model) {
  Json holes{{"gaps", numbers(model.hole_gaps)},
             {"ways", numbers(model.hole_ways)},
             {"slopes", rows(model.unknowns.holes)}};
  for (const HolePlace& place : model.hole_places) {
    holes["before"].push_back(place.before);
    holes["after"].push_back(place.after);
    holes["share"].push_back(place.share);
  }
  return holes;
}

/// A joint's parts that boats are made from.
struct Ground {
  Job job;
  BoatModel model;
  StretchPlan plan;
  LengthSteps lengths;
};

Ground ground_of(const std::string& path) {
  auto file = read_joint_file(path);
  if (!file || !file->joint.tolerance || !file->joint.adhesive) {
    std::fprintf(stderr, "%s: no joint file with a tolerance and an adhesive\n",
                 path.c_str());
    std::exit(2);
  }
  Parts parts;
  parts.adhesive = parts.layout = parts.schedule = true;
  auto job = work_out(file->joint, parts);
  if (!job) std::exit(2);
  auto model = boat_model(job->joint, job->perimeter, job->schedule->stations,
                          job->adhesive->nominal.joint.in_ml());
  if (!model) std::exit(2);
  StretchPlan plan = stretch_plan(*model, job->perimeter);
  LengthSteps lengths(job->schedule->fastener);
  return {std::move(*job), std::move(*model), std::move(plan), std::move(lengths)};
}

Json boats_of(const Ground& ground, std::size_t boats) {
  const Joint& joint = ground.job.joint;
  BoatJudge judge({ground.model, ground.plan, *joint.adhesive, joint.seating.spreaders,
                   &ground.lengths});
  LaneErrors errors;
  LaneBoats lane;
  BoatOutcome outcome;
  Json all = Json::array();
  for (std::size_t boat = 0; boat < boats; ++boat) {
    BoatLane numbers{joint.tolerance->seed, ErrorSet::First, {}};
    numbers.boats[0] = boat;
    draw_errors(ground.model, numbers, errors);
    apply_errors(ground.model, errors, lane);
    judge.judge(lane, 0, outcome);
    all.push_back({{"margin", outcome.margin_mm},
                   {"need", static_cast<int>(outcome.need)},
                   {"squeeze", outcome.squeeze_mm},
                   {"volume", outcome.volume_ml},
                   {"lengths", outcome.lengths}});
  }
  return all;
}

void print_model(const Ground& ground, std::size_t boats) {
  const Joint& joint = ground.job.joint;
  const BoatModel& model = ground.model;
  Json most = Json::array();
  for (const Spreader& spreader : joint.seating.spreaders)
    most.push_back(spreader.most.in_mm());
  // no other program knows our fasteners: it is given the stack each length serves
  Json served = Json::array();
  const FastenerSpec& fastener = ground.job.schedule->fastener;
  for (const Grip& grip : fastener.grips) served.push_back(grip.greatest.in_mm());
  for (const Length length : ground.lengths.lengths())
    if (fastener.grips.empty())
      served.push_back((length - length_needed(fastener, Length())).in_mm());
  const Json all{{"seed", joint.tolerance->seed},
                 {"least", joint.adhesive->gap_min.in_mm()},
                 {"greatest", joint.adhesive->gap_max.in_mm()},
                 {"furthest", furthest_mm},
                 {"greatest_reach", greatest_reach},
                 {"most", most},
                 {"price", numbers(seating_prices(model.unknowns.gaps.cols()))},
                 {"gaps", numbers(model.gaps)},
                 {"slopes", rows(model.unknowns.gaps)},
                 {"volume", model.volume_ml},
                 {"volume_slope", numbers(model.unknowns.volume_ml)},
                 {"holes", holes_of(model)},
                 {"served", served},
                 {"errors", errors_of(model)},
                 {"boats", boats_of(ground, boats)}};
  std::puts(all.dump().c_str());
}

double wall_seconds() {
  timespec now{};
  clock_gettime(CLOCK_MONOTONIC, &now);
  return static_cast<double>(now.tv_sec) + 1e-9 * static_cast<double>(now.tv_nsec);
}

void print_speed(Ground ground, std::size_t boats, std::size_t threads) {
  ground.job.joint.tolerance->boats = boats;
  const double wall = wall_seconds();
  const std::clock_t processor = std::clock();
  const auto found =
      tolerance(ground.job.joint, ground.job.perimeter,
                {*ground.job.adhesive, &*ground.job.schedule}, {threads, {}, nullptr});
  if (!found) std::exit(2);
  std::printf("%.3f %.3f\n", wall_seconds() - wall,
              static_cast<double>(std::clock() - processor) / CLOCKS_PER_SEC);
}

int run(const std::vector<std::string>& words) {
  const auto number = [&](std::size_t at) {
    return std::strtoul(words[at].c_str(), nullptr, 10);
  };
  if (words.size() == 3 && words[0] == "model")
    print_model(ground_of(words[1]), number(2));
  else if (words.size() == 4 && words[0] == "speed" && number(3) > 0)
    print_speed(ground_of(words[1]), number(2), number(3));
  else
    return 2;
  return 0;
}

}  // namespace
}  // namespace sheerlap

int main(int count, char** words) { return sheerlap::run({words + 1, words + count}); }

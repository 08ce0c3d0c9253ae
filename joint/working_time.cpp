#include "joint/working_time.h"

#include <fmt/format.h>

#include <cassert>
#include <cmath>

namespace sheerlap {
namespace {

constexpr const char* rule_of_thumb =
    "rule of thumb: the working time halves for every 10 degrees C warmer";
constexpr double margin = 0.2;        // common practice, no source
constexpr double reach_degrees = 15;  // of the rule of thumb

}  // namespace

Duration working_time(Duration time_at, double temperature_at, double temperature) {
  PlainWorking work;
  return Duration::minutes(time_to_work(work, time_at, temperature_at, temperature));
}

TimePlan time_plan(const Adhesive& adhesive,
                   const Shop& shop,
                   const AdhesiveAmounts& amounts,
                   std::size_t fasteners) {
  assert(adhesive.working_time && shop.guns > 0 && shop.gun_rate > 0 &&
         shop.drivers > 0 && shop.screw_rate > 0);
  PlainWorking work;
  const TimeParts<double> parts = time_parts(work, shop, amounts, fasteners);
  TimePlan plan;
  plan.dispensing = Duration::minutes(parts.dispensing);
  plan.pack_changes = Duration::minutes(parts.pack_changes);
  plan.seating = Duration::minutes(parts.seating);
  plan.driving = Duration::minutes(parts.driving);
  plan.total = Duration::minutes(parts.total);
  plan.working_time =
      working_time(*adhesive.working_time, adhesive.working_time_at, shop.temperature);
  return plan;
}

Checks time_checks(const Adhesive& adhesive, const Shop& shop, const TimePlan& plan) {
  Checks checks;
  const double total = plan.total.in_minutes();
  const double has = plan.working_time.in_minutes();
  const CheckState state = total > has                  ? CheckState::Fail
                           : total * (1 + margin) > has ? CheckState::Warn
                                                        : CheckState::Pass;
  checks.push_back(
      {"adhesive.working_time",
       fmt::format("from the first adhesive to the last fastener, at {:g} degrees C; a "
                   "fifth of it should be to spare",
                   shop.temperature),
       total, has, "min", state, rule_of_thumb});
  const double away = std::abs(shop.temperature - adhesive.working_time_at);
  checks.push_back(
      {"adhesive.temperature",
       fmt::format("the shop's temperature from that of the working time, {:g} degrees "
                   "C: further off, ask the adhesive's maker",
                   adhesive.working_time_at),
       away, reach_degrees, "degrees C",
       away > reach_degrees ? CheckState::Warn : CheckState::Pass, rule_of_thumb});
  return checks;
}

}  // namespace sheerlap

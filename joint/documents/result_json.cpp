#include "joint/documents/result_json.h"

#include <cmath>

#include "joint/documents/boat_json.h"
#include "joint/documents/jig_json.h"
#include "joint/documents/json_parts.h"
#include "joint/documents/result_object.h"
#include "joint/documents/seating_json.h"
#include "joint/documents/strength_json.h"
#include "joint/documents/wording.h"

namespace sheerlap {
namespace {

Json defaults_json(const Joint& joint) {
  Json list = Json::array();
  for (const DefaultUsed& used : joint.defaults)
    list.push_back({{"key", used.key}, {"value", used.value}, {"why", used.why}});
  return list;
}

Json perimeter_json(const Perimeter& perimeter) {
  Json sides = Json::array();
  for (const PerimeterSide& side : perimeter.sides)
    sides.push_back({{"name", side_word(side.name)},
                     {"sheer_length", number(side.sheer_length)},
                     {"drill_line_length", number(side.drill_line_length)},
                     {"start", word_of(side.start)},
                     {"end", word_of(side.end)}});
  return {{"sheer_length", number(perimeter.sheer_length)},
          {"drill_line_length", number(perimeter.drill_line_length)},
          {"sides", std::move(sides)}};
}

Json checks_json(const Checks& checks) {
  Json list = Json::array();
  for (const Check& check : checks)
    list.push_back(
        {{"id", check.id},
         {"what", check.what},
         {"value", std::isfinite(check.value) ? number(check.value) : Json()},
         {"limit", number(check.limit)},
         {"unit", check.unit},
         {"state", word_of(check.state)},
         {"source", check.source}});
  return list;
}

}  // namespace

Json result_object(const Job& job, const OriginWords& words_of) {
  Json result{{"format", "sheerlap/1"},
              {"title", job.joint.title},
              {"defaults", defaults_json(job.joint)},
              {"perimeter", perimeter_json(job.perimeter)}};
  if (job.boat) result["boat"] = boat_json(*job.boat);
  if (job.fit) result["fit"] = fit_json(*job.fit);
  if (job.going_on) {
    result["entry"] = entry_json(*job.fit, job.joint, *job.going_on);
    result["seating"] = seating_json(*job.going_on, job.boat.has_value());
  }
  if (job.adhesive) result["adhesive"] = adhesive_json(*job.adhesive);
  if (job.layout) result["layout"] = layout_json(*job.layout);
  if (job.schedule) {
    result["schedule"] = stations_json(*job.schedule);
    result["schedule_checks"] = check_lines_json(*job.schedule);
    result["jigs"] = jigs_json(*job.schedule, job.joint.jig);
    result["schedule_datums"] = datums_json(*job.schedule);
    result["setting_out"] = setting_out_json(*job.schedule);
  }
  if (job.order) {
    result["order"] = order_lines_json(*job.order);
    result["order_allowances"] = allowances_json(*job.order);
    result["order_shelf"] = shelf_json(*job.order);
    result["order_total"] = number(job.order->total);
    result["order_per_boat"] = number(job.order->per_boat);
  }
  if (job.strength) result["strength"] = strength_json(*job.strength);
  if (!job.reasons.empty())
    result["explain"] = explanations_json(job.reasons, job.joint, words_of);
  result["checks"] = checks_json(job.checks);
  return result;
}

std::string result_json(const Job& job, const OriginWords& words_of) {
  return json_text(result_object(job, words_of));
}

}  // namespace sheerlap

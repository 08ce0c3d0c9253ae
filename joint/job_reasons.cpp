#include "joint/job_reasons.h"

#include <utility>

#include "joint/adhesive_reasons.h"
#include "joint/boat_reasons.h"
#include "joint/fit_reasons.h"
#include "joint/layout_reasons.h"
#include "joint/order_reasons.h"
#include "joint/perimeter_reasons.h"
#include "joint/schedule_reasons.h"
#include "joint/seated_reasons.h"
#include "joint/seating_reasons.h"

namespace sheerlap {
namespace {

void append(Explanations& all, Explanations more) {
  for (Explanation& one : more) all.push_back(std::move(one));
}

}  // namespace

Explanations reasons_of(const Job& job) {
  Explanations reasons = perimeter_reasons(job.perimeter);
  if (job.boat) append(reasons, boat_reasons(*job.boat));
  if (job.fit)
    append(reasons, fit_reasons(job.perimeter, *job.fit,
                                job.boat ? HullFrom::Readings : HullFrom::Drawing));
  if (job.going_on) append(reasons, seating_reasons(job.joint, *job.going_on));
  if (job.going_on && job.going_on->seated)
    append(reasons, seated_reasons(*job.going_on->seated));
  if (job.adhesive)
    append(reasons, adhesive_reasons(job.joint, *job.adhesive,
                                     job.layout ? job.layout->count : 0));
  if (job.layout) append(reasons, layout_reasons(*job.layout));
  if (job.schedule)
    append(reasons, schedule_reasons(job.joint, job.perimeter, *job.schedule));
  if (job.order)
    append(reasons, order_reasons(job.joint, *job.adhesive, *job.schedule, *job.order));
  if (job.strength) append(reasons, job.strength->reasons);
  return reasons;
}

}  // namespace sheerlap

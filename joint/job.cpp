#include "joint/job.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <functional>
#include <future>
#include <set>
#include <string>
#include <utility>
#include <vector>

#include "joint/job_on_perimeter.h"
#include "joint/job_reasons.h"
#include "joint/seated_joint.h"
#include "joint/strength_needs.h"
#include "joint/strength_pitch.h"

namespace sheerlap {
namespace {

/// A part that cannot be worked out for want of tables.
struct Lack {
  std::string part;
  std::vector<std::string> tables;
};

/// Takes out of `parts` those whose tables the joint does not have.
std::vector<Lack> take_out_lacking(Parts& parts, const Joint& joint) {
  std::vector<Lack> lacking;
  const auto consider = [&](bool& wanted, const char* part, bool needs_order) {
    std::vector<std::string> tables;
    if (!joint.adhesive) tables.push_back("adhesive");
    if (needs_order && !joint.order) tables.push_back("order");
    if (!wanted || tables.empty()) return;
    wanted = false;
    lacking.push_back({part, std::move(tables)});
  };
  consider(parts.fit, "fit", false);
  consider(parts.adhesive, "adhesive", false);
  consider(parts.order, "order", true);
  return lacking;
}

/// Whether the strength cannot be worked out; one without loads is then not asked for.
Errors take_out_strength(Parts& parts, const Joint& joint) {
  if (!parts.strength) return {};
  if (parts.leave_out && !joint.loads) {
    parts.strength = false;
    return {};
  }
  Errors lacks = strength_lacks(joint);
  parts.strength = lacks.empty();
  return lacks;
}

/// What a part takes from a table, for the message that it is missing.
std::string needed_of(const std::string& part, const std::string& table) {
  if (table == "order") return "boats and spare";
  return part == "fit" ? "gap_min and gap_max" : "gap window, bead sizes and pack";
}

Errors lacking_errors(const std::vector<Lack>& lacking) {
  Errors errors;
  for (const Lack& lack : lacking)
    for (const std::string& table : lack.tables)
      errors.push_back({ErrorKind::InvalidInput, table,
                        fmt::format("[{}] is missing: `{}` needs its {}", table,
                                    lack.part, needed_of(lack.part, table))});
  return errors;
}

Check left_out(const Lack& lack) {
  return {"job.left_out",
          fmt::format("`{}` is left out: the joint file has no [{}]", lack.part,
                      fmt::join(lack.tables, "] and no [")),
          static_cast<double>(lack.tables.size()),
          std::nullopt,
          "",
          CheckState::Warn,
          "the joint file"};
}

Check strength_left_out(const Errors& lacks) {
  std::string words;
  for (const Error& lack : lacks) words += (words.empty() ? "" : "; ") + lack.message;
  return {"job.left_out",
          "`strength` is left out: " + words,
          static_cast<double>(lacks.size()),
          std::nullopt,
          "",
          CheckState::Warn,
          "the joint file"};
}

/// Collects the errors of the parts, each once.
class ErrorList {
 public:
  void add(const Errors& more) {
    for (const Error& error : more)
      if (known_.emplace(error.where, error.message).second) errors_.push_back(error);
  }
  /// The value of a result; nothing if it failed, and then its errors are kept.
  template <class T>
  std::optional<T> take(Result<T> result) {
    if (result) return std::move(*result);
    add(result.error());
    return std::nullopt;
  }
  bool empty() const { return errors_.empty(); }
  Errors release() { return std::move(errors_); }

 private:
  Errors errors_;
  std::set<std::pair<std::string, std::string>> known_;  ///< addresses and messages
};

void add_checks(Checks& checks, const Checks& more) {
  checks.insert(checks.end(), more.begin(), more.end());
}

Checks all_checks(const Job& job, const std::vector<Lack>& lacking) {
  Checks checks;
  for (const Lack& lack : lacking) checks.push_back(left_out(lack));
  add_checks(checks, job.perimeter.checks);
  if (job.fit) add_checks(checks, job.fit->checks);
  if (job.going_on) add_checks(checks, job.going_on->checks);
  if (job.layout) add_checks(checks, job.layout->checks);
  if (job.schedule) add_checks(checks, job.schedule->checks);
  if (job.adhesive) add_checks(checks, job.adhesive->checks);
  if (job.order) add_checks(checks, job.order->checks);
  if (job.strength) add_checks(checks, job.strength->checks);
  return checks;
}

/// Adds the parts that the parts asked for need.
Parts with_needs(Parts parts, const Joint& joint) {
  if (parts.order) parts.adhesive = parts.schedule = true;
  if (parts.adhesive && joint.shop) parts.layout = true;
  if (parts.strength) parts.schedule = true;
  if (parts.schedule) parts.layout = true;
  return parts;
}

/// The layout, also by what the strength allows where the joint file leaves it to that.
Result<Layout> layout_of(const Joint& joint, const Perimeter& perimeter) {
  if (!joint.layout.by_strength) return layout(joint, perimeter);
  const auto limits = strength_pitch(joint, perimeter);
  if (!limits) return tl::unexpected(limits.error());
  return layout(joint, perimeter, *limits);
}

/// Whether it is asked how the lid goes on, beside its fit.
enum class Lid { AsDrawn, GoingOn };

/// What a job is given beside its joint and perimeter.
struct Given {
  Lid lid = Lid::GoingOn;
  const Layout* layout = nullptr;  ///< where the holes are those of another job
};

/// Works out the parts after the fit.
void work_out_rest(Job& job,
                   const Parts& parts,
                   const Layout* laid_out,
                   ErrorList& errors) {
  if (parts.layout)
    job.layout =
        laid_out ? *laid_out : errors.take(layout_of(job.joint, job.perimeter));
  if (parts.schedule && job.layout)
    job.schedule = errors.take(schedule(job.joint, job.perimeter, *job.layout));
  if (parts.adhesive)
    job.adhesive = errors.take(
        adhesive_plan(job.joint, job.perimeter, job.layout ? job.layout->count : 0));
  if (parts.order && job.adhesive && job.schedule)
    job.order = order(job.joint, *job.adhesive, *job.schedule);
  if (parts.strength && job.schedule)
    job.strength =
        errors.take(strength(job.joint, job.perimeter, *job.layout, *job.schedule));
}

/// What follows from the fit as drawn, from the parts there are already if they are.
Result<JointFollows> drawn_follows(const Job& job, const Layout& holes) {
  if (job.adhesive && job.schedule)
    return JointFollows{verdict_lengths(*job.fit), job.adhesive->nominal,
                        fasteners_by_length(*job.schedule), std::nullopt};
  return joint_follows(job.joint, job.perimeter, *job.fit, holes);
}

/// Adds what follows from the seating, where anything does.
void add_seated(Job& job, const Layout* laid_out) {
  const Layout* known = job.layout ? &*job.layout : laid_out;
  const auto holes =
      known ? Result<Layout>(*known) : layout_of(job.joint, job.perimeter);
  if (!holes) return;
  auto seated = std::async(std::launch::async, seated_follows, std::cref(job.joint),
                           std::cref(job.perimeter), std::cref(*holes),
                           std::cref(job.going_on->seating.corrections));
  auto drawn = drawn_follows(job, *holes);
  auto found = seated.get();
  if (!drawn || !found) return;
  job.going_on->checks.push_back(seated_entry_check(job.joint, *found->entry));
  job.going_on->seated = SeatedJoint{std::move(*drawn), std::move(*found)};
}

void work_out_parts(Job& job,
                    const Parts& parts,
                    const Given& given,
                    ErrorList& errors) {
  if (parts.fit) job.fit = errors.take(fit(job.joint, job.perimeter));
  if (!job.fit || given.lid == Lid::AsDrawn)
    return work_out_rest(job, parts, given.layout, errors);
  // how the lid goes on takes as long as all the rest, which does not need it
  auto lid_goes_on = std::async(std::launch::async, going_on, std::cref(job.joint),
                                std::cref(job.perimeter));
  ErrorList of_rest;
  work_out_rest(job, parts, given.layout, of_rest);
  job.going_on = errors.take(lid_goes_on.get());
  errors.add(of_rest.release());
  if (job.going_on) add_seated(job, given.layout);
}

/// Works out the parts of a joint whose estimates are made.
Result<Job> work_out_estimated(Joint joint,
                               Result<Perimeter> on,
                               const Parts& parts,
                               const Given& given) {
  Parts asked = parts;
  Job job;
  job.joint = std::move(joint);
  const std::vector<Lack> lacking = take_out_lacking(asked, job.joint);
  const Errors no_strength = take_out_strength(asked, job.joint);
  ErrorList errors;
  if (!parts.leave_out) {
    errors.add(lacking_errors(lacking));
    errors.add(no_strength);
  }
  std::optional<Perimeter> line = errors.take(std::move(on));
  if (!line) return tl::unexpected(errors.release());
  job.perimeter = std::move(*line);
  // what a part that lacks its own table needs is tried too, for its errors
  Parts tried = with_needs(parts, job.joint);
  take_out_lacking(tried, job.joint);
  take_out_strength(tried, job.joint);
  work_out_parts(job, tried, given, errors);
  if (!errors.empty()) return tl::unexpected(errors.release());
  job.checks = all_checks(job, lacking);
  job.reasons = reasons_of(job);
  if (!no_strength.empty()) job.checks.push_back(strength_left_out(no_strength));
  return job;
}

}  // namespace

Result<Job> work_out(Joint joint, const Parts& parts) {
  joint = with_estimates(std::move(joint));
  auto line = perimeter(joint);
  return work_out_estimated(std::move(joint), std::move(line), parts, {});
}

Result<Job> work_out_on(Joint joint, const Perimeter& perimeter, const Parts& parts) {
  return work_out_estimated(with_estimates(std::move(joint)), perimeter, parts,
                            {Lid::AsDrawn, nullptr});
}

Result<Job> work_out_on(Joint joint,
                        const Perimeter& perimeter,
                        const Layout& layout,
                        const Parts& parts) {
  // the hull stands where it was read; what its beams were at another time is past
  joint.seating.readings.clear();
  return work_out_estimated(with_estimates(std::move(joint)), perimeter, parts,
                            {Lid::GoingOn, &layout});
}

Result<Job> try_out(Joint joint) {
  auto job = work_out(std::move(joint), Parts::all());
  if (!job) return job;
  Parts parts = Parts::all();
  const std::vector<Lack> lacking = take_out_lacking(parts, job->joint);
  const Errors no_strength = take_out_strength(parts, job->joint);
  Job input;
  input.joint = std::move(job->joint);
  input.perimeter = std::move(job->perimeter);
  input.checks = all_checks(input, lacking);
  input.reasons = reasons_of(input);
  if (!no_strength.empty()) input.checks.push_back(strength_left_out(no_strength));
  return input;
}

CheckState verdict(const Checks& checks) {
  CheckState worst = CheckState::Pass;
  for (const Check& check : checks) worst = std::max(worst, check.state);
  return worst;
}

}  // namespace sheerlap

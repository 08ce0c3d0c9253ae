#include "joint/documents/report.h"

#include <fmt/format.h>

#include <cassert>

#include "joint/documents/adhesive_text.h"
#include "joint/documents/boat_text.h"
#include "joint/documents/boat_words.h"
#include "joint/documents/check_text.h"
#include "joint/documents/csv_files.h"
#include "joint/documents/explain_text.h"
#include "joint/documents/fit_text.h"
#include "joint/documents/hole_explanations.h"
#include "joint/documents/hole_text.h"
#include "joint/documents/jigs_text.h"
#include "joint/documents/layout_text.h"
#include "joint/documents/options_text.h"
#include "joint/documents/order_text.h"
#include "joint/documents/perimeter_text.h"
#include "joint/documents/result_json.h"
#include "joint/documents/schedule_text.h"
#include "joint/documents/strength_text.h"
#include "joint/documents/summary_text.h"
#include "joint/documents/text_table.h"
#include "joint/documents/tolerance_text.h"

namespace sheerlap {
namespace {

std::string name_of(Subject subject) {
  switch (subject) {
    case Subject::Input:
      return "the input";
    case Subject::Fit:
      return "fit of the lid over the box";
    case Subject::Adhesive:
      return "adhesive";
    case Subject::Layout:
      return "layout of the fasteners";
    case Subject::Schedule:
      return "drilling schedule";
    case Subject::Jigs:
      return "the jigs, piece by piece";
    case Subject::Strength:
      return "what bond and fasteners carry";
    case Subject::Order:
      return "order";
    case Subject::Summary:
      return "the joint in short";
  }
  assert(false);
  return "";
}

std::string body_of(Subject subject,
                    const Job& job,
                    const NumberStyle& style,
                    const OriginWords& origin) {
  switch (subject) {
    case Subject::Input:
      return perimeter_text(job, style) + "\n" + input_text(job, style);
    case Subject::Fit:
      return fit_text(job, style);
    case Subject::Adhesive:
      return adhesive_text(job, style);
    case Subject::Layout:
      return layout_text(job, style);
    case Subject::Schedule:
      return schedule_text(job, style);
    case Subject::Jigs:
      return jigs_text(job, style);
    case Subject::Strength:
      return strength_text(job, style, origin);
    case Subject::Order:
      return order_text(job, style);
    case Subject::Summary:
      return summary_text(job, style);
  }
  assert(false);
  return "";
}

/// The parts of the result that a report tells of.
std::vector<std::string> parts_of(Subject subject) {
  switch (subject) {
    case Subject::Input:
      return {"perimeter"};
    case Subject::Fit:
      return {"perimeter", "boat", "fit", "entry", "seating"};
    case Subject::Adhesive:
      return {"boat", "adhesive"};
    case Subject::Layout:
      return {"perimeter", "layout"};
    case Subject::Schedule:
      return {"boat", "schedule", "setting_out", "jigs"};
    case Subject::Jigs:
      return {"jigs"};
    case Subject::Strength:
      return {"strength"};
    case Subject::Order:
      return {"order"};
    case Subject::Summary:
      break;
  }
  return {""};
}

/// The place in the result of the correction that a report explains: the first that one
/// reading gives. The others are had likewise, each from its own line.
std::string told_correction(const Boat& boat) {
  std::size_t number = 0;
  for (const SideCorrections& side : boat.corrections)
    for (const GapCorrection& correction : side.at) {
      if (correction.readings.size() == 1)
        return fmt::format("boat.corrections.{}.", number);
      ++number;
    }
  return "boat.corrections.0.";
}

/// The workings behind some parts of the result.
Explanations reasons_behind(const std::vector<std::string>& parts, const Job& job) {
  Explanations behind;
  const std::string told = job.boat ? told_correction(*job.boat) : "";
  for (const std::string& part : parts)
    for (const Explanation& one : job.reasons) {
      const bool repeats =
          one.figure.starts_with("boat.corrections.") && !one.figure.starts_with(told);
      if (one.figure.starts_with(part) && !repeats) behind.push_back(one);
    }
  return behind;
}

std::string reasons_text(const Explanations& reasons,
                         const Job& job,
                         const ReportStyle& style) {
  if (!style.explain) return "";
  if (reasons.empty())
    return "Reasons\nNo figure above is worked by a formula that is shown here.\n";
  return explain_text(reasons, job.joint, style.origin);
}

std::string heading(const std::string& name, const Job& job, const ReportStyle& style) {
  const std::string whose = job.boat ? ", " + boat_name(*job.boat) : "";
  std::string text = wrapped(job.joint.title + ": " + name + whose);
  if (style.date) text += *style.date + "\n";
  return text + verdict_line(job.checks) + "\n";
}

/// The heading and the parts below it, those that are not empty.
std::string joined(std::string heading, const std::vector<std::string>& parts) {
  for (const std::string& part : parts)
    if (!part.empty()) heading += "\n" + part;
  return heading;
}

}  // namespace

std::string report(Subject subject, const Job& job, const ReportStyle& style) {
  const NumberStyle numbers(style.unit, job.joint.layout.round_to);
  return joined(heading(name_of(subject), job, style),
                {job.boat ? boat_text(job, numbers) : "",
                 body_of(subject, job, numbers, style.origin),
                 check_list(job.checks, numbers), default_list(job.joint, numbers),
                 reasons_text(reasons_behind(parts_of(subject), job), job, style),
                 caution_list()});
}

std::string hole_report(const std::string& mark,
                        const Job& job,
                        const ReportStyle& style) {
  const NumberStyle numbers(style.unit, job.joint.layout.round_to);
  return joined(heading("hole " + mark, job, style),
                {hole_text(job, mark, numbers),
                 explain_text(hole_explanations(job, mark), job.joint, style.origin),
                 caution_list()});
}

std::string options_report(const Candidates& candidates,
                           const Job& job,
                           const ReportStyle& style) {
  const NumberStyle numbers(style.unit, job.joint.layout.round_to);
  return joined(heading("fasteners and adhesives to choose from", job, style),
                {options_text(candidates, job.joint, numbers), caution_list()});
}

std::string tolerance_report(const ToleranceJob& job, const ReportStyle& style) {
  const NumberStyle numbers(style.unit, job.job.joint.layout.round_to);
  return joined(heading("how many boats in a hundred will fit", job.job, style),
                {tolerance_text(job, numbers), check_list(job.job.checks, numbers),
                 default_list(job.job.joint, numbers),
                 reasons_text(reasons_behind({"tolerance"}, job.job), job.job, style),
                 caution_list()});
}

std::vector<Document> documents(const Job& job, const ReportStyle& style) {
  std::vector<Document> files;
  const auto add = [&](const char* name, Subject subject) {
    files.push_back({name, report(subject, job, style)});
  };
  add("summary.txt", Subject::Summary);
  if (job.fit) {
    add("fit.txt", Subject::Fit);
    files.push_back({"fit.csv", fit_csv(*job.fit, style.unit)});
  }
  if (job.layout) add("layout.txt", Subject::Layout);
  if (job.schedule) {
    add("schedule.txt", Subject::Schedule);
    for (const PerimeterSide& side : job.perimeter.sides)
      files.push_back({"schedule-" + side_word(side.name) + ".csv",
                       schedule_csv(*job.schedule, side.name, style.unit)});
    add("jigs.txt", Subject::Jigs);
  }
  if (job.adhesive) add("adhesive.txt", Subject::Adhesive);
  if (job.strength) add("strength.txt", Subject::Strength);
  if (job.order) {
    add("order.txt", Subject::Order);
    files.push_back({"order.csv", order_csv(*job.order, *job.joint.adhesive)});
    files.push_back({"order-allowances.csv", allowances_csv(*job.order)});
  }
  files.push_back({"result.json", result_json(job, style.origin)});
  return files;
}

const std::vector<std::string>& document_names() {
  static const std::vector<std::string> names{
      "summary.txt",       "fit.txt",
      "fit.csv",           "layout.txt",
      "schedule.txt",      "schedule-starboard.csv",
      "schedule-port.csv", "schedule-transom.csv",
      "jigs.txt",          "adhesive.txt",
      "strength.txt",      "order.txt",
      "order.csv",         "order-allowances.csv",
      "result.json"};
  return names;
}

}  // namespace sheerlap

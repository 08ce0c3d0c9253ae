#pragma once

#include <optional>
#include <string>
#include <vector>

#include "joint/candidates.h"
#include "joint/documents/number_style.h"
#include "joint/documents/origin_words.h"
#include "joint/job.h"

namespace sheerlap {

struct ToleranceJob;

/// What a report is about; a job must hold what its subject needs.
enum class Subject {
  Input,
  Fit,
  Adhesive,
  Layout,
  Schedule,
  Jigs,
  Strength,
  Order,
  Summary
};

/// How reports are written.
struct ReportStyle {
  LengthUnit unit = LengthUnit::Millimetres;
  std::optional<std::string> date = {};  ///< printed under the title if given
  OriginWords origin = {};               ///< where the user's values stand
  bool explain = false;                  ///< a report ends with its figures' workings
};

/// A report for people: title, verdict, body, checks that fail or warn, defaults used,
/// cautions.
std::string report(Subject subject, const Job& job, const ReportStyle& style);

/// A report of one hole, with the workings of what it carries.
/// @param job   with its schedule
/// @param mark  of one of its holes
std::string hole_report(const std::string& mark,
                        const Job& job,
                        const ReportStyle& style);

/// The fasteners and adhesives to choose from.
/// @param candidates  of the job
std::string options_report(const Candidates& candidates,
                           const Job& job,
                           const ReportStyle& style);

/// How many boats in a hundred will fit.
std::string tolerance_report(const ToleranceJob& job, const ReportStyle& style);

/// A file of a job.
struct Document {
  std::string name;
  std::string text;
};

/// Every document of a job, of the parts it holds, in a fixed order; the last is
/// "result.json".
std::vector<Document> documents(const Job& job, const ReportStyle& style);

/// The names a job's documents can have.
const std::vector<std::string>& document_names();

}  // namespace sheerlap

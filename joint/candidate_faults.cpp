#include "joint/candidate_faults.h"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

#include "joint/job.h"
#include "joint/worded_length.h"

namespace sheerlap {
namespace {

/// What a fault says, and the two lengths it goes by, so that a rule that two checks
/// hold the joint to is told once.
struct Fault {
  std::string words;
  std::string of;  ///< the place measured
  double has = 0;
  double asks = 0;
};

class FaultList {
 public:
  void add(Fault fault) {
    const auto same = [&](const Fault& one) {
      return !fault.of.empty() && one.of == fault.of && one.has == fault.has &&
             one.asks == fault.asks;
    };
    if (std::none_of(faults_.begin(), faults_.end(), same))
      faults_.push_back(std::move(fault));
  }
  std::vector<std::string> words() const {
    std::vector<std::string> all;
    for (const Fault& fault : faults_) all.push_back(fault.words);
    return all;
  }

 private:
  std::vector<Fault> faults_;
};

/// "lip" or "hull", for an edge distance of either.
std::string edge_of(const std::string& words) {
  if (words.find("lip's low edge") != std::string::npos) return "lip";
  return words.find("hull's top edge") != std::string::npos ? "hull" : "";
}

void add_schedule(FaultList& faults, const Schedule& schedule) {
  for (const Check& check : schedule.checks) {
    if (check.state != CheckState::Fail || !check.id.starts_with("schedule.")) continue;
    const double limit = check.limit.value_or(0);
    // the words of these two hold what matters
    const bool told = check.id == "schedule.hull_met" || check.id == "schedule.length";
    faults.add(
        {told ? check.what
              : fmt::format("{}: {} against {}", check.what,
                            worded(Length::mm(check.value)), worded(Length::mm(limit))),
         told ? "" : edge_of(check.what), check.value, limit});
  }
}

void add_rules(FaultList& faults, const RuleRows& rows) {
  for (const RuleRow& row : rows)
    if (row.chosen && row.state == RuleState::Fail)
      faults.add(
          {fmt::format("chosen rule {}: {} {}{}, {} asked", row.rule, row.has_words,
                       worded(*row.has), row.where.empty() ? "" : " " + row.where,
                       worded(*row.asks)),
           edge_of(row.has_words), row.has->in_mm(), row.asks->in_mm()});
}

void add_uses(FaultList& faults, const Strength& strength) {
  const BondPoint& bond = strength.bond.worst;
  if (!(bond.utilisation <= 1))
    faults.add({fmt::format("bond: use {:.2f} at {}, {}", bond.utilisation,
                            place_words(bond), mode_words(bond.mode)),
                ""});
  if (strength.fasteners.rows.empty()) return;
  const FastenerRow& row = strength.fasteners.rows[strength.fasteners.worst];
  if (!(row.utilisation <= 1))
    faults.add({fmt::format("fasteners alone: use {:.2f} at {}, {}", row.utilisation,
                            row.mark, mode_words(row.governing)),
                ""});
}

}  // namespace

std::vector<std::string> candidate_faults(const Job& job, const GapOutside& outside) {
  FaultList faults;
  if (outside.by > Length())
    faults.add({fmt::format("gap of {} on {}, girth {}, {} {} the {} allowed by the "
                            "adhesive",
                            worded(outside.gap), side_word(outside.side),
                            worded(outside.girth), worded(outside.by),
                            outside.wide ? "over" : "under",
                            worded(outside.wide ? job.joint.adhesive->gap_max
                                                : job.joint.adhesive->gap_min)),
                ""});
  add_schedule(faults, *job.schedule);
  add_rules(faults, job.strength->rules);
  add_uses(faults, *job.strength);
  return faults.words();
}

}  // namespace sheerlap

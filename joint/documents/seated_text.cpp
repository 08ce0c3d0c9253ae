#include "joint/documents/seated_text.h"

#include <fmt/format.h>

#include <algorithm>
#include <optional>
#include <set>

#include "joint/documents/drilling_words.h"
#include "joint/documents/text_table.h"
#include "joint/documents/wording.h"
#include "joint/fasteners.h"
#include "joint/seated_joint.h"

namespace sheerlap {
namespace {

std::size_t count_of(const JointFollows& joint, const std::optional<Length>& length) {
  const auto found =
      std::find_if(joint.fasteners.begin(), joint.fasteners.end(),
                   [&](const FastenersOfLength& of) { return of.length == length; });
  return found == joint.fasteners.end() ? 0 : found->count;
}

void add_girths(TextTable& table, const SeatedJoint& joint, const NumberStyle& style) {
  const auto add = [&](const char* name, Length VerdictLengths::*girth) {
    table.rows.push_back({name, style.running(joint.drawn.girth.*girth),
                          style.running(joint.seated.girth.*girth), style.unit_name()});
  };
  add("girth inside the window", &VerdictLengths::good);
  add("tight", &VerdictLengths::tight);
  add("wide", &VerdictLengths::wide);
  add("hull and lid touch", &VerdictLengths::interference);
}

void add_adhesive(TextTable& table, const SeatedJoint& joint) {
  const auto add = [&](const char* name, Volume AdhesiveAmounts::*volume) {
    const auto text = [&](const JointFollows& of) {
      return decimals((of.adhesive.*volume).in_ml(), 0);
    };
    table.rows.push_back({name, text(joint.drawn), text(joint.seated), "ml"});
  };
  add("adhesive in the joint", &AdhesiveAmounts::joint);
  add("with beads, waste and nozzles", &AdhesiveAmounts::boat);
  table.rows.push_back({"packs", fmt::format("{}", joint.drawn.adhesive.packs),
                        fmt::format("{}", joint.seated.adhesive.packs), ""});
}

void add_fasteners(TextTable& table,
                   const SeatedJoint& joint,
                   const NumberStyle& tools) {
  std::set<Length> lengths;
  bool without = false;
  for (const auto* of : {&joint.drawn, &joint.seated})
    for (const FastenersOfLength& one : of->fasteners)
      one.length ? void(lengths.insert(*one.length)) : void(without = true);
  const auto add = [&](const std::string& name, const std::optional<Length>& length) {
    table.rows.push_back({name, fmt::format("{}", count_of(joint.drawn, length)),
                          fmt::format("{}", count_of(joint.seated, length)), ""});
  };
  for (const Length length : lengths)
    add("fasteners of " + tools.size_with_unit(length), length);
  if (without) add("no length in stock serves", std::nullopt);
}

/// The unit that the fastener's lengths are bought in.
NumberStyle length_style(const Job& job, const NumberStyle& style) {
  if (job.schedule) return tool_style(job.schedule->fastener, style);
  // there is one, or no length could have been chosen for the holes
  const auto spec = fastener(job.joint.fastener);
  return spec ? tool_style(*spec, style) : style;
}

}  // namespace

std::string seated_text(const Job& job, const NumberStyle& style) {
  if (!job.going_on->seated) return "";
  const SeatedJoint& joint = *job.going_on->seated;
  TextTable table;
  table.columns = {{{"for one boat"}, Align::Left},
                   {{job.boat ? "as read" : "as drawn"}},
                   {{"seated"}},
                   {{"unit"}, Align::Left}};
  add_girths(table, joint, style);
  add_adhesive(table, joint);
  add_fasteners(table, joint, length_style(job, style));
  return "\nWhat follows from it\n" +
         wrapped(
             "With the lid there, and the hull squeezed so until the adhesive has set; "
             "the holes stay where the jig has them.") +
         text_of(table);
}

}  // namespace sheerlap

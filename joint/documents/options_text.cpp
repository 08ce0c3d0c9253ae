#include "joint/documents/options_text.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <cmath>

#include "joint/documents/bond_text.h"
#include "joint/documents/text_table.h"
#include "joint/documents/wording.h"

namespace sheerlap {
namespace {

std::string heading(const Joint& joint, const NumberStyle& style) {
  const FastenerChoice& own = joint.fastener;
  const auto options = joint.adhesive_options.size();
  return wrapped(fmt::format(
      "The whole joint worked with every {} the tables here have, in place of {}, and "
      "with {} in place of the joint's own. Those that nothing speaks against come "
      "first; then by cost, those whose cost is known first; then by the greater use. "
      "Lengths in {}.",
      word_of(own.kind), own.size,
      options == 0 ? "no other adhesive ([[adhesive_option]] gives none)"
                   : counted(options, "other adhesive"),
      style.unit_words()));
}

std::string name_of(const Candidate& candidate) {
  if (candidate.own())
    return fmt::format("the joint's own: {}, {}", candidate.fastener,
                       candidate.adhesive);
  return candidate.own_adhesive ? candidate.fastener : candidate.adhesive;
}

/// What a boat costs; behind what has a price a plus for what has none.
std::string cost_words(const CandidateCost& cost) {
  if (cost.known()) return decimals(cost.priced, 2);
  return cost.priced > 0 ? decimals(cost.priced, 2) + " +" : "-";
}

std::vector<std::string> row_of(std::size_t place,
                                const Candidate& candidate,
                                const NumberStyle& style) {
  std::vector<std::string> row{fmt::format("{}", place),
                               candidate.workable() ? "" : "out"};
  if (candidate.figures) {
    const CandidateFigures& figures = *candidate.figures;
    row.push_back(fmt::format("{}", figures.fasteners));
    row.push_back(use_text(figures.bond_use));
    row.push_back(figures.worst ? use_text(figures.worst->utilisation) : "-");
    row.push_back(figures.hull_clear ? style.span(figures.hull_clear->least) : "-");
    row.push_back(figures.hull_clear ? fmt::format("{}", figures.hull_clear->missing)
                                     : "-");
    row.push_back(style.gap(figures.outside.by));
    row.push_back(fmt::format("{}", figures.packs));
    row.push_back(cost_words(figures.cost));
  } else {
    row.insert(row.end(), 8, "-");
  }
  row.push_back(name_of(candidate));
  return row;
}

std::string comparison(const Candidates& candidates, const NumberStyle& style) {
  TextTable table;
  table.columns = {{{""}},
                   {{""}, Align::Left},
                   {{"holes"}},
                   {{"use,", "bond"}},
                   {{"use,", "fasteners"}},
                   {{"hull", "edge"}},
                   {{"miss"}},
                   {{"gap", "out by"}},
                   {{"packs"}},
                   {{"cost", "a boat"}},
                   {{"choice"}, Align::Left}};
  for (std::size_t i = 0; i < candidates.size(); ++i)
    table.rows.push_back(row_of(i + 1, candidates[i], style));
  return text_of(table);
}

std::string key() {
  std::string text;
  for (const char* line :
       {"out: ruled out; the reasons are below",
        "use: load x factor / capacity at the worst place, of the bond, and of the "
        "fasteners alone; over 1 is too much",
        "hull edge: least way from the side of a hole in the hull to the hull's top "
        "edge, trim tolerance taken off; negative: the hole is cut open or beside it",
        "miss: holes that miss the hull",
        "gap out by: how far the worst gap lies outside the adhesive's window",
        "packs: of adhesive, for one boat by itself",
        "cost a boat: fasteners by the box, adhesive and nozzles, a boat's share of "
        "the run; +: and what has no price on top"})
    text += wrapped(line, text_width, 2);
  return text;
}

std::string governs(const CandidateFigures& figures) {
  std::string words = "bond: " + mode_words(figures.bond_mode);
  if (figures.worst)
    words += fmt::format("; fasteners: {}, at {}", mode_words(figures.worst->governing),
                         figures.worst->mark);
  if (figures.hull_clear)
    words += fmt::format("; nearest to the hull's edge: {}", figures.hull_clear->mark);
  return words;
}

std::string details(std::size_t place,
                    const Candidate& candidate,
                    const NumberStyle& style) {
  constexpr std::size_t indent = 4;
  const auto line = [&](const std::string& words) {
    return std::string(indent, ' ') +
           wrapped(style.sentence(words), text_width - indent, 2 * indent);
  };
  std::string text = fmt::format("{:>2}  ", place) +
                     wrapped(name_of(candidate), text_width - indent, indent);
  if (candidate.figures) text += line(governs(*candidate.figures));
  for (const std::string& fault : candidate.ruled_out)
    text += line("ruled out: " + fault);
  if (candidate.figures && !candidate.figures->cost.known())
    text += line(
        fmt::format("no price: {}", fmt::join(candidate.figures->cost.unpriced, ", ")));
  for (const std::string& note : candidate.notes) text += line("left out: " + note);
  return text;
}

}  // namespace

std::string options_text(const Candidates& candidates,
                         const Joint& joint,
                         const NumberStyle& style) {
  std::string text = heading(joint, style) + "\n" + comparison(candidates, style) +
                     "\n" + key() + "\nWhat governs, and why a choice is ruled out\n";
  for (std::size_t i = 0; i < candidates.size(); ++i)
    text += details(i + 1, candidates[i], style);
  return text + "\n" +
         wrapped(fmt::format(
             "The holes, lengths, box and price that the joint file gives, and its "
             "capacities of a fastener in N, are those of {}: the other sizes have the "
             "holes and lengths of the tables and no price. Stretches that no size can "
             "change, such as a bridged keep-out, rule nothing out here.",
             joint.fastener.size));
}

}  // namespace sheerlap

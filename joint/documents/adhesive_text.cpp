#include "joint/documents/adhesive_text.h"

#include <fmt/format.h>

#include "joint/documents/text_table.h"
#include "joint/documents/wording.h"

namespace sheerlap {
namespace {

/// @param middle  the name of the column between least and most
std::string amounts(const AdhesivePlan& plan, const std::string& middle) {
  TextTable table;
  table.columns = {{{"for one boat"}, Align::Left},
                   {{"least"}},
                   {{middle}},
                   {{"most"}},
                   {{"unit"}, Align::Left}};
  const auto volume = [&](const char* name, Volume AdhesiveAmounts::*member) {
    const auto text = [&](const std::optional<AdhesiveAmounts>& amounts) {
      return amounts ? decimals(((*amounts).*member).in_ml(), 0) : "-";
    };
    table.rows.push_back(
        {name, text(plan.least), text(plan.nominal), text(plan.most), "ml"});
  };
  const auto count = [&](const char* name, std::size_t AdhesiveAmounts::*member) {
    const auto text = [&](const std::optional<AdhesiveAmounts>& amounts) {
      return amounts ? fmt::format("{}", (*amounts).*member) : "-";
    };
    table.rows.push_back(
        {name, text(plan.least), text(plan.nominal), text(plan.most), ""});
  };
  volume("in the joint", &AdhesiveAmounts::joint);
  volume("laid as beads", &AdhesiveAmounts::bead);
  volume("with waste and nozzles", &AdhesiveAmounts::boat);
  count("packs", &AdhesiveAmounts::packs);
  count("nozzles", &AdhesiveAmounts::nozzles);
  const auto mass = [](const std::optional<AdhesiveAmounts>& amounts) {
    return amounts ? decimals(*amounts->mass_kg, 2) : "-";
  };
  if (plan.nominal.mass_kg)
    table.rows.push_back({"mass, with waste and nozzles", mass(plan.least),
                          mass(plan.nominal), mass(plan.most), "kg"});
  return text_of(table);
}

std::string heading(const Job& job, const NumberStyle& style) {
  const Adhesive& adhesive = *job.joint.adhesive;
  const double area = job.adhesive->bond_area_mm2;
  const std::string area_text = style.unit() == LengthUnit::Millimetres
                                    ? decimals(area / 1e6, 3) + " m2"
                                    : decimals(area / (25.4 * 25.4), 0) + " sq in";
  return wrapped(fmt::format(
      "{}. The bond band of the hull face is {}. {}; least and most have the lip "
      "everywhere {} closer and further off, {}. Volumes are in ml, as packs are sold. "
      "Laid includes {} % of the "
      "joint volume to squeeze out; waste is {} % of what is laid; each fresh nozzle "
      "loses {} ml; a pack gives {} ml.",
      capitalised(adhesive.name), area_text,
      job.boat ? "Read is this boat as it was read" : "Nominal is the joint as drawn",
      style.size_with_unit(Length::mm(1)),
      job.boat ? "should the readings be off by that" : "as a hull out of shape has it",
      at_most_decimals(100 * adhesive.squeeze_out, 1),
      at_most_decimals(100 * adhesive.waste, 1),
      at_most_decimals(adhesive.nozzle_purge.in_ml(), 1),
      at_most_decimals(adhesive.pack_usable.in_ml(), 1)));
}

std::string area_text(double area_mm2, const NumberStyle& style) {
  return style.unit() == LengthUnit::Millimetres
             ? decimals(area_mm2, 1)
             : decimals(area_mm2 / (25.4 * 25.4), 4);
}

std::string beads(const Job& job, const NumberStyle& style) {
  const bool triangle = job.joint.adhesive->bead_shape == BeadShape::Triangle;
  TextTable table;
  const std::string square = "sq " + style.unit_name();
  table.columns = {
      {{"side"}, Align::Left}, {{"from"}},         {{"to"}}, {{"beads"}}, {{"size"}},
      {{"laid", square}},      {{"joint", square}}};
  for (const BeadRun& run : job.adhesive->beads)
    table.rows.push_back({side_word(run.side), style.running(run.from),
                          style.running(run.to), fmt::format("{}", run.beads),
                          style.size(run.size), area_text(run.area_mm2, style),
                          area_text(run.needed_mm2, style)});
  return wrapped(fmt::format(
             "Beads, in {0}: {1}. Girths run along the sheer, rounded to {2}. \"Laid\" "
             "is the section of the beads, \"joint\" the run's largest section to "
             "fill, squeeze-out included.",
             style.unit_words(),
             triangle ? "triangles, base = height = size" : "round, size = diameter",
             style.step_name())) +
         text_of(table);
}

std::string time_text(const TimePlan& time) {
  TextTable table;
  table.columns = {{{"time"}, Align::Left}, {{"min"}}};
  const auto add = [&](const char* name, Duration duration) {
    table.rows.push_back({name, decimals(duration.in_minutes(), 1)});
  };
  add("dispensing", time.dispensing);
  add("pack changes", time.pack_changes);
  add("lowering and seating", time.seating);
  add("driving fasteners", time.driving);
  add("in all", time.total);
  add("working time at the shop's temperature", time.working_time);
  return text_of(table) +
         wrapped(
             "The working time is the data sheet's, taken to the shop's temperature "
             "by a rule of thumb: it halves for every 10 degrees C warmer. Below "
             "the data sheet's least temperature the adhesive may not cure.");
}

}  // namespace

std::string adhesive_text(const Job& job, const NumberStyle& style) {
  const AdhesivePlan& plan = *job.adhesive;
  return heading(job, style) + "\n" + amounts(plan, job.boat ? "read" : "nominal") +
         "\n" + beads(job, style) + "\n" +
         (plan.time ? "From the first mixed adhesive to the last fastener\n" +
                          time_text(*plan.time)
                    : wrapped("No time plan: it needs [shop] and the adhesive's "
                              "working_time."));
}

}  // namespace sheerlap

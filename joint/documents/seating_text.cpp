#include "joint/documents/seating_text.h"

#include <fmt/format.h>

#include "joint/documents/seating_words.h"
#include "joint/documents/text_table.h"
#include "joint/documents/wording.h"
#include "joint/perimeter.h"

namespace sheerlap {
namespace {

/// The two rows of one state: its least and its greatest gap.
void add_state(TextTable& table,
               const char* state,
               const HullShapeFit& shape,
               const Adhesive& adhesive,
               const NumberStyle& style) {
  const auto add = [&](const char* name, const char* which, const GapAt& at,
                       Length inside) {
    table.rows.push_back({name, which, style.gap(at.gap), side_word(at.side),
                          style.running(at.girth), style.span(at.depth),
                          style.gap(inside)});
  };
  add(state, "least", shape.least, shape.least.gap - adhesive.gap_min);
  add("", "greatest", shape.greatest, adhesive.gap_max - shape.greatest.gap);
}

std::string states(const Job& job, const NumberStyle& style) {
  const Seating& seating = job.going_on->seating;
  TextTable table;
  table.columns = {{{"lid and hull"}, Align::Left},
                   {{"gap"}, Align::Left},
                   {{style.unit_name()}},
                   {{"side"}, Align::Left},
                   {{"girth"}},
                   {{"depth"}},
                   {{"inside the", "window by"}}};
  const auto add = [&](const char* state, const HullShapeFit& shape) {
    add_state(table, state, shape, *job.joint.adhesive, style);
  };
  add(job.boat ? "as read" : "as drawn", {job.fit->least, job.fit->greatest});
  if (seating.free) add("as drawn, hull free", *seating.free);
  if (seating.held) add("as drawn, hull held", *seating.held);
  add("best seating", seating.seated);
  return text_of(table);
}

std::string contacts(const Seating& seating, const NumberStyle& style) {
  TextTable table;
  table.columns = {{{"gap"}, Align::Left},
                   {{style.unit_name()}},
                   {{"side"}, Align::Left},
                   {{"girth"}},
                   {{"depth"}},
                   {{"weight"}}};
  for (const HoldingGap& gap : seating.contacts)
    table.rows.push_back({gap.tight ? "least" : "greatest", style.gap(gap.at.gap),
                          side_word(gap.at.side), style.running(gap.at.girth),
                          style.span(gap.at.depth), decimals(gap.price, 3)});
  return text_of(table);
}

/// The spreaders on whose limits more margin waits.
std::string limit_words(const Seating& seating, const NumberStyle& style) {
  std::string text;
  for (std::size_t j = 0; j < seating.squeezes.size(); ++j) {
    const Squeeze& squeeze = seating.squeezes[j];
    if (!(squeeze.limit_price > 5e-4)) continue;
    text += fmt::format(
        " Spreader {} stands on its limit of {}: each {} more would "
        "gain {} {}.",
        j + 1, style.size_with_unit(squeeze.most), style.unit_name(),
        decimals(squeeze.limit_price, 3), style.unit_name());
  }
  return text;
}

std::string holding(const Seating& seating, const NumberStyle& style) {
  if (seating.contacts.empty())
    return wrapped(
        "Every gap lies in the middle of the window: there is no more to "
        "be had.");
  return wrapped(fmt::format(
             "These gaps hold it: what gives one of them more takes it from another. A "
             "weight is what the worst gap gains for each {} that this place alone is "
             "mended: ground off the hull where the gap is least, built up where it is "
             "greatest.",
             style.unit_name())) +
         contacts(seating, style) +
         wrapped(fmt::format("Proof: weighed so, the gains of every move and squeeze "
                             "cancel, so none betters all of these gaps; what could be "
                             "left to gain is under {} {}.{}",
                             style.unit() == LengthUnit::Inches ? "0.0001" : "0.001",
                             style.unit_name(), limit_words(seating, style)));
}

std::string optional_span(const std::optional<Length>& length,
                          const NumberStyle& style) {
  return length ? style.span(*length) : "-";
}

std::string readings(const Job& job, const NumberStyle& style) {
  const Seating& seating = job.going_on->seating;
  if (seating.readings.empty()) return "";
  TextTable table;
  table.columns = {
      {{"", "X"}},        {{"beam", "mould"}},  {{"beam", "free"}},
      {{"beam", "held"}}, {{"beam", "seated"}}, {{"side", "free"}},
      {{"side", "held"}}, {{"side", "seated"}}, {{"", "station"}, Align::Left}};
  for (std::size_t i = 0; i < seating.readings.size(); ++i) {
    const SeatedReading& reading = seating.readings[i];
    const BeamReading& read = job.joint.seating.readings[i];
    table.rows.push_back(
        {style.span(reading.moved.x), style.span(read.mould), style.span(read.free),
         optional_span(read.held, style), style.span(read.mould + 2 * reading.seated),
         style.span(reading.moved.free), optional_span(reading.moved.held, style),
         style.span(reading.seated), read.station});
  }
  return "\nThe hull's beam over its top edge\n" +
         wrapped(fmt::format("In {}. The seated beam is the one to bring the tape to. "
                             "Side is how far each side stands outward of where it was "
                             "in the mould, half of what the beam has gained; negative "
                             "is inward.",
                             style.unit_words())) +
         text_of(table);
}

/// What each spreader is set by: from the hull's free shape, or of one boat from the
/// shape it was read in.
std::string spreaders(const Job& job, const NumberStyle& style) {
  const Seating& seating = job.going_on->seating;
  if (seating.squeezes.empty()) return "";
  const bool drawn = !job.boat;
  TextTable table;
  table.columns = {{{"", "spreader"}, Align::Left}, {{"", "X"}}};
  if (drawn) table.columns.push_back({{"to the", "mould"}});
  table.columns.push_back({{"to the best", "seating"}});
  table.columns.push_back({{"most", "allowed"}});
  for (std::size_t j = 0; j < seating.squeezes.size(); ++j) {
    const Squeeze& squeeze = seating.squeezes[j];
    std::vector<std::string> row{fmt::format("{}", j + 1), style.span(squeeze.at)};
    if (drawn) row.push_back(style.span(squeeze.to_mould));
    row.push_back(style.span(squeeze.amount));
    row.push_back(style.span(squeeze.most));
    table.rows.push_back(std::move(row));
  }
  return fmt::format("\nSqueeze of each side at the spreaders, from the hull{}\n",
                     drawn ? "'s free shape" : " as it was read") +
         wrapped(fmt::format("In {}; negative is spread out.{}", style.unit_words(),
                             drawn ? " To the mould is what brings the hull there to "
                                     "its moulded shape."
                                   : " " + limits_from(job))) +
         text_of(table);
}

/// The rows of a way down: the lip's low edge, and then its face down to its seat.
void add_way(TextTable& table,
             const std::string& name,
             const EntryPath& path,
             const NumberStyle& style) {
  const auto add = [&](const std::string& words, const EntryClearance& at) {
    table.rows.push_back({words, style.gap(at.worst), side_word(at.side),
                          style.running(at.girth), style.span(at.height),
                          decimals(at.angle.in_degrees(), 2)});
  };
  if (path.low_edge) add(name + ", low edge", *path.low_edge);
  add(name + ", to its seat", path.face);
}

/// What would mend a clash; empty where nothing clashes.
std::string mending(const std::string& name,
                    const EntryPath& path,
                    const NumberStyle& style) {
  if (!(path.face.worst < Length())) return "";
  const std::string squeeze =
      path.squeeze ? fmt::format("squeeze each side in by {} {}",
                                 style.gap(*path.squeeze), style.unit_name())
                   : "no squeeze of the sides is enough";
  return wrapped(fmt::format("To pass {}: {}, or lead the lip's low edge out by {} {}.",
                             name, squeeze, style.gap(path.lead_in),
                             style.unit_name()));
}

}  // namespace

std::string what_to_do(const Job& job, const NumberStyle& style) {
  std::string text = "What to do\n";
  for (const std::string& step : seating_steps(job, style))
    text += wrapped("- " + step, text_width, 2);
  return text;
}

std::string entry_text(const Job& job, const NumberStyle& style) {
  const GoingOn& going_on = *job.going_on;
  TextTable table;
  table.columns = {{{"", "lid"}, Align::Left},  {{"least", "clearance"}},
                   {{"", "side"}, Align::Left}, {{"", "girth"}},
                   {{"down", "the lip"}},       {{"angle,", "degrees"}}};
  std::string mended = mending("straight down", going_on.straight, style);
  add_way(table, "straight down", going_on.straight, style);
  if (going_on.turned) {
    const std::string name =
        "turned, " + word_of(job.joint.turned_entry->first) + " first";
    add_way(table, name, *going_on.turned, style);
    mended += mending(name, *going_on.turned, style);
  }
  return "\nThe way down, on " + hull_words(job) + "\n" +
         wrapped(fmt::format(
             "In {}. The clearance is level and square to the sheer in plan, of the "
             "hull's top edge off the lip's inner face; down the lip is how far below "
             "the lip's top the hull's edge then is, and the angle the lid's to its "
             "seat.",
             style.unit_words())) +
         text_of(table) + mended;
}

std::string seating_text(const Job& job, const NumberStyle& style) {
  const Seating& seating = job.going_on->seating;
  return "\nThe lid in its best place\n" +
         wrapped(
             "The lid is moved as a stiff piece; the hull bends from hinge to hinge "
             "as a strip through its readings and spreaders. The best seating is "
             "the one whose worst gap lies furthest inside the window.") +
         states(job, style) + holding(seating, style) + readings(job, style) +
         spreaders(job, style);
}

}  // namespace sheerlap

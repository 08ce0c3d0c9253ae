#include "joint/seating_reasons.h"

#include <fmt/format.h>

#include <algorithm>
#include <string>
#include <utility>
#include <vector>

#include "joint/reasons/found.h"
#include "joint/seating_figures.h"
#include "joint/worded_length.h"

namespace sheerlap {
namespace {

const GivenWords girth_words{"s", "girth on the sheer from the start of the side",
                             "mm"};

void place_given(WrittenWorking& work, Length girth, Length depth) {
  const Origin here = Origin::of_joint("where it is found");
  work.given(girth_words, girth.in_mm(), here);
  work.given({"d", "depth below the sheer", "mm"}, depth.in_mm(), here);
}

std::string at_words(const GapAt& at) {
  return fmt::format("{}, girth {} along the sheer, depth {}", side_word(at.side),
                     worded(at.girth), worded(at.depth));
}

Explanation margin_reason(const Adhesive& adhesive, const Seating& seating) {
  WrittenWorking work;
  place_given(work, seating.worst.girth, seating.worst.depth);
  const Term gap = work.found(seated_gap_words, seating.worst.gap.in_mm());
  const Term least =
      work.given({"g_min", "the adhesive's least gap", "mm"}, adhesive.gap_min.in_mm(),
                 Origin::of_file("adhesive.gap_min"));
  const Term most =
      work.given({"g_max", "the adhesive's greatest gap", "mm"},
                 adhesive.gap_max.in_mm(), Origin::of_file("adhesive.gap_max"));
  work.figure({"m", "the worst gap's distance inside the gap window", "mm",
               "derived: the nearer limit", seating_validity},
              min(gap - least, most - gap));
  return {"seating.margin",
          "the worst gap of the lid in its best place: " + at_words(seating.worst),
          work.release(),
          {{"seating.margin", "m"},
           {"seating.gap", "g"},
           {"seating.girth", "s"},
           {"seating.depth", "d"}}};
}

Explanation end_reason(const Seating& seating, bool bow) {
  WrittenWorking work;
  const Origin found = Origin::of_joint("the best seating");
  const double turn = seating.turn.in_radians();
  const Term across = work.given({"dy", "the lid's move to starboard", "mm"},
                                 seating.dy.in_mm(), found);
  const Term reach =
      work.given({"R", "from the point the lid turns about to its ends", "mm"},
                 seating.reach.in_mm(), Origin::of_joint("half the sheer's length"));
  const Term angle =
      work.given({"turn", "turn of the lid, in radians", "1"}, turn, found);
  if (bow)
    work.figure({"y_bow", "how far the lid's forward end moves to starboard", "mm",
                 "derived: a stiff lid, moved and turned", seating_validity},
                across - reach * sin(angle));
  else
    work.figure({"y_stern", "how far the lid's after end moves to starboard", "mm",
                 "derived: a stiff lid, moved and turned", seating_validity},
                across + reach * sin(angle));
  const std::string figure = bow ? "seating.at_bow" : "seating.at_stern";
  return {figure,
          bow ? "the lid's move at the bow" : "the lid's move at the stern",
          work.release(),
          {{figure, bow ? "y_bow" : "y_stern"}}};
}

void add_shape(Explanations& reasons,
               const std::string& key,
               const HullShapeFit& shape) {
  const auto add = [&](const FoundWords& words, const GapAt& at,
                       const std::string& which) {
    const std::string figure = "seating." + key + "." + which;
    WrittenWorking work;
    place_given(work, at.girth, at.depth);
    work.found(words, at.gap.in_mm());
    reasons.push_back(
        {figure,
         fmt::format("{}, hull {}: {}", words.figure.what, key, at_words(at)),
         work.release(),
         {{figure, std::string(words.figure.letters)},
          {figure + "_at.girth", "s"},
          {figure + "_at.depth", "d"}}});
  };
  add(shape_least_words, shape.least, "gap_min");
  add(shape_greatest_words, shape.greatest, "gap_max");
}

/// The first gap that holds the margin.
void add_contact(Explanations& reasons, const Seating& seating) {
  if (seating.contacts.empty()) return;
  const HoldingGap& first = seating.contacts.front();
  WrittenWorking work;
  place_given(work, first.at.girth, first.at.depth);
  work.found(seated_gap_words, first.at.gap.in_mm());
  work.found(gap_price_words, first.price);
  reasons.push_back({"seating.contacts.0.price",
                     "a gap that holds the best seating: " + at_words(first.at),
                     work.release(),
                     {{"seating.contacts.*.price", "w"},
                      {"seating.contacts.*.gap", "g"},
                      {"seating.contacts.*.girth", "s"},
                      {"seating.contacts.*.depth", "d"}}});
}

/// The first spreader.
void add_squeeze(Explanations& reasons, const Seating& seating) {
  if (seating.squeezes.empty()) return;
  const Squeeze& first = seating.squeezes.front();
  WrittenWorking work;
  work.given({"x", "where the spreader stands", "mm"}, first.at.in_mm(),
             Origin::of_file("spreader[0].x"));
  work.given({"q_most", "how far it may force each side", "mm"}, first.most.in_mm(),
             Origin::of_file("spreader[0].most"));
  work.found(to_mould_words, first.to_mould.in_mm());
  work.found(limit_price_words, first.limit_price);
  work.found(seated_squeeze_words, first.amount.in_mm());
  const std::string any = "seating.squeeze.*.";
  reasons.push_back({"seating.squeeze.0.amount",
                     "squeeze of each side at a spreader",
                     work.release(),
                     {{any + "amount", "q"},
                      {any + "at", "x"},
                      {any + "limit", "q_most"},
                      {any + "to_mould", "q_mould"},
                      {any + "limit_price", "w_limit"}}});
}

/// Half of what a beam has gained.
Term half_gain(WrittenWorking& work,
               const FigureWords& words,
               const GivenWords& given,
               Length beam,
               const std::string& address,
               const Term& mould) {
  const Term read = work.given(given, beam.in_mm(), Origin::of_file(address));
  return work.figure(words, (read - mould) / 2);
}

/// The first beam reading, of those with a held beam if there are any.
void add_reading(Explanations& reasons, const Joint& joint, const Seating& seating) {
  constexpr std::string_view validity = "a beam does not tell one side from the other";
  if (seating.readings.empty()) return;
  const auto held =
      std::find_if(seating.readings.begin(), seating.readings.end(),
                   [](const SeatedReading& one) { return one.moved.held.has_value(); });
  const std::size_t index =
      held == seating.readings.end()
          ? 0
          : static_cast<std::size_t>(held - seating.readings.begin());
  const SeatedReading& first = seating.readings[index];
  const BeamReading& read = joint.seating.readings[index];
  const std::string address = fmt::format("beam_reading[{}].", index);
  WrittenWorking work;
  work.given({"x", "where the beam is read", "mm"}, first.moved.x.in_mm(),
             Origin::of_file(address + (read.x ? "x" : "station")));
  const Term mould = work.given({"B_mould", "beam in the mould", "mm"},
                                read.mould.in_mm(), Origin::of_file(address + "mould"));
  if (read.held)
    half_gain(work,
              {"u_held", "how far each side stands outward of its mould, held", "mm",
               "derived: each side takes half of what the beam gains", validity},
              {"B_held", "beam as held", "mm"}, *read.held, address + "held", mould);
  half_gain(work,
            {"u_free", "how far each side stands outward of its mould, free", "mm",
             "derived: each side takes half of what the beam gains", validity},
            {"B_free", "beam out of the mould", "mm"}, read.free, address + "free",
            mould);
  work.found(seated_side_words, first.seated.in_mm());
  const std::string any = "seating.readings.*.";
  Explanation reason{
      fmt::format("seating.readings.{}.seated", index),
      "how far each side has moved at a beam reading",
      work.release(),
      {{any + "seated", "u_seated"}, {any + "free", "u_free"}, {any + "at", "x"}}};
  if (read.held) reason.tells.push_back({any + "held", "u_held"});
  reasons.push_back(std::move(reason));
}

void add_clearance(Explanations& reasons,
                   const FoundWords& words,
                   const EntryClearance& at,
                   const std::string& path) {
  WrittenWorking work;
  work.given(girth_words, at.girth.in_mm(),
             Origin::of_joint("where the clearance is least"));
  work.found(turned_angle_words, at.angle.in_degrees());
  work.found(turned_height_words, at.height.in_mm());
  work.found(words, at.worst.in_mm());
  reasons.push_back(
      {path + ".worst",
       fmt::format("{}, on {} at girth {} along the sheer", words.figure.what,
                   side_word(at.side), worded(at.girth)),
       work.release(),
       {{path + ".worst", std::string(words.figure.letters)},
        {path + ".height", "d_turned"},
        {path + ".at_angle", "a_turned"},
        {path + ".girth", "s"}}});
}

void add_mending(Explanations& reasons, const EntryPath& way, const std::string& path) {
  if (way.squeeze)
    reasons.push_back(found_reason(entry_squeeze_words, way.squeeze->in_mm(),
                                   path + ".squeeze", {path + ".squeeze"}));
  reasons.push_back(found_reason(lead_in_words, way.lead_in.in_mm(), path + ".lead_in",
                                 {path + ".lead_in"}));
}

void add_entry(Explanations& reasons, const Joint& joint, const GoingOn& going_on) {
  add_mending(reasons, going_on.straight, "entry");
  if (!going_on.turned) return;
  const EntryPath& turned = *going_on.turned;
  WrittenWorking begin;
  begin.given({"a", "the lid's angle to its seat as it begins to turn", "degrees"},
              joint.turned_entry->angle.in_degrees(), Origin::of_file("entry.angle"));
  reasons.push_back({"entry.turned.angle",
                     "the angle that the lid is turned down from",
                     begin.release(),
                     {{"entry.turned.angle", "a"}}});
  add_clearance(reasons, turned_clear_words, turned.face, "entry.turned");
  if (turned.low_edge)
    add_clearance(reasons, turned_low_words, *turned.low_edge, "entry.turned.low_edge");
  add_mending(reasons, turned, "entry.turned");
}

}  // namespace

Explanations seating_reasons(const Joint& joint, const GoingOn& going_on) {
  const Seating& seating = going_on.seating;
  Explanations reasons;
  const auto add = [&](const FoundWords& words, double value, const std::string& path) {
    reasons.push_back(found_reason(words, value, path, {path}));
  };
  add_entry(reasons, joint, going_on);
  reasons.push_back(margin_reason(*joint.adhesive, seating));
  add(seated_aft_words, seating.dx.in_mm(), "seating.dx");
  add(seated_across_words, seating.dy.in_mm(), "seating.dy");
  add(seated_turn_words, seating.turn.in_degrees(), "seating.turn");
  reasons.push_back(end_reason(seating, true));
  reasons.push_back(end_reason(seating, false));
  reasons.push_back(found_reason(pivot_words, seating.pivot.x(), "seating.pivot.x",
                                 {"seating.pivot.*"}));
  add(drawn_margin_words, seating.as_drawn.in_mm(), "seating.as_drawn");
  add(gain_left_words, seating.gain_left.in_mm(), "seating.gain_left");
  add_contact(reasons, seating);
  add_squeeze(reasons, seating);
  add_reading(reasons, joint, seating);
  if (seating.free) add_shape(reasons, "free", *seating.free);
  if (seating.held) add_shape(reasons, "held", *seating.held);
  add_shape(reasons, "seated", seating.seated);
  return reasons;
}

}  // namespace sheerlap

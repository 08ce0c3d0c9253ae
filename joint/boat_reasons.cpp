#include "joint/boat_reasons.h"

#include <fmt/format.h>

#include <algorithm>
#include <optional>
#include <string>
#include <utility>

#include "joint/adhesive.h"
#include "joint/boat_workings.h"
#include "joint/reasons/found.h"

namespace sheerlap {
namespace {

/// A number that was given, as the whole of its reason.
Explanation given_reason(const GivenWords& words,
                         Length value,
                         const std::string& address,
                         const std::string& figure) {
  WrittenWorking work;
  work.given(words, value.in_mm(), Origin::of_file(address));
  return {figure,
          std::string(words.what),
          work.release(),
          {{figure, std::string(words.letters)}}};
}

void add_limits(Explanations& reasons, const GapLimits& limits) {
  reasons.push_back(given_reason({"g_min", "least gap accepted", "mm"}, limits.gap_min,
                                 limits.min_address, "boat.limits.gap_min"));
  reasons.push_back(given_reason({"g_max", "greatest gap accepted", "mm"},
                                 limits.gap_max, limits.max_address,
                                 "boat.limits.gap_max"));
  if (limits.step)
    reasons.push_back(
        given_reason({"v_step", "the most two neighbouring readings may differ", "mm"},
                     *limits.step, "readings.step", "boat.limits.step"));
}

/// The reasons of one correction, `at` its place in the result.
class CorrectionReasons {
 public:
  CorrectionReasons(Explanations& reasons,
                    const Boat& boat,
                    const GapCorrection& correction,
                    std::string at)
      : reasons_(reasons), boat_(boat), correction_(correction), at_(std::move(at)) {}

  void add() {
    const auto& from = correction_.readings;
    if (from.size() != 1) {
      const FoundWords& words = correction_.between_sides ? middle_words : merged_words;
      add_found(words, correction_.top, ".top");
      add_found(words, correction_.low, ".low");
      add_found(place_girth_words, correction_.girth, ".girth");
      return;
    }
    const GapReading& reading = boat_.readings[from.front()];
    address_ = fmt::format("reading[{}]", from.front());
    if (reading.kind == PlaceKind::Girth)
      reasons_.push_back(
          given_reason({"s", "girth on the drill line where it was read", "mm"},
                       correction_.girth, address_ + ".girth", at_ + ".girth"));
    else
      add_found(place_girth_words, correction_.girth, ".girth");
    // of one edge alone the difference stands for both
    const bool by_low = !reading.top;
    const bool by_top = !reading.low;
    add_edge(by_low ? *reading.low : *reading.top, by_low ? "low" : "top",
             correction_.top, "top");
    add_edge(by_top ? *reading.top : *reading.low, by_top ? "top" : "low",
             correction_.low, "low");
  }

 private:
  void add_found(const FoundWords& words, Length value, const char* key) {
    reasons_.push_back(found_reason(words, value.in_mm(), at_ + key, {at_ + key}));
  }

  /// @param from  the edge that was read
  void add_edge(Length read,
                const std::string& from,
                Length difference,
                const std::string& edge) {
    WrittenWorking work;
    gap_correction(work, read, address_ + ".gap_" + from, (read - difference).in_mm());
    Explanation reason{at_ + "." + edge,
                       fmt::format("how far the gap is from the drawn one, {}, {} edge",
                                   correction_.place, edge),
                       work.release(),
                       {{at_ + "." + edge, "c"}}};
    if (from == edge) reason.tells.push_back({at_ + ".read_" + edge, "g_read"});
    reasons_.push_back(std::move(reason));
  }

  Explanations& reasons_;
  const Boat& boat_;
  const GapCorrection& correction_;
  std::string at_;
  std::string address_;
};

void add_corrections(Explanations& reasons, const Boat& boat) {
  std::size_t number = 0;
  for (const SideCorrections& side : boat.corrections)
    for (const GapCorrection& correction : side.at)
      CorrectionReasons(reasons, boat, correction,
                        fmt::format("boat.corrections.{}", number++))
          .add();
}

void add_held(Explanations& reasons, const Boat& boat) {
  if (boat.held.empty()) return;
  reasons.push_back(
      found_reason(held_words, boat.held.front().from.in_mm(), "boat.held.0.from",
                   {"boat.held.*.from", "boat.held.*.to", "boat.held.*.reading"}));
}

/// Where the limit of a non-conformance is from.
Origin limit_origin(const GapLimits& limits, OutKind kind) {
  switch (kind) {
    case OutKind::Tight:
      return Origin::of_file(limits.min_address);
    case OutKind::Wide:
      return Origin::of_file(limits.max_address);
    case OutKind::Step:
      return Origin::of_file("readings.step");
    case OutKind::NoFastener:
      break;
  }
  return Origin::of_joint("the longest in stock");
}

const FoundWords& value_words(OutKind kind) {
  switch (kind) {
    case OutKind::Step:
      return step_words;
    case OutKind::NoFastener:
      return needed_length_words;
    case OutKind::Tight:
    case OutKind::Wide:
      break;
  }
  return boat_gap_words;
}

void add_out(Explanations& reasons, const Boat& boat) {
  for (std::size_t i = 0; i < boat.out.size(); ++i) {
    const NonConformance& out = boat.out[i];
    const std::string at = fmt::format("boat.non_conformances.{}", i);
    const FoundWords& words = value_words(out.kind);
    WrittenWorking work;
    out_of_limit(work, work.found(words, out.value.in_mm()), out.limit,
                 limit_origin(boat.limits, out.kind));
    reasons.push_back({at + ".out_by",
                       fmt::format("how far NC{} is out", out.number),
                       work.release(),
                       {{at + ".out_by", "o"},
                        {at + ".limit", "v_limit"},
                        {at + ".value", std::string(words.figure.letters)}}});
  }
  if (boat.out.empty()) return;
  const std::string all = "boat.non_conformances.*";
  reasons.push_back(found_reason(out_girth_words, boat.out.front().at.in_mm(),
                                 "boat.non_conformances.0.at",
                                 {all + ".from", all + ".to", all + ".at"}));
  reasons.push_back(found_reason(out_depth_words, boat.out.front().depth.in_mm(),
                                 "boat.non_conformances.0.depth", {all + ".depth"}));
}

/// The place told of: one with something to do at its low edge, if there is one.
std::size_t told_place(const std::vector<PlaceGap>& places) {
  const auto found =
      std::find_if(places.begin(), places.end(), [](const PlaceGap& place) {
        return place.low.grind > Length() || place.low.build_up > Length();
      });
  return found == places.end() ? 0 : static_cast<std::size_t>(found - places.begin());
}

void add_fastener(Explanations& reasons, const Boat& boat) {
  const auto served = std::find_if(
      boat.places.begin(), boat.places.end(),
      [](const PlaceGap& place) { return place.fastener && place.fastener->length; });
  const auto hole =
      std::find_if(boat.places.begin(), boat.places.end(),
                   [](const PlaceGap& place) { return place.fastener.has_value(); });
  const auto at = [&](auto place, const char* key) {
    return fmt::format("boat.work.{}.{}", place - boat.places.begin(), key);
  };
  if (hole != boat.places.end())
    reasons.push_back(found_reason(needed_length_words, hole->fastener->needed.in_mm(),
                                   at(hole, "length_needed"),
                                   {"boat.work.*.length_needed"}));
  if (served != boat.places.end())
    reasons.push_back(found_reason(boat_length_words, served->fastener->length->in_mm(),
                                   at(served, "length"),
                                   {"boat.work.*.length", "boat.work.*.length_drawn"}));
}

void add_work(Explanations& reasons, const Boat& boat) {
  if (boat.places.empty()) return;
  const std::size_t told = told_place(boat.places);
  const PlaceGap& place = boat.places[told];
  const std::string at = fmt::format("boat.work.{}", told);
  reasons.push_back(found_reason(place_girth_words, place.girth.in_mm(), at + ".girth",
                                 {"boat.work.*.girth"}));
  WrittenWorking work;
  edge_work(work, place.low.gap, boat.limits);
  reasons.push_back({at + ".low.grind",
                     fmt::format("what there is to grind or to shim at {}, low edge; "
                                 "the top edge likewise",
                                 place.place),
                     work.release(),
                     {{"boat.work.*.low.gap", "g"},
                      {"boat.work.*.low.grind", "o_grind"},
                      {"boat.work.*.low.build_up", "o_shim"},
                      {"boat.work.*.top.gap", "g"},
                      {"boat.work.*.top.grind", "o_grind"},
                      {"boat.work.*.top.build_up", "o_shim"}}});
  add_fastener(reasons, boat);
}

void add_beads(Explanations& reasons, const Boat& boat) {
  if (boat.beads.empty()) return;
  const std::string all = "boat.beads_changed.*";
  const BeadChange& first = boat.beads.front();
  reasons.push_back(found_reason(bead_change_words, first.from.in_mm(),
                                 "boat.beads_changed.0.from",
                                 {all + ".from", all + ".to"}));
  WrittenWorking sizes;
  sizes.given(
      {"n_beads", "beads side by side, of the largest size if more than one", "1"},
      static_cast<double>(first.beads),
      Origin::of_joint("the fewest that cover the section"));
  sizes.given({"d_bead", "size of the bead", "mm"}, first.size.in_mm(),
              Origin::of_file("adhesive.bead_sizes"));
  reasons.push_back({"boat.beads_changed.0.size",
                     "beads of the drawing and of the boat",
                     sizes.release(),
                     {{all + ".size", "d_bead"},
                      {all + ".size_drawn", "d_bead"},
                      {all + ".beads", "n_beads"},
                      {all + ".beads_drawn", "n_beads"}}});
}

void add_drawn(Explanations& reasons, const DrawnParts& drawn) {
  const auto add = [&](const FoundWords& words, double value, const char* key) {
    const std::string at = std::string("boat.drawn.") + key;
    reasons.push_back(found_reason(words, value, at, {at}));
    reasons.back().what = "as drawn: " + reasons.back().what;
  };
  if (drawn.fit) {
    add(least_gap_words, drawn.fit->least.gap.in_mm(), "fit.gap_min");
    add(greatest_gap_words, drawn.fit->greatest.gap.in_mm(), "fit.gap_max");
    add(drawn_mean_words, drawn.fit->mean.in_mm(), "fit.gap_mean");
  }
  if (!drawn.adhesive) return;
  const AdhesiveAmounts& amounts = drawn.adhesive->nominal;
  add(joint_volume_words, amounts.joint.in_ml(), "adhesive.joint_volume");
  add(drawn_volume_words, amounts.bead.in_ml(), "adhesive.bead_volume");
  add(drawn_volume_words, amounts.boat.in_ml(), "adhesive.boat_volume");
  add(drawn_packs_words, static_cast<double>(amounts.packs), "adhesive.packs");
}

}  // namespace

Explanations boat_reasons(const Boat& boat) {
  Explanations reasons;
  add_limits(reasons, boat.limits);
  add_corrections(reasons, boat);
  add_held(reasons, boat);
  add_out(reasons, boat);
  add_work(reasons, boat);
  add_beads(reasons, boat);
  add_drawn(reasons, boat.drawn);
  return reasons;
}

}  // namespace sheerlap

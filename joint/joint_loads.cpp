#include "joint/joint_loads.h"

#include <fmt/format.h>

#include <algorithm>
#include <cassert>
#include <utility>

#include "joint/mechanics/deck_edge.h"
#include "joint/mechanics/deck_pressure.h"
#include "joint/mechanics/hull_section.h"
#include "joint/mechanics/torsion.h"
#include "joint/reasons/working.h"

namespace sheerlap {
namespace {

void append(Errors& errors, const Errors& more) {
  errors.insert(errors.end(), more.begin(), more.end());
}

void add(JointLoad& sum, const JointLoad& more) {
  sum.along += more.along;
  sum.across += more.across;
  sum.off += more.off;
}

bool loads_anything(const JointLoad& load) {
  return load.along > 0 || load.across > 0 || load.off > 0;
}

JointLoad in_direction(LoadDirection direction, double load) {
  switch (direction) {
    case LoadDirection::Along:
      return {load, 0, 0};
    case LoadDirection::Across:
      return {0, load, 0};
    case LoadDirection::Off:
      break;
  }
  return {0, 0, load};
}

/// A side that the joint has not.
Error no_transom(std::string where) {
  return {ErrorKind::InvalidInput, std::move(where),
          "this joint has no transom side: name starboard, port or both"};
}

}  // namespace

Result<JointLoads> JointLoads::of(const Joint& joint, const Perimeter& perimeter) {
  assert(joint.loads);
  const Loads& loads = *joint.loads;
  JointLoads made;
  made.set_ring(perimeter);
  const JointLoad line{loads.along, loads.across, loads.off};
  if (loads_anything(line))
    made.even_.push_back(
        {"line load of the joint file", line, Origin::of_file("loads")});
  Errors errors;
  if (loads.girder) append(errors, made.add_girder(*loads.girder));
  if (loads.panel) append(errors, made.add_panel(*loads.panel));
  append(errors, made.add_stretches(joint, perimeter));
  append(errors, made.add_points(joint, perimeter));
  if (!errors.empty()) return tl::unexpected(std::move(errors));
  return made;
}

void JointLoads::set_ring(const Perimeter& perimeter) {
  for (const PerimeterSide& side : perimeter.sides)
    ring_mm_ += side.drill_line_length.in_mm();
  for (const PerimeterSide& one : perimeter.sides) {
    Side made;
    made.name = one.name;
    made.forward = one.name != SideName::Port;
    const Length starboard = perimeter.side(SideName::Starboard)->drill_line_length;
    if (one.name == SideName::Transom) made.ring_start = starboard;
    if (one.name == SideName::Port) made.ring_start = Length::mm(ring_mm_);
    const auto on_ring = [&](Length girth) {
      return (made.forward ? made.ring_start + girth : made.ring_start - girth).in_mm();
    };
    for (const OpeningSpan& opening : one.openings) {
      free_ends_mm_.push_back(on_ring(opening.from));
      free_ends_mm_.push_back(on_ring(opening.to));
    }
    if (one.start == SideEnd::End) free_ends_mm_.push_back(on_ring(Length()));
    if (one.end == SideEnd::End)
      free_ends_mm_.push_back(on_ring(one.drill_line_length));
    sides_.push_back(std::move(made));
  }
  std::sort(free_ends_mm_.begin(), free_ends_mm_.end());
}

Errors JointLoads::add_girder(const HullGirder& girder) {
  const auto section = section_properties(girder.plates);
  if (!section) return section.error();
  WrittenWorking work;
  const Origin summed = Origin::of_joint("summed over the walls, [[plate]]");
  const SectionShear<Term> shear{
      work.given({"V", "vertical shear force in the hull", "N"}, girder.shear_force,
                 Origin::of_file("hull_girder.shear_force")),
      work.given({"Q", "first moment of the deck about the neutral axis", "mm3"},
                 section->Q_deck, summed),
      work.given({"I", "second moment of the section", "mm4"}, section->I, summed)};
  const double q_V = edge_shear_flow(work, shear).value();
  reasons_.push_back({"strength.loads.hull_shear",
                      "shear flow along the joint from the hull's vertical shear",
                      work.release()});
  even_.push_back({"shear force in the hull",
                   {q_V, 0, 0},
                   Origin::of_joint("worked out above, hull's vertical shear")});
  if (!(girder.torque > 0)) return {};
  const auto wall = wall_shape(girder.plates);
  if (!wall) return wall.error();
  WrittenWorking twist;
  const ClosedWall<Term> closed{
      twist.given({"T", "torque on the hull", "N mm"}, girder.torque,
                  Origin::of_file("hull_girder.torque")),
      twist.given({"Am", "area inside the walls' mid-lines", "mm2"}, wall->enclosed,
                  summed),
      Term(1), Term(1)};
  const double q_T = torsion_flow(twist, closed).value();
  reasons_.push_back({"strength.loads.hull_torsion",
                      "shear flow along the joint from torsion of the hull",
                      twist.release()});
  even_.push_back({"torsion of the hull",
                   {q_T, 0, 0},
                   Origin::of_joint("worked out above, torsion of the hull")});
  return {};
}

namespace {

/// The pressure on the deck: the user's own, or by the small-craft formula.
Term pressure_of(WrittenWorking& work, const DeckLoad& panel) {
  if (panel.pressure)
    return work.given({"p", "pressure on the deck", "kN/m2"}, *panel.pressure,
                      Origin::of_file("deck_panel.pressure"));
  const double span = panel.span.in_mm();
  // a panel of no stated length counts with what the formula caps it at
  const double length = panel.length ? panel.length->in_mm() : 2.5 * span;
  const DeckDesign<Term> design{
      work.given({"LWL", "length of the waterline", "m"},
                 panel.waterline_length->in_mm() / 1000,
                 Origin::of_file("deck_panel.waterline_length")),
      work.given({"mLDC", "loaded displacement", "kg"}, *panel.displacement_kg,
                 Origin::of_file("deck_panel.displacement")),
      work.given({"b", "short span of the deck panel", "mm"}, span,
                 Origin::of_file("deck_panel.span")),
      work.given({"l", "long span of the deck panel", "mm"}, length,
                 panel.length
                     ? Origin::of_file("deck_panel.length")
                     : Origin::of_joint("not given: 2.5 short spans, where the "
                                        "formula's area ends")),
      work.given({"kDC", "factor of the design category", "1"}, *panel.category_factor,
                 Origin::of_file("deck_panel.category")),
      work.given({"kL", "longitudinal factor", "1"}, panel.longitudinal_factor,
                 Origin::of_file("deck_panel.longitudinal_factor"))};
  return deck_pressure(work, design);
}

}  // namespace

Errors JointLoads::add_panel(const DeckLoad& panel) {
  constexpr double nu = 0.3;
  constexpr Length widest = Length::mm(5000);
  if (!panel.pressure && panel.span >= widest)
    return {{ErrorKind::InvalidInput, "deck_panel.span",
             "[deck_panel] span is 5000 mm or more: the small-craft formula has no "
             "pressure for it; give the pressure, kN/m2"}};
  if (panel.length && *panel.length < panel.span)
    return {{ErrorKind::InvalidInput, "deck_panel.length",
             "[deck_panel] length is less than span: span is the short one"}};
  WrittenWorking work;
  const Term p = pressure_of(work, panel);
  const DeckPanel<Term> deck{
      p, work.given({"b", "short span of the deck panel", "mm"}, panel.span.in_mm(),
                    Origin::of_file("deck_panel.span"))};
  double p_T = 0;
  if (panel.length) {
    const double factor = levy_edge_factor(*panel.length / panel.span, nu);
    const Term c_V =
        work.given({"c_V", "edge factor of a plate, sides length to span, nu 0.3", "1"},
                   factor, Origin::of_joint("series of a plate, after M. Levy"));
    p_T = panel_reaction(work, deck, c_V).value();
  } else {
    p_T = strip_reaction(work, deck).value();
  }
  reasons_.push_back({"strength.loads.deck_pressure",
                      "load across the lap from pressure on the deck", work.release()});
  even_.push_back({"pressure on the deck",
                   {0, p_T, 0},
                   Origin::of_joint("worked out above, pressure on the deck")});
  return {};
}

Errors JointLoads::add_stretches(const Joint& joint, const Perimeter& perimeter) {
  Errors errors;
  const auto& loads = joint.loads->stretches;
  for (std::size_t i = 0; i < loads.size(); ++i) {
    const std::string where = fmt::format("load[{}]", i);
    const StretchLoad& load = loads[i];
    if (load.stretch.side == SideChoice::Transom && !perimeter.side(SideName::Transom))
      errors.push_back(no_transom(where + ".side"));
    for (Side& side : sides_) {
      if (!stands_on(load.stretch.side, side.name)) continue;
      const auto girths = stretch_on(*perimeter.side(side.name), load.stretch, where,
                                     "load " + load.what);
      if (!girths) {
        append(errors, girths.error());
        continue;
      }
      side.pieces.push_back({girths->first,
                             girths->second,
                             {load.what, load.load, Origin::of_file(where)}});
    }
  }
  return errors;
}

Errors JointLoads::add_points(const Joint& joint, const Perimeter& perimeter) {
  Errors errors;
  const auto& loads = joint.loads->points;
  for (std::size_t i = 0; i < loads.size(); ++i) {
    const std::string where = fmt::format("point_load[{}]", i);
    const PlaceLoad& load = loads[i];
    if (load.side == SideChoice::Transom && !perimeter.side(SideName::Transom))
      errors.push_back(no_transom(where + ".side"));
    for (Side& side : sides_) {
      if (!stands_on(load.side, side.name)) continue;
      const PerimeterSide& line = *perimeter.side(side.name);
      const auto at = place_on(line, {load.side, load.at, load.by_x, load.what}, where);
      if (!at) {
        append(errors, at.error());
        continue;
      }
      // the joint there is carries all of it
      const Length from = std::max(Length(), *at - load.spread / 2);
      const Length to = std::min(line.drill_line_length, *at + load.spread / 2);
      const double on_each_mm = load.force / (to - from).in_mm();
      side.pieces.push_back({from,
                             to,
                             {load.what, in_direction(load.direction, on_each_mm),
                              Origin::of_file(where + ".force")}});
    }
  }
  return errors;
}

const JointLoads::Side& JointLoads::side(SideName name) const {
  const auto found = std::find_if(sides_.begin(), sides_.end(),
                                  [&](const Side& side) { return side.name == name; });
  assert(found != sides_.end());
  return *found;
}

std::vector<LoadShare> JointLoads::shares_at(SideName name, Length girth) const {
  std::vector<LoadShare> shares = even_;
  for (const Piece& piece : side(name).pieces)
    if (piece.from <= girth && girth <= piece.to) shares.push_back(piece.share);
  return shares;
}

JointLoad JointLoads::at(SideName name, Length girth) const {
  JointLoad sum;
  for (const LoadShare& share : even_) add(sum, share.load);
  for (const Piece& piece : side(name).pieces)
    if (piece.from <= girth && girth <= piece.to) add(sum, piece.share.load);
  return sum;
}

std::vector<Length> JointLoads::jumps_on(SideName name) const {
  std::vector<Length> jumps;
  for (const Piece& piece : side(name).pieces) {
    jumps.push_back(piece.from);
    jumps.push_back(piece.to);
  }
  std::sort(jumps.begin(), jumps.end());
  jumps.erase(std::unique(jumps.begin(), jumps.end()), jumps.end());
  return jumps;
}

std::optional<FreeEndDistance> JointLoads::free_end(SideName name, Length girth) const {
  if (free_ends_mm_.empty()) return std::nullopt;
  const Side& there = side(name);
  const double at =
      (there.forward ? there.ring_start + girth : there.ring_start - girth).in_mm();
  const auto after = std::lower_bound(free_ends_mm_.begin(), free_ends_mm_.end(), at);
  const double next =
      after == free_ends_mm_.end() ? free_ends_mm_.front() + ring_mm_ : *after;
  const double last =
      after == free_ends_mm_.begin() ? free_ends_mm_.back() - ring_mm_ : *(after - 1);
  return FreeEndDistance{Length::mm(std::min(at - last, next - at)),
                         Length::mm(next - last)};
}

}  // namespace sheerlap

#include "joint/joint_loads.h"
#include "joint/mechanics/deck_edge.h"
#include "joint/mechanics/deck_pressure.h"
#include "joint/mechanics/hull_section.h"
#include "joint/mechanics/torsion.h"
#include "joint/reasons/working.h"

/// The loads that the hull and the deck put on the joint all round.
namespace sheerlap {

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

}  // namespace sheerlap

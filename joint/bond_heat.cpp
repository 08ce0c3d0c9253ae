#include "joint/bond_heat.h"

namespace sheerlap {
namespace {

template <class Working>
ThermalLap<typename Working::Number> thermal_lap(Working& work,
                                                 const Joint& joint,
                                                 const BondPoint& point,
                                                 Length length) {
  const DeckWarmth& warmth = *joint.loads->warmth;
  const auto strip = [&](const char* E, const char* t, const char* b,
                         const std::string& table, const Laminate& laminate,
                         Length width, const char* width_key) {
    return work.given({E, "modulus of the laminate", "N/mm2"},
                      *laminate.strength.modulus, Origin::of_file(table + ".modulus")) *
           work.given({t, "thickness of the laminate", "mm"},
                      laminate.thickness.in_mm(),
                      Origin::of_file(table + ".thickness")) *
           work.given({b, "width of the strip that pulls together", "mm"},
                      width.in_mm(), Origin::of_file(width_key));
  };
  const auto kelvin = work.given({"dT", "how much warmer the deck is", "K"},
                                 warmth.kelvin, Origin::of_file("deck_warmth.warmer"));
  const auto alpha =
      work.given({"alpha", "expansion of the deck", "1e-6/K"},
                 *joint.lip.strength.expansion, Origin::of_file("lip.expansion"));
  const auto eps = work.figure(
      {"eps", "free thermal strain of the deck over the hull", "1",
       "derived: expansion times the difference of temperature", "hull not warmed"},
      alpha * kelvin / 1e6);
  return {
      work.given({"Ga", "shear modulus of the adhesive", "N/mm2"},
                 *joint.adhesive->strength.shear_modulus,
                 Origin::of_file("adhesive.shear_modulus")),
      work.given({"eta", "gap midway across the bond band", "mm"}, point.gap().in_mm(),
                 Origin::of_joint("measured between the faces")),
      work.given({"w", "width of the bond band", "mm"}, point.width.in_mm(),
                 Origin::of_joint("measured along the hull face")),
      strip("E_hull", "t_hull", "b_hull", "hull", joint.hull, warmth.hull_width,
            "deck_warmth.hull_width"),
      strip("E_deck", "t_deck", "b_deck", "lip", joint.lip, warmth.deck_width,
            "deck_warmth.deck_width"),
      work.given({"L", "length of joint from free end to free end", "mm"},
                 length.in_mm(), Origin::of_joint("along the drill line")),
      eps};
}

template <class Working>
typename Working::Number flow(Working& work,
                              const ThermalLap<typename Working::Number>& lap,
                              Length distance) {
  const auto x = work.given({"x", "distance from the nearest free end", "mm"},
                            distance.in_mm(), Origin::of_joint("along the drill line"));
  return work.figure(
      {"q_heat", "shear flow along the joint from the warm deck", "N/mm",
       "derived: stress times the bond's width", thermal_mismatch_validity},
      thermal_shear_at(work, lap, x) * lap.w);
}

}  // namespace

double heat_flow(const Joint& joint, const JointLoads& loads, const BondPoint& point) {
  if (!joint.loads->warmth || !(point.gap() > Length())) return 0;
  const auto end = loads.free_end(point.side, point.on_line);
  if (!end || !(end->length > Length())) return 0;
  PlainWorking work;
  return flow(work, thermal_lap(work, joint, point, end->length), end->distance);
}

std::vector<Reason> heat_reasons(const Joint& joint,
                                 const JointLoads& loads,
                                 const BondPoint& point) {
  const auto end = loads.free_end(point.side, point.on_line);
  WrittenWorking work;
  const auto lap = thermal_lap(work, joint, point, end->length);
  thermal_locked_force(work, lap);
  flow(work, lap, end->distance);
  return work.release();
}

}  // namespace sheerlap

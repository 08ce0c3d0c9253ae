#include "joint/clamping.h"

#include <algorithm>
#include <cassert>

#include "joint/mechanics/foundation_row.h"
#include "joint/mechanics/lip_bending.h"
#include "joint/mechanics/watertight_pitch.h"
#include "joint/mechanics/yield_squeeze.h"
#include "joint/reasons/working.h"

namespace sheerlap {
namespace {

bool flows(const AdhesiveStrength& paste) {
  return paste.viscosity || paste.yield_stress;
}

/// Whether the paste goes on pressing the lip out when it is at rest.
bool presses_at_rest(const AdhesiveStrength& paste) {
  return paste.yield_stress.value_or(0) > 0;
}

template <class Working>
Squeeze<typename Working::Number> strip_at(Working& work,
                                           const Joint& joint,
                                           const BondPoint& place) {
  const auto viscosity = joint.adhesive->strength.viscosity;
  return {work.given({"mu", "viscosity of the paste", "Pa s"}, viscosity.value_or(0),
                     viscosity ? Origin::of_file("adhesive.viscosity")
                               : Origin::of_joint("not given: none")),
          work.given({"w", "width of the bond band", "mm"}, place.width.in_mm(),
                     Origin::of_joint("measured along the hull face")),
          work.given({"eta", "lesser gap of the bond band's edges", "mm"},
                     std::min(place.gap_top, place.gap_low).in_mm(),
                     Origin::of_joint("measured between the faces")),
          work.given({"V_c", "speed at which the gap closes", "mm/s"},
                     joint.strength.closing_speed,
                     Origin::of_file("strength.closing_speed"))};
}

template <class Working>
auto given_yield(Working& work, const Joint& joint) {
  const auto yield = joint.adhesive->strength.yield_stress;
  return work.given({"ty", "yield stress of the paste", "Pa"}, yield.value_or(0),
                    yield ? Origin::of_file("adhesive.yield_stress")
                          : Origin::of_joint("not given: none"));
}

/// What closes the gap at the closing speed, on each mm.
template <class Working>
auto line_force(Working& work, const Joint& joint, const BondPoint& place) {
  return highest_squeeze_force(work, strip_at(work, joint, place),
                               given_yield(work, joint));
}

/// What presses the lip out on each mm when it has come to rest: the paste's yield.
template <class Working>
auto rest_force(Working& work, const Joint& joint, const BondPoint& place) {
  return yield_force(work, strip_at(work, joint, place), given_yield(work, joint));
}

/// The lip as it bends between fasteners: all of its lap's height.
template <class Working>
LipSpan<typename Working::Number> lip_at(Working& work,
                                         const Joint& joint,
                                         const BondPoint& place,
                                         const typename Working::Number& f) {
  const auto h =
      work.given({"h", "height of the lip that bends", "mm"}, place.width.in_mm(),
                 Origin::of_joint("width of the bond band"));
  const auto t =
      work.given({"t", "thickness of the lip", "mm"}, joint.lip.thickness.in_mm(),
                 Origin::of_file("lip.thickness"));
  const auto E =
      work.given({"E", "modulus of the lip", "N/mm2"}, *joint.lip.strength.modulus,
                 Origin::of_file("lip.modulus"));
  return {f, E, lip_inertia(work, h, t)};
}

template <class Working>
auto given_pitch(Working& work, Length pitch) {
  return work.given({"s", "space between the two holes", "mm"}, pitch.in_mm(),
                    Origin::of_joint("as in layout"));
}

template <class Working>
auto gap_pitch(Working& work, const Joint& joint, const BondPoint& place) {
  const auto f = rest_force(work, joint, place);
  const auto lip = lip_at(work, joint, place, f);
  return pitch_for_gap_change(work, lip,
                              work.given({"g", "change of the gap allowed", "mm"},
                                         joint.strength.gap_change->in_mm(),
                                         Origin::of_file("strength.gap_change")));
}

template <class Working>
FoundationBeam<typename Working::Number> cured_lip(Working& work,
                                                   const Joint& joint,
                                                   const BondPoint& place) {
  const auto k_f = foundation_stiffness(
      work,
      work.given({"Ea", "modulus of the adhesive", "N/mm2"},
                 *joint.adhesive->strength.modulus,
                 Origin::of_file("adhesive.modulus")),
      work.given({"w", "width of the bond band", "mm"}, place.width.in_mm(),
                 Origin::of_joint("measured along the hull face")),
      work.given({"eta", "gap midway across the bond band", "mm"}, place.gap().in_mm(),
                 Origin::of_joint("measured between the faces")));
  const auto lip = lip_at(work, joint, place, k_f);
  return {k_f, lip.E, lip.I};
}

template <class Working>
auto even_pitch(Working& work, const Joint& joint, const BondPoint& place) {
  const auto beta = foundation_beta(work, cured_lip(work, joint, place));
  return work.figure({"s_even", "space beyond which clamps act each alone", "mm",
                      "beams on elastic foundation: pi/beta",
                      "pressure midway between two is 43 % there; long slender lip"},
                     std::numbers::pi / beta);
}

template <class Working>
auto sealed_pitch(Working& work, const Joint& joint, const FastenerSpec& spec) {
  return flange_pitch(
      work,
      SealedFlange<typename Working::Number>{
          work.given({"d", "diameter of the fastener", "mm"}, spec.diameter.in_mm(),
                     Origin::of_joint("table of the fastener")),
          work.given({"t", "thickness of the lip", "mm"}, joint.lip.thickness.in_mm(),
                     Origin::of_file("lip.thickness")),
          work.given({"m", "gasket factor of the sealant", "1"},
                     *joint.adhesive->strength.gasket_factor,
                     Origin::of_file("adhesive.gasket_factor"))});
}

}  // namespace

namespace {

Length lesser_gap(const BondPoint& point) {
  return std::min(point.gap_top, point.gap_low);
}

bool narrower(const BondPoint& a, const BondPoint& b) {
  return lesser_gap(a) < lesser_gap(b);
}

/// The place of the least gap between two girths on a side's drill line; none if no
/// place between them was worked.
const BondPoint* least_between(const BondStrength& bond,
                               SideName side,
                               Length from,
                               Length to) {
  const BondPoint* least = nullptr;
  for (const BondPoint& point : bond.along)
    if (point.side == side && from <= point.on_line && point.on_line <= to &&
        (least == nullptr || narrower(point, *least)))
      least = &point;
  return least;
}

/// How much a space asks: the bow of the lip in it, or the force to close it.
double asked_in(const Joint& joint, const BondPoint& place, Length space) {
  PlainWorking work;
  if (!presses_at_rest(joint.adhesive->strength))
    return clamp_force(work, line_force(work, joint, place), space.in_mm());
  const double rest = rest_force(work, joint, place);
  return lip_deflection(work, lip_at(work, joint, place, rest), space.in_mm());
}

/// Puts the place and the space that ask most into `result`.
void find_space(const Joint& joint,
                const BondStrength& bond,
                const Layout& layout,
                Clamping& result) {
  double most = -1;
  for (const LayoutSide& side : layout.sides)
    for (const LayoutRun& run : side.runs) {
      const BondPoint* place = least_between(bond, side.name, run.from, run.to);
      if (place == nullptr || !(lesser_gap(*place) > Length())) continue;
      const double asked = asked_in(joint, *place, run.pitch);
      if (asked <= most) continue;
      most = asked;
      result.place = *place;
      result.space = run.pitch;
    }
}

}  // namespace

BondPoint least_gap(const BondStrength& bond) {
  return *std::min_element(bond.along.begin(), bond.along.end(), narrower);
}

Clamping clamping(const Joint& joint,
                  const FastenerSpec& spec,
                  const BondStrength& bond,
                  const Layout& layout) {
  Clamping result;
  result.place = least_gap(bond);
  if (joint.adhesive->strength.gasket_factor) {
    PlainWorking work;
    result.tight_pitch = Length::mm(sealed_pitch(work, joint, spec));
  }
  if (!(lesser_gap(result.place) > Length())) {
    result.left_out.push_back(
        "closing force and bow of the lip: the faces touch or interfere");
    return result;
  }
  if (flows(joint.adhesive->strength)) find_space(joint, bond, layout, result);
  PlainWorking work;
  result.even_pitch = Length::mm(even_pitch(work, joint, result.place));
  result.lift_pitch =
      Length::mm(lift_off_pitch(work, cured_lip(work, joint, result.place)));
  if (!flows(joint.adhesive->strength)) {
    result.left_out.push_back(
        "closing force and bow of the lip: [adhesive] has neither viscosity nor "
        "yield_stress");
    return result;
  }
  const auto strip = strip_at(work, joint, result.place);
  result.flow_force = squeeze_force(work, strip);
  result.hold_force =
      yield_force(work, strip, joint.adhesive->strength.yield_stress.value_or(0));
  result.line_force = line_force(work, joint, result.place);
  result.fastener_force = clamp_force(work, *result.line_force, result.space.in_mm());
  if (!presses_at_rest(joint.adhesive->strength)) {
    result.left_out.push_back(
        "bow of the wet lip: [adhesive] has no yield_stress, so nothing presses on it "
        "once it is closed");
    return result;
  }
  const double rest = rest_force(work, joint, result.place);
  result.bow = Length::mm(lip_deflection(work, lip_at(work, joint, result.place, rest),
                                         result.space.in_mm()));
  result.pitch = clamped_pitch(joint, result.place);
  if (!result.pitch)
    result.left_out.push_back(
        "largest space for the wet lip: [strength] has no gap_change");
  return result;
}

Explanations clamping_reasons(const Joint& joint,
                              const FastenerSpec& spec,
                              const Clamping& clamping) {
  Explanations reasons;
  if (clamping.line_force) {
    WrittenWorking work;
    const auto f = line_force(work, joint, clamping.place);
    const auto s = given_pitch(work, clamping.space);
    clamp_force(work, f, s);
    reasons.push_back({"strength.clamping.fastener_force",
                       "closing the lip on the wet paste, in the space that asks most",
                       work.release()});
  }
  if (clamping.bow) {
    WrittenWorking work;
    const auto f = rest_force(work, joint, clamping.place);
    const auto s = given_pitch(work, clamping.space);
    lip_deflection(work, lip_at(work, joint, clamping.place, f), s);
    reasons.push_back({"strength.clamping.bow",
                       "bow of the closed lip between two holes, the paste still wet",
                       work.release()});
  }
  if (clamping.pitch) {
    WrittenWorking work;
    gap_pitch(work, joint, clamping.place);
    reasons.push_back({"strength.clamping.pitch",
                       "largest space there for the change of gap allowed while wet",
                       work.release()});
  }
  if (clamping.even_pitch) {
    WrittenWorking work;
    even_pitch(work, joint, clamping.place);
    lift_off_pitch(work, cured_lip(work, joint, clamping.place));
    reasons.push_back({"strength.clamping.lift_pitch",
                       "the lip on the cured layer, pressed by its fasteners",
                       work.release()});
  }
  if (clamping.tight_pitch) {
    WrittenWorking work;
    sealed_pitch(work, joint, spec);
    reasons.push_back({"strength.clamping.tight_pitch",
                       "largest space of a flange bedded in sealant", work.release()});
  }
  return reasons;
}

std::optional<Length> clamped_pitch(const Joint& joint, const BondPoint& place) {
  if (!joint.strength.gap_change || !presses_at_rest(joint.adhesive->strength))
    return std::nullopt;
  if (!(std::min(place.gap_top, place.gap_low) > Length())) return std::nullopt;
  PlainWorking work;
  return Length::mm(gap_pitch(work, joint, place));
}

}  // namespace sheerlap

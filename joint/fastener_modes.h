#pragma once

#include <algorithm>
#include <optional>
#include <string>

#include "joint/drill_stations.h"
#include "joint/fastener_rows.h"
#include "joint/fasteners.h"
#include "joint/joint.h"
#include "joint/mechanics/fastened_laminate.h"
#include "joint/mechanics/fastener_strength.h"
#include "joint/reasons/working.h"
#include "joint/wet_share.h"

namespace sheerlap {

/// What a hole stands among, as far as its strength goes.
struct HoleSetting {
  Length edge_low;  ///< to the lip's low edge
  Length edge_top;  ///< to the hull's top edge
  Length space;     ///< the lesser space beside it
};

/// The metal's tensile strength, and where it comes from.
struct MetalStrength {
  double tensile = 0;
  Origin origin;
};

/// One of the two laminates at a hole, with the words for it.
struct HoledLaminate {
  const Laminate& laminate;
  std::string table;  ///< "lip"
  Length hole;
  std::string hole_origin;
  Length edge;
  Length sunk = {};  ///< depth that a countersunk head takes out of it
};

/// The depth that a countersunk head takes out of the lip.
inline Length sunk_depth(const FastenerSpec& spec) {
  return spec.head == HeadKind::Countersunk ? spec.countersink_depth : Length();
}

/// What is left of a laminate's thickness under a countersunk head.
template <class Working>
auto left_thickness(Working& work,
                    const Laminate& laminate,
                    const std::string& table,
                    Length sunk) {
  if (!(sunk > Length()))
    return work.given({"t", "thickness of this laminate", "mm"},
                      laminate.thickness.in_mm(),
                      Origin::of_file(table + ".thickness"));
  return work.given({"t", "thickness left under the countersunk head", "mm"},
                    std::max(laminate.thickness - sunk, Length()).in_mm(),
                    Origin::of_joint("thickness less the countersink's depth"));
}

inline HoledLaminate holed_lip(const Joint& joint,
                               const FastenerSpec& spec,
                               const HoleSetting& setting) {
  return {joint.lip,        "lip",           spec.lip_hole, "drilled in the lip",
          setting.edge_low, sunk_depth(spec)};
}

inline HoledLaminate holed_hull(const Joint& joint,
                                const FastenerSpec& spec,
                                const HoleSetting& setting) {
  const Length drilled = spec.hull_pilot.value_or(spec.lip_hole);
  const bool cut = spec.diameter > drilled;
  return {joint.hull, "hull", cut ? spec.diameter : drilled,
          cut ? "cut by the thread, wider than the pilot" : "drilled in the hull",
          setting.edge_top};
}

/// A laminate as one hole takes it.
template <class Working>
HoleInLaminate<typename Working::Number> hole_in(Working& work,
                                                 const FastenerSpec& spec,
                                                 const HoledLaminate& holed,
                                                 Length space) {
  return {work.given({"d", "diameter of the fastener", "mm"}, spec.diameter.in_mm(),
                     Origin::of_joint("table of the fastener")),
          work.given({"dh", "hole in this laminate", "mm"}, holed.hole.in_mm(),
                     Origin::of_joint(holed.hole_origin)),
          left_thickness(work, holed.laminate, holed.table, holed.sunk),
          work.given({"e",
                      "from the hole's centre to this laminate's edge, trim taken "
                      "off",
                      "mm"},
                     holed.edge.in_mm(), Origin::of_joint("measured, as in schedule")),
          work.given({"s", "lesser space beside the hole", "mm"}, space.in_mm(),
                     Origin::of_joint("as in layout"))};
}

/// What one laminate carries at a hole, N; 0 where it has no laminate beyond the hole.
template <class Number>
struct LaminateModes {
  Number bearing;
  Number shear_out;
  Number net_tension;
};

template <class Working>
LaminateModes<typename Working::Number> laminate_modes(Working& work,
                                                       const Joint& joint,
                                                       const FastenerSpec& spec,
                                                       const HoledLaminate& holed,
                                                       Length space) {
  using Number = typename Working::Number;
  const auto hole = hole_in(work, spec, holed, space);
  const LaminateStrength& strength = holed.laminate.strength;
  const auto value = [&](const char* letters, const char* what, double stress,
                         const char* key) {
    return work.given({letters, what, "N/mm2"}, stress,
                      Origin::of_file(holed.table + "." + key));
  };
  const Number kw = wet_share(work, joint);
  const Number crushed = bearing(
      work, hole, value("sbr", "bearing strength", *strength.bearing, "bearing"));
  const bool has_edge = holed.edge > holed.hole / 2;
  const Number sheared = has_edge
                             ? shear_out(work, hole,
                                         value("tau", "shear strength in the plane",
                                               *strength.shear, "shear"))
                             : Number(0);
  const bool has_strip = space > holed.hole && spec.diameter * 6 > holed.hole;
  const Number torn =
      has_edge && has_strip
          ? net_tension(
                work, hole,
                value("sut", "tensile strength", *strength.tension, "tension"),
                work.given({"C", "relief of the stress at the hole, 1 brittle", "1"},
                           joint.strength.hole_brittleness,
                           Origin::of_file("strength.hole_brittleness")))
          : Number(0);
  return {work.figure({"Pbr_wet", "load at which it crushes, hot and wet", "N",
                       "derived: what is left hot and wet",
                       "the share is common to all laminates"},
                      kw * crushed),
          work.figure({"Pso_wet", "load at which it shears out, hot and wet", "N",
                       "derived: what is left hot and wet",
                       "the share is common to all laminates"},
                      kw * sheared),
          work.figure({"Pnt_wet", "load at which it tears, hot and wet", "N",
                       "derived: what is left hot and wet",
                       "the share is common to all laminates"},
                      kw * torn)};
}

/// What holds the head, or a washer, on a laminate along the fastener's axis, N.
/// @param table  of the laminate in the joint file
template <class Working>
auto head_hold(Working& work,
               const Joint& joint,
               const FastenerSpec& spec,
               const Laminate& laminate,
               const std::string& table) {
  const Length sunk = table == "lip" ? sunk_depth(spec) : Length();
  const auto Ppt = pull_through(
      work,
      work.given({"Dh", "diameter of what bears on the laminate", "mm"},
                 spec.head_diameter.in_mm(), Origin::of_joint("table of the fastener")),
      left_thickness(work, laminate, table, sunk),
      work.given({"til", "interlaminar shear strength of the laminate", "N/mm2"},
                 *laminate.strength.interlaminar,
                 Origin::of_file(table + ".interlaminar")));
  return work.figure(
      {"Ppt_wet", "load that pulls the head through, hot and wet", "N",
       "derived: what is left hot and wet", "the share is common to all laminates"},
      wet_share(work, joint) * Ppt);
}

/// What holds a screw's thread in the hull, N.
template <class Working>
auto thread_hold(Working& work, const Joint& joint, const FastenerSpec& spec) {
  const auto Ppo = pull_out(
      work,
      ThreadInLaminate<typename Working::Number>{
          work.given({"d", "diameter over the thread", "mm"}, spec.diameter.in_mm(),
                     Origin::of_joint("table of the fastener")),
          work.given({"Le", "whole thread in the hull", "mm"},
                     joint.hull.thickness.in_mm(), Origin::of_file("hull.thickness")),
          work.given({"fe", "share of the thread that holds", "1"},
                     joint.strength.thread_grip,
                     Origin::of_file("strength.thread_grip"))},
      work.given({"til", "interlaminar shear strength of the hull", "N/mm2"},
                 *joint.hull.strength.interlaminar,
                 Origin::of_file("hull.interlaminar")));
  return work.figure(
      {"Ppo_wet", "load that pulls the thread out, hot and wet", "N",
       "derived: what is left hot and wet", "the share is common to all laminates"},
      wet_share(work, joint) * Ppo);
}

/// The stress area of the thread, mm2.
template <class Working>
auto thread_area(Working& work, const FastenerSpec& spec) {
  return work.given({"As", "area of the thread that carries", "mm2"}, *spec.tensile_mm2,
                    Origin::of_joint("table of the fastener"));
}

/// What the metal carries in shear, N.
/// @param metal  its tensile strength
template <class Working>
auto shank_shear(Working& work, const FastenerSpec& spec, const MetalStrength& metal) {
  return fastener_shear(work,
                        work.given({"Rm", "tensile strength of the metal", "N/mm2"},
                                   metal.tensile, metal.origin),
                        thread_area(work, spec));
}

/// What the metal carries in tension, N.
template <class Working>
auto shank_pull(Working& work, const FastenerSpec& spec, const MetalStrength& metal) {
  return fastener_tension(work,
                          work.given({"Rm", "tensile strength of the metal", "N/mm2"},
                                     metal.tensile, metal.origin),
                          thread_area(work, spec));
}

}  // namespace sheerlap

#include "joint/strength_told.h"

#include <algorithm>
#include <string_view>

#include "joint/reasons/working.h"

namespace sheerlap {
namespace {

/// A line of a working and the number it tells of.
struct Entry {
  std::string_view figure;  ///< what its explanation's place starts and ends in
  std::string_view ends_in;
  std::string_view letters;
  std::string_view path;
};

constexpr std::string_view bond = "strength.bond.", hole = "strength.fasteners.",
                           share = "strength.share.", close = "strength.clamping.";

constexpr Entry entries[] = {
    {bond, "worst.load", "q", "strength.bond.worst.load.along"},
    {bond, "worst.load", "p", "strength.bond.worst.load.across"},
    {bond, "worst.load", "V_off", "strength.bond.worst.load.off"},
    {bond, "worst.load", "q", "strength.bond.stations.*.load.along"},
    {bond, "worst.load", "p", "strength.bond.stations.*.load.across"},
    {bond, "worst.load", "V_off", "strength.bond.stations.*.load.off"},
    {bond, "worst.utilisation", "w", "strength.bond.worst.width"},
    {bond, "worst.utilisation", "tau_Lw", "strength.bond.worst.shear_along"},
    {bond, "worst.utilisation", "tau_mw", "strength.bond.worst.shear_across"},
    {bond, "worst.utilisation", "sig_w", "strength.bond.worst.peel"},
    {bond, "worst.utilisation", "w", "strength.bond.stations.*.width"},
    {bond, "worst.utilisation", "tau_Lw", "strength.bond.stations.*.shear_along"},
    {bond, "worst.utilisation", "tau_mw", "strength.bond.stations.*.shear_across"},
    {bond, "worst.utilisation", "sig_w", "strength.bond.stations.*.peel"},
    {hole, ".load", "V", "strength.fasteners.*.load"},
    {hole, ".load", "N", "strength.fasteners.*.pull"},
    {hole, ".load", "b", "strength.fasteners.*.carries"},
    {hole, ".shank", "Fv", "strength.fasteners.*.shank"},
    {hole, ".shank", "Ft", "strength.fasteners.*.shank_pull"},
    {hole, ".lip", "Pbr_wet", "strength.fasteners.*.bearing"},
    {hole, ".lip", "Pso_wet", "strength.fasteners.*.shear_out"},
    {hole, ".lip", "Pnt_wet", "strength.fasteners.*.net_tension"},
    {hole, ".pull_through", "Ppt_wet", "strength.fasteners.*.pull_through"},
    {hole, ".pull_out", "Ppo_wet", "strength.fasteners.*.pull_out"},
    {hole, ".utilisation", "u", "strength.fasteners.*.utilisation"},
    {share, ".share", "C", "strength.share.flexibility"},
    {share, ".share", "share", "strength.share.share"},
    {share, ".metal_share", "C_metal", "strength.share.metal_flexibility"},
    {share, ".metal_share", "share", "strength.share.metal_share"},
    {close, "fastener_force", "F_mu", "strength.clamping.flow_force"},
    {close, "fastener_force", "F_ty", "strength.clamping.hold_force"},
    {close, "fastener_force", "F_high", "strength.clamping.line_force"},
    {close, "fastener_force", "F_clamp", "strength.clamping.fastener_force"},
    {close, ".bow", "dev", "strength.clamping.bow"},
    {close, ".pitch", "s_g", "strength.clamping.pitch"},
    {close, ".lift_pitch", "s_even", "strength.clamping.even_pitch"},
    {close, ".lift_pitch", "s_lift", "strength.clamping.lift_pitch"},
    {close, ".tight_pitch", "s_w", "strength.clamping.tight_pitch"},
};

bool has_line(const Explanation& reason, std::string_view letters) {
  return std::any_of(reason.steps.begin(), reason.steps.end(),
                     [&](const Reason& step) { return step.letters == letters; });
}

/// The use that governs: the line of the bond's uses with the value that it has.
void tell_use(Explanation& reason, const BondPoint& worst) {
  const auto governs =
      std::find_if(reason.steps.rbegin(), reason.steps.rend(), [&](const Reason& step) {
        return step.letters.starts_with("u_") && step.value == worst.utilisation;
      });
  if (governs == reason.steps.rend()) return;
  for (const char* path :
       {"strength.bond.worst.utilisation", "strength.bond.stations.*.utilisation",
        "strength.bond.along.*.utilisation"})
    reason.tells.push_back({path, governs->letters});
}

/// The place of the bond's worst use, and the bond line there.
Explanation place_reason(const BondPoint& worst) {
  const Origin faces = Origin::of_joint("gap between the faces, as in `fit`");
  WrittenWorking work;
  work.given({"s", "girth on the sheer", "mm"}, worst.girth.in_mm(),
             Origin::of_joint("where the use is greatest of all places looked at"));
  const Term top = work.given({"eta_top", "bond line at the band's upper edge", "mm"},
                              worst.gap_top.in_mm(), faces);
  const Term low = work.given({"eta_low", "bond line at the band's lower edge", "mm"},
                              worst.gap_low.in_mm(), faces);
  work.figure({"eta", "mean bond line across the band", "mm",
               "derived: the mean of both edges", "faces straight down the lap"},
              (top + low) / 2);
  Explanation reason{"strength.bond.worst.gap", "bond line at the worst place",
                     work.release()};
  for (const char* point : {"strength.bond.worst", "strength.bond.stations.*"})
    for (const auto& [key, letters] :
         {std::pair(".girth", "s"), std::pair(".gap", "eta"),
          std::pair(".gap_top", "eta_top"), std::pair(".gap_low", "eta_low")})
      reason.tells.push_back({std::string(point) + key, letters});
  reason.tells.push_back({"strength.bond.along.*.girth", "s"});
  return reason;
}

/// The place where the lip is closed and the load shared out.
Explanation clamping_place(const Clamping& clamping) {
  WrittenWorking work;
  work.given({"s", "girth on the sheer", "mm"}, clamping.place.girth.in_mm(),
             Origin::of_joint("where the gap is least in the space that asks most"));
  work.given({"s_h", "space between the two holes", "mm"}, clamping.space.in_mm(),
             Origin::of_joint("as in `layout`"));
  return {"strength.clamping.girth",
          "place where closing the lip is worked",
          work.release(),
          {{"strength.clamping.girth", "s"}, {"strength.clamping.space", "s_h"}}};
}

}  // namespace

Explanations strength_told(Explanations reasons, const Strength& strength) {
  reasons.push_back(place_reason(strength.bond.worst));
  reasons.push_back(clamping_place(strength.clamping));
  for (Explanation& reason : reasons) {
    const std::string_view figure = reason.figure;
    for (const Entry& entry : entries)
      if (figure.starts_with(entry.figure) && figure.ends_with(entry.ends_in) &&
          has_line(reason, entry.letters))
        reason.tells.push_back({std::string(entry.path), std::string(entry.letters)});
    if (figure == "strength.bond.worst.utilisation")
      tell_use(reason, strength.bond.worst);
  }
  return reasons;
}

}  // namespace sheerlap

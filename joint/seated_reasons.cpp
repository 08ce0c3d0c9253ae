#include "joint/seated_reasons.h"

#include <string>

#include "joint/reasons/found.h"

namespace sheerlap {
namespace {

constexpr std::string_view seated_face =
    "the hull face stands where the gaps of the seating are, straight between places "
    "chosen to keep them within 0.01 mm; as drawn it is the drawing's";

constexpr FoundWords girth_words{
    {"L_good", "girth along the sheer of one verdict, all sides", "mm",
     "derived: the runs of the fit added", seated_face},
    "the fit's runs with this verdict, end less start, added",
    "1e-6 mm a run for the faces given"};
constexpr FoundWords joint_words{
    {"V_joint", "volume between the faces over the bond band", "ml",
     "derived: volume between the ruled faces", seated_face},
    "as adhesive.joint_volume, on this hull face",
    "about 1e-10 of itself for the faces given"};
constexpr FoundWords bead_words{
    {"V_bead", "adhesive laid as beads", "ml",
     "derived: each run's beads times its length", seated_face},
    "as adhesive.bead_volume, on this hull face",
    "1e-9 of itself for the faces given"};
constexpr FoundWords boat_words{
    {"V_boat", "adhesive one boat takes", "ml",
     "derived: bead volume with waste and with what each fresh nozzle takes",
     seated_face},
    "as adhesive.boat_volume, on this hull face",
    "1e-9 of itself for the faces given"};
constexpr FoundWords pack_words{
    {"n_packs", "packs opened for one boat", "1", "derived: rounded up", seated_face},
    "as adhesive.packs, on this hull face",
    "exact"};
constexpr FoundWords length_words{
    {"l", "length of fastener", "mm", "derived: the shortest in stock that serves",
     seated_face},
    "as schedule.length, for the stack of each hole on this hull face",
    "exact"};
constexpr FoundWords count_words{
    {"n_l", "fasteners of that length in one boat", "1", "derived: counted",
     seated_face},
    "the holes of the drawing whose stack asks for that length",
    "exact"};

void add(Explanations& reasons,
         const FoundWords& words,
         double value,
         const std::string& name) {
  // one explanation is of both, as drawn and seated
  std::string figure = "seating.follows.seated." + name;
  std::string both = "seating.follows.*." + name;
  if (const auto number = figure.find(".0."); number != std::string::npos)
    both = "seating.follows.*." + name.substr(0, name.find(".0.")) + ".*." +
           name.substr(name.find(".0.") + 3);
  reasons.push_back(found_reason(words, value, figure, {both}));
}

}  // namespace

Explanations seated_reasons(const SeatedJoint& joint) {
  Explanations reasons;
  const JointFollows& seated = joint.seated;
  reasons.push_back(found_reason(girth_words, seated.girth.good.in_mm(),
                                 "seating.follows.seated.girth.good",
                                 {"seating.follows.*.girth.*"}));
  add(reasons, joint_words, seated.adhesive.joint.in_ml(), "joint_volume");
  add(reasons, bead_words, seated.adhesive.bead.in_ml(), "bead_volume");
  add(reasons, boat_words, seated.adhesive.boat.in_ml(), "boat_volume");
  add(reasons, pack_words, static_cast<double>(seated.adhesive.packs), "packs");
  if (seated.fasteners.empty()) return reasons;
  const FastenersOfLength& first = seated.fasteners.front();
  if (first.length)
    add(reasons, length_words, first.length->in_mm(), "fasteners.0.length");
  add(reasons, count_words, static_cast<double>(first.count), "fasteners.0.count");
  return reasons;
}

}  // namespace sheerlap

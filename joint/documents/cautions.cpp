#include "joint/documents/cautions.h"

namespace sheerlap {

const std::vector<std::string>& cautions() {
  static const std::vector<std::string> paragraphs{
      "This sets out a joint; it does not certify one. Scantlings, fastener size and "
      "pitch are for a qualified naval architect, the class or flag authority, and the "
      "adhesive's own data sheet.",
      "Drilling, cutting and sanding GRP makes fine glass dust: wear eye protection "
      "and a respirator that stops dust, take the dust off at the tool, and cover the "
      "skin.",
      "Green laminate gives off styrene, and adhesives give off methacrylate or "
      "isocyanate vapour: ventilate, wear the respirator, gloves and eye protection "
      "that the safety data sheet asks for, and keep every source of ignition away.",
      "Prove drill sizes, screw grip and a sample bond on an offcut before the first "
      "hole in a boat."};
  return paragraphs;
}

}  // namespace sheerlap

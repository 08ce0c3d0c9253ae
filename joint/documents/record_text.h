#pragma once

#include <string>
#include <vector>

#include "joint/documents/number_style.h"
#include "joint/readings_gap.h"
#include "joint/records/boat_record.h"

namespace sheerlap {

/// What was added to a record, and how a boat's gap follows from its readings.
struct AddedBoat {
  BoatRecord boat;  ///< as it is kept now
  bool is_new = false;
  std::size_t readings = 0;  ///< of these and leaks as many were added
  std::size_t leaks = 0;
  std::vector<HeldStretch> held;
  std::vector<SideName> unread;
  std::vector<std::string> one_edge;  ///< places where one edge only was read
};

std::string added_text(const AddedBoat& added, const NumberStyle& style);
std::string boat_list_text(const BoatList& list, const NumberStyle& style);
std::string boat_text(const BoatRecord& boat, const NumberStyle& style);

}  // namespace sheerlap

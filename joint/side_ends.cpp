#include "joint/side_ends.h"

#include <cmath>

namespace sheerlap {

std::vector<SideDatum> side_datums(const Perimeter& perimeter) {
  std::vector<SideDatum> datums;
  for (const PerimeterSide& side : perimeter.sides) {
    datums.push_back({side.name, start_word(side), on_drill_line(side, Length())});
    datums.push_back(
        {side.name, end_word(side), on_drill_line(side, side.drill_line_length)});
  }
  return datums;
}

Point3 on_drill_line(const PerimeterSide& side, Length girth) {
  return side.drill_line.line().at(side.drill_line.place_at(girth)).point;
}

std::string start_word(const PerimeterSide& side) {
  return side.name == SideName::Transom ? "starboard transom corner" : "bow datum";
}

std::string end_word(const PerimeterSide& side) {
  constexpr double on_centreline_mm = 1e-3;
  if (side.name == SideName::Transom) return "port transom corner";
  if (side.end == SideEnd::End) return "after end of the joint";
  const Point3 end = on_drill_line(side, side.drill_line_length);
  return std::abs(end.y()) > on_centreline_mm ? side_word(side.name) + " transom corner"
                                              : "centreline aft";
}

}  // namespace sheerlap

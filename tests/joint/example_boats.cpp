#include "tests/joint/example_boats.h"

#include <cmath>

namespace sheerlap {

std::vector<Point3> small_boat() {
  return {{0, 0, 820},      {180, 150, 800},  {520, 370, 765},  {1000, 590, 725},
          {1700, 790, 680}, {2500, 910, 645}, {3300, 955, 625}, {4200, 950, 615},
          {5300, 890, 615}, {6200, 805, 625}, {6240, 400, 632}, {6250, 0, 635}};
}

Joint as_whole(const Joint& half) {
  Joint whole = half;
  whole.sheer.half = false;
  for (std::size_t i = half.sheer.rows.size() - 2; i > 0; --i) {
    SheerRow row = half.sheer.rows[i];
    row.point.y() = -row.point.y();
    whole.sheer.rows.push_back(row);
  }
  return whole;
}

Joint with_uneven_offsets(Joint joint) {
  for (std::size_t i = 0; i < joint.sheer.rows.size(); ++i) {
    const double k = static_cast<double>(i);
    FlangeOffsets& offsets = joint.sheer.rows[i].offsets;
    offsets.lap = Length::mm(50 + 6 * std::sin(k));
    offsets.hull_low = Length::mm(2 * std::cos(2 * k));
    offsets.lip_top = Length::mm(3 + 0.5 * std::sin(3 * k));
    offsets.lip_low = Length::mm(6 + 1.5 * std::cos(k));
  }
  return joint;
}

std::vector<Point3> traces(const Perimeter& perimeter) {
  std::vector<Point3> points;
  for (const PerimeterSide& side : perimeter.sides) {
    for (const SideLine* line : {&side.sheer, &side.drill_line, &side.hull_line}) {
      points.emplace_back(line->length().in_mm(), 0, 0);
      for (int tenth = 0; tenth <= 10; ++tenth)
        points.push_back(
            line->line().at(line->place_at(line->length() * (tenth / 10.))).point);
    }
  }
  return points;
}

}  // namespace sheerlap

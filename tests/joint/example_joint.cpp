#include "tests/joint/example_joint.h"

#include <cmath>
#include <numbers>

namespace sheerlap {
namespace {

Adhesive example_adhesive() {
  Adhesive adhesive;
  adhesive.name = "two-part paste";
  adhesive.gap_min = Length::mm(1);
  adhesive.gap_max = Length::mm(8);
  adhesive.squeeze_out = 0.10;
  adhesive.waste = 0.05;
  for (const double size : {6., 8., 10., 12., 14., 16., 18., 20.})
    adhesive.bead_sizes.push_back(Length::mm(size));
  adhesive.pack = Volume::ml(490);
  adhesive.pack_usable = Volume::ml(430);
  adhesive.nozzle_purge = Volume::ml(30);
  return adhesive;
}

FastenerChoice example_fastener() {
  FastenerChoice fastener;
  fastener.size = "ST4.8";
  for (const double length : {16., 19., 22., 25.})
    fastener.lengths.push_back(Length::mm(length));
  fastener.line = Length::mm(25);
  return fastener;
}

}  // namespace

Joint example_joint(const std::vector<Point3>& points, const ExampleFaces& faces) {
  Joint joint;
  joint.title = "Example";
  joint.sheer.knuckle_angle = Angle::degrees(30);
  for (const Point3& point : points) {
    SheerRow row;
    row.point = point;
    row.offsets = {Length::mm(faces.lap), Length::mm(faces.hull_top),
                   Length::mm(faces.hull_low), Length::mm(faces.lip_top),
                   Length::mm(faces.lip_low)};
    joint.sheer.rows.push_back(row);
  }
  joint.hull = {Length::mm(faces.hull_thickness), Length::mm(2)};
  joint.lip = {Length::mm(faces.lip_thickness), Length::mm(2)};
  joint.adhesive = example_adhesive();
  joint.fastener = example_fastener();
  joint.layout = {Length::mm(150), Length::mm(40), Length::mm(30),
                  Length::mm(75),  Length::mm(0),  Length::mm(1)};
  joint.jig = {Length::mm(1300), Length::mm(8)};
  return joint;
}

Joint circle_joint(double radius_mm, std::size_t rows, const ExampleFaces& faces) {
  std::vector<Point3> points;
  for (std::size_t i = 0; i < rows; ++i) {
    const double angle =
        std::numbers::pi * static_cast<double>(i) / static_cast<double>(rows - 1);
    const double half_breadth = i + 1 == rows ? 0 : radius_mm * std::sin(angle);
    points.emplace_back(radius_mm * (1 - std::cos(angle)), half_breadth, 0);
  }
  return example_joint(points, faces);
}

Joint box_joint(double length_mm, double beam_mm, const ExampleFaces& faces) {
  Joint joint = example_joint(
      {{0, 0, 0}, {0, beam_mm / 2, 0}, {length_mm, beam_mm / 2, 0}, {length_mm, 0, 0}},
      faces);
  joint.sheer.curve = CurveKind::Chords;
  return joint;
}

}  // namespace sheerlap

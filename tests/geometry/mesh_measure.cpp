#include "tests/geometry/mesh_measure.h"

#include <CGAL/Polygon_mesh_processing/measure.h>
#include <CGAL/Simple_cartesian.h>
#include <CGAL/Surface_mesh.h>

#include <algorithm>
#include <array>
#include <boost/test/unit_test.hpp>

#include "geometry/mitre.h"

namespace sheerlap {
namespace {

using Kernel = CGAL::Simple_cartesian<double>;
using Mesh = CGAL::Surface_mesh<Kernel::Point_3>;
using Ring = std::vector<Mesh::Vertex_index>;

Ring add_points(Mesh& mesh, const std::vector<Point3>& points) {
  Ring ring;
  for (const Point3& point : points)
    ring.push_back(mesh.add_vertex({point.x(), point.y(), point.z()}));
  return ring;
}

/// Four triangles about the mean of the corners, so that the twist of the quad favours
/// neither diagonal: the mesh's error is then of the second order.
void add_quad(Mesh& mesh, const std::array<Mesh::Vertex_index, 4>& corners) {
  const auto position = [&](std::size_t i) {
    return mesh.point(corners[i]) - CGAL::ORIGIN;
  };
  const auto middle = mesh.add_vertex(
      CGAL::ORIGIN + (position(0) + position(1) + position(2) + position(3)) / 4);
  for (std::size_t i = 0; i < 4; ++i)
    BOOST_TEST_REQUIRE(
        mesh.add_face(corners[i], corners[(i + 1) % 4], middle).is_valid());
}

void add_cap(Mesh& mesh, const Ring& ring, bool first) {
  const std::size_t n = ring.size();
  for (std::size_t i = 0; i + 1 < n / 2; ++i) {
    const auto a = ring[i], b = ring[i + 1], c = ring[n - 2 - i], d = ring[n - 1 - i];
    if (first)
      add_quad(mesh, {a, b, c, d});
    else
      add_quad(mesh, {d, c, b, a});
  }
}

/// The depths at which `outer` is outside `inner`, of those between `from` and `to`,
/// found without a formula.
DepthBand open_depths(const std::function<double(double)>& difference,
                      double from,
                      double to) {
  const bool open_from = difference(from) > 0;
  if (open_from == (difference(to) > 0)) return {from, open_from ? to : from};
  double low = from;
  double high = to;
  for (int step = 0; step < 60; ++step) {
    const double middle = (low + high) / 2;
    ((difference(middle) > 0) == open_from ? low : high) = middle;
  }
  return open_from ? DepthBand{from, low} : DepthBand{low, to};
}

/// The parameter at a share of the way along a span, on a face at a depth.
using ParameterAt = std::function<double(const RuledFace&, double depth, double share)>;

double tube_between(const RuledFace& inner,
                    const RuledFace& outer,
                    DepthBand band,
                    std::size_t span,
                    int steps,
                    const ParameterAt& parameter_at) {
  std::vector<std::vector<Point3>> sections;
  for (int i = 0; i <= steps; ++i) {
    const double share = static_cast<double>(i) / steps;
    const auto point = [&](const RuledFace& face, double depth) {
      return face.at({span, parameter_at(face, depth, share)}, depth).point;
    };
    const Place middle{span, parameter_at(inner, band.from_mm, share)};
    const double lap = inner.lap_mm(middle);
    const auto difference = [&](double depth) {
      return outer.offset(middle, depth).offset - inner.offset(middle, depth).offset;
    };
    const DepthBand open =
        open_depths(difference, std::min(band.from_mm, lap), std::min(band.to_mm, lap));
    std::vector<Point3> section;
    for (int j = 0; j <= 8; ++j)
      section.push_back(
          point(inner, open.from_mm + (open.to_mm - open.from_mm) * j / 8));
    for (int j = 8; j >= 0; --j)
      section.push_back(
          point(outer, open.from_mm + (open.to_mm - open.from_mm) * j / 8));
    sections.push_back(section);
  }
  return tube_volume_mm3(sections, false);
}

}  // namespace

double tube_volume_mm3(const std::vector<std::vector<Point3>>& sections, bool closed) {
  Mesh mesh;
  std::vector<Ring> rings;
  for (const auto& section : sections) rings.push_back(add_points(mesh, section));
  const std::size_t n = rings.front().size();
  for (std::size_t i = 0; i + (closed ? 0 : 1) < rings.size(); ++i) {
    const Ring& here = rings[i];
    const Ring& next = rings[(i + 1) % rings.size()];
    for (std::size_t j = 0; j < n; ++j)
      add_quad(mesh, {here[j], next[j], next[(j + 1) % n], here[(j + 1) % n]});
  }
  if (!closed) {
    add_cap(mesh, rings.front(), true);
    add_cap(mesh, rings.back(), false);
  }
  BOOST_TEST_REQUIRE(CGAL::is_closed(mesh));
  return std::abs(CGAL::Polygon_mesh_processing::volume(mesh));
}

double sheet_area_mm2(const std::vector<std::vector<Point3>>& rows) {
  Mesh mesh;
  std::vector<Ring> lines;
  for (const auto& row : rows) lines.push_back(add_points(mesh, row));
  for (std::size_t i = 0; i + 1 < lines.size(); ++i)
    for (std::size_t j = 0; j + 1 < lines[i].size(); ++j)
      add_quad(mesh,
               {lines[i][j], lines[i + 1][j], lines[i + 1][j + 1], lines[i][j + 1]});
  return CGAL::Polygon_mesh_processing::area(mesh);
}

double richardson(const std::function<double(int steps)>& value, int steps) {
  return (4 * value(2 * steps) - value(steps)) / 3;
}

double meshed_volume_mm3(const RuledFace& inner,
                         const RuledFace& outer,
                         DepthBand band,
                         const SpanPart& part,
                         int steps) {
  return tube_between(inner, outer, band, part.span, steps,
                      [&](const RuledFace&, double, double share) {
                        return part.from_u + share * (part.to_u - part.from_u);
                      });
}

double meshed_mitred_volume_mm3(const RuledFace& inner,
                                const RuledFace& outer,
                                DepthBand band,
                                std::size_t span,
                                int steps) {
  const Curve& curve = inner.curve();
  const std::size_t after = curve.knot_after(span);
  const double chord = curve.chord_mm(span);
  // sections are square to the curve but for 40 mm at either end, finely meshed, where
  // they go over to the mitre
  const auto parameter = [&](const RuledFace& face, double depth, double share) {
    const double from =
        curve.smooth_at(span) ? 0 : mitre(face, span, depth)->start.u_mm;
    const double to =
        curve.smooth_at(after) ? chord : mitre(face, after, depth)->end.u_mm;
    const double first = 40;
    const double last = chord - 40;
    if (share < 0.3) return from + (first - from) * share / 0.3;
    if (share > 0.7) return last + (to - last) * (share - 0.7) / 0.3;
    return first + (last - first) * (share - 0.3) / 0.4;
  };
  return tube_between(inner, outer, band, span, steps, parameter);
}

}  // namespace sheerlap

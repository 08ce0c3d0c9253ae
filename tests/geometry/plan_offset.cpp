#include "tests/geometry/plan_offset.h"

#include <geos_c.h>

#include <boost/test/unit_test.hpp>
#include <memory>

namespace sheerlap {
namespace {

/// A GEOS context; it says nothing.
class Context {
 public:
  Context() : handle_(GEOS_init_r()) {}
  ~Context() { GEOS_finish_r(handle_); }
  Context(const Context&) = delete;
  Context& operator=(const Context&) = delete;
  GEOSContextHandle_t handle() const { return handle_; }

 private:
  GEOSContextHandle_t handle_;
};

using Shape = std::shared_ptr<GEOSGeometry>;

Shape owned(const Context& context, GEOSGeometry* geometry) {
  BOOST_TEST_REQUIRE(geometry != nullptr);
  return {geometry,
          [&](GEOSGeometry* held) { GEOSGeom_destroy_r(context.handle(), held); }};
}

GEOSGeometry* ring_of(const Context& context, const std::vector<Point2>& points) {
  const auto n = static_cast<unsigned>(points.size());
  GEOSCoordSequence* sequence = GEOSCoordSeq_create_r(context.handle(), n + 1, 2);
  for (unsigned i = 0; i <= n; ++i) {
    const Point2& point = points[i % n];
    GEOSCoordSeq_setXY_r(context.handle(), sequence, i, point.x(), point.y());
  }
  return GEOSGeom_createLinearRing_r(context.handle(), sequence);
}

}  // namespace

PlanRing offset_ring(const std::vector<Point2>& polygon,
                     double offset_mm,
                     OffsetJoin join) {
  const Context context;
  const Shape shape =
      owned(context, GEOSGeom_createPolygon_r(context.handle(),
                                              ring_of(context, polygon), nullptr, 0));
  const Shape offset = owned(
      context,
      GEOSBufferWithStyle_r(
          context.handle(), shape.get(), offset_mm, 64, GEOSBUF_CAP_ROUND,
          join == OffsetJoin::Mitre ? GEOSBUF_JOIN_MITRE : GEOSBUF_JOIN_ROUND, 1000));
  PlanRing ring;
  GEOSLength_r(context.handle(), offset.get(), &ring.length_mm);
  GEOSArea_r(context.handle(), offset.get(), &ring.area_mm2);
  return ring;
}

double outline_distance_mm(const std::vector<Point2>& polygon, const Point2& point) {
  const Context context;
  const Shape outline = owned(context, ring_of(context, polygon));
  const Shape place = owned(
      context, GEOSGeom_createPointFromXY_r(context.handle(), point.x(), point.y()));
  double distance = 0;
  GEOSDistance_r(context.handle(), outline.get(), place.get(), &distance);
  return distance;
}

}  // namespace sheerlap

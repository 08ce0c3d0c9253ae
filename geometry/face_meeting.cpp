#include "geometry/face_meeting.h"

#include <Eigen/LU>
#include <algorithm>
#include <cmath>
#include <limits>

namespace sheerlap {
namespace {

/// A turn so slight that the faces meet where two straight ones would, radians: the
/// difference is of the order of the turn squared.
constexpr double slight_turn = 1e-7;

/// The faces themselves are taken to meet where they do so within this many times the
/// reach of their parallels.
constexpr double furthest_reach = 2;

/// A point of a line in plan, and how it moves.
struct LinePoint {
  Point2 point;
  Vector2 by_u;
};

/// One part of a face's line at a corner.
class Part {
 public:
  /// @param edge_u  the parameter at the corner: 0, or the span's chord
  Part(const RuledFace& face, std::size_t span, double edge_u, double depth_mm)
      : face_(face),
        span_(span),
        edge_u_(edge_u),
        depth_mm_(depth_mm),
        offset_(face.offset({span, edge_u}, depth_mm)) {}

  double edge_u() const { return edge_u_; }
  double offset() const { return offset_.offset; }
  bool keeps_offset() const { return offset_.by_u == 0; }
  bool is_beyond(double u) const { return edge_u_ > 0 ? u > edge_u_ : u < 0; }

  /// On the curve's parallel at the corner's offset.
  LinePoint parallel(double u) const {
    const Jet jet = face_.curve().at({span_, u});
    const PlanFrame frame = plan_frame(jet);
    return {jet.point.head<2>() + offset() * frame.outboard,
            (frame.speed + offset() * frame.turn) * frame.along};
  }
  /// On the face itself within the span, drawn out straight beyond it.
  LinePoint followed(double u) const {
    const double within = std::clamp(u, 0.0, face_.curve().chord_mm(span_));
    const FacePoint on = face_.at({span_, within}, depth_mm_);
    const Vector2 by_u = on.by_u.head<2>();
    return {on.point.head<2>() + (u - within) * by_u, by_u};
  }
  /// Straight on from the corner with the corner's offset, both ways.
  LinePoint carried_on(double u) const {
    LinePoint edge = parallel(edge_u_);
    const Vector2 along = face_.curve().at({span_, edge_u_}).first.head<2>();
    return {edge.point + (u - edge_u_) * along, along};
  }

 private:
  const RuledFace& face_;
  std::size_t span_;
  double edge_u_;
  double depth_mm_;
  OffsetJet offset_;
};

/// Where two smooth lines meet, by Newton's method.
template <class Before, class After>
std::optional<FaceMeeting> lines_meet(const Before& before,
                                      const After& after,
                                      FaceMeeting met,
                                      double size_mm) {
  for (int step = 0; step < 30; ++step) {
    const LinePoint a = before(met.end_u);
    const LinePoint b = after(met.start_u);
    Eigen::Matrix2d slopes;
    slopes << a.by_u, -b.by_u;
    if (!(std::abs(slopes.determinant()) > 1e-14)) return std::nullopt;
    const Vector2 miss = b.point - a.point;
    const Vector2 move = slopes.inverse() * miss;
    met.end_u += move.x();
    met.start_u += move.y();
    const double rounding =
        8 * std::numeric_limits<double>::epsilon() * a.point.lpNorm<Eigen::Infinity>();
    if (move.norm() <= 1e-13 * size_mm || miss.norm() <= rounding) return met;
  }
  return std::nullopt;
}

/// Where the faces themselves meet beside a corner: each followed into its span, or
/// carried on beyond it.
std::optional<FaceMeeting> faces_meet(const Part& before,
                                      const Part& after,
                                      const FaceMeeting& guess,
                                      double size_mm) {
  const auto line = [](const Part& part, bool carried_on) {
    return [&part, carried_on](double u) {
      return carried_on ? part.carried_on(u) : part.followed(u);
    };
  };
  for (const bool first :
       {before.is_beyond(guess.end_u), !before.is_beyond(guess.end_u)})
    for (const bool second :
         {after.is_beyond(guess.start_u), !after.is_beyond(guess.start_u)}) {
      const auto met =
          lines_meet(line(before, first), line(after, second), guess, size_mm);
      if (met && before.is_beyond(met->end_u) == first &&
          after.is_beyond(met->start_u) == second)
        return met;
    }
  return std::nullopt;
}

/// Where the parts meet beside their common knuckle.
std::optional<FaceMeeting> corner_meeting(const Part& before,
                                          const Part& after,
                                          double turn,
                                          double size_mm) {
  const double reach = after.offset() * std::tan(turn / 2);
  const Vector2 along = before.carried_on(0).by_u;
  const FaceMeeting straight{before.edge_u() + reach / along.norm(),
                             -reach / after.carried_on(0).by_u.norm()};
  if (std::abs(turn) < slight_turn) return straight;
  const auto parallel =
      lines_meet([&](double u) { return before.parallel(u); },
                 [&](double u) { return after.parallel(u); }, straight, size_mm);
  if (before.keeps_offset() && after.keeps_offset()) return parallel;
  const FaceMeeting guess = parallel.value_or(straight);
  const auto met = faces_meet(before, after, guess, size_mm);
  const auto near = [&](double u, double guess_u, double edge_u) {
    return std::abs(u - edge_u) <= furthest_reach * std::abs(guess_u - edge_u);
  };
  if (met && near(met->end_u, guess.end_u, before.edge_u()) &&
      near(met->start_u, guess.start_u, after.edge_u()))
    return met;
  return parallel;
}

}  // namespace

double turn_between(const Curve& curve, std::size_t before, std::size_t after) {
  const Vector2 end = curve.at({before, curve.chord_mm(before)}).first.head<2>();
  const Vector2 start = curve.at({after, 0}).first.head<2>();
  return -std::atan2(end.x() * start.y() - end.y() * start.x(), end.dot(start));
}

std::optional<FaceMeeting> face_meeting(const RuledFace& face,
                                        std::size_t before,
                                        std::size_t after,
                                        double depth_mm) {
  const Curve& curve = face.curve();
  const Part first(face, before, curve.chord_mm(before), depth_mm);
  const Part second(face, after, 0, depth_mm);
  const double size_mm = curve.chord_mm(before) + curve.chord_mm(after);
  if (curve.knot_after(before) == after)
    return corner_meeting(first, second, turn_between(curve, before, after), size_mm);
  return lines_meet([&](double u) { return first.followed(u); },
                    [&](double u) { return second.followed(u); },
                    {first.edge_u() / 2, curve.chord_mm(after) / 2}, size_mm);
}

}  // namespace sheerlap

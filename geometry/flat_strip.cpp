#include "geometry/flat_strip.h"

#include <Eigen/Geometry>
#include <algorithm>
#include <cassert>
#include <cmath>
#include <optional>
#include <utility>

#include "geometry/mitre.h"
#include "geometry/strip_frame.h"

namespace sheerlap {
namespace {

/// A step of the integration is no longer, and turns no further.
constexpr double step_mm = 5;
constexpr double step_turn = 0.02;

/// A stretch of a part on which the face is smooth.
struct SmoothPart {
  std::size_t part = 0;
  std::size_t span = 0;
  double from_u = 0;
  double to_u = 0;
};

Vector2 direction(double angle) { return {std::cos(angle), std::sin(angle)}; }

/// A place of the strip with all that its neighbours need.
struct Section {
  StripFrame local;
  FrameRates rates;
  /// How fast the edges of the face run by the parameter, and those of the flat strip.
  double top_speed = 0, low_speed = 0;
  double flat_top_speed = 0, flat_low_speed = 0;
};

/// The speed of a flat edge. `length` is along the ruling going down, negative up to
/// the top.
double flat_speed(const StripFrame& local,
                  const FrameRates& rates,
                  double length,
                  double by_u) {
  const Vector2 ruling = direction(local.lean);
  const Vector2 across(-ruling.y(), ruling.x());
  const Vector2 edge = Vector2(local.speed, 0) + by_u * ruling +
                       length * (rates.turn + rates.lean) * across;
  return edge.norm();
}

Section section_at(const FaceLine& line, const SmoothPart& smooth, double u) {
  const Place place{smooth.span, u};
  const RuledFace& face = line.face();
  Section section;
  section.local = strip_frame(line, place);
  section.rates = frame_rates(line, place, (smooth.from_u + smooth.to_u) / 2);
  section.top_speed = face.at(place, 0).by_u.norm();
  const FacePoint low = face.at(place, face.lap_mm(place));
  section.low_speed = (low.by_u + section.rates.lap * low.by_depth).norm();
  section.flat_top_speed = flat_speed(section.local, section.rates,
                                      -section.local.to_top, -section.rates.to_top);
  section.flat_low_speed = flat_speed(section.local, section.rates,
                                      section.local.to_low, section.rates.to_low);
  return section;
}

class Layer {
 public:
  Layer(const FaceLine& line, double thickness_mm)
      : line_(line), thickness_mm_(thickness_mm) {}

  void lay(const SmoothPart& smooth);
  FlatStrip strip() && { return std::move(strip_); }

 private:
  void start(const SmoothPart& smooth, const Section& first);
  void step(const Section& from, const Section& middle, const Section& to, double du);
  void add(const SmoothPart& smooth, const Section& section, double u);
  double turned(const StripFrame& before,
                const StripFrame& after,
                Place at,
                Place next) const;

  const FaceLine& line_;
  double thickness_mm_;
  FlatStrip strip_;
  StripFrame last_;
  Place last_place_;
  double angle_ = 0;
  double run_mm_ = 0;
  double bent_mm_ = 0;
  Point2 point_ = Point2::Zero();
};

/// The knuckle on whose mitre the line goes from one span to another; it may be cut
/// back there over other knots. Nothing where the line goes on smoothly.
std::optional<std::size_t> knuckle_between(const FaceLine& line,
                                           std::size_t before,
                                           std::size_t after) {
  if (before == after) return std::nullopt;
  const Curve& curve = line.face().curve();
  const std::size_t next = curve.knot_after(before);
  if (next == after && !curve.smooth_at(next)) return next;
  for (std::size_t knot = next;; knot = curve.knot_after(knot)) {
    if (!curve.smooth_at(knot)) {
      const auto met = mitre(line.face(), knot, line.depth_mm());
      if (met && met->end.span == before && met->start.span == after) return knot;
    }
    if (knot == after) return std::nullopt;
  }
}

/// The direction of the fold where two parts meet: that of the mitre; along the ruling
/// where there is none.
Vector3 fold_direction(const FaceLine& line, Place before, Place after) {
  constexpr double step = 0.5;
  if (const auto knot = knuckle_between(line, before.span, after.span)) {
    const auto above = mitre(line.face(), *knot, line.depth_mm() - step);
    const auto below = mitre(line.face(), *knot, line.depth_mm() + step);
    if (above && below)
      return line.face().at(below->end, line.depth_mm() + step).point -
             line.face().at(above->end, line.depth_mm() - step).point;
  }
  return line.at(before).by_depth;
}

double Layer::turned(const StripFrame& before,
                     const StripFrame& after,
                     Place at,
                     Place next) const {
  const Vector3 fold = fold_direction(line_, at, next);
  const auto angle_of = [&](const StripFrame& local) {
    return std::atan2(fold.dot(local.up), fold.dot(local.along));
  };
  return angle_of(before) - angle_of(after);
}

void Layer::start(const SmoothPart& smooth, const Section& first) {
  const Place here{smooth.span, smooth.from_u};
  if (!strip_.rulings.empty()) {
    angle_ += turned(last_, first.local, last_place_, here);
    // the angle of the two directions out of the face between them
    const Vector3 out = (last_.out + first.local.out).normalized();
    const double half_sine = (last_.along - first.local.along).dot(out) / 2;
    const double bent = thickness_mm_ * std::asin(std::clamp(half_sine, -1.0, 1.0));
    bent_mm_ += bent;
    point_ += bent * direction(angle_);
  }
}

void Layer::step(const Section& from,
                 const Section& middle,
                 const Section& to,
                 double du) {
  const auto simpson = [&](double a, double b, double c) {
    return du / 6 * (a + 4 * b + c);
  };
  // the parabola through the three rates, integrated to the middle
  const double middle_angle =
      angle_ + du / 24 * (5 * from.rates.turn + 8 * middle.rates.turn - to.rates.turn);
  const double next_angle =
      angle_ + simpson(from.rates.turn, middle.rates.turn, to.rates.turn);
  const auto speed = [&](const Section& section) {
    return section.local.speed + thickness_mm_ / 2 * section.rates.bend;
  };
  const Vector2 first = speed(from) * direction(angle_);
  const Vector2 second = speed(middle) * direction(middle_angle);
  const Vector2 third = speed(to) * direction(next_angle);
  point_ += du / 6 * (first + 4 * second + third);
  run_mm_ += simpson(from.local.speed, middle.local.speed, to.local.speed);
  bent_mm_ +=
      thickness_mm_ / 2 * simpson(from.rates.bend, middle.rates.bend, to.rates.bend);
  const auto longer = [&](double Section::*flat, double Section::*real) {
    return simpson(from.*flat - from.*real, middle.*flat - middle.*real,
                   to.*flat - to.*real);
  };
  strip_.distortion.top_mm += longer(&Section::flat_top_speed, &Section::top_speed);
  strip_.distortion.low_mm += longer(&Section::flat_low_speed, &Section::low_speed);
  angle_ = next_angle;
}

void Layer::add(const SmoothPart& smooth, const Section& section, double u) {
  FlatRuling ruling;
  ruling.part = smooth.part;
  ruling.u_mm = u;
  ruling.run_mm = run_mm_;
  ruling.bent_mm = bent_mm_;
  ruling.line = point_;
  ruling.along = direction(angle_);
  const Vector2 down = direction(angle_ + section.local.lean);
  ruling.top = point_ - section.local.to_top * down;
  ruling.low = point_ + section.local.to_low * down;
  ruling.top_strain = section.flat_top_speed / section.top_speed - 1;
  ruling.low_strain = section.flat_low_speed / section.low_speed - 1;
  double& worst = strip_.distortion.worst_strain;
  worst = std::max({worst, std::abs(ruling.top_strain), std::abs(ruling.low_strain)});
  const double bend = section.rates.bend / section.local.speed;
  strip_.sharpest_convex = std::max(strip_.sharpest_convex, bend);
  strip_.sharpest_hollow = std::max(strip_.sharpest_hollow, -bend);
  strip_.rulings.push_back(ruling);
}

void Layer::lay(const SmoothPart& smooth) {
  const double width = smooth.to_u - smooth.from_u;
  if (!(width > 0)) return;
  Section from = section_at(line_, smooth, smooth.from_u);
  start(smooth, from);
  add(smooth, from, smooth.from_u);
  const double count =
      std::ceil(std::max({1.0, width * from.local.speed / step_mm,
                          line_.face().curve().bend(smooth.span) / step_turn}));
  const double du = width / count;
  for (double i = 1; i <= count; ++i) {
    const double u = i == count ? smooth.to_u : smooth.from_u + i * du;
    const Section middle = section_at(line_, smooth, u - du / 2);
    const Section to = section_at(line_, smooth, u);
    step(from, middle, to, du);
    add(smooth, to, u);
    from = to;
  }
  last_ = from.local;
  last_place_ = {smooth.span, smooth.to_u};
}

}  // namespace

FlatStrip flat_strip(const FaceLine& line,
                     const std::vector<LinePart>& parts,
                     double thickness_mm) {
  assert(thickness_mm >= 0);
  Layer layer(line, thickness_mm);
  for (std::size_t i = 0; i < parts.size(); ++i) {
    const LinePart& part = parts[i];
    assert(part.from_u <= part.to_u);
    // carried on beyond its ends a span is straight, and may have a kink there
    const double chord = line.face().curve().chord_mm(part.span);
    const double begin = std::clamp(0.0, part.from_u, part.to_u);
    const double end = std::clamp(chord, part.from_u, part.to_u);
    layer.lay({i, part.span, part.from_u, std::min(begin, last_before_span)});
    layer.lay({i, part.span, begin, end});
    layer.lay({i, part.span, std::max(end, first_after_span(chord)), part.to_u});
  }
  return std::move(layer).strip();
}

}  // namespace sheerlap

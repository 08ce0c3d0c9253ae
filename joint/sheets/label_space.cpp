#include "joint/sheets/label_space.h"

#include <Eigen/Geometry>
#include <algorithm>
#include <cmath>
#include <numbers>

namespace sheerlap {
namespace {

/// Blank kept around words, mm.
constexpr double around_mm = 0.4;

/// The corners of a line of words that is not turned and stands on 0, 0.
Box untouched(double width, const Lettering& lettering) {
  Box box{0, 0, width, lettering.height_mm};
  if (lettering.across == Across::Centre) box.left = -width / 2;
  if (lettering.across == Across::Right) box.left = -width;
  if (lettering.upright == Upright::Baseline) box.top = -lettering.height_mm;
  if (lettering.upright == Upright::Middle) box.top = -lettering.height_mm / 2;
  return box;
}

}  // namespace

Box text_box(Page& page,
             const Point2& at,
             const std::string& words,
             const Lettering& lettering) {
  const double turn = lettering.turn_degrees * std::numbers::pi / 180;
  // a letter that goes below the line goes a quarter of a capital's height below it
  Box flat = untouched(page.width_of(words, lettering), lettering);
  flat.height += lettering.height_mm / 4;
  double left = 0, right = 0, top = 0, bottom = 0;
  bool first = true;
  for (const Point2& corner : flat.corners()) {
    const Point2 turned(corner.x() * std::cos(turn) + corner.y() * std::sin(turn),
                        corner.y() * std::cos(turn) - corner.x() * std::sin(turn));
    left = first ? turned.x() : std::min(left, turned.x());
    right = first ? turned.x() : std::max(right, turned.x());
    top = first ? turned.y() : std::min(top, turned.y());
    bottom = first ? turned.y() : std::max(bottom, turned.y());
    first = false;
  }
  return {at.x() + left, at.y() + top, right - left, bottom - top};
}

bool LabelSpace::is_free(const Box& box) const {
  const bool inside = box.left >= room_.left && box.right() <= room_.right() &&
                      box.top >= room_.top && box.bottom() <= room_.bottom();
  return inside && std::none_of(taken_.begin(), taken_.end(),
                                [&](const Box& other) { return other.overlaps(box); });
}

bool LabelSpace::write(Page& page,
                       const Point2& at,
                       const std::string& words,
                       const Lettering& lettering) {
  const Box box = text_box(page, at, words, lettering).inset(-around_mm);
  if (!is_free(box)) return false;
  page.text(at, words, lettering);
  take(box);
  return true;
}

std::optional<Box> LabelSpace::write_beside(Page& page,
                                            const Point2& point,
                                            const Vector2& direction,
                                            const LabelSpots& spots,
                                            const std::string& words) {
  const Lettering lettering{.height_mm = letter_height::least,
                            .across = Across::Centre,
                            .upright = Upright::Middle};
  const Vector2 straight = direction.normalized();
  const double reach = page.width_of(words, lettering) / 2 * std::abs(straight.x()) +
                       lettering.height_mm / 2 * std::abs(straight.y());
  for (const double away : spots.distances_mm)
    for (const double degrees : spots.turns_degrees) {
      const double turn = degrees * std::numbers::pi / 180;
      const Vector2 way = Eigen::Rotation2Dd(turn) * straight;
      // as far off straight away as without the turn
      const Point2 middle = point + way * ((away + reach) / std::cos(turn));
      if (write(page, middle, words, lettering))
        return text_box(page, middle, words, lettering);
    }
  return std::nullopt;
}

void LabelSpace::lead(Page& page, const Point2& point, const Box& words) {
  constexpr double clear_mm = 1, step_mm = 0.4;
  const Point2 end(std::clamp(point.x(), words.left, words.right()),
                   std::clamp(point.y(), words.top, words.bottom()));
  const Vector2 way = end - point;
  const double length = way.norm();
  if (length < 3 * clear_mm) return;
  const Vector2 unit = way / length;
  for (double run = 2 * clear_mm; run < length - clear_mm; run += step_mm) {
    const Point2 at = point + unit * run;
    if (!is_free({at.x(), at.y(), 0, 0})) return;
  }
  page.line(point, end - unit * clear_mm / 2);
}

}  // namespace sheerlap

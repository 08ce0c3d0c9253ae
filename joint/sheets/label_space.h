#pragma once

#include <optional>
#include <string>
#include <vector>

#include "joint/sheets/box.h"
#include "joint/sheets/page.h"

namespace sheerlap {

/// The box, level on the sheet, that a line of words takes, turned or not.
Box text_box(Page& page,
             const Point2& at,
             const std::string& words,
             const Lettering& lettering);

/// The spots that are tried for words beside a point: at every distance, each turn off
/// the direction straight away from it.
struct LabelSpots {
  std::vector<double> distances_mm;
  std::vector<double> turns_degrees = {0};
};

/// Where a sheet has words already, so that no others are written over them, nor
/// outside of the room there is.
class LabelSpace {
 public:
  explicit LabelSpace(const Box& room) : room_(room) {}

  /// Whether a box lies in the room and nothing stands in it.
  bool is_free(const Box& box) const;
  void take(const Box& box) { taken_.push_back(box); }
  /// Writes the words if there is room for them.
  /// @returns  whether they were written
  bool write(Page& page,
             const Point2& at,
             const std::string& words,
             const Lettering& lettering = {});
  /// Writes level words beside a point, moved off it along a direction, at the first
  /// spot where there is room.
  /// @returns  the box of the words; nothing if they were not written
  std::optional<Box> write_beside(Page& page,
                                  const Point2& point,
                                  const Vector2& direction,
                                  const LabelSpots& spots,
                                  const std::string& words);
  /// Draws a line from a point to words, if it is clear of other words.
  void lead(Page& page, const Point2& point, const Box& words);

 private:
  Box room_;
  std::vector<Box> taken_;
};

}  // namespace sheerlap

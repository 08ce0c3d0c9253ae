#pragma once

#include <memory>
#include <vector>

#include "geometry/face_line.h"
#include "geometry/quantity.h"

namespace sheerlap {

/// The spans a side takes of the sheer, in the side's own direction.
struct SidePath {
  std::size_t from_knot = 0;
  std::size_t span_count = 0;
  bool forward = true;  ///< the way the curve runs: bow, starboard, transom, port

  std::size_t span(std::size_t k, std::size_t curve_spans) const {
    return forward ? (from_knot + k) % curve_spans
                   : (from_knot + 2 * curve_spans - 1 - k) % curve_spans;
  }
};

/// A line along one side, measured by its girth from where the side starts.
class SideLine {
 public:
  SideLine() = default;
  SideLine(std::shared_ptr<const FaceLine> line, SidePath path);

  const SidePath& path() const { return path_; }
  const FaceLine& line() const { return *line_; }
  Length length() const { return Length::mm(run_mm_.back()); }
  /// @param girth  clamped to the side
  Place place_at(Length girth) const;
  /// @param place  in one of the side's spans
  Length girth_at(Place place) const;
  /// The girth at which the k-th span of the side starts; at `span_count` the length.
  Length girth_at_span(std::size_t k) const { return Length::mm(run_mm_[k]); }
  /// The index within the side of a span of the curve.
  std::size_t index_of(std::size_t span) const;

 private:
  std::shared_ptr<const FaceLine> line_;
  SidePath path_;
  std::vector<double> run_mm_;
};

}  // namespace sheerlap

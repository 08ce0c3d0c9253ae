#include "joint/side_line.h"

#include <algorithm>
#include <utility>

namespace sheerlap {

SideLine::SideLine(std::shared_ptr<const FaceLine> line, SidePath path)
    : line_(std::move(line)), path_(path), run_mm_(path.span_count + 1, 0.0) {
  const std::size_t spans = line_->face().curve().spans();
  for (std::size_t k = 0; k < path_.span_count; ++k)
    run_mm_[k + 1] = run_mm_[k] + line_->span_mm(path_.span(k, spans));
}

std::size_t SideLine::index_of(std::size_t span) const {
  const std::size_t spans = line_->face().curve().spans();
  return path_.forward ? (span + spans - path_.from_knot) % spans
                       : (path_.from_knot + 2 * spans - 1 - span) % spans;
}

Place SideLine::place_at(Length girth) const {
  const double run = std::clamp(girth.in_mm(), 0.0, run_mm_.back());
  const auto after = std::upper_bound(run_mm_.begin() + 1, run_mm_.end() - 1, run);
  auto k = static_cast<std::size_t>(after - run_mm_.begin() - 1);
  // of spans that a corner at the end leaves nothing of, none is the line's last
  while (k > 0 && run_mm_[k] == run_mm_.back()) --k;
  const std::size_t span = path_.span(k, line_->face().curve().spans());
  const double within = run - run_mm_[k];
  const double from_begin = path_.forward ? within : line_->span_mm(span) - within;
  return {span, line_->u_at(span, from_begin)};
}

Length SideLine::girth_at(Place place) const {
  const double start = path_.forward ? line_->begin_u_mm(place.span) : place.u_mm;
  const double stop = path_.forward ? place.u_mm : line_->end_u_mm(place.span);
  return Length::mm(run_mm_[index_of(place.span)] +
                    line_->length_mm(place.span, start, stop));
}

}  // namespace sheerlap

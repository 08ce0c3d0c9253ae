#include "geometry/spacing_even.h"

#include <algorithm>
#include <cmath>
#include <optional>
#include <vector>

namespace sheerlap {
namespace {

/// Which lengths may be taken for a limit that is kept to the last digit.
enum class Pins { EndDistances, Limits, LimitsAndLargest };

/// The way between two stops.
struct Link {
  double distance_mm = 0;
  SpacingStep step;
  double share = 0;  ///< the distance is so much of the space; 0 if it is no space

  double part() const { return share > 0 ? share : 1; }
};

/// How a row is shared out: a link has its pin, or else its share of the space.
struct Shares {
  std::vector<std::optional<double>> pins;
  double space_mm = 0;
};

class Evening {
 public:
  Evening(const SpacingGround& ground, const SpacingPath& path, double largest_mm)
      : ground_(ground),
        path_(path),
        largest_mm_(largest_mm),
        same_mm_(1e-10 * ground.scale_mm()) {}

  SpacingPath result() {
    centre();
    std::size_t from = 0;
    for (std::size_t to = 1; to < path_.stops.size(); ++to) {
      if (!is_binding(path_.stops[to])) continue;
      if (to > from + 1) even_row(from, to);
      from = to;
    }
    return path_;
  }

 private:
  bool is_binding(const SpacingStop& stop) const {
    const SpacingCell& cell = ground_.cells()[stop.cell];
    return stop.at_mm == cell.from_mm || stop.at_mm == cell.to_mm;
  }
  void centre();
  Link link(std::size_t stop) const;
  void even_row(std::size_t from, std::size_t to);
  std::optional<double> pin(const Link& link, Pins pins) const;
  std::optional<Shares> shares(const std::vector<Link>& links,
                               double length_mm,
                               Pins pins) const;
  std::optional<double> common_space(const std::vector<Link>& links,
                                     const Shares& shares,
                                     double length_mm) const;
  bool set_row(std::size_t from, const std::vector<Link>& links, const Shares& shares);

  const SpacingGround& ground_;
  SpacingPath path_;
  const double largest_mm_;
  const double same_mm_;
};

/// Moves all points together until the distances at the ends are alike, as far as
/// their limits and the cells go.
void Evening::centre() {
  const Link first = link(0);
  const Link last = link(path_.stops.size() - 2);
  if (first.step.spaces > 0 || last.step.spaces > 0) return;
  double back = std::min(first.distance_mm - first.step.least_mm,
                         last.step.greatest_mm - last.distance_mm);
  double ahead = std::min(first.step.greatest_mm - first.distance_mm,
                          last.distance_mm - last.step.least_mm);
  for (std::size_t stop = 1; stop + 1 < path_.stops.size(); ++stop) {
    const SpacingCell& cell = ground_.cells()[path_.stops[stop].cell];
    back = std::min(back, path_.stops[stop].at_mm - cell.from_mm);
    ahead = std::min(ahead, cell.to_mm - path_.stops[stop].at_mm);
  }
  if (back <= 0 && ahead <= 0) return;
  const double wanted = (last.distance_mm - first.distance_mm) / 2;
  const double move = std::clamp(wanted, -std::max(back, 0.0), std::max(ahead, 0.0));
  for (std::size_t stop = 1; stop + 1 < path_.stops.size(); ++stop)
    path_.stops[stop].at_mm += move;
}

Link Evening::link(std::size_t stop) const {
  const SpacingStop& here = path_.stops[stop];
  const SpacingStop& next = path_.stops[stop + 1];
  Link result{next.at_mm - here.at_mm, ground_.step(here.cell, next.cell, {}), 0};
  if (result.step.spaces > 0) result.share = 1 / result.step.spaces;
  return result;
}

/// The length a link has from a limit, if it does.
std::optional<double> Evening::pin(const Link& link, Pins pins) const {
  const auto is_at = [&](double limit) {
    return std::abs(link.distance_mm - limit) <= same_mm_;
  };
  if (pins == Pins::EndDistances && link.share > 0) return std::nullopt;
  if (is_at(link.step.least_mm)) return link.step.least_mm;
  if (is_at(link.step.greatest_mm)) return link.step.greatest_mm;
  const double largest = largest_mm_ * link.share;
  if (pins == Pins::LimitsAndLargest && link.share > 0 && is_at(largest))
    return largest;
  return std::nullopt;
}

/// The one space, or end distance, of all links without a pin.
std::optional<double> Evening::common_space(const std::vector<Link>& links,
                                            const Shares& shares,
                                            double length_mm) const {
  double left = length_mm;
  double sum = 0;
  const Link* first = nullptr;
  for (std::size_t index = 0; index < links.size(); ++index) {
    const Link& link = links[index];
    if (shares.pins[index]) {
      left -= *shares.pins[index];
      continue;
    }
    if (first == nullptr) first = &link;
    const double difference =
        link.distance_mm / link.part() - first->distance_mm / first->part();
    const bool alike = (link.share > 0) == (first->share > 0);
    if (!alike || std::abs(difference) > same_mm_) return std::nullopt;
    sum += link.part();
  }
  if (first != nullptr) return left / sum;
  if (std::abs(left) > same_mm_) return std::nullopt;
  return 0;  // nothing to share
}

std::optional<Shares> Evening::shares(const std::vector<Link>& links,
                                      double length_mm,
                                      Pins pins) const {
  Shares result;
  for (const Link& link : links) result.pins.push_back(pin(link, pins));
  const std::optional<double> space = common_space(links, result, length_mm);
  if (!space) return std::nullopt;
  result.space_mm = *space;
  return result;
}

void Evening::even_row(std::size_t from, std::size_t to) {
  std::vector<Link> links;
  for (std::size_t stop = from; stop < to; ++stop) links.push_back(link(stop));
  const double length = path_.stops[to].at_mm - path_.stops[from].at_mm;
  for (const Pins pins : {Pins::EndDistances, Pins::Limits, Pins::LimitsAndLargest}) {
    const std::optional<Shares> shared = shares(links, length, pins);
    if (shared && set_row(from, links, *shared)) return;
  }
}

/// @returns  false, with nothing changed, if a stop would move by more than rounding
bool Evening::set_row(std::size_t from,
                      const std::vector<Link>& links,
                      const Shares& shares) {
  std::vector<double> places;
  double pinned = 0;
  double share = 0;
  for (std::size_t index = 0; index + 1 < links.size(); ++index) {
    const SpacingStop& stop = path_.stops[from + index + 1];
    if (shares.pins[index])
      pinned += *shares.pins[index];
    else
      share += links[index].part();
    const double at = path_.stops[from].at_mm + pinned + share * shares.space_mm;
    const SpacingCell& cell = ground_.cells()[stop.cell];
    places.push_back(std::clamp(at, cell.from_mm, cell.to_mm));
    if (std::abs(places.back() - stop.at_mm) > 10 * same_mm_) return false;
  }
  for (std::size_t index = 0; index < places.size(); ++index)
    path_.stops[from + index + 1].at_mm = places[index];
  return true;
}

}  // namespace

SpacingPath evened(const SpacingGround& ground,
                   const SpacingPath& path,
                   double largest_mm) {
  return Evening(ground, path, largest_mm).result();
}

}  // namespace sheerlap

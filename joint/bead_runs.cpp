#include "joint/bead_runs.h"

#include <algorithm>
#include <boost/math/tools/minima.hpp>
#include <cmath>
#include <utility>

namespace sheerlap {
namespace {

constexpr int samples = 16;
/// Stretches whose ends are no further apart are one.
constexpr double joined_mm = 1e-6;

/// The section needed along a part of a side, by the share of the part passed.
class PartSection {
 public:
  PartSection(const PerimeterSide& side,
              const EnclosedSpace& space,
              const SpanPart& part,
              double squeeze_out)
      : side_(side), space_(space), part_(part), factor_(1 + squeeze_out) {}

  double needed_mm2(double share) const {
    return factor_ * space_.section_mm2(place(share));
  }
  Length girth(double share) const { return side_.sheer.girth_at(place(share)); }

 private:
  Place place(double share) const {
    const double along = side_.sheer.path().forward ? share : 1 - share;
    return {part_.span, part_.from_u + along * (part_.to_u - part_.from_u)};
  }

  const PerimeterSide& side_;
  const EnclosedSpace& space_;
  const SpanPart& part_;
  double factor_;
};

/// A share of a part and the section needed there.
struct Sample {
  double share = 0;
  double needed_mm2 = 0;
};

/// The turning point between the neighbours of a sample that stands above or below
/// both.
Sample turning_point(const PartSection& section, double from, double to, bool peak) {
  const auto height = [&](double share) {
    return peak ? -section.needed_mm2(share) : section.needed_mm2(share);
  };
  const int bits = std::numeric_limits<double>::digits / 2;
  const double share =
      boost::math::tools::brent_find_minima(height, from, to, bits).first;
  return {share, section.needed_mm2(share)};
}

/// Samples between which the section only rises or only falls.
std::vector<Sample> monotone_samples(const PartSection& section) {
  std::vector<Sample> even;
  for (int i = 0; i <= samples; ++i) {
    const double share = static_cast<double>(i) / samples;
    even.push_back({share, section.needed_mm2(share)});
  }
  std::vector<Sample> all = even;
  for (std::size_t i = 1; i + 1 < even.size(); ++i) {
    const double before = even[i].needed_mm2 - even[i - 1].needed_mm2;
    const double after = even[i + 1].needed_mm2 - even[i].needed_mm2;
    const double noise = 1e-12 * even[i].needed_mm2;
    if (before * after < 0 && std::abs(before) > noise && std::abs(after) > noise)
      all.push_back(
          turning_point(section, even[i - 1].share, even[i + 1].share, before > 0));
  }
  std::sort(all.begin(), all.end(),
            [](const Sample& a, const Sample& b) { return a.share < b.share; });
  return all;
}

class RunBuilder {
 public:
  RunBuilder(const PerimeterSide& side, const Adhesive& adhesive)
      : side_(side), adhesive_(adhesive) {}

  /// Lays the beads of a part that follows the last one.
  void lay(const PartSection& section) {
    const auto points = monotone_samples(section);
    for (std::size_t i = 0; i + 1 < points.size(); ++i)
      lay_monotone(section, points[i], points[i + 1]);
  }
  std::vector<BeadRun> take() { return std::move(runs_); }

 private:
  Beads beads(double needed_mm2) const { return smallest_beads(adhesive_, needed_mm2); }

  void lay_monotone(const PartSection& section, Sample from, const Sample& to) {
    Beads here = beads(from.needed_mm2);
    while (here != beads(to.needed_mm2)) {
      double kept = from.share;
      double changed = to.share;
      for (int step = 0; step < 60; ++step) {
        const double middle = (kept + changed) / 2;
        const bool same = beads(section.needed_mm2(middle)) == here;
        (same ? kept : changed) = middle;
      }
      const Sample next{changed, section.needed_mm2(changed)};
      add(section, from, {kept, section.needed_mm2(kept)}, here);
      from = next;
      here = beads(from.needed_mm2);
    }
    add(section, from, to, here);
  }

  void add(const PartSection& section,
           const Sample& from,
           const Sample& to,
           const Beads& laid) {
    const Length start = section.girth(from.share);
    const Length end = section.girth(to.share);
    const double needed = std::max(from.needed_mm2, to.needed_mm2);
    if (!runs_.empty() && (start - runs_.back().to).in_mm() < joined_mm) {
      BeadRun& last = runs_.back();
      if (last.size == laid.size && last.beads == laid.count) {
        last.to = end;
        last.needed_mm2 = std::max(last.needed_mm2, needed);
        return;
      }
      if ((end - start).in_mm() < joined_mm) return;
    }
    runs_.push_back(
        {side_.name, start, end, laid.size, laid.count, laid.area_mm2, needed});
  }

  const PerimeterSide& side_;
  const Adhesive& adhesive_;
  std::vector<BeadRun> runs_;
};

}  // namespace

std::vector<BeadRun> bead_runs(const PerimeterSide& side,
                               const EnclosedSpace& space,
                               const Adhesive& adhesive) {
  RunBuilder builder(side, adhesive);
  for (const SpanPart& part : side.parts)
    builder.lay(PartSection(side, space, part, adhesive.squeeze_out));
  return builder.take();
}

Volume bead_volume(const std::vector<BeadRun>& runs) {
  Volume volume;
  for (const BeadRun& run : runs)
    volume += Volume::mm3(run.area_mm2 * (run.to - run.from).in_mm());
  return volume;
}

}  // namespace sheerlap

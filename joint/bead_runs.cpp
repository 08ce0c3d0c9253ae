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
      : side_(side), space_(space), part_(part), squeeze_out_(squeeze_out) {}

  double needed_mm2(double share) const {
    PlainWorking work;
    return section_needed(work, space_.section_mm2(place(share)), squeeze_out_);
  }
  /// Along the sheer from the side's start.
  Length girth(double share) const {
    return std::clamp(side_.sheer.girth_at(place(share)), Length(), side_.sheer_length);
  }

 private:
  Place place(double share) const {
    const double along = side_.sheer.path().forward ? share : 1 - share;
    return {part_.span, part_.from_u + along * (part_.to_u - part_.from_u)};
  }

  const PerimeterSide& side_;
  const EnclosedSpace& space_;
  const SpanPart& part_;
  double squeeze_out_;
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

/// A stretch of a part, by share, laid with the same beads.
struct Piece {
  double from = 0;
  double to = 0;
  Beads beads;
  double needed_mm2 = 0;  ///< the largest section in it
};

class PieceBuilder {
 public:
  PieceBuilder(const PartSection& section, const BeadRack& rack)
      : section_(section), rack_(rack) {}

  std::vector<Piece> pieces() {
    const auto points = monotone_samples(section_);
    for (std::size_t i = 0; i + 1 < points.size(); ++i)
      lay_monotone(points[i], points[i + 1]);
    return std::move(pieces_);
  }

 private:
  Beads beads(const Sample& at) const { return rack_.smallest(at.needed_mm2); }
  Sample sample(double share) const { return {share, section_.needed_mm2(share)}; }

  void lay_monotone(Sample from, const Sample& to) {
    Beads here = beads(from);
    while (here != beads(to)) {
      Sample kept = from;
      Sample changed = to;
      for (int step = 0; step < 60; ++step) {
        const Sample middle = sample((kept.share + changed.share) / 2);
        (beads(middle) == here ? kept : changed) = middle;
      }
      add(from, kept, here);
      from = changed;
      here = beads(from);
    }
    add(from, to, here);
  }

  void add(const Sample& from, const Sample& to, const Beads& laid) {
    const double needed = std::max(from.needed_mm2, to.needed_mm2);
    if (!pieces_.empty() && pieces_.back().beads == laid) {
      pieces_.back().to = to.share;
      pieces_.back().needed_mm2 = std::max(pieces_.back().needed_mm2, needed);
    } else {
      pieces_.push_back({from.share, to.share, laid, needed});
    }
  }

  const PartSection& section_;
  const BeadRack& rack_;
  std::vector<Piece> pieces_;
};

/// Adds a run that follows the last one, or lengthens the last one.
void add_run(std::vector<BeadRun>& runs, const BeadRun& run) {
  if (!runs.empty() && (run.from - runs.back().to).in_mm() < joined_mm) {
    BeadRun& last = runs.back();
    if (last.size == run.size && last.beads == run.beads) {
      last.to = run.to;
      last.needed_mm2 = std::max(last.needed_mm2, run.needed_mm2);
      return;
    }
    if ((run.to - run.from).in_mm() < joined_mm) return;
  }
  runs.push_back(run);
}

}  // namespace

std::vector<BeadRun> bead_runs(const PerimeterSide& side,
                               const EnclosedSpace& space,
                               const Adhesive& adhesive) {
  std::vector<BeadRun> runs;
  const BeadRack rack(adhesive);
  for (const SpanPart& part : side.parts) {
    const PartSection section(side, space, part, adhesive.squeeze_out);
    for (const Piece& piece : PieceBuilder(section, rack).pieces())
      add_run(runs, {side.name, section.girth(piece.from), section.girth(piece.to),
                     piece.beads.size, piece.beads.count, piece.beads.area_mm2,
                     piece.needed_mm2});
  }
  return runs;
}

std::vector<BeadRun> bead_runs(const Perimeter& perimeter,
                               const EnclosedSpace& space,
                               const Adhesive& adhesive) {
  std::vector<BeadRun> runs;
  for (const PerimeterSide& side : perimeter.sides) {
    const auto more = bead_runs(side, space, adhesive);
    runs.insert(runs.end(), more.begin(), more.end());
  }
  return runs;
}

std::vector<LaidLength> lengths_laid(const std::vector<BeadRun>& runs) {
  std::vector<LaidLength> laid;
  for (const BeadRun& run : runs) {
    const auto same = std::find_if(laid.begin(), laid.end(), [&](const auto& one) {
      return one.area_mm2 == run.area_mm2;
    });
    if (same == laid.end())
      laid.push_back({run.size, run.beads, run.area_mm2, run.to - run.from});
    else
      same->length += run.to - run.from;
  }
  return laid;
}

Volume bead_volume(const std::vector<BeadRun>& runs) {
  PlainWorking work;
  return Volume::ml(volume_laid(work, runs));
}

}  // namespace sheerlap

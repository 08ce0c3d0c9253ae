#include "joint/sheets/section_places.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <limits>

namespace sheerlap {
namespace {

SectionPlace at_gap(const Job& job, const GapAt& gap, std::string what) {
  SectionPlace place;
  place.what = std::move(what);
  place.side = job.perimeter.side(gap.side);
  place.sheer_girth = gap.girth;
  place.gap = gap;
  return place;
}

/// The least and the greatest of some gaps.
struct GapSpan {
  Length least = Length::mm(std::numeric_limits<double>::infinity());
  Length greatest = Length::mm(-std::numeric_limits<double>::infinity());

  void add(Length gap) {
    least = std::min(least, gap);
    greatest = std::max(greatest, gap);
  }
};

}  // namespace

bool same_gap_all_round(const Job& job) {
  if (!job.fit || job.fit->stations.empty()) return false;
  GapSpan all;
  const std::size_t depths = job.fit->stations.front().gaps.size();
  for (std::size_t depth = 0; depth < depths; ++depth) {
    GapSpan at_depth;
    for (const FitStation& station : job.fit->stations) {
      if (station.gaps.size() != depths) return false;
      at_depth.add(station.gaps[depth]);
      all.add(station.gaps[depth]);
    }
    if (at_depth.greatest - at_depth.least >= same_gap) return false;
  }
  // between the rows too
  return all.least - job.fit->least.gap < same_gap &&
         job.fit->greatest.gap - all.greatest < same_gap;
}

namespace {

const DrillStation* typical_hole(const Job& job) {
  const auto& stations = job.schedule->stations;
  if (stations.empty()) return nullptr;
  // where all gaps are the same, rounding would choose
  if (!job.fit || same_gap_all_round(job)) return &stations[stations.size() / 2];
  const double mean = job.fit->mean.in_mm();
  return &*std::min_element(
      stations.begin(), stations.end(), [&](const auto& a, const auto& b) {
        return std::abs(a.gap.in_mm() - mean) < std::abs(b.gap.in_mm() - mean);
      });
}

}  // namespace

std::vector<SectionPlace> section_places(const Job& job) {
  std::vector<SectionPlace> places;
  if (const DrillStation* hole = typical_hole(job)) {
    SectionPlace place;
    place.what = "typical, at " + hole->mark;
    place.hole = hole;
    place.side = job.perimeter.side(hole->side);
    place.sheer_girth =
        place.side->sheer.girth_at(place.side->drill_line.place_at(hole->girth));
    places.push_back(place);
  }
  if (job.fit && !same_gap_all_round(job)) {
    places.push_back(at_gap(job, job.fit->least, "least gap"));
    places.push_back(at_gap(job, job.fit->greatest, "greatest gap"));
  }
  for (std::size_t k = 0; k < places.size(); ++k)
    places[k].letter = std::string(1, static_cast<char>('A' + k));
  return places;
}

}  // namespace sheerlap

#include "joint/sheets/section_places.h"

#include <algorithm>
#include <cmath>

namespace sheerlap {
namespace {

const DrillStation* typical_hole(const Job& job) {
  const auto& stations = job.schedule->stations;
  if (stations.empty()) return nullptr;
  if (!job.fit) return &stations[stations.size() / 2];
  const double mean = job.fit->mean.in_mm();
  return &*std::min_element(
      stations.begin(), stations.end(), [&](const auto& a, const auto& b) {
        return std::abs(a.gap.in_mm() - mean) < std::abs(b.gap.in_mm() - mean);
      });
}

SectionPlace at_gap(const Job& job, const GapAt& gap, std::string what) {
  SectionPlace place;
  place.what = std::move(what);
  place.side = job.perimeter.side(gap.side);
  place.sheer_girth = gap.girth;
  place.gap = gap;
  return place;
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
  if (job.fit) {
    places.push_back(at_gap(job, job.fit->least, "least gap"));
    places.push_back(at_gap(job, job.fit->greatest, "greatest gap"));
  }
  for (std::size_t k = 0; k < places.size(); ++k)
    places[k].letter = std::string(1, static_cast<char>('A' + k));
  return places;
}

}  // namespace sheerlap

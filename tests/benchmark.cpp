#include <benchmark/benchmark.h>

#include "geometry/spacing.h"
#include "tests/geometry/random_sides.h"

namespace sheerlap {
namespace {

/// A side of about 500 points with 200 forbidden intervals at random.
///
/// @param widest_mm  of the forbidden intervals; above 150 some have to be bridged
SpacingProblem long_side(double widest_mm) {
  SpacingProblem problem;
  problem.to_mm = 70000;
  problem.limits = {40, 150};
  problem.start = problem.end = {false, 30, 75};
  RandomNumbers random(5);
  for (int index = 0; index < 200; ++index) {
    const double from = random.between(0, problem.to_mm);
    problem.forbidden.push_back({from, from + random.between(5, widest_mm)});
  }
  return problem;
}

void lay_out(benchmark::State& state, const SpacingProblem& problem) {
  std::size_t points = 0;
  for (auto run : state) points = space_out({problem})->front().points_mm.size();
  state.counters["points"] = static_cast<double>(points);
}

BENCHMARK_CAPTURE(lay_out,
                  a layout of 500 points and 200 forbidden intervals,
                  long_side(60))
    ->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(lay_out, the same with bridged intervals, long_side(200))
    ->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace sheerlap

BENCHMARK_MAIN();

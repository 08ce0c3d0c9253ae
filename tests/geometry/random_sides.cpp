#include "tests/geometry/random_sides.h"

#include <algorithm>

namespace sheerlap {
namespace {

SpaceLimits random_limits(RandomNumbers& random) {
  const double least = random.whole(4, 9) * 10;
  return {least, random.one_in(8) ? least : least + random.whole(2, 10) * 10};
}

StretchEnd random_end(RandomNumbers& random) {
  if (random.one_in(3)) return {true, 0, 0};
  const double least = random.whole(0, 4) * 10;
  return {false, least, least + random.whole(0, 6) * 10};
}

bool is_forbidden(const SpacingProblem& problem, double at_mm) {
  return std::any_of(
      problem.forbidden.begin(), problem.forbidden.end(),
      [&](const Forbidden& gap) { return at_mm > gap.from_mm && at_mm < gap.to_mm; });
}

}  // namespace

int RandomNumbers::whole(int least, int greatest) {
  const auto count = static_cast<std::uint64_t>(greatest - least) + 1;
  return least + static_cast<int>((engine_() >> 11) % count);
}

double RandomNumbers::between(double least, double greatest) {
  const double share =
      static_cast<double>(engine_() >> 11) / 9007199254740992.0;  // 2^53
  return least + share * (greatest - least);
}

SpacingProblem random_stretch(RandomNumbers& random) {
  SpacingProblem problem;
  const int length = random.one_in(6) ? random.whole(0, 200) : random.whole(200, 700);
  problem.to_mm = length;
  problem.limits = random_limits(random);
  problem.start = random_end(random);
  problem.end = random_end(random);
  for (int left = random.whole(0, 2); left > 0; --left) {
    const int from = random.whole(-50, length);
    const int to = from + random.whole(0, 300);
    problem.zones.push_back({double(from), double(to), random_limits(random)});
  }
  for (int left = random.whole(0, 3); left > 0; --left) {
    const int from = random.whole(-50, length);
    const int width = random.one_in(6) ? random.whole(100, 250) : random.whole(5, 60);
    problem.forbidden.push_back({double(from), double(from + width)});
  }
  for (int left = random.whole(-1, 2); left > 0; --left) {
    const double at = random.one_in(5) ? 0 : random.whole(0, length);
    if (!is_forbidden(problem, at)) problem.fixed_mm.push_back(at);
  }
  return problem;
}

std::vector<SpacingProblem> random_side(std::uint64_t seed) {
  RandomNumbers random(seed);
  std::vector<SpacingProblem> side;
  for (int left = random.whole(1, 3); left > 0; --left)
    side.push_back(random_stretch(random));
  return side;
}

}  // namespace sheerlap

#include "cli/tolerance_options.h"

#include <fmt/format.h>

#include <charconv>

#include "cli/options.h"
#include "cli/tolerance_tables.h"
#include "joint/quoted_text.h"

namespace sheerlap {
namespace {

/// More only get in each other's way.
constexpr std::size_t most_threads = 256;

/// What an option may be.
struct WholeOption {
  const char* name;
  std::size_t least;
  std::size_t most;
};

std::optional<std::size_t> whole(const WholeOption& option,
                                 const std::optional<std::string>& text,
                                 Errors& errors) {
  if (!text) return std::nullopt;
  std::size_t value = 0;
  const char* end = text->data() + text->size();
  const auto [stop, error] = std::from_chars(text->data(), end, value);
  if (error == std::errc() && stop == end && value >= option.least &&
      value <= option.most)
    return value;
  errors.push_back({ErrorKind::InvalidInput, "",
                    fmt::format("{} is {}: a whole number from {} to {}", option.name,
                                quoted_text(*text), option.least, option.most)});
  return std::nullopt;
}

}  // namespace

ToleranceOptions judge_tolerance(const RawToleranceOptions& raw,
                                 Command command,
                                 Errors& errors) {
  const auto refuse = [&](const char* message) {
    errors.push_back({ErrorKind::InvalidInput, "", message});
  };
  const bool makes_boats = command == Command::Tolerance;
  if (!makes_boats && (raw.boats || raw.seed || raw.threads))
    refuse(
        "--boats, --seed and --threads are for tolerance: leave them out, or run "
        "tolerance");
  if (!makes_boats && command != Command::Job && raw.record)
    refuse("--record is for tolerance and job: leave it out, or run one of them");
  else if (raw.record && raw.record->empty())
    refuse("--record is empty: name a record of boats");
  if (!makes_boats) return {{}, {}, {}, raw.record};
  return {whole({"--boats", fewest_boats, 1'000'000}, raw.boats, errors),
          whole({"--seed", 1, 1'000'000}, raw.seed, errors),
          whole({"--threads", 1, most_threads}, raw.threads, errors), raw.record};
}

}  // namespace sheerlap

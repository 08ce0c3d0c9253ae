#include "cli/tolerance_options.h"

#include <fmt/format.h>

#include <charconv>

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
                                 bool wanted,
                                 Errors& errors) {
  if (!wanted) {
    if (raw.boats || raw.seed || raw.threads || raw.record)
      errors.push_back({ErrorKind::InvalidInput, "",
                        "--boats, --seed, --threads and --record are for tolerance: "
                        "leave them out, or run tolerance"});
    return {};
  }
  if (raw.record && raw.record->empty())
    errors.push_back(
        {ErrorKind::InvalidInput, "", "--record is empty: name a record of boats"});
  return {whole({"--boats", fewest_boats, 1'000'000}, raw.boats, errors),
          whole({"--seed", 1, 1'000'000}, raw.seed, errors),
          whole({"--threads", 1, most_threads}, raw.threads, errors), raw.record};
}

}  // namespace sheerlap

#include "cli/tolerance_tables.h"

#include <fmt/format.h>

#include <array>
#include <string_view>

namespace sheerlap {
namespace {

/// Per cent; a moulding that shrinks or grows by more is of another boat.
constexpr Bounds shrinkage_means{-5, 5, false, "per cent, from -5 to 5"};
constexpr Bounds shrinkage_spreads{0, 5, false, "per cent, from 0 to 5"};
constexpr Bounds twist_means{-10, 10, false, "degrees, from -10 to 10"};
constexpr Bounds twist_spreads{0, 10, false, "degrees, from 0 to 10"};
constexpr Bounds hundred_boats{0, 100, false, "boats of 100, from 0 to 100"};
constexpr Bounds length_means{-500, 500, false,
                              "no more than 500 mm (19.7 in) either way"};
constexpr Bounds length_spreads{0, 500, false, "from 0 to 500 mm (19.7 in)"};
/// The gap is looked at every 50 mm; shorter waves would pass between the places.
constexpr Bounds correlations{100, 1e6, false, "100 mm (3.94 in) or more"};

constexpr std::array kinds{
    Choice<ProcessErrorKind>{"hull shrinkage", ProcessErrorKind::HullShrinkage},
    Choice<ProcessErrorKind>{"lid shrinkage", ProcessErrorKind::LidShrinkage},
    Choice<ProcessErrorKind>{"hull opening", ProcessErrorKind::HullOpening},
    Choice<ProcessErrorKind>{"hull twist", ProcessErrorKind::HullTwist},
    Choice<ProcessErrorKind>{"hull trim", ProcessErrorKind::HullTrim},
    Choice<ProcessErrorKind>{"hull face", ProcessErrorKind::HullFace},
    Choice<ProcessErrorKind>{"lip thickness", ProcessErrorKind::LipThickness}};
constexpr std::array laws{Choice<ErrorLaw>{"normal", ErrorLaw::Normal},
                          Choice<ErrorLaw>{"uniform", ErrorLaw::Uniform}};

constexpr const char* as_drawn = "on the mean as drawn";
constexpr const char* spread_words =
    "the standard deviation, or half the width of a uniform law";

bool is_shrinkage(ProcessErrorKind kind) {
  return kind == ProcessErrorKind::HullShrinkage ||
         kind == ProcessErrorKind::LidShrinkage;
}

bool varies_along(ProcessErrorKind kind) {
  return kind == ProcessErrorKind::HullTrim || kind == ProcessErrorKind::HullFace ||
         kind == ProcessErrorKind::LipThickness;
}

/// Mean and spread as plain numbers, in shares or degrees.
void read_numbers(TomlTable& table, ProcessError& error) {
  const bool shrinkage = is_shrinkage(error.kind);
  const double unit = shrinkage ? 0.01 : 1;
  error.mean = unit * table.number("mean", shrinkage ? shrinkage_means : twist_means)
                          .otherwise(0, "0", as_drawn);
  error.spread =
      unit * table.number("spread", shrinkage ? shrinkage_spreads : twist_spreads)
                 .needed(spread_words);
}

void read_lengths(TomlTable& table, ProcessError& error) {
  error.mean =
      table.length("mean", length_means).otherwise(Length(), "0", as_drawn).in_mm();
  error.spread = table.length("spread", length_spreads).needed(spread_words).in_mm();
}

/// An error that is to be had from the record has no numbers of its own.
void refuse_numbers(TomlTable& table) {
  table.number("mean", bounds::any);
  table.number("spread", bounds::any);
  for (const char* key : {"mean", "spread"})
    if (table.has(key))
      table.refuse(key,
                   fmt::format("[[error]] {} is had from the record: leave it out, "
                               "or from_record",
                               key));
}

ProcessError read_error(TomlTable& table) {
  ProcessError error;
  auto kind = table.choice("kind", kinds);
  const bool known = kind.optional().has_value();
  error.kind = kind.needed("what goes wrong, such as \"hull face\"");
  error.from_record = table.flag("from_record").optional().value_or(false);
  auto law = table.choice("law", laws);
  error.law = error.from_record
                  ? law.optional().value_or(ErrorLaw::Normal)
                  : law.otherwise(ErrorLaw::Normal, "normal", common_practice);
  if (error.from_record)
    refuse_numbers(table);
  else if (is_shrinkage(error.kind) || error.kind == ProcessErrorKind::HullTwist)
    read_numbers(table, error);
  else
    read_lengths(table, error);
  auto correlation = table.length("correlation", correlations);
  if (error.from_record)
    error.correlation = correlation.optional().value_or(Length());
  else if (known && varies_along(error.kind))
    error.correlation =
        correlation.needed("how far along the girth it is still much the same");
  else if (known && table.has("correlation"))
    table.refuse("correlation",
                 "[[error]] correlation is for hull trim, hull face and lip thickness, "
                 "which vary along the girth: leave it out");
  table.refuse_unknown_keys();
  return error;
}

}  // namespace

std::optional<ToleranceInputs> read_tolerance(TomlTable& root, WantedShare& wanted) {
  TomlTable table = root.table("tolerance");
  ToleranceInputs inputs;
  for (TomlTable& error : root.tables("error"))
    inputs.errors.push_back(read_error(error));
  if (!table.there()) {
    if (!inputs.errors.empty())
      root.refuse("error",
                  "[[error]] stands without [tolerance]: its boats, how many to make "
                  "up");
    return std::nullopt;
  }
  const auto boats =
      table.count("boats").needed("how many boats to make up, such as 10000");
  if (boats > 0 && boats < fewest_boats)
    table.refuse("boats", fmt::format("[tolerance] boats is {}: {} or more, for shares "
                                      "of fewer say little",
                                      boats, fewest_boats));
  inputs.boats = boats;
  inputs.seed = table.count("seed").otherwise(
      1, "1", "any will do: the same seed makes the same boats");
  wanted.given = table.has("wanted");
  wanted.of_100 = table.number("wanted", hundred_boats)
                      .otherwise(WantedShare().of_100, "95", common_practice);
  if (inputs.errors.empty())
    table.refuse("", "[tolerance] has no [[error]]: what goes wrong, and how far");
  table.refuse_unknown_keys();
  return inputs;
}

}  // namespace sheerlap

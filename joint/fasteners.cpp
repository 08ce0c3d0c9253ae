#include "joint/fasteners.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <cmath>
#include <numeric>

#include "joint/blind_rivets.h"
#include "joint/bolts.h"
#include "joint/fastener_length.h"
#include "joint/fastener_table.h"
#include "joint/tapping_screws.h"
#include "joint/worded_length.h"

namespace sheerlap {
namespace {

/// Tables of grips leave a thousandth of an inch between one length and the next.
constexpr double grip_step_mm = 0.0254;

/// A lip's gelcoat is relieved round a pan head this much wider than the hole, half as
/// deep.
constexpr double relief_mm = 1.6;
constexpr std::string_view relief_source = "common practice, no source";

std::string_view kind_word(FastenerKind kind) {
  switch (kind) {
    case FastenerKind::TappingScrew:
      return "tapping screw";
    case FastenerKind::Bolt:
      return "bolt";
    case FastenerKind::BlindRivet:
      break;
  }
  return "blind rivet";
}

std::optional<FastenerSpec> from_tables(const FastenerChoice& choice) {
  switch (choice.kind) {
    case FastenerKind::TappingScrew:
      return tapping_screw(choice.size, choice.head);
    case FastenerKind::Bolt:
      return bolt(choice.size, choice.head);
    case FastenerKind::BlindRivet:
      break;
  }
  return choice.head == HeadKind::Pan ? blind_rivet(choice.size) : std::nullopt;
}

std::vector<std::string> sizes_with(FastenerKind kind, HeadKind head) {
  std::vector<std::string> sizes = kind == FastenerKind::TappingScrew
                                       ? tapping_screw_sizes()
                                   : kind == FastenerKind::Bolt ? bolt_sizes()
                                                                : blind_rivet_sizes();
  std::erase_if(sizes, [&](const std::string& size) {
    FastenerChoice choice;
    choice.kind = kind;
    choice.size = size;
    choice.head = head;
    return !from_tables(choice);
  });
  return sizes;
}

tl::unexpected<Errors> unknown_size(const FastenerChoice& choice) {
  const bool sunk = choice.head == HeadKind::Countersunk;
  const auto sizes = sizes_with(choice.kind, choice.head);
  if (sizes.empty())
    return invalid_input(
        "fastener.head",
        fmt::format("no table here has a countersunk {}: pan", kind_word(choice.kind)));
  return invalid_input(
      "fastener.size",
      fmt::format("no table here has a{} {} of size {}: {}", sunk ? " countersunk" : "",
                  kind_word(choice.kind), choice.size, fmt::join(sizes, ", ")));
}

void drop_value(FastenerSpec& spec, std::string_view start) {
  std::erase_if(spec.values, [&](const auto& value) {
    return std::string_view(value.what).starts_with(start);
  });
}

void take_own_holes(FastenerSpec& spec, const FastenerChoice& choice) {
  if (choice.lip_hole) {
    drop_value(spec, "hole in");
    spec.lip_hole =
        take(spec, "hole in the lip", seen(choice.lip_hole->in_mm()), "the joint file");
  }
  if (choice.hull_pilot) {
    drop_value(spec, "pilot hole");
    spec.pilot_for_plastics = false;
    spec.hull_pilot =
        take_pilot(spec, seen(choice.hull_pilot->in_mm()), "the joint file");
  }
}

Errors hole_faults(const FastenerSpec& spec) {
  Errors errors;
  const auto fault = [&](const char* where, std::string message) {
    errors.push_back({ErrorKind::InvalidInput, where, std::move(message)});
  };
  if (spec.kind == FastenerKind::TappingScrew) {
    if (!spec.hull_pilot)
      fault(
          "fastener.hull_pilot",
          fmt::format("no table here has a pilot hole for {}: give hull_pilot, proved "
                      "on an offcut",
                      spec.size));
    else if (!(*spec.hull_pilot > Length()) || !(*spec.hull_pilot < spec.diameter_min))
      fault(
          "fastener.hull_pilot",
          fmt::format("{:.2f} mm gives the thread of {} no hold: under {:.2f} mm",
                      spec.hull_pilot->in_mm(), spec.size, spec.diameter_min.in_mm()));
  }
  if (spec.lip_hole == Length())
    fault("fastener.lip_hole",
          fmt::format("no table here has a hole for {}: give lip_hole", spec.size));
  else if (!(spec.lip_hole >= spec.diameter))
    fault("fastener.lip_hole",
          fmt::format("{:.2f} mm does not pass {}: at least {:.2f} mm",
                      spec.lip_hole.in_mm(), spec.size, spec.diameter.in_mm()));
  return errors;
}

void set_countersink(FastenerSpec& spec) {
  if (spec.head == HeadKind::Countersunk) {
    spec.countersink = spec.head_diameter;
    return;
  }
  const Length relief = take(spec, "relief in the gelcoat, over the hole",
                             seen(relief_mm), relief_source);
  PlainWorking work;
  spec.countersink = Length::mm(relieved_hole(work, spec.lip_hole, relief));
  spec.countersink_depth = relief / 2;
}

/// The grips of the lengths in stock.
Result<std::vector<Grip>> grips_in_stock(const FastenerSpec& spec) {
  std::vector<Grip> grips;
  Errors errors;
  for (const Length length : spec.lengths) {
    const auto found =
        std::find_if(spec.grips.begin(), spec.grips.end(), [&](const Grip& grip) {
          return std::abs((grip.length - length).in_mm()) < 0.1;
        });
    if (found != spec.grips.end()) {
      grips.push_back(*found);
      continue;
    }
    std::vector<std::string> known;
    for (const Grip& grip : spec.grips)
      known.push_back(fmt::format("{:.4g}", grip.length.in_mm()));
    errors.push_back({ErrorKind::InvalidInput, "fastener.lengths",
                      fmt::format("no table here has the grip of a {} blind rivet of "
                                  "{:.4g} mm: {} mm",
                                  spec.size, length.in_mm(), fmt::join(known, ", "))});
  }
  if (!errors.empty()) return tl::unexpected(std::move(errors));
  return grips;
}

/// Leaves a rivet only the grips in stock, and of its values only theirs.
void keep_grips(FastenerSpec& spec, std::vector<Grip> grips) {
  spec.grips = std::move(grips);
  std::erase_if(spec.values, [&](const FastenerValue& value) {
    return value.what.starts_with("greatest grip") &&
           std::none_of(spec.grips.begin(), spec.grips.end(), [&](const Grip& grip) {
             return value.what.ends_with(" " + worded(grip.length));
           });
  });
}

/// A length in the unit of the size: "19", or "7/8 in".
std::string length_words(const FastenerSpec& spec, Length length) {
  const bool in_inches = spec.size.find_first_of("#/") != std::string::npos;
  const double sixteenths = length.in_inches() * 16;
  const auto whole = std::lround(sixteenths);
  if (!in_inches || std::abs(sixteenths - static_cast<double>(whole)) > 0.01)
    return fmt::format("{:.4g}", length.in_mm());
  const long part = std::gcd(whole % 16, 16L);
  const std::string fraction = fmt::format("{}/{}", whole % 16 / part, 16 / part);
  if (whole % 16 == 0) return fmt::format("{} in", whole / 16);
  return whole < 16 ? fraction + " in" : fmt::format("{}-{} in", whole / 16, fraction);
}

}  // namespace

Result<FastenerSpec> fastener(const FastenerChoice& choice) {
  auto spec = from_tables(choice);
  if (!spec) return unknown_size(choice);
  take_own_holes(*spec, choice);
  Errors errors = hole_faults(*spec);
  set_countersink(*spec);
  if (!choice.lengths.empty()) {
    drop_value(*spec, "shortest in stock");
    drop_value(*spec, "longest in stock");
    spec->lengths = choice.lengths;
    std::sort(spec->lengths.begin(), spec->lengths.end());
  }
  if (spec->kind == FastenerKind::BlindRivet) {
    auto grips = grips_in_stock(*spec);
    if (grips)
      keep_grips(*spec, std::move(*grips));
    else
      errors.insert(errors.end(), grips.error().begin(), grips.error().end());
  }
  if (!errors.empty()) return tl::unexpected(std::move(errors));
  return *spec;
}

Length length_needed(const FastenerSpec& spec, Length stack) {
  PlainWorking work;
  return Length::mm(least_length(work, spec, stack));
}

std::optional<Length> serving_length(const FastenerSpec& spec, Length stack) {
  constexpr double rounding_mm = 1e-9;
  if (spec.kind == FastenerKind::BlindRivet) {
    for (const Grip& grip : spec.grips)
      if (stack.in_mm() <= grip.greatest.in_mm() + rounding_mm &&
          stack.in_mm() >= grip.least.in_mm() - grip_step_mm)
        return grip.length;
    return std::nullopt;
  }
  const double least = length_needed(spec, stack).in_mm() - rounding_mm;
  for (const Length length : spec.lengths)
    if (length.in_mm() >= least) return length;
  return std::nullopt;
}

std::string fastener_name(const FastenerSpec& spec) {
  return fmt::format("{} {}", kind_word(spec.kind), spec.size);
}

std::string fastener_name(const FastenerSpec& spec, Length length) {
  return fmt::format("{} x {}", fastener_name(spec), length_words(spec, length));
}

}  // namespace sheerlap

#include "joint/strength_needs.h"

#include <fmt/format.h>

#include <array>
#include <optional>

#include "joint/mechanics/laminate_estimate.h"
#include "joint/reasons/working.h"

namespace sheerlap {
namespace {

/// The factor on the strengths of a laminate that was not tested.
constexpr double untested = 0.8;

/// A value of a table, and what it is.
template <class Table>
struct Need {
  std::optional<double> Table::*value;
  const char* key;
  const char* what;
};

constexpr std::array<Need<LaminateStrength>, 7> of_laminate{{
    {&LaminateStrength::modulus, "modulus", "modulus in the lap's plane, N/mm2"},
    {&LaminateStrength::shear_modulus, "shear_modulus",
     "shear modulus in its plane, N/mm2"},
    {&LaminateStrength::poisson, "poisson", "Poisson's ratio, without unit"},
    {&LaminateStrength::tension, "tension", "tensile strength, N/mm2"},
    {&LaminateStrength::shear, "shear", "shear strength in its plane, N/mm2"},
    {&LaminateStrength::interlaminar, "interlaminar",
     "shear strength between plies, N/mm2"},
    {&LaminateStrength::bearing, "bearing", "strength under a shank, N/mm2"},
}};

constexpr std::array<Need<AdhesiveStrength>, 4> of_adhesive{{
    {&AdhesiveStrength::modulus, "modulus", "modulus, N/mm2"},
    {&AdhesiveStrength::shear_modulus, "shear_modulus", "shear modulus, N/mm2"},
    {&AdhesiveStrength::shear_strength, "shear_strength", "shear strength, N/mm2"},
    {&AdhesiveStrength::peel_strength, "peel_strength", "peel strength, N/mm2"},
}};

template <class Table, std::size_t n>
void look(const Table& table,
          const std::string& name,
          const std::array<Need<Table>, n>& needs,
          Errors& errors) {
  for (const Need<Table>& need : needs)
    if (!(table.*need.value))
      errors.push_back(
          {ErrorKind::InvalidInput, name,
           fmt::format("[{}] has no {}: `strength` needs the {}; from a test or the "
                       "data sheet",
                       name, need.key, need.what)});
}

void estimate(LaminateStrength& strength,
              const std::string& table,
              std::vector<DefaultUsed>& defaults) {
  if (!strength.glass_fraction) return;
  PlainWorking work;
  const GlassContent<double> glass{*strength.glass_fraction, untested};
  const auto fill = [&](std::optional<double>& value, const char* key, double found) {
    if (value) return;
    value = found;
    defaults.push_back(
        {fmt::format("{}.{}", table, key), fmt::format("{:.4g} N/mm2", found),
         fmt::format("estimated from glass_fraction, times {:g} for an untested "
                     "laminate: ISO 12215-5:2008; from memory, confirm",
                     untested)});
  };
  fill(strength.tension, "tension", estimated_tension(work, glass));
  fill(strength.compression, "compression", estimated_compression(work, glass));
  fill(strength.shear, "shear", estimated_shear(work, glass));
  fill(strength.interlaminar, "interlaminar", estimated_interlaminar(work, glass));
  fill(strength.bearing, "bearing", *strength.compression);
}

}  // namespace

Errors strength_lacks(const Joint& joint) {
  Errors errors;
  if (!joint.loads)
    errors.push_back({ErrorKind::InvalidInput, "loads",
                      "[loads] is missing: `strength` needs the limit loads and the "
                      "factors asked for"});
  if (!joint.adhesive)
    errors.push_back({ErrorKind::InvalidInput, "adhesive",
                      "[adhesive] is missing: `strength` needs its moduli and "
                      "strengths"});
  look(joint.hull.strength, "hull", of_laminate, errors);
  look(joint.lip.strength, "lip", of_laminate, errors);
  if (joint.adhesive) look(joint.adhesive->strength, "adhesive", of_adhesive, errors);
  if (joint.loads && joint.loads->warmth && !joint.lip.strength.expansion)
    errors.push_back({ErrorKind::InvalidInput, "lip",
                      "[lip] has no expansion: [deck_warmth] needs the deck's, 1e-6 "
                      "for each K"});
  return errors;
}

Joint with_estimates(Joint joint) {
  estimate(joint.hull.strength, "hull", joint.defaults);
  estimate(joint.lip.strength, "lip", joint.defaults);
  return joint;
}

}  // namespace sheerlap

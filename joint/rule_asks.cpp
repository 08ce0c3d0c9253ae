#include "joint/rule_asks.h"

#include <fmt/format.h>

#include <algorithm>

#include "joint/mechanics/watertight_pitch.h"
#include "joint/vessel_length_table.h"
#include "joint/worded_length.h"

namespace sheerlap {
namespace {

/// Lengths no further apart count as equal.
constexpr double rounding_mm = 1e-6;

/// What a tapered end of a lap is left with.
/// @source  MIL-HDBK-17-3F, vol. 3, ch. 12, D-11: 0.020 in
constexpr Length taper_ends_at = Length::inches(0.020);

bool thinner(Length bolt, Length asked) {
  return (bolt - asked).in_mm() < -rounding_mm;
}

/// The table's row is used whole: its spacing is for bolts as thick as it asks.
RuleAsked asked_by_table(RuleQuantity quantity, const RuleSubject& subject) {
  if (!subject.vessel_length) return {{}, "the vessel's length is not given"};
  const auto row = vessel_length_row(*subject.vessel_length);
  if (!row)
    return {
        {},
        fmt::format("the table runs from {} and is not carried on to a vessel of {}",
                    worded_range(Length::inches(30 * 12), Length::inches(120 * 12)),
                    worded(*subject.vessel_length))};
  if (quantity == RuleQuantity::LeastOverlap) return {row->overlap, ""};
  if (quantity == RuleQuantity::LeastBoltDiameter) return {row->diameter, ""};
  if (thinner(subject.diameter, row->diameter))
    return {{},
            fmt::format("the spacing is for bolts of at least {}; these are of {}",
                        worded(row->diameter), worded(subject.diameter))};
  return {row->spacing, ""};
}

}  // namespace

RuleAsked rule_asked(const RuleAsk& ask, const RuleSubject& subject) {
  switch (ask.form) {
    case RuleForm::BoltDiameters:
      return {ask.factor * subject.diameter, ""};
    case RuleForm::HoleDiameters:
      return {ask.factor * std::max(subject.lip_hole, subject.hull_hole), ""};
    case RuleForm::LipThicknesses:
      return {ask.factor * subject.lip_thickness, ""};
    case RuleForm::TaperedLip:
      return {ask.factor * (subject.lip_thickness - taper_ends_at), ""};
    case RuleForm::Fixed:
      return {Length::mm(ask.factor), ""};
    case RuleForm::GasketedFlange: {
      const Length thinner_one =
          std::min(subject.lip_thickness, subject.hull_thickness);
      PlainWorking work;
      return {Length::mm(flange_pitch(
                  work, SealedFlange<double>{subject.diameter.in_mm(),
                                             thinner_one.in_mm(), ask.factor})),
              ""};
    }
    case RuleForm::TableByLength:
      break;
  }
  return asked_by_table(ask.quantity, subject);
}

std::optional<Length> greatest_pitch(const PublishedRule& rule,
                                     const RuleSubject& subject) {
  for (const RuleAsk& ask : rule.asks)
    if (ask.quantity == RuleQuantity::GreatestPitch)
      return rule_asked(ask, subject).length;
  return std::nullopt;
}

std::optional<RulePitch> greatest_pitch(const std::vector<const PublishedRule*>& chosen,
                                        const RuleSubject& subject) {
  std::optional<RulePitch> least;
  for (const PublishedRule* rule : chosen) {
    const auto pitch = greatest_pitch(*rule, subject);
    if (pitch && (!least || *pitch < least->pitch)) least = {*pitch, rule};
  }
  return least;
}

}  // namespace sheerlap

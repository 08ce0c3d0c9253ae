#include "joint/documents/tolerance_json.h"

#include <vector>

#include "joint/documents/tolerance_words.h"
#include "joint/perimeter.h"

namespace sheerlap {
namespace {

Json estimate(const Estimate& of) {
  return {
      {"value", number(of.value)}, {"low", number(of.low)}, {"high", number(of.high)}};
}

Json deciles(const Deciles& of) {
  return {{"p10", estimate(of.p10)},
          {"p50", estimate(of.p50)},
          {"p90", estimate(of.p90)},
          {"within", number(of.within)}};
}

Json errors(const ToleranceInputs& inputs) {
  Json list = Json::array();
  for (const ProcessError& error : inputs.errors) {
    const bool per_cent = unit_of(error.kind) == ErrorUnit::PerCent;
    const char* units[] = {"per cent", "degrees", "mm"};
    const double in_unit = per_cent ? 100 : 1;
    const bool along = error.correlation > Length();
    list.push_back({{"kind", word_of(error.kind)},
                    {"law", word_of(error.law)},
                    {"mean", number(in_unit * error.mean)},
                    {"spread", number(in_unit * error.spread)},
                    {"unit", units[static_cast<int>(unit_of(error.kind))]},
                    {"correlation", along ? number(error.correlation) : Json(nullptr)},
                    {"from_record", error.from_record}});
  }
  return list;
}

Json shares(const SqueezeShares& of) {
  return {{"on", estimate(of.on)},
          {"unsqueezed", estimate(of.unsqueezed)},
          {"squeezed", estimate(of.squeezed)},
          {"beyond", estimate(of.beyond)},
          {"never", estimate(of.never)}};
}

Json stretches(const std::vector<BlamedStretch>& all) {
  Json list = Json::array();
  for (const BlamedStretch& stretch : all)
    list.push_back({{"side", side_word(stretch.side)},
                    {"from", number(stretch.from)},
                    {"to", number(stretch.to)},
                    {"holds", estimate(stretch.holds)},
                    {"tight", estimate(stretch.tight)},
                    {"wide", estimate(stretch.wide)}});
  return list;
}

Json buy(const RunBuy& of) {
  return {
      {"laid", number(of.laid.in_ml())}, {"packs", of.packs}, {"nozzles", of.nozzles}};
}

Json run(const std::optional<ToleranceRun>& of) {
  if (!of) return nullptr;
  return {{"boats", of->boats},
          {"laid_mean", estimate(of->laid_mean)},
          {"laid_p90", estimate(of->laid_p90)},
          {"nominal", buy(of->nominal)},
          {"at_p90", buy(of->at_p90)},
          {"at_every_p90", buy(of->at_every_p90)}};
}

Json lengths(const std::vector<LengthMix>& all) {
  Json list = Json::array();
  for (const LengthMix& mix : all)
    list.push_back({{"length", mix.length ? number(*mix.length) : Json(nullptr)},
                    {"nominal", mix.nominal},
                    {"in_a_boat", estimate(mix.in_a_boat)},
                    {"run_p90", mix.run_p90 ? estimate(*mix.run_p90) : Json(nullptr)}});
  return list;
}

Json driven(const std::vector<VarianceShare>& all) {
  Json list = Json::array();
  for (const VarianceShare& share : all)
    list.push_back({{"error", share.error},
                    {"first", estimate(share.first)},
                    {"total", estimate(share.total)}});
  return list;
}

Json record(const std::optional<RecordedFace>& of) {
  if (!of) return nullptr;
  const FieldEstimate& face = of->face;
  return {{"boats", of->boats},
          {"samples", face.samples},
          {"readings", face.readings},
          {"state", state_word(of->pattern.state)},
          {"mean", estimate(face.mean)},
          {"least", number(of->reach.least)},
          {"greatest", number(of->reach.greatest)},
          {"spread", estimate(face.spread)},
          {"correlation", estimate(face.correlation_mm)},
          {"correlation_open", face.correlation_open},
          {"noise", number(face.noise)}};
}

}  // namespace

Json tolerance_json(const ToleranceJob& job) {
  const Tolerance& of = job.tolerance;
  return {
      {"boats", of.boats},
      {"asked", of.asked},
      {"seed", of.seed},
      {"stations", of.stations},
      {"solved_afresh", of.solved_afresh},
      {"errors", errors(*job.job.joint.tolerance)},
      {"record", record(job.record)},
      {"shares", shares(of.shares)},
      {"nominal_margin", number(of.nominal_margin_mm)},
      {"margin_mean", estimate(of.margin_mean_mm)},
      {"margin", deciles(of.margin_mm)},
      {"squeeze", of.squeeze_mm ? deciles(*of.squeeze_mm) : Json(nullptr)},
      {"stretches", stretches(of.stretches)},
      {"adhesive", Json{{"joint_volume", deciles(of.adhesive.joint)},
                        {"boat_volume", deciles(of.adhesive.boat)},
                        {"joint_volume_mean", estimate(of.adhesive.mean)},
                        {"joint_volume_deviation", estimate(of.adhesive.deviation)}}},
      {"run", run(of.run)},
      {"lengths", lengths(of.lengths)},
      {"drives", Json{{"boats", of.drives.boats},
                      {"volume", driven(of.drives.volume)},
                      {"margin", driven(of.drives.margin)},
                      {"squeeze", driven(of.drives.squeeze)}}}};
}

}  // namespace sheerlap

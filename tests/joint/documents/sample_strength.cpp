#include "tests/joint/documents/sample_strength.h"

#include <limits>

namespace sheerlap {
namespace {

BondPoint point(SideName side, double girth, double use, BondMode mode) {
  BondPoint at;
  at.side = side;
  at.girth = at.on_line = Length::mm(girth);
  at.gap_top = Length::mm(2.28);
  at.gap_low = Length::mm(3.72);
  at.width = Length::mm(40);
  at.load = {4, 2.26, 0.2};
  at.shear_along = 0.32;
  at.shear_across = 0.24;
  at.peel = 0.51;
  at.utilisation = use;
  at.mode = mode;
  return at;
}

BondStrength sample_bond() {
  BondStrength bond;
  bond.worst = point(SideName::Starboard, 1500, 1.004, BondMode::LaminateShear);
  bond.stations = {point(SideName::Starboard, 0, 0.3, BondMode::AdhesivePeel),
                   point(SideName::Starboard, 1000, 0.3, BondMode::AdhesivePeel),
                   point(SideName::Starboard, 2000, 0.3, BondMode::AdhesivePeel),
                   point(SideName::Port, 0, 0.95, BondMode::AdhesiveShear),
                   point(SideName::Transom, 0, std::numeric_limits<double>::infinity(),
                         BondMode::NoBondLine)};
  bond.along = bond.stations;
  bond.along.push_back(bond.worst);
  bond.along.push_back(
      point(SideName::Starboard, 500, 0.29, BondMode::LaminateThrough));
  bond.outside = {{"gap a wedge: worked as one", "starboard, girth 411.3952 mm"}};
  return bond;
}

FastenerRow hole(const char* mark, SideName side, double girth, double use) {
  FastenerRow row;
  row.mark = mark;
  row.side = side;
  row.girth = Length::mm(girth);
  row.tributary = Length::mm(115.42);
  row.load = 530.4;
  row.pull = 23.1;
  row.shank = 3880.9;
  row.bearing = 2160;
  row.shear_out = 7000 + girth;
  row.pull_out = 570;
  row.governing = FastenerMode::Bearing;
  row.utilisation = use;
  return row;
}

RuleRow rule(RuleState state, const char* words) {
  RuleRow row;
  row.rule = "edge_class";
  row.asks_words = words;
  row.has_words = "least distance";
  row.where = "at S01";
  row.asks = Length::mm(9.6);
  row.has = Length::mm(19.94);
  row.state = state;
  row.source = "a class-rule table for composite craft (edition not confirmed)";
  row.notes = {"written for bolts: an extension"};
  return row;
}

RuleRows sample_rules() {
  RuleRows rows{rule(RuleState::Pass, "a line of bolts at least 2 diameters away"),
                rule(RuleState::Warn, "bolts no more than 20 diameters apart"),
                rule(RuleState::Fail, "an overlap deeper than this one"),
                rule(RuleState::Information, "fasteners as thick as the laminate"),
                rule(RuleState::DoesNotApply, "holes in plates of steel")};
  rows[0].chosen = true;
  rows[3].rule = "diameter_aerospace";
  rows[3].source = "aerospace custom: from memory, confirm";
  rows[4].notes = {"there is one line of holes"};
  return rows;
}

Explanations sample_reasons() {
  const Reason given{"p",
                     "pressure on the deck",
                     "kN/m2",
                     5,
                     "",
                     "",
                     "",
                     "",
                     Origin::of_file("deck_panel.pressure")};
  const Reason worked{"p_T",
                      "load of the deck across the joint",
                      "N/mm",
                      1.25,
                      "p/1000*250",
                      "5/1000*250",
                      "a textbook; from memory, confirm",
                      "a strip of deck",
                      {}};
  return {{"strength.loads.deck_pressure", "load from the deck", {given, worked}}};
}

}  // namespace

Loads sample_loads() {
  Loads loads{
      .along = 4, .across = 1, .off = 0.2, .factor_bond = 3, .factor_fastener = 2.5};
  loads.stretches = {{{SideChoice::Both, Length::mm(2880), Length::mm(2980), false},
                      {5, 0, 0},
                      "bulkhead"}};
  PlaceLoad cleat;
  cleat.at = Length::mm(680);
  cleat.force = 1200;
  cleat.spread = Length::mm(200);
  cleat.what = "bow cleat";
  loads.points = {cleat};
  loads.panel = DeckLoad{};
  loads.panel->span = Length::mm(500);
  loads.panel->pressure = 5;
  loads.warmth = DeckWarmth{8, Length::mm(300), Length::mm(300)};
  return loads;
}

Strength sample_strength() {
  Strength strength;
  strength.bond = sample_bond();
  strength.fasteners.rows = {hole("S01", SideName::Starboard, 75.5, 0.62),
                             hole("S02", SideName::Starboard, 166, 1.23),
                             hole("P01", SideName::Port, 75.5, 0.95)};
  strength.fasteners.worst = 1;
  strength.fasteners.left_out = {"head pulled through: no interlaminar strength"};
  strength.sharing_place = strength.bond.stations[0];
  strength.sharing = {0.000215, 0.000042, 0.0011, 0.0057,
                      "the fasteners carry 0.1 to 0.6 %"};
  strength.clamping.place = strength.bond.stations[0];
  strength.clamping.flow_force = 42.06;
  strength.clamping.bow = Length::mm(0.65);
  strength.clamping.pitch = Length::mm(164.9);
  strength.clamping.left_out = {"a seal: no gasket factor"};
  strength.rules = sample_rules();
  strength.combination = {"Loads are limit loads."};
  strength.reasons = sample_reasons();
  return strength;
}

}  // namespace sheerlap

#include "tests/joint/documents/sample_job.h"

#include <numbers>

#include "tests/joint/documents/sample_strength.h"

namespace sheerlap {
namespace {

Joint sample_joint() {
  Joint joint;
  joint.title = "Sample";
  SheerRow row;
  row.point = Point3::Zero();
  row.offsets = {Length::mm(50), Length(), Length(), Length::mm(2.1), Length::mm(3.9)};
  joint.sheer.rows = {row, row};
  joint.hull = {Length::mm(6), Length::mm(2)};
  joint.lip = {Length::mm(5), Length::mm(2)};
  joint.adhesive.emplace();
  joint.adhesive->name = "two-part paste";
  joint.adhesive->gap_min = Length::mm(1);
  joint.adhesive->gap_max = Length::mm(8);
  joint.adhesive->squeeze_out = 0.1;
  joint.adhesive->waste = 0.05;
  joint.adhesive->pack = Volume::ml(490);
  joint.adhesive->pack_usable = Volume::ml(430);
  joint.adhesive->nozzle_purge = Volume::ml(30);
  joint.fastener.size = "ST4.8";
  joint.fastener.line = Length::mm(28);
  joint.jig = {Length::mm(1300), Length::mm(8)};
  joint.layout.pitch_min = Length::mm(40);
  joint.layout.pitch_max = Length::mm(150);
  joint.layout.round_to = Length::mm(1);
  joint.order.emplace();
  joint.order->boats = 120;
  joint.loads = sample_loads();
  joint.turned_entry = TurnedEntry{FirstEnd::Bow, Angle::degrees(4)};
  joint.seating.readings = {
      {Length::mm(2560), "", Length::mm(2216), Length::mm(2231), Length::mm(2219)},
      {Length(), "12", Length::mm(2416), Length::mm(2394), std::nullopt}};
  joint.seating.readings[1].x.reset();
  joint.seating.spreaders = {{Length::mm(2560), Length::mm(8)},
                             {Length::mm(4480), Length::mm(10)}};
  joint.defaults = {{"jig.bush", "8 mm", "a usual bush"}};
  return joint;
}

Perimeter sample_perimeter() {
  Perimeter perimeter;
  for (const SideName name : {SideName::Starboard, SideName::Port, SideName::Transom}) {
    PerimeterSide side;
    side.name = name;
    side.sheer_length = Length::mm(6651.6);
    side.drill_line_length = Length::mm(6664.4);
    side.start = name == SideName::Transom ? SideEnd::Corner : SideEnd::Smooth;
    side.end = SideEnd::Corner;
    perimeter.sides.push_back(side);
    perimeter.sheer_length += side.sheer_length;
    perimeter.drill_line_length += side.drill_line_length;
  }
  return perimeter;
}

Fit sample_fit() {
  Fit fit;
  fit.least = {Length::mm(0.6), SideName::Starboard, Length::mm(2500.4), Length()};
  fit.greatest = {Length::mm(3.9), SideName::Port, Length::mm(100), Length::mm(50)};
  fit.least_reach.sides = fit.entry_reach.sides = {SideName::Starboard};
  fit.greatest_reach.sides = {SideName::Port};
  fit.mean = Length::mm(3);
  fit.runs = {{SideName::Starboard, Length(), Length::mm(6651.6), FitVerdict::Tight,
               fit.least}};
  fit.stations = {{"bow, upper",
                   SideName::Port,
                   Length::mm(100),
                   {1.25, -2.5, 1180},
                   Length::mm(50),
                   {Length::mm(2.1), Length::mm(3), Length::mm(3.9)}}};
  return fit;
}

/// A lid that clashes coming straight down, is turned down, and then moved on a hull
/// that is squeezed.
GoingOn sample_going_on() {
  GoingOn going_on;
  const EntryClearance clash{Length::mm(-0.4), Length::mm(50), Angle(),
                             SideName::Starboard, Length::mm(2500.4)};
  going_on.straight = {clash, clash, Length::mm(0.4), Length::mm(0.4)};
  EntryClearance clear = clash;
  clear.worst = Length::mm(0.25);
  clear.angle = Angle::degrees(1.5);
  going_on.turned = EntryPath{clear, clear, Length(), Length()};
  Seating& seating = going_on.seating;
  seating.dx = Length::mm(1);
  seating.dy = Length::mm(-0.5);
  seating.turn = Angle::degrees(0.03);
  seating.pivot = {3200, 0};
  seating.reach = Length::mm(3200);
  seating.at_bow = Length::mm(-2.2);
  seating.at_stern = Length::mm(1.2);
  seating.squeezes = {
      {Length::mm(2560), Length::mm(6), Length::mm(8), Length::mm(9), 0},
      {Length::mm(4480), Length::mm(-10), Length::mm(10), Length::mm(-11), 0.25}};
  seating.margin = Length::mm(0.3);
  seating.worst = {Length::mm(1.3), SideName::Starboard, Length::mm(2310), Length()};
  seating.as_drawn = Length::mm(-0.4);
  seating.seated = {seating.worst,
                    {Length::mm(7.7), SideName::Port, Length::mm(411), Length::mm(50)}};
  seating.contacts = {{seating.worst, true, 0.75},
                      {seating.seated.greatest, false, 0.25}};
  seating.gain_left = Length::mm(1e-9);
  seating.readings = {
      {{Length::mm(2560), Length::mm(7.5), Length::mm(1.5)}, Length::mm(1.5)},
      {{Length::mm(4480), Length::mm(-11), std::nullopt}, Length::mm(-1)}};
  seating.free =
      HullShapeFit{{Length::mm(-4.5), SideName::Starboard, Length::mm(2310), Length()},
                   {Length::mm(14), SideName::Port, Length::mm(4600), Length::mm(50)}};
  seating.held = seating.seated;
  JointFollows follows;
  follows.girth = {Length::mm(9000), Length::mm(200), Length::mm(0), Length::mm(0)};
  follows.adhesive.joint = Volume::ml(1200);
  follows.adhesive.boat = Volume::ml(1700);
  follows.adhesive.packs = 4;
  follows.fasteners = {{Length::mm(19), 80}, {std::nullopt, 1}};
  going_on.seated = SeatedJoint{follows, follows};
  going_on.seated->seated.girth.tight = Length();
  going_on.seated->seated.adhesive.joint = Volume::ml(1300);
  going_on.seated->seated.fasteners = {{Length::mm(19), 70}, {Length::mm(22), 11}};
  return going_on;
}

Layout sample_layout() {
  Layout layout;
  layout.count = 6;
  layout.largest_pitch = Length::mm(150.25);
  layout.smallest_pitch = Length::mm(90.5);
  for (const SideName name : {SideName::Starboard, SideName::Port, SideName::Transom})
    layout.sides.push_back({name,
                            {Length::mm(75.5), Length::mm(166)},
                            {"25 mm clear of the stem fitting", "1 equal space of 1"},
                            Length::mm(90.5),
                            Length::mm(90.5),
                            {{Length::mm(75.5), Length::mm(166), 1, Length::mm(90.5)}},
                            {}});
  layout.sides[0].bridged = {{Length::mm(615), Length::mm(745), Length::mm(130),
                              Length::mm(100), "the bow cleat"}};
  return layout;
}

DrillStation sample_station(std::string mark, SideName side, double girth_mm) {
  DrillStation station;
  station.mark = std::move(mark);
  station.side = side;
  station.girth = Length::mm(girth_mm);
  station.hull_girth = Length::mm(girth_mm - 8);
  station.pitch = Length::mm(90.5);
  station.point = {1.0 / 3, -614.25, 1123};
  station.axis = Vector3(0, side == SideName::Port ? 1 : -1, 0);
  station.edge_low = Length::mm(20);
  station.edge_top = Length::mm(26);
  station.gap = Length::mm(3);
  station.stack = Length::mm(14);
  station.length = Length::mm(19);
  station.lip_hole = Length::mm(5.3);
  station.hull_pilot = Length::mm(3.9);
  station.countersink = Length::mm(7);
  station.drill_depth = Length::mm(17);
  station.lip_depth = Length::mm(6.5);
  station.jig = "S1";
  station.because = "25 mm clear of the stem fitting";
  return station;
}

Schedule sample_schedule() {
  Schedule schedule;
  schedule.fastener.size = "ST4.8";
  schedule.fastener.lip_hole = Length::mm(5.3);
  schedule.fastener.hull_pilot = Length::mm(3.9);
  schedule.fastener.countersink_depth = Length::mm(0.8);
  schedule.datums = {{SideName::Starboard, "bow datum", {-8, 0, 1180}}};
  schedule.stations = {sample_station("S01", SideName::Starboard, 75.5),
                       sample_station("S02", SideName::Starboard, 166),
                       sample_station("P01", SideName::Port, 75.5),
                       sample_station("P02", SideName::Port, 166),
                       sample_station("T01", SideName::Transom, 75.5),
                       sample_station("T02", SideName::Transom, 166)};
  schedule.stations[1].chord = Length::mm(90.4);
  schedule.stations[5].length.reset();
  schedule.check_lines = {
      {SideName::Starboard, "closing space after 45 pitches and the start", "S02",
       "starboard transom corner", Length::mm(110), "girth on the drill line"}};
  schedule.jigs = {{"S1", SideName::Starboard, 0, 1}};
  const LayoutRun run{Length::mm(75.5), Length::mm(166), 2, Length::mm(45.25)};
  schedule.setting_out.runs = {
      {SideName::Starboard, run, Length::mm(0.1), Length::mm(-0.5)}};
  schedule.setting_out.apart.along = {{"station", Length::mm(1.5), "practice"}};
  return schedule;
}

AdhesivePlan sample_adhesive() {
  AdhesivePlan plan;
  plan.bond_area_mm2 = 645160;  // 1000 sq in
  plan.beads = {
      {SideName::Starboard, Length(), Length::mm(6651.6), Length::mm(16), 1, 128, 120}};
  plan.nominal = {Volume::ml(1790), Volume::ml(2000), Volume::ml(2250), 6, 6, 2.25};
  plan.least = plan.nominal;
  plan.most = plan.nominal;
  plan.time =
      TimePlan{Duration::minutes(10), Duration::minutes(4),  Duration::minutes(5),
               Duration::minutes(12), Duration::minutes(31), Duration::minutes(50)};
  return plan;
}

Order sample_order() {
  Order order;
  order.boats = 120;
  order.lines = {{"two-part paste", 270, "packs", 1, 270, 34.0, 9180.0},
                 {"ST4.8 x 19 mm tapping screw", 630, "pieces", 100, 7, {}, {}}};
  order.allowances = {
      {"two-part paste", "squeeze-out", 24000, "ml", "10 % of the joint volume"},
      {"tapping screw ST4.8 x 19", "box rounding", 48, "pieces",
       "up to whole boxes of 100, once for the run"}};
  order.shelf = ShelfCap{90, 200, 2};
  order.total = 9180;
  order.per_boat = 76.5;
  return order;
}

}  // namespace

Job sample_job() {
  Job job;
  job.joint = sample_joint();
  job.perimeter = sample_perimeter();
  job.fit = sample_fit();
  job.going_on = sample_going_on();
  job.layout = sample_layout();
  job.schedule = sample_schedule();
  job.adhesive = sample_adhesive();
  job.order = sample_order();
  job.strength = sample_strength();
  job.reasons = job.strength->reasons;
  job.checks = {{"fit.gap_min", "least gap, on starboard", 0.6, 1, "mm",
                 CheckState::Fail, "the data sheet"},
                {"adhesive.time", "time from first bead", 31, 50, "min",
                 CheckState::Pass, "the data sheet"},
                {"job.left_out", "nothing", 0, {}, "", CheckState::Warn, ""}};
  return job;
}

Job wide_job() {
  Job job = sample_job();
  const std::string name(140, 'w');
  const std::string words =
      "a very long reason that goes on and on and does not want to "
      "end before the line is full, " +
      name;
  job.joint.title = words;
  job.joint.adhesive->name = words;
  for (FitStation& station : job.fit->stations) {
    station.station = name;
    station.girth = Length::mm(99999.9);
    station.point = {-99999.94, -99999.94, -99999.94};
  }
  for (LayoutSide& side : job.layout->sides) side.because[0] = words;
  job.layout->sides[0].bridged[0].what = words;
  for (DrillStation& station : job.schedule->stations) {
    station.mark = "S1000";
    station.girth = station.hull_girth = station.jig_girth = Length::mm(99999.9);
    station.pitch = Length::mm(1000);
    station.chord = Length::mm(1000);
    station.point = {99999.94, -99999.94, -99999.94};
    station.axis = Vector3(-1, -1, -1) / std::numbers::sqrt3;
    station.jig = "S100";
  }
  job.schedule->check_lines[0].what = words;
  for (OrderLine& line : job.order->lines) line.total = 99999999.99;
  for (Allowance& allowance : job.order->allowances) allowance.basis = words;
  for (Check& check : job.checks) check.what = words;
  job.joint.defaults[0].why = words;
  return job;
}

}  // namespace sheerlap

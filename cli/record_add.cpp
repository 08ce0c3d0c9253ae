#include "cli/record_add.h"

#include <fmt/format.h>

#include <iterator>
#include <utility>

#include "cli/joint_file.h"
#include "cli/reading_table.h"
#include "joint/job.h"
#include "joint/leak_marks.h"
#include "joint/records/boat_merge.h"
#include "joint/records/boat_store.h"

namespace sheerlap {
namespace {

/// What is read before the record is opened.
struct AddInput {
  Job job;
  ReadingTable table;
  BoatRecord more;  ///< leaks without their marks
};

void prefix(Errors& errors, const std::string& text) {
  for (Error& error : errors) error.message = text + ": " + error.message;
}

void gather(Errors& errors, Errors more) {
  errors.insert(errors.end(), std::make_move_iterator(more.begin()),
                std::make_move_iterator(more.end()));
}

/// The leaks of the command line, their girths in the joint file's units.
std::vector<Leak> leaks_of(const RecordOptions& options,
                           const Perimeter& perimeter,
                           LengthUnit unit,
                           Errors& errors) {
  std::vector<Leak> leaks;
  for (const GivenLeak& given : options.leaks) {
    auto girth = length_from_text(given.girth, unit);
    if (girth) girth = girth_with_joint(perimeter, given.side, *girth, "");
    if (girth) {
      leaks.push_back({given.side, *girth, {}});
      continue;
    }
    prefix(girth.error(), "--leak " + given.word);
    gather(errors, girth.error());
  }
  return leaks;
}

Result<AddInput> read_input(const RecordOptions& options) {
  auto file = read_joint_file(options.joint);
  if (!file) return tl::unexpected(file.error());
  Parts parts;
  parts.adhesive = true;
  parts.schedule = true;
  auto job = work_out(std::move(file->joint), parts);
  if (!job) return tl::unexpected(located(job.error(), file->sources));
  AddInput input{std::move(*job), {}, {}};
  Errors errors;
  if (options.readings) {
    auto table = read_reading_file(*options.readings, file->unit);
    if (!table) return tl::unexpected(table.error());
    input.table = std::move(*table);
    auto placed = placed_readings(input.job.joint, input.job.perimeter,
                                  input.job.schedule->stations, input.table.readings);
    if (placed)
      input.more.readings = std::move(*placed);
    else
      gather(errors, located(placed.error(), *options.readings, input.table));
  }
  input.more.leaks = leaks_of(options, input.job.perimeter, file->unit, errors);
  if (!errors.empty()) return tl::unexpected(std::move(errors));
  const Joint& joint = input.job.joint;
  input.more.hull = *options.hull;
  input.more.title = joint.title;
  input.more.gap_min = joint.adhesive->gap_min;
  input.more.gap_max = joint.adhesive->gap_max;
  input.more.litres = options.litres;
  input.more.holes = options.holes;
  return input;
}

ReadingsGap boat_gap(const Job& job, const BoatRecord& boat) {
  const ReadingState state =
      boat.readings.empty() ? ReadingState::Dry : latest_state(boat.readings);
  return {job.perimeter, boat.readings, state};
}

/// The boat with the more, its mean gap and the marks of its new leaks.
Result<BoatRecord> completed(const AddInput& input, std::optional<BoatRecord> there) {
  const std::size_t old_leaks = there ? there->leaks.size() : 0;
  auto boat = with_more(std::move(there), input.more);
  if (!boat) return boat;
  const ReadingsGap gap = boat_gap(input.job, *boat);
  if (!boat->readings.empty()) boat->mean_gap = gap.mean();
  const LeakSurroundings surroundings{input.job.perimeter, input.job.schedule->stations,
                                      input.job.adhesive->beads, gap,
                                      input.job.joint.fastener.line};
  for (std::size_t i = old_leaks; i < boat->leaks.size(); ++i)
    boat->leaks[i].marks =
        leak_marks(surroundings, boat->leaks[i].side, boat->leaks[i].girth);
  return boat;
}

/// The record's errors by reading with FILE:LINE, the others with the record's name.
Errors named(Errors errors, const RecordOptions& options, const ReadingTable& table) {
  Errors of_rows;
  Errors others;
  for (Error& error : errors)
    (error.where.starts_with("reading[") ? of_rows : others)
        .push_back(std::move(error));
  prefix(others, options.record);
  Errors result;
  if (!of_rows.empty()) result = located(std::move(of_rows), *options.readings, table);
  gather(result, std::move(others));
  return result;
}

}  // namespace

Result<AddedBoat> add_to_record(const RecordOptions& options) {
  const auto input = read_input(options);
  if (!input) return tl::unexpected(input.error());
  const auto store = BoatStore::open(options.record, Database::Missing::Make);
  if (!store) return tl::unexpected(named(store.error(), options, input->table));
  AddedBoat added;
  auto boat = store->update(*options.hull, [&](std::optional<BoatRecord> there) {
    added.is_new = !there.has_value();
    return completed(*input, std::move(there));
  });
  if (!boat) return tl::unexpected(named(boat.error(), options, input->table));
  added.boat = std::move(*boat);
  added.readings = input->more.readings.size();
  added.leaks = input->more.leaks.size();
  if (added.boat.readings.empty()) return added;
  const ReadingsGap gap = boat_gap(input->job, added.boat);
  added.held = gap.held();
  added.unread = gap.unread();
  for (const PerimeterSide& side : input->job.perimeter.sides)
    for (const GapCorrection& correction : gap.corrections(side.name))
      if (correction.one_edge && !correction.between_sides)
        added.one_edge.push_back(correction.place);
  return added;
}

}  // namespace sheerlap

#include "cli/boat_file.h"

#include <fmt/format.h>

#include <charconv>
#include <filesystem>
#include <iterator>
#include <string_view>
#include <utility>

#include "cli/reading_table.h"
#include "joint/boat_job.h"

namespace sheerlap {
namespace {

constexpr std::string_view reading_address = "reading[";

/// The errors of readings by their lines, those of the file as a whole by its name, and
/// then those of the joint file by its.
Errors located(Errors errors,
               const std::string& file,
               const ReadingTable& table,
               const JointFile& joint) {
  Errors of_rows, of_file, of_joint;
  for (Error& error : errors) {
    if (error.where.starts_with(reading_address))
      of_rows.push_back(std::move(error));
    else if (error.where == "readings")
      of_file.push_back(
          {error.kind, error.where, fmt::format("{}: {}", file, error.message)});
    else
      of_joint.push_back(std::move(error));
  }
  Errors all = sheerlap::located(std::move(of_rows), file, table);
  for (Errors more :
       {std::move(of_file), sheerlap::located(std::move(of_joint), joint.sources)})
    all.insert(all.end(), std::make_move_iterator(more.begin()),
               std::make_move_iterator(more.end()));
  return all;
}

}  // namespace

Result<BoatFile> read_boat_file(const Options& options,
                                const JointFile& joint,
                                const Parts& parts) {
  const std::string& file = *options.readings;
  const auto table = read_reading_file(file, joint.unit);
  if (!table) return tl::unexpected(table.error());
  auto job = work_out_boat(joint.joint, parts, {file, table->readings, options.state});
  if (!job) return tl::unexpected(located(job.error(), file, *table, joint));
  return BoatFile{std::move(*job), file, table->lines};
}

OriginWords boat_origin(const BoatFile& boat, OriginWords joint) {
  const std::string name = std::filesystem::path(boat.file).filename().string();
  return
      [name, lines = boat.lines, joint = std::move(joint)](const std::string& address) {
        if (!address.starts_with(reading_address)) return joint(address);
        std::size_t row = 0;
        const char* end = address.data() + address.size();
        std::from_chars(address.data() + reading_address.size(), end, row);
        return row < lines.size() ? fmt::format("yours: {}:{}", name, lines[row])
                                  : "yours: " + name;
      };
}

}  // namespace sheerlap

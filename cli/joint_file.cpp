#include "cli/joint_file.h"

#include <fmt/format.h>
#include <toml++/toml.h>

#include <algorithm>
#include <string>
#include <utility>

#include "cli/fastening_tables.h"
#include "cli/reading.h"
#include "cli/record_tables.h"
#include "cli/seating_tables.h"
#include "cli/shape_tables.h"
#include "cli/sheer_table.h"
#include "cli/strength_tables.h"
#include "cli/supply_tables.h"
#include "cli/text_file.h"
#include "cli/tolerance_tables.h"
#include "cli/toml_table.h"
#include "joint/contradictions.h"
#include "joint/sheer_rows.h"

namespace sheerlap {
namespace {

constexpr std::size_t largest_joint_file = 1'000'000;
constexpr std::size_t largest_sheer_table = 64'000'000;

/// Each dot may open a table within a table, and the parser takes one down within the
/// other: more than this would be too deep for the stack.
constexpr std::ptrdiff_t most_dots = 10'000;

constexpr const char* file_address = "file";

/// The bytes of the joint file, if they are text.
Result<std::string> joint_text(const std::filesystem::path& path, SourceMap& sources) {
  sources.lines[file_address] = {false, 0};
  auto text = text_of_file(path, largest_joint_file);
  if (!text) {
    text.error().front().where = file_address;
    return text;
  }
  if (const auto fault = text_fault(*text)) {
    sources.lines[file_address] = {false, fault->line};
    return invalid_input(file_address,
                         fmt::format("the joint file {}", fault->message));
  }
  if (std::count(text->begin(), text->end(), '.') > most_dots)
    return invalid_input(
        file_address,
        fmt::format("has more than {} dots: it is no joint file", most_dots));
  return text;
}

Result<toml::table> parsed(const std::string& text, SourceMap& sources) {
  try {
    return toml::parse(std::string_view(text), std::string_view());
  } catch (const toml::parse_error& error) {
    sources.lines[file_address] = {false, error.source().begin.line};
    return invalid_input(
        file_address, fmt::format("the file is not TOML 1.0: {}", error.description()));
  }
}

/// All of the joint but the rows of its sheer.
struct Settings {
  Joint joint;
  std::string sheer_file;
  LapSettings lap;
  WantedShare wanted;
};

Settings read_settings(const toml::table& file, Reading& reading) {
  constexpr std::array units{Choice<LengthUnit>{"mm", LengthUnit::Millimetres},
                             Choice<LengthUnit>{"in", LengthUnit::Inches}};
  TomlTable root(reading, &file, "", "");
  Settings settings;
  Joint& joint = settings.joint;
  reading.unit = root.choice("units", units)
                     .otherwise(LengthUnit::Millimetres, "mm", common_practice);
  const std::string name =
      std::filesystem::path(reading.sources.joint_file).stem().string();
  joint.title = root.text("title").otherwise(name, name, "the joint file's name");
  SheerSettings sheer = read_sheer_settings(root);
  joint.sheer = std::move(sheer.sheer);
  settings.sheer_file = std::move(sheer.file);
  settings.lap = read_lap(root);
  joint.bond = settings.lap.bond;
  joint.hull = read_laminate(root, "hull");
  joint.lip = read_laminate(root, "lip");
  joint.openings = read_openings(root);
  joint.adhesive = read_adhesive(root);
  joint.adhesive_options = read_adhesive_options(root);
  joint.fastener = read_fastener(root);
  joint.layout = read_layout(root);
  joint.zones = read_zones(root);
  joint.keepouts = read_keepouts(root);
  joint.places = read_places(root);
  joint.loads = read_loads(root);
  joint.strength = read_strength_rules(root);
  joint.turned_entry = read_turned_entry(root);
  joint.seating = read_seating_inputs(root);
  joint.reading_limits = read_reading_limits(root);
  joint.jig = read_jig(root);
  joint.shop = read_shop(root);
  joint.order = read_order(root);
  joint.tolerance = read_tolerance(root, settings.wanted);
  root.refuse_unknown_keys();
  return settings;
}

/// The text of the sheer table; none if it could not be had, with an error noted.
std::optional<std::string> sheer_text(const std::filesystem::path& joint_file,
                                      const std::string& name,
                                      Reading& reading) {
  if (name.empty()) return std::nullopt;
  const auto path = (joint_file.parent_path() / name).lexically_normal();
  reading.sources.sheer_table = path.string();
  auto text = text_of_file(path, largest_sheer_table);
  if (!text) {
    for (const Error& error : text.error())
      reading.errors.push_back(
          {error.kind, "sheer.file", path.string() + " " + error.message});
    return std::nullopt;
  }
  if (const auto fault = text_fault(*text)) {
    reading.sources.lines["sheer.text"] = {true, fault->line};
    reading.errors.push_back(
        {ErrorKind::InvalidInput, "sheer.text", "the sheer table " + fault->message});
    return std::nullopt;
  }
  return std::move(*text);
}

/// Puts the constants of [lap] where the table has no column.
void fill_constants(SheerTable& table, const LapSettings& lap, Reading& reading) {
  for (std::size_t i = 0; i < offset_columns.size(); ++i) {
    const OffsetColumn& column = offset_columns[i];
    if (table.given[i]) continue;
    if (!lap.constants[i])
      reading.errors.push_back(
          {ErrorKind::InvalidInput, fmt::format("lap.{}", column.constant),
           fmt::format("[lap] has no {} and the sheer table no column {}: give one of "
                       "the two",
                       column.constant, column.name)});
    for (SheerRow& row : table.rows)
      row.offsets.*column.value = lap.constants[i].value_or(unread<Length>());
  }
}

/// The rows of the sheer; errors are noted.
std::vector<SheerRow> read_rows(const std::string& text,
                                const LapSettings& lap,
                                Reading& reading) {
  SheerTable table = read_sheer_table(text, reading.unit);
  reading.sources.lines["sheer.header"] = {true, table.header_line};
  reading.sources.row_lines = std::move(table.row_lines);
  reading.errors.insert(reading.errors.end(), table.errors.begin(), table.errors.end());
  const bool header_read = table.errors.empty() || !table.rows.empty();
  if (header_read) fill_constants(table, lap, reading);
  return std::move(table.rows);
}

/// What is wrong with the points of the sheer.
Errors point_faults(const Sheer& sheer) {
  const auto points = sheer_points(sheer);
  return points ? Errors{} : points.error();
}

}  // namespace

Result<JointFile> read_joint_file(const std::filesystem::path& path) {
  Reading reading;
  reading.sources.joint_file = path.string();
  const auto refused = [&](Errors errors) {
    return tl::unexpected(located(std::move(errors), reading.sources));
  };
  const auto text = joint_text(path, reading.sources);
  if (!text) return refused(text.error());
  const auto file = parsed(*text, reading.sources);
  if (!file) return refused(file.error());

  Settings settings = read_settings(*file, reading);
  Joint& joint = settings.joint;
  if (const auto table = sheer_text(path, settings.sheer_file, reading)) {
    const std::size_t before = reading.errors.size();
    joint.sheer.rows = read_rows(*table, settings.lap, reading);
    // what a faulty table has of points would only be faulted for its own fault again
    const bool sound = std::none_of(
        reading.errors.begin() + static_cast<std::ptrdiff_t>(before),
        reading.errors.end(),
        [](const Error& error) { return error.where.starts_with("sheer."); });
    const Errors faults = sound ? point_faults(joint.sheer) : Errors{};
    reading.errors.insert(reading.errors.end(), faults.begin(), faults.end());
  }
  const Errors crossed = contradictions(joint, reading.unit);
  reading.errors.insert(reading.errors.end(), crossed.begin(), crossed.end());
  if (!reading.errors.empty()) return refused(std::move(reading.errors));
  joint.defaults = std::move(reading.defaults);
  return JointFile{std::move(joint), reading.unit, std::move(reading.sources),
                   settings.wanted};
}

}  // namespace sheerlap

#include "cli/record_run.h"

#include <fmt/format.h>

#include <cstdio>
#include <utility>
#include <variant>

#include "cli/output.h"
#include "cli/record_add.h"
#include "cli/record_options.h"
#include "cli/write_documents.h"
#include "joint/documents/record_chart_text.h"
#include "joint/documents/record_csv.h"
#include "joint/documents/record_json.h"
#include "joint/documents/record_text.h"
#include "joint/documents/record_words.h"
#include "joint/documents/text_table.h"
#include "joint/records/boat_merge.h"
#include "joint/records/boat_store.h"
#include "joint/records/outside_places.h"
#include "joint/records/record_charts.h"
#include "joint/sheets/record_svg.h"

namespace sheerlap {
namespace {

NumberStyle style_of(const RecordOptions& options) {
  return {options.unit.value_or(LengthUnit::Millimetres), Length::mm(1)};
}

int finish(const std::string& text, int status) {
  const auto printed = write_out(stdout, text);
  return printed ? status : report_errors(printed.error());
}

/// Reports errors of the record under its name.
int fail(Errors errors, const RecordOptions& options) {
  for (Error& error : errors) error.message = options.record + ": " + error.message;
  return report_errors(errors);
}

/// The last line of a text.
std::string last_line(const std::string& text) {
  const std::size_t end = text.find_last_not_of('\n');
  const std::size_t start = text.rfind('\n', end);
  return text.substr(start == std::string::npos ? 0 : start + 1);
}

int run_add(const RecordOptions& options) {
  const auto added = add_to_record(options);
  if (!added) return report_errors(added.error());
  if (options.json) return finish(json_text(added_json(*added)), 0);
  if (options.quiet) return finish("", 0);
  return finish(added_text(*added, style_of(options)), 0);
}

int run_list(const RecordOptions& options, const BoatStore& store) {
  const auto list = store.boats();
  if (!list) return fail(list.error(), options);
  if (options.json) return finish(json_text(boat_list_json(*list)), 0);
  const std::string text = boat_list_text(*list, style_of(options));
  return finish(options.quiet ? last_line(text) : text, 0);
}

int run_show(const RecordOptions& options, const BoatStore& store) {
  const auto boat = store.boat(*options.hull);
  if (!boat) return fail(boat.error(), options);
  if (!*boat)
    return fail({{ErrorKind::InvalidInput, "",
                  fmt::format("there is no hull {}: record list shows those there are",
                              *options.hull)}},
                options);
  const int status = gaps_outside(**boat) > 0 ? 1 : 0;
  if (options.json) return finish(json_text(boat_json(**boat)), status);
  if (options.quiet)
    return finish(fmt::format("{} outside the gap window\n", gaps_outside(**boat)),
                  status);
  return finish(boat_text(**boat, style_of(options)), status);
}

std::vector<Document> chart_files(const RecordCharts& charts,
                                  const NumberStyle& style) {
  std::vector<Document> files;
  for (const PlaceChart& chart : charts.charts)
    files.push_back(
        {chart_file_name(chart.series) + ".svg", record_svg(charts, chart, style)});
  files.push_back({"charts.csv", charts_csv(charts, style.unit())});
  files.push_back({"points.csv", points_csv(charts, style.unit())});
  return files;
}

int run_chart(const RecordOptions& options, const BoatStore& store) {
  auto series = store.series();
  if (!series) return fail(series.error(), options);
  const RecordCharts charts = record_charts(std::move(*series));
  const NumberStyle style = style_of(options);
  const int status = finds_change(charts) || !outside_places(charts).empty() ? 1 : 0;
  std::string written;
  if (options.out) {
    const auto files = chart_files(charts, style);
    if (const auto done = write_chart_files(*options.out, files); !done)
      return report_errors(done.error());
    written =
        "\n" + wrapped(fmt::format("Written into {}: {} charts (SVG), charts.csv, "
                                   "points.csv",
                                   *options.out, charts.charts.size()));
  }
  if (options.json) return finish(json_text(record_chart_json(charts)), status);
  if (options.quiet) return finish(change_line(charts, style) + "\n", status);
  return finish(record_chart_text(charts, style) + written, status);
}

}  // namespace

int run_record(const std::vector<std::string>& arguments) {
  const auto asked = parse_record_options(arguments);
  if (!asked) return report_errors(asked.error());
  if (const auto* text = std::get_if<TextAsked>(&*asked)) return finish(text->text, 0);
  const RecordOptions& options = std::get<RecordOptions>(*asked);
  if (options.command == RecordCommand::Add) return run_add(options);
  const auto store = BoatStore::open(options.record, Database::Missing::Refuse);
  if (!store) return fail(store.error(), options);
  switch (options.command) {
    case RecordCommand::List:
      return run_list(options, *store);
    case RecordCommand::Show:
      return run_show(options, *store);
    case RecordCommand::Add:
    case RecordCommand::Chart:
      break;
  }
  return run_chart(options, *store);
}

}  // namespace sheerlap

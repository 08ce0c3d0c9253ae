#include <fmt/format.h>

#include <algorithm>

#include "joint/documents/check_text.h"
#include "joint/sheets/sequence_records.h"

namespace sheerlap {
namespace {

PageTable questions(const std::vector<std::vector<std::string>>& rows) {
  PageTable table;
  table.columns = {{{"what"}, Align::Left},
                   {{"set out"}, Align::Right, 18},
                   {{"found"}, Align::Left, 32},
                   {{"good: yes or no"}, Align::Left, 22},
                   {{"initials"}, Align::Left, 20}};
  table.columns[0].stretch = 1;
  table.letter_mm = letter_height::text;
  table.least_row_mm = 8;
  for (const auto& row : rows) table.rows.push_back({{row[0], row[1], "", "", ""}});
  return table;
}

std::vector<std::vector<std::string>> all_questions(const Job& job) {
  const auto& stations = job.schedule->stations;
  const auto driven = std::count_if(stations.begin(), stations.end(), drillable);
  return {{"hull identification number seen, and clear to read", ""},
          {"dry fit, gaps read all round", ""},
          {"jigs used, by their numbers", std::to_string(job.schedule->jigs.size())},
          {"holes drilled, counted", std::to_string(driven)},
          {"adhesive: batch and expiry", ""},
          {"first bead, deck down, last fastener: clock", ""},
          {"squeeze-out unbroken all round; voids re-injected", ""},
          {"fasteners driven, counted", std::to_string(driven)},
          {"stripped, missing or proud; each seen to come through inside", "0"},
          {"points inside capped or cut", ""},
          {"leak test, no leak left", ""}};
}

}  // namespace

void write_sign_off(SheetFlow& flow, const Job& job) {
  record_row(flow, {{"hull no.", "", 1.5}, {"order or job no.", "", 1.5}, {"date"}},
             12);
  flow.space(2);
  flow.paragraph(verdict_line(job.checks), {.bold = true});
  flow.space(2);
  flow.table(questions(all_questions(job)));
  flow.heading("Numbers of non-conformance reports, and how each was closed");
  for (int row = 0; row < 3; ++row)
    record_row(flow, {{"number"}, {"what, and how closed", "", 4}, {"initials"}}, 11);
  flow.heading("Signed");
  for (const char* who : {"bonding", "fastening", "inspection", "released by"})
    record_row(flow, {{who, "", 1.2}, {"name", "", 2}, {"signature", "", 2}, {"date"}},
               12);
  flow.space(2);
  small_print(flow,
              "Whoever takes the boat over may refuse it with a field left blank. This "
              "sheet sets out what is looked at; it does not certify a joint.");
}

}  // namespace sheerlap

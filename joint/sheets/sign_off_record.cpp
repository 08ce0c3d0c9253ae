#include <fmt/format.h>

#include <algorithm>

#include "joint/documents/check_text.h"
#include "joint/documents/wording.h"
#include "joint/sheets/sequence_records.h"

namespace sheerlap {
namespace {

PageTable questions(const std::vector<std::vector<std::string>>& rows) {
  PageTable table;
  table.columns = {{{"what"}, Align::Left},
                   {{"must be"}, Align::Right, 18},
                   {{"found"}, Align::Left, 32},
                   {{"good: yes or no"}, Align::Left, 22},
                   {{"initials"}, Align::Left, 20}};
  table.columns[0].stretch = 1;
  table.columns[0].wraps = true;
  table.letter_mm = letter_height::text;
  table.least_row_mm = 7;
  for (const auto& row : rows) table.rows.push_back({{row[0], row[1], "", "", ""}});
  return table;
}

std::vector<std::vector<std::string>> all_questions(const Job& job) {
  const auto& stations = job.schedule->stations;
  const std::string driven =
      std::to_string(std::count_if(stations.begin(), stations.end(), drillable));
  std::string jigs;
  for (const JigSegment& jig : job.schedule->jigs)
    jigs += (jigs.empty() ? "" : ", ") + jig.name;
  return {{"hull identification number seen, and clear to read", ""},
          {"dry fit, gaps read all round and written in below", ""},
          {"jigs used: " + jigs, std::to_string(job.schedule->jigs.size())},
          {"holes drilled, counted", driven},
          {"squeeze-out unbroken all round; voids re-injected", ""},
          {"fasteners driven, counted", driven},
          {"of them seen to come through inside, counted", driven},
          {"stripped, missing or proud, counted", "0"},
          {"points inside capped or cut", ""},
          {"leak test, no leak left", "0"}};
}

/// Where gaps are to be read: the ends of the sides, and the worst places as set out.
void write_gaps(SheetFlow& flow, const Job& job, const NumberStyle& style) {
  flow.heading("Gaps read, dry");
  record_row(flow, {{"bow"},
                    {"starboard, amidships"},
                    {"starboard, aft corner"},
                    {"port, amidships"},
                    {"port, aft corner"}});
  if (!job.fit) return;
  const auto place = [&](const char* what, const GapAt& at) {
    return RecordField{fmt::format("{}, {}, {} on the sheer: {} set out", what,
                                   side_word(at.side), style.running(at.girth),
                                   style.size_with_unit(at.gap))};
  };
  record_row(flow, {place("least", job.fit->least), place("most", job.fit->greatest)});
}

}  // namespace

void write_sign_off(SheetFlow& flow, const Job& job, const NumberStyle& style) {
  record_row(flow, {{"hull no.", "", 1.5}, {"order or job no.", "", 1.5}, {"date"}},
             12);
  flow.space(2);
  flow.paragraph(verdict_line(job.checks), {.bold = true});
  flow.space(2);
  flow.table(questions(all_questions(job)));
  write_gaps(flow, job, style);
  if (job.adhesive) {
    flow.heading("Adhesive and clock");
    record_row(flow, {{"batch, part A"}, {"batch, part B"}, {"expiry"}});
    record_row(flow,
               {{"first bead, clock"}, {"deck down, clock"}, {"last fastener, clock"}});
  }
  flow.heading("Numbers of non-conformance reports, and how each was closed");
  for (int row = 0; row < 2; ++row)
    record_row(flow, {{"number"}, {"what, and how closed", "", 4}, {"initials"}});
  flow.heading("Signed");
  for (const char* who : {"bonding", "fastening", "inspection", "released by"})
    record_row(flow, {{who, "", 1.2}, {"name", "", 2}, {"signature", "", 2}, {"date"}},
               10);
  flow.space(2);
  small_print(flow,
              "Whoever takes the boat over may refuse it with a field left blank. This "
              "sheet sets out what is looked at; it does not certify a joint.");
}

}  // namespace sheerlap

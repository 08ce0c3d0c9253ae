#pragma once

#include <string>
#include <vector>

#include "joint/documents/number_style.h"
#include "joint/job.h"
#include "joint/sheets/sheet_flow.h"

namespace sheerlap {

/// A field of a record, to be filled in by hand or with a value of ours.
struct RecordField {
  std::string name;
  std::string value = {};
  double share = 1;  ///< of its row's width
};

/// A row of fields across the sheet.
void record_row(SheetFlow& flow,
                const std::vector<RecordField>& fields,
                double height_mm = 10);

/// A table in columns side by side, filled one after the other.
void table_in_columns(SheetFlow& flow, const PageTable& table, std::size_t columns);

/// A paragraph in the least lettering.
void small_print(SheetFlow& flow, const std::string& words);

/// What every record with work by hand ends in.
void record_cautions(SheetFlow& flow);

/// Where a station stands along the sheer.
Length on_sheer(const DrillStation& station, const Perimeter& perimeter);

/// The marks within a stretch of a side's sheer: "S03 to S09", or those it lies
/// between.
std::string marks_in(SideName side, Length from, Length to, const Job& job);

/// The checks that fail or warn and whose id starts with one of these, and where the
/// others are to be read.
void record_checks(SheetFlow& flow,
                   const Job& job,
                   const NumberStyle& style,
                   const std::vector<std::string>& starts);

/// Where the gap leaves the adhesive's window, by side, girth and mark, or that it does
/// not. Nothing if the fit was not worked out.
void record_gaps(SheetFlow& flow, const Job& job, const NumberStyle& style);

/// The order of driving: tacks, then the rest, and the lengths by mark.
void write_driving(SheetFlow& flow, const Job& job, const NumberStyle& style);

/// The adhesive: batches, beads, and the clock.
/// @param job  with its adhesive plan
void write_bonding(SheetFlow& flow, const Job& job, const NumberStyle& style);

/// The plan of the joint with its marks, to circle where it leaks.
void write_leak_map(SheetFlow& flow, const Job& job);

/// What is signed before the boat leaves the joint.
void write_sign_off(SheetFlow& flow, const Job& job, const NumberStyle& style);

}  // namespace sheerlap

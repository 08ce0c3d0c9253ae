#pragma once

#include <string>

#include "joint/sheets/page_table.h"
#include "joint/sheets/pdf_file.h"
#include "joint/sheets/sheet_frame.h"

namespace sheerlap {

/// Sheets with a frame and a title block, filled from the top down; what does not go on
/// one sheet goes on the next, with a table's heading again.
///
///     pdf_bytes(info, [&](PdfFile& file) {
///       SheetFlow flow(file, small_page(paper), title);
///       flow.heading("Where the holes are");
///       flow.table(table);
///     });
class SheetFlow {
 public:
  /// Starts the first sheet.
  /// @param file  outlives this
  SheetFlow(PdfFile& file, PageSize size, SheetTitle title);

  Page& page() { return file_.page(); }
  /// What is left of the sheet.
  const Box& room() const { return room_; }
  /// Takes a height off the room, of what was drawn at its top.
  void take(double height_mm);
  /// Starts a sheet if there is less room than this, and the sheet is not a fresh one.
  void need(double height_mm);
  void new_sheet();

  void space(double height_mm);
  /// A line that stays with what follows it.
  void heading(const std::string& words);
  void paragraph(const std::string& words, const Lettering& lettering = {});
  /// Rows are never split.
  void table(const PageTable& table);

 private:
  PdfFile& file_;
  PageSize size_;
  SheetTitle title_;
  Box room_;
  bool fresh_ = true;
};

}  // namespace sheerlap

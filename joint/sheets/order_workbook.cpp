#include "joint/sheets/order_workbook.h"

#include "joint/sheets/book.h"
#include "joint/sheets/order_figures.h"
#include "joint/sheets/order_pages.h"
#include "joint/sheets/temporary_file.h"

namespace sheerlap {

Result<std::string> order_workbook(const Job& job, const SheetStyle& style) {
  const auto file = TemporaryFile::make();
  if (!file) return tl::unexpected(file.error());
  const OrderFigures figures = order_figures(job, style);
  Book book(file->path().string(), job.joint.title, style);
  OrderPages pages(book);
  write_inputs(pages.inputs, book, figures);
  write_sections(pages.sections, book, figures);
  write_beads(pages.beads, book, figures);
  write_adhesive(pages.adhesive, book, figures);
  const auto pieces = write_fasteners(pages.fasteners, figures);
  const auto packs = write_order(pages.order, pieces, figures);
  write_purchasing(pages.purchasing, packs, figures);
  write_notes(pages.notes, figures);
  if (const auto closed = book.close(); !closed) return tl::unexpected(closed.error());
  return file->bytes();
}

}  // namespace sheerlap

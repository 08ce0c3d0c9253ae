#include "joint/sheets/pdf_file.h"

#include <cairo-pdf.h>

#include <cassert>

#include "joint/documents/printable.h"
#include "joint/sheets/canvas.h"

namespace sheerlap {
namespace {

constexpr double points_in_mm = 72 / 25.4;

cairo_status_t append(void* bytes, const unsigned char* data, unsigned int length) {
  static_cast<std::string*>(bytes)->append(reinterpret_cast<const char*>(data), length);
  return CAIRO_STATUS_SUCCESS;
}

}  // namespace

struct PdfFile::Surface {
  std::string bytes;
  /// The size stands for nothing: each page sets its own.
  CairoSurface surface{cairo_pdf_surface_create_for_stream(append, &bytes, 1, 1)};
  Canvas canvas{surface.get()};
};

PdfFile::PdfFile(const PdfInfo& info, std::size_t page_count)
    : surface_(std::make_unique<Surface>()), page_count_(page_count) {
  cairo_surface_t* surface = surface_->surface.get();
  cairo_pdf_surface_set_metadata(surface, CAIRO_PDF_METADATA_TITLE,
                                 printable(info.title).c_str());
  // an empty date is left out; none at all would be today's
  cairo_pdf_surface_set_metadata(surface, CAIRO_PDF_METADATA_CREATE_DATE,
                                 info.date.value_or("").c_str());
}

PdfFile::~PdfFile() = default;

Page& PdfFile::add_page(PageSize size) {
  if (page_) cairo_show_page(surface_->canvas.cairo.get());
  cairo_pdf_surface_set_size(surface_->surface.get(), size.width_mm * points_in_mm,
                             size.height_mm * points_in_mm);
  ++page_number_;
  return page_.emplace(surface_->canvas, size);
}

Result<std::string> PdfFile::finished() {
  assert(page_);
  if (!surface_->canvas.has_font())
    return unreadable("",
                      "the font DejaVu Sans is not installed: install it, the "
                      "drawn sheets are lettered in it");
  cairo_show_page(surface_->canvas.cairo.get());
  assert(cairo_status(surface_->canvas.cairo.get()) == CAIRO_STATUS_SUCCESS);
  cairo_surface_finish(surface_->surface.get());
  assert(cairo_surface_status(surface_->surface.get()) == CAIRO_STATUS_SUCCESS);
  return std::move(surface_->bytes);
}

Result<std::string> pdf_bytes(const PdfInfo& info,
                              const std::function<void(PdfFile&)>& draw) {
  PdfFile counting(info, 0);
  draw(counting);
  PdfFile file(info, counting.page_number());
  draw(file);
  assert(file.page_number() == file.page_count());
  return file.finished();
}

}  // namespace sheerlap

#pragma once

#include <cstddef>
#include <functional>
#include <memory>
#include <optional>
#include <string>

#include "geometry/result.h"
#include "joint/sheets/page.h"
#include "joint/sheets/page_size.h"

namespace sheerlap {

/// What a PDF says of itself.
struct PdfInfo {
  std::string title;
  std::optional<std::string> date =
      {};  ///< "2024-05-01"; the file has none if not given
};

/// The pages of a PDF while it is drawn, one after the other.
class PdfFile {
 public:
  PdfFile(const PdfFile&) = delete;
  PdfFile& operator=(const PdfFile&) = delete;
  ~PdfFile();

  /// Ends the page before and starts one. Until the first there is none to draw on.
  Page& add_page(PageSize size);
  Page& page() { return *page_; }
  /// The number of the page that is drawn on, from 1.
  std::size_t page_number() const { return page_number_; }
  /// How many pages there will be in all.
  std::size_t page_count() const { return page_count_; }

 private:
  struct Surface;
  PdfFile(const PdfInfo& info, std::size_t page_count);
  Result<std::string> finished();
  friend Result<std::string> pdf_bytes(const PdfInfo& info,
                                       const std::function<void(PdfFile&)>& draw);

  std::unique_ptr<Surface> surface_;
  std::optional<Page> page_;
  std::size_t page_number_ = 0;
  std::size_t page_count_ = 0;
};

/// The bytes of the PDF that `draw` draws; the same for the same drawing.
///
/// `draw` is called twice and must do the same each time: first to count the pages, of
/// which it then knows how many there are. It adds one at least. The font is embedded,
/// as far as it is used.
///
/// @errors  Unreadable: the font is not installed
Result<std::string> pdf_bytes(const PdfInfo& info,
                              const std::function<void(PdfFile&)>& draw);

}  // namespace sheerlap

#pragma once

#include <string>
#include <vector>

namespace sheerlap {

/// What another program says of a PDF: the words of a command line in which PDF stands
/// for the file, as in {"pdffonts", "PDF"}.
std::string read_back(const std::string& pdf, std::vector<std::string> command);

/// The text of a PDF, as it lies on the sheets.
std::string text_of_pdf(const std::string& pdf);

/// A straight line of a page, mm from its top left corner.
struct DrawnLine {
  double from_x, from_y, to_x, to_y;
};

/// The straight lines of the first page that are not part of a longer path.
std::vector<DrawnLine> lines_of_pdf(const std::string& pdf);

}  // namespace sheerlap

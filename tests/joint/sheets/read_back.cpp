#include "tests/joint/sheets/read_back.h"

#include <algorithm>
#include <boost/test/unit_test.hpp>
#include <regex>

#include "tests/cli/program.h"

namespace sheerlap {

std::string read_back(const std::string& pdf, std::vector<std::string> command) {
  const TestFolder folder;
  folder.put("sheet.pdf", pdf);
  std::replace(command.begin(), command.end(), std::string("PDF"),
               std::string("sheet.pdf"));
  const std::string program = command.front();
  command.erase(command.begin());
  RunOptions options;
  options.program = program;
  options.folder = folder.path();
  const Outcome outcome = run_program(command, options);
  BOOST_REQUIRE_MESSAGE(outcome.status == 0 && outcome.err.empty(),
                        program << ": " << outcome.status << " " << outcome.err);
  return outcome.out;
}

std::string text_of_pdf(const std::string& pdf) {
  return read_back(pdf, {"pdftotext", "-layout", "PDF", "-"});
}

std::vector<DrawnLine> lines_of_pdf(const std::string& pdf) {
  // on huge paper, or thin lines would be moved to the grid of a screen; the path stays
  // in the file's own points all the same
  const std::string svg =
      read_back(pdf, {"pdftocairo", "-svg", "-f", "1", "-l", "1", "-expand",
                      "-nocenter", "-paperw", "60000", "-paperh", "60000", "PDF", "-"});
  const std::regex path(
      "<path [^>]* d=\"M ([-0-9.]+) ([-0-9.]+) L ([-0-9.]+) ([-0-9.]+) \" "
      "transform=\"matrix\\([0-9.]+,0,0,[0-9.]+,0,0\\)\"");
  std::vector<DrawnLine> lines;
  for (std::sregex_iterator each(svg.begin(), svg.end(), path), end; each != end;
       ++each) {
    const auto mm = [&](std::size_t number) {
      return std::stod((*each)[number]) * 25.4 / 72;
    };
    lines.push_back({mm(1), mm(2), mm(3), mm(4)});
  }
  return lines;
}

}  // namespace sheerlap

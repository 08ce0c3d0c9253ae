#include <fmt/format.h>

#include <algorithm>

#include "joint/bead.h"
#include "joint/sheets/order_pages.h"

namespace sheerlap {
namespace {

constexpr std::size_t last_column = 7;
constexpr std::size_t first_length = 2;
constexpr std::size_t first_volume = 5;

std::string page_words(const SectionBands& bands, double own) {
  const std::string ways =
      bands.step_percent == 0
          ? fmt::format("{:g} % of squeeze-out, the joint file's", 100 * own)
          : fmt::format(
                "{:g} % of squeeze-out, the joint file's, and for every {} per "
                "cent from 0 to {}",
                100 * own,
                bands.step_percent == 1 ? "whole" : std::to_string(bands.step_percent),
                SectionBands::percent_to);
  return fmt::format(
      "What is laid, by bead size, summed from the page Sections. Its lines are cut "
      "where the beads change for {}: there the volume laid is the program's own. For "
      "any other squeeze-out the program moves the ends of the runs, which a workbook "
      "cannot: it takes the next cut, so that it orders too much and never too little. "
      "Other gaps, bead sizes or bond bands are not in it: run the program again. "
      "Where "
      "two beads or more lie side by side, the length is that of the joint, not of the "
      "beads together.",
      ways);
}

std::vector<std::string> headings(const OrderFigures& figures) {
  const BookUnit& unit = figures.unit;
  const bool triangle = figures.adhesive().bead_shape == BeadShape::Triangle;
  std::vector<std::string> words{
      fmt::format("bead, {}, {}", triangle ? "side of a triangle" : "diameter",
                  unit.length),
      fmt::format("section of one, {}", unit.area)};
  for (const LipCase& lip : figures.lips)
    words.push_back(
        fmt::format("joint laid with it, {}, {}", unit.length, lip.heading));
  for (const LipCase& lip : figures.lips)
    words.push_back(fmt::format("laid, ml, {}", lip.heading));
  return words;
}

/// What a lip's joint takes of one bead size.
struct Laid {
  Length length;
  Volume volume;
};

Laid laid_with(Length size, const LipCase& lip, const OrderFigures& figures) {
  const Adhesive& adhesive = figures.adhesive();
  Laid laid;
  for (const SectionBand& band : figures.bands.bands) {
    const Beads beads =
        smallest_beads(adhesive, band.up_to_mm2 * (1 + adhesive.squeeze_out));
    if (beads.size != size) continue;
    laid.length += band.*lip.length;
    laid.volume += Volume::mm3(beads.area_mm2 * (band.*lip.length).in_mm());
  }
  return laid;
}

void write_size(BookPage& page,
                std::size_t row,
                Length size,
                const OrderFigures& figures) {
  const Look look{CellKind::Figure, CellNumber::Length};
  const Look tenths{CellKind::Figure, CellNumber::Tenths};
  const BeadShape shape = figures.adhesive().bead_shape;
  const std::string cell = address({row, 0});
  page.number({row, 0}, figures.unit.of(size), look);
  page.formula({row, 1},
               (shape == BeadShape::Triangle ? "=0.5*" : "=PI()/4*") + cell + "^2",
               figures.unit.of_area(bead_area_mm2(shape, size)), look);
  for (std::size_t lip = 0; lip < figures.lips.size(); ++lip) {
    const LipCase& one = figures.lips[lip];
    if (!one.amounts) {
      page.text({row, first_length + lip}, "-", tenths);
      page.text({row, first_volume + lip}, "-", tenths);
      continue;
    }
    const Laid laid = laid_with(size, one, figures);
    page.formula(
        {row, first_length + lip},
        fmt::format("=SUMIF(section_beads,{},section_length_{})", cell, one.suffix),
        figures.unit.of(laid.length), tenths);
    page.formula(
        {row, first_volume + lip},
        fmt::format("=SUMIF(section_beads,{},section_laid_{})", cell, one.suffix),
        laid.volume.in_ml(), tenths);
  }
}

void write_sums(BookPage& page,
                Book& book,
                std::size_t row,
                const OrderFigures& figures) {
  const Look look{CellKind::Total, CellNumber::Tenths};
  page.text({row, 0}, "in all", {CellKind::Total});
  page.text({row, 1}, "", {CellKind::Total});
  for (std::size_t lip = 0; lip < figures.lips.size(); ++lip) {
    const LipCase& one = figures.lips[lip];
    if (!one.amounts) {
      page.text({row, first_length + lip}, "-", look);
      page.text({row, first_volume + lip}, "-", look);
      continue;
    }
    Length along;
    for (const SectionBand& band : figures.bands.bands) along += band.*one.length;
    page.formula({row, first_length + lip},
                 fmt::format("=SUM(section_length_{})", one.suffix),
                 figures.unit.of(along), look);
    page.formula({row, first_volume + lip},
                 fmt::format("=SUM(section_laid_{})", one.suffix),
                 one.amounts->bead.in_ml(), look);
    book.define("laid_" + one.suffix, page.reference({row, first_volume + lip}));
  }
}

}  // namespace

void write_beads(BookPage& page, Book& book, const OrderFigures& figures) {
  page.widths({20, 18, 17, 17, 17, 17, 17, 17});
  std::size_t row =
      write_head(page, figures, last_column, "beads to lay in one boat",
                 page_words(figures.bands, figures.adhesive().squeeze_out));
  page.headings(row, headings(figures), {});
  const std::size_t heading = row;
  auto sizes = figures.adhesive().bead_sizes;
  std::sort(sizes.begin(), sizes.end());
  for (const Length size : sizes) write_size(page, ++row, size, figures);
  const auto range = [&](std::size_t column) {
    return page.reference({heading + 1, column}) + ":" + address({row, column}, true);
  };
  book.define("bead_sizes", range(0));
  book.define("bead_sections", range(1));
  write_sums(page, book, ++row, figures);
  page.freeze({heading + 1, 1});
  page.print({row, last_column}, std::pair{heading, heading});
}

}  // namespace sheerlap

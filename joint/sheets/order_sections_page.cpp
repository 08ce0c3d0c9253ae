#include <fmt/format.h>

#include <array>

#include "joint/bead.h"
#include "joint/sheets/order_pages.h"

namespace sheerlap {
namespace {

constexpr std::size_t last_column = 10;
constexpr std::size_t bead_column = 3;
constexpr std::size_t first_length = 5;
constexpr std::size_t first_volume = 8;
/// Of a section is taken as covered: `smallest_beads` does so too.
constexpr const char* rounding = "(1-1E-9)";

std::vector<std::string> headings(const BookUnit& unit) {
  return {fmt::format("joint section up to, {}", unit.area),
          fmt::format("to cover, squeeze-out in, {}", unit.area),
          "beads side by side",
          fmt::format("bead, {}", unit.length),
          fmt::format("laid section, {}", unit.area),
          fmt::format("length, least, {}", unit.length),
          fmt::format("length, nominal, {}", unit.length),
          fmt::format("length, most, {}", unit.length),
          "laid, least, ml",
          "laid, nominal, ml",
          "laid, most, ml"};
}

void write_band(BookPage& page,
                std::size_t row,
                const SectionBand& band,
                const OrderFigures& figures) {
  const BookUnit& unit = figures.unit;
  const Look length{CellKind::Figure, CellNumber::Length};
  const Look tenths{CellKind::Figure, CellNumber::Tenths};
  const double needed = band.up_to_mm2 * (1 + figures.adhesive().squeeze_out);
  const Beads beads = smallest_beads(figures.adhesive(), needed);
  const auto at = [&](std::size_t column) { return address({row, column}); };
  const std::string which =
      fmt::format("MIN(ROWS(bead_sizes),SUMPRODUCT(--(bead_sections*{}<{}*{}))+1)",
                  at(2), at(1), rounding);
  page.number({row, 0}, unit.of_area(band.up_to_mm2), length);
  page.formula({row, 1}, fmt::format("={}*(1+squeeze_out)", at(0)),
               unit.of_area(needed), length);
  page.formula(
      {row, 2},
      fmt::format("=MAX(1,ROUNDUP({}*{}/MAX(bead_sections),0))", at(1), rounding),
      static_cast<double>(beads.count), {CellKind::Figure, CellNumber::Whole});
  page.formula({row, bead_column}, fmt::format("=INDEX(bead_sizes,{})", which),
               unit.of(beads.size), length);
  page.formula({row, 4}, fmt::format("={}*INDEX(bead_sections,{})", at(2), which),
               unit.of_area(beads.area_mm2), length);
  for (std::size_t lip = 0; lip < figures.lips.size(); ++lip) {
    if (!figures.lips[lip].amounts) continue;
    const Length along = band.*figures.lips[lip].length;
    page.number({row, first_length + lip}, unit.of(along), tenths);
    page.formula({row, first_volume + lip},
                 fmt::format("={}*{}{}", at(4), at(first_length + lip), unit.to_ml),
                 beads.area_mm2 * along.in_mm() / 1000, tenths);
  }
}

}  // namespace

void write_sections(BookPage& page, Book& book, const OrderFigures& figures) {
  page.widths({17, 17, 10, 10, 13, 13, 13, 13, 13, 13, 13});
  std::size_t row = write_head(
      page, figures, last_column, "the joint by its section",
      "How much of the joint needs no more than so much adhesive for its length, lip "
      "closer, as drawn and further off; each line laid with the fewest and then the "
      "smallest beads that cover the most it can need. The page Beads sums it up. The "
      "lines are for the screen and are not printed.");
  page.headings(row, headings(figures.unit), {});
  page.freeze({row + 1, 1});
  page.print({row - 1, last_column}, std::nullopt);
  const std::size_t first = row + 1;
  for (const SectionBand& band : figures.bands.bands)
    write_band(page, ++row, band, figures);
  const auto define = [&](const std::string& name, std::size_t column) {
    book.define(name,
                page.reference({first, column}) + ":" + address({row, column}, true));
  };
  define("section_beads", bead_column);
  for (std::size_t lip = 0; lip < figures.lips.size(); ++lip) {
    define("section_length_" + figures.lips[lip].suffix, first_length + lip);
    define("section_laid_" + figures.lips[lip].suffix, first_volume + lip);
  }
}

}  // namespace sheerlap

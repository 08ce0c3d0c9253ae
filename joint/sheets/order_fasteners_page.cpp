#include <fmt/format.h>

#include "joint/sheets/order_pages.h"

namespace sheerlap {
namespace {

constexpr std::size_t last_column = 10;

/// The sum of the cells in which bolts stand, in one column; what nuts and washers go
/// by.
struct Bolts {
  std::size_t first_row = 0;
  std::size_t last_row = 0;

  std::string sum(std::size_t column) const {
    return fmt::format("SUM({}:{})", address({first_row, column}, true),
                       address({last_row, column}, true));
  }
};

/// The formulas of a kind of piece: what is used, what is needed, and its box.
struct PieceFormulas {
  std::string in_a_boat, used, need, box;
};

PieceFormulas formulas_of(const FastenerPieces& pieces,
                          const Bolts& bolts,
                          std::size_t row) {
  const std::string used = address({row, 2});
  if (pieces.with_a_bolt > 0)
    return {fmt::format("={}*{}", pieces.with_a_bolt, bolts.sum(1)),
            fmt::format("=boats*{}", address({row, 1})),
            fmt::format("={}*{}", pieces.with_a_bolt, bolts.sum(4)), "=1"};
  return {"", fmt::format("=boats*{}", address({row, 1})),
          fmt::format("=ROUNDUP({}*(1+spare_share)*(1-1E-9),0)", used),
          pieces.boxed ? "=IF(box_size=\"\",1,box_size)" : "=1"};
}

void write_price(BookPage& page,
                 std::size_t row,
                 const FastenerPieces& pieces,
                 const OrderLine& line) {
  if (pieces.boxed)
    page.formula({row, 8}, "=IF(OR(box_price=\"\",box_size=\"\"),\"\",box_price)",
                 line.price, {CellKind::Figure, CellNumber::Price});
  else
    page.input({row, 8}, std::nullopt, CellNumber::Price);
  page.formula(
      {row, 9},
      fmt::format("=IF({0}=\"\",\"\",{0}*{1})", address({row, 8}), address({row, 6})),
      line.total, {CellKind::Figure, CellNumber::Money});
}

PieceCells write_pieces(BookPage& page,
                        std::size_t row,
                        const FastenerPieces& pieces,
                        const Bolts& bolts,
                        const OrderFigures& figures,
                        const OrderLine& line) {
  const Look whole{CellKind::Figure, CellNumber::Whole};
  const PieceFormulas formulas = formulas_of(pieces, bolts, row);
  const auto in_a_boat = static_cast<double>(pieces.in_a_boat);
  const double used = in_a_boat * static_cast<double>(figures.rules().boats);
  const auto boxes = static_cast<double>(line.packs);
  const auto at = [&](std::size_t column) { return address({row, column}); };
  page.text({row, 0}, figures.style.sentence(pieces.item), {CellKind::Figure});
  if (formulas.in_a_boat.empty())
    page.number({row, 1}, in_a_boat, whole);
  else
    page.formula({row, 1}, formulas.in_a_boat, in_a_boat, whole);
  page.formula({row, 2}, formulas.used, used, whole);
  page.formula({row, 3}, fmt::format("={}-{}", at(4), at(2)), line.need - used, whole);
  page.formula({row, 4}, formulas.need, line.need, whole);
  page.formula({row, 5}, formulas.box, line.pack_size, whole);
  page.formula({row, 6}, fmt::format("=ROUNDUP({}/{}*(1-1E-9),0)", at(4), at(5)), boxes,
               whole);
  page.formula({row, 7}, fmt::format("={}*{}-{}", at(6), at(5), at(4)),
               boxes * line.pack_size - line.need, whole);
  write_price(page, row, pieces, line);
  page.text({row, 10},
            pieces.with_a_bolt > 0 ? fmt::format("{} {} a bolt, spare bolts too",
                                                 pieces.with_a_bolt, pieces.words)
            : pieces.boxed         ? "spares in whole pieces; whole boxes, for the run"
                                   : "no length in stock serves: bought by the piece",
            {CellKind::Figure});
  const auto reference = [&](std::size_t column) {
    return page.reference({row, column});
  };
  return {reference(1), reference(4), reference(5), reference(6), reference(8)};
}

}  // namespace

std::vector<PieceCells> write_fasteners(BookPage& page, const OrderFigures& figures) {
  page.widths({38, 10, 12, 10, 12, 10, 10, 10, 12, 14, 42});
  std::size_t row = write_head(
      page, figures, last_column, "fasteners by length",
      "Each hole gets the shortest length in stock that serves it. Spares and boxes "
      "are "
      "rounded up once, for the run. A cell with a heavy border is to be filled in: a "
      "price that the joint file has no key for.");
  page.headings(
      row,
      {"item", "in one boat", "in the run's boats", "spares", "run, spares in",
       "in a box", "boxes to buy", "surplus", "price a box", "total", "basis"},
      {0, last_column});
  const std::size_t heading = row;
  Bolts bolts{row + 1, row};
  for (const FastenerPieces& pieces : figures.pieces)
    if (pieces.with_a_bolt == 0) ++bolts.last_row;
  std::vector<PieceCells> cells;
  const auto& lines = figures.order().lines;
  const std::size_t first_line = lines.size() - figures.pieces.size();
  for (std::size_t i = 0; i < figures.pieces.size(); ++i)
    cells.push_back(write_pieces(page, ++row, figures.pieces[i], bolts, figures,
                                 lines[first_line + i]));
  page.freeze({heading + 1, 1});
  page.print({row, last_column}, std::pair{heading, heading});
  return cells;
}

}  // namespace sheerlap

#include <fmt/format.h>

#include "joint/sheets/order_pages.h"

namespace sheerlap {
namespace {

constexpr std::size_t last_column = 14;
constexpr std::size_t total_column = 12;

/// A line of the order, with the cells it takes its figures from.
struct OrderRow {
  OrderLine line;
  std::string item;
  double net = 0;  ///< in one boat, before allowances
  std::string net_cell, need_cell, pack_size, packs_cell, price_cell;
  std::string sold_cell;  ///< what is in a pack
  double sold_as = 0;
};

std::string unless_stopped(const std::string& cell) {
  return fmt::format("=IF(stopped,\"\",{})", cell);
}

std::vector<OrderRow> order_rows(const OrderFigures& figures,
                                 const std::vector<PieceCells>& pieces) {
  const auto& lines = figures.order().lines;
  const AdhesiveAmounts& amounts = figures.job.adhesive->nominal;
  std::vector<OrderRow> rows{
      {lines[0], lines[0].item, amounts.joint.in_ml(), "net_nominal", "need_nominal",
       "pack_usable_ml", "packs_nominal", "pack_price", "pack_ml",
       figures.adhesive().pack.in_ml()},
      {lines[1], lines[1].item, static_cast<double>(amounts.nozzles), "nozzles_nominal",
       "run_nozzles_nominal", "1", "run_nozzles_nominal", "nozzle_price", "1", 1}};
  for (std::size_t i = 0; i < pieces.size(); ++i) {
    const PieceCells& cells = pieces[i];
    const auto net = static_cast<double>(figures.pieces[i].in_a_boat);
    rows.push_back({lines[i + 2], lines[i + 2].item, net, cells.in_a_boat, cells.need,
                    cells.box, cells.boxes, cells.price, cells.box,
                    lines[i + 2].pack_size});
  }
  for (OrderRow& row : rows) row.item = figures.style.sentence(row.item);
  return rows;
}

std::vector<std::string> order_headings(const BookUnit& unit) {
  return {"item",
          "unit",
          "in one boat, net",
          "allowance",
          "in one boat, gross",
          "boats",
          "the run needs",
          "a pack, as sold",
          "comes out of it",
          "packs to buy",
          "surplus",
          "price a pack",
          "total",
          "cost of a boat",
          "cost of " + unit.a_long + " of joint"};
}

void write_quantities(BookPage& page,
                      std::size_t row,
                      const OrderRow& line,
                      double boats) {
  const bool pieces = line.line.unit == "pieces";
  const Look amount{CellKind::Figure, pieces ? CellNumber::Whole : CellNumber::Tenths};
  const Look tenths{CellKind::Figure, CellNumber::Tenths};
  const Look whole{CellKind::Figure, CellNumber::Whole};
  const auto at = [&](std::size_t column) { return address({row, column}); };
  const double gross = line.line.need / boats;
  const auto packs = static_cast<double>(line.line.packs);
  page.text({row, 0}, line.item, {CellKind::Figure});
  page.text({row, 1}, line.line.unit, {CellKind::Figure});
  page.formula({row, 2}, "=" + line.net_cell, line.net, amount);
  page.formula({row, 3},
               fmt::format("=IF(OR({1}=\"\",{0}=0),\"\",{1}/{0}-1)", at(2), at(4)),
               line.net == 0 ? std::nullopt : std::optional(gross / line.net - 1),
               {CellKind::Figure, CellNumber::Share});
  page.formula({row, 4}, fmt::format("=IF({0}=\"\",\"\",{0}/{1})", at(6), at(5)), gross,
               tenths);
  page.formula({row, 5}, "=boats", boats, whole);
  page.formula({row, 6}, unless_stopped(line.need_cell), line.line.need, amount);
  page.formula({row, 7}, "=" + line.sold_cell, line.sold_as, amount);
  page.formula({row, 8}, "=" + line.pack_size, line.line.pack_size, amount);
  page.formula({row, 9}, unless_stopped(line.packs_cell), packs, whole);
  page.formula({row, 10},
               fmt::format("=IF({0}=\"\",\"\",{0}*{1}-{2})", at(9), at(8), at(6)),
               packs * line.line.pack_size - line.line.need, amount);
}

/// `total` and what it is for one boat and for a length of joint.
void write_costs(BookPage& page,
                 std::size_t row,
                 std::optional<double> total,
                 CellKind kind,
                 const OrderFigures& figures) {
  const Look money{kind, CellNumber::Money};
  const std::string cell = address({row, total_column});
  const auto boats = static_cast<double>(figures.rules().boats);
  std::optional<double> of_a_boat, of_a_length;
  if (total) of_a_boat = *total / boats;
  if (total) of_a_length = *of_a_boat / figures.unit.of_long(figures.joint_length);
  page.formula({row, 13}, fmt::format("=IF({0}=\"\",\"\",{0}/boats)", cell), of_a_boat,
               money);
  page.formula({row, 14},
               fmt::format("=IF({0}=\"\",\"\",{0}/boats/joint_length)", cell),
               of_a_length, money);
}

void write_line(BookPage& page,
                std::size_t row,
                const OrderRow& line,
                const OrderFigures& figures) {
  write_quantities(page, row, line, static_cast<double>(figures.rules().boats));
  page.formula({row, 11}, fmt::format("=IF({0}=\"\",\"\",{0})", line.price_cell),
               line.line.price, {CellKind::Figure, CellNumber::Price});
  page.formula({row, total_column},
               fmt::format("=IF(OR({0}=\"\",{1}=\"\"),\"\",{0}*{1})",
                           address({row, 11}), address({row, 9})),
               line.line.total, {CellKind::Figure, CellNumber::Money});
  write_costs(page, row, line.line.total, CellKind::Figure, figures);
}

/// @returns  the cell with the total
std::string write_total(BookPage& page,
                        std::size_t first,
                        std::size_t row,
                        const OrderFigures& figures) {
  page.text({row, 0}, "in all, of what has a price", {CellKind::Total});
  for (std::size_t column = 1; column < total_column; ++column)
    page.text({row, column}, "", {CellKind::Total});
  page.formula(
      {row, total_column},
      fmt::format("=IF(COUNT({0}:{1})=0,\"\",SUM({0}:{1}))",
                  address({first, total_column}), address({row - 1, total_column})),
      figures.order().total, {CellKind::Total, CellNumber::Money});
  write_costs(page, row, figures.order().total, CellKind::Total, figures);
  return address({row, total_column}, true);
}

std::optional<double> adhesive_cost(const AdhesiveAmounts& amounts,
                                    const OrderFigures& figures) {
  const OrderPart part = figures.part(amounts);
  std::optional<double> cost;
  for (const OrderLine& line : part.lines)
    if (line.total) cost = cost.value_or(0) + *line.total;
  return cost;
}

void write_range_row(BookPage& page,
                     std::size_t row,
                     const LipCase& lip,
                     const std::string& total,
                     const OrderFigures& figures) {
  const Look whole{CellKind::Figure, CellNumber::Whole};
  const Look money{CellKind::Figure, CellNumber::Money};
  page.text({row, 0}, lip.heading, {CellKind::Figure});
  for (const std::size_t column : {1, 5}) page.text({row, column}, "", whole);
  if (!lip.amounts) return page.text({row, 2}, "-", {CellKind::Figure});
  const OrderPart part = figures.part(*lip.amounts);
  page.formula({row, 2}, unless_stopped("boat_" + lip.suffix),
               lip.amounts->boat.in_ml(), {CellKind::Figure, CellNumber::Tenths});
  page.formula({row, 3}, unless_stopped("packs_" + lip.suffix),
               static_cast<double>(part.lines[0].packs), whole);
  page.formula({row, 4}, unless_stopped("run_nozzles_" + lip.suffix),
               part.lines[1].need, whole);
  std::optional<double> all;
  if (figures.order().total)
    all = *figures.order().total + adhesive_cost(*lip.amounts, figures).value_or(0) -
          adhesive_cost(figures.job.adhesive->nominal, figures).value_or(0);
  page.formula({row, 6},
               fmt::format("=IF({0}=\"\",\"\",{0}-N(cost_nominal)+N(cost_{1}))", total,
                           lip.suffix),
               all, money);
}

std::size_t write_range(BookPage& page,
                        std::size_t row,
                        const std::string& total,
                        const OrderFigures& figures) {
  page.text({row++, 0}, "The range, and why", {CellKind::Strong});
  page.headings(row,
                {"how the lip stands", "", "adhesive a boat, ml", "packs",
                 "mixer nozzles", "", "the order in all"},
                {0});
  for (const LipCase& lip : figures.lips)
    write_range_row(page, ++row, lip, total, figures);
  return row;
}

}  // namespace

std::vector<std::string> write_order(BookPage& page,
                                     const std::vector<PieceCells>& pieces,
                                     const OrderFigures& figures) {
  page.widths({30, 8, 11, 10, 11, 7, 12, 8, 9, 9, 9, 9, 12, 12, 13});
  std::size_t row = write_head(
      page, figures, last_column, "what to buy for the run of boats",
      "Packs and boxes are rounded up once, for the whole run, for the joint as drawn. "
      "A pack of adhesive counts as what comes out of it; an opened one is kept for "
      "the "
      "next boat. The allowance is all that is bought beyond the net, whole packs "
      "apart. Prices are in your currency. Change the figures on the page Inputs.");
  page.headings(row, order_headings(figures.unit), {0, 1});
  const std::size_t heading = row;
  std::vector<std::string> packs;
  for (const OrderRow& line : order_rows(figures, pieces)) {
    write_line(page, ++row, line, figures);
    packs.push_back(page.reference({row, 9}));
  }
  const std::string total = write_total(page, heading + 1, row + 1, figures);
  row = write_range(page, row + 4, total, figures);
  page.freeze({heading + 1, 1});
  page.print({row, last_column}, std::nullopt);
  return packs;
}

}  // namespace sheerlap

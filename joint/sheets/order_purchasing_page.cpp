#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "joint/sheets/order_pages.h"

namespace sheerlap {
namespace {

constexpr std::size_t last_column = 8;
constexpr std::size_t lead_time_column = 5;
/// Deliveries with a line of their own.
constexpr std::size_t most_deliveries = 12;
constexpr double days_a_month = 365.25 / 12;

/// @returns  the row of the adhesive
std::size_t write_items(BookPage& page,
                        std::size_t row,
                        const std::vector<std::string>& packs,
                        const OrderFigures& figures) {
  page.headings(
      row,
      {"item", "packs to buy", "part no.", "supplier", "supplier's code",
       "lead time, days", "batch or lot needed, yes or no", "shelf life, days", "note"},
      {0, 2, 3, 4, 6, 8});
  const std::size_t first = row + 1;
  const auto& lines = figures.order().lines;
  for (std::size_t i = 0; i < lines.size(); ++i) {
    page.text({++row, 0}, figures.style.sentence(lines[i].item), {CellKind::Figure});
    page.formula({row, 1}, "=" + packs[i], static_cast<double>(lines[i].packs),
                 {CellKind::Figure, CellNumber::Whole});
    for (const std::size_t column : {2, 3, 4, 5, 6, 8})
      page.input({row, column}, std::nullopt, CellNumber::None);
    std::optional<double> days;
    if (i == 0 && figures.adhesive().shelf_life)
      days = figures.adhesive().shelf_life->in_days();
    if (i == 0)
      page.formula({row, 7}, "=IF(shelf_life_days=\"\",\"\",shelf_life_days)", days,
                   {CellKind::Figure, CellNumber::Whole});
    else
      page.input({row, 7}, std::nullopt, CellNumber::Whole);
  }
  return first;
}

/// The cells of the split by shelf life.
struct SplitCells {
  std::string boats, most_packs, deliveries, lead_time;
};

void write_fact(BookPage& page,
                std::size_t row,
                const std::string& what,
                const std::string& formula,
                std::optional<double> value,
                CellNumber number) {
  page.text({row, 0}, what, {CellKind::Figure});
  page.formula({row, 1}, formula, value, {CellKind::Figure, number});
}

SplitCells write_split(BookPage& page,
                       std::size_t row,
                       std::size_t adhesive_row,
                       const OrderFigures& figures) {
  const auto& shelf = figures.order().shelf;
  const auto cell = [&](std::size_t at) { return address({at, 1}, true); };
  const SplitCells cells{cell(row), cell(row + 1), cell(row + 2),
                         address({adhesive_row, lead_time_column}, true)};
  const auto of = [&](auto member) {
    return shelf ? std::optional(static_cast<double>((*shelf).*member)) : std::nullopt;
  };
  write_fact(page, row, "boats built within the shelf life",
             "=IF(OR(stopped,shelf_life_days=\"\",boats_a_month=\"\"),\"\","
             "boats_a_month*shelf_life_days/(365.25/12))",
             of(&ShelfCap::boats), CellNumber::Tenths);
  write_fact(
      page, row + 1, "packs in one delivery, at most",
      fmt::format("=IF({0}=\"\",\"\",IF(boats<={0},packs_nominal,MIN(MAX(INT({0}*"
                  "boat_nominal/pack_usable_ml*(1+1E-9)),1),"
                  "MAX(1,packs_nominal))))",
                  cells.boats),
      of(&ShelfCap::packs), CellNumber::Whole);
  write_fact(page, row + 2, "deliveries for the run",
             fmt::format("=IF({0}=\"\",\"\",IF(boats<={0},1,"
                         "ROUNDUP(packs_nominal/{1},0)))",
                         cells.boats, cells.most_packs),
             of(&ShelfCap::deliveries), CellNumber::Whole);
  return cells;
}

/// One delivery of those the shelf life splits the run into, from 0.
struct Delivery {
  double packs = 0;
  double first_boat = 0;  ///< the boat that first takes from it
  double day = 0;         ///< on which that boat is built, the first boat's being 0
};

std::optional<Delivery> delivery(std::size_t number, const OrderFigures& figures) {
  const Order& order = figures.order();
  if (!order.shelf || number >= order.shelf->deliveries) return std::nullopt;
  const auto before = static_cast<double>(number * order.shelf->packs);
  const auto all = static_cast<double>(order.lines[0].packs);
  Delivery one;
  one.packs = std::min(static_cast<double>(order.shelf->packs), all - before);
  one.first_boat =
      std::floor(before * figures.adhesive().pack_usable.in_ml() / order.lines[0].need *
                 static_cast<double>(order.boats) * (1 + 1e-9)) +
      1;
  one.day = (one.first_boat - 1) / *figures.rules().boats_a_month * days_a_month;
  return one;
}

void write_delivery(BookPage& page,
                    std::size_t row,
                    std::size_t number,
                    const SplitCells& cells,
                    const OrderFigures& figures) {
  const auto one = delivery(number, figures);
  const auto of = [&](auto member) {
    return one ? std::optional((*one).*member) : std::nullopt;
  };
  const Look whole{CellKind::Figure, CellNumber::Whole};
  const std::string packs = address({row, 1});
  page.text({row, 0}, fmt::format("delivery {}", number + 1), {CellKind::Figure});
  page.formula({row, 1},
               fmt::format("=IF({0}=\"\",\"\",IF({1}>={0},\"\",MIN({2},packs_nominal-"
                           "{1}*{2})))",
                           cells.deliveries, number, cells.most_packs),
               of(&Delivery::packs), whole);
  page.formula(
      {row, 2},
      fmt::format("=IF({}=\"\",\"\",INT({}*{}*pack_usable_ml*boats/need_nominal*"
                  "(1+1E-9))+1)",
                  packs, number, cells.most_packs),
      of(&Delivery::first_boat), whole);
  page.formula({row, 3},
               fmt::format("=IF({}=\"\",\"\",({}-1)/boats_a_month*365.25/12)", packs,
                           address({row, 2})),
               of(&Delivery::day), whole);
  page.formula({row, 4},
               fmt::format("=IF(OR({0}=\"\",{1}=\"\"),\"\",{2}-{1})", packs,
                           cells.lead_time, address({row, 3})),
               std::nullopt, whole);
}

/// What the line under the split says for the joint file's own figures.
std::string split_words(const OrderFigures& figures) {
  const auto& shelf = figures.order().shelf;
  if (!shelf) return "Shelf life or boats a month is not given: no split.";
  if (shelf->boats < 1)
    return "STOP: a delivery expires before one boat has used it up.";
  if (shelf->deliveries > most_deliveries)
    return "There are more deliveries than lines below.";
  return "";
}

}  // namespace

void write_purchasing(BookPage& page,
                      const std::vector<std::string>& packs,
                      const OrderFigures& figures) {
  page.widths({40, 10, 16, 22, 16, 10, 12, 10, 34});
  std::size_t row =
      write_head(page, figures, last_column, "for purchasing to fill in",
                 "Cells with a heavy border are to be filled in. First expired, first "
                 "out: keep the batch and the date of each delivery.");
  const std::size_t adhesive_row = write_items(page, row, packs, figures);
  row += figures.order().lines.size() + 3;
  page.text({row++, 0}, "Adhesive, split by its shelf life", {CellKind::Strong});
  const SplitCells cells = write_split(page, row, adhesive_row, figures);
  row += 3;
  page.word_formula(
      {row, 0},
      fmt::format(
          "=IF(stopped,\"\",IF({0}=\"\",\"Shelf life or boats a month is not given: no "
          "split.\","
          "IF({0}<1,\"STOP: a delivery expires before one boat has used it up."
          "\",IF({1}>{2},\"There are more deliveries than lines below.\",\"\"))))",
          cells.boats, cells.deliveries, most_deliveries),
      split_words(figures), {});
  page.headings(
      ++row,
      {"delivery", "packs", "first used in boat", "days after the first boat is bonded",
       "latest order: days after the first boat, below 0 before it"},
      {0});
  for (std::size_t number = 0; number < most_deliveries; ++number)
    write_delivery(page, ++row, number, cells, figures);
  page.print({row, last_column}, std::nullopt);
}

}  // namespace sheerlap

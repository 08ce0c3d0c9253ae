#include <fmt/args.h>
#include <fmt/format.h>

#include <algorithm>
#include <string_view>

#include "joint/adhesive_order.h"
#include "joint/sheets/order_pages.h"

namespace sheerlap {
namespace {

constexpr std::size_t basis_column = 8;
constexpr std::size_t first_boat = 2;
constexpr std::size_t first_run = 5;

using Value = std::optional<double> (*)(const OrderPart& part,
                                        const Adhesive& adhesive);

/// The amount of one of the adhesive's allowances.
template <std::size_t index>
std::optional<double> allowance(const OrderPart& part, const Adhesive&) {
  return part.allowances[index].amount;
}

std::optional<double> packs(const OrderPart& part) {
  return static_cast<double>(part.lines[0].packs);
}

std::optional<double> cost(const OrderPart& part, const Adhesive&) {
  const auto of_packs = part.lines[0].total;
  const auto of_nozzles = part.lines[1].total;
  if (!of_packs && !of_nozzles) return std::nullopt;
  return of_packs.value_or(0) + of_nozzles.value_or(0);
}

/// A line of the build-up. Its formulas name other lines of their column in braces,
/// and with "boat_" before them those of the column of one boat.
struct Line {
  const char* name;
  const char* what;
  const char* unit;
  CellKind kind;
  CellNumber number;
  const char* formula;
  const char* run_formula;  ///< nullptr: as for one boat
  Value value;
  const char* basis;
};

const std::vector<Line>& volume_lines() {
  constexpr auto figure = CellKind::Figure;
  constexpr auto total = CellKind::Total;
  constexpr auto tenths = CellNumber::Tenths;
  static const std::vector<Line> lines{
      {"joint", "joint volume", "ml", figure, tenths, nullptr, "=boats*{boat_joint}",
       allowance<0>, "between the faces over the bond band, as set out"},
      {"squeeze", "+ squeeze-out", "ml", figure, tenths, "={joint}*squeeze_out",
       nullptr, allowance<1>, "its share of the joint volume"},
      {"step", "+ bead rounding", "ml", figure, tenths, "={laid}-{joint}-{squeeze}",
       nullptr, allowance<2>, "up to the bead sizes; the corners' own volume off"},
      {"laid", "= laid", "ml", total, tenths, "=laid_{suffix}", "=boats*{boat_laid}",
       [](const OrderPart& part, const Adhesive&) -> std::optional<double> {
         return part.allowances[0].amount + part.allowances[1].amount +
                part.allowances[2].amount;
       },
       "from the page Beads"},
      {"waste", "+ waste", "ml", figure, tenths, "={laid}*waste_share", nullptr,
       allowance<3>, "its share of what is laid"},
      {"purge", "+ nozzle purge", "ml", figure, tenths, "={nozzles}*nozzle_purge_ml",
       "=boats*{boat_nozzles}*nozzle_purge_ml", allowance<4>,
       "what each fresh nozzle takes"},
      {"again", "+ part packs begun with a fresh nozzle", "ml", figure, tenths, "=0",
       "=({nozzles}-boats*{boat_nozzles})*nozzle_purge_ml", allowance<5>,
       "of the nozzles that boats one by one would not take"},
      {"needed", "= needed", "ml", total, tenths, "={laid}+{waste}+{purge}+{again}",
       nullptr,
       [](const OrderPart& part, const Adhesive&) -> std::optional<double> {
         return part.lines[0].need;
       },
       "what has to come out of the packs"},
      {"rounding", "+ pack rounding", "ml", figure, tenths,
       "={packs}*pack_usable_ml-{needed}", nullptr, allowance<6>,
       "up to whole packs; once for the run: an opened pack is kept for the next boat"},
      {"usable", "= comes out of the packs", "ml", total, tenths,
       "={needed}+{rounding}", nullptr,
       [](const OrderPart& part, const Adhesive& adhesive) -> std::optional<double> {
         return *packs(part) * adhesive.pack_usable.in_ml();
       },
       ""},
      {"residue", "+ residue in the packs", "ml", figure, tenths,
       "={packs}*(pack_ml-pack_usable_ml)", nullptr, allowance<7>,
       "does not come out of them"},
      {"bought", "= in the packs", "ml", total, tenths, "={usable}+{residue}", nullptr,
       [](const OrderPart& part, const Adhesive& adhesive) -> std::optional<double> {
         return *packs(part) * adhesive.pack.in_ml();
       },
       ""}};
  return lines;
}

const std::vector<Line>& bought_lines() {
  constexpr auto figure = CellKind::Figure;
  static const std::vector<Line> lines{
      {"nozzles", "mixer nozzles", "pieces", figure, CellNumber::Whole,
       "=IF(pack_usable_ml>nozzle_purge_ml,MAX(1,ROUNDUP({laid}*(1+waste_share)/"
       "(pack_usable_ml-nozzle_purge_ml)*(1-1E-9),0)),NA())",
       "=IF(pack_usable_ml>nozzle_purge_ml,MAX(boats*{boat_nozzles},ROUNDUP(({laid}*"
       "(1+waste_share)+guns*(boats-1)*nozzle_purge_ml)/(pack_usable_ml-"
       "nozzle_purge_ml)*(1-1E-9),0)+guns*(boats-1)),NA())",
       [](const OrderPart& part, const Adhesive&) -> std::optional<double> {
         return part.lines[1].need;
       },
       "one a pack; each boat starts with fresh ones, so a part pack on a gun takes "
       "one again"},
      {"packs", "packs to buy", "packs", figure, CellNumber::Whole,
       "=ROUNDUP({needed}/pack_usable_ml*(1-1E-9),0)", nullptr,
       [](const OrderPart& part, const Adhesive&) { return packs(part); },
       "whole packs"},
      {"mass", "mass of what is needed", "kg", figure, CellNumber::Tenths,
       "=IF(density=\"\",\"\",{needed}*density/1000)", nullptr,
       [](const OrderPart& part, const Adhesive& adhesive) -> std::optional<double> {
         if (!adhesive.density) return std::nullopt;
         return part.lines[0].need * *adhesive.density / 1000;
       },
       "by its density"},
      {"pack_cost", "price of the packs", "currency", figure, CellNumber::Money,
       "=IF(pack_price=\"\",\"\",{packs}*pack_price)", nullptr,
       [](const OrderPart& part, const Adhesive&) { return part.lines[0].total; }, ""},
      {"nozzle_cost", "price of the nozzles", "currency", figure, CellNumber::Money,
       "=IF(nozzle_price=\"\",\"\",{nozzles}*nozzle_price)", nullptr,
       [](const OrderPart& part, const Adhesive&) { return part.lines[1].total; }, ""},
      {"cost", "adhesive and nozzles", "currency", CellKind::Total, CellNumber::Money,
       "=IF(COUNT({pack_cost},{nozzle_cost})=0,\"\",SUM({pack_cost},{nozzle_cost}))",
       nullptr, cost, "of what has a price"}};
  return lines;
}

/// Where each line stands.
struct Row {
  const Line* line;
  std::size_t row;
};

/// A column of the build-up: one of the lips, for one boat or for the run.
struct ColumnOf {
  std::size_t lip = 0;
  bool run = false;

  std::size_t column() const { return (run ? first_run : first_boat) + lip; }
};

std::string filled(const char* formula,
                   const std::vector<Row>& rows,
                   const ColumnOf& where,
                   const std::string& suffix) {
  fmt::dynamic_format_arg_store<fmt::format_context> cells;
  for (const Row& row : rows) {
    const ColumnOf boat{where.lip, false};
    cells.push_back(fmt::arg(row.line->name, address({row.row, where.column()})));
    cells.push_back(fmt::arg((std::string("boat_") + row.line->name).c_str(),
                             address({row.row, boat.column()})));
  }
  cells.push_back(fmt::arg("suffix", suffix));
  return fmt::vformat(formula, cells);
}

void write_column(BookPage& page,
                  const std::vector<Row>& rows,
                  const ColumnOf& where,
                  const OrderFigures& figures) {
  const LipCase& lip = figures.lips[where.lip];
  const Adhesive& adhesive = figures.adhesive();
  for (const Row& row : rows) {
    const Spot spot{row.row, where.column()};
    const Look look{row.line->kind, row.line->number};
    if (!lip.amounts) {
      page.text(spot, "-", look);
      continue;
    }
    const OrderPart part =
        figures.part(*lip.amounts, where.run ? figures.rules().boats : 1);
    const char* formula = where.run && row.line->run_formula != nullptr
                              ? row.line->run_formula
                              : row.line->formula;
    const auto value = row.line->value(part, adhesive);
    if (formula == nullptr)
      page.number(spot, *value, look);
    else
      page.formula(spot, filled(formula, rows, where, lip.suffix), value, look);
  }
}

void define_names(Book& book,
                  const BookPage& page,
                  const std::vector<Row>& rows,
                  const OrderFigures& figures) {
  const struct {
    const char* name;
    std::string_view line;
    bool run;
  } names[] = {{"net", "joint", false},       {"boat", "needed", false},
               {"nozzles", "nozzles", false}, {"need", "needed", true},
               {"packs", "packs", true},      {"run_nozzles", "nozzles", true},
               {"cost", "cost", true}};
  for (std::size_t lip = 0; lip < figures.lips.size(); ++lip)
    for (const auto& one : names) {
      if (!figures.lips[lip].amounts) continue;
      const auto row = std::find_if(
          rows.begin(), rows.end(),
          [&](const Row& candidate) { return candidate.line->name == one.line; });
      book.define(std::string(one.name) + "_" + figures.lips[lip].suffix,
                  page.reference({row->row, ColumnOf{lip, one.run}.column()}));
    }
}

std::vector<std::string> column_headings(const OrderFigures& figures) {
  std::vector<std::string> words{"line", "unit"};
  for (const char* what : {"one boat, ", "the run, "})
    for (const LipCase& lip : figures.lips) words.push_back(what + lip.heading);
  words.push_back("basis");
  return words;
}

std::string page_words(const OrderFigures& figures) {
  std::string words =
      "What one boat takes and what the run takes, every allowance a line of its own. "
      "The order is for the nominal joint, as drawn. Least and most are the lip "
      "everywhere closer and further off by " +
      figures.style.size_with_unit(lip_shift) +
      ", what a hull out of shape comes to (common practice, no source).";
  for (const Check& check : figures.job.adhesive->checks)
    if (check.id == "adhesive.least" || check.id == "adhesive.most")
      words += " Left out: " + figures.style.sentence(check.what) + ".";
  return words;
}

}  // namespace

void write_adhesive(BookPage& page, Book& book, const OrderFigures& figures) {
  page.widths({28, 10, 13, 13, 13, 13, 13, 13, 44});
  std::size_t row = write_head(page, figures, basis_column,
                               "adhesive, line by line: " + figures.adhesive().name,
                               page_words(figures));
  page.headings(row, column_headings(figures), {0, 1, basis_column});
  const std::size_t heading = row;
  std::vector<Row> rows;
  for (const Line& line : volume_lines()) rows.push_back({&line, ++row});
  ++row;
  for (const Line& line : bought_lines()) rows.push_back({&line, ++row});
  for (const Row& one : rows) {
    page.text({one.row, 0}, one.line->what, {one.line->kind});
    page.text({one.row, 1}, one.line->unit, {one.line->kind});
    page.text({one.row, basis_column}, one.line->basis, {one.line->kind});
  }
  for (std::size_t lip = 0; lip < figures.lips.size(); ++lip)
    for (const bool run : {false, true}) write_column(page, rows, {lip, run}, figures);
  define_names(book, page, rows, figures);
  page.freeze({heading + 1, 1});
  page.print({row, basis_column}, std::pair{heading, heading});
}

}  // namespace sheerlap

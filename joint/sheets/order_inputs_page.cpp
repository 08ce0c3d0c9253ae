#include <fmt/format.h>

#include <algorithm>

#include "joint/sheets/order_pages.h"

namespace sheerlap {
namespace {

constexpr double endless = 1e9;
constexpr std::size_t last_column = 5;

/// A figure that the reader may change.
struct InputRow {
  const char* name;  ///< of its cell, for formulas
  const char* key;   ///< in the joint file
  const char* what;
  const char* unit;
  std::optional<double> value;
  CellNumber number;
  CellLimits limits;
  bool given = true;  ///< false: the value is ours, for the joint file has none
};

/// Inputs that belong together.
struct InputGroup {
  const char* heading;
  std::vector<InputRow> rows;
};

CellLimits share() { return {0, 1, false, "A share from 0 to 100 %."}; }
CellLimits from_zero() { return {0, endless, false, "0 or more."}; }
CellLimits above_zero() { return {1e-9, endless, false, "More than 0."}; }
CellLimits count() { return {1, 1e6, true, "A whole number from 1 to a million."}; }

InputGroup run_inputs(const OrderRules& rules, const Joint& joint) {
  return {"The run of boats",
          {{"boats", "order.boats", "boats to order for", "boats",
            static_cast<double>(rules.boats), CellNumber::Whole, count()},
           {"boats_a_month", "order.boats_a_month", "boats built in a month", "boats",
            rules.boats_a_month, CellNumber::None, above_zero()},
           {"guns", "shop.guns", "guns, each with an open pack of its own", "guns",
            static_cast<double>(guns_of(joint)), CellNumber::Whole, count(),
            joint.shop.has_value()}}};
}

InputGroup allowance_inputs(const Adhesive& adhesive) {
  return {"Adhesive: allowances",
          {{"squeeze_out", "adhesive.squeeze_out", "squeeze-out", "of the joint volume",
            adhesive.squeeze_out, CellNumber::Share, share()},
           {"waste_share", "adhesive.waste", "waste", "of what is laid", adhesive.waste,
            CellNumber::Share, share()}}};
}

InputGroup pack_inputs(const Adhesive& adhesive) {
  std::optional<double> days;
  if (adhesive.shelf_life) days = adhesive.shelf_life->in_days();
  return {"Adhesive: the pack",
          {{"pack_ml", "adhesive.pack", "in one pack, as sold: change the next with it",
            "ml", adhesive.pack.in_ml(), CellNumber::Tenths, above_zero()},
           {"pack_usable_ml", "adhesive.pack_usable",
            "comes out of a pack: change the one above with it", "ml",
            adhesive.pack_usable.in_ml(), CellNumber::Tenths, above_zero()},
           {"nozzle_purge_ml", "adhesive.nozzle_purge", "lost at each fresh nozzle",
            "ml", adhesive.nozzle_purge.in_ml(), CellNumber::Tenths, from_zero()},
           {"pack_price", "adhesive.pack_price", "price of a pack", "your currency",
            adhesive.pack_price, CellNumber::Price, from_zero()},
           {"nozzle_price", "adhesive.nozzle_price", "price of a mixer nozzle",
            "your currency", adhesive.nozzle_price, CellNumber::Price, from_zero()},
           {"density", "adhesive.density", "density", "g/ml", adhesive.density,
            CellNumber::None, above_zero()},
           {"shelf_life_days", "adhesive.shelf_life", "shelf life", "days", days,
            CellNumber::Whole, above_zero()}}};
}

InputGroup fastener_inputs(const FastenerChoice& choice, const OrderRules& rules) {
  std::optional<double> box;
  if (choice.box) box = static_cast<double>(*choice.box);
  return {"Fasteners",
          {{"spare_share", "order.spare", "spares", "of the fasteners in the boats",
            rules.spare, CellNumber::Share, share()},
           {"box_size", "fastener.box", "fasteners in a box; a box price needs it",
            "pieces", box, CellNumber::Whole, count()},
           {"box_price", "fastener.box_price", "price of a box", "your currency",
            choice.box_price, CellNumber::Price, from_zero()}}};
}

void write_row(BookPage& page,
               Book& book,
               std::size_t row,
               const InputRow& input,
               const OrderFigures& figures) {
  const Look figure{CellKind::Figure};
  page.text({row, 0}, input.what, figure);
  page.input({row, 1}, input.value, input.number);
  page.limit({row, 1}, input.limits);
  page.text({row, 2}, input.unit, figure);
  page.text({row, 3}, "INPUT", {CellKind::Figure});
  const auto& defaults = figures.job.joint.defaults;
  const auto used =
      std::find_if(defaults.begin(), defaults.end(),
                   [&](const DefaultUsed& one) { return one.key == input.key; });
  const bool given = input.given && input.value.has_value();
  const bool by_default = used != defaults.end();
  page.text({row, 4}, by_default ? "default" : given ? "yours" : "not given", figure);
  page.text({row, 5},
            by_default ? figures.style.sentence(used->why)
            : given    ? fmt::format("the joint file: {}", input.key)
                       : fmt::format("the joint file has no {}", input.key),
            figure);
  book.define(input.name, page.reference({row, 1}));
}

/// 0 where the inputs can be worked with, 1 where the program would refuse them.
constexpr const char* cannot_be_worked_with =
    "=IF(IFERROR(AND(COUNT(boats,guns,squeeze_out,waste_share,spare_share,pack_ml,"
    "pack_usable_ml,nozzle_purge_ml)=8,boats>=1,boats=INT(boats),guns>=1,"
    "guns=INT(guns),squeeze_out>=0,squeeze_out<=1,waste_share>=0,waste_share<=1,"
    "spare_share>=0,spare_share<=1,nozzle_purge_ml>=0,pack_usable_ml<=pack_ml,"
    "nozzle_purge_ml<pack_usable_ml,OR(box_size=\"\",box_size>=1),OR(box_price=\"\","
    "box_size<>\"\"),N(pack_price)>=0,N(nozzle_price)>=0,N(box_price)>=0),FALSE),0,1)";

/// What it says of them.
constexpr const char* input_check =
    "=IF(stopped,\"STOP: boats and guns must be whole and 1 or more, shares from 0 to "
    "100 %, what comes out of a pack no more than is in it, and more than is lost at a "
    "nozzle; a box price needs the fasteners in a box.\",\"The inputs can be worked "
    "with.\")";

/// Whether the squeeze-out is one the table of beads is cut for.
std::string exact_formula(const SectionBands& bands, double own) {
  const std::string own_too = fmt::format("ABS(squeeze_out-{:.17g})<1E-12", own);
  const std::string exact =
      bands.step_percent == 0
          ? own_too
          : fmt::format(
                "OR({0},AND(squeeze_out<={1}/100,ABS(squeeze_out*100/{2}-"
                "ROUND(squeeze_out*100/{2},0))<1E-9))",
                own_too, SectionBands::percent_to, bands.step_percent);
  return fmt::format(
      "=IF({},\"Beads for this squeeze-out: exact, as the program lays "
      "them.\",\"Beads for this squeeze-out: on the safe side, more than "
      "the program lays; see the page Beads.\")",
      exact);
}

}  // namespace

void write_inputs(BookPage& page, Book& book, const OrderFigures& figures) {
  page.widths({36, 14, 24, 9, 11, 46});
  std::size_t row = write_head(
      page, figures, last_column, "inputs of the order",
      "Change the cells with a heavy border, marked INPUT: every total on the other "
      "pages follows. An empty price leaves its line out of the total. Nothing that is "
      "changed here changes the joint file or the boat.");
  page.headings(row, {"what", "value", "unit", "mark", "whose", "from where"},
                {0, 2, 3, 4, 5});
  const std::size_t heading = row++;
  for (const InputGroup& group :
       {run_inputs(figures.rules(), figures.job.joint),
        allowance_inputs(figures.adhesive()), pack_inputs(figures.adhesive()),
        fastener_inputs(figures.job.joint.fastener, figures.rules())}) {
    page.text({++row, 0}, group.heading, {CellKind::Strong});
    for (const InputRow& input : group.rows)
      write_row(page, book, ++row, input, figures);
    ++row;
  }
  page.text({++row, 0}, "1 if these inputs cannot be worked with, or 0",
            {CellKind::Figure});
  page.formula({row, 1}, cannot_be_worked_with, 0,
               {CellKind::Figure, CellNumber::Whole});
  book.define("stopped", page.reference({row, 1}));
  page.word_formula({++row, 0}, input_check, "The inputs can be worked with.", {});
  page.word_formula({++row, 0},
                    exact_formula(figures.bands, figures.adhesive().squeeze_out),
                    "Beads for this squeeze-out: exact, as the program lays them.", {});
  row += 2;
  page.text({row, 0}, "As set out; not to be changed here", {CellKind::Strong});
  page.text({++row, 0}, "joint along the sheer, openings left out", {CellKind::Figure});
  page.number({row, 1}, figures.unit.of_long(figures.joint_length),
              {CellKind::Figure, CellNumber::Length});
  page.text({row, 2}, figures.unit.long_unit, {CellKind::Figure});
  book.define("joint_length", page.reference({row, 1}));
  page.freeze({heading + 1, 1});
  page.print({row, last_column}, std::pair{heading, heading});
}

}  // namespace sheerlap

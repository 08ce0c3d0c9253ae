#pragma once

#include <array>
#include <optional>
#include <string>
#include <vector>

#include "joint/adhesive_amounts.h"
#include "joint/documents/number_style.h"
#include "joint/fastener_order.h"
#include "joint/job.h"
#include "joint/section_bands.h"
#include "joint/sheets/book.h"

namespace sheerlap {

/// A unit of length as the workbook shows it, with what follows from it.
struct BookUnit {
  std::string length;     ///< "mm"
  std::string area;       ///< "sq mm"
  std::string long_unit;  ///< "m", "ft"
  std::string a_long;     ///< "a metre", "a foot"
  double in_mm = 1;
  double long_in_mm = 1000;
  std::string to_ml;  ///< what turns cubes of it into ml: "/1000"

  double of(Length value) const { return value.in_mm() / in_mm; }
  double of_area(double mm2) const { return mm2 / (in_mm * in_mm); }
  double of_long(Length value) const { return value.in_mm() / long_in_mm; }
};

BookUnit book_unit(LengthUnit unit);

/// The joint's adhesive with the lip closer, as drawn or further off.
struct LipCase {
  std::string heading;  ///< "least: lip 1 mm closer"
  std::string suffix;   ///< of the names of its cells: "least"
  std::optional<AdhesiveAmounts> amounts;
  Length SectionBand::*length;
};

/// What the pages of the order's workbook are made from.
struct OrderFigures {
  const Job& job;
  NumberStyle style;
  BookUnit unit;
  SectionBands bands;
  std::vector<FastenerPieces> pieces;
  std::array<LipCase, 3> lips;  ///< least, nominal, most
  Length joint_length;          ///< along the sheer, openings left out
  std::optional<std::string> date;

  const Adhesive& adhesive() const { return *job.joint.adhesive; }
  const OrderRules& rules() const { return *job.joint.order; }
  const Order& order() const { return *job.order; }
  /// What the run takes of the adhesive with one of the lips, or so many boats.
  OrderPart part(const AdhesiveAmounts& amounts, std::size_t boats) const;
  OrderPart part(const AdhesiveAmounts& amounts) const {
    return part(amounts, rules().boats);
  }
};

/// @param job  with its adhesive plan, schedule and order
OrderFigures order_figures(const Job& job, const SheetStyle& style);

/// The pages, in the order they stand in.
struct OrderPages {
  explicit OrderPages(Book& book);

  BookPage inputs, order, purchasing, adhesive, fasteners, beads, sections, notes;
};

/// The head of a page: the boat, what the page is, the verdict on the checks, and in
/// the next row what there is to say of the page.
/// @returns  the first row below it
std::size_t write_head(BookPage& page,
                       const OrderFigures& figures,
                       std::size_t last_column,
                       const std::string& what,
                       const std::string& words);

}  // namespace sheerlap

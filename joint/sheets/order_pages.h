#pragma once

#include <string>
#include <vector>

#include "joint/sheets/book.h"
#include "joint/sheets/order_figures.h"

namespace sheerlap {

/// What a buyer may change, and whose each figure is. Defines the names of the inputs.
void write_inputs(BookPage& page, Book& book, const OrderFigures& figures);

/// The joint by its section, and the beads that lay it. Defines `section_beads`, and
/// for each of least, nominal and most `section_length_` and `section_laid_`.
void write_sections(BookPage& page, Book& book, const OrderFigures& figures);

/// What is laid, by bead size. Defines `bead_sizes`, `bead_sections`, and for each of
/// least, nominal and most `laid_`, ml a boat.
void write_beads(BookPage& page, Book& book, const OrderFigures& figures);

/// The adhesive line by line, for one boat and for the run. Defines, for each of least,
/// nominal and most, `net_`, `boat_`, `nozzles_`, `need_`, `packs_`, `run_nozzles_` and
/// `cost_`.
void write_adhesive(BookPage& page, Book& book, const OrderFigures& figures);

/// Where the figures of each kind of piece stand on the page of fasteners.
struct PieceCells {
  std::string in_a_boat, need, box, boxes, price;  ///< references
};

/// Fasteners by length, with their nuts and washers.
std::vector<PieceCells> write_fasteners(BookPage& page, const OrderFigures& figures);

/// What to buy, what it costs, and the range.
/// @returns  references to the packs to buy, line by line
std::vector<std::string> write_order(BookPage& page,
                                     const std::vector<PieceCells>& pieces,
                                     const OrderFigures& figures);

/// What purchasing fills in, and the split by shelf life.
/// @param packs  references to the packs to buy
void write_purchasing(BookPage& page,
                      const std::vector<std::string>& packs,
                      const OrderFigures& figures);

/// How to read the workbook, checks, defaults and cautions.
void write_notes(BookPage& page, const OrderFigures& figures);

}  // namespace sheerlap

#pragma once

#include <cstddef>
#include <optional>
#include <string>

#include "joint/sheets/box.h"
#include "joint/sheets/page.h"

namespace sheerlap {

/// How the views of a drawing lie to each other, as its symbol says; none where views
/// are named only.
enum class Projection { None, FirstAngle, ThirdAngle };

/// What the title block of a sheet says.
struct SheetTitle {
  std::string title;                     ///< the joint's own
  std::string what;                      ///< "Drilling schedule, STARBOARD side"
  std::string lengths;                   ///< "mm; running girths to 1 mm"
  std::string scale = {};                ///< "1:20"; no such field if empty
  std::optional<std::string> date = {};  ///< printed as the day of issue if given
  Projection projection = Projection::None;
};

/// Which sheet of how many.
struct SheetNumber {
  std::size_t sheet = 1;
  std::size_t of = 1;

  std::string words() const;  ///< "sheet 2 of 5"
};

/// What a frame leaves free to draw on.
struct SheetArea {
  Box body;    ///< above the title block, over the whole width
  Box beside;  ///< left of the title block; of no width where the block fills it
};

/// The frame of a sheet with its title block at the foot, and blank fields to sign in.
///
/// The margins are 20 mm on the left, to file the sheet by, and 10 mm on the others;
/// the block is 180 mm wide at most, but fills a sheet that is not much wider.
///
/// @source  ISO 5457 for the margins, ISO 7200 for the block's width and fields: from
///          memory, confirm
SheetArea draw_sheet_frame(Page& page, const SheetTitle& title, SheetNumber number);

/// What `draw_sheet_frame` leaves free on a sheet of that size.
SheetArea sheet_area(PageSize size);

/// A field to fill in by hand: its name small in the top left corner of the box.
void draw_field(Page& page,
                const Box& box,
                const std::string& name,
                const std::string& value = "");

}  // namespace sheerlap

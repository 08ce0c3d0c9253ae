#include "joint/sheets/note_columns.h"

#include <algorithm>

namespace sheerlap {
namespace {

constexpr double between_columns_mm = 6;

Lettering heading_lettering(double letter_mm) {
  return {.height_mm = letter_mm * letter_height::text / letter_height::least,
          .bold = true};
}

double after_note_mm(double letter_mm) { return 0.8 * letter_mm; }

double height_of(Page& page, const Note& note, double width_mm, double letter_mm) {
  double height =
      page.paragraph_height(note.words, width_mm, {.height_mm = letter_mm}) +
      after_note_mm(letter_mm);
  if (!note.heading.empty())
    height +=
        page.paragraph_height(note.heading, width_mm, heading_lettering(letter_mm));
  return height;
}

void write_note(Page& page, const Note& note, Box& column, double letter_mm) {
  const double before = column.top;
  if (!note.heading.empty())
    column.top += page.paragraph({column.left, column.top}, note.heading, column.width,
                                 heading_lettering(letter_mm));
  column.top += page.paragraph({column.left, column.top}, note.words, column.width,
                               {.height_mm = letter_mm});
  column.top += after_note_mm(letter_mm);
  column.height -= column.top - before;
}

std::vector<Box> two_columns(const Box& room) {
  const double width = (room.width - between_columns_mm) / 2;
  return {{room.left, room.top, width, room.height},
          {room.right() - width, room.top, width, room.height}};
}

/// The notes on their way down the columns: where one of them starts a column and has
/// no heading, it takes that of its section again.
class Headings {
 public:
  void pass(const Note& note) {
    if (!note.heading.empty()) section_ = note.heading;
  }
  Note at_the_top(const Note& note) const {
    if (!note.heading.empty() || section_.empty()) return note;
    return {section_ + ", continued", note.words};
  }

 private:
  std::string section_;
};

/// Whether all notes go into the columns.
bool all_go(Page& page,
            std::vector<Box> columns,
            const std::vector<Note>& notes,
            double letter_mm) {
  std::size_t at = 0;
  Headings headings;
  for (const Note& note : notes) {
    Note shown = note;
    const auto height = [&] {
      return height_of(page, shown, columns[at].width, letter_mm);
    };
    while (at < columns.size() && height() > columns[at].height) {
      ++at;
      shown = headings.at_the_top(note);
    }
    if (at == columns.size()) return false;
    columns[at].height -= height();
    headings.pass(note);
  }
  return true;
}

double fitting_letter_mm(Page& page,
                         const std::vector<Box>& columns,
                         const std::vector<Note>& notes) {
  constexpr double step_mm = 0.1;
  double letter_mm = letter_height::text;
  while (letter_mm > letter_height::least && !all_go(page, columns, notes, letter_mm))
    letter_mm = std::max(letter_mm - step_mm, letter_height::least);
  return letter_mm;
}

}  // namespace

void write_notes(SheetFlow& flow,
                 std::vector<Box> columns,
                 const std::vector<Note>& notes) {
  const double letter_mm = fitting_letter_mm(flow.page(), columns, notes);
  std::size_t at = 0;
  double lowest = flow.room().top;
  Headings headings;
  for (const Note& note : notes) {
    Note shown = note;
    const auto fits = [&](const Box& column) {
      return height_of(flow.page(), shown, column.width, letter_mm) <= column.height;
    };
    while (at < columns.size() && !fits(columns[at])) {
      ++at;
      shown = headings.at_the_top(note);
    }
    if (at == columns.size()) {
      flow.new_sheet();
      columns = two_columns(flow.room());
      at = 0;
      lowest = flow.room().top;
    }
    write_note(flow.page(), shown, columns[at], letter_mm);
    headings.pass(note);
    lowest = std::max(lowest, columns[at].top);
  }
  flow.take(lowest - flow.room().top);
}

}  // namespace sheerlap

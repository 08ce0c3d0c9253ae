#pragma once

#include <cstddef>
#include <map>
#include <memory>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "geometry/result.h"
#include "joint/sheets/sheet_style.h"

struct lxw_format;
struct lxw_workbook;
struct lxw_worksheet;

namespace sheerlap {

/// A cell of a page, counted from 0.
struct Spot {
  std::size_t row = 0;
  std::size_t column = 0;
};

/// "B5", and with `fixed` "$B$5".
std::string address(Spot spot, bool fixed = false);

/// What a cell is for; each is told by its border and lettering, not by colour alone.
enum class CellKind {
  Text,
  Wrapped,
  Title,
  Strong,
  Heading,
  TextHeading,
  Figure,
  Total,
  Input
};

/// How a cell shows its number.
enum class CellNumber { None, Whole, Tenths, Length, Price, Money, Share };

/// How a cell looks.
struct Look {
  CellKind kind = CellKind::Text;
  CellNumber number = CellNumber::None;

  auto operator<=>(const Look&) const = default;
};

/// What a cell may be changed to; others are refused with `words`.
struct CellLimits {
  double least = 0;
  double most = 0;
  bool whole = false;
  std::string words;  ///< at most 255 characters
};

class Book;

/// One page of a workbook. Texts are made safe; formulas are our own.
class BookPage {
 public:
  void text(Spot spot, const std::string& text, Look look = {});
  void number(Spot spot, double value, Look look);
  /// A formula and what it comes to, which is shown until it is worked out again; with
  /// no value it comes to an empty text.
  void formula(Spot spot,
               const std::string& formula,
               std::optional<double> value,
               Look look);
  void word_formula(Spot spot,
                    const std::string& formula,
                    const std::string& value,
                    Look look);
  /// A cell that the reader fills in or changes; empty without a value.
  void input(Spot spot, std::optional<double> value, CellNumber number);
  void limit(Spot spot, const CellLimits& limits);
  /// Text over the columns from the first to `last_column`, wrapped, its row as high as
  /// it takes.
  void paragraph(std::size_t row,
                 std::size_t last_column,
                 const std::string& text,
                 Look look = {CellKind::Wrapped});
  /// Column widths, in characters, from the first.
  void widths(const std::vector<double>& characters);
  /// Headings in a row, wrapped; over figures, but for those of the columns of texts.
  void headings(std::size_t row,
                const std::vector<std::string>& words,
                const std::vector<std::size_t>& text_columns);
  /// Stays in sight: the rows above this one and the columns left of it.
  void freeze(Spot spot);
  /// What is printed, and the rows that every page of it repeats.
  void print(Spot last, std::optional<std::pair<std::size_t, std::size_t>> repeat);

  const std::string& name() const { return name_; }
  /// "'Order'!$B$5".
  std::string reference(Spot spot) const;

 private:
  friend Book;
  BookPage(Book& book, lxw_worksheet* sheet, std::string name)
      : book_(book), sheet_(sheet), name_(std::move(name)) {}

  Book& book_;
  lxw_worksheet* sheet_;
  std::string name_;
  /// Makes a row as high as so many lines take, if it is not.
  void heighten(std::size_t row, std::size_t lines);

  std::vector<double> widths_;
  std::map<std::size_t, std::size_t> lines_;  ///< by row; one where there is none
};

/// A workbook with live formulas, put together in a file of the library's.
class Book {
 public:
  /// @param path   of a file to write
  /// @param title  the user's
  Book(const std::string& path, const std::string& title, const SheetStyle& style);
  ~Book();
  Book(const Book&) = delete;
  Book& operator=(const Book&) = delete;

  /// @param name  ours, at most 31 characters
  BookPage page(const std::string& name);
  /// A name for cells, for formulas to use.
  void define(const std::string& name, const std::string& reference);
  /// Writes the file; nothing can be added afterwards.
  /// @errors  Unreadable: the library cannot write it
  Result<void> close();

 private:
  friend BookPage;
  lxw_format* format(Look look);

  lxw_workbook* book_;
  std::string title_;
  SheetStyle style_;
  std::map<Look, lxw_format*> formats_;
};

}  // namespace sheerlap

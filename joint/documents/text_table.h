#pragma once

#include <cstddef>
#include <string>
#include <vector>

namespace sheerlap {

enum class Align { Left, Right };

/// A column of a table: its heading, on lines, and the side its cells keep to.
struct Column {
  std::vector<std::string> heading;
  Align align = Align::Right;
};

/// A table for people. A left-aligned last column may be long: it is wrapped.
struct TextTable {
  std::vector<Column> columns;
  std::vector<std::vector<std::string>> rows;  ///< one cell a column
};

/// No line of a document is wider, in characters.
constexpr std::size_t widest_line = 100;
/// Running text is wrapped at this width.
constexpr std::size_t text_width = 80;

/// The table as lines of text, each ended by a line feed, without blanks at the ends.
///
/// Columns are as wide as their widest cell. A left-aligned last column is wrapped so
/// that lines keep to `text_width`, or to `widest_line` where that leaves it fewer than
/// 24 characters. Cells are made printable.
std::string text_of(const TextTable& table);

/// `text` wrapped at blanks into lines of at most `width` characters; a longer word is
/// broken. Lines after the first start with `indent` blanks. The text is made
/// printable.
std::string wrapped(const std::string& text,
                    std::size_t width = text_width,
                    std::size_t indent = 0);

/// The count of characters of UTF-8 text.
std::size_t width_of(const std::string& text);

}  // namespace sheerlap

#include "joint/sheets/sheet_frame.h"

#include <fmt/format.h>

#include <vector>

namespace sheerlap {
namespace {

constexpr double filing_margin_mm = 20;
constexpr double margin_mm = 10;
constexpr double block_width_mm = 180;
/// A frame up to this much wider than the block has it over the whole width.
constexpr double widest_full_block_mm = 270;
constexpr double block_row_mm = 10;
constexpr double padding_mm = 1.2;

/// A field of a row of the block, as wide as its share of the row.
struct Field {
  double share;
  std::string name;
  std::string value;
  bool bold = false;
};

Box frame_of(PageSize size) {
  return {filing_margin_mm, margin_mm, size.width_mm - filing_margin_mm - margin_mm,
          size.height_mm - 2 * margin_mm};
}

Box block_of(PageSize size) {
  const Box frame = frame_of(size);
  const double width =
      frame.width <= widest_full_block_mm ? frame.width : block_width_mm;
  const double height = 2 * block_row_mm;
  return {frame.right() - width, frame.bottom() - height, width, height};
}

void draw_named(Page& page, const Box& box, const Field& field) {
  page.box(box);
  const double width = box.width - 2 * padding_mm;
  Point2 at(box.left + padding_mm, box.top + padding_mm);
  page.fitted(at, field.name, width,
              {.height_mm = letter_height::least, .upright = Upright::Top});
  at.y() += letter_height::least + padding_mm;
  page.fitted_lines(
      at, field.value, width, 2,
      {.height_mm = letter_height::text, .bold = field.bold, .upright = Upright::Top});
}

void draw_row(Page& page, const Box& row, const std::vector<Field>& fields) {
  double all = 0;
  for (const Field& field : fields) all += field.share;
  double left = row.left;
  for (const Field& field : fields) {
    const double width = row.width * field.share / all;
    draw_named(page, {left, row.top, width, row.height}, field);
    left += width;
  }
}

/// A truncated cone, seen from the side and from one end.
/// @source  ISO 5456-2, the symbols of first-angle and third-angle projection: from
///          memory, confirm
void draw_projection(Page& page, const Box& box, Projection projection) {
  constexpr double small_mm = 1.2, large_mm = 2.2, length_mm = 5, apart_mm = 4;
  const Point2 middle = box.centre() + Vector2(0, 1.6);
  const double way = projection == Projection::FirstAngle ? 1 : -1;
  // first angle: the view of the small, left end stands to the right of the side view
  const Point2 cone = middle - Vector2(way * apart_mm, 0);
  const Point2 ends = middle + Vector2(way * apart_mm, 0);
  const double half = length_mm / 2;
  page.polygon({cone + Vector2(-half, -small_mm), cone + Vector2(half, -large_mm),
                cone + Vector2(half, large_mm), cone + Vector2(-half, small_mm)});
  page.circle(ends, small_mm);
  page.circle(ends, large_mm);
  const Pen centreline{.width_mm = line_width::thin, .dash = Dash::Dashed};
  page.line(middle - Vector2(apart_mm + 4, 0), middle + Vector2(apart_mm + 4, 0),
            centreline);
  page.line(ends - Vector2(0, large_mm + 0.6), ends + Vector2(0, large_mm + 0.6),
            centreline);
}

void draw_block(Page& page,
                const Box& block,
                const SheetTitle& title,
                SheetNumber number) {
  const Box upper{block.left, block.top, block.width, block_row_mm};
  draw_row(page, upper,
           {{4, "title", title.title, true},
            {4, "what", title.what, true},
            {1.3, "issued", title.date.value_or("")},
            {1.6, "sheet", number.words()}});
  std::vector<Field> lower{{3.6, "lengths in", title.lengths}};
  if (!title.scale.empty()) lower.push_back({1.5, "scale", title.scale});
  if (title.projection != Projection::None) lower.push_back({1.6, "projection", ""});
  lower.push_back({2, "prepared", ""});
  lower.push_back({2, "checked", ""});
  lower.push_back({1.6, "date", ""});
  const Box row{block.left, upper.bottom(), block.width, block_row_mm};
  draw_row(page, row, lower);
  if (title.projection == Projection::None) return;
  double all = 0, before = 0;
  for (const Field& field : lower) {
    if (field.name == "projection") before = all;
    all += field.share;
  }
  draw_projection(
      page,
      {row.left + row.width * before / all, row.top, row.width * 1.6 / all, row.height},
      title.projection);
}

}  // namespace

std::string SheetNumber::words() const { return fmt::format("{} of {}", sheet, of); }

SheetArea sheet_area(PageSize size) {
  const Box frame = frame_of(size);
  const Box block = block_of(size);
  const Box body{frame.left, frame.top, frame.width, block.top - frame.top};
  return {body.inset(padding_mm),
          {frame.left, block.top, block.left - frame.left, block.height}};
}

SheetArea draw_sheet_frame(Page& page, const SheetTitle& title, SheetNumber number) {
  const Box frame = frame_of(page.size());
  page.box(frame, {.width_mm = line_width::heavy});
  draw_block(page, block_of(page.size()), title, number);
  page.box(block_of(page.size()), {.width_mm = line_width::thick});
  page.text({frame.left, frame.bottom() + padding_mm},
            "set out by sheerlap; it does not certify a joint",
            {.height_mm = letter_height::least, .upright = Upright::Top});
  page.text({frame.right(), frame.bottom() + padding_mm}, "sheet " + number.words(),
            {.height_mm = letter_height::least,
             .across = Across::Right,
             .upright = Upright::Top});
  return sheet_area(page.size());
}

void draw_field(Page& page,
                const Box& box,
                const std::string& name,
                const std::string& value) {
  draw_named(page, box, {1, name, value, true});
}

}  // namespace sheerlap

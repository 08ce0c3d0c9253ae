#include "joint/sheets/section_view.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "joint/documents/drilling_words.h"
#include "joint/sheets/dimension.h"

namespace sheerlap {
namespace {

// of dimension lines from what they measure, on paper
constexpr double first_line_mm = 9;
constexpr double next_line_mm = 8;
constexpr double thickness_line_mm = 5.5;
constexpr double bit_beyond_mm = 9;
constexpr double break_mm = 1.2;  ///< the zigzag where a part is broken off

/// Draws one section.
class SectionView {
 public:
  SectionView(DrawnSheet& sheet, const SectionPlace& place, const View& view)
      : sheet_(sheet),
        page_(sheet.page),
        place_(place),
        section_(lap_section(sheet.job, place)),
        view_(view) {}

  void draw_parts() {
    page_.fill(
        area(section_.hull, section_.lip, section_.bond_from_mm, section_.bond_to_mm),
        shade::light);
    draw_laminate(section_.hull_inner, section_.hull, 0,
                  section_hull_share * section_.lap_mm, 45);
    draw_laminate(section_.lip, section_.lip_outer,
                  -section_lip_share * section_.lap_mm, section_.lap_mm, -45);
    draw_break(section_.hull_inner, section_.hull,
               section_hull_share * section_.lap_mm);
    draw_break(section_.lip, section_.lip_outer, -section_lip_share * section_.lap_mm);
  }

  void draw_bit() {
    const FastenerSpec& spec = sheet_.job.schedule->fastener;
    if (place_.hole != nullptr) {
      draw_bore(section_.entry, section_.at_lip, spec.lip_hole);
      draw_bore(section_.at_hull, section_.at_inner,
                spec.hull_pilot.value_or(spec.lip_hole));
    }
    const Vector2 way = on_paper(section_.bit);
    page_.line(at(section_.entry) - way * bit_beyond_mm,
               at(section_.at_inner) + way * bit_beyond_mm,
               {line_width::thin, Dash::Chain});
  }

  void draw_dimensions() {
    draw_outboard();
    draw_inboard();
    draw_thicknesses();
    if (section_.gap) draw_gap();
  }

 private:
  Point2 at(const Point2& point) const { return view_.on_sheet(point); }
  Point2 at(const SectionEdge& edge, double depth_mm) const {
    return at(section_.on(edge, depth_mm));
  }
  /// A direction of the section, on the sheet.
  static Vector2 on_paper(const Vector2& way) { return {way.x(), -way.y()}; }
  double paper_mm(double boat_mm) const { return boat_mm * view_.up; }
  std::string span(double boat_mm) const {
    return sheet_.style.span(Length::mm(boat_mm));
  }

  std::vector<Point2> area(const SectionEdge& inner,
                           const SectionEdge& outer,
                           double from_mm,
                           double to_mm) const {
    return {at(inner, from_mm), at(outer, from_mm), at(outer, to_mm), at(inner, to_mm)};
  }

  void draw_laminate(const SectionEdge& inner,
                     const SectionEdge& outer,
                     double from_mm,
                     double to_mm,
                     double turn_degrees) {
    const auto outline = area(inner, outer, from_mm, to_mm);
    page_.fill(outline, shade::white);
    page_.hatch(outline, {.spacing_mm = 1.8, .turn_degrees = turn_degrees});
    page_.polygon(outline, {line_width::thick, Dash::Solid});
  }

  /// Where a part is broken off, in place of its end.
  void draw_break(const SectionEdge& inner, const SectionEdge& outer, double depth_mm) {
    const Point2 start = at(inner, depth_mm), stop = at(outer, depth_mm);
    const Vector2 way = (stop - start).normalized();
    page_.line(start, stop, {line_width::heavy, Dash::Solid});  // to be covered
    std::vector<Point2> cover{start - way * break_mm, stop + way * break_mm};
    const Vector2 aside(0, break_mm / 2);
    page_.fill({cover[0] - aside, cover[1] - aside, cover[1] + aside, cover[0] + aside},
               shade::white);
    const Point2 middle = (start + stop) / 2;
    page_.polyline({cover[0], middle - way * break_mm, middle - aside * 2 - way * 0.4,
                    middle + aside * 2 + way * 0.4, middle + way * break_mm, cover[1]});
  }

  void draw_bore(const Point2& from, const Point2& to, Length diameter) {
    const Vector2 aside =
        Vector2(-section_.bit.y(), section_.bit.x()) * (diameter.in_mm() / 2);
    const Pen pen{line_width::medium, Dash::Solid};
    page_.fill({at(from + aside), at(to + aside), at(to - aside), at(from - aside)},
               shade::white);
    page_.line(at(from + aside), at(to + aside), pen);
    page_.line(at(from - aside), at(to - aside), pen);
  }

  /// The furthest outboard, or inboard, of what is drawn, on the sheet.
  double furthest_x(bool outboard) const {
    const SectionEdge& edge = outboard ? section_.lip_outer : section_.hull_inner;
    const double top = outboard ? -section_lip_share * section_.lap_mm : 0;
    const double low = section_.lap_mm * (outboard ? 1 : section_hull_share);
    const double ends[] = {at(edge, top).x(), at(edge, low).x()};
    return outboard ? std::max(ends[0], ends[1]) : std::min(ends[0], ends[1]);
  }

  void draw_outboard() {
    const double x = furthest_x(true) + first_line_mm;
    const Point2 sheer = at(section_.hull, 0);
    const Point2 low = at(section_.lip_outer, section_.lap_mm);
    // the sheer's level, which the depths are measured from
    page_.line(sheer + Vector2(0.8, 0), {x + 2 * next_line_mm, sheer.y()},
               {line_width::thin, Dash::DoubleChain});
    sheet_.labels.write(
        page_, {x + 2 * next_line_mm + 0.8, sheer.y()}, "sheer",
        {.height_mm = letter_height::least, .upright = Upright::Middle});
    const Point2 level(low.x(), sheer.y());
    draw_upright_dimension(
        page_,
        {at(section_.entry),
         {at(section_.entry).x(), sheer.y()},
         "drill line " + sheet_.style.size(Length::mm(-section_.entry.y()))},
        x);
    draw_upright_dimension(
        page_, {low, level, "lap " + sheet_.style.size(Length::mm(section_.lap_mm))},
        x + next_line_mm);
    const double up =
        (section_.entry - section_.on(section_.lip_outer, section_.lap_mm)).norm();
    draw_aligned_dimension(page_, {low, at(section_.entry), "edge " + span(up)},
                           -(x - at(section_.entry).x()));
  }

  void draw_inboard() {
    const Point2 top = section_.on(section_.hull, 0);
    const double edge = (section_.at_hull - top).norm();
    const double away = at(top).x() - furthest_x(false) + first_line_mm;
    draw_aligned_dimension(page_, {at(section_.at_hull), at(top), "edge " + span(edge)},
                           away);
  }

  /// The other side of a laminate from a point of one edge, square to it.
  Point2 across(const SectionEdge& edge, double depth_mm, double thickness_mm) const {
    const Vector2 down = section_.on(edge, section_.lap_mm) - section_.on(edge, 0);
    const Vector2 outboard = Vector2(-down.y(), down.x()).normalized();
    return section_.on(edge, depth_mm) + outboard * thickness_mm;
  }

  void draw_thicknesses() {
    const Laminate &hull = sheet_.job.joint.hull, &lip = sheet_.job.joint.lip;
    const double depth = section_hull_share * section_.lap_mm;
    draw_aligned_dimension(
        page_,
        {at(across(section_.hull, depth, -hull.thickness.in_mm())),
         at(section_.hull, depth), "hull " + sheet_.style.size(hull.thickness)},
        -thickness_line_mm);
    draw_aligned_dimension(
        page_,
        {at(section_.lip, -section_lip_share * section_.lap_mm),
         at(across(section_.lip, -section_lip_share * section_.lap_mm,
                   lip.thickness.in_mm())),
         "lip " + sheet_.style.size(lip.thickness)},
        thickness_line_mm);
  }

  void draw_gap() {
    const auto& [start, stop] = *section_.gap;
    const double depth = -start.y();
    const bool over = depth < section_.lap_mm / 2;
    const double away = over ? paper_mm(depth + section_lip_share * section_.lap_mm) +
                                   thickness_line_mm + next_line_mm
                             : -paper_mm(section_.lap_mm - depth) - thickness_line_mm;
    const Point2 from = at(start), to = at(stop);
    if ((to - from).norm() < 1e-6) return;
    draw_aligned_dimension(
        page_, {from, to, "gap " + sheet_.style.gap(place_.gap->gap)}, away);
  }

  DrawnSheet& sheet_;
  Page& page_;
  const SectionPlace& place_;
  LapSection section_;
  const View& view_;
};

}  // namespace

void draw_section(DrawnSheet& sheet, const SectionPlace& place, const View& view) {
  SectionView drawn(sheet, place, view);
  drawn.draw_parts();
  drawn.draw_bit();
  drawn.draw_dimensions();
}

}  // namespace sheerlap

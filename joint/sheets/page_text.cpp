#include <algorithm>
#include <cmath>
#include <functional>
#include <iterator>
#include <numbers>

#include "joint/documents/printable.h"
#include "joint/sheets/canvas.h"
#include "joint/sheets/page.h"

namespace sheerlap {
namespace {

/// Ground that is cleared around words, mm.
constexpr double clear_margin_mm = 0.5;
/// Fitted words are this much narrower than their room: a font's size is rounded.
constexpr double fitting = 0.998;
/// Words that are no wider than their room but for this are not cut.
constexpr double rounding_mm = 0.01;

double width_mm(PangoLayout* layout) {
  PangoRectangle logical;
  pango_layout_get_extents(layout, nullptr, &logical);
  return layout_mm(logical.width);
}

double share_across(Across across) {
  switch (across) {
    case Across::Left:
      return 0;
    case Across::Centre:
      return 0.5;
    case Across::Right:
      return 1;
  }
  return 0;
}

/// How far the baseline lies below the point that is given, in heights of capitals.
double share_upright(Upright upright) {
  switch (upright) {
    case Upright::Top:
      return 1;
    case Upright::Middle:
      return 0.5;
    case Upright::Baseline:
      return 0;
  }
  return 0;
}

PangoAlignment alignment(Across across) {
  switch (across) {
    case Across::Left:
      return PANGO_ALIGN_LEFT;
    case Across::Centre:
      return PANGO_ALIGN_CENTER;
    case Across::Right:
      return PANGO_ALIGN_RIGHT;
  }
  return PANGO_ALIGN_LEFT;
}

void clear_ground(cairo_t* cairo, double width, double height) {
  cairo_set_source_rgb(cairo, shade::white, shade::white, shade::white);
  cairo_new_path(cairo);
  cairo_rectangle(cairo, -clear_margin_mm, -height - clear_margin_mm,
                  width + 2 * clear_margin_mm, height + 2 * clear_margin_mm);
  cairo_fill(cairo);
}

/// Draws one line of words of which the given point is the one `lettering` says.
void show(const Canvas& canvas,
          PangoLayout* layout,
          const Point2& at,
          const Lettering& lettering) {
  cairo_t* cairo = canvas.cairo.get();
  const double width = width_mm(layout);
  cairo_save(cairo);
  cairo_translate(cairo, at.x(), at.y());
  cairo_rotate(cairo, -lettering.turn_degrees * std::numbers::pi / 180);
  cairo_translate(cairo, -width * share_across(lettering.across),
                  lettering.height_mm * share_upright(lettering.upright));
  if (lettering.clears_ground) clear_ground(cairo, width, lettering.height_mm);
  cairo_set_source_rgb(cairo, lettering.ink, lettering.ink, lettering.ink);
  cairo_move_to(cairo, 0, -layout_mm(pango_layout_get_baseline(layout)));
  pango_cairo_show_layout(cairo, layout);
  cairo_restore(cairo);
}

/// Whether a byte starts a character of UTF-8.
bool starts_character(char byte) {
  return (static_cast<unsigned char>(byte) & 0xC0U) != 0x80U;
}

/// As much of the words' beginning as fits with an ellipsis behind it; all of them if
/// they fit. What is left out is not in the file either.
///
/// @param fits  true of a text if it is of every shorter one
std::string cut_short(const std::string& words,
                      const std::function<bool(const std::string&)>& fits) {
  if (fits(words)) return words;
  std::vector<std::size_t> ends;
  for (std::size_t at = 0; at < words.size(); ++at)
    if (starts_character(words[at])) ends.push_back(at);
  const auto cut = [&](std::size_t end) {
    return words.substr(0, end) + "\xE2\x80\xA6";
  };
  const auto too_long = std::partition_point(
      ends.begin(), ends.end(), [&](std::size_t end) { return fits(cut(end)); });
  return cut(too_long == ends.begin() ? 0 : *std::prev(too_long));
}

/// Words on lines of a fixed pitch.
class Lines {
 public:
  Lines(const Canvas& canvas,
        const std::string& words,
        double width_mm,
        const Lettering& lettering)
      : layout_(canvas.layout(words, lettering)),
        pitch_mm_(line_pitch * lettering.height_mm) {
    pango_layout_set_width(layout_.get(), layout_units(width_mm));
    pango_layout_set_alignment(layout_.get(), alignment(lettering.across));
  }

  int count() const { return pango_layout_get_line_count(layout_.get()); }
  double height_mm() const { return pitch_mm_ * count(); }

  /// @param at  on the top of the first line's capitals
  void show(const Canvas& canvas,
            const Point2& at,
            double width_mm,
            const Lettering& lettering) const {
    cairo_t* cairo = canvas.cairo.get();
    cairo_set_source_rgb(cairo, lettering.ink, lettering.ink, lettering.ink);
    const double left = at.x() - width_mm * share_across(lettering.across);
    double baseline = at.y() + lettering.height_mm;
    const std::unique_ptr<PangoLayoutIter, Released<pango_layout_iter_free>> each(
        pango_layout_get_iter(layout_.get()));
    do {
      PangoRectangle logical;
      pango_layout_iter_get_line_extents(each.get(), nullptr, &logical);
      cairo_move_to(cairo, left + layout_mm(logical.x), baseline);
      pango_cairo_show_layout_line(cairo,
                                   pango_layout_iter_get_line_readonly(each.get()));
      baseline += pitch_mm_;
    } while (pango_layout_iter_next_line(each.get()));
  }

 private:
  TextLayout layout_;
  double pitch_mm_;
};

}  // namespace

void Page::text(const Point2& at,
                const std::string& words,
                const Lettering& lettering) {
  show(canvas_, canvas_.layout(words, lettering).get(), at, lettering);
}

void Page::fitted(const Point2& at,
                  const std::string& words,
                  double width_mm,
                  const Lettering& lettering) {
  Lettering smaller = lettering;
  const double natural = width_of(words, lettering);
  if (natural > width_mm + rounding_mm)
    smaller.height_mm = std::max(lettering.height_mm * fitting * width_mm / natural,
                                 std::min(letter_height::least, lettering.height_mm));
  text(at,
       cut_short(printable(words),
                 [&](const std::string& part) {
                   return width_of(part, smaller) <= width_mm + rounding_mm;
                 }),
       smaller);
}

void Page::fitted_lines(const Point2& at,
                        const std::string& words,
                        double width_mm,
                        int lines,
                        const Lettering& lettering) {
  if (width_of(words, lettering) <= width_mm + rounding_mm) {
    text(at, words, lettering);
    return;
  }
  Lettering smallest = lettering;
  smallest.height_mm = std::min(letter_height::least, lettering.height_mm);
  paragraph(at,
            cut_short(printable(words),
                      [&](const std::string& part) {
                        return Lines(canvas_, part, width_mm, smallest).count() <=
                               lines;
                      }),
            width_mm, smallest);
}

double Page::paragraph(const Point2& at,
                       const std::string& words,
                       double width_mm,
                       const Lettering& lettering) {
  const Lines lines(canvas_, words, width_mm, lettering);
  lines.show(canvas_, at, width_mm, lettering);
  return lines.height_mm();
}

double Page::width_of(const std::string& words, const Lettering& lettering) {
  return width_mm(canvas_.layout(words, lettering).get());
}

double Page::paragraph_height(const std::string& words,
                              double width_mm,
                              const Lettering& lettering) {
  return Lines(canvas_, words, width_mm, lettering).height_mm();
}

}  // namespace sheerlap

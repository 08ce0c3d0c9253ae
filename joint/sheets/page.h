#pragma once

#include <functional>
#include <string>
#include <vector>

#include "geometry/points.h"
#include "geometry/quantity.h"
#include "joint/sheets/box.h"
#include "joint/sheets/page_size.h"
#include "joint/sheets/pen.h"

namespace sheerlap {

struct Canvas;

/// A sheet of paper that is drawn on, true to size.
///
/// Positions and lengths are mm on the paper, from its top left corner, x to the right
/// and y down; black on white. Words are made printable, and set in DejaVu Sans.
class Page {
 public:
  /// @param canvas  outlives the page
  Page(Canvas& canvas, PageSize size) : canvas_(canvas), size_(size) {}

  PageSize size() const { return size_; }

  void line(const Point2& from, const Point2& to, const Pen& pen = {});
  void polyline(const std::vector<Point2>& points, const Pen& pen = {});
  void polygon(const std::vector<Point2>& points, const Pen& pen = {});
  void box(const Box& box, const Pen& pen = {}) { polygon(box.corners(), pen); }
  void circle(const Point2& centre, double radius_mm, const Pen& pen = {});
  /// An arc, drawn counter-clockwise as seen; angles counter-clockwise from the right.
  void arc(const Point2& centre,
           double radius_mm,
           Angle from,
           Angle to,
           const Pen& pen = {});
  /// An area filled with a shade of grey, without an outline.
  void fill(const std::vector<Point2>& points, double grey = shade::black);
  void disc(const Point2& centre, double radius_mm, double grey = shade::black);
  /// An area filled with parallel lines, without an outline.
  void hatch(const std::vector<Point2>& points,
             const Hatch& hatch = {},
             const Pen& pen = {});
  /// A line with a filled head at `to`.
  void arrow(const Point2& from, const Point2& to, const Pen& pen = {});
  /// The head alone, its tip at `tip`, pointing the way of `direction`.
  void arrow_head(const Point2& tip, const Vector2& direction);
  /// Draws with everything outside of the box left out.
  void inside(const Box& box, const std::function<void()>& draw);

  /// One line of words.
  void text(const Point2& at,
            const std::string& words,
            const Lettering& lettering = {});
  /// One line of words no wider than `width_mm`: written smaller where it has to be,
  /// and where that is not enough cut short with an ellipsis.
  void fitted(const Point2& at,
              const std::string& words,
              double width_mm,
              const Lettering& lettering = {});
  /// The same on up to `lines` lines, where they do not go on one: these start at `at`
  /// with their tops, whatever `lettering.upright` says.
  void fitted_lines(const Point2& at,
                    const std::string& words,
                    double width_mm,
                    int lines,
                    const Lettering& lettering = {});
  /// Words on as many lines as they need, none wider than `width_mm`; a longer word is
  /// broken. `at` is on the top of the first line's capitals; `lettering.across` says
  /// which end of `width_mm` it is.
  /// @returns  the height taken: from the top of the first line's capitals to where
  ///           those of one line more would start
  double paragraph(const Point2& at,
                   const std::string& words,
                   double width_mm,
                   const Lettering& lettering = {});

  /// The width of one line of words.
  double width_of(const std::string& words, const Lettering& lettering = {});
  /// What `paragraph` would return.
  double paragraph_height(const std::string& words,
                          double width_mm,
                          const Lettering& lettering = {});

 private:
  Canvas& canvas_;
  PageSize size_;
};

}  // namespace sheerlap

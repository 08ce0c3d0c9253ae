#pragma once

#include <cairo.h>
#include <pango/pangocairo.h>

#include <memory>
#include <string>

#include "joint/sheets/pen.h"

namespace sheerlap {

template <auto release>
struct Released {
  template <class T>
  void operator()(T* held) const {
    release(held);
  }
};
using CairoContext = std::unique_ptr<cairo_t, Released<cairo_destroy>>;
using CairoSurface = std::unique_ptr<cairo_surface_t, Released<cairo_surface_destroy>>;
using TextContext = std::unique_ptr<PangoContext, Released<g_object_unref>>;
using TextLayout = std::unique_ptr<PangoLayout, Released<g_object_unref>>;

/// What pages are drawn with: a cairo context whose unit is the mm, and the words'
/// context to go with it.
///
/// Nothing is rounded to a grid of pixels: hinting, hinted metrics and rounded glyph
/// positions are off, so that a word is as wide in a file as it was measured.
struct Canvas {
  explicit Canvas(cairo_surface_t* surface);

  /// Words set out, not yet drawn.
  TextLayout layout(const std::string& words, const Lettering& lettering) const;
  /// Whether the font that is asked for is there.
  bool has_font() const;

  CairoContext cairo;
  TextContext words;
  double em_of_capital = 1;  ///< the font's size for capitals 1 mm high
};

/// Lengths of a layout, whose unit is a small part of the mm.
inline double layout_mm(int units) { return static_cast<double>(units) / PANGO_SCALE; }
inline int layout_units(double mm) { return pango_units_from_double(mm); }

}  // namespace sheerlap

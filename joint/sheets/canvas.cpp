#include "joint/sheets/canvas.h"

#include <cassert>
#include <string_view>

#include "joint/documents/printable.h"

namespace sheerlap {
namespace {

constexpr const char* font_family = "DejaVu Sans";
constexpr double points_in_mm = 72 / 25.4;

using FontDescription =
    std::unique_ptr<PangoFontDescription, Released<pango_font_description_free>>;
using FontOptions =
    std::unique_ptr<cairo_font_options_t, Released<cairo_font_options_destroy>>;

FontDescription font(double em_mm, bool bold) {
  FontDescription description(pango_font_description_new());
  pango_font_description_set_family(description.get(), font_family);
  pango_font_description_set_weight(description.get(),
                                    bold ? PANGO_WEIGHT_BOLD : PANGO_WEIGHT_NORMAL);
  pango_font_description_set_absolute_size(description.get(), em_mm * PANGO_SCALE);
  return description;
}

TextContext text_context() {
  TextContext context(
      pango_font_map_create_context(pango_cairo_font_map_get_default()));
  const FontOptions options(cairo_font_options_create());
  cairo_font_options_set_antialias(options.get(), CAIRO_ANTIALIAS_GRAY);
  cairo_font_options_set_hint_style(options.get(), CAIRO_HINT_STYLE_NONE);
  cairo_font_options_set_hint_metrics(options.get(), CAIRO_HINT_METRICS_OFF);
  pango_cairo_context_set_font_options(context.get(), options.get());
  pango_context_set_round_glyph_positions(context.get(), FALSE);
  // not what the machine's settings say
  pango_context_set_language(context.get(), pango_language_from_string("en"));
  return context;
}

/// The size of the font, for capitals of a height of 1, by its own outlines.
double measured_em(const Canvas& canvas) {
  constexpr double height_mm = 100;
  const TextLayout letter = canvas.layout("H", {.height_mm = height_mm});
  PangoRectangle ink;
  pango_layout_get_extents(letter.get(), &ink, nullptr);
  assert(ink.height > 0);
  return height_mm / layout_mm(ink.height);
}

}  // namespace

Canvas::Canvas(cairo_surface_t* surface)
    : cairo(cairo_create(surface)), words(text_context()) {
  cairo_scale(cairo.get(), points_in_mm, points_in_mm);
  // arcs keep within this of round, in points: patterns are cut to
  cairo_set_tolerance(cairo.get(), 0.01);
  cairo_set_source_rgb(cairo.get(), shade::black, shade::black, shade::black);
  pango_cairo_update_context(cairo.get(), words.get());
  em_of_capital = measured_em(*this);
}

TextLayout Canvas::layout(const std::string& text, const Lettering& lettering) const {
  TextLayout made(pango_layout_new(words.get()));
  const FontDescription description =
      font(lettering.height_mm * em_of_capital, lettering.bold);
  pango_layout_set_font_description(made.get(), description.get());
  const std::string safe = printable(text);
  pango_layout_set_text(made.get(), safe.data(), static_cast<int>(safe.size()));
  pango_layout_set_wrap(made.get(), PANGO_WRAP_WORD_CHAR);
  pango_layout_set_auto_dir(made.get(), FALSE);
  return made;
}

bool Canvas::has_font() const {
  const FontDescription asked = font(1, false);
  const std::unique_ptr<PangoFont, Released<g_object_unref>> loaded(
      pango_context_load_font(words.get(), asked.get()));
  if (!loaded) return false;
  const FontDescription found(pango_font_describe(loaded.get()));
  const char* family = pango_font_description_get_family(found.get());
  return family != nullptr && std::string_view(family) == font_family;
}

}  // namespace sheerlap

#pragma once

namespace sheerlap {

/// The parts of the page that are the same for every joint. What needs the script is
/// marked `scripted` and hidden without it.
extern const char* const page_links;
extern const char* const hull_controls;
extern const char* const plan_words;
extern const char* const plan_legend;
extern const char* const chart_words;
/// With {} for the name of the unit.
extern const char* const hole_panel;
extern const char* const filter_start;   ///< up to the options of the sides
extern const char* const filter_middle;  ///< up to the options of the jigs
extern const char* const filter_end;
extern const char* const chosen_bar;

}  // namespace sheerlap

#pragma once

namespace sheerlap {

/// The parts of the page that are the same for every joint. What needs the script is
/// marked `scripted` and hidden without it.
/// With {} for the links to parts that not every joint has.
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
extern const char* const strength_link;
extern const char* const boats_link;
extern const char* const strength_start;  ///< the section's head
extern const char* const strength_hint;
extern const char* const use_legend;
/// Up to the table of the holes, with {} for the name of the unit.
extern const char* const use_table_words;
/// Up to the rows of the rules, with {} for the name of the unit.
extern const char* const rules_words;
extern const char* const reasons_words;  ///< its div is left open

}  // namespace sheerlap

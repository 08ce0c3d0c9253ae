#pragma once

#include <string_view>

namespace sheerlap {

/// The page's style and its scripts, in the order they are to run in, as they stand in
/// the files beside this one.
extern const std::string_view joint_page_css;
extern const std::string_view joint_page_record_js;
extern const std::string_view joint_page_section_js;
extern const std::string_view joint_page_choice_js;
extern const std::string_view joint_page_reading_js;
extern const std::string_view joint_page_filter_js;
extern const std::string_view joint_page_controls_js;
extern const std::string_view joint_page_strength_css;
extern const std::string_view joint_page_boats_css;
extern const std::string_view joint_page_strength_js;

}  // namespace sheerlap

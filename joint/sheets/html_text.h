#pragma once

#include <string>

#include "joint/documents/json_parts.h"

namespace sheerlap {

/// Text made safe to stand in a page, between tags or in a quoted attribute: made
/// printable, and what HTML reads as markup replaced by references.
std::string html_text(const std::string& text);

/// Text as a string of a style sheet, with its quotes: made printable, and all but
/// letters, digits and blanks escaped, so that nothing in it can end the string or the
/// style element.
std::string css_string(const std::string& text);

/// A JSON value made safe to stand in a script element of a page, on one line: no
/// text in it can end the element or open a comment. Bad bytes of text that is not
/// UTF-8 are replaced.
std::string script_json(const Json& value);

}  // namespace sheerlap

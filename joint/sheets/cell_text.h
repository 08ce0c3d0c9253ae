#pragma once

#include <cstddef>
#include <string>

namespace sheerlap {

/// User's text made safe for a cell: printable, so that XML takes it, no longer than
/// `most` characters, with "..." where it was cut.
///
/// It is a text whatever it starts with, as long as it is written as one.
/// @source  Extensible Markup Language (XML) 1.0, production [2] Char
std::string cell_text(const std::string& text, std::size_t most = 500);

/// The same for the head or foot of a page, where & starts a code.
std::string margin_text(const std::string& text, std::size_t most = 80);

}  // namespace sheerlap

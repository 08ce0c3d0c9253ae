#include "joint/sheets/html_text.h"

#include <fmt/format.h>

#include "joint/documents/printable.h"

namespace sheerlap {

std::string html_text(const std::string& text) {
  std::string safe;
  for (const char letter : printable(text)) {
    switch (letter) {
      case '&':
        safe += "&amp;";
        break;
      case '<':
        safe += "&lt;";
        break;
      case '>':
        safe += "&gt;";
        break;
      case '"':
        safe += "&quot;";
        break;
      case '\'':
        safe += "&#39;";
        break;
      default:
        safe += letter;
    }
  }
  return safe;
}

std::string css_string(const std::string& text) {
  std::string safe = "\"";
  for (const char letter : printable(text)) {
    const auto byte = static_cast<unsigned char>(letter);
    const bool plain =
        byte >= 0x80 || letter == ' ' || (letter >= '0' && letter <= '9') ||
        (letter >= 'A' && letter <= 'Z') || (letter >= 'a' && letter <= 'z');
    safe += plain ? std::string(1, letter) : fmt::format("\\{:x} ", byte);
  }
  return safe + "\"";
}

std::string script_json(const Json& value) {
  std::string safe;
  for (const char letter : value.dump(-1, ' ', false, Json::error_handler_t::replace)) {
    // "<" stands in strings only: outside them JSON has no use for it
    if (letter == '<')
      safe += "\\u003c";
    else
      safe += letter;
  }
  return safe;
}

}  // namespace sheerlap

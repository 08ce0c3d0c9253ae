#include "joint/sheets/cell_text.h"

#include "joint/documents/printable.h"

namespace sheerlap {
namespace {

std::string replaced(std::string text,
                     const std::string& what,
                     const std::string& with) {
  for (std::size_t at = text.find(what); at != std::string::npos;
       at = text.find(what, at + with.size()))
    text.replace(at, what.size(), with);
  return text;
}

bool starts_character(char byte) {
  return (static_cast<unsigned char>(byte) & 0xC0U) != 0x80U;
}

/// The first `most` characters of UTF-8 text.
std::string shortened(const std::string& text, std::size_t most) {
  std::size_t count = 0;
  for (std::size_t at = 0; at < text.size(); ++at)
    if (starts_character(text[at]) && ++count > most) return text.substr(0, at) + "...";
  return text;
}

}  // namespace

std::string cell_text(const std::string& text, std::size_t most) {
  return shortened(printable(text), most);
}

std::string margin_text(const std::string& text, std::size_t most) {
  return replaced(cell_text(text, most), "&", "&&");
}

}  // namespace sheerlap

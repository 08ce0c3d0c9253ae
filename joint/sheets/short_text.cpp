#include "joint/sheets/short_text.h"

#include "joint/documents/printable.h"
#include "joint/documents/text_table.h"

namespace sheerlap {

std::string short_text(const std::string& text, std::size_t count) {
  std::string shown = printable(text);
  if (width_of(shown) <= count) return shown;
  const auto continues = [](char byte) { return (byte & 0xC0) == 0x80; };
  while (width_of(shown) >= count) {
    while (continues(shown.back())) shown.pop_back();
    shown.pop_back();
  }
  return shown + "…";
}

}  // namespace sheerlap

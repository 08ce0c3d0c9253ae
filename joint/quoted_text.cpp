#include "joint/quoted_text.h"

#include <fmt/format.h>

namespace sheerlap {
namespace {

constexpr std::size_t longest_shown = 40;

bool starts_character(char byte) {
  return (static_cast<unsigned char>(byte) & 0xC0) != 0x80;
}

}  // namespace

std::string quoted_text(std::string_view text) {
  std::string shown = "\"";
  std::size_t characters = 0;
  for (const char byte : text) {
    if (starts_character(byte) && ++characters > longest_shown) {
      shown += "...";
      break;
    }
    const auto code = static_cast<unsigned char>(byte);
    if (code < 0x20 || code == 0x7F)
      shown += fmt::format("\\x{:02x}", code);
    else
      shown += byte;
  }
  return shown + "\"";
}

}  // namespace sheerlap

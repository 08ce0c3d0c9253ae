#include "joint/documents/printable.h"

#include <cstdint>

namespace sheerlap {
namespace {

std::uint8_t byte_at(const std::string& text, std::size_t at) {
  return at < text.size() ? static_cast<std::uint8_t>(text[at]) : 0;
}

bool continues(std::uint8_t byte) { return (byte & 0xC0U) == 0x80U; }

/// The bytes of the UTF-8 character that starts at `at`; 0 if none does.
/// @source  RFC 3629, section 4 (syntax of UTF-8 byte sequences)
std::size_t character_bytes(const std::string& text, std::size_t at) {
  const std::uint8_t first = byte_at(text, at);
  const std::uint8_t second = byte_at(text, at + 1);
  if (first < 0x80) return 1;
  if (first < 0xC2 || first > 0xF4 || !continues(second)) return 0;
  if (first < 0xE0) return 2;
  if ((first == 0xE0 && second < 0xA0) || (first == 0xED && second > 0x9F)) return 0;
  if ((first == 0xF0 && second < 0x90) || (first == 0xF4 && second > 0x8F)) return 0;
  if (!continues(byte_at(text, at + 2))) return 0;
  if (first < 0xF0) return 3;
  return continues(byte_at(text, at + 3)) ? 4 : 0;
}

/// Whether a character steers a terminal: C0, delete, and C1 as UTF-8.
bool steers(const std::string& text, std::size_t at, std::size_t bytes) {
  const std::uint8_t first = byte_at(text, at);
  if (bytes == 1) return first < 0x20 || first == 0x7F;
  return bytes == 2 && first == 0xC2 && byte_at(text, at + 1) < 0xA0;
}

/// Whether a character is one of the 66 that stand for none: programs that read XML or
/// draw text refuse them.
/// @source  The Unicode Standard, section 23.7: U+FDD0 to U+FDEF, and the last two of
///          every plane
bool is_noncharacter(const std::string& text, std::size_t at, std::size_t bytes) {
  const std::uint8_t second = byte_at(text, at + 1);
  const std::uint8_t third = byte_at(text, at + 2);
  const bool ends_plane = byte_at(text, at + bytes - 1) >= 0xBE;
  if (bytes == 3 && byte_at(text, at) == 0xEF)
    return (second == 0xB7 && third >= 0x90 && third <= 0xAF) ||
           (second == 0xBF && ends_plane);
  return bytes == 4 && (second & 0x0FU) == 0x0F && third == 0xBF && ends_plane;
}

}  // namespace

std::string printable(const std::string& text) {
  std::string result;
  std::size_t at = 0;
  while (at < text.size()) {
    const std::size_t bytes = character_bytes(text, at);
    if (bytes == 0 || is_noncharacter(text, at, bytes))
      result += '?';
    else if (steers(text, at, bytes))
      result += ' ';
    else
      result += text.substr(at, bytes);
    at += bytes == 0 ? 1 : bytes;
  }
  return result;
}

}  // namespace sheerlap

#include "joint/documents/boat_words.h"

#include <fmt/format.h>

#include <cassert>
#include <cmath>
#include <utility>

#include "joint/perimeter.h"

namespace sheerlap {
namespace {

/// "no hole in it", "hole S12" or "holes S12-S14".
std::string holes_words(const std::string& marks) {
  if (marks.empty()) return "no hole in it";
  return (marks.find_first_of("-,") == std::string::npos ? "hole " : "holes ") + marks;
}

/// "starboard, girth 1240 to 1530, holes S12-S14".
std::string where_words(const NonConformance& out, const NumberStyle& style) {
  const std::string from = style.running(out.from);
  const std::string to = style.running(out.to);
  return fmt::format("{}, girth {}{}, {}", side_word(out.side), from,
                     from == to ? "" : " to " + to, holes_words(out.marks));
}

std::string known_words(Known known) {
  switch (known) {
    case Known::Read:
      return "";
    case Known::Held:
      return ", where nothing was read and the nearest difference is held";
    case Known::Unread:
      return ", as drawn: nothing was read on this side";
  }
  assert(false);
  return "";
}

/// @param way  "down" and "below", or "up" and "over"
std::string gap_out_words(const NonConformance& out,
                          const std::pair<const char*, const char*>& way,
                          const NumberStyle& style) {
  const std::string depth = out.depth == Length()
                                ? "at the hull's top edge"
                                : fmt::format("{} down", style.size(out.depth));
  return fmt::format("gap {} to {} at girth {}, {}: {} {} {}{}", way.first,
                     style.gap(out.value), style.running(out.at), depth,
                     style.gap(out_by(out)), way.second, style.size(out.limit),
                     known_words(out.known));
}

std::string what_words(const NonConformance& out, const NumberStyle& style) {
  switch (out.kind) {
    case OutKind::Tight:
      return gap_out_words(out, {"down", "below"}, style);
    case OutKind::Wide:
      return gap_out_words(out, {"up", "over"}, style);
    case OutKind::Step:
      return fmt::format(
          "neighbouring readings differ by {}, {} over {}, {}", style.gap(out.value),
          style.gap(out_by(out)), style.size(out.limit),
          out.depth == Length() ? "at the hull's top edge" : "at the lap's low edge");
    case OutKind::NoFastener:
      return fmt::format("no fastener in stock serves: {} needed, longest {}{}",
                         style.gap(out.value), style.size(out.limit),
                         known_words(out.known));
  }
  assert(false);
  return "";
}

std::string one_disposition(Disposition open,
                            const NonConformance& out,
                            ReadingState state,
                            const NumberStyle& style) {
  const std::string by = style.gap(out_by(out)) + " " + style.unit_name();
  switch (open) {
    case Disposition::Grind:
      return out.kind == OutKind::Tight ? fmt::format("grind off up to {}", by)
                                        : "grind the high place";
    case Disposition::BuildUp:
      return out.kind == OutKind::Wide ? fmt::format("shim or build up by up to {}", by)
                                       : "shim or build up the low place";
    case Disposition::LongerFastener:
      return out.kind == OutKind::NoFastener
                 ? fmt::format("get fasteners of {} {} or more", style.gap(out.value),
                               style.unit_name())
                 : "the other fastener lengths of this boat's schedule";
    case Disposition::SeatAgain:
      return "seat the lid in its best place (fit) and read again";
    case Disposition::ReadAgain:
      return out.kind == OutKind::Step ? "read both again" : "read it there";
    case Disposition::Ask:
      return state == ReadingState::After
                 ? "repair, reject, or ask whoever answers for the joint"
                 : "scrap, or ask whoever answers for the joint";
  }
  assert(false);
  return "";
}

}  // namespace

std::string word_of(Known known) {
  switch (known) {
    case Known::Read:
      return "read";
    case Known::Held:
      return "held";
    case Known::Unread:
      return "unread";
  }
  assert(false);
  return "";
}

std::string word_of(OutKind kind) {
  switch (kind) {
    case OutKind::Tight:
      return "tight";
    case OutKind::Wide:
      return "wide";
    case OutKind::Step:
      return "step";
    case OutKind::NoFastener:
      return "no fastener";
  }
  assert(false);
  return "";
}

std::string word_of(Disposition disposition) {
  switch (disposition) {
    case Disposition::Grind:
      return "grind";
    case Disposition::BuildUp:
      return "build up";
    case Disposition::LongerFastener:
      return "longer fastener";
    case Disposition::SeatAgain:
      return "seat again";
    case Disposition::ReadAgain:
      return "read again";
    case Disposition::Ask:
      return "ask";
  }
  assert(false);
  return "";
}

std::string name_of(const NonConformance& out) {
  return fmt::format("NC{}", out.number);
}

Length out_by(const NonConformance& out) {
  return Length::mm(std::abs((out.value - out.limit).in_mm()));
}

std::string boat_name(const Boat& boat) {
  const std::string state = "read " + state_word(boat.state);
  if (boat.file.empty()) return "one boat, " + state;
  return fmt::format("the boat of {}, {}", boat.file, state);
}

std::string out_words(const NonConformance& out, const NumberStyle& style) {
  return fmt::format("{}: {}", where_words(out, style), what_words(out, style));
}

std::string disposition_words(const NonConformance& out,
                              ReadingState state,
                              const NumberStyle& style) {
  std::string words;
  for (const Disposition open : out.open)
    words += (words.empty() ? "" : "; ") + one_disposition(open, out, state, style);
  return words;
}

}  // namespace sheerlap

#include "joint/documents/seating_words.h"

#include <fmt/format.h>

#include <algorithm>
#include <cstddef>

#include "joint/documents/wording.h"
#include "joint/perimeter.h"

namespace sheerlap {
namespace {

/// Whether a movement is more than nothing as it is printed.
bool shows(Length moved, const NumberStyle& style) {
  return style.span(moved) != style.span(Length()) &&
         style.span(-moved) != style.span(Length());
}

Length size_of(Length moved) { return moved < Length() ? -moved : moved; }

std::string moved_words(Length moved,
                        const char* positive,
                        const char* negative,
                        const NumberStyle& style) {
  return fmt::format("{} {} {}", style.span(size_of(moved)), style.unit_name(),
                     moved < Length() ? negative : positive);
}

std::string across_words(Length moved, const NumberStyle& style) {
  return moved_words(moved, "to starboard", "to port", style);
}

/// "a", "a and b" or "a, b and c".
std::string listed(const std::vector<std::string>& parts) {
  std::string text;
  for (std::size_t i = 0; i < parts.size(); ++i)
    text += (i == 0 ? "" : i + 1 == parts.size() ? " and " : ", ") + parts[i];
  return text;
}

/// "2.0 mm to port at the bow and 1.0 mm aft"; empty if the deck stays.
std::string move_words(const Seating& seating, const NumberStyle& style) {
  std::vector<std::string> parts;
  const bool turned = style.span(seating.at_bow) != style.span(seating.at_stern);
  if (turned) {
    if (shows(seating.at_bow, style))
      parts.push_back(across_words(seating.at_bow, style) + " at the bow");
    if (shows(seating.at_stern, style))
      parts.push_back(across_words(seating.at_stern, style) + " at the stern");
  } else if (shows(seating.dy, style)) {
    parts.push_back(across_words(seating.dy, style));
  }
  if (shows(seating.dx, style))
    parts.push_back(moved_words(seating.dx, "aft", "forward", style));
  return listed(parts);
}

/// "squeeze each side in by 6.2 mm at spreader 1 (X 2560)"; empty if nothing is forced.
std::string squeeze_words(const Seating& seating, const NumberStyle& style) {
  std::vector<std::string> in, out;
  for (std::size_t j = 0; j < seating.squeezes.size(); ++j) {
    const Squeeze& squeeze = seating.squeezes[j];
    if (!shows(squeeze.amount, style)) continue;
    (squeeze.amount < Length() ? out : in)
        .push_back(fmt::format("{} {} at spreader {} (X {})",
                               style.span(size_of(squeeze.amount)), style.unit_name(),
                               j + 1, style.size(squeeze.at)));
  }
  std::vector<std::string> parts;
  if (!in.empty()) parts.push_back("squeeze each side in by " + listed(in));
  if (!out.empty()) parts.push_back("spread each side out by " + listed(out));
  return listed(parts);
}

std::string worst_words(const Seating& seating, const NumberStyle& style) {
  const GapAt& worst = seating.worst;
  return fmt::format("{} {} on {} at girth {} along the sheer, {} deep",
                     style.gap(worst.gap), style.unit_name(), side_word(worst.side),
                     style.running(worst.girth), style.size_with_unit(worst.depth));
}

std::string margin_words(const Seating& seating, const NumberStyle& style) {
  return fmt::format("{} {} {} the window", style.gap(size_of(seating.margin)),
                     style.unit_name(), seating.fits() ? "inside" : "outside");
}

/// "gap 0.30 mm on starboard at girth 2310 along the sheer, 0 mm deep".
std::string place_words(const HoldingGap& gap, const NumberStyle& style) {
  return fmt::format("{} gap {} {} on {} at girth {} along the sheer, {} deep",
                     gap.tight ? "least" : "greatest", style.gap(gap.at.gap),
                     style.unit_name(), side_word(gap.at.side),
                     style.running(gap.at.girth), style.size_with_unit(gap.at.depth));
}

/// The gaps that no move betters together, the one that weighs most first.
std::string holding_words(const Seating& seating, const NumberStyle& style) {
  constexpr std::size_t most = 3;
  std::vector<HoldingGap> gaps = seating.contacts;
  std::stable_sort(gaps.begin(), gaps.end(),
                   [](const auto& a, const auto& b) { return a.price > b.price; });
  std::string text;
  for (std::size_t i = 0; i < std::min(most, gaps.size()); ++i)
    text += (i == 0 ? "" : "; ") + place_words(gaps[i], style);
  if (gaps.size() > most) text += fmt::format("; and {} more", gaps.size() - most);
  return text;
}

/// Whether a spreader does all that it may.
bool is_at_limit(const Squeeze& squeeze) {
  constexpr double close_mm = 1e-6;
  return size_of(squeeze.amount).in_mm() >= squeeze.most.in_mm() - close_mm;
}

/// What the spreaders could still do about it.
std::string spreader_words(const Seating& seating) {
  if (seating.squeezes.empty()) return "There is no spreader to squeeze the hull with.";
  std::vector<std::string> at_limit;
  for (std::size_t j = 0; j < seating.squeezes.size(); ++j)
    if (is_at_limit(seating.squeezes[j])) at_limit.push_back(fmt::format("{}", j + 1));
  if (at_limit.empty())
    return "No spreader is at its limit: more force would not mend it.";
  const bool one = at_limit.size() == 1;
  return fmt::format(
      "{} {}: {} may not be forced further.", one ? "Spreader" : "Spreaders",
      listed(at_limit) + (one ? " is at its limit" : " are at their limits"),
      one ? "it" : "they");
}

/// What to tell of a lid that fits nowhere: first not to lower it, then why, and only
/// then the best there is.
std::vector<std::string> steps_of_no_fit(const Job& job, const NumberStyle& style) {
  const Seating& seating = job.going_on->seating;
  std::vector<std::string> steps{
      fmt::format("Do not lower the lid: no seating fits, the best by {} {} outside "
                  "the gap window.",
                  style.gap(size_of(seating.margin)), style.unit_name())};
  steps.push_back(fmt::format("There it is worst: {}.", worst_words(seating, style)));
  if (!seating.contacts.empty())
    steps.push_back("What holds it: " + holding_words(seating, style) + ".");
  steps.push_back(spreader_words(seating));
  if (job.boat && !seating.squeezes.empty()) steps.back() += " " + limits_from(job);
  std::vector<std::string> best;
  if (const auto squeeze = squeeze_words(seating, style); !squeeze.empty())
    best.push_back(squeeze);
  if (const auto move = move_words(seating, style); !move.empty())
    best.push_back("move the deck " + move);
  steps.push_back("The best there is, to look at and not to glue: " +
                  (best.empty() ? "the deck where it is drawn" : listed(best)) + ".");
  return steps;
}

std::string lower_words(const Job& job, const NumberStyle& style) {
  const auto& seated = job.going_on->seated;
  const bool as_seated = seated && seated->seated.entry;
  const EntryPath& path = as_seated ? *seated->seated.entry : job.going_on->entry();
  const std::string hull = as_seated ? "the hull as it then stands" : hull_words(job);
  const bool clear = path.face.worst >= Length();
  const std::string way =
      job.joint.turned_entry
          ? fmt::format("Set the {} home first and turn the lid down from {} degrees",
                        word_of(job.joint.turned_entry->first),
                        at_most_decimals(job.joint.turned_entry->angle.in_degrees(), 2))
          : "Lower the lid straight down";
  if (clear)
    return fmt::format("{}: it clears {} by {} {} at the least.", way, hull,
                       style.gap(path.face.worst), style.unit_name());
  const std::string clash =
      fmt::format("{}: {} {} are in its way on {} at girth {} along the sheer", way,
                  style.gap(-path.face.worst), style.unit_name(),
                  side_word(path.face.side), style.running(path.face.girth));
  if (!path.squeeze) return clash + ", where no squeeze of the sides helps.";
  return fmt::format(
      "{}; squeeze each side in by {} {} there, on {}, until it is past.", clash,
      style.gap(*path.squeeze), style.unit_name(), hull);
}

}  // namespace

std::string hull_words(const Job& job) {
  return job.boat ? "the hull as it was read" : "the hull as moulded";
}

std::string limits_from(const Job& job) {
  if (!job.boat) return "";
  std::string text = "The limits of the spreaders count from the hull as it was read";
  if (job.boat->state == ReadingState::Held)
    text += ": what the spreaders already do is not in it";
  return text + ".";
}

std::vector<std::string> seating_steps(const Job& job, const NumberStyle& style) {
  const Seating& seating = job.going_on->seating;
  if (!seating.fits()) return steps_of_no_fit(job, style);
  std::vector<std::string> steps;
  const std::string squeeze = squeeze_words(seating, style);
  const std::string move = move_words(seating, style);
  if (!squeeze.empty()) steps.push_back(capitalised(squeeze) + ".");
  steps.push_back(lower_words(job, style));
  if (!move.empty()) steps.push_back("Move the deck " + move + ".");
  if (squeeze.empty() && move.empty())
    steps.push_back("Leave the deck where it is drawn: no move betters its worst gap.");
  else if (move.empty())
    steps.push_back("Leave the deck where it is drawn.");
  steps.push_back(fmt::format("Worst gap then {}: {}.", worst_words(seating, style),
                              margin_words(seating, style)));
  return steps;
}

std::string seating_in_short(const Job& job, const NumberStyle& style) {
  const Seating& seating = job.going_on->seating;
  std::string text;
  if (const std::string squeeze = squeeze_words(seating, style); !squeeze.empty())
    text += squeeze + "; ";
  if (const std::string move = move_words(seating, style); !move.empty())
    text += "move the deck " + move + "; ";
  if (text.empty()) text = "leave the deck where it is drawn; ";
  return fmt::format("{}{} {}, {}", text,
                     seating.fits() ? "worst gap then" : "no seating fits, worst gap",
                     worst_words(seating, style), margin_words(seating, style));
}

}  // namespace sheerlap

#include "joint/sheets/led_labels.h"

#include <algorithm>

namespace sheerlap {
namespace {

constexpr double around_mm = 0.4;
constexpr double half_leader_mm = 0.1;
/// Placings that are looked at before the best of them is taken.
constexpr std::size_t search_length = 20000;

/// One way to write a label.
struct Placing {
  Point2 at;
  Across across = Across::Centre;
  Box words;
  Box leader;
};

Lettering lettering(Across across) {
  return {.height_mm = letter_height::least, .across = across};
}

bool clash(const Placing& a, const Placing& b) {
  return a.words.overlaps(b.words) || a.words.overlaps(b.leader) ||
         a.leader.overlaps(b.words);
}

/// The ways to write a label that are clear of what is taken already.
std::vector<Placing> placings(Page& page,
                              const LabelSpace& space,
                              const LedLabel& label,
                              const LabelLines& lines) {
  std::vector<Placing> found;
  std::vector<double> feet{label.foot.x()};
  if (label.half_span_mm > 0)
    feet = {feet[0], feet[0] - label.half_span_mm, feet[0] + label.half_span_mm};
  for (const double y : lines.baselines_y)
    for (const double x : feet)
      for (const Across across : {Across::Centre, Across::Left, Across::Right}) {
        Placing placing{{x, y}, across, {}, {}};
        placing.words = text_box(page, placing.at, label.words, lettering(across))
                            .inset(-around_mm);
        const double top = y + lines.words_to_line_mm;
        placing.leader = {x - half_leader_mm, top, 2 * half_leader_mm,
                          std::max(label.foot.y() - top, 0.0)};
        if (space.is_free(placing.words) && space.is_free(placing.leader))
          found.push_back(placing);
      }
  return found;
}

/// Looks for the placing of all labels that leaves the fewest out.
class Search {
 public:
  explicit Search(std::vector<std::vector<Placing>> choices)
      : choices_(std::move(choices)), fewest_(choices_.size() + 1) {}

  std::vector<std::optional<Placing>> best() {
    go_on(0);
    return best_;
  }

 private:
  void go_on(std::size_t left_out) {
    const bool long_enough = tried_ >= search_length && !best_.empty();
    if (left_out >= fewest_ || long_enough) return;
    const std::size_t label = chosen_.size();
    if (label == choices_.size()) {
      fewest_ = left_out;
      best_ = chosen_;
      return;
    }
    for (const Placing& placing : choices_[label]) {
      ++tried_;
      const bool clear = std::none_of(
          chosen_.begin(), chosen_.end(),
          [&](const auto& other) { return other && clash(*other, placing); });
      if (!clear) continue;
      chosen_.emplace_back(placing);
      go_on(left_out);
      chosen_.pop_back();
    }
    chosen_.emplace_back(std::nullopt);
    go_on(left_out + 1);
    chosen_.pop_back();
  }

  std::vector<std::vector<Placing>> choices_;
  std::vector<std::optional<Placing>> chosen_, best_;
  std::size_t fewest_;
  std::size_t tried_ = 0;
};

/// The best placing of each group of labels that can be in each other's way.
///
/// @param choices  of labels in their order across the sheet
std::vector<std::optional<Placing>> best_of(
    const std::vector<std::vector<Placing>>& choices) {
  std::vector<std::optional<Placing>> best;
  std::vector<std::vector<Placing>> group;
  double right = 0;
  const auto settle = [&] {
    const auto found = Search(std::move(group)).best();
    best.insert(best.end(), found.begin(), found.end());
    group.clear();
  };
  for (const auto& choice : choices) {
    const bool apart =
        std::all_of(choice.begin(), choice.end(),
                    [&](const auto& placing) { return placing.words.left >= right; });
    if (apart && !group.empty()) settle();
    for (const Placing& placing : choice)
      right = std::max(right, placing.words.right());
    group.push_back(choice);
  }
  settle();
  return best;
}

}  // namespace

std::vector<std::string> write_led_labels(Page& page,
                                          LabelSpace& space,
                                          const std::vector<LedLabel>& labels,
                                          const LabelLines& lines) {
  std::vector<std::vector<Placing>> choices;
  choices.reserve(labels.size());
  for (const LedLabel& label : labels)
    choices.push_back(placings(page, space, label, lines));
  const auto best = best_of(choices);
  std::vector<std::string> left_out;
  for (std::size_t k = 0; k < labels.size(); ++k) {
    if (!best[k]) {
      left_out.push_back(labels[k].words);
      continue;
    }
    const Placing& placing = *best[k];
    page.text(placing.at, labels[k].words, lettering(placing.across));
    space.take(placing.words);
    if (placing.leader.height <= 0) continue;
    page.line({placing.at.x(), placing.leader.top},
              {placing.at.x(), labels[k].foot.y()});
    space.take(placing.leader);
  }
  return left_out;
}

}  // namespace sheerlap

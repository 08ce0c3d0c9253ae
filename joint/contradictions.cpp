#include "joint/contradictions.h"

#include <fmt/format.h>

#include <algorithm>
#include <string>
#include <string_view>
#include <utility>

#include "joint/fasteners.h"
#include "joint/published_rules.h"

namespace sheerlap {
namespace {

/// Which sides two choices have in common.
bool share_a_side(SideChoice a, SideChoice b) {
  if (a == b) return true;
  if (a == SideChoice::Transom || b == SideChoice::Transom) return false;
  return a == SideChoice::Both || b == SideChoice::Both;
}

bool same_stretch(const Stretch& a, const Stretch& b) {
  return share_a_side(a.side, b.side) && a.by_x == b.by_x && a.from == b.from &&
         a.to == b.to;
}

bool overlap(const Stretch& a, const Stretch& b) {
  return share_a_side(a.side, b.side) && a.by_x == b.by_x && a.from < b.to &&
         b.from < a.to;
}

/// The least that a pitch can be, where no table has a hole for the fastener.
constexpr Length least_hole = Length::mm(1);

bool same_place(const FixedPlace& a, const FixedPlace& b) {
  return share_a_side(a.side, b.side) && a.by_x == b.by_x && a.at == b.at;
}

class Finder {
 public:
  Finder(const Joint& joint, LengthUnit unit) : joint_(joint), unit_(unit) {}

  Errors find() {
    find_in_lap();
    if (joint_.adhesive) find_in_adhesive(*joint_.adhesive);
    if (joint_.fastener.box_price && !joint_.fastener.box)
      add("fastener.box_price",
          "a box has a price and no size: give box, the pieces in one");
    find_in_readings();
    find_in_layout();
    find_in_zones();
    find_in_overlaps();
    find_running_holes();
    find_in_stretches("opening", joint_.openings);
    find_in_stretches("zone", joint_.zones);
    find_in_stretches("keepout", joint_.keepouts);
    find_twice("place", joint_.places, same_place);
    if (joint_.loads) find_in_stretches("load", joint_.loads->stretches);
    find_in_strength();
    if (joint_.layout.by_strength && !joint_.loads)
      add("layout.pitch_max",
          "[layout] pitch_max is \"strength\" and the file has no [loads]: give the "
          "loads, or a length");
    return std::move(errors_);
  }

 private:
  void add(std::string where, std::string message) {
    errors_.push_back({ErrorKind::InvalidInput, std::move(where), std::move(message)});
  }

  std::string words(Length length) const { return length_words(length, unit_); }

  /// The row with the shallowest lap; null if there are no rows.
  const SheerRow* shallowest() const {
    const auto row = std::min_element(
        joint_.sheer.rows.begin(), joint_.sheer.rows.end(),
        [](const auto& a, const auto& b) { return a.offsets.lap < b.offsets.lap; });
    return row == joint_.sheer.rows.end() ? nullptr : &*row;
  }

  void find_in_lap() {
    const auto& [from, to] = joint_.bond;
    if (from && to && *from >= *to)
      add("lap.bond_to",
          fmt::format("[lap] bond_to is {} and bond_from {}: bond_to is the deeper",
                      words(*to), words(*from)));
    const SheerRow* row = shallowest();
    if (row == nullptr) return;
    const Length lap = row->offsets.lap;
    const std::string at = fmt::format(
        "the lap is {} deep{}", words(lap),
        row->station.empty() ? "" : fmt::format(" at station {}", row->station));
    if (joint_.fastener.line > lap)
      add("fastener.line",
          fmt::format("[fastener] line is at a depth of {} and {}: within the lap",
                      words(joint_.fastener.line), at));
    if (to && *to > lap)
      add("lap.bond_to",
          fmt::format("[lap] bond_to is {} and {}: within the lap", words(*to), at));
    if (from && !to && *from >= lap)
      add("lap.bond_from", fmt::format("[lap] bond_from is {} and {}: within the lap",
                                       words(*from), at));
  }

  void find_in_adhesive(const Adhesive& adhesive) {
    if (adhesive.gap_min >= adhesive.gap_max)
      add("adhesive.gap_max",
          fmt::format("[adhesive] gap_max is {} and gap_min {}: gap_max is the larger",
                      words(adhesive.gap_max), words(adhesive.gap_min)));
    if (adhesive.pack_usable > adhesive.pack)
      add("adhesive.pack_usable",
          fmt::format("[adhesive] pack_usable is {:.6g} ml and pack {:.6g} ml: no more "
                      "comes out than is in it",
                      adhesive.pack_usable.in_ml(), adhesive.pack.in_ml()));
    if (adhesive.nozzle_purge >= adhesive.pack_usable)
      add("adhesive.nozzle_purge",
          fmt::format("[adhesive] nozzle_purge is {:.6g} ml and pack_usable {:.6g} ml: "
                      "the purge leaves nothing to lay",
                      adhesive.nozzle_purge.in_ml(), adhesive.pack_usable.in_ml()));
  }

  /// Limits of readings, each in place of the adhesive's, that exclude each other.
  void find_in_readings() {
    const auto& [own_min, own_max, step] = joint_.reading_limits;
    const auto& adhesive = joint_.adhesive;
    if (!(own_min || own_max) || !((own_min && own_max) || adhesive)) return;
    const Length least = own_min ? *own_min : adhesive->gap_min;
    const Length most = own_max ? *own_max : adhesive->gap_max;
    const auto whose = [](bool own) { return own ? "" : " (from [adhesive])"; };
    if (least >= most)
      add(own_max ? "readings.gap_max" : "readings.gap_min",
          fmt::format("[readings] gap_max is {}{} and gap_min {}{}: gap_max is the "
                      "larger",
                      words(most), whose(own_max.has_value()), words(least),
                      whose(own_min.has_value())));
  }

  /// A chosen rule that goes by the boat's length, which is not given.
  void find_in_strength() {
    const auto& rules = joint_.strength.rules;
    for (std::size_t i = 0; i < rules.size(); ++i) {
      const PublishedRule* rule = published_rule(rules[i]);
      if (rule == nullptr || joint_.strength.hull_length) continue;
      if (std::any_of(rule->asks.begin(), rule->asks.end(), [](const RuleAsk& ask) {
            return ask.form == RuleForm::TableByLength;
          }))
        add(fmt::format("strength.rules[{}]", i),
            fmt::format(
                "rule {} goes by the boat's length: give [strength] hull_length",
                rules[i]));
    }
  }

  void find_in_layout() {
    const LayoutRules& rules = joint_.layout;
    if (rules.pitch_min > rules.pitch_max)
      add("layout.pitch_min",
          fmt::format(
              "[layout] pitch_min is {} and pitch_max {}: pitch_min is no larger",
              words(rules.pitch_min), words(rules.pitch_max)));
    if (rules.end_min > rules.end_max)
      add("layout.end_min",
          fmt::format("[layout] end_min is {} and end_max {}: end_min is no larger",
                      words(rules.end_min), words(rules.end_max)));
    if (rules.round_to > rules.pitch_min / 2)
      add("layout.round_to",
          fmt::format("[layout] round_to is {} and pitch_min {}: no more than half of "
                      "pitch_min",
                      words(rules.round_to), words(rules.pitch_min)));
  }

  /// The limits that hold in a zone.
  std::pair<Length, Length> limits(const Zone& zone) const {
    return {zone.pitch_min.value_or(joint_.layout.pitch_min),
            zone.pitch_max.value_or(joint_.layout.pitch_max)};
  }

  /// Holes closer together than they are wide.
  void find_running_holes() {
    const auto spec = fastener(joint_.fastener);
    const Length hole =
        spec ? spec->lip_hole : joint_.fastener.lip_hole.value_or(least_hole);
    const auto consider = [&](std::string where, std::string_view table, Length pitch) {
      if (pitch < hole)
        add(std::move(where),
            fmt::format("{} pitch_min is {} and the hole in the lip {} wide: the holes "
                        "would run into each other",
                        table, words(pitch), words(hole)));
    };
    consider("layout.pitch_min", "[layout]", joint_.layout.pitch_min);
    for (std::size_t i = 0; i < joint_.zones.size(); ++i)
      if (const auto pitch = joint_.zones[i].pitch_min)
        consider(fmt::format("zone[{}].pitch_min", i), "[[zone]]", *pitch);
  }

  /// Zones that overlap and whose limits no space can keep both.
  void find_in_overlaps() {
    for (std::size_t i = 0; i < joint_.zones.size(); ++i)
      for (std::size_t earlier = 0; earlier < i; ++earlier) find_in_overlap(earlier, i);
  }

  void find_in_overlap(std::size_t earlier, std::size_t later) {
    const Zone& a = joint_.zones[earlier];
    const Zone& b = joint_.zones[later];
    if (!overlap(a.stretch, b.stretch) || same_stretch(a.stretch, b.stretch)) return;
    const auto [a_least, a_most] = limits(a);
    const auto [b_least, b_most] = limits(b);
    // a zone that contradicts itself is named for that
    if (!(a_least <= a_most && b_least <= b_most)) return;
    if (!(std::max(a_least, b_least) > std::min(a_most, b_most))) return;
    add(fmt::format("zone[{}]", later),
        fmt::format(
            "zones {} and {} overlap, and no pitch keeps the limits of both, {} "
            "to {} and {} to {}: part them, or let their limits meet",
            name_of(a, earlier), name_of(b, later), words(a_least), words(a_most),
            words(b_least), words(b_most)));
  }

  static std::string name_of(const Zone& zone, std::size_t index) {
    return zone.what.empty() ? fmt::format("{}", index + 1) : zone.what;
  }

  void find_in_zones() {
    for (std::size_t i = 0; i < joint_.zones.size(); ++i) {
      const Zone& zone = joint_.zones[i];
      const auto [least, most] = limits(zone);
      if (!(least > most)) continue;
      const char* key = zone.pitch_max ? "pitch_max" : "pitch_min";
      add(fmt::format("zone[{}].{}", i, key),
          fmt::format("[[zone]] has a pitch_min of {}{} and a pitch_max of {}{}: "
                      "pitch_min is no larger",
                      words(least), zone.pitch_min ? "" : " (from [layout])",
                      words(most), zone.pitch_max ? "" : " (from [layout])"));
    }
  }

  template <class T>
  void find_in_stretches(std::string_view name, const std::vector<T>& list) {
    for (std::size_t i = 0; i < list.size(); ++i) {
      const Stretch& stretch = list[i].stretch;
      const std::string_view axis = stretch.by_x ? "x_" : "";
      if (stretch.from >= stretch.to)
        add(fmt::format("{}[{}].{}to", name, i, axis),
            fmt::format("[[{}]] runs from {} to {}: {}to is the larger", name,
                        words(stretch.from), words(stretch.to), axis));
    }
    find_twice(name, list, [](const T& a, const T& b) {
      return same_stretch(a.stretch, b.stretch);
    });
  }

  template <class T, class Same>
  void find_twice(std::string_view name, const std::vector<T>& list, Same same) {
    for (auto later = list.begin(); later != list.end(); ++later) {
      const auto first = std::find_if(
          list.begin(), later, [&](const T& earlier) { return same(earlier, *later); });
      if (first != later)
        add(fmt::format("{}[{}]", name, later - list.begin()),
            fmt::format("this [[{0}]] stands where number {1} of them does: leave one "
                        "out",
                        name, first - list.begin() + 1));
    }
  }

  const Joint& joint_;
  LengthUnit unit_;
  Errors errors_;
};

}  // namespace

Errors contradictions(const Joint& joint, LengthUnit unit) {
  return Finder(joint, unit).find();
}

}  // namespace sheerlap

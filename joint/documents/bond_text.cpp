#include "joint/documents/bond_text.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <string>
#include <vector>

#include "joint/documents/text_table.h"
#include "joint/documents/wording.h"

namespace sheerlap {
namespace {

constexpr double high_use = 0.9;
/// A row is a peak if it uses this much more than the middling row of its side.
constexpr double peak_use = 1.25;
/// A place between two stations is shown where it uses this much more than both.
constexpr double stands_out = 1.02;

std::string short_mode(BondMode mode) {
  switch (mode) {
    case BondMode::AdhesiveShear:
      return "shear";
    case BondMode::AdhesivePeel:
      return "peel";
    case BondMode::LaminateShear:
      return "plies";
    case BondMode::LaminateThrough:
      return "through";
    case BondMode::NoBondLine:
      break;
  }
  return "no bond";
}

/// The use in a narrow column, where the mode beside it says why there is no number.
std::string use_cell(double use) { return std::isfinite(use) ? use_text(use) : "over"; }

bool same_place(const BondPoint& one, const BondPoint& other) {
  return one.side == other.side && one.girth == other.girth;
}

/// A row of the table, and whether it stands between two stations.
struct BondRow {
  const BondPoint* point = nullptr;
  bool between = false;
};

/// The stations of a side by girth, and between them the places that use more.
std::vector<BondRow> rows_of(const BondStrength& bond, SideName side) {
  std::vector<BondRow> rows;
  for (const BondPoint& point : bond.stations)
    if (point.side == side) rows.push_back({&point, false});
  std::sort(rows.begin(), rows.end(), [](const BondRow& one, const BondRow& other) {
    return one.point->girth < other.point->girth;
  });
  const std::vector<BondRow> stations = rows;
  for (std::size_t i = 0; i <= stations.size(); ++i) {
    const BondPoint* before = i > 0 ? stations[i - 1].point : nullptr;
    const BondPoint* after = i < stations.size() ? stations[i].point : nullptr;
    const BondPoint* most = nullptr;
    for (const BondPoint& point : bond.along) {
      if (point.side != side || (before && point.girth <= before->girth) ||
          (after && point.girth >= after->girth))
        continue;
      if (!most || point.utilisation > most->utilisation) most = &point;
    }
    const double beside =
        std::max(before ? before->utilisation : 0, after ? after->utilisation : 0);
    if (most &&
        (most->utilisation > stands_out * beside || same_place(*most, bond.worst)))
      rows.push_back({most, true});
  }
  std::sort(rows.begin(), rows.end(), [](const BondRow& one, const BondRow& other) {
    return one.point->girth < other.point->girth;
  });
  return rows;
}

/// Half of the rows use no more.
double middling_use(const std::vector<BondRow>& rows) {
  std::vector<double> uses;
  for (const BondRow& row : rows) uses.push_back(row.point->utilisation);
  std::sort(uses.begin(), uses.end());
  return uses[(uses.size() - 1) / 2];
}

std::string table_of(const BondStrength& bond,
                     const std::vector<BondRow>& rows,
                     const NumberStyle& style) {
  TextTable table;
  table.columns = {
      {{"girth"}}, {{"gap", "top"}}, {{"gap", "low"}},        {{"q"}},
      {{"p"}},     {{"off"}},        {{"shear", "along"}},    {{"shear", "cross"}},
      {{"peel"}},  {{"use"}},        {{"mode"}, Align::Left}, {{"look"}, Align::Left}};
  const double middling = middling_use(rows);
  for (const BondRow& row : rows) {
    const BondPoint& at = *row.point;
    const bool bonded = at.mode != BondMode::NoBondLine;
    std::string look = use_flag(at.utilisation);
    if (look.empty() && at.utilisation > peak_use * middling) look = "peak";
    if (same_place(at, bond.worst)) look += "*";
    const auto stress = [&](double peak) { return bonded ? decimals(peak, 2) : "-"; };
    table.rows.push_back(
        {style.running(at.girth) + (row.between ? "+" : " "), style.gap(at.gap_top),
         style.gap(at.gap_low), decimals(at.load.along, 1), decimals(at.load.across, 2),
         decimals(at.load.off, 2), stress(at.shear_along), stress(at.shear_across),
         stress(at.peel), use_cell(at.utilisation), short_mode(at.mode), look});
  }
  return text_of(table);
}

std::string worst_words(const Job& job, const NumberStyle& style) {
  const BondPoint& worst = job.strength->bond.worst;
  const std::string place = style.sentence(place_words(worst));
  if (worst.mode == BondMode::NoBondLine)
    return fmt::format(
        "Worst place: {}: the faces touch or interfere there, and there "
        "is no bond line to work out.",
        place);
  return fmt::format(
      "Worst place: {}: {}, use {}. Gap {} {} at the band's upper edge, {} at its "
      "lower, band {} wide; limit load along {}, across {}, off {} N/mm; peaks across "
      "the lap {} N/mm2 in shear along, {} in shear across, {} in peel. Each place is "
      "worked with its own gaps, not a mean.",
      place, mode_words(worst.mode), use_text(worst.utilisation),
      style.gap(worst.gap_top), style.unit_name(), style.gap(worst.gap_low),
      style.size_with_unit(worst.width), decimals(worst.load.along, 2),
      decimals(worst.load.across, 2), decimals(worst.load.off, 2),
      decimals(worst.shear_along, 2), decimals(worst.shear_across, 2),
      decimals(worst.peel, 2));
}

std::string key_words(const NumberStyle& style) {
  return fmt::format(
      "Girth is along the sheer, at the rows of the sheer table, in {} as the gaps at "
      "the upper and lower edge of the bond band; with + a place between rows that "
      "uses "
      "more than both. q is shear flow along the joint with what heat adds, p the load "
      "across the lap, off the load that pulls the lip away: limit loads, N/mm. Shear "
      "along and cross (across the lap) and peel are peak stresses at the limit load, "
      "N/mm2. Use = load x factor / "
      "capacity. Mode, what gives first: shear and peel of the adhesive; plies, the "
      "laminate between its plies; through, the laminate through its thickness. Look: "
      "OVER uses more than 1, high {} or more, peak {} times the middling row of the "
      "side or more; * is the worst place of all.",
      style.unit_words(), at_most_decimals(high_use, 2), at_most_decimals(peak_use, 2));
}

std::string outside_text(const BondStrength& bond, const NumberStyle& style) {
  if (bond.outside.empty()) return "";
  std::string text = "\nWhere a formula of the bond does not hold\n";
  for (const OutsideValidity& one : bond.outside)
    text += wrapped(fmt::format("- {}: {}.", style.sentence(capitalised(one.what)),
                                style.sentence(one.where)),
                    text_width, 2);
  return text;
}

}  // namespace

std::string use_flag(double use) {
  if (use > 1) return "OVER";
  return use >= high_use ? "high" : "";
}

std::string use_text(double use) {
  if (!std::isfinite(use)) return "beyond all";
  int count = 2;
  std::string text = decimals(use, count);
  while (use > 1 && std::stod(text) <= 1 && count < 10) text = decimals(use, ++count);
  return text;
}

std::string bond_text(const Job& job, const NumberStyle& style) {
  const BondStrength& bond = job.strength->bond;
  std::string text = "The bond\n" + wrapped(worst_words(job, style)) + "\n" +
                     wrapped(key_words(style));
  for (const PerimeterSide& side : job.perimeter.sides) {
    const auto rows = rows_of(bond, side.name);
    if (rows.empty()) continue;
    text += fmt::format("\n{}: the bond, station by station\n",
                        capitalised(side_word(side.name))) +
            table_of(bond, rows, style);
  }
  return text + outside_text(bond, style);
}

}  // namespace sheerlap

#include "joint/documents/load_text.h"

#include <fmt/format.h>

#include <algorithm>
#include <string_view>

#include "joint/documents/text_table.h"
#include "joint/documents/wording.h"

namespace sheerlap {
namespace {

std::string choice_words(SideChoice choice) {
  switch (choice) {
    case SideChoice::Starboard:
      return "starboard";
    case SideChoice::Port:
      return "port";
    case SideChoice::Transom:
      return "transom";
    case SideChoice::Both:
      break;
  }
  return "starboard and port";
}

std::string line_load(double load) { return load > 0 ? decimals(load, 2) : "-"; }

/// The rows of the table, each by its cause.
class LoadRows {
 public:
  LoadRows(const Job& job, const NumberStyle& style, const OriginWords& words_of)
      : job_(job), style_(style), words_of_(words_of) {}

  TextTable table() {
    const Loads& loads = *job_.joint.loads;
    add("line load", {loads.along, loads.across, loads.off}, "all round",
        from("loads.along"));
    for (std::size_t i = 0; i < loads.stretches.size(); ++i)
      add_stretch(loads.stretches[i], fmt::format("load[{}]", i));
    for (std::size_t i = 0; i < loads.points.size(); ++i)
      add_point(loads.points[i], fmt::format("point_load[{}]", i));
    add_worked("strength.loads.hull_shear", "shear force in the hull",
               LoadDirection::Along);
    add_worked("strength.loads.hull_torsion", "torsion of the hull",
               LoadDirection::Along);
    add_worked("strength.loads.deck_pressure", "pressure on the deck",
               LoadDirection::Across);
    if (loads.warmth) add_heat();
    return std::move(table_);
  }

 private:
  std::string from(const std::string& address) const {
    return origin_text(Origin::of_file(address), job_.joint, words_of_);
  }

  void add(const std::string& cause,
           const JointLoad& load,
           const std::string& where,
           const std::string& whence) {
    if (!(load.along > 0 || load.across > 0 || load.off > 0)) return;
    table_.rows.push_back({cause, line_load(load.along), line_load(load.across),
                           line_load(load.off),
                           where + (whence.empty() ? "" : " [" + whence + "]")});
  }

  /// "girth 640", "x 1200".
  std::string place(Length at, bool by_x) const {
    return by_x ? "x " + style_.span(at) : "girth " + style_.running(at);
  }

  void add_stretch(const StretchLoad& load, const std::string& address) {
    const Stretch& stretch = load.stretch;
    add(load.what, load.load,
        fmt::format(
            "{}, {} to {}", choice_words(stretch.side),
            place(stretch.from, stretch.by_x),
            stretch.by_x ? style_.span(stretch.to) : style_.running(stretch.to)),
        from(address));
  }

  void add_point(const PlaceLoad& load, const std::string& address) {
    const double on_each_mm = load.force / load.spread.in_mm();
    JointLoad spread;
    if (load.direction == LoadDirection::Along) spread.along = on_each_mm;
    if (load.direction == LoadDirection::Across) spread.across = on_each_mm;
    if (load.direction == LoadDirection::Off) spread.off = on_each_mm;
    add(load.what, spread,
        fmt::format("{}, {}: {} N over {}, or over what is left of the side",
                    choice_words(load.side), place(load.at, load.by_x),
                    at_most_decimals(load.force, 1),
                    style_.size_with_unit(load.spread)),
        from(address + ".force"));
  }

  /// A cause that was worked out, by its working.
  void add_worked(std::string_view figure, const char* cause, LoadDirection direction) {
    for (const Explanation& one : job_.strength->reasons) {
      if (one.figure != figure) continue;
      const double value = one.steps.back().value;
      const bool is_along = direction == LoadDirection::Along;
      add(cause, {is_along ? value : 0, is_along ? 0 : value, 0}, "all round",
          "worked out, " + one.figure);
    }
  }

  void add_heat() {
    double most = 0;
    for (const Explanation& one : job_.strength->reasons)
      if (one.figure == "strength.bond.worst.heat") most = one.steps.back().value;
    const std::string where =
        "along, greatest at free ends of the joint and dying out away from them; in "
        "the bond's table within q, not in the fasteners' loads";
    const std::string whence = "worked out, " + from("deck_warmth.warmer");
    table_.rows.push_back(
        {"warm deck", "varies", "-", "-",
         most > 0 ? fmt::format("{}: {} N/mm at the bond's worst place [{}]", where,
                                decimals(most, 2), whence)
                  : fmt::format("{} [{}]", where, whence)});
  }

  const Job& job_;
  const NumberStyle& style_;
  const OriginWords& words_of_;
  TextTable table_{{{{"cause"}, Align::Left},
                    {{"along", "N/mm"}},
                    {{"across", "N/mm"}},
                    {{"off", "N/mm"}},
                    {{"where, and where from"}, Align::Left}},
                   {}};
};

}  // namespace

std::string load_text(const Job& job,
                      const NumberStyle& style,
                      const OriginWords& words_of) {
  const Loads& loads = *job.joint.loads;
  std::string text = "Loads\n";
  for (const std::string& paragraph : job.strength->combination)
    text += wrapped("- " + paragraph, text_width, 2);
  text += wrapped(
      fmt::format(
          "- Factors asked: bond {}, fasteners {} [{}, {}].",
          at_most_decimals(loads.factor_bond, 3),
          at_most_decimals(loads.factor_fastener, 3),
          origin_text(Origin::of_file("loads.factor_bond"), job.joint, words_of),
          origin_text(Origin::of_file("loads.factor_fastener"), job.joint, words_of)),
      text_width, 2);
  const TextTable table = LoadRows(job, style, words_of).table();
  if (table.rows.empty()) return text + "No load is given: every use below is 0.\n";
  return text + "\n" + text_of(table);
}

}  // namespace sheerlap

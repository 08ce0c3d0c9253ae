#pragma once

#include <optional>
#include <string>
#include <vector>

#include "joint/check_lines.h"
#include "joint/documents/number_style.h"
#include "joint/job.h"

namespace sheerlap {

/// How far the drill line lies up the lip's outer face from its low edge, where that
/// is trimmed as drawn, over the holes of a side or of all: "30 mm", "28.2 to 30 mm";
/// empty without holes.
/// @param job  with its schedule
std::string up_from_edge(const Job& job,
                         std::optional<SideName> side,
                         const NumberStyle& style);

/// How to mark out by a schedule, and what its columns of places and angles are; one
/// text a paragraph.
/// @param job  with its schedule
std::vector<std::string> marking_paragraphs(const Job& job, const NumberStyle& style);

/// Whether the space before a station has a stretch without a joint in it.
bool across_opening(const DrillStation& station, const PerimeterSide& side);

/// What the straight dimensions of the check lines are.
std::string straight_words();

/// The figure of a check line: a girth is rounded for the tape.
std::string check_figure(const CheckLine& line, const NumberStyle& style);

/// What a check line is: "S05 to S10: five pitches".
std::string check_words(const CheckLine& line, const NumberStyle& style);

/// How many holes take a fastener of which length; none for those that no length
/// serves.
struct LengthCount {
  std::optional<Length> length;
  std::size_t holes = 0;
};
/// The holes of a side, or of all, by length; ascending, those without one first.
std::vector<LengthCount> counts_by_length(const Schedule& schedule,
                                          std::optional<SideName> side);

}  // namespace sheerlap

#include "joint/perimeter_reasons.h"

#include "joint/reasons/working.h"

namespace sheerlap {
namespace {

/// The length of the first side, and how it is found.
Explanation side_length(const Perimeter& perimeter,
                        const FoundWords& words,
                        Length PerimeterSide::*length,
                        const std::string& key) {
  const PerimeterSide& side = perimeter.sides.front();
  WrittenWorking work;
  work.found(words, (side.*length).in_mm());
  return {"perimeter.sides." + side_word(side.name) + "." + key,
          std::string(words.figure.what) + ", " + side_word(side.name),
          work.release(),
          {{"perimeter.sides.*." + key, std::string(words.figure.letters)}}};
}

}  // namespace

Explanations perimeter_reasons(const Perimeter& perimeter) {
  WrittenWorking sheer, drill_line;
  joint_length(sheer, perimeter.sides, &PerimeterSide::sheer_length);
  joint_length(drill_line, perimeter.sides, &PerimeterSide::drill_line_length);
  return {side_length(perimeter, sheer_length_words, &PerimeterSide::sheer_length,
                      "sheer_length"),
          side_length(perimeter, drill_length_words, &PerimeterSide::drill_line_length,
                      "drill_line_length"),
          {"perimeter.sheer_length",
           "girth of the joint on the sheer",
           sheer.release(),
           {{"perimeter.sheer_length", "L"}}},
          {"perimeter.drill_line_length",
           "girth of the joint on the drill line",
           drill_line.release(),
           {{"perimeter.drill_line_length", "L"}}}};
}

}  // namespace sheerlap

#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace sheerlap {

/// What is said of a figure wherever it stands. A figure of which any of this is
/// missing does not compile.
struct FigureWords {
  std::string_view letters;   ///< in the source's letters: "tau_max"
  std::string_view what;      ///< "peak shear stress in the adhesive"
  std::string_view unit;      ///< "N/mm2"; "1" for a number without one
  std::string_view source;    ///< title and place, or "derived: ..."; ends in
                              ///< `memory_note` where it was remembered and not read
  std::string_view validity;  ///< where it holds, and what it leaves out

  consteval FigureWords(std::string_view letters_,
                        std::string_view what_,
                        std::string_view unit_,
                        std::string_view source_,
                        std::string_view validity_)
      : letters(said(letters_)),
        what(said(what_)),
        unit(said(unit_)),
        source(said(source_)),
        validity(said(validity_)) {}

 private:
  static consteval std::string_view said(std::string_view words) {
    if (words.empty()) throw "a figure is shown with all of its reason";
    return words;
  }
};

/// What is said of a figure that has no formula: one measured on the faces, or searched
/// for. Every part is needed, as for `FigureWords`.
struct FoundWords {
  FigureWords figure;
  std::string_view how;       ///< "the least of the gaps along ..."
  std::string_view accuracy;  ///< "within 1e-9 mm for the faces given"

  consteval FoundWords(FigureWords figure_,
                       std::string_view how_,
                       std::string_view accuracy_)
      : figure(figure_), how(how_), accuracy(accuracy_) {
    if (how.empty() || accuracy.empty())
      throw "a figure is shown with all of its reason";
  }
};

/// What is said of a number that a formula is given.
struct GivenWords {
  std::string_view letters;
  std::string_view what;
  std::string_view unit;  ///< "1" for a number without one
};

/// Where a number that was given comes from.
struct Origin {
  std::string address;  ///< of the user's value: "adhesive.modulus"; empty if not his
  std::string words;    ///< "measured between the faces"; empty if it has an address

  static Origin of_file(std::string address_) { return {std::move(address_), ""}; }
  static Origin of_joint(std::string words_) { return {"", std::move(words_)}; }
};

/// One line of a working: a number given, one worked out, or one found.
struct Reason {
  std::string letters;
  std::string what;
  std::string unit;
  double value = 0;
  std::string formula;  ///< in letters; empty for a number given or found
  std::string numbers;  ///< the same with the numbers put in
  std::string source;   ///< of the formula; empty for a number that was given
  std::string validity;
  Origin origin;              ///< of a number that was given
  std::string found = {};     ///< how, of a number that has no formula
  std::string accuracy = {};  ///< of a number that was found

  bool is_found() const { return !found.empty(); }
  bool is_given() const { return formula.empty() && found.empty(); }
};

/// A number of the result that a line of a working tells of.
struct Told {
  std::string path;     ///< in the result; "*" for any member of a list
  std::string letters;  ///< of the line
};

/// The working of one figure of the result.
struct Explanation {
  std::string figure;         ///< its place in the result: "strength.bond.worst.peel"
  std::string what;           ///< in shop words, with the place
  std::vector<Reason> steps;  ///< in the order they are worked; the last is the figure
  /// The numbers of the result that are had in this way: this one, and those like it.
  std::vector<Told> tells = {};
};

using Explanations = std::vector<Explanation>;

}  // namespace sheerlap

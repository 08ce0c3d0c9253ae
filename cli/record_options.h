#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "cli/options.h"
#include "geometry/result.h"
#include "joint/stretch.h"

namespace sheerlap {

enum class RecordCommand { Add, List, Show, Chart };

/// A leak as the command line gives it.
struct GivenLeak {
  SideName side = SideName::Starboard;
  std::string girth;  ///< on the drill line, a length in the joint file's units
  std::string word;   ///< as written
};

/// What a command line that starts with `record` asks for.
struct RecordOptions {
  RecordCommand command = RecordCommand::List;
  std::string record;                   ///< the file with the boats
  std::string joint;                    ///< `add`: the joint file
  std::optional<std::int64_t> hull;     ///< `add`, `show`
  std::optional<std::string> readings;  ///< `add`: the file with the readings
  std::optional<double> litres;
  std::optional<std::int64_t> holes;
  std::vector<GivenLeak> leaks;
  std::optional<std::string> out;  ///< `chart`: the folder for its files
  std::optional<LengthUnit> unit;  ///< for people; millimetres if not given
  bool json = false;
  bool quiet = false;
};

/// Whether the first word of a command line that is no option is `record`.
bool asks_for_record(const std::vector<std::string>& arguments);

/// The command line, understood.
///
/// @param arguments  of which `asks_for_record` is true
/// @errors  InvalidInput: every unknown option and word, missing and surplus arguments
Result<std::variant<RecordOptions, TextAsked>> parse_record_options(
    const std::vector<std::string>& arguments);

}  // namespace sheerlap

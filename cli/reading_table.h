#pragma once

#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

#include "geometry/result.h"
#include "joint/gap_readings.h"
#include "joint/length_text.h"

namespace sheerlap {

/// What a reading file says, and what is wrong with it.
struct ReadingTable {
  std::vector<GivenReading> readings;
  std::size_t header_line = 1;
  std::vector<std::size_t> lines;  ///< of the readings
  Errors errors;                   ///< at "reading.header" or "reading[N]"
};

/// The gap readings of one boat that a CSV text holds (RFC 4180), with a header line:
/// `side` and `state` needed, one or more of `girth`, `mark` and `station` of which
/// each row fills one, `gap_top` and `gap_low` of which each row fills one or both, and
/// `note` if wanted.
///
/// @param text  UTF-8
/// @param unit  of bare numbers
ReadingTable read_reading_table(std::string_view text, LengthUnit unit);

/// The same from a file; `located` errors.
/// @errors  Unreadable: the file cannot be read
Result<ReadingTable> read_reading_file(const std::filesystem::path& path,
                                       LengthUnit unit);

/// Errors at "reading[N]" with "FILE:LINE: " before their messages, by line.
Errors located(Errors errors, const std::string& file, const ReadingTable& table);

}  // namespace sheerlap

#pragma once

#include <string>
#include <tl/expected.hpp>
#include <utility>
#include <vector>

namespace sheerlap {

/// What kind of thing went wrong; it decides the program's exit status.
enum class ErrorKind {
  InvalidInput,  ///< a value that cannot be worked with (exit 2)
  Unreadable,    ///< a file that could not be read or written (exit 3)
};

/// One thing that is wrong, in words for the person who can mend it.
struct Error {
  ErrorKind kind = ErrorKind::InvalidInput;
  /// The address of the offending value in the input: a key such as
  /// "layout.pitch_max" or "keepout[2].to" (counted from 0), or a row of a table as
  /// "row[7]"; empty if no single value is to blame.
  std::string where;
  /// "what is wrong: what would be right"
  std::string message;
};

/// One or more errors: as many as could be found in one go.
using Errors = std::vector<Error>;

template <class T>
using Result = tl::expected<T, Errors>;

/// The failure of a `Result` that carries one `InvalidInput` error.
inline tl::unexpected<Errors> invalid_input(std::string where, std::string message) {
  return tl::unexpected(
      Errors{{ErrorKind::InvalidInput, std::move(where), std::move(message)}});
}

/// The failure of a `Result` that carries one `Unreadable` error.
inline tl::unexpected<Errors> unreadable(std::string where, std::string message) {
  return tl::unexpected(
      Errors{{ErrorKind::Unreadable, std::move(where), std::move(message)}});
}

}  // namespace sheerlap

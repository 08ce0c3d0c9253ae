#pragma once

#include <string>

namespace sheerlap {

/// A line on the terminal that tells what a long run is at; gone when it ends. Silent
/// where standard error is no terminal.
class ProgressLine {
 public:
  explicit ProgressLine(bool quiet);
  ProgressLine(const ProgressLine&) = delete;
  ProgressLine& operator=(const ProgressLine&) = delete;
  ~ProgressLine();

  /// @param text  printable, shorter than a terminal is wide
  void show(const std::string& text);

 private:
  bool silent_;
  bool shown_ = false;
};

}  // namespace sheerlap

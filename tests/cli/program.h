#pragma once

#include <filesystem>
#include <map>
#include <string>
#include <vector>

#include "tests/places.h"

namespace sheerlap {

/// What a run of the real program came to.
struct Outcome {
  int status = -1;  ///< exit status; 128 and the number of the signal that ended it
  std::string out;  ///< standard output
  std::string err;  ///< standard error
};

/// How to run it.
struct RunOptions {
  std::string program = program_path().string();
  std::filesystem::path folder = ".";  ///< where it runs
  std::string out;                  ///< the file standard output goes to; kept if empty
  bool close_out = false;           ///< standard output is a pipe nobody reads
  std::vector<std::string> before;  ///< a command that runs it, as `setpriv`
  std::vector<std::string> variables;  ///< "NAME=VALUE"
  int kill_after_us = -1;              ///< SIGKILL after this many microseconds
};

/// Runs the real program to its end.
Outcome run_program(const std::vector<std::string>& arguments,
                    const RunOptions& options = {});

/// A folder of its own for a test, removed at the end.
class TestFolder {
 public:
  TestFolder();
  TestFolder(const TestFolder&) = delete;
  TestFolder& operator=(const TestFolder&) = delete;
  ~TestFolder();
  const std::filesystem::path& path() const { return path_; }
  void put(const std::string& name, const std::string& text) const;
  /// A copy of the joint file and sheer table of a boat of the fixtures.
  void put_boat(const std::string& boat) const;

 private:
  std::filesystem::path path_;
};

/// Every file under a folder, by its path from there, with its content.
std::map<std::string, std::string> files_under(const std::filesystem::path& folder);

}  // namespace sheerlap

#include "tests/cli/program.h"

#include <fcntl.h>
#include <sys/wait.h>
#include <unistd.h>

#include <boost/test/unit_test.hpp>
#include <csignal>
#include <cstdlib>
#include <fstream>
#include <iterator>

namespace sheerlap {
namespace {

namespace fs = std::filesystem;

std::string content_of(const fs::path& file) {
  std::ifstream stream(file, std::ios::binary);
  return {std::istreambuf_iterator<char>(stream), {}};
}

void redirect(int descriptor, const std::string& file) {
  const int opened = ::open(file.c_str(), O_WRONLY | O_CREAT, 0600);
  if (opened < 0 || ::dup2(opened, descriptor) < 0) ::_exit(126);
}

/// What the child does: never returns.
[[noreturn]] void become(std::vector<std::string> words,
                         const RunOptions& options,
                         const std::string& out,
                         const std::string& err) {
  if (options.close_out) {
    int ends[2];
    if (::pipe(ends) != 0 || ::dup2(ends[1], 1) < 0) ::_exit(126);
    ::close(ends[0]);
    ::close(ends[1]);
  } else {
    redirect(1, out);
  }
  redirect(2, err);
  ::unsetenv("SOURCE_DATE_EPOCH");
  for (const std::string& variable : options.variables)
    ::putenv(const_cast<char*>(variable.c_str()));
  if (::chdir(options.folder.c_str()) != 0) ::_exit(126);
  std::vector<char*> pointers;
  for (std::string& word : words) pointers.push_back(word.data());
  pointers.push_back(nullptr);
  ::execvp(pointers[0], pointers.data());
  ::_exit(127);
}

}  // namespace

Outcome run_program(const std::vector<std::string>& arguments,
                    const RunOptions& options) {
  const TestFolder streams;
  const std::string err = (streams.path() / "err").string();
  const std::string out =
      options.out.empty() ? (streams.path() / "out").string() : options.out;
  std::vector<std::string> words = options.before;
  words.push_back(options.program);
  words.insert(words.end(), arguments.begin(), arguments.end());
  const pid_t child = ::fork();
  BOOST_TEST_REQUIRE(child >= 0);
  if (child == 0) become(words, options, out, err);
  if (options.kill_after_us >= 0) {
    ::usleep(static_cast<useconds_t>(options.kill_after_us));
    ::kill(child, SIGKILL);
  }
  int state = 0;
  BOOST_TEST_REQUIRE(::waitpid(child, &state, 0) == child);
  Outcome outcome;
  outcome.status = WIFEXITED(state) ? WEXITSTATUS(state) : 128 + WTERMSIG(state);
  if (options.out.empty()) outcome.out = content_of(out);
  outcome.err = content_of(err);
  return outcome;
}

TestFolder::TestFolder() {
  std::string name = (fs::temp_directory_path() / "sheerlap-test-XXXXXX").string();
  BOOST_TEST_REQUIRE(::mkdtemp(name.data()) != nullptr);
  path_ = name;
}

TestFolder::~TestFolder() {
  std::error_code error;
  fs::remove_all(path_, error);
}

void TestFolder::put(const std::string& name, const std::string& text) const {
  std::ofstream(path_ / name, std::ios::binary) << text;
}

void TestFolder::put_boat(const std::string& boat) const {
  for (const char* name : {"joint.toml", "sheer.csv"})
    fs::copy_file(fixtures_folder() / boat / name, path_ / name);
}

std::map<std::string, std::string> files_under(const fs::path& folder) {
  std::map<std::string, std::string> files;
  if (!fs::exists(folder)) return files;
  for (const auto& entry : fs::recursive_directory_iterator(folder))
    if (entry.is_regular_file())
      files[fs::relative(entry.path(), folder).string()] = content_of(entry.path());
  return files;
}

}  // namespace sheerlap

#include "cli/write_documents.h"

#include <algorithm>
#include <csignal>

#include "cli/folder_change.h"
#include "joint/sheets/sheets.h"

namespace sheerlap {
namespace {

/// What every result of ours begins with.
const char* const our_result = "{\n  \"format\": \"sheerlap/";

/// The names that files of ours can have.
std::vector<std::string> known_names() {
  std::vector<std::string> names = sheet_names();
  names.insert(names.end(), document_names().begin(), document_names().end());
  return names;
}

/// Holds back the signals that ask the program to stop, while it is in the middle of
/// writing.
class SignalsHeld {
 public:
  SignalsHeld() {
    sigset_t stops;
    sigemptyset(&stops);
    for (const int stop : {SIGINT, SIGTERM, SIGHUP, SIGQUIT}) sigaddset(&stops, stop);
    sigprocmask(SIG_BLOCK, &stops, &before_);
  }
  SignalsHeld(const SignalsHeld&) = delete;
  SignalsHeld& operator=(const SignalsHeld&) = delete;
  ~SignalsHeld() { sigprocmask(SIG_SETMASK, &before_, nullptr); }

 private:
  sigset_t before_{};
};

}  // namespace

Result<void> write_documents(const std::filesystem::path& folder,
                             const std::vector<Document>& documents) {
  const SignalsHeld held;
  auto change = FolderChange::begin(folder);
  if (!change) return tl::unexpected(change.error());
  for (const std::string& name : known_names()) change->discard_leftovers(name);
  for (const Document& document : documents)
    if (auto added = change->add(document.name, document.text); !added) return added;
  if (change->begins_with("result.json", our_result))
    for (const std::string& name : known_names()) {
      const auto same = [&](const Document& document) { return document.name == name; };
      if (std::none_of(documents.begin(), documents.end(), same)) change->remove(name);
    }
  return change->commit();
}

Result<void> write_chart_files(const std::filesystem::path& folder,
                               const std::vector<Document>& files) {
  const SignalsHeld held;
  auto change = FolderChange::begin(folder);
  if (!change) return tl::unexpected(change.error());
  for (const Document& file : files) {
    change->discard_leftovers(file.name);
    if (auto added = change->add(file.name, file.text); !added) return added;
  }
  return change->commit();
}

}  // namespace sheerlap

#include "joint/documents/memory_text.h"

#include <fmt/format.h>

#include <set>

#include "joint/documents/text_table.h"
#include "joint/documents/wording.h"
#include "joint/fasteners.h"

namespace sheerlap {
namespace {

bool is_remembered(const std::string& source) {
  return source.find(memory_note) != std::string::npos;
}

}  // namespace

std::string memory_text(const Job& job) {
  std::set<std::string> told;
  std::string text;
  const auto tell = [&](const std::string& what, const std::string& source) {
    const std::string line = fmt::format("- {}: {}", capitalised(what), source);
    if (is_remembered(source) && told.insert(line).second)
      text += wrapped(line, text_width, 2);
  };
  for (const DefaultUsed& used : job.joint.defaults)
    tell(fmt::format("Value of {}, {}", used.key, used.value), used.why);
  for (const Explanation& one : job.strength->reasons)
    for (const Reason& step : one.steps)
      tell(fmt::format("{} ({})", step.what, step.letters),
           step.is_given() ? step.origin.words : step.source);
  for (const RuleRow& row : job.strength->rules)
    if (row.state != RuleState::DoesNotApply) tell(row.asks_words, row.source);
  return text.empty() ? "" : "From memory: confirm each before you rely on it\n" + text;
}

}  // namespace sheerlap

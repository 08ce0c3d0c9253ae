#include "cli/source_map.h"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>
#include <filesystem>
#include <tuple>

namespace sheerlap {
namespace {

constexpr std::string_view row_address = "sheer.row[";

/// The address that an address belongs to: "keepout[2]" of "keepout[2].to", "keepout"
/// of that, and then nothing.
std::string_view parent(std::string_view address) {
  const std::size_t end = address.find_last_of(".[");
  return address.substr(0, end == std::string_view::npos ? 0 : end);
}

SourceLine row_line(const SourceMap& sources, std::string_view address) {
  std::size_t row = 0;
  address.remove_prefix(row_address.size());
  std::from_chars(address.data(), address.data() + address.size(), row);
  return row < sources.row_lines.size() ? SourceLine{true, sources.row_lines[row]}
                                        : source_line(sources, "sheer");
}

}  // namespace

SourceLine source_line(const SourceMap& sources, std::string_view address) {
  if (address.starts_with(row_address)) return row_line(sources, address);
  for (; !address.empty(); address = parent(address)) {
    const auto found = sources.lines.find(address);
    if (found != sources.lines.end()) return found->second;
  }
  return {};
}

std::string origin_words(const SourceMap& sources, std::string_view address) {
  const auto name = [](const std::string& path) {
    return std::filesystem::path(path).filename().string();
  };
  if (!address.starts_with(row_address) && !sources.lines.contains(address))
    return fmt::format("not given in {}", name(sources.joint_file));
  const SourceLine at = source_line(sources, address);
  return fmt::format("yours: {}:{}",
                     name(at.in_table ? sources.sheer_table : sources.joint_file),
                     at.line);
}

Errors located(Errors errors, const SourceMap& sources) {
  const auto place = [&](const Error& error) {
    const SourceLine at = source_line(sources, error.where);
    return std::tuple(at.in_table, at.line);
  };
  std::stable_sort(errors.begin(), errors.end(),
                   [&](const Error& a, const Error& b) { return place(a) < place(b); });
  for (Error& error : errors) {
    const SourceLine at = source_line(sources, error.where);
    const std::string& file = at.in_table ? sources.sheer_table : sources.joint_file;
    error.message = at.line == 0
                        ? fmt::format("{}: {}", file, error.message)
                        : fmt::format("{}:{}: {}", file, at.line, error.message);
  }
  const auto alike = [](const Error& a, const Error& b) {
    return a.message == b.message;
  };
  errors.erase(std::unique(errors.begin(), errors.end(), alike), errors.end());
  return errors;
}

}  // namespace sheerlap

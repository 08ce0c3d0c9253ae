#include "cli/report_date.h"

#include <fmt/format.h>

#include <charconv>
#include <chrono>
#include <string_view>

#include "joint/quoted_text.h"

namespace sheerlap {

Result<std::optional<std::string>> report_date(const char* epoch) {
  const std::string_view text = epoch == nullptr ? "" : epoch;
  if (text.empty()) return std::nullopt;
  constexpr std::int64_t end = 253402300800;  // 10000-01-01
  std::int64_t seconds = -1;
  const auto [rest, error] =
      std::from_chars(text.data(), text.data() + text.size(), seconds);
  if (error != std::errc() || rest != text.data() + text.size() || seconds < 0 ||
      seconds >= end)
    return invalid_input("", fmt::format("SOURCE_DATE_EPOCH is {}: give whole seconds "
                                         "since 1970, or unset it",
                                         quoted_text(text)));
  const std::chrono::sys_seconds moment{std::chrono::seconds(seconds)};
  const std::chrono::year_month_day day{std::chrono::floor<std::chrono::days>(moment)};
  return fmt::format("{:04}-{:02}-{:02}", static_cast<int>(day.year()),
                     static_cast<unsigned>(day.month()),
                     static_cast<unsigned>(day.day()));
}

}  // namespace sheerlap

#include "joint/sheets/sign_off.h"

#include <fmt/format.h>

namespace sheerlap {
namespace {

constexpr double field_mm = 12;
constexpr double sign_mm = 7;
constexpr double after_mm = 2;

}  // namespace

void draw_hole_count(SheetFlow& flow, std::size_t to_drill, std::size_t barred) {
  flow.need(field_mm + after_mm);
  const std::string names[] = {"holes drilled", "fasteners issued", "fasteners left",
                               "holes by the schedule"};
  const std::string left_out =
      barred == 0 ? "" : fmt::format(", {} more not drilled", barred);
  const std::string values[] = {"", "", "", fmt::format("{}{}", to_drill, left_out)};
  const std::string signs[] = {"=", "-", "="};
  const double width = (flow.room().width - 3 * sign_mm) / 4;
  Box box{flow.room().left, flow.room().top, width, field_mm};
  for (std::size_t field = 0; field < 4; ++field) {
    draw_field(flow.page(), box, names[field], values[field]);
    if (field < 3)
      flow.page().text({box.right() + sign_mm / 2, box.centre().y()}, signs[field],
                       {.height_mm = letter_height::heading,
                        .bold = true,
                        .across = Across::Centre,
                        .upright = Upright::Middle});
    box.left += width + sign_mm;
  }
  flow.take(field_mm + after_mm);
}

void draw_signatures(SheetFlow& flow, const std::vector<std::string>& names) {
  flow.need(field_mm + after_mm);
  const double width = flow.room().width / static_cast<double>(names.size());
  Box box{flow.room().left, flow.room().top, width, field_mm};
  for (const std::string& name : names) {
    draw_field(flow.page(), box, name);
    box.left += width;
  }
  flow.take(field_mm + after_mm);
}

}  // namespace sheerlap

#include "joint/fastener_sizes.h"

#include <fmt/format.h>

#include "joint/blind_rivets.h"
#include "joint/bolts.h"
#include "joint/fasteners.h"
#include "joint/tapping_screws.h"
#include "joint/worded_length.h"

namespace sheerlap {
namespace {

std::vector<std::string> size_names(FastenerKind kind) {
  switch (kind) {
    case FastenerKind::TappingScrew:
      return tapping_screw_sizes();
    case FastenerKind::Bolt:
      return bolt_sizes();
    case FastenerKind::BlindRivet:
      break;
  }
  return blind_rivet_sizes();
}

std::optional<FastenerSpec> table_spec(FastenerKind kind,
                                       const std::string& size,
                                       HeadKind head) {
  switch (kind) {
    case FastenerKind::TappingScrew:
      return tapping_screw(size, head);
    case FastenerKind::Bolt:
      return bolt(size, head);
    case FastenerKind::BlindRivet:
      break;
  }
  return head == HeadKind::Pan ? blind_rivet(size) : std::nullopt;
}

}  // namespace

std::vector<FastenerSize> fastener_sizes(FastenerKind kind) {
  std::vector<FastenerSize> sizes;
  for (const std::string& name : size_names(kind)) {
    FastenerSize size;
    size.size = name;
    for (const HeadKind head : {HeadKind::Pan, HeadKind::Countersunk}) {
      const auto spec = table_spec(kind, name, head);
      if (!spec) continue;
      size.heads.push_back(head);
      size.diameter = spec->diameter;
      size.what = fmt::format(
          "{}, {} {}", fastener_name(*spec), worded(spec->diameter),
          kind == FastenerKind::BlindRivet ? "in diameter" : "over the thread");
      FastenerChoice choice;
      choice.kind = kind;
      choice.size = name;
      choice.head = head;
      size.needs_own_holes = !fastener(choice).has_value();
    }
    sizes.push_back(std::move(size));
  }
  return sizes;
}

}  // namespace sheerlap

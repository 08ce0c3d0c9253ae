#include "joint/joint_loads.h"

#include <fmt/format.h>

#include <algorithm>
#include <cassert>
#include <cmath>
#include <utility>

namespace sheerlap {
namespace {

void append(Errors& errors, const Errors& more) {
  errors.insert(errors.end(), more.begin(), more.end());
}

void add(JointLoad& sum, const JointLoad& more) {
  sum.along += more.along;
  sum.across += more.across;
  sum.off += more.off;
}

bool loads_anything(const JointLoad& load) {
  return load.along > 0 || load.across > 0 || load.off > 0;
}

JointLoad in_direction(LoadDirection direction, double load) {
  switch (direction) {
    case LoadDirection::Along:
      return {load, 0, 0};
    case LoadDirection::Across:
      return {0, load, 0};
    case LoadDirection::Off:
      break;
  }
  return {0, 0, load};
}

/// A side that the joint has not.
Error no_transom(std::string where) {
  return {ErrorKind::InvalidInput, std::move(where),
          "this joint has no transom side: name starboard, port or both"};
}

}  // namespace

Result<JointLoads> JointLoads::of(const Joint& joint, const Perimeter& perimeter) {
  assert(joint.loads);
  const Loads& loads = *joint.loads;
  JointLoads made;
  made.set_ring(perimeter);
  const JointLoad line{loads.along, loads.across, loads.off};
  if (loads_anything(line))
    made.even_.push_back(
        {"line load of the joint file", line, Origin::of_file("loads")});
  Errors errors;
  if (loads.girder) append(errors, made.add_girder(*loads.girder));
  if (loads.panel) append(errors, made.add_panel(*loads.panel));
  append(errors, made.add_stretches(joint, perimeter));
  append(errors, made.add_points(joint, perimeter));
  if (!errors.empty()) return tl::unexpected(std::move(errors));
  return made;
}

void JointLoads::set_ring(const Perimeter& perimeter) {
  for (const PerimeterSide& side : perimeter.sides)
    ring_mm_ += side.drill_line_length.in_mm();
  for (const PerimeterSide& one : perimeter.sides) {
    Side made;
    made.name = one.name;
    made.forward = one.name != SideName::Port;
    const Length starboard = perimeter.side(SideName::Starboard)->drill_line_length;
    if (one.name == SideName::Transom) made.ring_start = starboard;
    if (one.name == SideName::Port) made.ring_start = Length::mm(ring_mm_);
    const auto on_ring = [&](Length girth) {
      return (made.forward ? made.ring_start + girth : made.ring_start - girth).in_mm();
    };
    made.begins.push_back(Length());
    made.stops.push_back(one.drill_line_length);
    for (const OpeningSpan& opening : one.openings) {
      made.begins.push_back(opening.to);
      made.stops.push_back(opening.from);
      free_ends_mm_.push_back(on_ring(opening.from));
      free_ends_mm_.push_back(on_ring(opening.to));
    }
    if (one.start == SideEnd::End) free_ends_mm_.push_back(on_ring(Length()));
    if (one.end == SideEnd::End)
      free_ends_mm_.push_back(on_ring(one.drill_line_length));
    sides_.push_back(std::move(made));
  }
  std::sort(free_ends_mm_.begin(), free_ends_mm_.end());
}

Errors JointLoads::add_stretches(const Joint& joint, const Perimeter& perimeter) {
  Errors errors;
  const auto& loads = joint.loads->stretches;
  for (std::size_t i = 0; i < loads.size(); ++i) {
    const std::string where = fmt::format("load[{}]", i);
    const StretchLoad& load = loads[i];
    if (load.stretch.side == SideChoice::Transom && !perimeter.side(SideName::Transom))
      errors.push_back(no_transom(where + ".side"));
    for (Side& side : sides_) {
      if (!stands_on(load.stretch.side, side.name)) continue;
      const auto girths = stretch_on(*perimeter.side(side.name), load.stretch, where,
                                     "load " + load.what);
      if (!girths) {
        append(errors, girths.error());
        continue;
      }
      side.pieces.push_back({girths->first,
                             girths->second,
                             {load.what, load.load, Origin::of_file(where)}});
    }
  }
  return errors;
}

Errors JointLoads::add_points(const Joint& joint, const Perimeter& perimeter) {
  Errors errors;
  const auto& loads = joint.loads->points;
  for (std::size_t i = 0; i < loads.size(); ++i) {
    const std::string where = fmt::format("point_load[{}]", i);
    const PlaceLoad& load = loads[i];
    if (load.side == SideChoice::Transom && !perimeter.side(SideName::Transom))
      errors.push_back(no_transom(where + ".side"));
    for (Side& side : sides_) {
      if (!stands_on(load.side, side.name)) continue;
      const PerimeterSide& line = *perimeter.side(side.name);
      const auto at = place_on(line, {load.side, load.at, load.by_x, load.what}, where);
      if (!at) {
        append(errors, at.error());
        continue;
      }
      // the joint there is carries all of it
      const Length from = std::max(Length(), *at - load.spread / 2);
      const Length to = std::min(line.drill_line_length, *at + load.spread / 2);
      const double on_each_mm = load.force / (to - from).in_mm();
      side.pieces.push_back({from,
                             to,
                             {load.what, in_direction(load.direction, on_each_mm),
                              Origin::of_file(where + ".force")}});
    }
  }
  return errors;
}

const JointLoads::Side& JointLoads::side(SideName name) const {
  const auto found = std::find_if(sides_.begin(), sides_.end(),
                                  [&](const Side& side) { return side.name == name; });
  assert(found != sides_.end());
  return *found;
}

bool JointLoads::holds(const Piece& piece, Length girth, Hand hand) {
  if (hand == Hand::Before) return piece.from < girth && girth <= piece.to;
  return piece.from <= girth && girth < piece.to;
}

JointLoad JointLoads::sum(SideName name, Length girth, Hand hand) const {
  JointLoad sum;
  for (const LoadShare& share : even_) add(sum, share.load);
  for (const Piece& piece : side(name).pieces)
    if (holds(piece, girth, hand)) add(sum, piece.share.load);
  return sum;
}

JointLoads::Hand JointLoads::heavier_hand(SideName name, Length girth) const {
  const auto weight = [&](Hand hand) {
    const JointLoad load = sum(name, girth, hand);
    return load.along + load.across + load.off;
  };
  return weight(Hand::Before) > weight(Hand::After) ? Hand::Before : Hand::After;
}

std::vector<LoadShare> JointLoads::shares_at(SideName name, Length girth) const {
  const Hand hand = heavier_hand(name, girth);
  std::vector<LoadShare> shares = even_;
  for (const Piece& piece : side(name).pieces)
    if (holds(piece, girth, hand)) shares.push_back(piece.share);
  return shares;
}

JointLoad JointLoads::at(SideName name, Length girth) const {
  return sum(name, girth, heavier_hand(name, girth));
}

JointLoad JointLoads::mean(SideName name, Length from, Length to) const {
  if (!(to > from)) return at(name, from);
  JointLoad mean;
  for (const LoadShare& share : even_) add(mean, share.load);
  for (const Piece& piece : side(name).pieces) {
    const Length loaded = std::min(to, piece.to) - std::max(from, piece.from);
    if (!(loaded > Length())) continue;
    const double part = loaded / (to - from);
    const JointLoad& load = piece.share.load;
    add(mean, {part * load.along, part * load.across, part * load.off});
  }
  return mean;
}

std::vector<Length> JointLoads::jumps_on(SideName name) const {
  std::vector<Length> jumps;
  for (const Piece& piece : side(name).pieces) {
    jumps.push_back(piece.from);
    jumps.push_back(piece.to);
  }
  std::sort(jumps.begin(), jumps.end());
  jumps.erase(std::unique(jumps.begin(), jumps.end()), jumps.end());
  return jumps;
}

std::optional<FreeEndDistance> JointLoads::free_end(SideName name, Length girth) const {
  if (free_ends_mm_.empty()) return std::nullopt;
  const Side& there = side(name);
  // a place on an end belongs to the joint beside it, not to the opening
  constexpr Length beside = Length::mm(2e-6);
  const auto near = [&](const std::vector<Length>& ends) {
    return std::any_of(ends.begin(), ends.end(), [&](Length end) {
      return std::abs((end - girth).in_mm()) < 1e-6;
    });
  };
  if (near(there.begins))
    girth = girth + beside;
  else if (near(there.stops))
    girth = girth - beside;
  const double at =
      (there.forward ? there.ring_start + girth : there.ring_start - girth).in_mm();
  const auto after = std::lower_bound(free_ends_mm_.begin(), free_ends_mm_.end(), at);
  const double next =
      after == free_ends_mm_.end() ? free_ends_mm_.front() + ring_mm_ : *after;
  const double last =
      after == free_ends_mm_.begin() ? free_ends_mm_.back() - ring_mm_ : *(after - 1);
  return FreeEndDistance{Length::mm(std::min(at - last, next - at)),
                         Length::mm(next - last)};
}

}  // namespace sheerlap

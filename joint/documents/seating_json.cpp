#include "joint/documents/seating_json.h"

#include <utility>

#include "joint/documents/wording.h"

namespace sheerlap {
namespace {

Json clearance_json(const EntryClearance& at) {
  return {{"worst", number(at.worst)},
          {"height", number(at.height)},
          {"at_angle", number(at.angle.in_degrees())},
          {"side", side_word(at.side)},
          {"girth", number(at.girth)}};
}

Json turned_json(const EntryPath& path, const TurnedEntry& entry) {
  Json json{{"first", word_of(entry.first)},
            {"angle", number(entry.angle.in_degrees())}};
  json.update(clearance_json(path.face));
  json["low_edge"] = path.low_edge ? clearance_json(*path.low_edge) : Json(nullptr);
  json["squeeze"] = number(path.squeeze);
  json["lead_in"] = number(path.lead_in);
  return json;
}

Json gap_json(const GapAt& at) {
  Json json = place_json(at);
  json["gap"] = number(at.gap);
  return json;
}

Json shape_json(const std::optional<HullShapeFit>& shape) {
  if (!shape) return nullptr;
  return {{"gap_min", number(shape->least.gap)},
          {"gap_max", number(shape->greatest.gap)},
          {"gap_min_at", place_json(shape->least)},
          {"gap_max_at", place_json(shape->greatest)}};
}

Json squeezes_json(const std::vector<Squeeze>& squeezes, bool read) {
  Json list = Json::array();
  for (const Squeeze& squeeze : squeezes)
    list.push_back({{"at", number(squeeze.at)},
                    {"amount", number(squeeze.amount)},
                    {"limit", number(squeeze.most)},
                    {"to_mould", read ? Json() : number(squeeze.to_mould)},
                    {"limit_price", number(squeeze.limit_price)}});
  return list;
}

Json contacts_json(const std::vector<HoldingGap>& contacts) {
  Json list = Json::array();
  for (const HoldingGap& contact : contacts) {
    Json json = gap_json(contact.at);
    json["holds"] = contact.tight ? "gap_min" : "gap_max";
    json["price"] = number(contact.price);
    list.push_back(std::move(json));
  }
  return list;
}

Json readings_json(const std::vector<SeatedReading>& readings) {
  Json list = Json::array();
  for (const SeatedReading& reading : readings)
    list.push_back({{"at", number(reading.moved.x)},
                    {"free", number(reading.moved.free)},
                    {"held", number(reading.moved.held)},
                    {"seated", number(reading.seated)}});
  return list;
}

Json follows_json(const JointFollows& joint) {
  Json fasteners = Json::array();
  for (const FastenersOfLength& of : joint.fasteners)
    fasteners.push_back({{"length", number(of.length)}, {"count", of.count}});
  return {{"girth",
           {{"good", number(joint.girth.good)},
            {"tight", number(joint.girth.tight)},
            {"wide", number(joint.girth.wide)},
            {"interference", number(joint.girth.interference)}}},
          {"joint_volume", number(joint.adhesive.joint.in_ml())},
          {"bead_volume", number(joint.adhesive.bead.in_ml())},
          {"boat_volume", number(joint.adhesive.boat.in_ml())},
          {"packs", joint.adhesive.packs},
          {"fasteners", std::move(fasteners)}};
}

Json follows_json(const std::optional<SeatedJoint>& joint) {
  if (!joint) return nullptr;
  return {{"drawn", follows_json(joint->drawn)},
          {"seated", follows_json(joint->seated)}};
}

}  // namespace

Json entry_json(const Fit& fit, const Joint& joint, const GoingOn& going_on) {
  Json json = entry_json(fit.entry);
  json["squeeze"] = number(going_on.straight.squeeze);
  json["lead_in"] = number(going_on.straight.lead_in);
  json["turned"] = going_on.turned ? turned_json(*going_on.turned, *joint.turned_entry)
                                   : Json(nullptr);
  return json;
}

Json seating_json(const GoingOn& going_on, bool read) {
  const Seating& seating = going_on.seating;
  return {
      {"dx", number(seating.dx)},
      {"dy", number(seating.dy)},
      {"turn", number(seating.turn.in_degrees())},
      {"squeeze", squeezes_json(seating.squeezes, read)},
      {"margin", number(seating.margin)},
      {"side", side_word(seating.worst.side)},
      {"girth", number(seating.worst.girth)},
      {"depth", number(seating.worst.depth)},
      {"gap", number(seating.worst.gap)},
      {"as_drawn", number(seating.as_drawn)},
      {"gain_left", number(seating.gain_left)},
      {"at_bow", number(seating.at_bow)},
      {"at_stern", number(seating.at_stern)},
      {"pivot", {{"x", number(seating.pivot.x())}, {"y", number(seating.pivot.y())}}},
      {"contacts", contacts_json(seating.contacts)},
      {"readings", readings_json(seating.readings)},
      {"free", shape_json(seating.free)},
      {"held", shape_json(seating.held)},
      {"seated", shape_json(seating.seated)},
      {"follows", follows_json(going_on.seated)}};
}

}  // namespace sheerlap

#include "tests/cli/boat_folder.h"

#include <stdlib.h>

#include <boost/test/unit_test.hpp>
#include <fstream>
#include <sstream>

namespace sheerlap {

const std::string full_joint_text = R"(title = "Test boat"
units = "mm"

[sheer]
file = "sheer.csv"
half = true
closed = true
curve = "chords"
knuckle_angle = 25

[lap]
depth = 50
hull_top = 0
hull_low = -1
lip_top = 3
lip_low = 5
bond_from = 5
bond_to = 45

[hull]
thickness = 6
trim = 1
modulus = 8000
shear_modulus = 3000
poisson = 0.3
tension = 80
compression = 100
shear = 50
interlaminar = 14
bearing = 110

[lip]
thickness = 5
trim = 1.5
bearing = 90

[[opening]]
side = "transom"
from = 200
to = 800
what = "outboard well"

[adhesive]
name = "paste"
gap_min = 1
gap_max = 8
squeeze_out = 0.2
waste = 0.15
bead_shape = "round"
bead_sizes = [6, 8, 10]
pack = 490
pack_usable = 430
nozzle_purge = 30
pack_price = 34
nozzle_price = 2.4
density = 1.1
modulus = 1000
shear_modulus = 370
shear_strength = 10
peel_strength = 6
plastic_strain = 0.3
working_time = 50
working_time_at = 20
shelf_life = 270

[fastener]
kind = "bolt"
size = "M6"
head = "countersunk"
lengths = [16, 20, 25]
line = 28
lip_hole = 6.6
hull_pilot = 6.4
box = 100
box_price = 11

[layout]
pitch_max = 150
pitch_min = 40
end_min = 25
end_max = 70
radius_min = 100
round_to = 0.5

[[zone]]
side = "both"
from = 0
to = 1000
pitch_max = 100
pitch_min = 50
what = "bow"

[[keepout]]
side = "starboard"
from = 640
to = 720
clear = 25
what = "bow cleat"

[[keepout]]
side = "port"
x_from = 2000
x_to = 2100
what = "fuel fill"

[[place]]
side = "transom"
at = 300
what = "lifting eye"

[[place]]
side = "both"
x = 2500
what = "rail foot"

[loads]
along = 12
across = 2
off = 0.5
factor_bond = 4
factor_fastener = 3

[jig]
length_max = 1200
bush = 10
plate = 3
marks = "lip"

[shop]
temperature = 21
guns = 2
gun_rate = 150
pack_change_minutes = 1.5
seat_minutes = 5
screw_rate = 5
drivers = 3

[order]
boats = 120
boats_a_month = 10
spare = 0.03

[[load]]
side = "both"
from = 2000
to = 2600
along = 8
off = 0.25
what = "mast bulkhead"

[[point_load]]
side = "starboard"
at = 680
force = 4000
direction = "across"
spread = 200
what = "bow cleat"

[[point_load]]
side = "both"
x = 3000
force = 2500
direction = "off"
spread = 150
what = "rail foot"

[hull_girder]
shear_force = 20000
torque = 5000

[[plate]]
part = "deck"
y_from = -1250
z_from = 1100
y_to = 1250
z_to = 1100
thickness = 5
modulus_ratio = 0.9

[[plate]]
part = "hull"
y_from = 1250
z_from = 1100
y_to = 1250
z_to = 0
thickness = 6

[deck_panel]
span = 600
length = 1200
waterline_length = 8500
category = "B"
displacement = 3500
longitudinal_factor = 0.9

[deck_warmth]
warmer = 40
deck_width = 300
hull_width = 250

[strength]
rules = ["class-pitch-bonded-hull-deck"]
edges = "held"
hole_brittleness = 0.5
thread_grip = 0.4
wet = 0.85
gap_change = 0.3
closing_speed = 2
hull_length = 12000

[[adhesive_option]]
name = "epoxy paste"
gap_min = 0.5
gap_max = 6
squeeze_out = 0.1
waste = 0.1
bead_shape = "round"
bead_sizes = [6, 8, 10]
pack = 400
pack_usable = 380
nozzle_purge = 25
modulus = 3000
shear_modulus = 1100
shear_strength = 18
peel_strength = 9

[entry]
first = "stern"
angle = 5

[[beam_reading]]
x = 2000
mould = 2000
free = 2010
held = 2001

[[beam_reading]]
x = 3000
mould = 1900
free = 1896

[[spreader]]
x = 2100
most = 12
)";

const std::string strength_joint_text = [] {
  std::string text = full_joint_text;
  const auto put_after = [&](std::string_view line, const char* more) {
    text.insert(text.find(line) + line.size(), more);
  };
  put_after("plastic_strain = 0.3\n",
            "viscosity = 300\nyield_stress = 500\ngasket_factor = 0.5\n");
  put_after(
      "bearing = 110\n",
      "through = 7\nbending_ratio = 0.9\nexpansion = 25\nglass_fraction = 0.33\n");
  put_after("box_price = 11\n",
            "class = \"A4-70\"\ntensile = 690\nmodulus = 193000\nshear_capacity = "
            "5000\npull_capacity = 6000\n");
  return text;
}();

const std::string short_joint_text = R"(title = "Short"
units = "mm"
[sheer]
file = "sheer.csv"
[lap]
depth = 50
hull_top = 0
hull_low = 0
lip_top = 3
lip_low = 5
[hull]
thickness = 6
[lip]
thickness = 5
[fastener]
kind = "tapping screw"
size = "ST4.8"
line = 28
[layout]
pitch_max = 150
pitch_min = 40
)";

const std::string sheer_text =
    "x,y,z\n"
    "0,0,900\n"
    "1500,800,850\n"
    "4000,1000,800\n"
    "4000,0,800\n";

std::string replaced(std::string text, std::string_view from, std::string_view to) {
  const std::size_t place = text.find(from);
  BOOST_REQUIRE_MESSAGE(place != std::string::npos, "nothing to replace: " << from);
  return text.replace(place, from.size(), to);
}

BoatFolder::BoatFolder() {
  std::string name = std::filesystem::temp_directory_path() / "sheerlap-XXXXXX";
  BOOST_REQUIRE(mkdtemp(name.data()) != nullptr);
  path_ = name;
}

BoatFolder::~BoatFolder() {
  std::error_code ignored;
  std::filesystem::remove_all(path_, ignored);
}

void BoatFolder::write(const std::string& name, const std::string& text) const {
  // a new file each time: cutting an old one short makes some file systems wait for the
  // disk
  std::filesystem::remove(path_ / name);
  std::ofstream(path_ / name, std::ios::binary) << text;
}

std::string BoatFolder::text(const std::string& name) const {
  std::ostringstream text;
  text << std::ifstream(path_ / name, std::ios::binary).rdbuf();
  return text.str();
}

Result<JointFile> BoatFolder::read() const {
  return read_joint_file(path_ / "joint.toml");
}

std::vector<std::string> BoatFolder::refusal() const {
  std::vector<std::string> messages;
  const auto file = read();
  if (file) return messages;
  const std::string folder = path_.string() + "/";
  for (const Error& error : file.error()) {
    std::string message = error.message;
    while (message.find(folder) != std::string::npos)
      message.erase(message.find(folder), folder.size());
    messages.push_back(message);
  }
  return messages;
}

std::vector<std::string> refusal_of(const std::string& joint,
                                    const std::string& sheer) {
  const BoatFolder folder;
  folder.write("joint.toml", joint);
  folder.write("sheer.csv", sheer);
  return folder.refusal();
}

void check_messages(const std::vector<std::string>& found,
                    const std::vector<std::string>& expected) {
  BOOST_CHECK_EQUAL_COLLECTIONS(found.begin(), found.end(), expected.begin(),
                                expected.end());
}

}  // namespace sheerlap

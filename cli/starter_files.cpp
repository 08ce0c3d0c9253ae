#include "cli/starter_files.h"

namespace sheerlap {

std::string_view starter_joint_text() {
  return R"(# The hull-to-deck joint of an invented boat; no real boat has these numbers. Replace
# them by your own, then run
#
#     sheerlap check joint.toml
#
# A bare number is in `units`. Text may carry its own unit: "6.4 m", "1/4 in",
# "3 ft 4-5/8 in", or feet-inches-eighths, "3-4-5". What stands behind a # says nothing
# to the program.

title = "Invented 520"
units = "mm"                  # mm | in

[sheer]                       # the hull's trimmed top edge
file = "sheer.csv"            # its points: x aft, y to starboard, z up
half = true                   # true: the starboard half, bow to transom, mirrored
                              # false: once round: bow, starboard, transom, port
closed = true                 # false: the joint stops at the transom corners
curve = "spline"              # spline: smooth between corners | chords: straight
knuckle_angle = 30            # degrees; a sharper turn in plan is a corner

[lap]                         # distances outboard of the sheer, negative is inboard;
                              # a column of the same name in the sheer table goes before
depth = 50                    # of the lap, straight down
hull_top = 0                  # the hull's outer face at the sheer ...
hull_low = 0                  # ... and at the foot of the lap
lip_top = 2.5                 # the lip's inner face at the sheer ...
lip_low = 4                   # ... and at the foot of the lap
bond_from = 5                 # the band to be filled, as depths; the whole lap if left
bond_to = 45                  # out

[hull]
thickness = 6                 # of the laminate in the lap
trim = 2                      # tolerance of the trimmed edge, plus or minus
#: modulus = 8000             # N/mm2, as all strengths; for `strength` only
#: shear_modulus = 3000       # in the laminate's plane
#: poisson = 0.3
#: tension = 80
#: shear = 50
#: interlaminar = 14          # shear between plies
#: bearing = 100              # under a fastener's shank

[lip]
thickness = 5
trim = 2
#: modulus = 8000             # N/mm2, as all strengths; for `strength` only
#: shear_modulus = 3000       # in the laminate's plane
#: poisson = 0.3
#: tension = 80
#: shear = 50
#: interlaminar = 14          # shear between plies
#: bearing = 100              # under a fastener's shank

[[opening]]                   # a stretch without a joint; one table for each
side = "transom"              # starboard | port | both | transom
from = 560                    # running girth on the drill line from where the side
to = 1396                     # starts; or x_from and x_to
what = "outboard well"

[adhesive]
name = "two-part paste"
gap_min = 1                   # the window from the product's own data sheet
gap_max = 8
squeeze_out = 0.10            # share of the joint volume meant to squeeze out
waste = 0.05                  # share of what is laid
bead_shape = "triangle"       # triangle: as high as it is wide | round
bead_sizes = [8, 10, 12, 14, 16, 18, 20, 22, 24]
pack = 490                    # ml in one pack
pack_usable = 430             # ml that come out of it
nozzle_purge = 30             # ml lost at each fresh nozzle
pack_price = 34               # leave prices out if you have none
nozzle_price = 2.4
density = 1.0                 # g/ml
working_time = 50             # minutes
working_time_at = 23          # degrees C
shelf_life = 270              # days
#: modulus = 1000             # N/mm2, cured; for `strength` only
#: shear_modulus = 370
#: shear_strength = 10
#: peel_strength = 6
#: plastic_strain = 0.3       # shear strain beyond yield at failure, or leave it out
#: viscosity = 300            # Pa s, wet
#: yield_stress = 500         # Pa, below which the wet paste does not flow

[fastener]
kind = "tapping screw"        # tapping screw | bolt | blind rivet
size = "ST4.8"                # ISO 1478 and ISO 261 names, or inch: "#10", "1/4"
head = "pan"                  # pan | countersunk
lengths = [16, 19, 22, 25]    # in stock; each hole gets the shortest that serves it
line = 28                     # depth of the drill line below the sheer
lip_hole = 5.3                # the shop's own drills, proved on an offcut; left out, the
hull_pilot = 3.9              # tables' own, and a pilot not for laminates is warned of
box = 100                     # pieces in a box
box_price = 11
#: class = "A4-70"            # property class of the metal; or tensile, N/mm2

[layout]
pitch_max = 150               # from hole to hole, along the drill line; "strength": only
                              # what the strength allows
pitch_min = 40
end_min = 30                  # from a corner to the first hole
end_max = 75
radius_min = 150              # no hole where the drill line bends tighter in plan
round_to = 1                  # dimensions are shown to this; the pitch is not rounded

[[zone]]                      # a stretch with pitch limits of its own
side = "both"
from = 0
to = 1000
pitch_max = 100
what = "bow"

[[keepout]]                   # a stretch where no hole may go
side = "both"
from = 700
to = 750
clear = 20                    # added at both ends
what = "bow cleat"

[[keepout]]
side = "starboard"
from = 3600
to = 3680
clear = 25
what = "fuel fill"

[[place]]                     # a hole must be here
side = "transom"
at = 300
what = "lifting eye strap"

[jig]
length_max = 1300             # of one piece of the drill jig
plate = 0                     # thickness of the strip bent onto the lip; 0: film or paper
marks = "outer"               # the side it is marked on, flat: outer or lip
bush = 8                      # outer diameter of the drill bush

[shop]
temperature = 23              # degrees C
guns = 2
gun_rate = 150                # ml a minute, each
pack_change_minutes = 1       # for a fresh pack and nozzle
seat_minutes = 5              # to lower and seat the deck
screw_rate = 5                # a minute, each driver
drivers = 2

[order]
boats = 12
boats_a_month = 2
spare = 0.05                  # spare fasteners, as a share

# How the lid goes on. Take away the #: of what you have: without [entry] the lid comes
# straight down, without readings the hull is as moulded, without spreaders it is left
# alone.

#: [entry]                    # the lid is turned down on one of its ends
#: first = "bow"              # bow | stern: the end that is set home first
#: angle = 4                  # degrees, of the lid to its seat as it begins to turn

#: [[beam_reading]]           # over the hull's top edge; one table for each place
#: station = "12"             # a label of the sheer table; or x = 2280
#: mould = 1978               # in the mould: as drawn to 5 mm, or you are warned
#: free = 1984                # out of it, with nothing that holds it
#: held = 1980                # with its spreaders or straps on, or leave it out

#: [[spreader]]               # where the hull can be squeezed in or spread
#: x = 2280
#: most = 5                   # how far each side may be forced

#: [readings]                 # what the gaps of a boat are accepted by, read with --readings
#: gap_min = 1.5              # in place of the adhesive's; so may gap_max
#: gap_max = 7
#: step = 2                   # the most two neighbouring readings may differ by

# For `strength` take away each #: below, and put in what your naval architect asks and
# what your tests and data sheets give; the numbers are invented.

#: [loads]                    # limit loads, N for each mm of joint
#: along = 4                  # shear flow along the joint
#: across = 1                 # up or down the lap
#: off = 0.2                  # square to the lap, pulling the lip away
#: factor_bond = 4
#: factor_fastener = 3

#: [[load]]                   # more load on a stretch
#: side = "both"
#: from = 2000
#: to = 2600
#: along = 3
#: what = "bulkhead"

#: [[point_load]]             # a force, shared by so much of the joint about it
#: side = "both"
#: at = 725
#: force = 900                # N
#: direction = "across"       # along | across | off
#: spread = 200
#: what = "bow cleat"

#: [deck_panel]               # the deck's pressure on the joint
#: span = 500                 # the panel's short span
#: length = 1200
#: pressure = 5               # kN/m2; left out: by waterline_length, category (A to D)
                              # and displacement, kg

#: [strength]
#: rules = ["edge_class"]     # published rules to be kept; `strength` lists them all
#: gap_change = 0.3           # of the gap between fasteners while the paste is wet

# For `tolerance` take away each #: below, and put in what your moulds and your trim do;
# the numbers are invented. Means and spreads of shrinkage are per cent, of a twist
# degrees, of the others lengths.

#: [tolerance]
#: boats = 10000              # to be made up
#: seed = 520                 # the same seed makes the same boats

#: [[error]]
#: kind = "hull shrinkage"    # hull shrinkage | lid shrinkage | hull opening | hull twist
                              # | hull trim | hull face | lip thickness
#: law = "normal"             # normal | uniform
#: mean = 0.05                # smaller
#: spread = 0.01              # the standard deviation; of a uniform law half its width

#: [[error]]
#: kind = "hull opening"      # each side outward amidships
#: law = "normal"
#: mean = 0
#: spread = 1

#: [[error]]
#: kind = "hull trim"         # the trimmed edge up
#: law = "uniform"
#: mean = 0
#: spread = 2
#: correlation = 300          # how far along the girth it is still much the same; only
                              # of hull trim, hull face and lip thickness

#: [[error]]
#: kind = "hull face"         # outward
#: law = "normal"
#: mean = 0
#: spread = 0.3
#: correlation = 700
)";
}

std::string_view starter_sheer_text() {
  return R"(station,x,y,z
bow,0,0,980
1,18.1,108.7,979
2,72.1,216.2,975.9
3,161.5,321.4,970.8
4,285.3,423,964
5,442.1,520,955.6
6,630.2,611.3,945.8
7,847.6,695.9,935.1
8,1091.9,772.9,923.6
9,1360.3,841.4,911.8
10,1650,900.7,899.9
11,1957.8,950.1,888.3
12,2280.2,989.1,877.3
13,2613.9,1017.3,867.1
14,2955.1,1034.3,858
15,3300,1040,850
16,3650,1037.6,843.3
17,4000,1030.5,838
18,4300,1020.6,834.5
19,4600,1007.2,832
20,4900,990.4,830.5
transom corner,5200,970,830
transom,5200,0,830
)";
}

}  // namespace sheerlap

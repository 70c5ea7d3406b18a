#pragma once
// An invented machine of 20 parts and a job that says what is known of it: a pulley on a shaft in a
// bush, and a roller on a stud, on one body.

namespace spotblue::test {

inline constexpr const char* kRollerStand = R"toml(
title = "Feed roller stand"
about = "invented for a test: a driven pulley and a roller on one body"
unit = "mm"

[[line]]
name = "shaft line"
at = [50, 45, 0]
[[line]]
name = "stud line"
at = [120, 45, 0]

[[part]]
name = "Body"
kind = "block"
size = [160, 90, 40]
bores = [
  { name = "bush bore", at = [50, 45], diameter = 32.012, through = true },
  { name = "stud bore", at = [120, 45], diameter = 20.010, through = true },
  { name = "cover screws", at = [50, 45], circle = 50, count = 4, angle = 45, diameter = 4.2, depth = 14 },
]

[[part]]
name = "Bush"
kind = "turned"
outside = [{ diameter = 32.042, length = 40, chamfer_start = 1, chamfer_end = 1 }]
inside = [{ diameter = 20.050, through = true, chamfer_start = 0.5, chamfer_end = 0.5 }]

[[part]]
name = "Thrust washer"
kind = "ring"
outside = 30
inside = 20.6
thickness = 2

[[part]]
name = "Shaft"
kind = "turned"
outside = [
  { name = "collar", diameter = 30, length = 8 },
  { name = "journal", diameter = 19.975, length = 50.2 },
  { name = "pulley seat", diameter = 15.995, length = 27.7 },
  { name = "thread", diameter = 12, length = 16, chamfer_end = 1 },
]
keyseats = [{ at = 61.2, length = 20, width = 4.99, depth = 3 }]

[[part]]
name = "Key"
kind = "key"
width = 4.985
height = 5
length = 18

[[part]]
name = "Pulley"
kind = "turned"
outside = [{ diameter = 60, length = 28 }]
inside = [{ diameter = 16.008, through = true, chamfer_start = 1, chamfer_end = 0.5 }]
keyways = [{ width = 5.0, depth = 2.3, bore = 16.008 }]

[[part]]
name = "Washer"
kind = "ring"
outside = 24
inside = 12.6
thickness = 2.5

[[part]]
name = "Nut"
kind = "turned"
outside = [{ diameter = 20.8, length = 10 }]
inside = [{ diameter = 10.2, through = true }]
flats = [{ at = 0, length = 10, across = 18, count = 6 }]

[[part]]
name = "Cover"
kind = "turned"
outside = [{ diameter = 62, length = 8 }]
inside = [{ diameter = 30, length = 4 }, { diameter = 21, length = 4 }]
bores = [{ name = "screw holes", circle = 50, count = 4, angle = 45, diameter = 5.5, through = true, counterbore_diameter = 9.5, counterbore_depth = 5.2, face = "last" }]

[[part]]
name = "Felt"
kind = "ring"
outside = 29.6
inside = 20.2
thickness = 4

[[part]]
name = "Cover screw"
kind = "turned"
outside = [{ name = "head", diameter = 8.5, length = 5 }, { name = "shank", diameter = 5, length = 14 }]

[[part]]
name = "Stud"
kind = "turned"
outside = [
  { name = "thread", diameter = 16, length = 20, chamfer_start = 1.5 },
  { name = "shank", diameter = 19.993, length = 38 },
  { name = "flange", diameter = 32, length = 4 },
  { name = "journal", diameter = 17.975, length = 30.3 },
]
inside = [{ start = 74.3, diameter = 6.8, length = 18 }]

[[part]]
name = "Stud washer"
kind = "ring"
outside = 30
inside = 17
thickness = 3

[[part]]
name = "Stud nut"
kind = "turned"
outside = [{ diameter = 27.71, length = 13 }]
inside = [{ diameter = 13.9, through = true, chamfer_start = 1, chamfer_end = 1 }]
flats = [{ at = 0, length = 13, across = 24, count = 6 }]

[[part]]
name = "Roller"
kind = "turned"
outside = [{ diameter = 50, length = 30 }]
inside = [{ diameter = 18.020, through = true, chamfer_start = 0.5, chamfer_end = 0.5 }]

[[part]]
name = "Keeper"
kind = "ring"
outside = 30
inside = 8.4
thickness = 4

[[part]]
name = "Keeper screw"
kind = "turned"
outside = [{ name = "head", diameter = 13, length = 8 }, { name = "shank", diameter = 8, length = 18 }]

[[place]]
part = "Body"
line = "shaft line"
on = "bush bore"
at = 0
[[place]]
part = "Bush"
line = "shaft line"
at = 0
[[place]]
part = "Thrust washer"
line = "shaft line"
at = -2
[[place]]
part = "Shaft"
line = "shaft line"
face = "collar end"
at = -2
[[place]]
part = "Cover"
line = "shaft line"
at = 40
[[place]]
part = "Felt"
line = "shaft line"
at = 40
[[place]]
part = "Cover screw"
line = "shaft line"
reversed = true
face = "head end"
at = 42.8
circle = { diameter = 50, count = 4, angle = 45 }
[[place]]
part = "Pulley"
line = "shaft line"
face = "first"
against = "Shaft"
against_face = "journal end"
turn = 0
[[place]]
part = "Key"
keyseat_of = "Shaft"
[[place]]
part = "Washer"
line = "shaft line"
against = "Pulley"
against_face = "last"
[[place]]
part = "Nut"
line = "shaft line"
against = "Washer"
against_face = "last"
[[place]]
part = "Stud"
line = "stud line"
face = "flange start"
at = 40
[[place]]
part = "Stud washer"
line = "stud line"
face = "last"
at = 0
[[place]]
part = "Stud nut"
line = "stud line"
face = "last"
at = -3
[[place]]
part = "Roller"
line = "stud line"
at = 44
[[place]]
part = "Keeper"
line = "stud line"
at = 74.3
[[place]]
part = "Keeper screw"
line = "stud line"
reversed = true
face = "head end"
at = 78.3
)toml";

inline constexpr const char* kRollerStandJob = R"toml(
title = "Feed roller stand"

[settings]
default_uncertainty = 0.002

[conditions]
bench_c = 20
running_c = 40

[[parts]]
part = "Body"
material = "grey cast iron A48 class 20"
state = "as found"

[[parts]]
part = "Bush"
material = "bearing bronze C93200 (SAE 660)"
state = "as found"

[[parts]]
part = "Thrust washer"
material = "bearing bronze C93200 (SAE 660)"
state = "as found"

[[parts]]
part = "Shaft"
material = "carbon steel 1045"
state = "as found"

[[parts]]
part = "Key"
material = "carbon steel 1045"
state = "as found"

[[parts]]
part = "Pulley"
material = "grey cast iron A48 class 20"
state = "as found"

[[parts]]
part = "Washer"
material = "carbon steel 1020"
state = "as found"

[[parts]]
part = "Nut"
material = "carbon steel 1020"
state = "as found"

[[parts]]
part = "Cover"
material = "grey cast iron A48 class 20"
state = "as found"

[[parts]]
part = "Felt"
material = "felt"
state = "as found"
thickness = 4.4
squeeze = [0.3, 0.5]

[[parts]]
part = "Cover screw"
material = "carbon steel 1020"
state = "as found"

[[parts]]
part = "Stud"
material = "carbon steel 1045"
state = "as found"

[[parts]]
part = "Stud washer"
material = "carbon steel 1020"
state = "as found"

[[parts]]
part = "Stud nut"
material = "carbon steel 1020"
state = "as found"

[[parts]]
part = "Roller"
material = "bearing bronze C93200 (SAE 660)"
state = "as found"

[[parts]]
part = "Keeper"
material = "carbon steel 1020"
state = "as found"

[[parts]]
part = "Keeper screw"
material = "carbon steel 1020"
state = "as found"

[[fits]]
hole = "Body: bore 32.012"
shaft = "Bush: outside 32.042"
class = "H7/r6"
nominal = 32

[[fits]]
hole = "Body: bore 20.01"
shaft = "Stud: outside 19.993"
class = "H7/h6"
nominal = 20

[[fits]]
hole = "Bush: bore 20.05"
shaft = "Shaft: outside 19.975"
clearance = [0.02, 0.08]

[[fits]]
hole = "Thrust washer: bore 20.6"
shaft = "Shaft: outside 19.975"
clearance = [0.3, 1]

[[fits]]
hole = "Cover: bore 21"
shaft = "Shaft: outside 19.975"
clearance = [0.5, 1.5]

[[fits]]
hole = "Felt: bore 20.2"
shaft = "Shaft: outside 19.975"
clearance = [0.1, 0.5]

[[fits]]
hole = "Pulley: bore 16.008"
shaft = "Shaft: outside 15.995"
class = "H7/h6"
nominal = 16

[[fits]]
hole = "Washer: bore 12.6"
shaft = "Shaft: outside 12"
clearance = [0.3, 1]

[[fits]]
hole = "Cover: bore 30"
shaft = "Felt: outside 29.6"
clearance = [0.2, 0.8]

[[fits]]
hole = "Cover: bore 5.5 @ 1.4 #1"
shaft = "Cover screw: outside 5"
clearance = [0.3, 0.8]

[[fits]]
hole = "Cover: bore 5.5 @ 1.4 #2"
shaft = "Cover screw: outside 5"
clearance = [0.3, 0.8]

[[fits]]
hole = "Cover: bore 5.5 @ 1.4 #3"
shaft = "Cover screw: outside 5"
clearance = [0.3, 0.8]

[[fits]]
hole = "Cover: bore 5.5 @ 1.4 #4"
shaft = "Cover screw: outside 5"
clearance = [0.3, 0.8]

[[fits]]
hole = "Stud washer: bore 17"
shaft = "Stud: outside 16"
clearance = [0.5, 1.5]

[[fits]]
hole = "Roller: bore 18.02"
shaft = "Stud: outside 17.975"
class = "H8/f7"
nominal = 18

[[fits]]
hole = "Keeper: bore 8.4"
shaft = "Keeper screw: outside 8"
clearance = [0.3, 1.2]

[[fits]]
hole = "Shaft: slot 4.99"
shaft = "Key: width 4.985"
class = "N9/h9"
nominal = 5

[[fits]]
hole = "Pulley: slot 5"
shaft = "Key: width 4.985"
class = "JS9/h9"
nominal = 5

[[wants]]
between = ["Body: face 160x90 @ 40", "Cover: face 62 @ 0"]
kind = "touch"
within = 0.01

[[wants]]
between = ["Body: face 160x90 @ 40", "Stud: face 32 @ 58"]
kind = "touch"
within = 0.01

[[wants]]
between = ["Body: face 160x90 @ 0", "Stud washer: face 30 @ 3"]
kind = "touch"
within = 0.01

[[wants]]
between = ["Bush: face 30.042 @ 0", "Thrust washer: face 30 @ 2"]
kind = "touch"
within = 0.01

[[wants]]
between = ["Bush: face 30.042 @ 40", "Cover: face 62 @ 0"]
kind = "touch"
within = 0.01

[[wants]]
between = ["Bush: face 30.042 @ 40", "Felt: face 29.6 @ 0"]
kind = "touch"
within = 0.01

[[wants]]
between = ["Thrust washer: face 30 @ 0", "Shaft: face 30 @ 8"]
kind = "touch"
within = 0.01

[[wants]]
between = ["Shaft: face 19.975", "Pulley: face 60 @ 0"]
kind = "touch"
within = 0.01

[[wants]]
between = ["Shaft: face 20x4.99", "Key: face 18x4.99 @ 0"]
kind = "touch"
within = 0.01

[[wants]]
between = ["Shaft: face 15.995", "Washer: face 24 @ 0"]
gap = [0.1, 0.6]

[[wants]]
between = ["Cover: face 30", "Felt: face 29.6 @ 4"]
kind = "touch"
within = 0.01

[[wants]]
between = ["Cover: face 62 @ 8", "Pulley: face 60 @ 0"]
kind = "end play"
gap = [0.1, 0.35]

[[wants]]
between = ["Pulley: face 28x5", "Key: face 18x4.99 @ 5"]
gap = [0.1, 0.5]

[[wants]]
between = ["Pulley: face 60 @ 28", "Washer: face 24 @ 0"]
kind = "touch"
within = 0.01

[[wants]]
between = ["Washer: face 24 @ 2.5", "Nut: face 20.78x18 @ 0"]
kind = "touch"
within = 0.01

[[wants]]
between = ["Stud: face 19.993", "Stud washer: face 30 @ 3"]
gap = [0.5, 3]

[[wants]]
between = ["Stud: face 32 @ 62", "Roller: face 50 @ 0"]
kind = "touch"
within = 0.01

[[wants]]
between = ["Stud: face 17.975", "Keeper: face 30 @ 0"]
kind = "touch"
within = 0.01

[[wants]]
between = ["Stud washer: face 30 @ 0", "Stud nut: face 27.71x24 @ 13"]
kind = "touch"
within = 0.01

[[wants]]
between = ["Roller: face 50 @ 30", "Keeper: face 30 @ 0"]
kind = "end play"
gap = [0.1, 0.5]

[[wants]]
between = ["Keeper: face 30 @ 4", "Keeper screw: face 13 @ 8"]
kind = "touch"
within = 0.01

[[fits]]
hole = "Cover: bore 9.5 @ 5.4 #1"
shaft = "Cover screw: outside 8.5"
clearance = [0.5, 1.5]

[[fits]]
hole = "Cover: bore 9.5 @ 5.4 #2"
shaft = "Cover screw: outside 8.5"
clearance = [0.5, 1.5]

[[fits]]
hole = "Cover: bore 9.5 @ 5.4 #3"
shaft = "Cover screw: outside 8.5"
clearance = [0.5, 1.5]

[[fits]]
hole = "Cover: bore 9.5 @ 5.4 #4"
shaft = "Cover screw: outside 8.5"
clearance = [0.5, 1.5]

[[wants]]
between = ["Cover screw: face 8.5 @ 0", "Pulley: face 60 @ 0"]
gap = [0.2, 1]

[[wants]]
of = "Shaft"
kind = "end play"
gap = [0.1, 0.35]

[[wants]]
of = "Roller"
kind = "end play"
gap = [0.1, 0.5]

[[turning]]
part = "Shaft"
rpm = 200
duty = "intermittent"
load_n = 60
thrust_n = 10
at = "Pulley: outside 60"

[[turning]]
part = "Roller"
rpm = 120
duty = "intermittent"
load_n = 80
thrust_n = 5
)toml";

}  // namespace spotblue::test

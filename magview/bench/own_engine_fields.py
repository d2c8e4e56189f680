"""The entries of an engine's and of an installation's file, in the order they are measured."""

from __future__ import annotations

from magview.bench.own_entry import Entry, Page
from magview.spec.language import marked

ENGINE_PAGES: tuple[Page, ...] = (
    Page(
        marked("Cylinders and firing order"),
        marked("From the engine's data plate and the maker's manual."),
        (
            Entry("name", "text", marked("Name"),
                  marked("What you call this engine: type, number, aircraft."),
                  marked("One line of up to 120 characters.")),
            Entry("cylinders", "whole", marked("Cylinders"),
                  marked("How many cylinders the two magnetos fire."),
                  marked("A whole number.")),
            Entry("arrangement", "choice", marked("Arrangement"),
                  marked("How the cylinders stand round the crank."),
                  marked("Only a radial engine can have link rods on a master rod."),
                  choices=(("radial", marked("radial")), ("inline", marked("in line")),
                           ("opposed", marked("opposed")), ("vee", marked("vee")))),
            Entry("rotation", "choice", marked("Rotation of the crank"),
                  marked("Which way the crank turns, seen from the propeller end."),
                  marked("Clockwise or anticlockwise."),
                  choices=(("clockwise", marked("clockwise")), ("anticlockwise", marked("anticlockwise")))),
            Entry("firing_order", "order", marked("Firing order"),
                  marked("The cylinders in the order they fire, such as 1-3-5-2-4."),
                  marked("Begins with 1 and names each cylinder once.")),
        ),
    ),
    Page(
        marked("Timing wanted"),
        marked("From the maker's current manual, which governs."),
        (
            Entry("firing_btdc_deg.left", "angle", marked("Left magneto fires before top dead centre"),
                  marked("Crank degrees before top dead centre at which the left magneto should fire No. 1."),
                  marked("Larger is earlier; staggered settings, left unlike right, are allowed."), "°"),
            Entry("firing_btdc_deg.right", "angle", marked("Right magneto fires before top dead centre"),
                  marked("Crank degrees before top dead centre at which the right magneto should fire No. 1."),
                  marked("An engine with a single magneto has the same figure twice."), "°"),
            Entry("timing_tolerance_deg", "angle", marked("Timing tolerance"),
                  marked("How far off the wanted timing either magneto may fire, either way."),
                  marked("Above 0: no reading is ever exact."), "°"),
            Entry("synchronising_tolerance_deg", "angle", marked("Synchronising tolerance"),
                  marked("How far apart the two magnetos may fire, beyond a wanted stagger."),
                  marked("Above 0: no reading is ever exact."), "°"),
        ),
    ),
    Page(
        marked("Stroke and rod"),
        marked("From the manual; they tell how far the piston stands down at the timing."),
        (
            Entry("stroke_mm", "length", marked("Stroke"),
                  marked("How far the piston travels from one dead centre to the other."),
                  marked("Above 0, and below twice the rod's length.")),
            Entry("rod_mm", "length", marked("Connecting rod"),
                  marked("From the centre of its big end to that of its piston pin; the master rod's in a radial."),
                  marked("Longer than half the stroke, or the crank could not turn.")),
        ),
    ),
    Page(
        marked("Link rods"),
        marked("For a radial engine with a master rod. None, or not known? Leave all empty."),
        (
            Entry("articulation.master_cylinder", "whole", marked("Cylinder of the master rod"),
                  marked("The cylinder whose rod carries all others."),
                  marked("One of the engine's cylinders."), optional=True),
            Entry("articulation.knuckle_radius_mm", "length", marked("Radius of the knuckle pins"),
                  marked("From the crank pin's centre to the pins of the link rods."),
                  marked("0 or more; 0 gives evenly spaced dead centres."), optional=True),
            Entry("articulation.link_rod_mm", "length", marked("Link rods"),
                  marked("From the knuckle pin's centre to the piston pin's."),
                  marked("Longer than half the stroke and the knuckle radius together."), optional=True),
            Entry("articulation.knuckle_angles_deg", "angles", marked("Angles of the knuckle pins"),
                  marked("By cylinder number, from the master rod's axis in the direction of rotation."),
                  marked("One for each cylinder, or none: then they stand as the cylinders do."), "°",
                  optional=True),
        ),
    ),
)  # fmt: skip

INSTALLATION_PAGES: tuple[Page, ...] = (
    Page(
        marked("Magneto and engine"),
        marked("The two that belong together: those in this window, shipped ones, or files of yours."),
        (
            Entry("magneto", "file", marked("Magneto"),
                  marked("The magneto that is mounted."),
                  marked("A complete magneto: of this window, shipped, or a file.")),
            Entry("engine", "file", marked("Engine"),
                  marked("The engine that it is mounted on."),
                  marked("A complete engine: of this window, shipped, or a file.")),
            Entry("position", "choice", marked("Mounted"),
                  marked("Which of the engine's magnetos it is, seen from the pilot's seat."),
                  marked("Left or right of two, or the single one."),
                  choices=(("left", marked("left")), ("right", marked("right")), ("single", marked("single")))),
        ),
    ),
    Page(
        marked("Coupling and drive"),
        marked("Count the teeth on both faces of the coupling's disc; paint a mark before you begin."),
        (
            Entry("coupling.magneto_teeth", "whole", marked("Teeth on the magneto's side"),
                  marked("Teeth of the disc's face that the magneto's flange sits in."),
                  marked("A whole number; one more or fewer than the other side makes the finest steps.")),
            Entry("coupling.drive_teeth", "whole", marked("Teeth on the drive's side"),
                  marked("Teeth of the disc's face that the drive's flange sits in."),
                  marked("A whole number.")),
            Entry("rotor_turns_per_crank_turn", "number", marked("Rotor turns per crank turn"),
                  marked("How fast the drive turns the rotor; cylinders over twice the poles, for a spark a pole."),
                  marked("Above 0: count ten turns of the propeller, plugs out, to be sure.")),
            Entry("drive_play_deg", "angle", marked("Play of the drive train"),
                  marked("How far the crank turns back before the drive's flange follows, the coupling not counted."),
                  marked("0 or more, in crank degrees. Not known? Leave it empty and always lead in with rotation."),
                  "°", optional=True),
        ),
    ),
)  # fmt: skip

"""Captions of the pictures: their parts in the order a teacher shows them, each with one sentence."""

from __future__ import annotations

from typing import Literal

from magview.spec.language import marked

End = Literal["breaker", "drive", "crank", "lead"]

ENDS: dict[End, str] = {
    "breaker": marked("Breaker end"),
    "drive": marked("Drive end: the coupling"),
    "crank": marked("Crank, timing disc and piston of No. 1"),
    "lead": marked("Switch lead"),
}
"""The pictures with parts to name, with their titles."""

CAPTIONS: dict[End, dict[str, str]] = {
    "breaker": {
        marked("rotor"): marked("A magnet whose poles alternate round it; the engine turns it."),
        marked("pole shoe"): marked("Iron that leads the magnet's field through the coil's core and back."),
        marked("cam"): marked("It turns with the rotor, or in a fixed ratio to it, and has a lobe for each spark."),
        marked("heel"): marked("The block on the breaker arm that rides on the cam; it wears."),
        marked("breaker arm"): marked("It swings about its pivot and carries the moving contact."),
        marked("pivot"): marked("The pin the breaker arm swings about."),
        marked("spring"): marked("It presses the arm towards the cam and closes the contacts."),
        marked("contacts"): marked("As they part, the primary current breaks and the spark jumps."),
        marked("contact screw"): marked("It moves the fixed contact: nearer or further off, later or earlier."),
        marked("lock screw"): marked("It holds the contact screw, and may carry it along as it is tightened."),
        marked("backplate"): marked("It carries contacts and arm; turned about the cam it shifts the opening alone."),
        marked("clamp screw"): marked("The clamp screws hold the backplate in its slots."),
        marked("step"): marked("An edge on the cam along which a straightedge is laid."),
        marked("rim mark"): marked("One for each lobe: with the straightedge in line, that lobe should just open."),
    },
    "drive": {
        marked("drive flange"): marked("The engine turns it; its slots take the disc's outer teeth."),
        marked("disc"): marked("It joins both flanges, with one more tooth or fewer on one face than on the other."),
        marked("magneto flange"): marked("It sits on the rotor's shaft, in the disc's inner teeth."),
        marked("painted mark"): marked("Paint across all three before anything is taken apart."),
    },
    "crank": {
        marked("crank"): marked("It turns once for each up and down of the piston."),
        marked("connecting rod"): marked("It joins crank and piston."),
        marked("piston pin"): marked("The rod swings about it in the piston."),
        marked("piston"): marked("About top dead centre it hardly moves while the crank does."),
        marked("cylinder"): marked("No. 1 is the one that the timing is read on."),
        marked("timing disc"): marked("Degrees before and after top dead centre, set to zero by the piston stop."),
        marked("pointer"): marked("Fixed to the engine: it reads the disc."),
    },
    "lead": {
        marked("coil"): marked("The primary winding, grounded at one end."),
        marked("contacts"): marked("Closed, they carry the primary current; open, they break it."),
        marked("capacitor"): marked("It takes up the current as the contacts part, so that they burn less."),
        marked("plug"): marked("It joins the lead to the magneto's terminal; a jumper to ground goes there too."),
        marked("grounding tab"): marked("With the plug out it grounds the coil on the case – if it touches."),
        marked("lead"): marked("The wire to the switch; broken inside, it leaves the magneto live."),
        marked("switch"): marked("Off, it is closed and grounds the primary: no spark."),
    },
}  # fmt: skip
"""Names of parts as the drawings have them, in order, each with its caption."""

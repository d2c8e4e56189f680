"""What makes the start quick without changing what is done: the order of imports, and dead objects looked for later.

PySide reads the source text of every module that is imported after it (to see whether it names PySide), so what needs
no Qt comes before. Nearly all that a start makes stays for good, and Python's search for dead objects, which looks
through it again and again, costs a twentieth of the start and pauses of its own.
"""

from __future__ import annotations

import gc
from importlib import import_module

_WITHOUT_QT = (
    "magview.bench.autosave",
    "magview.bench.store",
    "magview.bench.describe",
    "magview.bench.verdict",
    "magview.drawing.breaker_end",
    "magview.drawing.crank_end",
    "magview.drawing.drive_end",
    "magview.upkeep.places",
    "magview.upkeep.trace",
)
"""What the first picture needs beside Qt, for which the command line has no use before."""


def put_off() -> None:
    """Put the search for dead objects off: before anything large is imported."""
    gc.disable()


def bring_forward() -> None:
    """Import what the window needs beside Qt; before Qt."""
    for name in _WITHOUT_QT:
        import_module(name)


def resume() -> None:
    """Look for dead objects from now on: what is there now is not looked through again. Nothing unless put off."""
    if not gc.isenabled():
        gc.freeze()
        gc.enable()

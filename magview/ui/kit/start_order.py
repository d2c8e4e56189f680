"""Quick start without a change in what is done: imports put off or ordered, dead objects looked for later.

PySide reads the source text of every module that is imported after it (to see whether it names PySide), so what needs
no Qt comes before. The first picture needs no action; Python takes some 0.5 ms to make a frozen dataclass, and there
are forty of them. Nearly all that a start makes stays for good, and Python's search for dead objects, which looks
through it again and again, costs a twentieth of the start and pauses of its own. Figures: tests/benchmarks/README.md.
"""

from __future__ import annotations

import gc
import sys
from importlib import import_module
from importlib.util import LazyLoader, find_spec, module_from_spec

_AT_FIRST_USE = ("magview.bench.actions", "magview.bench.apply", "magview.bench.describe")
"""Modules that load when something of them is first asked for, wherever they are imported as modules."""

_START = (
    "magview.bench.autosave",
    "magview.practice.progress",
    "magview.upkeep.places",
    "magview.upkeep.trace",
)
"""Modules that the start page needs beside Qt, for which the command line has no use before; …"""

_BENCH = (
    *_START,
    "magview.bench.events",
    "magview.bench.placing",
    "magview.bench.store",
    "magview.drawing.breaker_hero",
    "magview.drawing.place_names",
    "magview.physics.electric.magnet",
)
"""… and those that the bench's first picture needs."""


def put_off() -> None:
    """Put the search for dead objects off: before anything large is imported."""
    gc.disable()


def bring_forward(bench: bool = True) -> None:
    """Import what the window needs beside Qt, and put off what it does not; before Qt.

    `bench`: the window opens at the bench, not at its start page.
    """
    for name in _AT_FIRST_USE:
        _load_at_first_use(name)
    for name in _BENCH if bench else _START:
        import_module(name)


def resume() -> None:
    """Look for dead objects from now on: what is there now is not looked through again. Nothing unless put off."""
    if not gc.isenabled():
        gc.freeze()
        gc.enable()


def _load_at_first_use(name: str) -> None:
    spec = find_spec(name)
    if name in sys.modules or spec is None or spec.loader is None:
        return
    spec.loader = LazyLoader(spec.loader)
    module = sys.modules[name] = module_from_spec(spec)
    spec.loader.exec_module(module)
    package, _, short = name.rpartition(".")
    setattr(import_module(package), short, module)  # where it stands already, an import asks no further

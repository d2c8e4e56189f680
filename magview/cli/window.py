"""The commands that open the window, on a magneto or on any file of ours; without a display they say so."""

from __future__ import annotations

import sys
from collections.abc import Callable
from pathlib import Path
from typing import Any

from magview.spec.base import SpecError
from magview.spec.engine import Installation
from magview.spec.files import read_bench_item
from magview.spec.formats import kind_of
from magview.spec.library import (
    DEFAULT_MAGNETO,
    find_installation,
    find_magneto,
    first_shipped,
    shipped_installation_of,
)
from magview.spec.magneto import Magneto

PASS, FAIL = 0, 1

ReadingsText = Callable[[Magneto, float, float], str]
"""A magneto's readings at a backplate and a contact-screw angle [deg], as text: what there is without a window."""


def show_named(name: str | None, text: ReadingsText, bench: bool = False) -> int:
    """Open the bench on a magneto by its short name or file.

    None: the window's start page, or the bench that a killed program left; with `bench`, the bench on the first one.
    """
    if name is None and not bench:
        return _show(None, text, recover=True, first="start")
    return _show(_as_shipped(name or DEFAULT_MAGNETO), text, recover=name is None)


def show_file(file: str | None, box: bool, text: ReadingsText) -> int:
    """Open the window on any of our files. Raises SpecError for one that cannot be read.

    `box`: there is no terminal, so that what is amiss is said in the window.
    """
    if file is None:
        return _show(None, text, recover=True, box=box, first="start")
    path, why_not = Path(file), ""
    try:
        if kind_of(path) in ("magneto", "installation"):
            from magview.physics.cam.setting import internal_timing

            item = read_bench_item(path)
            internal_timing(item if isinstance(item, Magneto) else item.magneto)
            return _show(item, text, recover=False, box=box)
    except SpecError as error:
        if not box:
            raise
        why_not = str(error)

    def then(window: Any) -> None:
        from magview.ui.shell.opening import open_in, say_why_not

        if why_not:
            say_why_not(window, why_not)
        else:
            open_in(window, path)

    return _show(None, text, recover=False, box=box, then=then, first="start")


def _as_shipped(name: str) -> Magneto | Installation:
    """A magneto by name or file, on its engine where one is shipped for it."""
    from magview.physics.cam.setting import internal_timing

    magneto = find_magneto(name)
    internal_timing(magneto)  # a cam that cannot be followed is refused here, in one sentence
    installation = shipped_installation_of(name)
    return magneto if installation is None else find_installation(installation)


def _show(
    item: Magneto | Installation | None,
    text: ReadingsText,
    *,
    recover: bool,
    box: bool = False,
    then: Callable[[Any], None] | None = None,
    first: str = "bench",
) -> int:
    from magview.ui.kit.preflight import say_in_a_box, why_no_window
    from magview.ui.kit.start_order import bring_forward, put_off, resume

    put_off()
    bring_forward(bench=first == "bench")
    reason = why_no_window()
    if reason is None:
        from magview.ui.shell.app import run

        return run(item, recover, then, first)
    resume()
    _say(f"No window: {reason}\n")
    if box:
        say_in_a_box(reason)
    if then is not None:
        return FAIL
    item = item or first_shipped()
    magneto = item if isinstance(item, Magneto) else item.magneto
    _say(text(magneto, magneto.designed_setting.backplate_deg, 0.0))
    _say("\nOther commands that need no window: `magview readings`, `magview adjust`.")
    return PASS


def _say(text: str) -> None:
    sys.stdout.write(text + "\n")

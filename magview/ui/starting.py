"""Python's search for dead objects, put off while the program starts.

Nearly all that is made then stays for good, and looking through it again and again costs a twentieth of the start and
pauses of its own.
"""

from __future__ import annotations

import gc


def put_off() -> None:
    """Before the window is imported."""
    gc.disable()


def resume() -> None:
    """Once everything is in place: what is there now is not looked through again. Does nothing unless put off."""
    if not gc.isenabled():
        gc.freeze()
        gc.enable()

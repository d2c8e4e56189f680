"""Each person's own folders for what the program keeps; platformdirs knows where every platform wants them.

On Linux, unless the XDG variables say otherwise: work in ~/.local/share/magview, log and reports in
~/.local/state/magview.
"""

from __future__ import annotations

import contextlib
import os
import tempfile
from pathlib import Path

import platformdirs

from magview.spec.language import tr

_NAME = "magview"

_PROBE_BYTES = 64_000
"""Room for a bench and an attempt; a disk that does not take these is full for us."""


def work_folder() -> Path:
    """Return where benches and attempts are kept while they are worked on."""
    return platformdirs.user_data_path(_NAME, appauthor=False) / "bench"


def class_folder() -> Path:
    """Return where an instructor's set, a pupil's name and what waits to be handed in are kept."""
    return platformdirs.user_data_path(_NAME, appauthor=False) / "class"


def log_folder() -> Path:
    """Return where the log is."""
    return platformdirs.user_log_path(_NAME, appauthor=False)


def report_folder() -> Path:
    """Return where reports of faults are kept until somebody deletes them."""
    return platformdirs.user_state_path(_NAME, appauthor=False) / "reports"


def trouble_with(folder: Path) -> str | None:
    """One sentence if nothing can be kept in a folder, found out by keeping something there; None if it can."""
    temporary = None
    try:
        folder.mkdir(parents=True, exist_ok=True)
        handle, temporary = tempfile.mkstemp(dir=folder, prefix=".probe-")
        with os.fdopen(handle, "wb") as file:
            file.write(bytes(_PROBE_BYTES))
            file.flush()
            os.fsync(file.fileno())
    except OSError as error:
        return tr("nothing can be kept in {folder}: {reason}", folder=folder, reason=error.strerror or error)
    finally:
        if temporary is not None:
            with contextlib.suppress(OSError):
                os.unlink(temporary)
    return None

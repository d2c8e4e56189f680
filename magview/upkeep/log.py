"""The log: what a person is asked for when something is amiss. Small, turned over, and never in the way."""

from __future__ import annotations

import logging
from logging.handlers import RotatingFileHandler
from pathlib import Path

FILE = "magview.log"

MAX_BYTES, OLD_ONES = 256_000, 3
"""Size at which a log is turned over, and how many old ones stay: 1 MB altogether."""

_log = logging.getLogger("magview")


class _Quiet(RotatingFileHandler):
    """A log that cannot be written, or not turned over while another bench has it open, stops nobody's work."""

    def handleError(self, record: logging.LogRecord) -> None:
        pass


def open_log(folder: Path) -> None:
    """Log into a folder from now on; the file is opened with the first line."""
    close_log()
    try:
        folder.mkdir(parents=True, exist_ok=True)
        handler = _Quiet(folder / FILE, maxBytes=MAX_BYTES, backupCount=OLD_ONES, encoding="utf-8", delay=True)
    except OSError:
        return
    handler.setFormatter(logging.Formatter("%(asctime)s %(process)d %(levelname)s %(message)s"))
    _log.addHandler(handler)
    _log.setLevel(logging.INFO)
    _log.propagate = False


def close_log() -> None:
    """Log nowhere."""
    for handler in list(_log.handlers):
        _log.removeHandler(handler)
        handler.close()
    if not _log.handlers:
        _log.addHandler(logging.NullHandler())

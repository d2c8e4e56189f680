"""Random hands on the real window: a few seconds here, as many minutes as `MAGVIEW_SOAK_MINUTES` says by option.

Each minute a line says what is held with everything but the workbench closed: `memory_mb` is the system's figure,
`in_use_mb` what of it was asked for and not given back, `spare_mb` what was given back and the C library keeps. Lines
that begin with "anew" are to be compared with one another: the workbench is then a new one each time.
"""

from __future__ import annotations

import os
import random
import sys
import time
from collections import Counter
from statistics import median

import pytest
from PySide6.QtCore import QSettings, QStandardPaths

from tests.soak.driver import Soak, our_objects

MINUTES = float(os.environ.get("MAGVIEW_SOAK_MINUTES", "0"))
SEED = int(os.environ.get("MAGVIEW_SOAK_SEED", random.randrange(10**6)))
ACTS = 250
WARM_S, LOOK_S, ANEW_S = 120.0, 60.0, 300.0
MARGINS = {
    "in_use_mb": 10.0, "blocks": 50_000.0, "ours": 2.0, "maps": 20.0, "files": 2.0, "threads": 1.0, "windows": 2.0,
}  # fmt: skip
"""How much more of each a new workbench may find later than earlier; medians of the two halves are compared.

`ours`, the objects of our windows' classes, is the same each time, and any window that stays adds to it. Of memory a
window is 1 to 8 MB and up to 14,000 blocks: a margin has room for caches that are still filling and for fonts first
used late, and a loss with each window passes it within minutes.
"""


class Account:
    """What is held from minute to minute."""

    def __init__(self, soak: Soak) -> None:
        self.soak = soak
        self.begin = self.looked = time.monotonic()
        self.next_anew = self.begin + WARM_S
        self.tidied: list[dict[str, float]] = []
        """With all closed but the workbench, once everything is warm, and…"""
        self.anew: list[dict[str, float]] = []
        """…with a new workbench; and…"""
        self.ours: list[Counter[str]] = []
        """…the objects of our windows' classes then."""

    @property
    def minutes(self) -> float:
        """Since the beginning."""
        return (time.monotonic() - self.begin) / 60.0

    def look(self, done: int) -> None:
        """Once a minute."""
        now = time.monotonic()
        if now - self.looked <= LOOK_S:
            return
        self.looked, held = now, self.soak.tidy()
        if now - self.begin > WARM_S:
            self.tidied.append(held)
        sys.stderr.write(f"{self.minutes:.0f} min, {done} acts, {told(held)}\n")
        if now > self.next_anew:
            self.next_anew = now + ANEW_S
            self.look_anew(done)

    def look_anew(self, done: int) -> None:
        """Every few minutes, and at the end."""
        self.anew.append(self.soak.anew())
        self.ours.append(our_objects())
        more = self.ours[-1] - self.ours[0]
        sys.stderr.write(f"anew {self.minutes:.0f} min, {done} acts, {told(self.anew[-1])} {dict(more) or ''}\n")

    def settle(self) -> None:
        """Nothing may be held later that was not held earlier."""
        first, last = self.tidied[0], self.tidied[-1]
        # The C library keeps what is given back, in some minutes 100 MB more than in others: halves are compared.
        minutes = max(1, len(self.tidied) // 2)
        before, after = (middle(part)["memory_mb"] for part in (self.tidied[:minutes], self.tidied[-minutes:]))
        assert after < before * 1.15 + 20
        for name in ("files", "threads"):
            assert last[name] <= first[name] + 4, (name, first, last)
        half = len(self.anew) // 2
        earlier, later = middle(self.anew[:half]), middle(self.anew[half:])
        for name, margin in MARGINS.items():
            assert later[name] <= earlier[name] + margin, (name, earlier, later, self.ours[-1] - self.ours[0])


def told(held: dict[str, float]) -> str:
    """What is held, in a line."""
    return ", ".join(f"{name} {number:,.0f}" for name, number in held.items())


def middle(held: list[dict[str, float]]) -> dict[str, float]:
    """The median of each figure."""
    return {name: median(one[name] for one in held) for name in held[0]}


@pytest.mark.process
@pytest.mark.usefixtures("qtbot")
def test_nothing_breaks_under_random_hands(tmp_path, monkeypatch):
    QStandardPaths.setTestModeEnabled(True)
    QSettings.setPath(QSettings.Format.IniFormat, QSettings.Scope.UserScope, str(tmp_path / "settings"))
    for name in ("XDG_DATA_HOME", "XDG_STATE_HOME", "XDG_CONFIG_HOME", "XDG_CACHE_HOME"):
        monkeypatch.setenv(name, str(tmp_path / name))
    folder = tmp_path / "files"
    folder.mkdir()
    soak = Soak(SEED, folder)
    soak.answer_files(monkeypatch)
    account, done = Account(soak), 0
    try:
        while done < ACTS if not MINUTES else account.minutes < MINUTES:
            soak.step()
            done += 1
            assert not soak.troubles, soak.troubles[0]
            if done % 100 == 0:
                soak.troubles += soak.unreadable()
            if MINUTES:
                account.look(done)
        if account.anew:
            account.look_anew(done)
        assert not soak.troubles, soak.troubles[0]
    finally:
        soak.end()
        QStandardPaths.setTestModeEnabled(False)
        sys.stderr.write(f"seed {SEED}: {done} acts {dict(soak.count)}\n")
    if account.anew:
        account.settle()

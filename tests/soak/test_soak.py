"""Random hands on the real window: a few seconds here, as many minutes as `MAGVIEW_SOAK_MINUTES` says by option."""

from __future__ import annotations

import os
import random
import sys
import time

import pytest
from PySide6.QtCore import QSettings, QStandardPaths

from tests.soak.driver import Soak

MINUTES = float(os.environ.get("MAGVIEW_SOAK_MINUTES", "0"))
SEED = int(os.environ.get("MAGVIEW_SOAK_SEED", random.randrange(10**6)))
ACTS = 250
WARM_S, LOOK_S = 120.0, 60.0


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
    begin = looked = time.monotonic()
    first, last = None, {}
    done = 0
    try:
        while done < ACTS if not MINUTES else time.monotonic() < begin + 60 * MINUTES:
            soak.step()
            done += 1
            assert not soak.troubles, soak.troubles[0]
            now = time.monotonic()
            if done % 100 == 0:
                soak.troubles += soak.unreadable()
            if MINUTES and now - looked > LOOK_S:
                looked, last = now, soak.tidy()
                if now - begin > WARM_S:
                    first = first or last
                sys.stderr.write(f"{(now - begin) / 60:.0f} min, {done} acts, {last}\n")
        assert not soak.troubles, soak.troubles[0]
    finally:
        soak.end()
        QStandardPaths.setTestModeEnabled(False)
        sys.stderr.write(f"seed {SEED}: {done} acts {dict(soak.count)}\n")
    if first is not None:
        assert last["memory_mb"] < first["memory_mb"] * 1.15 + 20
        for held in ("files", "threads", "windows"):
            assert last[held] <= first[held] + 4, (held, first, last)

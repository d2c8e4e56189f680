"""A program killed while it saves loses nothing that it said was saved."""

from __future__ import annotations

import json
import os
import subprocess
import sys
from pathlib import Path

import pytest

KILLS = int(os.environ.get("MAGVIEW_KILLS", "40"))
"""500 with MAGVIEW_KILLS=500: some minutes."""


@pytest.mark.process
@pytest.mark.skipif(not hasattr(os, "fork"), reason="kills children forked from one parent")
def test_every_kill_leaves_the_last_committed_step(tmp_path):
    done = subprocess.run(
        [sys.executable, "-m", "tests.job.kills", str(tmp_path), str(KILLS), "1"],
        capture_output=True, text=True, cwd=Path(__file__).parents[2], timeout=60 + 2 * KILLS, check=False,
    )  # fmt: skip
    assert done.returncode == 0, done.stderr
    found = json.loads(done.stdout)
    assert found["wrong"] == []
    assert found["kills"] == KILLS
    # Some came while a file was being written, or just after it was: the moments were the ones that matter.
    assert found["half_written"] + found["not_told"] >= 1

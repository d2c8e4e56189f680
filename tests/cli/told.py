"""What a command tells: its exit code, and what it writes to both streams."""

from __future__ import annotations

import pytest

from magview.cli.main import main


def run(capsys: pytest.CaptureFixture[str], *argv: str) -> tuple[int, str, str]:
    """Run ``magview`` with some words; returns exit code, output and errors."""
    try:
        code = main(list(argv))
    except SystemExit as stop:
        code = int(stop.code or 0)
    told = capsys.readouterr()
    return code, told.out, told.err

"""``python -m magview`` is the ``magview`` command; an installation in pieces is told of in one sentence."""

from __future__ import annotations

import sys


def main() -> int:
    """Run the command line; returns the exit code."""
    return _run("main")


def window() -> int:
    """Open the window, on the file that is named if one is: the entry point that needs no console."""
    return _run("window")


def _run(entry: str) -> int:
    from magview.ui.kit.start_order import put_off, resume

    put_off()
    try:
        from magview.cli import main as cli

        resume()
        code: int = getattr(cli, entry)()
        return code
    except ModuleNotFoundError as error:
        if error.name is None or error.name.startswith("magview"):
            raise
        if sys.stderr is not None:
            sys.stderr.write(
                f"magview: the Python package {error.name} is missing and nothing runs without it; "
                "install magview again, with `pip install --force-reinstall` and what it was installed from\n"
            )
        return 2


if __name__ == "__main__":
    raise SystemExit(main())

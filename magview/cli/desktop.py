"""The command ``magview desktop``: menu entry, icon and file types, put on a person's own desktop and taken away."""

from __future__ import annotations

import sys

from magview.spec.language import alternatives, tr

PASS, FAIL = 0, 1


def run_desktop(remove: bool, as_json: bool) -> int:
    """Put or take away. Exit code 1 where there is no such desktop."""
    if sys.platform in ("win32", "darwin"):
        sys.stdout.write(
            tr(
                "Menu entries of this kind are for Linux desktops. Here, pin {program} to the task bar or Dock, and "
                "choose it under Open with for files of the program.",
                program="magview-window",
            )
            + "\n"
        )
        return FAIL
    from magview.spec.formats import ENDINGS
    from magview.upkeep.desktop import data_home, put, take_away

    home = data_home()
    files = take_away(home) if remove else put(home)
    if as_json:
        import json

        sys.stdout.write(json.dumps({"files": [str(f) for f in files]}) + "\n")
        return PASS
    if not remove:
        told = tr(
            "magview is in the desktop's menu, and opens files whose names end in {endings}. `magview desktop "
            "--remove` takes it away again. Put there, in {folder}:",
            endings=alternatives(ENDINGS),
            folder=home,
        )
    elif files:
        told = tr("magview is taken off the desktop. Deleted, in {folder}:", folder=home)
    else:
        told = tr("There was nothing to take away in {folder}.", folder=home)
    sys.stdout.write("\n".join([told, *(f"  {file.relative_to(home)}" for file in files)]) + "\n")
    return PASS

"""From a fresh machine to the open bench, or to passed tests, in one command. Standard library only.

    python3 .ci/fresh.py bench     install into .venv and open the window on a shipped magneto
    python3 .ci/fresh.py tests     install into .venv and run the tests, without a display

What follows `tests` goes to pytest. System packages that Qt or venv need are installed with apt-get where that is
allowed, else named.
"""

from __future__ import annotations

import importlib.util
import os
import shutil
import subprocess
import sys
from pathlib import Path

ROOT = Path(__file__).resolve().parents[1]
VENV = ROOT / ".venv"
BIN = VENV / ("Scripts" if sys.platform == "win32" else "bin")

SIDE_BY_SIDE = ("-n", "auto", "--dist", "worksteal")
"""A process for each core; who is through with its tests takes over some of another's."""

sys.path.insert(0, str(ROOT))
from magview.ui.kit.preflight import PACKAGES, loads  # noqa: E402  (needs the path above; imports no Qt)


def main() -> int:
    """Do what the one argument says."""
    if sys.argv[1:] != ["bench"] and sys.argv[1:2] != ["tests"]:
        return stop("say `python3 .ci/fresh.py bench` or `python3 .ci/fresh.py tests`")
    if sys.version_info < (3, 11):  # noqa: UP036  (this script meets whatever Python the machine has)
        return stop(f"Python {sys.version.split()[0]} is too old; magview needs 3.11 or newer")
    if sys.platform.startswith("linux"):
        install_system_packages(missing_packages())
    if not (BIN / "pip").exists() and not (BIN / "pip.exe").exists():
        if importlib.util.find_spec("ensurepip") is None:
            return stop("Python cannot make a virtual environment; install your system's package python3-venv")
        run(sys.executable, "-m", "venv", str(VENV))
    if sys.argv[1] == "bench":
        run(str(BIN / "pip"), "install", "--quiet", str(ROOT))
        return subprocess.run([str(BIN / "magview"), "bench"], check=False).returncode
    run(str(BIN / "pip"), "install", "--quiet", "--editable", f"{ROOT}[test]")
    command = [str(BIN / "python"), "-m", "pytest", *SIDE_BY_SIDE, *sys.argv[2:]]
    return subprocess.run(command, cwd=ROOT, check=False).returncode


def missing_packages() -> list[str]:
    """Debian packages that hold what this machine lacks."""
    missing = {package for library, package in PACKAGES.items() if not loads(library)}
    if importlib.util.find_spec("ensurepip") is None:
        missing.add("python3-venv")
    return sorted(missing)


def install_system_packages(packages: list[str]) -> None:
    """Install them where that is allowed; else name them and go on."""
    if not packages:
        return
    root = os.geteuid() == 0
    if shutil.which("apt-get") and (root or shutil.which("sudo")):
        apt = ["apt-get"] if root else ["sudo", "apt-get"]
        environment = {**os.environ, "DEBIAN_FRONTEND": "noninteractive"}
        say(f"installing system packages: {' '.join(packages)}")
        for command in (
            [*apt, "update", "-qq"],
            [*apt, "install", "-y", "-qq", "--no-install-recommends", *packages],
        ):
            if subprocess.run(command, env=environment, check=False, stdout=subprocess.DEVNULL).returncode:
                break
        else:
            return
    say(f"this machine lacks system packages that the window needs; on Debian or Ubuntu: {' '.join(packages)}")


def run(*command: str) -> None:
    """Run a command that must succeed."""
    result = subprocess.run(command, cwd=ROOT, check=False)
    if result.returncode:
        raise SystemExit(stop(f"`{' '.join(command)}` failed"))


def say(sentence: str) -> None:
    """Tell the person at the terminal."""
    sys.stderr.write(f"magview: {sentence}.\n")


def stop(sentence: str) -> int:
    """Tell them and give the exit code of failure."""
    say(sentence)
    return 2


if __name__ == "__main__":
    raise SystemExit(main())

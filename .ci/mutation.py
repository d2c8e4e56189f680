"""How much of the physics the tests notice: mutmut's mutants of magview/physics, a seeded sample of each module.

    nice python .ci/mutation.py FOLDER [MODULE ...] [--each 40] [--seed 1]

Works in FOLDER on a copy of the checkout; run again with the same FOLDER it goes on where it was. Ends with the
score of each module and the survivors, each tried again in a process of its own; `mutmut show NAME` in FOLDER
shows one.
"""

from __future__ import annotations

import argparse
import json
import os
import random
import shutil
import subprocess
import sys
from pathlib import Path

ROOT = Path(__file__).resolve().parents[1]
TESTS = ("tests/physics", "tests/published", "tests/spec/test_magneto.py", "tests/spec/test_library.py")
SLOW = "tests/physics/trials/test_trial.py::test_the_stated_spread_is_that_of_the_repeated_experiment"

NOTICED = (1, 2)
"""What pytest ends with where a test failed, or where the mutant could not even be imported."""

# It reads the modules, where mutmut puts its own functions.
LOOKS = "tests/physics/test_docstrings.py"

# What people read is looked after by tests/test_language.py: lines with words are left as they are.
CONFIG = f"""
[tool.mutmut]
source_paths = ["magview/physics"]
also_copy = ["magview", "resources", "tests", ".ci", "README.md", "DEVELOPERS.md"]
pytest_add_cli_args_test_selection = {list(TESTS)}
pytest_add_cli_args = [
    "-m", "", "-p", "no:randomly", "-p", "no:cacheprovider", "--deselect={SLOW}", "--ignore={LOOKS}",
]
do_not_mutate_patterns = ['\\btr\\(', 'marked\\(']
timeout_multiplier = 2.0
timeout_constant = 5.0
"""

# Curves kept from a test before would hide a mutant, and which tests reach it; cheap tests go first.
CONFTEST = """

import json
from functools import _lru_cache_wrapper
from pathlib import Path

import pytest
from hypothesis import HealthCheck, Phase

from magview.physics.cam import breaker, setting
from magview.physics.engine import crank

settings.register_profile(
    "mutation", deadline=None, derandomize=True, database=None, phases=(Phase.explicit, Phase.generate),
    suppress_health_check=list(HealthCheck),
)
settings.load_profile("mutation")
_KEPT = [f for m in (breaker, crank, setting) for f in vars(m).values() if isinstance(f, _lru_cache_wrapper)]


@pytest.fixture(autouse=True)
def _nothing_kept():
    for function in _KEPT:
        function.cache_clear()


def pytest_collection_modifyitems(items):
    stats = Path("mutmut-stats.json")
    took = json.loads(stats.read_text())["duration_by_test"] if stats.exists() else {}
    items.sort(key=lambda item: took.get(item.nodeid, 0.0))
"""


def main() -> int:
    """Copy, draw, run, tell."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("folder", type=Path)
    parser.add_argument("modules", nargs="*")
    parser.add_argument("--each", type=int, default=40)
    parser.add_argument("--seed", type=int, default=1)
    args = parser.parse_args()
    if not args.folder.exists():
        copy(args.folder)
        # Makes all of them; runs few.
        mutmut(args.folder, "run", "--max-children", "1", "magview.physics.electric.circuit.*")
    drawn = draw(args.folder, args.modules, args.each, args.seed)
    before = outcomes(args.folder)
    left = [name for names in drawn.values() for name in names if before[name] is None]
    if left:
        mutmut(args.folder, "run", "--max-children", "1", *left)
    found = outcomes(args.folder)
    for name in (name for names in drawn.values() for name in names):
        if found[name] not in NOTICED:
            found[name] = alone(args.folder, name)
    tell(drawn, found)
    return 0


def copy(folder: Path) -> None:
    """The checkout without what Git ignores, set up for mutmut."""
    names = subprocess.check_output(["git", "ls-files", "-z"], cwd=ROOT, text=True).split("\0")
    for name in filter(None, names):
        (folder / name).parent.mkdir(parents=True, exist_ok=True)
        shutil.copy2(ROOT / name, folder / name)
    with (folder / "pyproject.toml").open("a", encoding="utf-8") as file:
        file.write(CONFIG)
    with (folder / "tests/conftest.py").open("a", encoding="utf-8") as file:
        file.write(CONFTEST)


def mutmut(folder: Path, *words: str) -> None:
    """Run it; what it prints while it runs goes to a log beside the copy."""
    environment = {**os.environ, "QT_QPA_PLATFORM": "offscreen"}
    environment.pop("PYTHONPATH", None)
    with (folder / "mutation.log").open("ab") as log:
        subprocess.run(
            [str(Path(sys.executable).parent / "mutmut"), *words],
            cwd=folder, env=environment, stdout=log, stderr=log, check=True,
        )  # fmt: skip


def outcomes(folder: Path) -> dict[str, int | None]:
    """What became of each mutant; None where it was not run."""
    found: dict[str, int | None] = {}
    for path in sorted((folder / "mutants/magview/physics").rglob("*.meta")):
        found |= json.loads(path.read_text())["exit_code_by_key"]
    return found


def alone(folder: Path, name: str) -> int | None:
    """What a process of its own makes of a mutant: mutmut forks after the import, so that a table made then is
    never changed, and on a busy machine its time limit ends what is only slow. None after ten minutes."""
    work, function = folder / "mutants", name.rsplit("__mutmut_", 1)[0]
    reached = json.loads((work / "mutmut-stats.json").read_text())["tests_by_mangled_function_name"]
    files = sorted({test.split("::")[0] for test in reached.get(function, ())}) or list(TESTS)
    environment = {**os.environ, "QT_QPA_PLATFORM": "offscreen", "PYTHONPATH": str(work), "MUTANT_UNDER_TEST": name}
    words = ["-m", "pytest", "-x", "-q", "-p", "no:randomly", "-p", "no:cacheprovider", f"--ignore={LOOKS}", *files]
    with (folder / "mutation.log").open("ab") as log:
        try:
            return subprocess.run(
                [sys.executable, *words], cwd=work, env=environment, stdout=log, stderr=log, timeout=600, check=False
            ).returncode
        except subprocess.TimeoutExpired:
            return None


def draw(folder: Path, modules: list[str], each: int, seed: int) -> dict[str, list[str]]:
    """So many mutants of each module, the same for the same seed."""
    by_module: dict[str, list[str]] = {}
    for name in outcomes(folder):
        by_module.setdefault(name.split(".")[2], []).append(name)
    return {
        module: sorted(random.Random(f"{seed} {module}").sample(names, min(each, len(names))))
        for module, names in sorted(by_module.items())
        if not modules or module in modules
    }


def tell(drawn: dict[str, list[str]], found: dict[str, int | None]) -> None:
    """The table, then what survived and what was not decided."""
    print("| module | mutants | killed | survived | undecided |\n| --- | --- | --- | --- | --- |")  # noqa: T201
    rest: list[str] = []
    for module, names in drawn.items():
        alive = [name for name in names if found[name] == 0]
        unsure = [name for name in names if found[name] not in (0, *NOTICED)]
        killed = len(names) - len(alive) - len(unsure)
        print(f"| {module} | {len(names)} | {killed} | {len(alive)} | {len(unsure)} |")  # noqa: T201
        rest += [*alive, *(f"{name} (undecided)" for name in unsure)]
    print("\n".join(rest))  # noqa: T201


if __name__ == "__main__":
    sys.exit(main())

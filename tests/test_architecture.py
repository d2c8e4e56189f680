"""The rooms of the house at run time: no Qt below ui, nothing slow on the way to the first picture."""

from __future__ import annotations

import ast
import pkgutil
import re
import subprocess
import sys
from collections.abc import Iterator
from graphlib import TopologicalSorter
from pathlib import Path

import pytest

import magview

ROOT = Path(__file__).parents[1]


def python(code: str) -> None:
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, timeout=60, check=False)
    assert done.returncode == 0, done.stderr


@pytest.mark.process
def test_everything_below_the_window_works_where_qt_cannot_be_imported():
    names = [m.name for m in pkgutil.walk_packages(magview.__path__, "magview.") if ".ui" not in m.name]
    names.remove("magview.__main__")
    assert "magview.physics.cam.setting" in names
    python(
        "import sys\n"
        "class Wall:\n"
        "    def find_spec(self, name, path=None, target=None):\n"
        "        if name.split('.')[0] in ('PySide6', 'shiboken6', 'pyqtgraph'):\n"
        "            raise ImportError(name)\n"
        "sys.meta_path.insert(0, Wall())\n"
        f"import {', '.join(names)}\n"
    )


@pytest.mark.process
def test_the_window_starts_without_the_slow_libraries():
    """pyqtgraph costs 0.6 s and scipy 0.7 s: neither is loaded before something needs it."""
    python(
        "import os, sys\n"
        "os.environ['QT_QPA_PLATFORM'] = 'offscreen'\n"
        "from PySide6.QtWidgets import QApplication\n"
        "from magview.bench.placing import new_bench\n"
        "from magview.spec.library import DEFAULT_MAGNETO, find_magneto\n"
        "from magview.ui.kit.bench_model import BenchModel\n"
        "from magview.ui.shell.window import MainWindow\n"
        "app = QApplication([])\n"
        "window = MainWindow(BenchModel(new_bench(find_magneto(DEFAULT_MAGNETO))))\n"
        "window.show(); app.processEvents()\n"
        "slow = [m for m in ('scipy', 'pyqtgraph', 'shapely', 'matplotlib') if m in sys.modules]\n"
        "assert not slow, slow\n"
    )


def imports(path: Path, known: set[str]) -> set[str]:
    """Modules of the package that a file imports anywhere: on top, in functions, for the type checker alone."""
    found: set[str] = set()
    for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
        if isinstance(node, ast.Import):
            found |= {alias.name for alias in node.names}
        elif isinstance(node, ast.ImportFrom) and node.module:
            found |= {node.module, *(f"{node.module}.{alias.name}" for alias in node.names)}
    return found & known


def test_no_module_imports_itself_by_way_of_others():
    """Imports for the type checker alone count, too."""
    root = Path(magview.__path__[0])
    files = {".".join(("magview", *p.relative_to(root).with_suffix("").parts)): p for p in root.rglob("*.py")}
    files = {name.removesuffix(".__init__"): path for name, path in files.items()}
    graph = {name: imports(path, set(files)) - {name} for name, path in files.items()}
    assert "magview.ui.kit.place" in graph["magview.ui.shell.places"]
    TopologicalSorter(graph).prepare()  # raises CycleError, which names the circle


@pytest.mark.parametrize("room", sorted(p.parent for p in Path(magview.__path__[0]).rglob("*/__init__.py")), ids=str)
def test_every_room_has_its_sign(room):
    """It says what lives there and where to begin reading; files that it names exist."""
    sign = ast.get_docstring(ast.parse((room / "__init__.py").read_text(encoding="utf-8"))) or ""
    (begin,) = re.findall(r"Begin\s+reading in\s+`([\w/]+\.py)`", sign)
    assert (room / begin).exists()


def docstrings(path: Path) -> Iterator[tuple[int, str]]:
    """Strings that stand alone as statements, with their lines: docstrings, and those below names."""
    for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
        if isinstance(node, ast.Expr) and isinstance(node.value, ast.Constant) and isinstance(node.value.value, str):
            yield node.lineno, node.value.value


def test_docstrings_begin_with_a_verb_or_a_noun():
    """As the standard library's do: "Return the gap", "The gap", not "What the gap is"."""
    told = [(path, line, text) for path in Path(magview.__path__[0]).rglob("*.py") for line, text in docstrings(path)]
    assert any(text.startswith("Return ") for _, _, text in told)
    clause = re.compile(r"(What|That|How|Where|Which|When|Why|Who)\b")
    assert not [f"{path}:{line}: {text[:60]}" for path, line, text in told if clause.match(text)]


def test_the_contributors_guide_is_a_map_whose_places_exist():
    guide = (ROOT / "DEVELOPERS.md").read_text(encoding="utf-8")
    assert len(guide.splitlines()) <= 100
    for place in re.findall(r"`((?:bench|physics|spec|practice|ui|job|own|curves)/[\w/]+\.py)`", guide):
        assert (ROOT / "magview" / place).exists(), place
    for place in re.findall(r"`((?:tests|resources|magview|\.ci)/[\w/.-]+)`", guide):
        assert (ROOT / place).exists(), place


def test_no_file_of_tests_is_imported():
    """Helpers that several use have files of their own, so that a test can be moved or dropped by itself."""
    asks = re.compile(r"^\s*from tests(?:\.\w+)*\.test_\w+ import|^\s*import tests\S*\.test_", re.MULTILINE)
    assert asks.search("from tests.ui.test_x import y")
    found = [path for path in ROOT.glob("tests/**/*.py") if asks.search(path.read_text(encoding="utf-8"))]
    assert not found


def test_nothing_else_lies_at_the_top_of_the_repository():
    if not (ROOT / ".git").exists():
        pytest.skip("an archive holds what git gave it")
    kept = subprocess.run(["git", "-C", ROOT, "ls-files"], capture_output=True, text=True, check=True).stdout
    tops = {name.split("/")[0] for name in kept.splitlines()}
    seen = {name for name in tops if not name.startswith(".")}
    assert seen == {"README.md", "DEVELOPERS.md", "pyproject.toml", "magview", "resources", "tests"}

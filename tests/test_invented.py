"""What ships is invented: no value that the trade or a published source states, and no example of before."""

from __future__ import annotations

import ast
import json
import re
from collections.abc import Iterator
from pathlib import Path

import pytest

from tests.source_words import trees

ROOT = Path(__file__).parents[1]
RESOURCES = ROOT / "resources"

TRADE = re.compile(
    r"""
    0[.,]2032 | 0[.,]2286 | 0[.,]2540?\b(?!\d) | 0[.,]23\s?mm | 0[.,]229   # contacts of 8 to 10 thousandths
    | \b0[.,]00[89]\s?in\b | \b0[.,]010\s?in\b | \b(?:8|9|10)\s?thou\b | \b[89]\ to\ 10\ thou
    | 1/32 | 0[.,]79375 | 0[.,]794                                        # the mark, a thirty-second of an inch
    | \b19/20\b | \b19\ and\ 20\b | \b19,\ 20\b | \b1/380\b | \b360°/380\b  # the published coupling
    | \b25°?\ (?:BTDC|before\ top) | wanted[ =]25\b | reads[ =]22\b | \b22°\ read   # firing and example of before
    """,
    re.VERBOSE,
)

ALLOWED = {
    # The published coupling stays as arithmetic.
    ("guide/theory-coupling.md", "19 and 20"), ("guide/theory-coupling.md", "1/380"),
    # Divisions that exercises of before still name.
    ("practice/exercise_parts.py", "1/32"), ("practice/instruments.py", "1/32"), ("guide/files.md", "1/32"),
}  # fmt: skip


def texts() -> Iterator[tuple[str, str]]:
    """Every text that ships: guide, README, data, words of the program with its docstrings."""
    yield "README.md", (ROOT / "README.md").read_text(encoding="utf-8")
    for path in sorted(RESOURCES.rglob("*")):
        if path.suffix in (".md", ".json", ".ts", ".xml", ".svg", ".desktop") and "old" not in path.parts:
            yield path.relative_to(RESOURCES).as_posix(), path.read_text(encoding="utf-8")
    for path, tree in trees().items():
        words = [n.value for n in ast.walk(tree) if isinstance(n, ast.Constant) and isinstance(n.value, str)]
        yield path.relative_to(ROOT / "magview").as_posix(), "\n".join(words)


def test_no_shipped_text_states_a_value_of_the_trade() -> None:
    found = {(name, match[0].strip()) for name, text in texts() for match in TRADE.finditer(text)}
    assert not found - ALLOWED


def values(data: object) -> Iterator[tuple[str, object]]:
    """Every field of a file with its value, at any depth."""
    if isinstance(data, dict):
        for key, value in data.items():
            yield key, value
            yield from values(value)
    elif isinstance(data, list):
        for value in data:
            yield from values(value)


FILES = [p for p in sorted(RESOURCES.rglob("*.json")) if "old" not in p.parts]


@pytest.mark.parametrize("path", FILES, ids=lambda path: f"{path.parent.name}/{path.stem}")
def test_no_shipped_file_holds_a_limit_of_the_trade(path: Path) -> None:
    for key, value in values(json.loads(path.read_text(encoding="utf-8"))):
        match key, value:
            case "gap_limits_mm", [low, high]:
                assert (round(low / 0.0254, 2), round(high / 0.0254, 2)) != (8.0, 10.0)
            case "tolerance_mm" | "mark_tolerance_mm", float():
                assert abs(value - 25.4 / 32) > 0.005
            case "firing_btdc_deg", {"left": left, "right": right}:
                assert 25.0 not in (left, right)
            case "coupling", {"magneto_teeth": magneto, "drive_teeth": drive}:
                assert (magneto, drive) != (19, 20)


@pytest.mark.parametrize(
    "planted",
    ["limits 0.008 in to 0.010 in", "9 thou", "within 1/32 in", "19/20", "25° before top", "--reads 22 --wanted 25"],
)
def test_a_planted_value_is_found(planted: str) -> None:
    assert TRADE.search(planted)

"""Words in the package's source: those that go through `tr`, and those that no translator would see."""

from __future__ import annotations

import ast
import json
import re
from collections.abc import Collection, Iterator
from functools import cache
from pathlib import Path
from typing import Any

from magview.spec import language
from magview.spec.library import resources

ROOMS = (
    "spec",
    "physics",
    "bench",
    "drawing",
    "curves",
    "forms",
    "own",
    "practice",
    "job",
    "classroom",
    "paper",
    "upkeep",
    "ui",
)
PACKAGE = Path(language.__file__).parents[1]

WORD = re.compile(r"[^\W\d_]{2,}")
UNITS = {"mm", "in", "µm", "um", "thou", "deg", "rpm", "magview", "Wb", "min"}
_PROPER = {"Python", "Qt", "Esc", "Fusion", "DejaVu Sans", "DejaVu Sans Mono", "English", "Deutsch", "high contrast"}
"""Names of programs, keys, styles, fonts, languages in their own words, and of a theme in the settings."""
_BEFORE_QT = {"preflight.py"}
"""Tells a terminal why there can be no window, where no translator can be loaded."""


@cache
def trees() -> dict[Path, ast.Module]:
    """The source of every module whose words are looked at."""
    return {
        path: ast.parse(path.read_text())
        for room in ROOMS
        for path in sorted((PACKAGE / room).rglob("*.py"))
        if path.name not in _BEFORE_QT
    }


def strings(value: Any) -> Iterator[str]:
    """Every text in a structure read from JSON."""
    if isinstance(value, str):
        yield value
    for part in value.values() if isinstance(value, dict) else value if isinstance(value, list | tuple) else ():
        yield from strings(part)


def name_of(call: ast.Call) -> str:
    """The bare name of what is called."""
    return call.func.id if isinstance(call.func, ast.Name) else getattr(call.func, "attr", "")


SPOKEN = {"tr": 1, "tr_n": 2, "marked": 1, "Message": 1}
"""What takes texts for people, and how many of its first arguments they are."""


def spoken_calls(tree: ast.AST) -> Iterator[ast.Call]:
    """Calls of `tr`, `tr_n`, `marked` and `Message`."""
    for node in ast.walk(tree):
        if isinstance(node, ast.Call) and name_of(node) in SPOKEN and isinstance(node.func, ast.Name):
            yield node


def texts_of(call: ast.Call) -> list[ast.expr]:
    """The texts among the arguments of such a call."""
    return call.args[: SPOKEN[name_of(call)]]


def said(tree: ast.AST) -> set[str]:
    """What is marked or read out, as it stands, and the names that types and enums hold: words that may serve
    as names."""
    found = {text.value for c in spoken_calls(tree) for text in texts_of(c) if isinstance(text, ast.Constant)}
    for node in ast.walk(tree):
        if isinstance(node, ast.Subscript) and isinstance(node.value, ast.Name) and node.value.id == "Literal":
            found |= {n.value for n in ast.walk(node.slice) if isinstance(n, ast.Constant)}
        if isinstance(node, ast.ClassDef) and any(isinstance(b, ast.Name) and b.id == "StrEnum" for b in node.bases):
            members = [part.value for part in node.body if isinstance(part, ast.Assign)]
            found |= {value.value for value in members if isinstance(value, ast.Constant)}
    return {text for text in found if isinstance(text, str)}


@cache
def names() -> set[str]:
    """What is said or allowed anywhere in the source."""
    return set().union(*(said(tree) for tree in trees().values()))


@cache
def in_resources() -> set[str]:
    """Every text of the shipped files."""
    return set(strings([json.loads(path.read_text()) for path in resources().rglob("*.json")]))


_READ_BY_MACHINES = {
    "compile", "fullmatch", "split", "sub", "startswith", "removeprefix", "glob", "einsum", "exec", "AssertionError",
    "TypeError", "Formatter", "match",
}  # fmt: skip
"""What is called with patterns, prefixes, source text, or says what cannot happen."""

_SCHEMA_WORDS = {"description", "$comment", "$schema"}


def unspoken(tree: ast.AST, also: Collection[str] = ()) -> list[str]:
    """Words in a source that no translator would see.

    No words are: documentation, types, names (one lower-case token, keys of tables, fields of files, or what is
    marked or a type's choice elsewhere), units, markup and style sheets, source text in a module that compiles it,
    patterns, columns of tables of numbers (functions called …_table), the describing keys of JSON Schema.
    """
    above = {child: node for node in ast.walk(tree) for child in ast.iter_child_nodes(node)}
    compiles = any(isinstance(n, ast.Call) and name_of(n) == "exec" for n in ast.walk(tree))
    found = []
    for node in ast.walk(tree):
        if isinstance(node, ast.JoinedStr):
            # A space for each place but for those within one word: such are fields and names of files.
            text = "".join(v.value if isinstance(v, ast.Constant) else "\0" for v in node.values)
        elif isinstance(node, ast.Constant) and isinstance(node.value, str):
            text = node.value
        else:
            continue
        if isinstance(above[node], ast.Expr | ast.JoinedStr | ast.FormattedValue) and isinstance(node, ast.Constant):
            continue
        if not (compiles or text in names() or text in also or _no_words(text) or _for_machines(node, above)):
            found.append(f"line {node.lineno}: {text!r}")
    return found


def _no_words(text: str) -> bool:
    bare = re.sub(r"<[^>]*>?|[\w-]+=\"[^\"]*\"?|^[^<]*>", " ", text) if re.search(r"<|=\"", text) else text
    bare = re.sub(r"\w+\[[^\]]*\]", " ", bare)  # a field of a file
    words = [word for word in WORD.findall(bare) if word not in UNITS]
    if text in _PROPER or re.fullmatch(
        r"([A-Z]* ?\(\*\.[^()]*\)(;;)?)+|(\s*%\(\w+\)s)+", text
    ):  # kinds of file; a log's line
        return True
    if not words or re.search(r"\{[^{}]*:[^{}]*;\s*\}", text):
        return True
    return not re.search(r"\s", bare.strip()) and not re.fullmatch(r"[A-Z][a-z]+[.:]?", bare)


def _for_machines(node: ast.AST, above: dict[ast.AST, ast.AST]) -> bool:
    while node in above:
        child, node = node, above[node]
        if isinstance(node, ast.Call) and child is not node.func:
            if name_of(node) in SPOKEN or name_of(node) in _READ_BY_MACHINES:
                return True
        elif (
            (isinstance(node, ast.Subscript) and child is node.slice)
            or (isinstance(node, ast.AnnAssign | ast.arg) and child is node.annotation)
            or (isinstance(node, ast.Dict) and child in node.keys)
        ):
            return True
        elif isinstance(node, ast.Dict) and child in node.values:
            key = node.keys[node.values.index(child)]  # type: ignore[arg-type]
            if isinstance(key, ast.Constant) and key.value in _SCHEMA_WORDS:
                return True
        elif isinstance(node, ast.FunctionDef) and re.fullmatch(r"[a-z]+_table", node.name):
            return True
    return False


def glued(tree: ast.AST) -> list[str]:
    """Calls of those that no collector can read, or with words, not values, for a template's places."""
    found = []
    for call in spoken_calls(tree):
        texts, name = texts_of(call), name_of(call)
        takes = SPOKEN[name] + (name == "Message")
        if len(texts) < SPOKEN[name] or len(call.args) > takes or any(_not_one(text, name) for text in texts):
            found.append(f"line {call.lineno}: not one literal: {ast.unparse(call)[:80]}")
        if any(isinstance(t, ast.Constant) and not str(t.value).strip() for t in texts):
            found.append(f"line {call.lineno}: empty")
        for keyword in call.keywords:
            spoken = {n for c in spoken_calls(keyword.value) for n in ast.walk(c)}
            for node in ast.walk(keyword.value):
                words = node.value if isinstance(node, ast.Constant) and node not in spoken else None
                if (
                    isinstance(words, str)
                    and words not in names()
                    and re.search(r"[^\W\d_]{2,}\s+[^\W\d_]{2,}", words)
                ):
                    found.append(f"line {call.lineno}: words for a place: {words!r}")
    return found


def _not_one(text: ast.expr, name: str) -> bool:
    literal = isinstance(text, ast.Constant) and isinstance(text.value, str)
    return isinstance(text, ast.JoinedStr | ast.BinOp) or (name == "marked" and not literal)

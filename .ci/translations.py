"""The words of the program, for translators. Needs PySide6's tools beside the Python that runs it.

    python .ci/translations.py                      collect all words into the .ts files and build the .qm files
    python .ci/translations.py export LANG FILE     what LANG still lacks, as JSON: number, source, where, translation
    python .ci/translations.py import LANG FILE     read such a file back; what is not sound is refused, one line each
    python .ci/translations.py check LANG           what is missing or not sound

Words are the literals of `tr("…")`, `tr_n("…", "…")`, `marked("…")` and `Message("…")` in the package, and what is
read to people from the shipped JSON files. One context; translations stay as long as their source stands in the
program.
"""

from __future__ import annotations

import ast
import json
import re
import string
import subprocess
import sys
import xml.etree.ElementTree as ET
from collections.abc import Iterator
from dataclasses import dataclass, field
from functools import cache
from pathlib import Path

ROOT = Path(__file__).resolve().parents[1]
FOLDER = ROOT / "resources" / "translations"
LANGUAGES = ("es", "fr", "de", "pt")
TEXTS = {"tr": 1, "tr_n": 2, "marked": 1, "Message": 1}
"""How many of a call's first arguments are texts."""
CONTEXT = "magview"
"""As magview/ui/kit/translation.py asks for them."""

HUMAN = {
    "magnetos": ("name", "notes"),
    "engines": ("name",),
    "exercises": ("name", "story", "task", "hints"),
    "lessons": ("name", "story", "task", "title", "text", "hint", "done"),
}
"""Keys of shipped files whose texts are read to people, per folder."""

MNEMONIC = re.compile(r"(?<!&)&(?=[^\s&])")


@cache
def collect() -> dict[str, list[str]]:
    """Every source text with the places it stands in, in the order of the files."""
    found: dict[str, list[str]] = {}
    for path in sorted((ROOT / "magview").rglob("*.py")):
        for text in _literals(ast.parse(path.read_text(encoding="utf-8"))):
            _note(found, text, path.relative_to(ROOT / "magview").as_posix())
    for folder, keys in HUMAN.items():
        for path in sorted((ROOT / "resources" / folder).glob("*.json")):
            for text in _human(json.loads(path.read_text(encoding="utf-8")), keys):
                _note(found, text, f"{folder}/{path.name}")
    return found


def _note(found: dict[str, list[str]], text: str, where: str) -> None:
    places = found.setdefault(text, [])
    if where not in places:
        places.append(where)


def _literals(tree: ast.AST) -> Iterator[str]:
    """Literals that are an argument of `tr`, `tr_n`, `marked` or `Message`, either branch of a choice included."""
    for node in ast.walk(tree):
        if isinstance(node, ast.Call) and isinstance(node.func, ast.Name):
            for text in node.args[: TEXTS.get(node.func.id, 0)]:
                yield from _strings(text)


def _strings(node: ast.expr) -> Iterator[str]:
    if isinstance(node, ast.Constant) and isinstance(node.value, str):
        if node.value:
            yield node.value
    elif isinstance(node, ast.IfExp):
        yield from _strings(node.body)
        yield from _strings(node.orelse)


def _human(data: object, keys: tuple[str, ...]) -> Iterator[str]:
    if isinstance(data, dict):
        for key, value in data.items():
            if isinstance(value, str) and key in keys:
                yield value
            elif isinstance(value, list) and key in keys and all(isinstance(v, str) for v in value):
                yield from value
            else:
                yield from _human(value, keys)
    elif isinstance(data, list):
        for value in data:
            yield from _human(value, keys)


# ---------------------------------------------------------------------- soundness


def places(text: str) -> set[str]:
    """The places of a text with their formats, as in "gap:length". Raises ValueError where a brace is left open."""
    return {f"{name}:{form}" for _, name, form, _ in string.Formatter().parse(text) if name is not None}


def faults(source: str, translation: str) -> list[str]:
    """What is not sound about a translation, in words; nothing where it may stand."""
    found = []
    try:
        ours, theirs = places(source), places(translation)
    except ValueError as error:
        found.append(f"cannot be filled in: {error}")
    else:
        if ours != theirs:
            found.append(f"places {sorted(ours)} became {sorted(theirs)}")
    for part, what in ((r"^\s*", "leading"), (r"\s*$", "trailing")):
        if re.search(part, source)[0] != re.search(part, translation)[0]:  # type: ignore[index]
            found.append(f"{what} space differs")
    for sign in ("…", ":"):
        if source.rstrip().endswith(sign) != translation.rstrip().endswith(sign):
            found.append(f"ends with “{sign}” in one and not in the other")
    if len(MNEMONIC.findall(source)) != len(MNEMONIC.findall(translation)):
        found.append("one “&” before the letter of the shortcut, as in the source")
    if source.count(";;") != translation.count(";;") or re.findall(r"\*\.\w+", source) != re.findall(
        r"\*\.\w+", translation
    ):
        found.append("file patterns differ")
    if source.count("\n") != translation.count("\n"):
        found.append("line breaks differ")
    return found


# ---------------------------------------------------------------------- .ts files


@dataclass
class Words:
    """One language: translations by their source, empty where there is none yet."""

    language: str
    translations: dict[str, str] = field(default_factory=dict)

    @property
    def path(self) -> Path:
        """The .ts file."""
        return FOLDER / f"magview_{self.language}.ts"

    @classmethod
    def read(cls, language: str) -> Words:
        """As the file has it."""
        words = cls(language)
        if words.path.exists():
            for message in ET.parse(words.path).iter("message"):
                translation = message.find("translation")
                done = translation is not None and translation.get("type") is None
                text = (translation.text or "") if translation is not None and done else ""
                words.translations[message.findtext("source", "")] = text
        return words

    def write(self, found: dict[str, list[str]]) -> None:
        """Everything found, with the translation there is."""
        root = ET.Element("TS", version="2.1", language=self.language, sourcelanguage="en")
        context = ET.SubElement(root, "context")
        ET.SubElement(context, "name").text = CONTEXT
        for source, places in found.items():
            message = ET.SubElement(context, "message")
            ET.SubElement(message, "source").text = source
            ET.SubElement(message, "extracomment").text = ", ".join(places)
            translation = ET.SubElement(message, "translation")
            translation.text = self.translations.get(source, "")
            if not translation.text:
                translation.set("type", "unfinished")
        ET.indent(root, "    ")
        body = ET.tostring(root, encoding="unicode", short_empty_elements=False)
        FOLDER.mkdir(parents=True, exist_ok=True)
        self.path.write_text(f'<?xml version="1.0" encoding="utf-8"?>\n<!DOCTYPE TS>\n{body}\n', encoding="utf-8")

    def missing(self, found: dict[str, list[str]]) -> list[str]:
        """Sources without a translation."""
        return [source for source in found if not self.translations.get(source)]


def build(language: str) -> None:
    """Make the .qm of a .ts, with PySide6's own tool."""
    source = FOLDER / f"magview_{language}.ts"
    tool = Path(sys.executable).with_name("pyside6-lrelease")
    command = [str(tool), "-silent", "-nounfinished", str(source), "-qm", str(source.with_suffix(".qm"))]
    subprocess.run(command, check=True)


# ---------------------------------------------------------------------- commands


def update() -> int:
    """Collect, write and build all languages."""
    found = collect()
    for language in LANGUAGES:
        words = Words.read(language)
        words.write(found)
        build(language)
        sys.stdout.write(f"{language}: {len(found)} texts, {len(words.missing(found))} without translation\n")
    return 0


def export(language: str, file: Path) -> int:
    """Write what a language lacks, to be filled in."""
    found, words = collect(), Words.read(language)
    rows = [
        {"n": n, "where": ", ".join(places), "source": source, "translation": ""}
        for n, (source, places) in enumerate(found.items(), 1)
        if not words.translations.get(source)
    ]
    file.write_text(json.dumps(rows, ensure_ascii=False, indent=1) + "\n", encoding="utf-8")
    sys.stdout.write(f"{len(rows)} of {len(found)} texts to translate are in {file}\n")
    return 0


def take(language: str, file: Path) -> int:
    """Read filled-in rows back; sound ones are kept even if others are not."""
    found, words = collect(), Words.read(language)
    refused = taken = 0
    for row in json.loads(file.read_text(encoding="utf-8")):
        source, translation = row["source"], row["translation"]
        if not translation:
            continue
        wrong = ["is no text of the program any more"] if source not in found else faults(source, translation)
        if wrong:
            refused += 1
            sys.stdout.write(f"{row.get('n')}: {'; '.join(wrong)}: {source[:60]!r} -> {translation[:60]!r}\n")
        else:
            taken += 1
            words.translations[source] = translation
    words.write(found)
    build(language)
    left = len(words.missing(found))
    sys.stdout.write(f"{language}: {taken} taken, {refused} refused, {left} of {len(found)} still missing\n")
    return 1 if refused else 0


def check(language: str) -> int:
    """Name what is missing or not sound."""
    found, words = collect(), Words.read(language)
    lacking = words.missing(found)
    unsound = {s: f for s, t in words.translations.items() if t and s in found and (f := faults(s, t))}
    for source in lacking:
        sys.stdout.write(f"missing: {source[:100]!r}\n")
    for source, wrong in unsound.items():
        sys.stdout.write(f"{'; '.join(wrong)}: {source[:100]!r}\n")
    return 1 if lacking or unsound else 0


def main(arguments: list[str]) -> int:
    """Do what the arguments say."""
    match arguments:
        case []:
            return update()
        case ["export", language, file] if language in LANGUAGES:
            return export(language, Path(file))
        case ["import", language, file] if language in LANGUAGES:
            return take(language, Path(file))
        case ["check", language] if language in LANGUAGES:
            return check(language)
    sys.stdout.write(__doc__ or "")
    return 2


if __name__ == "__main__":
    raise SystemExit(main(sys.argv[1:]))

"""Every text that people read, sentence by sentence, with the words and phrases that the vocabulary forbids."""

from __future__ import annotations

import ast
import json
import re
from collections.abc import Iterator
from dataclasses import dataclass
from functools import cache
from pathlib import Path

from magview.spec.library import resources
from tests.source_words import spoken_calls, strings, texts_of, trees

INSTRUCTION_WORDS = 20
DESCRIPTION_WORDS = 25
"""Most words of a sentence that asks for an act, and of one that describes (controlled English, common practice)."""

FORBIDDEN = {
    "largest gap": re.compile(r"\b(?:widest|max(?:imum)?\.?) gap\b|\bgap when widest\b", re.I),
    "opening or gap": re.compile(r"\bopening gap\b|\bgap opens\b|\bgap of (?:the )?opening\b", re.I),
    "drive flange or magneto flange": re.compile(
        r"(?<!magneto[ -])(?<!magneto's )(?<!drive[ -])(?<!drive's )(?<!slotted )(?<!\{)"
        r"\bflange(?!\}|s\b|'s slots)\b",
        re.I,
    ),
    "with or against rotation": re.compile(
        r"\bturns? (?:it |the (?:rotor|crank|propeller) )?(?:forward|backward|on)\b(?! a )", re.I
    ),
    "breaker end or drive end": re.compile(r"\b(?:front|back) (?:end|side|view)\b", re.I),
    "the manual": re.compile(r"\bthe book\b|\bmaker's words\b", re.I),
    "not: say what it is": re.compile(r"(?<!there )\b(?:is|are|was) none\b(?! (?:of|in)\b)|\bno part of\b", re.I),
    "by a chosen amount": re.compile(r"\bby so much\b", re.I),
    "leave": re.compile(r"\blet(?:s)? be\b"),
    "available": re.compile(r"\bto be had\b", re.I),
    "a noun as the subject": re.compile(r"(?:^|(?<=[.!?] ))What (?!if asks)[^.?!:;]*\.(?= |$)", re.M),
}
"""By what is said instead: words with a twin in the vocabulary, inverted negations, clauses as subjects."""

PLANTED = {
    "largest gap": "Read the widest gap.",
    "opening or gap": "The gap opens early.",
    "drive flange or magneto flange": "Move the flange one tooth.",
    "with or against rotation": "Turn the rotor forward.",
    "breaker end or drive end": "Seen from the back end.",
    "the manual": "As the book says.",
    "not: say what it is": "This is none that a file can hold.",
    "by a chosen amount": "Turn it by so much.",
    "leave": "It is better let be.",
    "available": "Nothing better is to be had.",
    "a noun as the subject": "What wear has done shows here.",
}

_TAKEN = re.compile(
    r"\b(?:is|are|was|were|be|been|being)\b(?: (?:not|never|then|also|only|once|still|now|often))?"
    r" (?:\w+ed|set|read|held|made|put|said|shown|drawn|worn|given|taken|known|written|found|kept|told|left|meant|"
    r"lost|chosen|done|seen|met|cut|built|broken|asked|begun|brought|bent|driven|fed|hidden|laid|sent|split|spun)\b"
)


@dataclass(frozen=True)
class Sentence:
    """A sentence, where it stands, and whether it asks for an act."""

    where: str
    text: str
    instruction: bool = False

    @property
    def words(self) -> int:
        """Its words; a place for a value, a number with its unit, and a word with hyphens count once."""
        return len(re.findall(r"\{[^{}]*\}|[^\W_][^\s–—/]*", self.text))

    @property
    def passive(self) -> bool:
        """Whether a form of "be" stands before a past participle: a rough measure, the same for every text."""
        return bool(_TAKEN.search(self.text))

    @property
    def forbidden(self) -> list[str]:
        """Words and phrases in it that the vocabulary has others for."""
        return [say for say, pattern in FORBIDDEN.items() if pattern.search(self.text)]


def sentences(text: str) -> list[str]:
    """The sentences of a text. A colon and a semicolon end one, as does an item of a list or a cell of a table.

    So controlled English counts them: what follows is read by itself.
    """
    found = []
    for block in re.split(r"\n\s*\n|\n(?=\s*(?:[-*|>#]|\d+\. ))|(?<!\|)\n(?=[^ ])|\|", text):
        bare = re.sub(r"\bNo\. ?(?=[\d{])", "No ", " ".join(block.split()))
        bare = re.sub(r"\b(ch|sect|par|e\.g|i\.e|max|approx|no)\. ", r"\1 ", bare)
        found += [part.strip() for part in re.split(r"(?<=[.!?])[)”\"]?\s+(?=[\W\d]*[A-Z{“])|(?<=[:;])\s+", bare)]
    # An enumeration is counted by its items, as if each stood on a line.
    found = [item for part in found for item in (part.split(", ") if part.count(", ") >= 4 else [part])]
    return [part for part in found if re.search(r"[^\W\d_]{2}", part)]


def plain(markdown: str) -> str:
    """A page of the guide without its marks, code and addresses."""
    text = re.sub(r"```.*?```", "\n\n", markdown, flags=re.S)
    text = re.sub(r"!?\[([^\]]*)\]\([^)]*\)", r"\1", text)
    text = re.sub(r"`[^`]*`", "Code", text)
    text = re.sub(r"^\s*(?:[-*>#]+|\d+\.) +", "", text, flags=re.M)
    text = re.sub(r"\$[^$]*\$", "formula", text)
    return re.sub(r"[*#]", "", text)


@cache
def all_sentences() -> tuple[Sentence, ...]:
    """Those of the program, of lessons and exercises, of the guide and of the README; read once."""
    return tuple(_all())


def _all() -> Iterator[Sentence]:
    yield from _of_program()
    for path in sorted(resources().glob("lessons/*.json")):
        lesson = json.loads(path.read_text(encoding="utf-8"))
        asked = [step[part] for step in lesson["steps"] for part in ("text", "how") if step.get(part)]
        for text in strings(lesson):
            yield from _of(f"lessons/{path.name}", text, instruction=text in asked)
    for path in sorted(resources().glob("exercises/*.json")):
        for text in strings(json.loads(path.read_text(encoding="utf-8"))):
            yield from _of(f"exercises/{path.name}", text)
    for path in (*sorted(resources().glob("guide/*.md")), resources().parent / "README.md"):
        if path.is_file():
            yield from _of(f"guide/{path.name}", plain(path.read_text(encoding="utf-8")))


def _of_program() -> Iterator[Sentence]:
    for path, tree in trees().items():
        for call in spoken_calls(tree):
            for text in texts_of(call):
                if isinstance(text, ast.Constant) and isinstance(text.value, str):
                    yield from _of(path.name, text.value)


def _of(where: str, text: str, instruction: bool = False) -> Iterator[Sentence]:
    for sentence in sentences(text):
        yield Sentence(where, sentence, instruction)


def kind(sentence: Sentence) -> str:
    """The kind of text that a sentence stands in."""
    return Path(sentence.where).parts[0] if "/" in sentence.where else "program"

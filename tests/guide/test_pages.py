"""The guide's pages: whole, linked, and true to the program they describe."""

from __future__ import annotations

import ast
import os
import re
import shlex
import subprocess
import sys
from functools import cache
from pathlib import Path

import pytest

from magview.cli import main as cli
from magview.guide.book import book
from magview.guide.pages import anchor_of, chapters, guide_folder, pages
from magview.guide.topics import TOPICS
from magview.paper.html import document_html
from magview.practice.library import shipped_exercises, shipped_lessons
from magview.spec.files import write_model
from tests.cards import a_card
from tests.guide.marked_words import KEY, bold, tokens
from tests.paper.html_reader import HtmlReader

ROOT = Path(__file__).parents[2]
NAMES = list(pages())
TASKS = [
    "first-minutes", "trainee", "mechanic", "job-sheet", "instructor", "own-magneto", "internal-timing",
    "engine-timing", "synchronising", "switch-lead", "trials", "uncertainty", "wear", "practice",
]  # fmt: skip


def test_every_file_is_a_page_of_the_index_under_its_own_title():
    files = {p.stem for p in guide_folder().glob("*.md")} - {"index"}
    assert files == set(NAMES)
    index = (guide_folder() / "index.md").read_text(encoding="utf-8")
    assert dict(re.findall(r"\[(.+?)\]\(([\w-]+)\.md\)", index)) == {p.title: p.name for p in pages().values()}
    assert [p.name for c in chapters() for p in c.pages] == NAMES and len(chapters()) == 5


@pytest.mark.parametrize("name", NAMES)
def test_every_link_and_picture_resolves(name):
    for token in tokens(name):
        if token.type == "link_open":
            target = str(token.attrs["href"])
            page, _, anchor = target.partition("#")
            there = pages()[page.removesuffix(".md") or name]
            assert not anchor or anchor in {s.anchor for s in there.sections}, target
        elif token.type == "image":
            picture = guide_folder() / str(token.attrs["src"])
            assert picture.is_file() and picture.read_bytes().startswith(b"\x89PNG"), picture
            assert len(token.content) > 8, "a picture says in words what it shows"


@pytest.mark.parametrize("name", NAMES)
def test_headings_of_a_page_have_anchors_of_their_own(name):
    anchors = [s.anchor for s in pages()[name].sections]
    assert len(set(anchors)) == len(anchors)


def test_pictures_are_small_and_every_one_is_shown():
    shown = {str(t.attrs["src"]) for name in NAMES for t in tokens(name) if t.type == "image"}
    files = {f"pictures/{p.name}": p.stat().st_size for p in (guide_folder() / "pictures").glob("*")}
    assert shown == set(files)
    assert sum(files.values()) < 1_500_000


@pytest.mark.parametrize("name", TASKS)
def test_every_task_begins_with_its_caution(name):
    source = pages()[name].source
    caution = source.split("\n\n")[1]
    assert caution.startswith("> **Take care.**")
    assert re.search(r"manual|shipped|inspection|dangerous", caution)
    assert re.search(r"propeller|switch off", caution)


def commands(text: str) -> list[str]:
    fences = re.findall(r"```(?:sh)?\n(.*?)```", text, re.S)
    lines = [line for fence in fences for line in fence.splitlines() if line.startswith("magview")]
    return [line.split("#")[0].strip() for line in lines]


COMMANDS = sorted(
    {c for p in pages().values() for c in commands(p.source)}
    | set(commands((ROOT / "README.md").read_text(encoding="utf-8")))
)


WITH_QT = ("worksheet", "handout", "check")
"""Commands that want a Qt of their own."""


def asked(line: str) -> object:
    """A command, marked where it takes a process."""
    return pytest.param(line, marks=pytest.mark.process) if line.split()[1] in WITH_QT else line


@pytest.mark.parametrize("line", [asked(c) for c in COMMANDS if c != "magview --version"])
def test_every_command_shown_does_what_it_says(line, tmp_path, monkeypatch, capsys):
    """Run for real, but for what opens a window and for PDFs, which have tests of their own."""
    monkeypatch.chdir(tmp_path)
    if "my-card" in line:
        write_model(tmp_path / "my-card.magview.json", a_card())
    words = shlex.split(line)[1:]
    monkeypatch.setattr("magview.ui.kit.preflight.why_no_window", lambda: "there is no display")
    if words[:1] == ["--magneto"]:
        from magview.spec.library import find_magneto

        assert find_magneto(words[1]).name
        return
    if words[0] in WITH_QT:
        command = [sys.executable, "-m", "magview", *words]
        here = os.environ | {"PYTHONPATH": str(ROOT)}
        done = subprocess.run(command, capture_output=True, timeout=60, check=False, env=here)
        assert done.returncode in (0, 1) and not done.stderr and done.stdout
        return
    if "--pdf" in words:
        at = words.index("--pdf")
        words = words[:at] + words[at + 2 :]
    code = cli.main(words)
    said = capsys.readouterr()
    writes = "--html" in words and words[0] == "guide"
    assert code in (0, 1) and not said.err and (writes or len(said.out) > 20)
    for option in ("--html", "--csv", "--json-readings"):
        if option in words:
            assert (tmp_path / words[words.index(option) + 1]).stat().st_size > 50


def test_there_are_commands_to_test():
    kinds = {line.split()[1] for line in COMMANDS if not line.split()[1].startswith("-")}
    ours = {"readings", "adjust", "shift", "engine", "sheet", "schema", "guide", "limits"}
    assert kinds == ours | {"class", "worksheet", "handout", "check", "bench"}


@cache
def strings() -> set[str]:
    """Every string of the window's code, letters to press left out."""
    found = set()
    for path in (ROOT / "magview").rglob("*.py"):
        for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
            if isinstance(node, ast.Constant) and isinstance(node.value, str):
                found.add(node.value.replace("&", ""))
    return found


@pytest.mark.parametrize("name", NAMES)
def test_what_stands_in_bold_is_a_key_or_stands_on_the_screen(name):
    known = strings()
    named = [b for b in bold(name) if b != "Take care." and not KEY.fullmatch(b)]
    assert not [b for b in named if b not in known and f"{b}…" not in known]


@pytest.mark.parametrize("name", NAMES)
def test_exercises_and_lessons_are_named_as_they_are_called(name):
    from magview.practice.library import find_exercise, find_lesson

    called = {find_exercise(n).name for n in shipped_exercises()} | {find_lesson(n).name for n in shipped_lessons()}
    questions = re.findall(r"\*([A-Z][^*\n]+\?)\*", pages()[name].source)
    assert set(questions) <= called


def test_the_course_runs_from_its_first_lesson_to_its_last():
    from magview.practice.library import find_lesson

    first, last = (find_lesson(shipped_lessons()[place]).name for place in (0, -1))
    assert f"from *{first}* to *{last}*" in pages()["practice"].source


def test_every_topic_leads_to_a_section():
    addresses = {s.address for p in pages().values() for s in p.sections}
    assert set(TOPICS.values()) <= addresses


def test_words_of_the_glossary_are_used_elsewhere():
    rest = " ".join(s.text for p in pages().values() if p.name != "glossary" for s in p.sections).casefold()
    for section in pages()["glossary"].sections[1:]:
        words = [w.split()[-1] for w in section.title.casefold().split(" and ")]
        assert any(w.rstrip("s") in rest for w in words), section.title


def test_the_glossary_is_in_alphabetical_order():
    titles = [s.title for s in pages()["glossary"].sections[1:]]
    assert titles == sorted(titles, key=lambda t: anchor_of(t).replace("-", ""))


def test_nothing_of_markdown_is_left_over_in_the_book():
    text = "".join(HtmlReader(document_html(book())).prose)
    assert not re.search(r"\*\*|\]\(|```|_\{|\|\s*---", text)
    assert not re.search(r"[^\W_]_[^\W_]", text), "a lowered part is lowered, not underscored"
